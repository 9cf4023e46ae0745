//! One axle group out of adjustment: it brakes less, and the others do its work.

use crate::motion::{Hold, Run, State, Trip};
use crate::road::Road;
use crate::truck::AxlePlace;
use crate::units::Celsius;
use serde::{Deserialize, Serialize};

/// Share of its work that a group out of adjustment still does. Assumed.
const STILL_DOES: f64 = 0.5;

/// What comes of it on the whole road.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Adjustment {
    /// The group that brakes half as much as it should.
    pub place: AxlePlace,
    /// Hottest brakes of any group.
    pub hottest: Celsius,
    /// Hottest they would be after one hard stop.
    pub hottest_after_stop: Celsius,
    /// Whether that keeps the limit.
    pub kept: bool,
}

/// Each group in turn; none where there is only one, whose work nobody could take over.
pub(super) fn each(trip: Trip<'_>, road: &Road, holds: &[Hold], start: State) -> Vec<Adjustment> {
    let groups = &trip.truck.spec().axle_groups;
    let out = |index: usize| {
        let truck = trip.truck.out_of_adjustment(index, STILL_DOES)?;
        let run = Run::along(Trip { truck: &truck, ..trip }, road, 0, road.cells(), holds, start);
        let hottest_after_stop = run.hottest_after_stop();
        Some(Adjustment {
            place: groups[index].place,
            hottest: run.hottest(),
            hottest_after_stop,
            kept: hottest_after_stop.0 <= trip.day.heat_limit_c,
        })
    };
    (0..groups.len()).filter_map(out).collect()
}
