//! Speeds on upgrades from a highway capacity manual: crawling, slowing, and one grade after the other.

use super::climbing::{speeds_along, with_their_losses};
use super::{Expected, Origin, Row, Status, near_or_known, number};
use crate::trucks::{HORSEPOWER, MPH, POUND, ideal_gears, rated_power, standard_day, truck};
use solver::motion::{Trip, crawl};
use solver::truck::{Preset, TruckSpec};
use solver::units::{Grade, Metres};

const CRAWL_TT: Origin = Origin {
    key: "HCM-CRAWL-TT",
    status: Status::Printed,
    source: "Highway Capacity Manual, 7th edition, exhibit 26-8: tractor-trailer of 150 lb/hp; speeds computed from the slope of travel time over distance",
};
const CRAWL_SUT: Origin = Origin {
    key: "HCM-CRAWL-SUT",
    status: Status::Printed,
    source: "Highway Capacity Manual, 7th edition, exhibit 26-7: single unit of 100 lb/hp; speeds computed from the slope of travel time over distance",
};
const EQUATION: Origin = Origin {
    key: "CRAWL-EQ",
    status: Status::Printed,
    source: "The same two exhibits, against our truck with the losses of CRAWL's equation (from memory) in place of its own",
};
const SLOW_TT: Origin = Origin {
    key: "HCM-SLOW",
    status: Status::Secondary,
    source: "Highway Capacity Manual, exhibit 25-21, digitised by others to 1 s/mi: tractor-trailer of 150 lb/hp",
};
const SLOW_SUT: Origin = Origin {
    key: "HCM-SLOW-SUT",
    status: Status::Secondary,
    source: "Highway Capacity Manual, exhibit 25-20, digitised by others to 1 s/mi: single unit of 100 lb/hp",
};
const CHAIN: Origin = Origin {
    key: "HCM-CHAIN",
    status: Status::Secondary,
    source: "Highway Capacity Manual, worked example 11 of chapter 25: 1.5 mi of 3 %, 2 mi of 2 %, 1 mi of 5 % entered at 65 mph",
};
const THIN: Origin = Origin {
    key: "CLIMB-ALT",
    status: Status::Printed,
    source: "J. Adv. Transp. 2019, 8560204, abstract: trucks crawl more slowly at 3,000 to 5,000 m than at sea level",
};

/// Rounding of the recorded differences, mph.
const ROUNDING: f64 = 0.05;

/// A preset with this mass per rated power, lb/hp, whose whole engine is scaled, and with a gear for any
/// speed.
fn with_pounds(kind: Preset, pounds: f64) -> TruckSpec {
    let mut spec = kind.spec();
    let rated = rated_power(&truck(spec.clone())).0;
    let factor = spec.gross_mass_kg / (pounds * POUND / HORSEPOWER) / rated;
    for point in &mut spec.full_load {
        point.torque_nm *= factor;
    }
    TruckSpec { gears: ideal_gears(), ..spec }
}

fn tractor_trailer() -> TruckSpec {
    with_pounds(Preset::FiveAxle36, 150.0)
}

fn single_unit() -> TruckSpec {
    with_pounds(Preset::Rigid18, 100.0)
}

/// # Panics
/// Never: these trucks climb 8 %.
fn crawl_mph(spec: TruckSpec, percent: f64, height_m: f64) -> f64 {
    let (truck, day) = (truck(spec), standard_day());
    let crawled = crawl(Trip { truck: &truck, day: &day }, Grade(percent / 100.0), Metres(height_m));
    crawled.expect("it climbs").1.0 / MPH
}

const TT: [(f64, f64, Option<f64>); 7] = [
    (2.0, 59.3, Some(7.23)),
    (3.0, 49.4, Some(5.56)),
    (4.0, 40.6, Some(5.27)),
    (5.0, 33.8, Some(5.13)),
    (6.0, 28.9, Some(4.58)),
    (7.0, 25.1, Some(4.24)),
    (8.0, 22.0, Some(4.04)),
];
const SUT: [(f64, f64, Option<f64>); 5] = [
    (4.0, 53.7, Some(4.73)),
    (5.0, 47.0, Some(4.82)),
    (6.0, 41.3, Some(4.9)),
    (7.0, 36.7, Some(4.71)),
    (8.0, 32.8, Some(4.48)),
];

/// The tolerance is that of CRAWL.
pub(super) fn crawling_tractor_trailer() -> Vec<Row> {
    TT.map(|(percent, mph, known)| {
        let what = format!("Crawl speed of 36 t with 150 lb/hp on +{percent} %");
        let ours = crawl_mph(tractor_trailer(), percent, 0.0);
        CRAWL_TT.row(what, "mph", near_or_known(mph, 2.0, known, ROUNDING), ours)
    })
    .to_vec()
}

pub(super) fn crawling_single_unit() -> Vec<Row> {
    SUT.map(|(percent, mph, known)| {
        let what = format!("Crawl speed of 18 t with 100 lb/hp on +{percent} %");
        let ours = crawl_mph(single_unit(), percent, 0.0);
        CRAWL_SUT.row(what, "mph", near_or_known(mph, 2.0, known, ROUNDING), ours)
    })
    .to_vec()
}

/// ± 2 mph for tractor-trailers, ± 4 for single units, whose frontal area is larger for their weight than the
/// equation's.
pub(super) fn crawling_by_the_equation() -> Vec<Row> {
    let row = |name: &str, spec: &TruckSpec, percent: f64, mph: f64, tolerance: f64| {
        let what = format!("Crawl speed of {name} on +{percent} % with the losses of CRAWL's equation");
        let ours = crawl_mph(with_their_losses(spec.clone(), mph), percent, 0.0);
        EQUATION.row(what, "mph", super::near(mph, tolerance), ours)
    };
    let tractor = TT.map(|(percent, mph, _)| row("150 lb/hp", &tractor_trailer(), percent, mph, 2.0));
    let single = SUT.map(|(percent, mph, _)| row("100 lb/hp", &single_unit(), percent, mph, 4.0));
    tractor.into_iter().chain(single).collect()
}

