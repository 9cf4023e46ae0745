//! Crests, sags, dams and pitches that a road could have stay as they are, whatever recorded them. Nothing of
//! them is bridged, taken out or straightened, and steep ones are told.

use solver::road::{FindingKind, Road, Unassessed};
use tests::generate::{Alignment, Bump, Chance, Drive, Instrument, Plan, Tangent, TrueRoad};
use tests::truth::{bridges, survey_drive, survey_samples};

const INSTRUMENTS: [Instrument; 4] =
    [Instrument::Exact, Instrument::Recorder, Instrument::Receiver, Instrument::Terrain];
/// Roads of each kind for each instrument.
const SEEDS: std::ops::RangeInclusive<u64> = 1..=60;
/// Steepest grade that is still a road.
const STEEPEST: f64 = 0.18;

/// The feature in the middle of 5 km.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    /// Up and down again, 100 to 800 m each way.
    Crest,
    /// Down and up again.
    Sag,
    /// Into a valley, level over a dam, and out again.
    Dam,
    /// Down for 150 to 400 m between gentle grades.
    Pitch,
}

fn alignment(kind: Kind, chance: &mut Chance) -> Alignment {
    let mut tangents = Vec::new();
    let mut add = |length_m: f64, grade: f64, chance: &mut Chance| {
        let curve_m = chance.between(40.0, 150.0);
        tangents.push(Tangent { length_m, grade, curve_m });
    };
    add(2_000.0, chance.between(-0.06, 0.06), chance);
    let (there, back) = (chance.between(100.0, 800.0), chance.between(100.0, 800.0));
    let (one, other) = (chance.between(0.06, STEEPEST), chance.between(0.06, STEEPEST));
    match kind {
        Kind::Crest => {
            add(there, one, chance);
            add(back, -other, chance);
        }
        Kind::Sag => {
            add(there, -one, chance);
            add(back, other, chance);
        }
        Kind::Dam => {
            add(there, -one, chance);
            add(chance.between(80.0, 400.0), 0.0, chance);
            add(back, other, chance);
        }
        Kind::Pitch => add(chance.between(150.0, 400.0), -chance.between(0.14, STEEPEST), chance),
    }
    add(2_000.0, chance.between(-0.06, 0.06), chance);
    Alignment::new(900.0, &tangents)
}

fn road(kind: Kind, seed: u64) -> TrueRoad {
    let mut chance = Chance::new(seed ^ 0xc4e5);
    TrueRoad { alignment: alignment(kind, &mut chance), plan: Plan::random(&mut chance, 8_000.0) }
}

/// The steepest downhill mean over 200 m of the heights that a plan reads.
fn steepest(road: &Road) -> f64 {
    let width = (200.0 / road.step_m()).round() as usize;
    let run_m = width as f64 * road.step_m();
    road.surface_m().windows(width + 1).map(|it| (it[width] - it[0]) / run_m).fold(0.0, f64::min)
}

fn hold(kind: Kind) {
    for instrument in INSTRUMENTS {
        let (mut bridged, mut taken_out, mut flat, mut silent) = (0, 0, 0, 0);
        for seed in SEEDS {
            let truth = road(kind, seed);
            let found = survey_drive(&truth, &Drive::new(instrument, 15.0, seed));
            bridged += bridges(&found);
            taken_out += found.unassessed().len();
            let true_grade = truth.alignment.steepest(200.0);
            let bound = true_grade + 2.0 * found.doubt().sigma_m(200.0) / 200.0;
            flat += usize::from(steepest(&found) > bound);
            let told = |kind: &FindingKind| matches!(kind, FindingKind::VerySteep { .. });
            let told = found.findings().iter().any(|finding| told(&finding.kind));
            silent += usize::from(true_grade < -0.16 && !told);
        }
        println!(
            "{kind:?}, {instrument:?}: bridged {bridged}, taken out {taken_out}, too flat {flat}, steep and not told {silent}"
        );
        assert_eq!((bridged, taken_out, flat), (0, 0, 0), "{kind:?}, {instrument:?}");
        // With errors of 2 m, 16 % over 200 m come out below 15 % now and then: one pitch of the 60.
        let known = usize::from(kind == Kind::Pitch && instrument == Instrument::Terrain);
        assert!(silent <= known, "{kind:?}, {instrument:?}: {silent} steep and not told");
    }
}

#[test]
fn crests_are_left_as_they_are() {
    hold(Kind::Crest);
}

#[test]
fn sags_are_left_as_they_are() {
    hold(Kind::Sag);
}

#[test]
fn dams_are_left_as_they_are() {
    hold(Kind::Dam);
}

#[test]
fn pitches_are_left_as_they_are_and_told() {
    hold(Kind::Pitch);
}

