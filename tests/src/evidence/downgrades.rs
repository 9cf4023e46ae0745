//! Speeds that authorities post and print for descents, and gears that drivers' manuals name.
//!
//! Ours is the plan of an even grade with 1.5 km of level road before and behind, on the usual day.

use super::{Expected, Origin, Row, Status};
use crate::trucks::{MPH, POUND, no_retarder, truck};
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Choice, Descent};
use solver::road::Road;
use solver::truck::{Preset, Truck, TruckSpec};

const SIGN: Origin = Origin {
    key: "SIGN-2",
    status: Status::Printed,
    source: "A state department of transportation's page on a downgrade of 6 % over 6 mi: 18 mph for 75,000 to 80,000 lb, 37 mph for 60,000 to 65,000 lb",
};
const TYPE_II_NONE: Origin = Origin {
    key: "R13-II-NONE",
    status: Status::FromMemory,
    source: "UN Regulation 13, Annex 4, type II test: 6 km of 6 % at 30 km/h (printed); that the service brakes do it where no retarder is fitted is from memory",
};
const TYPE_II_OWN: Origin = Origin {
    key: "R13-II-OWN",
    status: Status::Printed,
    source: "UN Regulation 13, Annex 4, type II and II A tests: 6 km of 6 and 7 % at 30 km/h",
};
const LIMIT_35: Origin = Origin {
    key: "I5-35",
    status: Status::Printed,
    source: "A highway patrol's statement: 35 mph for commercial vehicles down 6 %; its length, about 5 mi, is second-hand",
};
const LIMIT_60: Origin = Origin {
    key: "SA-60",
    status: Status::Printed,
    source: "A state's pages and a regulator's notice, 2026: 60 km/h at most and low gear down 7 km, most loaded trucks much slower; the grade, about 6 %, is from memory, 25 to 50 km/h our reading of it",
};
const STEPS: Origin = Origin {
    key: "CA-STEPS",
    status: Status::Printed,
    source: "A state's vehicle code: speeds that may be posted on descents, from 50 down to 20 mph",
};
const CLIMB_GEAR: Origin = Origin {
    key: "GEAR-CLIMB",
    status: Status::Printed,
    source: "Drivers' manuals of two provinces, an army's technical manual TM 9-2320-283-10 and others: the gear that climbs the hill or one below; two below by a trainer, second-hand",
};
const ENGINE_SPEED: Origin = Origin {
    key: "GEAR-RPM",
    status: Status::Printed,
    source: "An army's technical manuals TM 9-2320-363-10 and -273-10: 1,750 to 2,100/min on a descent; a maker's manual: never above 2,300/min",
};
const LOADED: Origin = Origin {
    key: "DOWN-LOAD",
    status: Status::Printed,
    source: "Transportation Engineering Journal of ASCE 107(2), 1981, abstract: on six two-lane grades loaded trucks go down slower than empty ones",
};

/// Metres in six miles.
const SIX_MILES: f64 = 9_656.0;
/// The speed of the type II tests, km/h.
const TEST_KMH: f64 = 30.0;
pub(super) const KMH_PER_MPH: f64 = MPH * 3.6;

/// A known difference from a least speed, km/h; hold speeds are whole.
fn missed(least: f64, by: f64) -> Expected {
    Expected::KnownDifference { value: least, tolerance: 1.0, recorded: -by, rounding: 0.5 }
}

fn down(truck: &Truck, percent: f64, length_m: f64, service_brakes: ServiceBrakes) -> Descent {
    down_from(truck, percent, length_m, 1_200.0, service_brakes)
}

/// The plan of an even grade, percent, from a height.
///
/// # Panics
/// Never: the heights are sound, nobody stops the plan, and such a hill is a descent.
pub(super) fn down_from(
    truck: &Truck,
    percent: f64,
    length_m: f64,
    top_m: f64,
    service_brakes: ServiceBrakes,
) -> Descent {
    let cells = (length_m / 10.0).round() as usize;
    let fall = |k: usize| 0.1 * percent * (k.clamp(150, 150 + cells) - 150) as f64;
    let heights = (0..=cells + 300).map(|k| top_m - fall(k)).collect();
    let road = Road::from_heights("even grade", 10.0, heights).expect("heights are sound");
    let day = Day { service_brakes, ..Day::USUAL };
    let (plan, _) = solver::analyse(&road, truck, &day, &mut |_| true).expect("not cancelled");
    plan.descents.into_iter().next().expect("a descent")
}

