//! Drives a way down: from before the crest to where the next descent is slowed for.

use super::approach::Approach;
use super::ask::Ask;
use super::hill::joules_per_kelvin;
use crate::motion::{BrakeHeat, Hold, Run, Sample, State};
use crate::road::Road;
use crate::units::{Celsius, Grade, Joules, Seconds, Watts};

/// What lies ahead of a descent: how the next one begins, and how far the drive goes on.
pub(super) struct Ahead {
    pub(super) holds: Vec<Hold>,
    pub(super) end: usize,
}

/// A way down, driven.
pub(super) struct Driven {
    pub(super) holds: Vec<Hold>,
    pub(super) at_crest: Celsius,
    pub(super) at_foot: State,
    pub(super) figures: Figures,
    /// The drive, a sample for each cell.
    pub(super) samples: Vec<Sample>,
}

/// Figures of a drive, from crest to foot.
#[derive(Debug, Clone, Copy)]
pub(super) struct Figures {
    pub(super) hottest: Celsius,
    pub(super) hottest_after_stop: Celsius,
    pub(super) holding_work: Joules,
    pub(super) service_work: Joules,
    pub(super) time: Seconds,
}

impl Figures {
    /// Figures from the samples of the cells `from..to`; `before` is the time at `from`.
    pub(super) fn of(road: &Road, from: usize, samples: &[Sample], before: Seconds) -> Self {
        let mut all = Self {
            hottest: Celsius(f64::NEG_INFINITY),
            hottest_after_stop: Celsius(f64::NEG_INFINITY),
            holding_work: Joules(0.0),
            service_work: Joules(0.0),
            time: samples.last().map_or(Seconds(0.0), |last| last.time - before),
        };
        for (cell, sample) in (from..).zip(samples) {
            all.hottest = Celsius(all.hottest.0.max(sample.hottest.0));
            all.hottest_after_stop = Celsius(all.hottest_after_stop.0.max(sample.after_stop.0));
            let way = road.step_m() / Grade(road.grades()[cell]).sin_cos().1;
            let held = sample.to_hold.0 * way;
            all.holding_work = Joules(all.holding_work.0 + held * sample.carried);
            all.service_work = Joules(all.service_work.0 + held * (1.0 - sample.carried));
        }
        all
    }

    /// The service brakes' share of the braking work.
    pub(super) fn service_share(&self) -> f64 {
        let all = self.holding_work.0 + self.service_work.0;
        if all > 0.0 { self.service_work.0 / all } else { 0.0 }
    }
}

impl Ask<'_> {
    /// Drives these holds; `None` where one hard stop would take the brakes above `limit`.
    pub(super) fn drive(
        &self,
        approach: &Approach,
        holds: Vec<Hold>,
        ahead: &Ahead,
        limit: Celsius,
    ) -> Option<Driven> {
        let (trip, road, stretch) = (self.trip, self.road, self.stretch);
        let all: Vec<Hold> = holds.iter().chain(&ahead.holds).copied().collect();
        let to_crest = Run::along(trip, road, approach.at, stretch.from, &all, approach.state);
        let cells = stretch.to - stretch.from;
        let (mut driven, mut at_foot) = (0, to_crest.end);
        let mut watch = |state: &State| {
            driven += 1;
            if driven == cells {
                at_foot = *state;
            }
        };
        let whole = stretch.from..ahead.end;
        let down = Run::within(trip, road, whole, &all, to_crest.end, limit, &mut watch)?;
        let figures = Figures::of(road, stretch.from, &down.samples[..cells], Seconds(0.0));
        let at_crest = to_crest.end.brakes.hottest(trip);
        let mut samples = down.samples;
        samples.truncate(cells);
        Some(Driven { holds, at_crest, at_foot, figures, samples })
    }

    /// Work of the service brakes from where each hold of a drive begins to where the next one does.
    pub(super) fn service_work_by_hold(&self, driven: &Driven) -> Vec<Joules> {
        let first = self.stretch.from;
        let ends = driven.holds.iter().skip(1).map(|hold| hold.from).chain([self.stretch.to]);
        let work = driven.holds.iter().zip(ends).map(|(hold, end)| {
            let samples = &driven.samples[hold.from - first..end - first];
            Figures::of(self.road, hold.from, samples, Seconds(0.0)).service_work
        });
        work.collect()
    }

    /// By how much a drive warms brakes that come cold at most, K. Where its whole work warms them by no more
    /// than `enough`, their cooling is left out.
    pub(super) fn warms_k(&self, driven: &Driven, enough: f64) -> f64 {
        let whole = driven.figures.service_work.0 / joules_per_kelvin(self.trip);
        if whole <= enough {
            return whole;
        }
        let air = self.trip.day.air();
        let (mut brakes, mut before, mut most) = (BrakeHeat::uniform(air), Seconds(0.0), 0.0);
        for sample in &driven.samples {
            let (time, braked) = (sample.time - before, sample.to_hold.0 * (1.0 - sample.carried));
            brakes = brakes.after(self.trip, Watts(braked * sample.speed.0), sample.speed, time);
            most = f64::max(most, brakes.hottest(self.trip).0 - air.0);
            before = sample.time;
        }
        most
    }
}
