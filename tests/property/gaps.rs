//! Missing points: straights of a drawn route are known, holes are not. The heights that a plan reads go
//! straight across unknown road, from one recorded height to the next.

use solver::road::{Road, Unassessed};
use solver::{Day, Plan as Told, Preset, ServiceBrakes, Truck, analyse};
use tests::generate::{Alignment, Bend, Chance, Drive, Instrument, Plan, Sample, Tangent, TrueRoad};
use tests::truth::survey_samples;

const SEEDS: std::ops::RangeInclusive<u64> = 1..=40;

/// Straights of 320 to 500 m between bends of 20 to 90° and 80 to 400 m, with grades that change by up to 3
/// points.
fn road(seed: u64) -> TrueRoad {
    let mut chance = Chance::new(seed ^ 0x0d1a);
    let (mut bends, mut sum) = (Vec::new(), 0.0);
    while sum < 8_000.0 {
        let side = if chance.happens(0.5) { 1.0 } else { -1.0 };
        for _ in 0..2 {
            bends.push(Bend::arc(chance.between(80.0, 400.0), side * chance.between(20.0, 90.0)));
            bends.push(Bend::straight(chance.between(40.0, 200.0)));
        }
        bends.push(Bend::arc(chance.between(80.0, 400.0), -side * chance.between(20.0, 90.0)));
        bends.push(Bend::straight(chance.between(320.0, 500.0)));
        sum = bends.iter().map(|bend| bend.length_m).sum();
    }
    let (mut tangents, mut left, mut grade) = (Vec::new(), 8_000.0, -0.05);
    while left > 0.0 {
        let length_m = chance.between(300.0, 1_200.0);
        tangents.push(Tangent { length_m, grade, curve_m: 100.0 });
        grade = (grade + chance.between(-0.03, 0.03)).clamp(-0.09, 0.02);
        left -= length_m;
    }
    let plan = Plan { lat_deg: -39.0, lon_deg: -21.0, heading_deg: 130.0, bends };
    TrueRoad { alignment: Alignment::new(1_500.0, &tangents), plan }
}

/// The points of a drawing: every 10 m in bends, none within straights of 250 m and more.
fn drawn(truth: &TrueRoad) -> Vec<Sample> {
    let mut samples = Drive::new(Instrument::Exact, 10.0, 1).record(truth);
    let straights: Vec<(f64, f64)> = truth
        .plan
        .placed()
        .filter(|(_, bend)| bend.curvature.abs() < 1e-9 && bend.length_m >= 250.0)
        .map(|(from_m, bend)| (from_m + 5.0, from_m + bend.length_m - 5.0))
        .collect();
    let end_m = truth.length_m();
    let within = |s_m: f64| s_m < end_m && straights.iter().any(|(from, to)| *from < s_m && s_m < *to);
    samples.retain(|sample| !within(sample.s_m));
    samples
}

#[test]
fn straights_of_a_drawn_route_are_known() {
    let (mut long_m, mut blank_m, mut worst_m) = (0.0, 0.0, 0.0_f64);
    for seed in SEEDS {
        let truth = road(seed);
        let samples = drawn(&truth);
        // How a straight at the very end goes on is unknown.
        let within = &samples[..samples.len() - 1];
        let steps = within.windows(2).map(|pair| pair[1].s_m - pair[0].s_m);
        long_m += steps.filter(|step_m| *step_m > 300.0).sum::<f64>();
        let found = survey_samples(&samples);
        blank_m += blank(&found.part(0, found.cells() - 50).expect("most of it"));
        let scale = truth.length_m() / found.length_m();
        for (i, height_m) in found.surface_m().iter().enumerate() {
            let true_m = truth.alignment.height_m(i as f64 * found.step_m() * scale);
            worst_m = worst_m.max((height_m - true_m).abs());
        }
    }
    println!("{blank_m:.0} m of {long_m:.0} m of straights blank, heights off by up to {worst_m:.1} m");
    assert!(long_m > 20_000.0 && blank_m <= 0.05 * long_m);
    assert!(worst_m < 8.0);
}

fn blank(road: &Road) -> f64 {
    road.unassessed().iter().map(|span| (span.to - span.from) as f64 * road.step_m()).sum()
}