/// Engine speed told on 6 km of an even grade, 1/min.
pub(super) fn engine_speed(truck: &Truck, percent: f64) -> f64 {
    let descent = down(truck, percent, 6_000.0, ServiceBrakes::InReserve);
    descent.choice.advice().map_or(f64::NAN, |advice| advice.engine_speed.0)
}

/// Hold speed, km/h; zero where no speed is safe.
pub(super) fn kmh(descent: &Descent) -> f64 {
    match &descent.choice {
        Choice::Held(advice) => advice.speed.kmh(),
        Choice::NoSafeSpeed(_) => 0.0,
    }
}

pub(super) fn own(spec: TruckSpec, percent: f64, length_m: f64) -> f64 {
    kmh(&down(&truck(spec), percent, length_m, ServiceBrakes::InReserve))
}

/// The plan without a retarder, with snubs allowed.
fn snubbed(mut spec: TruckSpec, percent: f64, length_m: f64) -> f64 {
    spec.retarder = no_retarder();
    kmh(&down(&truck(spec), percent, length_m, ServiceBrakes::MaySnub))
}

/// A preset at another mass, its axles loaded in proportion.
fn at(preset: Preset, kilograms: f64) -> TruckSpec {
    let mut spec = preset.spec();
    spec.drive_axle_mass_kg *= kilograms / spec.gross_mass_kg;
    spec.gross_mass_kg = kilograms;
    spec
}

/// Without a retarder slower than posted, but at least half of it; with one, not slower.
pub(super) fn posted_by_mass() -> Vec<Row> {
    let row = |pounds: f64, what: &str, expected: Expected, ours: fn(TruckSpec, f64, f64) -> f64| {
        let what = format!("{} t, {what}", (pounds * POUND / 100.0).round() / 10.0);
        SIGN.row(what, "km/h", expected, ours(at(Preset::FiveAxle36, pounds * POUND), 6.0, SIX_MILES))
    };
    let (heavy, light) = (18.0 * KMH_PER_MPH, 37.0 * KMH_PER_MPH);
    let (without, with) = ("no retarder, snubs allowed", "with its retarder: no slower than posted");
    let no_faster = format!("{without}: no faster than posted");
    let half = format!("{without}: no slower than half of what is posted");
    vec![
        row(80_000.0, &no_faster, Expected::AtMost(heavy), snubbed),
        row(80_000.0, &half, Expected::AtLeast(0.5 * heavy), snubbed),
        row(80_000.0, with, Expected::AtLeast(heavy), own),
        row(65_000.0, &no_faster, Expected::AtMost(light), snubbed),
        row(65_000.0, &half, missed(0.5 * light, 2.8), snubbed),
        row(65_000.0, with, missed(light, 7.5), own),
    ]
}

const TESTED: [Preset; 3] = [Preset::FiveAxle40, Preset::Tipper26, Preset::Rigid18];

/// Within 5 km/h of the approval test's speed, or faster.
pub(super) fn type_ii_without_retarder() -> Vec<Row> {
    let row = |(preset, expected): (Preset, Expected)| {
        let what = format!("{}: no retarder, snubs allowed, 6 km of 6 %", preset.spec().name);
        TYPE_II_NONE.row(what, "km/h", expected, snubbed(preset.spec(), 6.0, 6_000.0))
    };
    let least = TEST_KMH - 5.0;
    let rows = [
        (Preset::FiveAxle40, missed(least, 16.0)),
        (Preset::Tipper26, Expected::AtLeast(least)),
        (Preset::Rigid18, missed(least, 3.0)),
    ];
    rows.map(row).to_vec()
}

