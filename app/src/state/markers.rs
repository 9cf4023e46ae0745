//! The markers along the road: what was typed for its start, and what follows from that.

use super::result::Worked;
use super::signals::Signals;
use crate::format::{parse_number, typed};
use crate::marker::{Marker, Way};
use leptos::prelude::*;

impl Signals {
    /// What the markers along the road show: distances from its start where nothing that reaches
    /// over the road is entered. Tracked.
    pub(crate) fn marker(&self) -> Marker {
        let entered = self.entered_marker();
        entered.filter(|it| it.reach_over(self.length_m())).unwrap_or(Marker::NONE)
    }

    /// What would stand at start and end of the road, m, where the markers entered do not reach
    /// over it. Tracked.
    pub(crate) fn markers_miss(&self) -> Option<(f64, f64)> {
        let length_m = self.length_m();
        let entered = self.entered_marker().filter(|it| !it.reach_over(length_m));
        entered.map(|it| (it.at(0.0), it.at(length_m)))
    }

    /// The marker as it was typed; `None` where nothing was.
    fn entered_marker(&self) -> Option<Marker> {
        let counts_down = self.roadside.counts_down.get();
        let shown =
            self.roadside.marker_text.with(|text| parse_number(text)).or(counts_down.then_some(0.0))?;
        Some(Marker { at_start_m: shown * self.units.get().metres_per_distance(), counts_down })
    }

    fn length_m(&self) -> f64 {
        self.shown.worked.with(|worked| worked.as_ref().map_or(0.0, |it| it.road.length_m))
    }

    /// The road shown is to be shown otherwise: what is entered for its start becomes what stands
    /// at the new one.
    pub(super) fn move_marker(&self, before: &Worked, now: &Worked) {
        let (before, now) = (before.way(), now.way());
        // Where nothing is typed, distances count from whatever the start is.
        let some = self.roadside.marker_text.with_untracked(|text| parse_number(text).is_some());
        let entered = untrack(|| self.entered_marker()).filter(|_| some && before != now);
        if let Some(marker) = entered.map(|it| it.along(before, now)) {
            let per = self.units.get_untracked().metres_per_distance();
            self.roadside.marker_text.set(typed(marker.at_start_m / per));
            self.roadside.counts_down.set(marker.counts_down);
        }
    }
}

impl Worked {
    /// Which part of the recording it shows, and which way.
    fn way(&self) -> Way {
        let (from, to) = self.recorded_part(0, self.picture.points().saturating_sub(1));
        Way { from_m: self.place_m(from), to_m: self.place_m(to), reversed: self.road.reversed }
    }
}
