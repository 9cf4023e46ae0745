//! What must hold for every kind of retarder.

use solver::day::{Day, Load, Surface, Withheld};
use solver::motion::{Answer, BrakeHeat, Hold, Run, State, Trip, Unusable, control_speed};
use solver::road::Road;
use solver::truck::{
    Ambient, Driveline, Preset, Retarder, RetarderKind, Stage, TableOf, Transmission, Truck, Warmth,
};
use solver::units::{Celsius, Grade, Metres, MetresPerSecond, RevPerMin, Seconds, Watts};
use tests::evidence::check;
use tests::trucks::truck;

fn with(kind: RetarderKind) -> Truck {
    let mut spec = Preset::FiveAxle36.spec();
    // A retarder of an equal kind would be kept as it is.
    spec.take_retarder(RetarderKind::None);
    spec.take_retarder(kind);
    truck(spec)
}

#[test]
fn every_kind_can_be_begun_with_and_says_what_is_assumed() {
    for kind in RetarderKind::ALL {
        let truck = with(kind);
        assert_eq!(truck.spec().retarder.kind(), kind);
        assert_eq!(RetarderKind::by_key(kind.key()), Some(kind));
        let text = serde_json::to_string(truck.spec()).expect("a truck file");
        assert_eq!(&serde_json::from_str::<solver::TruckSpec>(&text).expect("reads back"), truck.spec());
        for limit in solver::limits::ALL {
            let assumed = truck.spec().is_assumed(limit.entry);
            assert!(!assumed || truck.spec().get(limit.entry).is_some(), "{kind:?}: {:?}", limit.entry);
        }
    }
}

#[test]
fn more_stage_and_less_warmth_never_hold_less() {
    for kind in RetarderKind::ALL {
        let truck = with(kind);
        for gear in truck.gears() {
            for kmh in [6.0, 12.0, 25.0, 40.0, 60.0, 80.0] {
                let speed = MetresPerSecond::from_kmh(kmh);
                let force = |stage: Stage, warmth| {
                    truck
                        .holding_force(
                            gear,
                            stage,
                            speed,
                            Ambient { altitude_factor: 0.9, ..Ambient::STANDARD },
                            warmth,
                        )
                        .0
                };
                let mut before = 0.0;
                for stage in truck.stages() {
                    let (hot, cold) = (force(stage, Warmth::SUSTAINED), force(stage, Warmth::COLD));
                    assert!(
                        hot >= before && cold >= hot * (1.0 - 1e-12),
                        "{kind:?} {gear:?} {kmh} {stage:?}"
                    );
                    before = hot;
                }
            }
        }
    }
}

/// Both together hold the sum of what each holds beyond the motoring engine.
#[test]
fn engine_and_driveline_together_are_their_sum() {
    let (engine, shaft, both) = (
        with(RetarderKind::CompressionRelease),
        with(RetarderKind::Hydrodynamic),
        with(RetarderKind::CompressionAndHydrodynamic),
    );
    let speed = MetresPerSecond::from_kmh(40.0);
    let gear = Trip { truck: &both, day: &Day::USUAL }.lowest_gear_within(speed, 1.0).expect("a gear");
    let torque = |truck: &Truck| {
        truck.shaft_torque(gear, truck.full_stage(), speed, Ambient::STANDARD, Warmth::SUSTAINED)
    };
    let at_engine =
        |truck: &Truck| truck.retarding_power(truck.full_stage(), truck.engine_speed(gear, speed)).0;
    check("torque at the shaft", torque(&shaft), torque(&both), 1e-9);
    check("power at the engine", at_engine(&engine), at_engine(&both), 1e-9);
    check("none at the shaft", 0.0, torque(&engine), 0.0);
}

