//! One axle group out of adjustment: it brakes less, and the others do its work. Drums with a long cold
//! stroke are not counted above the temperature at which they reach their limit. Discs are not adjusted by
//! stroke; they brake half as much.

use crate::motion::{Hold, Run, State, Trip};
use crate::road::Road;
use crate::truck::{AxlePlace, BrakeKind};
use crate::units::Celsius;
use serde::{Deserialize, Serialize};

/// What this means for the whole road.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Adjustment {
    /// The group that brakes less than it should.
    pub place: AxlePlace,
    /// Kind of its brakes, which decides how they brake less.
    pub brake: BrakeKind,
    /// Hottest brakes of any group.
    pub hottest: Celsius,
    /// Hottest brakes of any group after one hard stop.
    pub hottest_after_stop: Celsius,
    /// Whether that keeps the limit.
    pub kept: bool,
}

/// Each group in turn. Empty where there is only one group, whose work no other could take over.
pub(super) fn each(trip: Trip<'_>, road: &Road, holds: &[Hold], start: State) -> Vec<Adjustment> {
    let groups = &trip.truck.spec().axle_groups;
    let out = |index: usize| {
        let truck = trip.truck.out_of_adjustment(index)?;
        let run = Run::along(Trip { truck: &truck, ..trip }, road, 0, road.cells(), holds, start);
        let hottest_after_stop = run.hottest_after_stop();
        Some(Adjustment {
            place: groups[index].place,
            brake: groups[index].brake,
            hottest: run.hottest(),
            hottest_after_stop,
            kept: hottest_after_stop.0 <= trip.day.heat_limit_c,
        })
    };
    (0..groups.len()).filter_map(out).collect()
}