/// Heights that jump by 25 to 60 m in one step and do not come back cannot be a road. The jump is taken out
/// and told, and the plan reads a road there again.
#[test]
fn jumps_are_taken_out() {
    for instrument in INSTRUMENTS {
        let (mut told, mut steepest_found) = (0, 0.0_f64);
        for seed in SEEDS {
            let mut chance = Chance::new(seed ^ 0x57e9);
            let gentle = |length_m: f64, grade: f64| Tangent { length_m, grade, curve_m: 100.0 };
            let tangents = [gentle(2_000.0, chance.between(-0.06, 0.06)), gentle(2_000.0, -0.03)];
            let plan = Plan::random(&mut chance, 8_000.0);
            let truth = TrueRoad { alignment: Alignment::new(900.0, &tangents), plan };
            let mut samples = Drive::new(instrument, 15.0, seed).record(&truth);
            let at_m = chance.between(1_000.0, 3_000.0);
            let jump_m = chance.between(25.0, 60.0) * if chance.happens(0.5) { 1.0 } else { -1.0 };
            for sample in samples.iter_mut().filter(|sample| sample.s_m > at_m) {
                sample.height_m += jump_m;
            }
            let found = survey_samples(&samples);
            assert_eq!(bridges(&found), 0, "{instrument:?}, {seed}");
            told += found.unassessed().iter().filter(|span| span.why == Unassessed::Step).count();
            let rises =
                found.surface_m().windows(11).map(|it| (it[10] - it[0]).abs() / 10.0 / found.step_m());
            steepest_found = steepest_found.max(rises.fold(0.0, f64::max));
        }
        println!("{instrument:?}: {told} of 60 jumps, then up to {:.1} % over 100 m", 100.0 * steepest_found);
        assert_eq!(told, SEEDS.count(), "{instrument:?}");
        assert!(steepest_found < 0.20, "{instrument:?}: {steepest_found}");
    }
}

/// Grades beside a tunnel are said to be less certain than grades of equal length elsewhere.
#[test]
fn grades_beside_a_fault_are_less_sure() {
    let truth = TrueRoad::random(3, 12_000.0);
    let mut drive = Drive::new(Instrument::Terrain, 15.0, 3);
    drive.bumps = vec![Bump { from_m: 5_000.0, to_m: 5_500.0, rise_m: 40.0 }];
    let road = survey_drive(&truth, &drive);
    assert_eq!(bridges(&road), 1);
    let at = |metres: f64| (metres / road.step_m()) as usize;
    let (from, to) = (at(4_850.0), at(5_650.0));
    for segment in road.segments() {
        let usual = road.quality().class.plus_minus(segment.base_m);
        let beside = segment.to > from && segment.from < to;
        assert!(!beside || segment.plus_minus > 1.02 * usual, "{segment:?}");
        assert!(segment.to > at(4_500.0) || (segment.plus_minus - usual).abs() < 1e-12, "{segment:?}");
    }
}

/// Natural hills above a tunnel: rounded, their flanks steep in the middle only, in heights of every
/// instrument. A hill with flanks of 45 % and more is bridged. A hill that a road might climb cannot be known
/// as a tunnel, and stays.
#[test]
fn rounded_hills_above_a_tunnel_are_bridged_where_no_road_climbs_them() {
    for instrument in INSTRUMENTS {
        for (steepest, least) in [(0.20, 0.0), (0.30, 0.0), (0.45, 0.95), (0.60, 0.97), (0.90, 0.97)] {
            let mut bridged = 0;
            for seed in SEEDS {
                let mut chance = Chance::new(seed ^ 0x7a11);
                let truth = TrueRoad::random(seed, 5_000.0);
                let length_m = chance.between(200.0, 900.0);
                // A wave from trough to trough is steepest at π·rise/length.
                let rise_m = steepest * length_m / std::f64::consts::PI;
                let mut samples = Drive::new(instrument, 15.0, seed).record(&truth);
                for sample in &mut samples {
                    let way = ((sample.s_m - 2_000.0) / length_m).clamp(0.0, 1.0);
                    sample.height_m += 0.5 * rise_m * (1.0 - libm::cos(2.0 * std::f64::consts::PI * way));
                }
                bridged += bridges(&survey_samples(&samples)).min(1);
            }
            let share = bridged as f64 / SEEDS.count() as f64;
            println!("{instrument:?}, flanks of {steepest}: {share:.2} bridged");
            assert!(share >= least, "{instrument:?}, flanks of {steepest}: {share:.2} bridged");
            assert!(
                steepest > 0.2 || bridged == 0,
                "{instrument:?}: {bridged} bridged that a road could climb"
            );
        }
    }
}
