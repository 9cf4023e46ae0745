//! Printed roads as the truth of grades and curves: written as a track, read, and measured like any file.

use super::{Expected, Origin, Row, Status, near, near_or_known, number};
use crate::generate::{Alignment, Bend, Chance, Drive, Instrument, Plan, Tangent, TrueRoad};
use crate::trucks::{FOOT, MPH, preset};
use crate::truth::survey_samples;
use solver::day::Day;
use solver::motion::Trip;
use solver::road::Road;
use solver::truck::Preset;

const GRADE: Origin = Origin {
    key: "CFR-GRADE",
    status: Status::Computed,
    source: "40 CFR part 1037, appendix IV (2016 to 2021): grade by station, printed as far as 14 km, used to 8,458 m; means are computed from it",
};
const HEIGHT: Origin = Origin {
    key: "CFR-HEIGHT",
    status: Status::Computed,
    source: "40 CFR part 1037, appendix IV (2016 to 2021): heights are the sums of its grades",
};
const ROAD: Origin = Origin {
    key: "HCM-ROAD",
    status: Status::Printed,
    source: "Highway Capacity Manual, 7th edition, exhibit 26-30: a mountain road of grades and curves",
};
const CURVE: Origin = Origin {
    key: "HCM-CURVE",
    status: Status::Printed,
    source: "Highway Capacity Manual, 7th edition, exhibit 26-34: free-flow speeds of cars in three curves, before adjustment",
};

/// Stations in m and grades in %, linear between.
const STATIONS: [(f64, f64); 83] = [
    (0.0, 0.0),
    (808.0, 0.0),
    (820.0, -0.10),
    (832.0, 0.0),
    (842.0, 0.0),
    (892.0, 0.36),
    (942.0, 0.0),
    (952.0, 0.0),
    (1006.0, -0.28),
    (1102.0, -1.04),
    (1198.0, -0.28),
    (1252.0, 0.0),
    (1264.0, 0.0),
    (1390.0, 0.39),
    (1458.0, 0.66),
    (1534.0, 1.15),
    (1696.0, 2.44),
    (1858.0, 1.15),
    (1934.0, 0.66),
    (2002.0, 0.39),
    (2128.0, 0.0),
    (2146.0, 0.0),
    (2330.0, -0.46),
    (2398.0, -0.69),
    (2478.0, -1.08),
    (2546.0, -1.53),
    (2698.0, -2.75),
    (2850.0, -1.53),
    (2918.0, -1.08),
    (2998.0, -0.69),
    (3066.0, -0.46),
    (3250.0, 0.0),
    (3264.0, 0.0),
    (3340.0, 0.35),
    (3416.0, 0.90),
    (3502.0, 1.59),
    (3588.0, 0.90),
    (3664.0, 0.35),
    (3740.0, 0.0),
    (3756.0, 0.0),
    (3822.0, -0.10),
    (4094.0, -0.69),
    (4176.0, -0.97),
    (4262.0, -1.36),
    (4330.0, -1.78),
    (4514.0, -3.23),
    (4698.0, -1.78),
    (4766.0, -1.36),
    (4852.0, -0.97),
    (4934.0, -0.69),
    (5206.0, -0.10),
    (5272.0, 0.0),
    (5322.0, 0.0),
    (5406.0, 0.10),
    (5498.0, 0.17),
    (5720.0, 0.38),
    (5912.0, 0.58),
    (6052.0, 0.77),
    (6226.0, 1.09),
    (6312.0, 1.29),
    (6436.0, 1.66),
    (6562.0, 2.14),
    (6638.0, 2.57),
    (6710.0, 3.00),
    (6762.0, 3.27),
    (6800.0, 3.69),
    (6890.0, 5.01),
    (6980.0, 3.69),
    (7018.0, 3.27),
    (7070.0, 3.00),
    (7142.0, 2.57),
    (7218.0, 2.14),
    (7344.0, 1.66),
    (7468.0, 1.29),
    (7554.0, 1.09),
    (7728.0, 0.77),
    (7868.0, 0.58),
    (8060.0, 0.38),
    (8282.0, 0.17),
    (8374.0, 0.10),
    (8458.0, 0.0),
    (8502.0, 0.0),
    (8602.0, 0.0),
];
/// Metres between the points of the track.
const SPACING_M: f64 = 10.0;

