//! How a slip changes truck, day and card.

use super::Slip;
use crate::day::Day;
use crate::motion::{Hold, Trip, caps};
use crate::plan::{Choice, HEAVIER, Plan};
use crate::road::Road;
use crate::truck::Truck;
use crate::units::MetresPerSecond;

/// The settings with which a ride is driven.
pub(super) struct Setting {
    pub(super) truck: Truck,
    pub(super) day: Day,
    pub(super) holds: Vec<Hold>,
    pub(super) caps: Vec<f64>,
    /// The truck from a cell on.
    weaker: Option<(usize, Truck)>,
}

impl Setting {
    /// `None` where the slip cannot be driven: see [`super::ride`].
    pub(super) fn of(road: &Road, planned: Trip<'_>, plan: &Plan, slip: Slip) -> Option<Self> {
        let unsafe_anywhere = plan.descents.iter().any(|it| matches!(it.choice, Choice::NoSafeSpeed(_)));
        if slip != Slip::Planned && unsafe_anywhere {
            return None;
        }
        let (mut truck, mut day, mut holds) = (planned.truck.clone(), *planned.day, plan.holds());
        let mut weaker = None;
        match slip {
            Slip::Planned => {}
            Slip::GearHigh => {
                for hold in &mut holds {
                    let next = truck.gears().find(|gear| *gear > hold.gear);
                    hold.gear = next.unwrap_or(hold.gear);
                }
            }
            Slip::Heavier => truck = truck.heavier(HEAVIER)?,
            Slip::Faster => {
                for hold in &mut holds {
                    *hold = faster(planned, *hold);
                }
            }
            Slip::StageLost => weaker = Some(stage_lost(planned, plan)?),
            Slip::HotBrakes => {
                let (start, limit) = (day.brakes_at_start_c, day.heat_limit_c);
                day.brakes_at_start_c = start + Slip::HOT_SHARE * (limit - start).max(0.0);
            }
        }
        // The driver slows where the entered truck should; the service brakes do the rest.
        let caps = caps(planned, road, &holds);
        Some(Self { truck, day, holds, caps, weaker })
    }

    /// Truck and day on a cell.
    pub(super) fn trip_on(&self, cell: usize) -> Trip<'_> {
        let weaker = self.then().filter(|(at, _)| *at <= cell);
        Trip { truck: weaker.map_or(&self.truck, |(_, truck)| truck), day: &self.day }
    }

    /// The truck that takes the first one's place, and the cell from which on it does.
    pub(super) fn then(&self) -> Option<(usize, &Truck)> {
        self.weaker.as_ref().map(|(at, truck)| (*at, truck))
    }
}

/// The gear at the higher speed: the planned one as long as the engine speed allows it. Nobody shifts down in
/// order to go faster.
fn faster(trip: Trip<'_>, hold: Hold) -> Hold {
    let truck = trip.truck;
    let highest = truck.gears().next_back().unwrap_or(hold.gear);
    let ceiling = truck.road_speed(highest, truck.highest_engine_speed()).0;
    let asked = hold.speed.0 + MetresPerSecond::from_kmh(Slip::FASTER_KMH).0;
    let speed = MetresPerSecond(asked.min(ceiling).max(hold.speed.0));
    let lowest = trip.lowest_gear_within(speed, 1.0).unwrap_or(highest);
    Hold { gear: hold.gear.max(lowest), speed, ..hold }
}

/// The cell half-way down the deciding descent, and the truck from there on.
fn stage_lost(trip: Trip<'_>, plan: &Plan) -> Option<(usize, Truck)> {
    if trip.strongest_stage().is_off() {
        return None;
    }
    let deciding = plan.deciding()?;
    let half_way = deciding.from.midpoint(deciding.to);
    Some((half_way, trip.truck.without_strongest_stage()?))
}
