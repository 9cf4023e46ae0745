//! Common practice in the trade: no source. Each check says what practice holds.

use super::{Expected, Origin, Row, Status, near};
use crate::trucks::{
    HORSEPOWER, MPH, ideal_gears, in_thirds, loaded_80_000_lb, no_retarder, preset, rated_power,
    standard_day, truck,
};
use solver::day::Day;
use solver::motion::{Answer, BrakeHeat, Run, State, Trip, control_speed, crawl};
use solver::plan::table;
use solver::road::Road;
use solver::truck::{Gear, Preset, Retarder, Truck};
use solver::units::{Grade, Metres, MetresPerSecond, RevPerMin};

const TRADE: Origin = Origin {
    key: "TRADE",
    status: Status::CommonPractice,
    source: "Common practice in the trade, no source",
};
const SIX_PERCENT: Grade = Grade(-0.06);
const SEA: Metres = Metres(0.0);

/// The nine facts, one after the other.
pub(super) fn practice() -> Vec<Row> {
    let facts: [fn() -> Vec<Row>; 9] = [
        retarding_power_is_about_rated_power,
        stages_add_retarding_in_their_shares,
        ten_mph_without_and_twenty_five_with_a_retarder,
        the_same_truck_overruns_at_sixty,
        up_and_down_in_gears_at_most_one_apart,
        margin_rises_as_gears_go_down,
        the_table_runs_from_more_than_needed_to_overruns,
        below_the_cut_out_only_the_engine_holds,
        the_retarder_takes_most_of_the_braking_work,
    ];
    facts.iter().flat_map(|fact| fact()).collect()
}

/// The fastest control speed of any gear at full stage, mph.
fn fastest_control(truck: &Truck, day: &Day) -> f64 {
    let trip = Trip { truck, day };
    let settled = truck.gears().filter_map(|gear| {
        match control_speed(trip, gear, truck.full_stage(), SIX_PERCENT, SEA) {
            Answer::Settles { speed, .. } => Some(speed.0 / MPH),
            Answer::MoreThanNeeded | Answer::Overruns { .. } | Answer::NotUsable(_) => None,
        }
    });
    settled.fold(0.0, f64::max)
}

/// Fastest control speed with ideal gearing: the axle ratio is tried in steps of half a per cent over one
/// step of the gearbox.
fn fastest_with_ideal_gearing(truck: &Truck, day: &Day) -> f64 {
    let speeds = (0..24).map(|k| {
        let mut spec = truck.spec().clone();
        spec.axle_ratio *= 1.005_f64.powi(k);
        fastest_control(&crate::trucks::truck(spec), day)
    });
    speeds.fold(0.0, f64::max)
}

/// An older truck of about 300 hp whose retarder brings about 300 hp to the wheels.
fn older_truck(gears: Vec<f64>) -> Truck {
    let mut spec = loaded_80_000_lb(in_thirds(200.0));
    let rated = 300.0 * HORSEPOWER;
    let own = rated_power(&truck(spec.clone())).0;
    for point in &mut spec.full_load {
        point.torque_nm *= rated / own;
    }
    spec.gears = gears;
    truck(spec)
}

/// At full stage the retarding power at the wheels can reach about 100 % of the rated power.
fn retarding_power_is_about_rated_power() -> Vec<Row> {
    let row = |kind: Preset| {
        let truck = preset(kind);
        let peak = truck.retarding_power(truck.full_stage(), truck.highest_engine_speed());
        let what = format!("{}: full retarding power over rated power", truck.spec().name);
        TRADE.row(what, "", Expected::Between(0.8, 1.1), peak / rated_power(&truck))
    };
    let at_engine = |kind: &Preset| kind.spec().retarder.is_at_engine();
    Preset::ALL.into_iter().filter(at_engine).map(row).collect()
}

/// Six cylinders in stages of two, four and six give about a third, two thirds, and all of it.
fn stages_add_retarding_in_their_shares() -> Vec<Row> {
    let truck = preset(Preset::FiveAxle36);
    let speed = RevPerMin(1_800.0);
    let motoring = truck.motoring_power(speed);
    let full = truck.retarding_power(truck.full_stage(), speed) - motoring;
    let rows = truck.stages().zip([0.0, 1.0 / 3.0, 2.0 / 3.0, 1.0]).map(|(stage, expected)| {
        let share = (truck.retarding_power(stage, speed) - motoring) / full;
        let what =
            format!("Share of full retarding that stage {} adds to the motoring engine", stage.number());
        TRADE.row(what, "", near(expected, 1e-12), share)
    });
    rows.collect()
}

