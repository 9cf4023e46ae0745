//! A road recorded twice is planned the same.

use solver::Day;
use solver::analyse;
use solver::truck::Preset;
use tests::generate::{Drive, Instrument, TrueRoad};
use tests::trucks::preset;
use tests::truth::survey_drive;

/// From points 12 m and 6 m apart: the same gear and speed on every descent of these twelve
/// roads, and driving times within one per cent: radii of curves are estimates, and on one road
/// they differ enough for 0.8 %. (A gear that only just keeps its reserve could fall to either
/// side; none here does.)
#[test]
fn resampling_barely_moves_the_plan() {
    let truck = preset(Preset::FiveAxle36);
    for seed in 1..=12 {
        let true_road = TrueRoad::random(seed, 15_000.0);
        let planned = |spacing_m: f64| {
            let road = survey_drive(&true_road, &Drive::new(Instrument::Exact, spacing_m, seed));
            let (plan, _) = analyse(&road, &truck, &Day::USUAL, &mut |_| true).expect("not cancelled");
            let advice =
                plan.descents.iter().map(|d| d.choice.advice().map(|a| (a.gear, a.speed.kmh().round())));
            (advice.collect::<Vec<_>>(), plan.totals.time.0)
        };
        let ((coarse, coarse_time), (fine, fine_time)) = (planned(12.0), planned(6.0));
        assert_eq!(coarse, fine, "road {seed}");
        assert!((fine_time / coarse_time - 1.0).abs() < 1e-2, "road {seed}: {coarse_time} {fine_time}");
    }
}
