//! Common practice in the trade: no source. Each check says what practice holds.

use solver::day::Day;
use solver::motion::{Answer, BrakeHeat, Run, State, Trip, control_speed, crawl};
use solver::plan::table;
use solver::road::Road;
use solver::truck::{Preset, Retarder, Truck};
use solver::units::{Grade, Metres, MetresPerSecond, RevPerMin};
use tests::evidence::check;
use tests::trucks::{HORSEPOWER, MPH, ideal_gears, in_thirds, loaded_80_000_lb, preset, standard_day, truck};

const SIX_PERCENT: Grade = Grade(-0.06);
const SEA: Metres = Metres(0.0);

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

/// The same with ideal gearing: the axle ratio is tried in steps of half a per cent over one
/// step of the gearbox.
fn fastest_with_ideal_gearing(truck: &Truck, day: &Day) -> f64 {
    let speeds = (0..24).map(|k| {
        let mut spec = truck.spec().clone();
        spec.axle_ratio *= 1.005_f64.powi(k);
        fastest_control(&tests::trucks::truck(spec), day)
    });
    speeds.fold(0.0, f64::max)
}

/// An older truck of about 300 hp whose retarder brings about 300 hp to the wheels.
fn older_truck(gears: Vec<f64>) -> Truck {
    let mut spec = loaded_80_000_lb(in_thirds(200.0));
    let rated = 300.0 * HORSEPOWER;
    let own = truck(spec.clone()).rated_power().0;
    for point in &mut spec.full_load {
        point.torque_nm *= rated / own;
    }
    spec.gears = gears;
    truck(spec)
}

/// At full stage the wheels can get up to about 100 % of the rated power as retarding power.
#[test]
fn retarding_power_is_about_rated_power() {
    for kind in Preset::ALL {
        let truck = preset(kind);
        if !truck.spec().retarder.is_at_engine() {
            continue;
        }
        let peak = truck.retarding_power(truck.full_stage(), truck.highest_engine_speed());
        let share = peak / truck.rated_power();
        assert!((0.8..=1.1).contains(&share), "{}: {share}", kind.key());
    }
}

/// Six cylinders in stages of two, four and six give about a third, two thirds, all.
#[test]
fn stages_add_retarding_in_their_shares() {
    let truck = preset(Preset::FiveAxle36);
    let speed = RevPerMin(1_800.0);
    let motoring = truck.motoring_power(speed);
    let full = truck.retarding_power(truck.full_stage(), speed) - motoring;
    let shares: Vec<f64> =
        truck.stages().map(|stage| (truck.retarding_power(stage, speed) - motoring) / full).collect();
    for (share, expected) in shares.into_iter().zip([0.0, 1.0 / 3.0, 2.0 / 3.0, 1.0]) {
        check("share", expected, share, 1e-12);
    }
}

/// A grade of 6 % that allows about 10 mph without a retarder allows about 25 mph with one.
#[test]
fn ten_mph_without_and_twenty_five_with_a_retarder() {
    let day = standard_day();
    let with = older_truck(ideal_gears());
    let trip = Trip { truck: &with, day: &day };
    let gear = trip.lowest_gear_within(MetresPerSecond(25.0 * MPH), 1.0).expect("a gear for 25 mph");
    let rated = with.road_speed(gear, with.highest_engine_speed());
    let at_wheels = (trip.holding(gear, with.full_stage(), rated, trip.air(SEA)) * rated).0 / HORSEPOWER;
    check("hp at the wheels of the truck of this check", 300.0, at_wheels, 10.0);
    check("with", 25.0, fastest_with_ideal_gearing(&with, &day), 3.0);
    let mut spec = loaded_80_000_lb(Retarder::None);
    spec.gears = ideal_gears();
    check("without", 10.0, fastest_with_ideal_gearing(&truck(spec), &day), 3.0);
}

