//! The table of gears and stages on one grade: the explanation of every choice.

use crate::motion::{Answer, Trip, control_speed};
use crate::truck::Gear;
use crate::units::{Grade, Metres, MetresPerSecond};
use serde::{Deserialize, Serialize};

/// The answers of every gear and stage on one grade.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Table {
    /// The grade.
    pub grade: Grade,
    /// Height of the road.
    pub height: Metres,
    /// One row for each gear, first gear first.
    pub rows: Vec<GearRow>,
}

/// One gear of a [`Table`].
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct GearRow {
    /// The gear.
    pub gear: Gear,
    /// Road speed at the lowest useful engine speed.
    pub slowest: MetresPerSecond,
    /// Road speed at the highest allowed engine speed: the ceiling.
    pub ceiling: MetresPerSecond,
    /// Full-stage holding force over demand at the ceiling, less 1; `None` where the grade
    /// does not push the truck at that speed.
    pub margin_at_ceiling: Option<f64>,
    /// One answer for each stage, "off" first.
    pub answers: Vec<Answer>,
}

/// What every gear does with every stage on `grade` at `height`.
///
/// ```
/// use solver::units::{Grade, Metres};
/// use solver::{Answer, Day, Preset, Trip, Truck, plan};
///
/// let truck = Truck::new(Preset::FiveAxle36.spec())?;
/// let table = plan::table(Trip { truck: &truck, day: &Day::USUAL }, Grade(-0.06), Metres(0.0));
/// let top = table.rows.last().expect("a gear");
/// // With the retarder off, a loaded truck runs away on −6 % in its top gear.
/// assert!(matches!(top.answers[0], Answer::Overruns { .. }));
/// # Ok::<(), solver::Error>(())
/// ```
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
