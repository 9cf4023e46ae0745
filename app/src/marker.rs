//! What a mile marker or an odometer shows along the road.

/// From distances along the road to what stands on the markers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Marker {
    /// What it shows at the start of the road, m.
    pub at_start_m: f64,
    /// Markers count down in the direction of travel.
    pub counts_down: bool,
}

impl Marker {
    /// The distance from the start itself.
    pub const NONE: Self = Self { at_start_m: 0.0, counts_down: false };

    /// What stands at a distance from the start, m.
    #[must_use]
    pub fn at(self, metres: f64) -> f64 {
        if self.counts_down { self.at_start_m - metres } else { self.at_start_m + metres }
    }

    /// The distance from the start at which a marker shows this, m.
    #[must_use]
    pub fn place_of(self, shown_m: f64) -> f64 {
        if self.counts_down { self.at_start_m - shown_m } else { shown_m - self.at_start_m }
    }
}

#[cfg(test)]
mod tests {
    use super::Marker;

    #[test]
    fn markers_count_up_or_down_from_the_start() {
        assert!((Marker::NONE.at(1_500.0) - 1_500.0).abs() < 1e-9);
        let down = Marker { at_start_m: 20_000.0, counts_down: true };
        assert!((down.at(1_500.0) - 18_500.0).abs() < 1e-9);
        assert!((down.place_of(18_500.0) - 1_500.0).abs() < 1e-9);
        assert!((Marker::NONE.place_of(700.0) - 700.0).abs() < 1e-9);
    }
}
