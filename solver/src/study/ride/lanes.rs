//! A ride as arrays for the pictures.

use super::setting::Setting;
use crate::motion::{Hold, Run};
use crate::plan::{Choice, Lanes, Plan, StageSpan, stage_spans};
use crate::road::Road;
use crate::units::{Grade, MetresPerSecond, Newtons};

/// A ride along the road as arrays on the road's grid points, one value a point. Forces are those of the cell
/// that ends there.
///
/// NaN, and [`Lanes::BLANK`] in the small integers, stand where the road was not assessed. On a descent
/// without a safe speed they stand in all lanes but time and heat: draw nothing there.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RideLanes {
    /// Time since the start, s. It never decreases, and is known everywhere; no time passes where the road
    /// was not assessed. A stop at a brake check comes after its point.
    pub time: Vec<f32>,
    /// Speed, m/s.
    pub speed: Vec<f32>,
    /// Engine speed, 1/min.
    pub engine_speed: Vec<f32>,
    /// Hottest axle group, °C.
    pub temperature: Vec<f32>,
    /// Hottest brakes after one hard stop there, °C.
    pub after_stop: Vec<f32>,
    /// Gravity along the road, N: positive downhill, where it pushes.
    pub gravity: Vec<f32>,
    /// Rolling resistance and air drag, N: positive where they hold back.
    pub resistance: Vec<f32>,
    /// Holding force of retarder and motoring, N, not negative.
    pub held: Vec<f32>,
    /// Holding force of the service brakes, N, not negative.
    pub braked: Vec<f32>,
    /// Pulling force of the engine, N, not negative.
    pub pulled: Vec<f32>,
    /// Gear.
    pub gear: Vec<u8>,
    /// Stage, 0 is off.
    pub stage: Vec<u8>,
}

impl RideLanes {
    /// Grid points.
    #[must_use]
    pub fn points(&self) -> usize {
        self.time.len()
    }

    pub(super) fn of(road: &Road, plan: &Plan, setting: &Setting, run: &Run) -> Self {
        let mut shown = Lanes::driven(&|cell| setting.trip_on(cell), road, run);
        for descent in &plan.descents {
            let on_it = |hold: &&Hold| hold.from >= descent.from && hold.to <= descent.to;
            match descent.choice {
                Choice::Held(_) => {
                    for hold in setting.holds.iter().filter(on_it) {
                        shown.advise(setting.trip_on(hold.from), hold, &spans(road, setting, hold));
                    }
                }
                Choice::NoSafeSpeed(_) => shown.say_nothing(descent.from, descent.to),
            }
        }
        let mut lanes = Self {
            speed: shown.speed,
            engine_speed: shown.engine_speed,
            temperature: shown.temperature,
            after_stop: shown.after_stop,
            gear: shown.gear,
            stage: shown.stage,
            ..Self::default()
        };
        lanes.add_time_and_forces(road, setting, run);
        lanes
    }

    fn add_time_and_forces(&mut self, road: &Road, setting: &Setting, run: &Run) {
        let mut before = run.start.speed;
        self.time.push(0.0);
        for (cell, sample) in run.samples.iter().enumerate() {
            let trip = setting.trip_on(cell);
            let grade = Grade(road.grades()[cell]);
            // Over the cell as in the run: air drag at the mean of the speeds at its ends.
            let mean = MetresPerSecond(0.5 * (before.0 + sample.speed.0));
            let resistance = trip.rolling(grade) + trip.air_drag(mean, trip.air_on(road, cell));
            let held = sample.to_hold * sample.carried;
            let braked = Newtons((sample.to_hold - held).0.max(0.0));
            let forces = [trip.gravity(grade), resistance, held, braked, sample.pull];
            self.time.push(sample.time.0 as f32);
            before = sample.speed;
            // The first point has no cell before it, so it takes the values of the cell behind.
            for point in if cell == 0 { 0..=1 } else { cell + 1..=cell + 1 } {
                let known = self.speed[point].is_finite();
                let lanes = [
                    &mut self.gravity,
                    &mut self.resistance,
                    &mut self.held,
                    &mut self.braked,
                    &mut self.pulled,
                ];
                for (lane, force) in lanes.into_iter().zip(forces) {
                    lane.push(if known { force.0 as f32 } else { f32::NAN });
                }
            }
        }
    }
}

/// The stages of a hold, before and after the strongest one is lost.
fn spans(road: &Road, setting: &Setting, hold: &Hold) -> Vec<StageSpan> {
    let mut spans = stage_spans(setting.trip_on(hold.from), road, hold);
    let Some((at, _)) = setting.then().filter(|(at, _)| (hold.from + 1..hold.to).contains(at)) else {
        return spans;
    };
    spans.retain(|span| span.from < at);
    if let Some(last) = spans.last_mut() {
        last.to = last.to.min(at);
    }
    let after = stage_spans(setting.trip_on(at), road, hold).into_iter().filter(|span| span.to > at);
    spans.extend(after.map(|span| StageSpan { from: span.from.max(at), ..span }));
    spans
}
