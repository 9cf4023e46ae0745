//! One road recorded once more: errors of heights and places do not change the answer.

use crate::sweep::{at_most, cases};
use solver::plan::Plan;
use solver::road::{Road, read, survey};
use std::f64::consts::TAU;
use tests::cases::Case;
use tests::generate::{Chance, Drive, Instrument, Sample, TrueRoad, gpx_text};

/// Cases tried in CI, each with every kind of noise.
const USUAL_CASES: u64 = 300;

/// Holds that differ by more than this factor are different answers.
const ANOTHER: f64 = 1.15;

/// Noise: standard deviation of each height, m, and drift of places, m. Then the share of descents, %, that
/// may get a different answer, and the known miss (DIFFERENCE).
const NOISE: [(f64, f64, f64, Option<f64>); 3] =
    [(0.3, 0.0, 2.0, Some(2.34)), (1.0, 0.0, 5.0, Some(13.0)), (0.0, 2.0, 3.0, None)];

fn surveyed(samples: &[Sample]) -> Road {
    let text = gpx_text("generated", samples, &[], 7);
    let document = read(text.as_bytes(), &mut |_| true).unwrap_or_else(|e| panic!("not read: {e}"));
    survey(&document, 0, &mut |_| true).unwrap_or_else(|e| panic!("not surveyed: {e}"))
}

/// The points with independent errors of height, and with errors of place that drift to and fro over 3 km.
fn noisy(samples: &[Sample], sigma_m: f64, drift_m: f64, seed: u64) -> Vec<Sample> {
    /// Metres of one degree of latitude, close enough for an error.
    const DEGREE_M: f64 = 111_000.0;
    let mut chance = Chance::new(seed);
    let phases = [chance.between(0.0, TAU), chance.between(0.0, TAU)];
    let shift =
        |sample: &Sample, phase: f64| drift_m * libm::sin(sample.s_m * (TAU / 3_000.0) + phase) / DEGREE_M;
    let with = |sample: &Sample| Sample {
        height_m: sample.height_m + sigma_m * chance.normal(),
        lat_deg: sample.lat_deg + shift(sample, phases[0]),
        lon_deg: sample.lon_deg + shift(sample, phases[1]),
        ..*sample
    };
    samples.iter().map(with).collect()
}

/// The hold in one gear at a place given as a share of the road, km/h.
fn hold_at(plan: &Plan, cells: usize, share: f64) -> Option<f64> {
    let point = (share * cells as f64).round() as usize;
    let descent = plan.descents.iter().find(|it| it.from <= point && point <= it.to)?;
    Some(descent.one_gear.map_or(0.0, |one| one.speed.kmh()))
}

#[test]
fn noise_does_not_change_the_answer() {
    let (count, usual) = cases(USUAL_CASES);
    let mut descents = 0_u32;
    let mut others = [0_u32; NOISE.len()];
    for number in 0..count {
        let case = Case::of(number);
        let (truth, truck): (TrueRoad, _) = (case.truth(), case.truck());
        let samples = Drive::new(Instrument::Exact, 15.0, number).record(&truth);
        let planned =
            |road: &Road| solver::analyse(road, &truck, &case.day, &mut |_| true).expect("not stopped").0;
        let road = surveyed(&samples);
        let plan = planned(&road);
        descents += plan.descents.len() as u32;
        for (k, (sigma_m, drift_m, ..)) in NOISE.into_iter().enumerate() {
            let again = surveyed(&noisy(&samples, sigma_m, drift_m, number ^ 0x0153));
            let other = planned(&again);
            for descent in &plan.descents {
                let share = descent.from.midpoint(descent.to) as f64 / road.cells() as f64;
                let here = hold_at(&plan, road.cells(), share).unwrap_or(f64::NAN);
                let there = hold_at(&other, again.cells(), share);
                let same = there.is_some_and(|it| it <= here * ANOTHER && here <= it * ANOTHER);
                others[k] += u32::from(!same);
            }
        }
    }
    for (k, (sigma_m, drift_m, wanted, known)) in NOISE.into_iter().enumerate() {
        let share = 100.0 * f64::from(others[k]) / f64::from(descents);
        let what = format!("heights ±{sigma_m} m, places ±{drift_m} m: another answer, % of {descents}");
        at_most(&what, share, wanted, known, usual);
    }
}
