//! How near the road comes to the truth on generated roads: the figures behind "can be trusted".

use crate::generate::{Bend, Bump, Drive, Instrument, Sample, TrueRoad, gpx_text};
use solver::road::{Class, Curve, FindingKind, Road, read, survey};

/// Seeds of the roads of a survey of errors.
pub const ROADS: std::ops::RangeInclusive<u64> = 1..=48;

/// Errors of one drive. Grades in percentage points.
#[derive(Clone, Copy, Debug, Default)]
pub struct Errors {
    /// Root of the mean squared error of the mean grade over 100 m, taken every 10 m.
    pub grade_100m: f64,
    /// Error of the steepest 500 m downhill: ours less the truth, positive where ours is steeper.
    pub steepest_500m: f64,
    /// Error of the height difference between the ends, share of the sum of all climbs and drops.
    pub drop: f64,
    /// Length, ours less the truth, share of the truth.
    pub length: f64,
    /// Tunnels and bridges bridged, and how many there are.
    pub bridged: usize,
    /// How many there are.
    pub bumps: usize,
    /// Share of the road that is not assessed.
    pub unassessed: f64,
    /// Roughness of the recorded heights, percentage points.
    pub roughness: f64,
    /// 0 good, 1 fair, 2 poor.
    pub class: f64,
}

/// Mean of the errors over several roads (roots of mean squares for the grade).
#[must_use]
pub fn mean(errors: &[Errors]) -> Errors {
    let n = errors.len() as f64;
    let average = |pick: fn(&Errors) -> f64| errors.iter().map(pick).sum::<f64>() / n;
    Errors {
        grade_100m: average(|e| e.grade_100m * e.grade_100m).sqrt(),
        steepest_500m: average(|e| e.steepest_500m),
        drop: average(|e| e.drop),
        length: average(|e| e.length),
        bridged: errors.iter().map(|e| e.bridged).sum(),
        bumps: errors.iter().map(|e| e.bumps).sum(),
        unassessed: average(|e| e.unassessed),
        roughness: average(|e| e.roughness),
        class: average(|e| e.class),
    }
}

/// The road that the project makes from a drive.
///
/// # Panics
/// Where the file cannot be used; the generator writes usable files only.
#[must_use]
pub fn survey_drive(road: &TrueRoad, drive: &Drive) -> Road {
    survey_samples(&drive.record(road))
}

/// The road that the project makes from these points.
///
/// # Panics
/// Where they cannot be used.
#[must_use]
pub fn survey_samples(samples: &[Sample]) -> Road {
    let text = gpx_text("generated", samples, &[], 7);
    let document = read(text.as_bytes(), &mut |_| true).unwrap_or_else(|e| panic!("not read: {e}"));
    survey(&document, 0, &mut |_| true).unwrap_or_else(|e| panic!("not surveyed: {e}"))
}

/// Tunnels and bridges for a road, one in about 4 km, clear of each other.
#[must_use]
pub fn bumps(length_m: f64) -> Vec<Bump> {
    let count = (length_m / 4_000.0).floor() as usize;
    (0..count)
        .map(|k| {
            let from_m = 1_500.0 + 4_000.0 * k as f64;
            let rise_m = [35.0, -30.0, 55.0][k % 3];
            Bump { from_m, to_m: from_m + [500.0, 250.0, 900.0][k % 3], rise_m }
        })
        .filter(|bump| bump.to_m < length_m - 500.0)
        .collect()
}

/// Drives a random road and measures the errors of the result.
#[must_use]
pub fn measure(instrument: Instrument, seed: u64) -> Errors {
    let road = TrueRoad::random(seed, 20_000.0);
    let mut drive = Drive::new(instrument, 15.0, seed ^ 0x5eed);
    if instrument == Instrument::Terrain {
        drive.bumps = bumps(road.length_m());
    }
    let ours = survey_drive(&road, &drive);
    compare(&road, &drive, &ours)
}

