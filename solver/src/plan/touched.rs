//! Work of the service brakes beyond the run: recorded pitches, which the filtered heights of the run do not
//! show. Heat lumps cool in proportion. So the warming by touches does not depend on what else warms the
//! brakes, and is simply added.

use super::answer::{Choice, Descent, Verdict};
use super::ask::Ask;
use super::describe::slowest;
use super::drive::{Driven, Figures};
use super::free_run::Held;
use super::hill::joules_per_kelvin;
use super::ways::Touch;
use crate::motion::{BrakeHeat, Hold, Run, Trip};
use crate::road::Road;
use crate::units::{Celsius, MetresPerSecond, Seconds, Watts};

impl Ask<'_> {
    /// Where the truck gains speed with the full stage.
    pub(super) fn touches(&self, holds: &[Hold]) -> Vec<Touch> {
        let held = |hold: &Hold| Held { from: hold.from, to: hold.to, gear: hold.gear, speed: hold.speed };
        holds.iter().flat_map(|hold| self.hill.touches(&self.ladder, &held(hold))).collect()
    }

    /// The largest warming by all touches together, K, and what is left of it at the foot.
    pub(super) fn touched(&self, touches: &[Touch], driven: &Driven) -> (f64, BrakeHeat) {
        let (trip, air) = (self.trip, self.trip.day.air());
        let speed = slowest(&driven.holds).speed;
        let mut brakes = BrakeHeat::uniform(air);
        let (mut most, mut at) = (0.0, self.stretch.from as f64 * self.road.step_m());
        for touch in touches {
            brakes = cooled(trip, brakes, touch.from.0 - at, speed);
            let time = Seconds((touch.to.0 - touch.from.0).max(self.road.step_m()) / speed.0);
            let power = Watts(touch.kelvin * joules_per_kelvin(trip) / time.0);
            brakes = brakes.after(trip, power, speed, time);
            most = f64::max(most, brakes.hottest(trip).0 - air.0);
            at = touch.to.0;
        }
        let foot = self.stretch.to as f64 * self.road.step_m();
        (most, cooled(trip, brakes, foot - at, speed))
    }

    /// Extra warming where the brakes hold the truck, K, and what is left of it at the foot. The road as felt
    /// asks more of them than the filtered heights do.
    pub(super) fn uneven(&self, driven: &Driven) -> (f64, BrakeHeat) {
        let rolling = self.trip.truck.spec().rolling_resistance;
        let more = |hold: &Hold| {
            let held = self.ladder.held(hold.gear, hold.speed, 0.0) * self.hill.step_m;
            let (from, to) = (hold.from - self.hill.from, hold.to - self.hill.from);
            let cells = self.hill.fine[from..to].iter().zip(&self.road.grades()[hold.from..hold.to]);
            let left = |push: f64| (push - held).max(0.0);
            cells.map(|(fine, grade)| left(*fine) - left(-(grade + rolling) * self.hill.step_m)).sum::<f64>()
        };
        let (trip, air) = (self.trip, self.trip.day.air());
        let work = driven.holds.iter().map(more).sum::<f64>().max(0.0) * trip.weight().0;
        let time = Seconds(driven.figures.time.0.max(1.0));
        let left =
            BrakeHeat::uniform(air).after(trip, Watts(work / time.0), slowest(&driven.holds).speed, time);
        (work / joules_per_kelvin(trip), left)
    }
}

fn cooled(trip: Trip<'_>, brakes: BrakeHeat, way_m: f64, speed: MetresPerSecond) -> BrakeHeat {
    brakes.after(trip, Watts(0.0), speed, Seconds(way_m.max(0.0) / speed.0))
}

/// Adds the warming by touches to a run along the whole road.
pub(crate) fn warm(trip: Trip<'_>, road: &Road, run: &mut Run, descents: &[Descent]) {
    let joules = joules(trip, road, descents);
    let air = trip.day.air();
    let mut brakes = BrakeHeat::uniform(air);
    let mut before = Seconds(0.0);
    for (sample, work) in run.samples.iter_mut().zip(joules) {
        let time = Seconds((sample.time - before).0.max(0.1));
        before = sample.time;
        brakes = brakes.after(trip, Watts(work / time.0), sample.speed, time);
        let more = Celsius(brakes.hottest(trip).0 - air.0);
        sample.hottest = sample.hottest + more;
        sample.after_stop = sample.after_stop + more;
    }
}

/// The work of touches on each cell, J.
fn joules(trip: Trip<'_>, road: &Road, descents: &[Descent]) -> Vec<f64> {
    let mut joules = vec![0.0; road.cells()];
    let each = joules_per_kelvin(trip);
    let mut spread = |from: usize, to: usize, kelvin: f64| {
        let to = to.clamp(from + 1, road.cells());
        for work in &mut joules[from..to] {
            *work += kelvin * each / (to - from) as f64;
        }
    };
    for descent in descents {
        let Choice::Held(advice) = &descent.choice else { continue };
        if advice.snub.is_some() || advice.verdict == Verdict::NoSafeSpeed {
            spread(descent.from, descent.to, advice.touched_k);
            continue;
        }
        for touch in &descent.touches {
            let cell = |metres: f64| ((metres / road.step_m()).round() as usize).min(road.cells() - 1);
            spread(cell(touch.from.0), cell(touch.to.0), touch.kelvin);
        }
    }
    joules
}

/// Figures of the chosen way, taken from the run along the whole road.
pub(super) fn as_driven(road: &Road, run: &Run, descent: &mut Descent) {
    let before = descent.from.checked_sub(1).map_or(Seconds(0.0), |cell| run.samples[cell].time);
    let figures = Figures::of(road, descent.from, &run.samples[descent.from..descent.to], before);
    if let Choice::Held(advice) = &mut descent.choice {
        advice.hottest = figures.hottest;
        advice.hottest_after_stop = figures.hottest_after_stop;
        advice.holding_work = figures.holding_work;
        advice.service_work = figures.service_work;
        advice.time = figures.time;
    }
}