/// A straight road with these heights in the open ocean.
fn straight(alignment: Alignment) -> TrueRoad {
    let plan = Plan { lat_deg: -40.0, lon_deg: -20.0, heading_deg: 60.0, bends: vec![Bend::straight(1e5)] };
    TrueRoad { alignment, plan }
}

/// The road of the regulation, read from a track whose heights have independent errors of this size, m.
fn regulated(noise_m: f64) -> Road {
    let stations = STATIONS.map(|(s, percent)| (s, percent / 100.0));
    let road = straight(Alignment::of_stations(100.0, &stations));
    let mut samples = Drive::new(Instrument::Exact, SPACING_M, 1).record(&road);
    let mut chance = Chance::new(7);
    for sample in &mut samples {
        sample.height_m += noise_m * chance.normal();
    }
    survey_samples(&samples)
}

/// Steepest mean uphill grade of heights on the road's grid, %.
fn steepest(road: &Road, heights_m: &[f64], window_m: f64) -> f64 {
    let cells = (window_m / road.step_m()).round() as usize;
    let means = heights_m.windows(cells + 1).map(|it| (it[cells] - it[0]) / window_m);
    100.0 * means.fold(f64::NEG_INFINITY, f64::max)
}

/// Window, m, steepest mean, %, and the known difference of the heights that are shown.
const MEANS: [(f64, f64, Option<f64>); 5] = [
    (50.0, 4.827, Some(-0.89)),
    (100.0, 4.643, Some(-0.71)),
    (200.0, 4.278, Some(-0.34)),
    (500.0, 3.529, None),
    (1_000.0, 2.758, None),
];

/// Without noise ± 0.02 %; with noise two standard deviations of the road's own doubt of its heights. The
/// plan reads the recorded heights. The shown heights are filtered, and for them a peak of 180 m has no
/// single even grade.
pub(super) fn steepest_means() -> Vec<Row> {
    let mut rows = Vec::new();
    for noise_m in [0.0, 0.3, 1.0] {
        let road = regulated(noise_m);
        // Over 50 m such noise leaves nothing to compare.
        for (window_m, percent, _) in MEANS.into_iter().skip(usize::from(noise_m > 0.0)) {
            let doubt = 200.0 * road.doubt().sigma_m(window_m) / window_m;
            let tolerance = if noise_m == 0.0 { 0.02 } else { doubt.max(0.02) };
            let what = format!("Steepest mean over {} m, heights ± {noise_m} m", number(window_m, 0));
            let ours = steepest(&road, road.recorded_m(), window_m);
            rows.push(GRADE.row(what, "%", near(percent, tolerance), ours));
        }
    }
    let road = regulated(0.0);
    rows.extend(MEANS.map(|(window_m, percent, known)| {
        let what = format!("Steepest mean over {} m, heights as they are shown", number(window_m, 0));
        let ours = steepest(&road, road.heights_m(), window_m);
        GRADE.row(what, "%", near_or_known(percent, 0.02, known, 0.005), ours)
    }));
    rows
}

/// Without noise to the centimetre of the file and of averaged vertical curves; with noise to twice the
/// noise.
pub(super) fn heights() -> Vec<Row> {
    let mut rows = Vec::new();
    for noise_m in [0.0, 0.3, 1.0] {
        let road = regulated(noise_m);
        let at = |s_m: f64| {
            let cells = s_m / road.step_m();
            let (k, share) = (cells.floor() as usize, cells.fract());
            road.heights_m()[k] * (1.0 - share) + road.heights_m()[(k + 1).min(road.cells())] * share
        };
        for (s_m, height_m) in [
            (1_696.0, 2.948),
            (2_128.0, 7.146),
            (3_250.0, -4.178),
            (4_514.0, -9.288),
            (5_272.0, -17.754),
            (6_890.0, 2.416),
            (8_458.0, 22.587),
        ] {
            let tolerance = (2.0 * noise_m).max(0.05);
            let what = format!("Height over the start at {} m, heights ± {noise_m} m", number(s_m, 0));
            rows.push(HEIGHT.row(what, "m", near(height_m, tolerance), at(s_m) - at(0.0)));
        }
    }
    rows
}