/// A hole in a recording stays a hole, and so does a hole in a drawing with a bend in it.
#[test]
fn holes_are_not_known() {
    let without = |samples: &[Sample], from_m: f64, to_m: f64| -> Vec<Sample> {
        samples.iter().copied().filter(|it| it.s_m <= from_m || it.s_m >= to_m).collect()
    };
    for seed in SEEDS {
        let truth = road(seed);
        let recorded = Drive::new(Instrument::Recorder, 15.0, seed).record(&truth);
        let found = survey_samples(&without(&recorded, 3_000.0, 3_450.0));
        assert!(blank(&found) > 200.0, "a hole in a recording");
        hold_surface(&found);
        // Leaves out bends of 60° and more, and what lies beside them.
        let sharp = |bend: &Bend| bend.length_m * bend.curvature.abs() > 1.05;
        let bend = truth.plan.placed().find(|(from_m, bend)| *from_m > 1_000.0 && sharp(bend));
        if let Some((from_m, bend)) = bend {
            let samples = without(&drawn(&truth), from_m - 100.0, from_m + bend.length_m + 100.0);
            let found = survey_samples(&samples);
            let holes = found.unassessed().iter().filter(|span| span.why == Unassessed::Gap);
            assert!(holes.count() > 0, "seed {seed}: a bend was left out");
            hold_surface(&found);
        }
    }
}

/// The heights that a plan reads are the recorded ones at both ends of an unassessed stretch. They are
/// straight between one recorded height and the next.
fn hold_surface(road: &Road) {
    let (surface, recorded) = (road.surface_m(), road.recorded_m());
    assert!(surface.iter().all(|height| height.is_finite()));
    for span in road.unassessed().iter().filter(|span| span.why == Unassessed::Gap) {
        let known: Vec<usize> = (span.from..=span.to).filter(|i| recorded[*i].is_finite()).collect();
        assert!(known.starts_with(&[span.from]) && known.ends_with(&[span.to]), "both ends are known");
        for pair in known.windows(2) {
            let rise = (surface[pair[1]] - surface[pair[0]]) / (pair[1] - pair[0]) as f64;
            assert!((surface[pair[0]] - recorded[pair[0]]).abs() < 1e-9, "as recorded at {}", pair[0]);
            for i in pair[0]..pair[1] {
                assert!((surface[i + 1] - surface[i] - rise).abs() < 1e-6, "straight across a gap");
            }
        }
    }
}

/// 10 km of 7 %; 600 m of it may lack points.
fn told(holed: bool, preset: Preset, day: &Day) -> Told {
    let tangents = [
        Tangent { length_m: 1_000.0, grade: 0.0, curve_m: 100.0 },
        Tangent { length_m: 10_000.0, grade: -0.07, curve_m: 100.0 },
        Tangent { length_m: 1_000.0, grade: 0.0, curve_m: 100.0 },
    ];
    let plan =
        Plan { lat_deg: -39.0, lon_deg: -21.0, heading_deg: 130.0, bends: vec![Bend::straight(12_000.0)] };
    let truth = TrueRoad { alignment: Alignment::new(1_500.0, &tangents), plan };
    let mut samples = Drive::new(Instrument::Exact, 15.0, 1).record(&truth);
    samples.retain(|sample| !(holed && (5_000.0..5_600.0).contains(&sample.s_m)));
    let road = survey_samples(&samples);
    assert_eq!(road.unassessed().is_empty(), !holed);
    let truck = Truck::new(preset.spec()).expect("a preset");
    analyse(&road, &truck, day, &mut |_| true).expect("not stopped").0
}

/// The whole fall of the road is told with and without a hole, and also how much of it lies in the hole.
#[test]
fn the_fall_of_a_road_includes_what_is_not_assessed() {
    let [whole, holed] = [false, true].map(|holed| told(holed, Preset::FiveAxle36, &Day::USUAL).totals);
    assert!((whole.fall.0 - 700.0).abs() < 3.0 && (holed.fall.0 - whole.fall.0).abs() < 3.0, "{holed:?}");
    assert_eq!((whole.unassessed.0, whole.fall_unassessed.0), (0.0, 0.0));
    assert!((holed.unassessed.0 - 600.0).abs() < 40.0, "{holed:?}");
    assert!((holed.fall_unassessed.0 - 42.0).abs() < 3.0, "{holed:?}");
}

/// A hole in the file saves no snub: the fall there is counted.
#[test]
fn snubs_are_counted_on_what_is_not_assessed_too() {
    let day = Day { service_brakes: ServiceBrakes::MaySnub, ..Day::USUAL };
    for preset in [Preset::FiveAxle36, Preset::Drawbar40, Preset::BDouble] {
        let snubs = |holed: bool| {
            let plan = told(holed, preset, &day);
            let advice = *plan.descents[0].choice.advice().expect("held");
            (advice.snub.expect("snubs help").count, advice.speed, advice.service_work.0)
        };
        let ((whole, fast, all), (holed, same, less)) = (snubs(false), snubs(true));
        assert_eq!(fast, same);
        // The run does no work in the hole. For the longest hole that alone would lose two snubs and more.
        assert!(less < 0.95 * all, "{preset:?}: {less} of {all} J");
        assert!(holed.abs_diff(whole) <= 1, "{preset:?}: {whole} and {holed}");
    }
}
