//! What a mile marker or an odometer shows along the road.

/// A road as it is shown: which part of the road as recorded, and which way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Way {
    /// Where the part begins, m along the recording.
    pub from_m: f64,
    /// Where it ends, m along the recording.
    pub to_m: f64,
    /// Driven the other way round than recorded.
    pub reversed: bool,
}

/// Markers this little below zero are zero, m: what is typed is rounded to 0.01 of its unit.
const HAIR_M: f64 = 10.0;

/// From distances along the road to what stands on the markers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Marker {
    /// What the marker shows at the start of the road, m.
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

    /// These markers along the road shown otherwise: turned around, or another part of it.
    /// Each place keeps what stands there.
    #[must_use]
    pub fn along(self, before: Way, now: Way) -> Self {
        let start = if now.reversed { now.to_m } else { now.from_m };
        let metres = if before.reversed { before.to_m - start } else { start - before.from_m };
        Self {
            at_start_m: self.at(metres),
            counts_down: self.counts_down != (before.reversed != now.reversed),
        }
    }

    /// Whether no marker is below zero on a road of this length, m: no such markers stand
    /// anywhere.
    #[must_use]
    pub fn reach_over(self, length_m: f64) -> bool {
        self.at(0.0).min(self.at(length_m)) >= -HAIR_M
    }

    /// The distance from the start at which a marker shows this, m.
    #[must_use]
    pub fn place_of(self, shown_m: f64) -> f64 {
        if self.counts_down { self.at_start_m - shown_m } else { shown_m - self.at_start_m }
    }
}

#[cfg(test)]
mod tests {
    use super::{Marker, Way};

    #[test]
    fn markers_count_up_or_down_from_the_start() {
        assert!((Marker::NONE.at(1_500.0) - 1_500.0).abs() < 1e-9);
        let down = Marker { at_start_m: 20_000.0, counts_down: true };
        assert!((down.at(1_500.0) - 18_500.0).abs() < 1e-9);
        assert!((down.place_of(18_500.0) - 1_500.0).abs() < 1e-9);
        assert!((Marker::NONE.place_of(700.0) - 700.0).abs() < 1e-9);
    }

    /// Markers of places of a recorded road of 30 km, asked through each way to show it.
    #[test]
    fn each_place_keeps_its_marker_however_the_road_is_shown() {
        let whole = Way { from_m: 0.0, to_m: 30_000.0, reversed: false };
        let ways = [
            Way { reversed: true, ..whole },
            Way { from_m: 4_000.0, to_m: 21_000.0, reversed: false },
            Way { from_m: 4_000.0, to_m: 21_000.0, reversed: true },
        ];
        let shown = |way: Way, place: f64| if way.reversed { way.to_m - place } else { place - way.from_m };
        for counts_down in [false, true] {
            let first = Marker { at_start_m: 100_000.0, counts_down };
            let mut marker = first;
            let mut before = whole;
            for now in ways.into_iter().chain([whole]) {
                marker = marker.along(before, now);
                before = now;
                for place in [5_000.0, 12_300.0, 20_990.0] {
                    let (found, stands) = (marker.at(shown(now, place)), first.at(place));
                    assert!((found - stands).abs() < 1e-6, "{now:?}: {found}, not {stands}");
                }
                assert_eq!(marker.counts_down, counts_down != now.reversed);
            }
            assert_eq!(marker, first, "the way back is the same");
        }
    }

    #[test]
    fn markers_below_zero_do_not_reach() {
        let down = |at_start_m| Marker { at_start_m, counts_down: true };
        assert!(!down(10_000.0).reach_over(22_700.0));
        assert!(down(22_700.0).reach_over(22_700.0), "zero at the very end is a marker");
        assert!(down(22_695.0).reach_over(22_700.0), "as it was rounded");
        assert!(!down(0.0).reach_over(22_700.0), "nothing typed, and counting down");
        assert!(Marker::NONE.reach_over(22_700.0));
        assert!(!Marker { at_start_m: -500.0, counts_down: false }.reach_over(22_700.0));
    }
}
