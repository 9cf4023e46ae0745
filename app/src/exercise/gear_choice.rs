//! Exercise: which is the highest gear that holds a grade with the reserve?

use super::chance::Chance;
use super::setting::{DRAWS, Setting};
use super::{Held, Hill, round};
use solver::motion::Trip;
use solver::plan::HOLD_SHARE;
use solver::truck::{Gear, Stage};
use solver::units::MetresPerSecond;

/// Gears in the table that is given.
const TABLE: usize = 4;

/// Slowest speed of a gear that is offered. No truck is driven slower down a public road.
const SLOWEST: MetresPerSecond = MetresPerSecond(5.0 / 3.6);

/// Gears on a grade, of which one is to be chosen.
#[derive(Debug, Clone, PartialEq)]
pub struct GearChoice {
    /// Truck, grade and air.
    pub hill: Hill,
    /// Reserve to keep: holding force over demand, less 1.
    pub reserve: f64,
    /// Given: some gears of the truck, the highest first.
    pub gears: Vec<GearTried>,
    /// The place in this list of the highest gear of the gearbox that keeps the reserve; `None` where not
    /// even the lowest does.
    pub answer: Option<usize>,
}

/// A gear at the fastest speed at which it is used to hold: no more than 95 % of the highest
/// allowed engine speed and no more than the day's limit, in whole km/h or mph.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GearTried {
    /// Gear.
    pub gear: Gear,
    /// The strongest stage that the driven axles grip.
    pub stage: Stage,
    /// What the gear holds at this speed.
    pub held: Held,
}

impl GearTried {
    /// Whether the gear keeps a reserve.
    #[must_use]
    pub fn keeps(&self, reserve: f64) -> bool {
        self.held.reserve() >= reserve
    }
}

impl GearChoice {
    /// An exercise whose answer is not simply the highest gear, where the draws have one.
    pub(super) fn draw(setting: &Setting<'_>, chance: &mut Chance) -> Option<Self> {
        let mut second_best = None;
        for _ in 0..DRAWS {
            let slope = setting.slope(chance)?;
            let truck = setting.laden(chance);
            let steeper = i32::try_from(chance.below(5)).unwrap_or(2) - 2;
            let trip = setting.trip(&truck);
            let hill = Hill::of(trip, round::grade(slope.sustained, steeper), slope.height);
            let all = gears(setting, trip, &hill);
            let found = all.iter().position(|it| it.keeps(setting.day.reserve));
            let above = found.unwrap_or(all.len()).min(TABLE - 1);
            let start = match found {
                // The gear above always stands beside the answer: it shows that it is the highest.
                Some(at) if above > 0 => at - 1 - chance.below(above.min(TABLE - 2)),
                Some(_) => 0,
                None => all.len().saturating_sub(TABLE),
            };
            let table: Vec<GearTried> = all.iter().skip(start).take(TABLE).copied().collect();
            if table.is_empty() {
                continue;
            }
            let made =
                Self { hill, reserve: setting.day.reserve, gears: table, answer: found.map(|at| at - start) };
            if found.is_some_and(|at| at > 0) {
                return Some(made);
            }
            second_best = second_best.or(Some(made));
        }
        second_best
    }

    /// The gear whose sums are written out: the answer, or the lowest where none keeps the reserve.
    #[must_use]
    pub fn written_out(&self) -> Option<&GearTried> {
        self.answer.map_or_else(|| self.gears.last(), |at| self.gears.get(at))
    }
}

/// All gears of the truck that can be used there and that the grade pushes, the highest first.
pub(super) fn gears(setting: &Setting<'_>, trip: Trip<'_>, hill: &Hill) -> Vec<GearTried> {
    let truck = trip.truck;
    let lowest = truck.lowest_engine_speed(trip.strongest_stage());
    let tried = |gear| {
        let turned = truck.road_speed(gear, truck.highest_engine_speed() * HOLD_SHARE);
        let fastest = MetresPerSecond(turned.0.min(setting.day.speed_limit().0));
        let speed = round::speed_within(fastest, setting.units);
        if speed < SLOWEST || !truck.is_coupled(gear) || truck.engine_speed(gear, speed) < lowest {
            return None;
        }
        let strongest = trip.retarding(gear, speed, hill.grade, hill.air);
        let stage = truck
            .stages()
            .rev()
            .filter(|stage| *stage <= trip.strongest_stage())
            .find(|stage| trip.holding(gear, *stage, speed, hill.air) <= strongest)?;
        let held = Held::at(trip, hill, gear, stage, speed);
        // Motoring cannot be turned down: where it alone is more than the driven axles grip, the gear
        // is no answer.
        let gripped = held.holding <= trip.grip_for_retarding(hill.grade);
        (gripped && held.forces.demand.0 > 0.0).then_some(GearTried { gear, stage, held })
    };
    truck.gears().rev().filter_map(tried).collect()
}
