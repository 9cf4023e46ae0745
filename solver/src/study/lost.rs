//! The retarder lost: the places from which the truck can still be stopped, or held to the foot.

use crate::constants::GRAVITY;
use crate::limits::bounds::AXLE_GROUPS;
use crate::motion::{HeatLump, State, Trip, ramp_length};
use crate::plan::Descent;
use crate::road::{PlaceKind, Road};
use crate::truck::{Gear, Stage};
use crate::units::{Celsius, Grade, Metres, MetresPerSecond, Newtons, Watts};
use serde::{Deserialize, Serialize};

/// Time until the driver has understood and brakes, s. Assumed.
const REACTION_S: f64 = 2.0;

/// Rolling resistance of a bed of loose gravel, as a share of weight (RAMP, value from memory).
const GRAVEL: f64 = 0.25;

/// Least deceleration that counts as a stop, m/s². Assumed.
const LEAST_STOP: f64 = 0.5;

/// Distance behind the foot within which a ramp is sought, m. Assumed.
const BEHIND_FOOT_M: f64 = 2_000.0;

/// What can still be done on a descent when the retarder is lost.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Lost {
    /// The last point, m from the start of the road, from which service brakes and engine still stop the
    /// truck within the heat limit, whatever was passed before. The foot where that is so all the way; `None`
    /// where not even at the crest.
    pub stop_until: Option<Metres>,
    /// The first point from which service brakes and engine hold the truck at its speed to the foot. The
    /// crest where they do all the way; `None` where they nowhere do.
    pub held_from: Option<Metres>,
    /// The first point from which neither is possible.
    pub neither_from: Option<Metres>,
    /// Escape ramps on the way and a little behind it, if the file has any.
    pub ramps: Vec<RampAhead>,
}

/// How far along a descent something holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reach {
    /// From crest to foot.
    AllTheWay,
    /// Up to this point, or from it on, m from the start of the road.
    Part(Metres),
    /// At no point.
    Nowhere,
}

impl Lost {
    /// How far down the truck can still be stopped, on a descent with this foot, m.
    #[must_use]
    pub fn can_stop(&self, foot_m: f64) -> Reach {
        match self.stop_until {
            Some(until) if until.0 >= foot_m => Reach::AllTheWay,
            Some(until) => Reach::Part(until),
            None => Reach::Nowhere,
        }
    }

    /// From where the truck can be held to the foot, on a descent with this crest, m.
    #[must_use]
    pub fn can_hold(&self, crest_m: f64) -> Reach {
        match self.held_from {
            Some(from) if from.0 <= crest_m => Reach::AllTheWay,
            Some(from) => Reach::Part(from),
            None => Reach::Nowhere,
        }
    }
}

/// An escape ramp that the file knows of.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct RampAhead {
    /// Distance from the start of the road.
    pub at: Metres,
    /// Where the truck is taken to be lost: the first place where it can neither be stopped nor held, or else
    /// the crest.
    pub lost_at: Metres,
    /// Speed at the ramp, in gear, without retarder and service brakes from there on.
    pub speed: MetresPerSecond,
    /// Length of level gravel bed that would stop the truck.
    pub needs: Metres,
}

/// `states` are those at the ends of the road's cells.
pub(super) fn lost(trip: Trip<'_>, road: &Road, descent: &Descent, states: &[State]) -> Lost {
    let way = Way { trip, road, from: descent.from, to: descent.to, states };
    let stops: Vec<bool> = (descent.from..descent.to).map(|cell| way.can_stop(cell)).collect();
    let bearable = way.bearable();
    let holds: Vec<bool> = (descent.from..descent.to)
        .map(|cell| {
            let brakes = &states[cell].brakes;
            (0..way.groups()).all(|group| brakes.of_group(group).0 <= bearable[cell - descent.from][group])
        })
        .collect();
    let metre = |cell: usize| Metres((descent.from + cell) as f64 * road.step_m());
    let first_not = stops.iter().position(|it| !it);
    let stop_until = match first_not {
        None => Some(descent.foot),
        Some(0) => None,
        Some(cell) => Some(metre(cell)),
    };
    let last_not = holds.iter().rposition(|it| !it);
    let held_from = match last_not {
        None => Some(descent.crest),
        Some(cell) if cell + 1 == holds.len() => None,
        Some(cell) => Some(metre(cell + 1)),
    };
    let neither = stops.iter().zip(&holds).position(|(stops, holds)| !stops && !holds);
    let neither_from = neither.map(metre);
    let lost_at = descent.from + neither.unwrap_or(0);
    Lost { stop_until, held_from, neither_from, ramps: way.ramps(lost_at) }
}

