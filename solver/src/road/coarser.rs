//! A road on a grid of twice the step, for what is driven very often.

use super::{GradeSegment, Parts, Place, Road, Span};

impl Road {
    /// Keeps every second grid point; a last cell without a partner is left out. Curves, limits and findings
    /// are dropped: the caller brings the caps that follow from them.
    pub(crate) fn coarser(&self) -> Self {
        let cells = self.cells() / 2;
        let half = |index: usize| (index / 2).min(cells);
        let half_up = |index: usize| index.div_ceil(2).min(cells);
        let every_second = |values: &[f64]| values.iter().copied().step_by(2).take(cells + 1).collect();
        let span = |it: &Span| {
            let (from, to) = (half(it.from), half_up(it.to));
            (from < to).then_some(Span { from, to, ..*it })
        };
        let segment = |it: &GradeSegment| {
            let (from, to) = (half(it.from), half(it.to));
            (from < to).then_some(GradeSegment { from, to, ..*it })
        };
        let place = |it: &Place| Place { index: half(it.index), ..it.clone() };
        Self::from_parts(Parts {
            name: self.name.clone(),
            step_m: 2.0 * self.step_m,
            heights_m: every_second(&self.heights_m),
            recorded_m: every_second(&self.recorded_m),
            surface_m: every_second(&self.surface_m),
            doubt: self.doubt,
            alone: Vec::new(),
            unassessed: self.unassessed.iter().filter_map(span).collect(),
            segments: self.segments.iter().filter_map(segment).collect(),
            curves: Vec::new(),
            quality: self.quality,
            positions: Vec::new(),
            places: self.places.iter().map(place).collect(),
            limits: Vec::new(),
            findings: Vec::new(),
        })
    }
}