fn compare(road: &TrueRoad, drive: &Drive, ours: &Road) -> Errors {
    // Our distance may differ a little from the true one, so places correspond by share of length.
    let scale = road.length_m() / ours.length_m();
    let width = (100.0 / ours.step_m()).round() as usize;
    let (mut sum, mut count) = (0.0, 0usize);
    for from in 0..ours.cells() - width {
        if ours.assessed()[from..from + width].iter().any(|assessed| !assessed) {
            continue;
        }
        let at = |i: usize| i as f64 * ours.step_m() * scale;
        let truth = road.alignment.mean_grade(at(from), at(from + width));
        let off = 100.0 * (ours.mean_grade(from, from + width) - truth);
        sum += off * off;
        count += 1;
    }
    let truth_500 = road.alignment.steepest(500.0);
    let ours_500 = ours.steepest(0, ours.cells(), 500.0).map_or(0.0, |(_, grade)| grade);
    let steps = ours.length_m() / 50.0;
    let travelled: f64 = (0..steps as usize)
        .map(|k| 50.0 * k as f64)
        .map(|s| (road.alignment.height_m(s + 50.0) - road.alignment.height_m(s)).abs())
        .sum();
    let rise = road.alignment.height_m(road.length_m()) - road.alignment.height_m(0.0);
    let our_rise = ours.heights_m()[ours.cells()] - ours.heights_m()[0];
    Errors {
        grade_100m: (sum / count.max(1) as f64).sqrt(),
        steepest_500m: 100.0 * (truth_500 - ours_500),
        drop: (our_rise - rise) / travelled,
        length: ours.length_m() / road.length_m() - 1.0,
        bridged: bridges(ours),
        bumps: drive.bumps.len(),
        unassessed: ours.assessed().iter().filter(|assessed| !**assessed).count() as f64
            / ours.cells() as f64,
        roughness: ours.quality().roughness_before,
        class: match ours.quality().class {
            Class::Good => 0.0,
            Class::Fair => 1.0,
            Class::Poor => 2.0,
        },
    }
}

/// Tunnels and bridges that the road says it bridged.
#[must_use]
pub fn bridges(road: &Road) -> usize {
    road.findings()
        .iter()
        .filter(|finding| {
            matches!(finding.kind, FindingKind::TunnelBridged { .. } | FindingKind::ViaductBridged { .. })
        })
        .count()
}

/// A bend of a true road, and the curve found for it.
#[derive(Clone, Copy, Debug)]
pub struct Bent {
    /// True radius, metres.
    pub radius_m: f64,
    /// True turn, radians, positive left.
    pub turn: f64,
    /// The curve found there, if any: the one that overlaps most.
    pub found: Option<Curve>,
}

/// Shorter arcs have only three or four recorded points and no radius to be found, metres.
const SHORTEST_BEND_M: f64 = 50.0;

/// Drives a random road and compares its bends of 50 m and more, and its hairpins, with the
/// curves found.
#[must_use]
pub fn bends(instrument: Instrument, seed: u64) -> (Vec<Bent>, Road) {
    bends_of(&TrueRoad::random(seed, 20_000.0), &Drive::new(instrument, 15.0, seed ^ 0x5eed))
}

/// Compares the bends of a given road and drive with the curves found.
#[must_use]
pub fn bends_of(road: &TrueRoad, drive: &Drive) -> (Vec<Bent>, Road) {
    let ours = survey_drive(road, drive);
    let scale = ours.length_m() / road.length_m() / ours.step_m();
    let whole = |from_m: f64, bend: &Bend| {
        (bend.length_m >= SHORTEST_BEND_M || 1.0 / bend.curvature.abs() < 30.0)
            && from_m + bend.length_m < road.length_m()
    };
    let arcs = road.plan.placed().filter(|(from_m, bend)| bend.curvature.abs() > 0.0 && whole(*from_m, bend));
    let bent = arcs.map(|(from_m, bend)| {
        let (from, to) = (from_m * scale, (from_m + bend.length_m) * scale);
        let overlap = |curve: &&Curve| (curve.to as f64).min(to) - (curve.from as f64).max(from);
        let found = ours.curves().iter().filter(|curve| overlap(curve) > 0.0);
        let found = found.max_by(|a, b| overlap(a).total_cmp(&overlap(b))).copied();
        Bent { radius_m: 1.0 / bend.curvature.abs(), turn: -bend.curvature * bend.length_m, found }
    });
    let bent = bent.collect();
    (bent, ours)
}
