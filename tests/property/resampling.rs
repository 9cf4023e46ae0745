//! A road recorded twice is planned the same.

use solver::Day;
use solver::analyse;
use solver::truck::Preset;
use tests::generate::{Drive, Instrument, TrueRoad};
use tests::trucks::preset;
use tests::truth::survey_drive;

/// From points 12 m and 6 m apart: the same gear on every descent of these twelve roads, the
/// speed within 1 km/h and driving times within one per cent: radii of curves are estimates,
/// and where a curve governs they move the speed by that. (A gear that only just keeps its reserve could fall to either
/// side; none here does.)
#[test]
fn resampling_barely_moves_the_plan() {
    let truck = preset(Preset::FiveAxle36);
    for seed in 1..=12 {
        let true_road = TrueRoad::random(seed, 15_000.0);
        let planned = |spacing_m: f64| {
            let road = survey_drive(&true_road, &Drive::new(Instrument::Exact, spacing_m, seed));
            let (plan, _) = analyse(&road, &truck, &Day::USUAL, &mut |_| true).expect("not cancelled");
            let advice = plan.descents.iter().map(|d| d.choice.advice().map(|a| (a.gear, a.speed.kmh())));
            (advice.collect::<Vec<_>>(), plan.totals.time.0)
        };
        let ((coarse, coarse_time), (fine, fine_time)) = (planned(12.0), planned(6.0));
        let gears =
            |advice: &[Option<(_, f64)>]| -> Vec<_> { advice.iter().map(|it| it.map(|it| it.0)).collect() };
        assert_eq!(gears(&coarse), gears(&fine), "road {seed}");
        for (a, b) in coarse.iter().flatten().zip(fine.iter().flatten()) {
            assert!((a.1 - b.1).abs() < 1.01, "road {seed}: {} and {} km/h", a.1, b.1);
        }
        assert!((fine_time / coarse_time - 1.0).abs() < 1e-2, "road {seed}: {coarse_time} {fine_time}");
    }
}
