//! Exercise: how warm are the service brakes of one axle group at the foot?

use super::chance::Chance;
use super::setting::{DRAWS, Setting};
use super::{Forces, Hill, braking_work, round};
use solver::motion::HeatLump;
use solver::truck::AxlePlace;
use solver::units::{Celsius, Metres, MetresPerSecond, Seconds, Watts};

/// Hotter than this is not asked: the model knows no burning linings. Assumed.
const HOTTEST: Celsius = Celsius(450.0);

/// A descent with the service brakes on all the way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BrakeHeat {
    /// Length along the road.
    pub length: Metres,
    /// Speed kept.
    pub speed: MetresPerSecond,
    /// Time down.
    pub time: Seconds,
    /// Given: power of all service brakes.
    pub power: Watts,
    /// The axle group asked about.
    pub place: AxlePlace,
    /// The axles of the group.
    pub axles: u8,
    /// The group's share of the braking.
    pub share: f64,
    /// The power of the group.
    pub group_power: Watts,
    /// Heat capacity of the group, and its cooling at this speed.
    pub lump: HeatLump,
    /// Temperature of the air.
    pub air: Celsius,
    /// Temperature of the brakes at the crest.
    pub start: Celsius,
    /// Temperature at which the brakes would settle in the long run.
    pub settled: Celsius,
    /// Capacity over cooling.
    pub time_constant: Seconds,
    /// Share of the way from start to settled that is still ahead at the foot: e^(−t/τ).
    pub ahead: f64,
    /// Temperature of the brakes at the foot.
    pub foot: Celsius,
    /// The highest temperature entered as allowed, one hard stop included.
    pub limit: Celsius,
}

impl BrakeHeat {
    /// Whether the brakes are over the limit at the foot.
    #[must_use]
    pub fn over_limit(&self) -> bool {
        self.foot > self.limit
    }

    pub(super) fn draw(setting: &Setting<'_>, chance: &mut Chance) -> Option<Self> {
        /// Shares of the demand that the service brakes take, %; resistance is taken off already,
        /// and the engine takes the rest.
        const TAKEN: [u8; 5] = [40, 50, 60, 70, 80];
        for _ in 0..DRAWS {
            let slope = setting.slope(chance)?;
            let truck = setting.laden(chance);
            let trip = setting.trip(&truck);
            let length = round::length(slope.length, setting.units);
            let speed = round::of_fives(setting.pace(slope, chance), setting.units);
            let grade = braking_work::mean_grade(round::drop(slope.drop, setting.units), length);
            let hill = Hill::of(trip, grade, slope.height);
            let demand = Forces::at(trip, &hill, speed).demand;
            let taken = f64::from(chance.pick(&TAKEN).copied().unwrap_or(50)) / 100.0;
            let power = round::power(demand * speed * taken, setting.units);
            let group = chance.pick(&truck.spec().axle_groups)?;
            let lump =
                HeatLump { capacity: truck.heat_capacity(group), cooling: truck.cooling(group, speed) };
            let air = round::temperature(setting.day.air(), setting.units);
            let start = round::temperature(Celsius(setting.day.brakes_at_start_c), setting.units);
            let group_power = power * group.effort_share;
            let time = length / speed;
            let settled = air + Celsius(group_power.0 / lump.cooling);
            let foot = lump.after(start, air, group_power, time);
            let to_go = settled - start;
            if demand.0 <= 0.0 || foot > HOTTEST || to_go.0 < 1.0 {
                continue;
            }
            return Some(Self {
                length,
                speed,
                time,
                power,
                place: group.place,
                axles: group.axles,
                share: group.effort_share,
                group_power,
                lump,
                air,
                start,
                settled,
                time_constant: Seconds(lump.capacity / lump.cooling),
                ahead: (settled - foot) / to_go,
                foot,
                limit: Celsius(setting.day.heat_limit_c),
            });
        }
        None
    }
}
