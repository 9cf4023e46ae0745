//! The road line in px, and what stands below and above it.

use super::decimate::clip;

/// The road line of a window, px.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Hill {
    /// Points that rise in x.
    pub(crate) line: Vec<(f64, f64)>,
}

impl Hill {
    /// Height of the line at a place, px from above; that of the nearer end outside it.
    #[must_use]
    pub(crate) fn y(&self, x: f64) -> f64 {
        let next = self.line.partition_point(|point| point.0 < x);
        match (next.checked_sub(1).and_then(|before| self.line.get(before)), self.line.get(next)) {
            (Some(a), Some(b)) if b.0 > a.0 => a.1 + (x - a.0) / (b.0 - a.0) * (b.1 - a.1),
            (Some(point), _) | (None, Some(point)) => point.1,
            (None, None) => 0.0,
        }
    }

    /// The highest and the lowest place of the line between two, px from above.
    #[must_use]
    pub(crate) fn ends(&self, x0: f64, x1: f64) -> (f64, f64) {
        let both = [self.y(x0), self.y(x1)];
        let inner = clip(&self.line, x0, x1);
        inner
            .iter()
            .map(|point| point.1)
            .chain(both)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |ends, y| (ends.0.min(y), ends.1.max(y)))
    }
}

#[cfg(test)]
mod tests {
    use super::Hill;

    #[test]
    fn heights_between_points() {
        let hill = Hill { line: vec![(0.0, 100.0), (10.0, 50.0), (20.0, 80.0)] };
        assert!((hill.y(5.0) - 75.0).abs() < 1e-9);
        assert!((hill.y(-5.0) - 100.0).abs() < 1e-9 && (hill.y(50.0) - 80.0).abs() < 1e-9);
        assert_eq!(hill.ends(5.0, 15.0), (50.0, 75.0));
        assert!(Hill { line: Vec::new() }.y(3.0).abs() < 1e-9);
    }
}