/// A grade of 6 % that allows about 10 mph without a retarder allows about 25 mph with one.
///
/// # Panics
/// Never: ideal gears have one for 25 mph.
fn ten_mph_without_and_twenty_five_with_a_retarder() -> Vec<Row> {
    let day = standard_day();
    let with = older_truck(ideal_gears());
    let trip = Trip { truck: &with, day: &day };
    let gear = trip.lowest_gear_within(MetresPerSecond(25.0 * MPH), 1.0).expect("a gear for 25 mph");
    let rated = with.road_speed(gear, with.highest_engine_speed());
    let at_wheels = (trip.holding(gear, with.full_stage(), rated, trip.air(SEA)) * rated).0 / HORSEPOWER;
    let mut without = loaded_80_000_lb(no_retarder());
    without.gears = ideal_gears();
    let without = fastest_with_ideal_gearing(&truck(without), &day);
    vec![
        TRADE.row(
            "Holding power at the wheels of the older truck, 300 hp, of the next checks",
            "hp",
            near(300.0, 10.0),
            at_wheels,
        ),
        TRADE.row(
            "Control speed of the older truck, 80,000 lb, on −6 % with its retarder",
            "mph",
            near(25.0, 3.0),
            fastest_with_ideal_gearing(&with, &day),
        ),
        TRADE.row("Control speed of 80,000 lb on −6 % without a retarder", "mph", near(10.0, 3.0), without),
    ]
}

/// 25 mph on a hill does not mean 60 mph on the same hill: there that truck overruns.
///
/// # Panics
/// Never: ideal gears have one for 60 mph.
fn the_same_truck_overruns_at_sixty() -> Vec<Row> {
    let day = standard_day();
    let truck = older_truck(ideal_gears());
    let trip = Trip { truck: &truck, day: &day };
    let gear = trip.lowest_gear_within(MetresPerSecond(60.0 * MPH), 1.0).expect("a gear for 60 mph");
    let answer = control_speed(trip, gear, truck.full_stage(), SIX_PERCENT, SEA);
    let fastest = truck.road_speed(gear, truck.highest_engine_speed());
    let air = trip.air(SEA);
    let held = trip.holding(gear, truck.full_stage(), fastest, air) / trip.demand(fastest, SIX_PERCENT, air);
    vec![
        TRADE.row(
            "Holding force of the older truck in its gear for 60 mph, over what −6 % needs",
            "",
            Expected::LessThan(1.0),
            held,
        ),
        TRADE.row(
            "The older truck overruns on −6 % in its gear for 60 mph (1 for yes)",
            "",
            near(1.0, 0.0),
            f64::from(u8::from(answer == Answer::Overruns { above: None })),
        ),
    ]
}

/// The gear that climbs a hill is usually the gear that controls the descent.
fn up_and_down_in_gears_at_most_one_apart() -> Vec<Row> {
    let day = standard_day();
    let truck = older_truck(solver::truck::gear_sets::TEN_OVERDRIVE.to_vec());
    let trip = Trip { truck: &truck, day: &day };
    let up = crawl(trip, -SIX_PERCENT, SEA).map(|(gear, _)| gear);
    let settles = |gear: &Gear| {
        matches!(control_speed(trip, *gear, truck.full_stage(), SIX_PERCENT, SEA), Answer::Settles { .. })
    };
    let down = truck.gears().rev().find(settles);
    let apart = up.zip(down).map(|(up, down)| f64::from(up.number().abs_diff(down.number())));
    vec![TRADE.row(
        "Gears between the one that climbs 6 % and the one that holds it, older truck",
        "",
        Expected::AtMost(1.0),
        apart.unwrap_or(f64::NAN),
    )]
}