/// Miles and %.
const MOUNTAIN: [(f64, f64); 5] = [(1.3, 4.0), (1.0, 6.0), (0.5, 6.0), (1.3, 4.0), (1.0, -3.0)];
/// Length and radius of its curves, ft.
const CURVES: [(f64, f64); 3] = [(900.0, 350.0), (4_280.0, 500.0), (3_000.0, 850.0)];

/// Its grades one after the other, joined by parabolas of 100 m. Its curves, whose places are not printed,
/// with straights between them.
fn mountain() -> Road {
    let tangent = |(miles, percent): (f64, f64)| Tangent {
        length_m: miles * 5_280.0 * FOOT,
        grade: percent / 100.0,
        curve_m: 100.0,
    };
    let alignment = Alignment::new(200.0, &MOUNTAIN.map(tangent));
    let arcs = CURVES.into_iter().enumerate().flat_map(|(k, (length, radius))| {
        let turn = if k % 2 == 0 { 1.0 } else { -1.0 };
        [Bend::straight(1_000.0), Bend { length_m: length * FOOT, curvature: turn / (radius * FOOT) }]
    });
    let plan = Plan {
        lat_deg: -40.0,
        lon_deg: -20.0,
        heading_deg: 60.0,
        bends: arcs.chain([Bend::straight(1e5)]).collect(),
    };
    survey_samples(&Drive::new(Instrument::Exact, SPACING_M, 1).record(&TrueRoad { alignment, plan }))
}

/// Grades ± 0.1 %, breaks ± 50 m, radii ± 5 %.
pub(super) fn mountain_road() -> Vec<Row> {
    let road = mountain();
    let whole: f64 = MOUNTAIN.iter().map(|(miles, _)| miles * 5_280.0 * FOOT).sum();
    let scale = road.length_m() / whole;
    let mut rows = vec![ROAD.row("Length of the road", "m", near(whole, 0.001 * whole), road.length_m())];
    // Where two neighbouring printed grades are equal, there is no break to be found.
    let mut from_m = 0.0;
    for (name, miles, percent) in
        [("first", 1.3, 4.0), ("second", 1.5, 6.0), ("third", 1.3, 4.0), ("last", 1.0, -3.0)]
    {
        let to_m = from_m + miles * 5_280.0 * FOOT;
        let middle = 0.5 * (from_m + to_m) * scale / road.step_m();
        let segment = road.segments().iter().find(|it| (it.from as f64) <= middle && middle <= it.to as f64);
        let ours = segment.map_or(f64::NAN, |it| 100.0 * it.grade);
        rows.push(ROAD.row(format!("Grade of the {name} stretch"), "%", near(percent, 0.1), ours));
        if to_m + 1.0 < whole {
            let breaks = road.segments().iter().map(|it| it.to as f64 * road.step_m() / scale);
            let nearest = breaks.min_by(|a, b| (a - to_m).abs().total_cmp(&(b - to_m).abs()));
            let what = format!("End of the {name} stretch");
            rows.push(ROAD.row(what, "m", near(to_m, 50.0), nearest.unwrap_or(f64::NAN)));
        }
        from_m = to_m;
    }
    let mut start_m = 0.0;
    for (length, radius) in CURVES {
        start_m += 1_000.0;
        let middle = (start_m + 0.5 * length * FOOT) * scale / road.step_m();
        start_m += length * FOOT;
        let found = road.curves().iter().find(|it| (it.from as f64) <= middle && middle <= it.to as f64);
        let ours = found.map_or(f64::NAN, |it| it.radius_m / FOOT);
        rows.push(ROAD.row(
            format!("Radius of the curve of {length} ft"),
            "ft",
            near(radius, 0.05 * radius),
            ours,
        ));
    }
    rows
}

/// A laden truck is told lower speeds than cars drive.
pub(super) fn slower_than_cars() -> Vec<Row> {
    let day = Day { superelevation: 0.02, ..Day::USUAL };
    let truck = preset(Preset::FiveAxle36);
    let trip = Trip { truck: &truck, day: &day };
    CURVES
        .into_iter()
        .zip([40.2, 47.1, 54.0])
        .map(|((_, radius), mph)| {
            let ours = trip.curve_speed(radius * FOOT).0 / MPH;
            let what = format!("Speed told to a laden truck in a curve of {radius} ft, superelevation 2 %");
            CURVE.row(what, "mph", Expected::LessThan(mph), ours)
        })
        .collect()
}
