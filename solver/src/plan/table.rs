//! The gear × stage table of one grade: the explanation of every choice.

use super::answer::{GearRow, Table};
use crate::motion::{Trip, control_speed};
use crate::units::{Grade, Metres};

/// What every gear does with every stage on `grade` at `height`.
#[must_use]
pub fn table(trip: Trip<'_>, grade: Grade, height: Metres) -> Table {
    let (truck, air) = (trip.truck, trip.air(height));
    let row = |gear| {
        let ceiling = truck.road_speed(gear, truck.highest_engine_speed());
        let demand = trip.demand(ceiling, grade, air);
        let held = trip.holding(gear, trip.strongest_stage(), ceiling, air);
        GearRow {
            gear,
            slowest: truck.road_speed(gear, truck.lowest_engine_speed(truck.full_stage())),
            ceiling,
            margin_at_ceiling: (demand.0 > 0.0).then(|| held / demand - 1.0),
            answers: truck.stages().map(|stage| control_speed(trip, gear, stage, grade, height)).collect(),
        }
    };
    Table { grade, height, rows: truck.gears().map(row).collect() }
}