/// From cold, the short-term power lasts for the stated time; then the sustained power is left.
#[test]
fn a_hydrodynamic_retarder_gives_its_short_power_for_its_time() {
    let truck = with(RetarderKind::Hydrodynamic);
    let Some(Driveline::Hydrodynamic(it)) = truck.spec().retarder.driveline() else { panic!("its kind") };
    let engine = RevPerMin(it.sustained_rpm);
    let power = Watts(it.short_power_kw * 1e3);
    let half = truck.warmed(Warmth::COLD, power, engine, Ambient::STANDARD, Seconds(0.5 * it.short_time_s));
    check("half of the reserve", 0.5, half.share(), 1e-12);
    let whole = truck.warmed(half, power, engine, Ambient::STANDARD, Seconds(0.5 * it.short_time_s));
    check("all of it", 1.0, whole.share(), 1e-12);
    // Sustained: exactly the sustained power, whatever torque the fluid would give.
    let gear = truck.gears().nth(6).expect("ten gears");
    let speed = truck.road_speed(gear, engine);
    let stage = truck.full_stage();
    check(
        "kW for good",
        it.sustained_power_kw,
        truck.shaft_power(gear, stage, speed, Ambient::STANDARD, Warmth::SUSTAINED).0 / 1e3,
        1e-9,
    );
    // At half the engine speed the pump carries half.
    let slow = truck.road_speed(gear, engine * 0.5);
    let carried = truck.shaft_power(gear, stage, slow, Ambient::STANDARD, Warmth::SUSTAINED).0 / 1e3;
    assert!(carried <= 0.5 * it.sustained_power_kw + 1e-9, "{carried} kW");
    // On the level it recovers.
    assert!(truck.warmed(whole, Watts(0.0), engine, Ambient::STANDARD, Seconds(30.0)) < whole);
}

#[test]
fn an_electromagnetic_retarder_peaks_and_loses_torque_when_hot() {
    let truck = with(RetarderKind::Electromagnetic);
    let Some(Driveline::Electromagnetic(it)) = truck.spec().retarder.driveline() else { panic!("its kind") };
    let gear = truck.gears().nth(8).expect("ten gears");
    let at = |shaft: f64, warmth| {
        let speed = truck.road_speed(gear, RevPerMin(shaft * truck.ratio(gear)));
        truck.shaft_torque(gear, truck.full_stage(), speed, Ambient::STANDARD, warmth)
    };
    check("peak", it.torque_nm, at(it.peak_rpm, Warmth::COLD), 1e-9);
    assert!(
        at(0.8 * it.peak_rpm, Warmth::COLD) < it.torque_nm
            && at(1.2 * it.peak_rpm, Warmth::COLD) < it.torque_nm
    );
    check("hot over cold", it.hot_share, at(700.0, Warmth::SUSTAINED) / at(700.0, Warmth::COLD), 1e-12);
}

#[test]
fn an_entered_table_is_read_between_its_rows_and_off_outside() {
    let truck = with(RetarderKind::EnginePowerTable);
    let Retarder::Table(table) = &truck.spec().retarder else { panic!("its kind") };
    assert_eq!(table.of, TableOf::EnginePower);
    let (first, second) = (&table.rows[0], &table.rows[1]);
    let middle = RevPerMin(0.5 * (first.rpm + second.rpm));
    let full = truck.full_stage();
    let between = 0.5 * (first.values[2] + second.values[2]);
    check("kW between", between, truck.retarding_power(full, middle).0 / 1e3, 1e-9);
    for outside in [first.rpm - 1.0, table.rows[3].rpm + 1.0] {
        let speed = RevPerMin(outside);
        check("off outside", truck.motoring_power(speed).0, truck.retarding_power(full, speed).0, 1e-9);
    }
}

#[test]
fn behind_an_open_converter_the_engine_holds_nothing() {
    let mut spec = Preset::FiveAxle36.spec();
    spec.transmission = Transmission::CONVERTER;
    let truck = truck(spec);
    let (day, first) = (Day::USUAL, truck.gears().next().expect("gears"));
    let trip = Trip { truck: &truck, day: &day };
    let speed = truck.road_speed(first, RevPerMin(1_900.0));
    check("N", 0.0, trip.holding(first, truck.full_stage(), speed, trip.air(Metres(0.0))).0, 0.0);
    let answer = control_speed(trip, first, truck.full_stage(), Grade(-0.06), Metres(0.0));
    assert_eq!(answer, Answer::NotUsable(Unusable::Unlocked));
}