/// Retarding is strongest near rated engine speed, in the lowest gear that does not exceed it.
fn margin_rises_as_gears_go_down() -> Vec<Row> {
    let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let speed = MetresPerSecond::from_kmh(35.0);
    let useful = |gear: &Gear| {
        let n = truck.engine_speed(*gear, speed);
        n >= truck.lowest_engine_speed(truck.full_stage()) && n <= truck.highest_engine_speed()
    };
    let held: Vec<f64> = truck
        .gears()
        .filter(useful)
        .map(|gear| trip.holding(gear, truck.full_stage(), speed, trip.air(SEA)).0)
        .collect();
    // A single gear has no ratio; NaN then fails the comparison.
    let least = held.windows(2).map(|pair| pair[0] / pair[1]).reduce(f64::min);
    vec![TRADE.row(
        "Holding force at 35 km/h of a gear over that of the next higher one, the least",
        "",
        Expected::MoreThan(1.0),
        least.unwrap_or(f64::NAN),
    )]
}

/// A higher gear than the control gear needs the service brakes; a lower gear needs a lower stage.
fn the_table_runs_from_more_than_needed_to_overruns() -> Vec<Row> {
    let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
    let rows = table(Trip { truck: &truck, day: &day }, SIX_PERCENT, SEA).rows;
    let rank = |answer: &Answer| match answer {
        Answer::MoreThanNeeded => 0_u8,
        Answer::Settles { .. } | Answer::NotUsable(_) => 1,
        Answer::Overruns { .. } => 2,
    };
    let full: Vec<u8> = rows.iter().filter_map(|row| row.answers.last()).map(rank).collect();
    let kinds = [0, 1, 2].iter().filter(|kind| full.contains(kind)).count();
    let by_gear = full.windows(2).filter(|pair| pair[0] > pair[1]).count();
    let by_stage = rows.iter().map(|row| {
        let stages: Vec<u8> = row.answers.iter().map(rank).collect();
        stages.windows(2).filter(|pair| pair[0] < pair[1]).count()
    });
    let exactly = |count: f64| near(count, 0.0);
    vec![
        TRADE.row(
            "Kinds of answer at full stage on −6 %: holds more than needed, settles, overruns",
            "",
            exactly(3.0),
            kinds as f64,
        ),
        TRADE.row(
            "Higher gears that hold better at full stage than the one below",
            "",
            exactly(0.0),
            by_gear as f64,
        ),
        TRADE.row(
            "Higher stages that hold less than the one below",
            "",
            exactly(0.0),
            by_stage.sum::<usize>() as f64,
        ),
    ]
}

/// The retarder is off at low engine speed.
fn below_the_cut_out_only_the_engine_holds() -> Vec<Row> {
    let truck = preset(Preset::FiveAxle36);
    let over_motoring =
        |speed: RevPerMin| truck.retarding_power(truck.full_stage(), speed) / truck.motoring_power(speed);
    vec![
        TRADE.row(
            "Retarding over motoring power just below the cut-out, 849/min",
            "",
            near(1.0, 0.0),
            over_motoring(RevPerMin(849.0)),
        ),
        TRADE.row(
            "Retarding over motoring power above the cut-out, 900/min",
            "",
            Expected::MoreThan(1.0),
            over_motoring(RevPerMin(900.0)),
        ),
    ]
}

/// A retarder doubles or triples the service life of the service brakes: one hilly route at one speed,
/// braking work without a retarder over braking work with one.
///
/// # Panics
/// Never: the road is sound, and the truck has a gear for 60 km/h.
fn the_retarder_takes_most_of_the_braking_work() -> Vec<Row> {
    let heights = (0..3_000_u32).map(|k| {
        let s = f64::from(k) * 10.0;
        400.0 + 28.0 * libm::sin(s / 700.0) - 0.005 * s
    });
    let road = Road::from_heights("hilly", 10.0, heights.collect()).expect("a road");
    let day = Day { speed_limit_kmh: 60.0, ..standard_day() };
    let service_work = |retarder: Retarder| {
        let truck = truck(loaded_80_000_lb(retarder));
        let trip = Trip { truck: &truck, day: &day };
        let speed = day.speed_limit();
        let gear = trip.lowest_gear_within(speed, 1.0).expect("a gear for 60 km/h");
        let start = State::settled(speed, gear, BrakeHeat::uniform(day.air()));
        -Run::along(trip, &road, 0, road.cells(), &[], start).ledger.service.0
    };
    vec![TRADE.row(
        "Braking work on a hilly road without a retarder over that with one",
        "",
        Expected::AtLeast(2.0),
        service_work(no_retarder()) / service_work(in_thirds(310.0)),
    )]
}
