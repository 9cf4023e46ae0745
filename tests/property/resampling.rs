//! A road recorded twice gets one and the same plan.

use solver::Day;
use solver::analyse;
use solver::truck::Preset;
use tests::generate::{Drive, Instrument, TrueRoad};
use tests::trucks::preset;
use tests::truth::survey_drive;

/// From points 12 m and 6 m apart: driving times within one per cent, and on all descents of these twelve
/// roads one gear and speeds within 1 km/h. Excepted are descents where a gear only just keeps its reserve,
/// one in twenty-five; there it is the next gear.
#[test]
fn resampling_barely_moves_the_plan() {
    let truck = preset(Preset::FiveAxle36);
    let (mut descents, mut other) = (0, Vec::new());
    for seed in 1..=12 {
        let true_road = TrueRoad::random(seed, 15_000.0);
        let planned = |spacing_m: f64| {
            let road = survey_drive(&true_road, &Drive::new(Instrument::Exact, spacing_m, seed));
            let (plan, _) = analyse(&road, &truck, &Day::USUAL, &mut |_| true).expect("not cancelled");
            let advice =
                plan.descents.iter().map(|d| d.one_gear.map(|way| (way.gear.number(), way.speed.kmh())));
            (advice.collect::<Vec<_>>(), plan.totals.time.0)
        };
        let ((coarse, coarse_time), (fine, fine_time)) = (planned(12.0), planned(6.0));
        assert_eq!(coarse.len(), fine.len(), "road {seed}: as many descents");
        for (a, b) in coarse.iter().zip(&fine) {
            assert_eq!(a.is_some(), b.is_some(), "road {seed}: {a:?} {b:?}");
            let (Some(a), Some(b)) = (a, b) else { continue };
            assert!(a.0.abs_diff(b.0) <= 1, "road {seed}: gears {} and {}", a.0, b.0);
            descents += 1;
            if a.0 != b.0 || (a.1 - b.1).abs() > 1.01 {
                other.push((seed, *a, *b));
            }
        }
        let longer = (fine_time / coarse_time - 1.0).abs();
        assert!(
            longer < 1e-2 || other.iter().any(|it| it.0 == seed),
            "road {seed}: {coarse_time} {fine_time}"
        );
    }
    assert!(other.len() * 25 <= descents, "{} of {descents}: {other:?}", other.len());
}
