//! A part of a road, as a road.

use super::{Curve, GradeSegment, Parts, Place, PostedLimit, Road, Span, bounds};

impl Road {
    /// The road between two grid points; indices beyond the end mean the end. `None` where that is shorter
    /// than 500 m or nothing of it is assessed.
    ///
    /// Heights and grades are those of the whole road, so that a part never says anything else than the
    /// whole. A segment that is cut keeps its grade and the length over which the grade holds.
    #[must_use]
    pub fn part(&self, from: usize, to: usize) -> Option<Road> {
        let to = to.min(self.cells());
        let long = (to.saturating_sub(from)) as f64 * self.step_m >= bounds::SHORTEST_ROAD_M;
        if !long || !self.assessed[from..to].contains(&true) {
            return None;
        }
        let cut = Cut { from, to };
        let segment =
            |s: &GradeSegment| cut.both(s.from, s.to).map(|(from, to)| GradeSegment { from, to, ..*s });
        let curve = |c: &Curve| cut.both(c.from, c.to).map(|(from, to)| Curve { from, to, ..*c });
        let span = |s: &Span| cut.both(s.from, s.to).map(|(from, to)| Span { from, to, ..*s });
        let within = |place: &&Place| (from..=to).contains(&place.index);
        let shifted = |place: &Place| Place { index: place.index - from, ..place.clone() };
        let limit = |it: &PostedLimit| {
            let (from, to) = cut.both(it.from, it.to)?;
            Some(PostedLimit { from, to, ..*it })
        };
        let positions =
            if self.positions.is_empty() { Vec::new() } else { self.positions[from..=to].to_vec() };
        Some(Road::from_parts(Parts {
            name: self.name.clone(),
            step_m: self.step_m,
            heights_m: self.heights_m[from..=to].to_vec(),
            recorded_m: self.recorded_m[from..=to].to_vec(),
            surface_m: self.surface_m[from..=to].to_vec(),
            doubt: self.doubt,
            alone: self.alone.iter().map(|it| it.part(from, to)).collect(),
            unassessed: self.unassessed.iter().filter_map(span).collect(),
            segments: self.segments.iter().filter_map(segment).collect(),
            curves: self.curves.iter().filter_map(curve).collect(),
            quality: self.quality,
            positions,
            places: self.places.iter().filter(within).map(shifted).collect(),
            limits: self.limits.iter().filter_map(limit).collect(),
            findings: self.findings_of(cut),
        }))
    }

    /// Findings on the part, and findings without a place.
    fn findings_of(&self, cut: Cut) -> Vec<super::Finding> {
        let placed = self.findings.iter().zip(&self.finding_spans);
        let kept = placed.filter_map(|(finding, (from, to))| {
            let (from, to) = match (from, to) {
                (Some(from), Some(to)) => cut.both(*from, *to).map(|(a, b)| (Some(a), Some(b)))?,
                (Some(at), None) => (Some(cut.one(*at)?), None),
                (None, Some(at)) => (None, Some(cut.one(*at)?)),
                (None, None) => (None, None),
            };
            let metres = |index: Option<usize>| index.map(|index| index as f64 * self.step_m);
            let mut finding = finding.clone();
            (finding.from_m, finding.to_m) = (metres(from), metres(to));
            Some(finding)
        });
        kept.collect()
    }
}

/// Grid points that are kept, both ends included.
#[derive(Clone, Copy)]
struct Cut {
    from: usize,
    to: usize,
}

impl Cut {
    /// The piece of a stretch that lies within; `None` without one.
    fn both(self, from: usize, to: usize) -> Option<(usize, usize)> {
        let (from, to) = (from.max(self.from), to.min(self.to));
        (from < to).then(|| (from - self.from, to - self.from))
    }

    fn one(self, at: usize) -> Option<usize> {
        (self.from..=self.to).contains(&at).then(|| at - self.from)
    }
}
