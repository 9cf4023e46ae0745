//! What follows from a plan: how sure it is, what if, and what to do when something fails.
//!
//! The plan answers first and fast. A study takes the road, the plan and its entries and looks further. It
//! tells how the answer moves within the spread of the entries, what is left when the retarder is lost or a
//! brake is out of adjustment, and where to slow for what lies ahead. Planning with an entry a little off
//! tells what the entry is worth. A ride is the plan driven as it says, or with one thing otherwise.

mod adjustment;
mod input;
mod lost;
mod measured;
mod quantile;
mod ride;
mod slowing;
mod sureness;
mod worth;

pub use adjustment::Adjustment;
pub use input::{Input, RUNS};
pub use lost::{Lost, RampAhead, Reach};
pub use measured::{Measured, NotMeasured, Seen, measured};
pub use ride::{RideEnd, RideLanes, Slip, part_at, ride};
pub use slowing::{SlowFor, Slowing};
pub use sureness::{Bands, DescentSureness, Sureness, sureness};
pub use worth::{Difference, Worth, worth};

use crate::day::Day;
use crate::motion::{Run, State, Trip};
use crate::plan::{Plan, start_state};
use crate::road::Road;
use crate::truck::Truck;
use serde::{Deserialize, Serialize};

/// Results of a study, except how sure the plan is: see [`sureness`].
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Study {
    /// The retarder lost, one entry for each descent in road order.
    pub lost: Vec<Lost>,
    /// One axle group out of adjustment, one entry for each group.
    pub adjustment: Vec<Adjustment>,
    /// Everything that asks for a lower speed or a stop, in road order.
    pub slowing: Vec<Slowing>,
}

/// Studies a plan: the plan of this road, truck and day.
#[must_use]
pub fn study(road: &Road, truck: &Truck, day: &Day, plan: &Plan) -> Study {
    let trip = Trip { truck, day };
    let holds = plan.holds();
    let mut states: Vec<State> = Vec::with_capacity(road.cells());
    let start = start_state(trip, road);
    let mut watch = |state: &State| states.push(*state);
    let run = Run::watched(trip, road, &holds, start, &mut watch);
    let lost = plan.descents.iter().map(|descent| lost::lost(trip, road, descent, &states));
    Study {
        lost: lost.collect(),
        adjustment: adjustment::each(trip, road, &holds, start),
        slowing: slowing::all(trip, road, plan, &run, &states),
    }
}
