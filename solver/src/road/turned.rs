//! A road in the other direction.

use super::{Road, alone::Alone};

impl Road {
    /// The road in the other direction. The indices are exact: reversing twice gives the original, bit for
    /// bit.
    pub fn reversed(&self) -> Road {
        let mut road = self.clone();
        let last = self.cells();
        road.heights_m.reverse();
        road.recorded_m.reverse();
        road.surface_m.reverse();
        road.alone = self.alone.iter().map(Alone::reversed).collect();
        road.density_ratios.reverse();
        road.positions.reverse();
        road.shape.0.reverse();
        road.assessed.reverse();
        road.grades.reverse();
        road.grades.iter_mut().for_each(|grade| *grade = -*grade);
        road.segments.reverse();
        for segment in &mut road.segments {
            (segment.from, segment.to) = (last - segment.to, last - segment.from);
            segment.grade = -segment.grade;
        }
        road.curves.reverse();
        for curve in &mut road.curves {
            (curve.from, curve.to) = (last - curve.to, last - curve.from);
            curve.turn = curve.turn.opposite();
        }
        road.unassessed.reverse();
        for span in &mut road.unassessed {
            (span.from, span.to) = (last - span.to, last - span.from);
        }
        road.places.reverse();
        for place in &mut road.places {
            place.index = last - place.index;
        }
        road.limits.reverse();
        for limit in &mut road.limits {
            (limit.from, limit.to) = (last - limit.to, last - limit.from);
        }
        for (from, to) in &mut road.finding_spans {
            // A finding with only one place keeps it as its start.
            (*from, *to) = match (*from, *to) {
                (Some(a), Some(b)) => (Some(last - b), Some(last - a)),
                (Some(a), None) => (Some(last - a), None),
                (None, b) => (None, b.map(|b| last - b)),
            };
        }
        road.place_findings();
        road
    }
}
