//! Cutting a road into descents.

use super::ground::Ground;
use super::reach::{lower, slow_and_speed_up};
use crate::motion::{Trip, curves_between};
use crate::road::Road;
use crate::units::{Metres, MetresPerSecond};

/// A descent begins where the hill has pushed the truck down by this much height, m, beyond what rolling and
/// air take at the fastest speed allowed there. Assumed.
const IN_M: f64 = 12.0;

/// It ends where the truck would have to be pulled over this much height, m. Assumed: 600 m of level road. A
/// shorter stretch leaves no room to shift up, speed up, slow down and shift down again.
const OUT_M: f64 = 10.0;

/// Smallest drop of a descent, m. A smaller drop is rolling country, driven without choosing a gear for it.
/// Assumed.
const LEAST_DROP_M: f64 = 20.0;

/// A descent by its place on the road.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Stretch {
    pub(super) from: usize,
    pub(super) to: usize,
    /// It ends where the road ends or is not assessed, not at a foot.
    pub(super) cut_short: bool,
    /// Its highest point, where an engine holds least.
    pub(super) highest: Metres,
}

/// The descents of a road. The height by which the truck is pushed is summed along the road. A descent goes
/// from a highest point of that sum to a lowest, over whatever does not take back [`OUT_M`] in between. So a
/// step, a dam or noise of the heights cuts no descent.
pub(super) fn cut(trip: Trip<'_>, road: &Road, ground: &Ground) -> Vec<Stretch> {
    let falls = ground.falls(0, ground.cells(), 100.0);
    let fastest = fastest(trip, road);
    let rolling = trip.truck.spec().rolling_resistance;
    let mut found: Vec<(usize, usize)> = Vec::new();
    let (mut sum, mut least, mut most) = (0.0, (0.0, 0), (0.0, 0));
    let mut falling = false;
    for (cell, fall) in falls.iter().enumerate() {
        let drag = trip.air_drag(fastest[cell], trip.air_on(road, cell)).0 / trip.weight().0;
        sum += fall - (rolling + drag) * ground.step_m();
        let point = cell + 1;
        if falling {
            if sum > most.0 {
                most = (sum, point);
            } else if most.0 - sum > OUT_M {
                found.push((least.1, most.1));
                falling = false;
                least = (sum, point);
            }
        } else if sum < least.0 {
            least = (sum, point);
        } else if sum - least.0 > IN_M {
            falling = true;
            most = (sum, point);
        }
    }
    if falling {
        found.push((least.1, most.1));
    }
    found.retain(|(from, to)| ground.fall(*from, *to) >= LEAST_DROP_M);
    found.into_iter().map(|(from, to)| stretch(road, from, to)).collect()
}

/// The fastest speed at which each cell may be driven: the day's limit, or what curves leave of it.
fn fastest(trip: Trip<'_>, road: &Road) -> Vec<MetresPerSecond> {
    let mut caps = vec![trip.top_speed().0; road.cells() + 1];
    for (curve, speed) in curves_between(trip, road, 0, road.cells()) {
        lower(&mut caps, 0, (curve.from, curve.to), speed.0);
    }
    slow_and_speed_up(&mut caps, road.step_m());
    caps.into_iter().map(MetresPerSecond).collect()
}

fn stretch(road: &Road, from: usize, to: usize) -> Stretch {
    let heights = &road.surface_m()[from..=to];
    let highest = Metres(heights.iter().copied().fold(f64::NEG_INFINITY, f64::max));
    let cut_short = to == road.cells() || !road.assessed()[to];
    Stretch { from, to, cut_short, highest }
}