pub(super) fn type_ii_with_retarder() -> Vec<Row> {
    let row = |preset: Preset, percent: f64| {
        let what = format!("{}: with its retarder, 6 km of {percent} %", preset.spec().name);
        TYPE_II_OWN.row(what, "km/h", Expected::AtLeast(TEST_KMH), own(preset.spec(), percent, 6_000.0))
    };
    let steeper = row(Preset::FiveAxle40, 7.0);
    TESTED.map(|preset| row(preset, 6.0)).into_iter().chain([steeper]).collect()
}

pub(super) fn limit_of_35_mph() -> Vec<Row> {
    let ours = own(Preset::FiveAxle36.spec(), 6.0, 8_000.0);
    let limit = Expected::AtMost(35.0 * KMH_PER_MPH);
    vec![LIMIT_35.row("36 t with its retarder, 8 km of 6 %: within the limit", "km/h", limit, ours)]
}

pub(super) fn limit_of_60_kmh() -> Vec<Row> {
    let row = |preset: Preset| {
        let what = format!("{}: with its retarder, 7 km of 6 %", preset.spec().name);
        LIMIT_60.row(what, "km/h", Expected::Between(25.0, 50.0), own(preset.spec(), 6.0, 7_000.0))
    };
    [Preset::BDouble, Preset::FiveAxle40, Preset::FiveAxle36].map(row).to_vec()
}

/// No authority is told a speed below 20 mph.
pub(super) fn slowest_posted() -> Vec<Row> {
    let row = |(percent, by): (f64, f64)| {
        let ours = snubbed(Preset::FiveAxle36.spec(), percent, SIX_MILES);
        let what = format!("36 t, no retarder, snubs allowed, 6 mi of {percent} %: no slower than is posted");
        STEPS.row(what, "km/h", missed(20.0 * KMH_PER_MPH, by), ours)
    };
    [(6.0, 12.2), (7.0, 25.2)].map(row).to_vec()
}

/// The gear told is the climbing gear, or up to two below it.
pub(super) fn gear_that_climbs() -> Vec<Row> {
    let below = |(preset, percent): (Preset, f64)| {
        let descent = down(&truck(preset.spec()), percent, 6_000.0, ServiceBrakes::InReserve);
        let climbs = descent.climbs_in.map(|(gear, _)| f64::from(gear.number()));
        let told = descent.choice.advice().map(|advice| f64::from(advice.gear.number()));
        let ours = climbs.zip(told).map_or(f64::NAN, |(climbs, told)| climbs - told);
        let what = format!("{}: gears told below the one that climbs {percent} %", preset.spec().name);
        CLIMB_GEAR.row(what, "", Expected::Between(0.0, 2.0), ours)
    };
    let five_axle = [5.5, 6.0, 7.0, 8.0].map(|percent| (Preset::FiveAxle36, percent));
    let others = [
        (Preset::FiveAxle40, 6.0),
        (Preset::FiveAxle40, 8.0),
        (Preset::BDouble, 5.5),
        (Preset::BDouble, 6.0),
        (Preset::BDouble, 8.0),
    ];
    five_axle.into_iter().chain(others).map(below).collect()
}

pub(super) fn engine_speed_down() -> Vec<Row> {
    let row = |percent: f64| {
        let ours = engine_speed(&truck(Preset::FiveAxle36.spec()), percent);
        let what = format!("36 t: engine speed told on {percent} %");
        ENGINE_SPEED.row(what, "1/min", Expected::Between(1_750.0, 2_300.0), ours)
    };
    [6.0, 7.0, 8.0].map(row).to_vec()
}

pub(super) fn loaded_and_empty() -> Vec<Row> {
    let empty = own(at(Preset::FiveAxle36, 16_000.0), 6.0, 6_000.0);
    let loaded = own(Preset::FiveAxle36.spec(), 6.0, 6_000.0);
    let what = "Speed of 16 t over that of 36 t, with the retarder, 6 km of 6 %";
    vec![LOADED.row(what, "", Expected::MoreThan(1.0), empty / loaded)]
}
