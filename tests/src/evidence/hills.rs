//! More hills with a posted limit, by drop over length where both are known: the per cent on a sign is not
//! the mean grade. And hills that must never be missed.

use super::downgrades::{KMH_PER_MPH, down_from, kmh, own};
use super::{Expected, Origin, Row, Status};
use crate::trucks::truck;
use solver::day::{Day, ServiceBrakes};
use solver::road::Road;
use solver::truck::Preset;

const LIMIT_64: Origin = Origin {
    key: "I64-45",
    status: Status::Secondary,
    source: "Trade press quoting a state's police: 45 mph for trucks down 7 %; length and height assumed, 8 km and 800 m",
};
const LIMIT_70: Origin = Origin {
    key: "I70-45",
    status: Status::Printed,
    source: "A crash analyst's page on a pass: 45 mph above 15 US tons, 2,267 ft down in 9.4 mi (its sign says 7 %), from about 3,250 m",
};
const LIMIT_421: Origin = Origin {
    key: "US421-30",
    status: Status::Secondary,
    source: "A forum: 30 mph for trucks down 4 mi of 8 %",
};
const RISKY: Origin = Origin {
    key: "FR-RISK",
    status: Status::FromMemory,
    source: "A road authority's note 52, 1997, a part that was not readable: a descent is risky with a drop above 130 m at a mean steeper than 3 %",
};
const GENTLE: Origin = Origin {
    key: "DOWN-OLD",
    status: Status::Printed,
    source: "A traffic bulletin's abstract: on shorter grades under 4 % trucks go down about as fast as on the level; four fifths of it are our reading",
};

fn at_most(origin: Origin, name: &str, percent: f64, length_m: f64, top_m: f64, limit_mph: f64) -> Row {
    let spec = Preset::FiveAxle36.spec();
    let ours = kmh(&down_from(&truck(spec), percent, length_m, top_m, ServiceBrakes::InReserve));
    let what = format!("36 t with its retarder, {name}: no faster than the limit");
    origin.row(what, "km/h", Expected::AtMost((limit_mph * KMH_PER_MPH * 10.0).round() / 10.0), ours)
}

pub(super) fn limit_of_45_mph() -> Vec<Row> {
    vec![at_most(LIMIT_64, "8 km of 7 %", 7.0, 8_000.0, 800.0, 45.0)]
}

pub(super) fn limit_of_45_mph_high_up() -> Vec<Row> {
    vec![at_most(LIMIT_70, "15.1 km of 4.57 % from 3,250 m", 4.57, 15_100.0, 3_250.0, 45.0)]
}

pub(super) fn limit_of_30_mph() -> Vec<Row> {
    vec![at_most(LIMIT_421, "4 mi of 8 %", 8.0, 6_437.0, 1_200.0, 30.0)]
}

/// Just above both bounds, with every preset.
///
/// # Panics
/// Never: the heights are sound, and nothing stops the plan.
pub(super) fn never_missed() -> Vec<Row> {
    let cells = 425;
    let heights = (0..=cells + 300).map(|k: i32| 900.0 - 0.31 * f64::from(k.clamp(150, 150 + cells) - 150));
    let road = Road::from_heights("risky", 10.0, heights.collect()).expect("heights are sound");
    let found = |kind: &Preset| {
        let plan = solver::analyse(&road, &truck(kind.spec()), &Day::USUAL, &mut |_| true);
        plan.map_or(0, |(plan, _)| plan.descents.len())
    };
    let least = Preset::ALL.iter().map(found).min().unwrap_or(0);
    let what = "Descents that a plan has on 132 m down at 3.1 %, the least of all presets";
    vec![RISKY.row(what, "", Expected::AtLeast(1.0), least as f64)]
}

pub(super) fn gentle_grades() -> Vec<Row> {
    let ours = own(Preset::FiveAxle36.spec(), 3.7, 6_437.0) / Day::USUAL.speed_limit_kmh;
    let what = "36 t with its retarder down 4 mi of 3.7 %, over its speed on the level";
    vec![GENTLE.row(what, "", Expected::AtLeast(0.8), ours)]
}
