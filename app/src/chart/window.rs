//! The stretch of road that the picture shows, and how zooming moves it.

/// A stretch of road, metres from its start.
///
/// Kept by every function here: `0 <= from < to <= length`, and not shorter than
/// [`Window::SHORTEST_M`] unless the whole road is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Window {
    /// Where it begins, m.
    pub(crate) from: f64,
    /// Where it ends, m.
    pub(crate) to: f64,
}

impl Window {
    /// The shortest stretch shown, m: thirty grid points, below which a grade says nothing.
    pub(crate) const SHORTEST_M: f64 = 300.0;
    /// Factor of one step of a zoom button or key.
    pub(crate) const ZOOM_STEP: f64 = 1.6;

    /// The whole road.
    #[must_use]
    pub(crate) fn whole(length: f64) -> Self {
        Self { from: 0.0, to: length }
    }

    /// Length shown, m.
    #[must_use]
    pub(crate) fn length(&self) -> f64 {
        self.to - self.from
    }

    /// Whether it shows the whole road.
    #[must_use]
    pub(crate) fn is_whole(&self, length: f64) -> bool {
        self.from <= 0.0 && self.to >= length
    }

    /// Whether `at` is shown.
    #[must_use]
    pub(crate) fn shows(&self, at: f64) -> bool {
        self.from <= at && at <= self.to
    }

    /// Zoomed by `factor` (above 1 is closer) so that `about` keeps its place on the screen.
    #[must_use]
    pub(crate) fn zoomed(self, about: f64, factor: f64, length: f64) -> Self {
        let now = self.length().max(f64::MIN_POSITIVE);
        let wanted = (now / factor).clamp(Self::SHORTEST_M.min(length), length);
        let share = ((about - self.from) / now).clamp(0.0, 1.0);
        Self::placed(about - share * wanted, wanted, length)
    }

    /// Moved along the road by `by` metres, as far as the road goes.
    #[must_use]
    pub(crate) fn moved(self, by: f64, length: f64) -> Self {
        Self::placed(self.from + by, self.length(), length)
    }

    /// Moved no further than needed to show `at` with a little road on either side.
    #[must_use]
    pub(crate) fn showing(self, at: f64, length: f64) -> Self {
        let margin = 0.06 * self.length();
        if at < self.from + margin {
            self.moved(at - margin - self.from, length)
        } else if at > self.to - margin {
            self.moved(at + margin - self.to, length)
        } else {
            self
        }
    }

    /// The stretch from `from` to `to` with a fifth of its length on either side.
    #[must_use]
    pub(crate) fn around(from: f64, to: f64, length: f64) -> Self {
        let extent = (1.4 * (to - from)).max(Self::SHORTEST_M).min(length);
        Self::placed(0.5 * (from + to - extent), extent, length)
    }

    /// The stretch between two places, in any order, and not shorter than the shortest.
    #[must_use]
    pub(crate) fn between(a: f64, b: f64, length: f64) -> Self {
        let extent = (a - b).abs().max(Self::SHORTEST_M.min(length));
        Self::placed(a.min(b), extent, length)
    }

    /// With its beginning drawn to `from`.
    #[must_use]
    pub(crate) fn with_from(self, from: f64, length: f64) -> Self {
        let latest = (self.to - Self::SHORTEST_M.min(length)).max(0.0);
        Self { from: from.clamp(0.0, latest), to: self.to }
    }

    /// With its end drawn to `to`.
    #[must_use]
    pub(crate) fn with_to(self, to: f64, length: f64) -> Self {
        let earliest = (self.from + Self::SHORTEST_M.min(length)).min(length);
        Self { from: self.from, to: to.clamp(earliest, length) }
    }

    fn placed(from: f64, extent: f64, length: f64) -> Self {
        let extent = extent.min(length);
        let from = from.clamp(0.0, length - extent);
        Self { from, to: from + extent }
    }
}

#[cfg(test)]
mod tests {
    use super::Window;

    const LENGTH: f64 = 24_000.0;

    fn check(window: Window) {
        assert!(window.from >= 0.0 && window.to <= LENGTH + 1e-6, "{window:?}");
        assert!(window.length() >= Window::SHORTEST_M - 1e-6, "{window:?}");
    }

    #[test]
    fn zooming_keeps_the_point_under_the_finger() {
        let before = Window { from: 4000.0, to: 12_000.0 };
        let after = before.zoomed(6000.0, 2.0, LENGTH);
        let share = |w: Window| (6000.0 - w.from) / w.length();
        assert!((share(before) - share(after)).abs() < 1e-9);
        assert!((after.length() - 4000.0).abs() < 1e-9);
    }

    #[test]
    fn nothing_leads_off_the_road() {
        let mut window = Window::whole(LENGTH);
        for round in 0..400 {
            let step = f64::from(round);
            let about = (step * 977.0) % LENGTH;
            window = match round % 6 {
                0 | 1 => window.zoomed(about, 1.9, LENGTH),
                2 => window.zoomed(about, 0.4, LENGTH),
                3 => window.moved(step * 31.0 - 5000.0, LENGTH),
                4 => window.with_from(about, LENGTH),
                _ => window.with_to(about, LENGTH),
            };
            check(window);
            check(window.showing(about, LENGTH));
            assert!(window.showing(about, LENGTH).shows(about));
        }
    }

    #[test]
    fn a_road_shorter_than_the_shortest_window_is_shown_whole() {
        let window = Window::whole(120.0).zoomed(60.0, 8.0, 120.0);
        assert!(window.is_whole(120.0), "{window:?}");
        assert!(Window::around(20.0, 30.0, 120.0).is_whole(120.0));
    }
}
