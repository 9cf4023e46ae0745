//! A linear scale between a quantity and pixels.

/// Maps a quantity to pixels and back.
///
/// A domain without extent maps everything to the middle of the range; nothing here divides
/// by zero.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Scale {
    domain: (f64, f64),
    range: (f64, f64),
    /// Px per unit, and the px of the domain's beginning: a long road maps its points four
    /// times a frame, and a division each is felt.
    factor: f64,
    origin: f64,
}

impl Scale {
    /// A scale from `domain`, in the quantity's unit, to `range`, in px.
    #[must_use]
    pub(crate) fn new(domain: (f64, f64), range: (f64, f64)) -> Self {
        let extent = domain.1 - domain.0;
        let (factor, origin) = if extent.abs() < f64::EPSILON {
            (0.0, 0.5 * (range.0 + range.1))
        } else {
            ((range.1 - range.0) / extent, range.0)
        };
        Self { domain, range, factor, origin }
    }

    /// Pixel of a value; values outside the domain land outside the range.
    #[must_use]
    pub(crate) fn at(&self, value: f64) -> f64 {
        self.origin + (value - self.domain.0) * self.factor
    }

    /// Value of a pixel, kept inside the domain.
    #[must_use]
    pub(crate) fn back(&self, px: f64) -> f64 {
        let width = self.range.1 - self.range.0;
        if width.abs() < f64::EPSILON {
            return self.domain.0;
        }
        let share = ((px - self.range.0) / width).clamp(0.0, 1.0);
        self.domain.0 + share * (self.domain.1 - self.domain.0)
    }

    /// Domain, in the quantity's unit.
    #[must_use]
    pub(crate) fn domain(&self) -> (f64, f64) {
        self.domain
    }

    /// Range, px.
    #[must_use]
    pub(crate) fn range(&self) -> (f64, f64) {
        self.range
    }
}

#[cfg(test)]
mod tests {
    use super::Scale;

    #[test]
    fn back_undoes_at_and_stays_inside() {
        let scale = Scale::new((1000.0, 9000.0), (80.0, 1080.0));
        for value in [1000.0, 2345.6, 9000.0] {
            assert!((scale.back(scale.at(value)) - value).abs() < 1e-9);
        }
        assert!((scale.back(-50.0) - 1000.0).abs() < 1e-9);
        assert!((scale.back(5000.0) - 9000.0).abs() < 1e-9);
    }

    #[test]
    fn heights_grow_upwards_when_the_range_is_turned() {
        let scale = Scale::new((200.0, 800.0), (300.0, 100.0));
        assert!(scale.at(700.0) < scale.at(300.0));
    }

    #[test]
    fn no_extent_lands_in_the_middle() {
        let scale = Scale::new((5.0, 5.0), (0.0, 10.0));
        assert!((scale.at(5.0) - 5.0).abs() < 1e-9);
    }
}