/// 25 mph on a hill does not mean 60 mph on the same hill: there that truck overruns.
#[test]
fn the_same_truck_overruns_at_sixty() {
    let day = standard_day();
    let truck = older_truck(ideal_gears());
    let trip = Trip { truck: &truck, day: &day };
    let gear = trip.lowest_gear_within(MetresPerSecond(60.0 * MPH), 1.0).expect("a gear for 60 mph");
    assert_eq!(
        control_speed(trip, gear, truck.full_stage(), SIX_PERCENT, SEA),
        Answer::Overruns { above: None }
    );
}

/// The gear that climbs a hill is usually the gear that controls the descent.
#[test]
fn an_older_truck_climbs_and_descends_in_gears_at_most_one_apart() {
    let day = standard_day();
    let truck = older_truck(solver::truck::gear_sets::TEN_OVERDRIVE.to_vec());
    let trip = Trip { truck: &truck, day: &day };
    let (up, _) = crawl(trip, -SIX_PERCENT, SEA).expect("it climbs 6 %");
    let down = truck
        .gears()
        .rev()
        .find(|gear| {
            matches!(control_speed(trip, *gear, truck.full_stage(), SIX_PERCENT, SEA), Answer::Settles { .. })
        })
        .expect("a gear holds 6 %");
    assert!(up.number().abs_diff(down.number()) <= 1, "up in {up:?}, down in {down:?}");
}

/// Retarding is strongest near rated engine speed, in the lowest gear that does not exceed it.
#[test]
fn margin_rises_as_gears_go_down() {
    let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let speed = MetresPerSecond::from_kmh(35.0);
    let useful = |gear: &solver::Gear| {
        let n = truck.engine_speed(*gear, speed);
        n >= truck.lowest_engine_speed(truck.full_stage()) && n <= truck.highest_engine_speed()
    };
    let held: Vec<f64> = truck
        .gears()
        .filter(useful)
        .map(|gear| trip.holding(gear, truck.full_stage(), speed, trip.air(SEA)).0)
        .collect();
    assert!(held.len() >= 2 && held.windows(2).all(|pair| pair[0] > pair[1]), "{held:?}");
}

/// A higher gear than the control gear needs the service brakes; a lower one, a lower stage.
#[test]
fn the_table_runs_from_more_than_needed_to_overruns() {
    let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
    let rows = table(Trip { truck: &truck, day: &day }, SIX_PERCENT, SEA).rows;
    let rank = |answer: &Answer| match answer {
        Answer::MoreThanNeeded => 0,
        Answer::Settles { .. } | Answer::NotUsable(_) => 1,
        Answer::Overruns { .. } => 2,
    };
    let full: Vec<i32> = rows.iter().filter_map(|row| row.answers.last()).map(rank).collect();
    assert!(full.windows(2).all(|pair| pair[0] <= pair[1]), "{full:?}");
    assert!(full.contains(&0) && full.contains(&1) && full.contains(&2), "{full:?}");
    for row in rows {
        let stages: Vec<i32> = row.answers.iter().map(rank).collect();
        assert!(stages.windows(2).all(|pair| pair[0] >= pair[1]), "{stages:?}");
    }
}

/// Off at low engine speed.
#[test]
fn below_the_cut_out_only_the_engine_holds() {
    let truck = preset(Preset::FiveAxle36);
    let slow = RevPerMin(849.0);
    assert_eq!(truck.retarding_power(truck.full_stage(), slow), truck.motoring_power(slow));
    let above = RevPerMin(900.0);
    assert!(truck.retarding_power(truck.full_stage(), above) > truck.motoring_power(above));
}

/// The service life of the service brakes is doubled or tripled by a retarder: one hilly route
/// at one speed, braking work without over braking work with.
#[test]
fn the_retarder_takes_most_of_the_braking_work() {
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
    let ratio = service_work(Retarder::None) / service_work(in_thirds(310.0));
    assert!(ratio >= 2.0, "ratio {ratio}");
}