/// Grade in %, feet from its foot, speed, and the known difference.
type Slowed = (f64, f64, f64, Option<f64>);

const SLOWED_TT: [Slowed; 11] = [
    (5.0, 2_500.0, 54.2, Some(3.86)),
    (5.0, 5_000.0, 39.6, Some(5.44)),
    (5.0, 7_500.0, 34.7, Some(5.12)),
    (5.0, 10_000.0, 33.8, Some(2.25)),
    (3.0, 2_500.0, 64.3, Some(3.75)),
    (3.0, 5_000.0, 56.5, Some(6.03)),
    (3.0, 7_500.0, 51.8, Some(5.72)),
    (3.0, 10_000.0, 49.5, Some(3.31)),
    (2.0, 2_500.0, 69.0, Some(3.46)),
    (2.0, 5_000.0, 64.4, Some(6.17)),
    (2.0, 10_000.0, 59.7, Some(8.47)),
];
const SLOWED_SUT: [Slowed; 6] = [
    (5.0, 2_500.0, 59.3, Some(3.42)),
    (5.0, 5_000.0, 50.9, Some(3.59)),
    (5.0, 10_000.0, 47.0, Some(4.8)),
    (3.0, 2_500.0, 67.6, Some(3.34)),
    (3.0, 5_000.0, 63.6, Some(5.06)),
    (3.0, 10_000.0, 60.9, Some(5.81)),
];

/// Speed on an even grade that is entered at 75 mph.
fn slowed(spec: &TruckSpec, percent: f64, feet: f64) -> f64 {
    speeds_along(spec.clone(), 75.0, &[(12_000.0, percent)], &[feet])[0]
}

fn slowing(origin: Origin, name: &str, spec: &TruckSpec, table: &[Slowed], tolerance: f64) -> Vec<Row> {
    let row = |&(percent, feet, mph, known): &Slowed| {
        let at = number(feet, 0);
        let what = format!("Speed of {name} that enters +{percent} % at 75 mph, after {at} ft");
        origin.row(what, "mph", near_or_known(mph, tolerance, known, ROUNDING), slowed(spec, percent, feet))
    };
    table.iter().map(row).collect()
}

/// The second rows have the losses of CRAWL's equation at the source's speed there. Most of the difference
/// comes from them.
pub(super) fn slowing_tractor_trailer() -> Vec<Row> {
    let mut rows = slowing(SLOW_TT, "36 t with 150 lb/hp", &tractor_trailer(), &SLOWED_TT, 2.0);
    rows.extend(SLOWED_TT.map(|(percent, feet, mph, _)| {
        // Where the truck slows most, the loss at that speed differs most from the loss on the way there.
        let known = match (percent, feet) {
            (5.0, 7_500.0) => Some(-2.41),
            (3.0, 7_500.0) => Some(-2.04),
            (_, _) => None,
        };
        let ours = slowed(&with_their_losses(tractor_trailer(), mph), percent, feet);
        let at = number(feet, 0);
        let what = format!(
            "Speed on +{percent} % entered at 75 mph, after {at} ft, with the losses of CRAWL's equation"
        );
        SLOW_TT.row(what, "mph", near_or_known(mph, 2.0, known, ROUNDING), ours)
    }));
    rows
}

pub(super) fn slowing_single_unit() -> Vec<Row> {
    slowing(SLOW_SUT, "18 t with 100 lb/hp", &single_unit(), &SLOWED_SUT, 3.0)
}

/// Speeds at the three ends. Without traffic only the first is printed. With traffic all three are, as lower
/// bounds.
pub(super) fn one_grade_after_the_other() -> Vec<Row> {
    const MILE: f64 = 5_280.0;
    let grades = [(1.5 * MILE, 3.0), (2.0 * MILE, 2.0), (1.2 * MILE, 5.0)];
    let ends = [1.5 * MILE, 3.5 * MILE, 4.5 * MILE];
    let along = |spec| speeds_along(spec, 65.0, &grades, &ends);
    let (tractor, single) = (along(tractor_trailer()), along(single_unit()));
    let first = |name: &str, value, known, ours| {
        let what = format!("Speed of {name} after the 1.5 mi of 3 %, without traffic");
        CHAIN.row(what, "mph", near_or_known(value, 2.0, known, ROUNDING), ours)
    };
    let least = |place: &str, value, ours| {
        let what = format!("Speed of 36 t with 150 lb/hp after the {place}: no slower than with traffic");
        CHAIN.row(what, "mph", Expected::AtLeast(value), ours)
    };
    vec![
        first("36 t with 150 lb/hp", 49.5, Some(7.19), tractor[0]),
        first("18 t with 100 lb/hp", 60.9, Some(5.10), single[0]),
        least("3 %", 46.1, tractor[0]),
        least("2 %", 54.0, tractor[1]),
        least("5 %", 31.8, tractor[2]),
    ]
}

/// Our engine pulls equally at any height, and thinner air resists less. Their ratio is below 1; its size is
/// not printed.
pub(super) fn crawling_high_up() -> Vec<Row> {
    let high = crawl_mph(tractor_trailer(), 5.0, 4_000.0) / crawl_mph(tractor_trailer(), 5.0, 0.0);
    let what = "Crawl speed on +5 % at 4,000 m over that at sea level, which ought to be below 1";
    vec![THIN.row(what, "", near_or_known(1.0, 0.001, Some(0.017), 0.002), high)]
}