/// A long hill exhausts the short-term power: the truck then gets faster, or brakes.
#[test]
fn the_coolant_warms_along_the_road() {
    let truck = with(RetarderKind::Hydrodynamic);
    let day = Day { speed_limit_kmh: 90.0, ..Day::USUAL };
    let trip = Trip { truck: &truck, day: &day };
    let heights = (0..=400).map(|k| 800.0 - 0.75 * f64::from(k)).collect();
    let road = Road::from_heights("long", 10.0, heights).expect("heights are sound");
    let speed = MetresPerSecond::from_kmh(78.0);
    let gear = trip.lowest_gear_within(speed, 1.0).expect("a gear");
    let hold = Hold { from: 0, to: road.cells(), gear, speed, snub: None };
    let start = State::settled(speed, gear, BrakeHeat::uniform(Celsius(66.0)));
    let mut warmth = Vec::new();
    let run = Run::watched(trip, &road, &[hold], start, &mut |state| warmth.push(state.retarder.share()));
    assert!(warmth.windows(2).all(|pair| pair[1] >= pair[0]), "it only warms");
    assert!(warmth.last().is_some_and(|share| *share > 0.75), "and is worn out: {:?}", warmth.last());
    let fastest =
        |cells: std::ops::Range<usize>| run.samples[cells].iter().map(|s| s.speed.0).fold(0.0, f64::max);
    assert!(fastest(350..400) > fastest(0..20) + 0.5, "{} {}", fastest(0..20), fastest(350..400));
}

/// On snow, on ice, and empty or without a trailer in the wet, no stage is recommended, with the reason.
#[test]
fn stages_are_withheld_where_the_driven_axles_could_break_away() {
    let cases = [
        (Surface::Dry, Load::Empty, None),
        (Surface::Dry, Load::NoTrailer, None),
        (Surface::Wet, Load::Laden, None),
        (Surface::Wet, Load::Empty, Some(Withheld::EmptyInTheWet)),
        (Surface::Wet, Load::NoTrailer, Some(Withheld::NoTrailerInTheWet)),
        (Surface::Snow, Load::Laden, Some(Withheld::Snow)),
        (Surface::Ice, Load::Empty, Some(Withheld::Ice)),
    ];
    let truck = with(RetarderKind::CompressionRelease);
    for (surface, load, why) in cases {
        let day = Day { surface, load, ..Day::USUAL };
        assert_eq!(day.withheld(), why);
        let strongest = Trip { truck: &truck, day: &day }.strongest_stage();
        assert_eq!(strongest == Stage::OFF, why.is_some(), "{surface:?} {load:?}");
    }
}

/// On ice the motoring engine alone can make the driven axles slip. No gear in which it does is counted on.
/// Common practice, no source; the friction is the low end of the printed range.
#[test]
fn motoring_that_breaks_away_is_not_counted_on() {
    let truck = with(RetarderKind::CompressionRelease);
    let (grade, height) = (Grade(-0.03), Metres(0.0));
    let counted = |surface: Surface| {
        let day = Day { surface, ..Day::USUAL };
        let trip = Trip { truck: &truck, day: &day };
        let air = trip.air(height);
        let mut slides = 0;
        for gear in truck.gears() {
            for kmh in 4..=80 {
                let speed = MetresPerSecond::from_kmh(f64::from(kmh));
                if truck.engine_speed(gear, speed) > truck.highest_engine_speed() {
                    continue;
                }
                let counted = trip.retarding(gear, speed, grade, air);
                assert!(counted <= trip.grip_for_motoring(grade), "{surface:?} {gear:?} {kmh} km/h");
                slides +=
                    usize::from(trip.holding(gear, Stage::OFF, speed, air) > trip.grip_for_motoring(grade));
            }
            if let Answer::Settles { speed, .. } = control_speed(trip, gear, Stage::OFF, grade, height) {
                assert!(trip.holding(gear, Stage::OFF, speed, air) <= trip.grip_for_motoring(grade));
            }
        }
        slides
    };
    assert!(counted(Surface::Ice) > 0, "in low gears it would slide");
    assert_eq!(counted(Surface::Dry), 0);
}