struct Way<'a> {
    trip: Trip<'a>,
    road: &'a Road,
    from: usize,
    to: usize,
    states: &'a [State],
}

impl Way<'_> {
    fn groups(&self) -> usize {
        self.trip.truck.spec().axle_groups.len()
    }

    fn grade(&self, cell: usize) -> Grade {
        Grade(self.road.grades()[cell])
    }

    /// Force that still pushes against the engine alone.
    fn push(&self, cell: usize, gear: Gear, speed: MetresPerSecond) -> Newtons {
        let air = self.trip.air_on(self.road, cell);
        let held = self.trip.holding(gear, Stage::OFF, speed, air);
        self.trip.demand(speed, self.grade(cell), air) - held
    }

    /// Speed when the driver begins to brake.
    fn noticed(&self, cell: usize) -> MetresPerSecond {
        let State { speed, gear, .. } = self.states[cell];
        let gaining = self.push(cell, gear, speed).0 / self.trip.truck.inertial_mass(gear).0;
        MetresPerSecond(speed.0 + (gaining * REACTION_S).max(0.0))
    }

    fn can_stop(&self, cell: usize) -> bool {
        // Grip of the tyres beyond what the hill takes, m/s²; on ice there may be none.
        let room = (self.trip.day.surface.friction() + self.grade(cell).0) * GRAVITY;
        if room < LEAST_STOP {
            return false;
        }
        let after =
            self.states[cell].brakes.hottest_after_stop(self.trip, self.noticed(cell), self.grade(cell));
        after.0 <= self.trip.day.heat_limit_c
    }

    /// For each cell and axle group, the warmest brakes from which the service brakes, in place of the
    /// retarder, take the truck to the foot at its speed within the limit. The pass goes from the foot
    /// backwards: the temperature allowed at the end of a cell gives the one allowed at its beginning.
    fn bearable(&self) -> Vec<[f64; AXLE_GROUPS]> {
        let (trip, limit) = (self.trip, self.trip.day.heat_limit_c);
        let groups = &trip.truck.spec().axle_groups;
        let mut ends = [limit; AXLE_GROUPS];
        let mut list = vec![ends; self.to - self.from];
        for cell in (self.from..self.to).rev() {
            let speed = self.noticed(cell);
            let short = self.push(cell, self.states[cell].gear, speed).0.max(0.0);
            let time = Metres(self.road.step_m() / self.grade(cell).sin_cos().1) / speed;
            for (end, group) in ends.iter_mut().zip(groups) {
                let lump = HeatLump {
                    capacity: trip.truck.heat_capacity(group),
                    cooling: trip.truck.cooling(group, speed),
                };
                let power = Watts(short * speed.0 * group.effort_share);
                *end = lump.before(Celsius(*end), trip.day.air(), power, time).0.min(limit);
            }
            list[cell - self.from] = ends;
        }
        list
    }

    fn ramps(&self, lost_at: usize) -> Vec<RampAhead> {
        let last = self.to + (BEHIND_FOOT_M / self.road.step_m()) as usize;
        let ahead = self.road.places().iter().filter(|place| {
            place.kind == PlaceKind::EscapeRamp && place.index > lost_at && place.index <= last
        });
        ahead
            .filter_map(|place| {
                let speed = self.rolled(lost_at, place.index)?;
                Some(RampAhead {
                    at: Metres(place.index as f64 * self.road.step_m()),
                    lost_at: Metres(lost_at as f64 * self.road.step_m()),
                    speed,
                    needs: ramp_length(speed, GRAVEL, Grade(0.0))?,
                })
            })
            .collect()
    }

    /// Speed after rolling with the engine alone; `None` where the truck stops before, or the road on the way
    /// was not assessed.
    fn rolled(&self, from: usize, to: usize) -> Option<MetresPerSecond> {
        let gear = self.states[from].gear;
        let mass = self.trip.truck.inertial_mass(gear).0;
        let mut speed = self.states[from].speed.0;
        for cell in from..to.min(self.road.cells()) {
            if !self.road.assessed()[cell] {
                return None;
            }
            let push = self.push(cell, gear, MetresPerSecond(speed));
            let way = self.road.step_m() / self.grade(cell).sin_cos().1;
            speed = (speed * speed + 2.0 * push.0 / mass * way).max(0.0).sqrt();
            if speed < 1.0 {
                return None;
            }
        }
        Some(MetresPerSecond(speed))
    }
}
