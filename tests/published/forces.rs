//! Forces: resistance alone, wheel inertia, axle efficiency, friction that retarding asks of
//! the driven axles, and control speed as its definition has it.

use solver::day::Day;
use solver::motion::{Answer, Trip, control_speed, held_grade};
use solver::truck::{Preset, Stage, Truck, Warmth};
use solver::units::{Grade, Metres, MetresPerSecond};
use tests::evidence::check;
use tests::trucks::{preset, standard_day, truck};

/// NAT: resistance alone of 36,287 kg, 10 m² (area for vans second-hand from SAE J1489), C_d
/// 0.7, C_rr 0.0065, 1.225 kg/m³; figures computed with g = 9.81.
#[test]
fn natural_resistance() {
    let mut spec = Preset::FiveAxle36.spec();
    spec.drag_area_m2 = 7.0;
    spec.rolling_resistance = 0.0065;
    let (truck, day) = (truck(spec), standard_day());
    let trip = Trip { truck: &truck, day: &day };
    let level = Grade(0.0);
    for (kmh, kilowatts, percent) in
        [(30.0, 21.8, 0.73), (50.0, 43.6, 0.88), (70.0, 76.5, 1.11), (90.0, 124.8, 1.40)]
    {
        let speed = MetresPerSecond::from_kmh(kmh);
        let resistance = -trip.demand(speed, level, trip.air(Metres(0.0)));
        check(&format!("kW at {kmh}"), kilowatts, (resistance * speed).0 / 1e3, 0.05);
        check(&format!("% at {kmh}"), percent, resistance / trip.weight() * 100.0, 0.005);
    }
}

/// INERTIA: 40 CFR 1037.528, example: 16,108 kg with 18 tyres has an effective mass of
/// 17,129 kg, 56.7 kg a tyre.
#[test]
fn wheels_as_mass() {
    let mut spec = Preset::FiveAxle36.spec();
    spec.gross_mass_kg = 16_108.0;
    spec.drive_axle_mass_kg = 8_000.0;
    let r = spec.rolling_radius_m;
    spec.wheel_inertia_kg_m2 = 18.0 * 56.7 * r * r;
    let truck = truck(spec);
    check("kg", 17_129.0, (truck.mass() + truck.wheels_as_mass()).0, 0.5);
    check("kg a tyre", 56.7, truck.wheels_as_mass().0 / 18.0, 0.1);
}

/// AXLE: 40 CFR 1036.545(f): efficiency 0.955 driving, 1/0.955 overrunning.
#[test]
fn axle_efficiency_both_ways() {
    let with = |efficiency: f64| {
        let mut spec = Preset::FiveAxle36.spec();
        spec.axle_efficiency = efficiency;
        truck(spec)
    };
    let (printed, lossless) = (with(0.955), with(1.0));
    for gear in printed.gears() {
        let speed = printed.road_speed(gear, solver::units::RevPerMin(1_500.0));
        let held_by =
            |truck: &Truck| truck.holding_force(gear, truck.full_stage(), speed, 1.0, Warmth::SUSTAINED);
        let held = held_by(&printed) / held_by(&lossless);
        let pulled = printed.pulling_force(gear, speed) / lossless.pulling_force(gear, speed);
        check("overrunning", 1.0 / 0.955, held, 1e-12);
        check("driving", 0.955, pulled, 1e-12);
    }
}

/// ADHESION: M·(G − 0.006)/drive mass, computed. Ours has sine and cosine where that has the
/// grade and 1.
#[test]
fn friction_asked_of_the_driven_axles() {
    for (gross_t, drive_t, grade, expected) in [
        (40.0, 11.5, 0.06, 0.188),
        (40.0, 11.5, 0.08, 0.257),
        (40.0, 19.0, 0.06, 0.114),
        (15.0, 6.0, 0.06, 0.135),
    ] {
        let mut spec = Preset::FiveAxle40.spec();
        spec.gross_mass_kg = gross_t * 1e3;
        spec.drive_axle_mass_kg = drive_t * 1e3;
        spec.rolling_resistance = 0.006;
        let (truck, day) = (truck(spec), Day::USUAL);
        let trip = Trip { truck: &truck, day: &day };
        let slope = Grade(-grade);
        let demand = trip.demand(MetresPerSecond(0.0), slope, trip.air(Metres(0.0))).0;
        let dry = trip.grip_for_retarding(slope).0 / day.surface.friction();
        check(&format!("{gross_t}/{drive_t} t at {grade}"), expected, demand / dry, 0.001);
    }
}

/// CONTROL: SAE J1489 (1987, rev. 2000) defines it as the stable speed with no service brake,
/// and states a vehicle by the largest grade for each gear at speeds from governed to idle.
/// So stated and turned round, ours returns the speed.
#[test]
fn control_speed_is_the_inverse_of_the_held_grade() {
    let day = standard_day();
    for kind in Preset::ALL {
        let truck = preset(kind);
        let trip = Trip { truck: &truck, day: &day };
        for gear in truck.gears() {
            for stage in truck.stages().filter(|stage| *stage != Stage::OFF) {
                for share in [0.5, 0.6, 0.75, 0.9, 0.99] {
                    let engine = truck.highest_engine_speed() * share;
                    let speed = truck.road_speed(gear, engine);
                    let Some(grade) = held_grade(trip, gear, stage, speed, Metres(0.0)) else {
                        continue;
                    };
                    match control_speed(trip, gear, stage, grade, Metres(0.0)) {
                        Answer::Settles { speed: found, .. } => check("m/s", speed.0, found.0, 1e-6),
                        // Steeper than the driven axles grip: told, not answered with a speed.
                        Answer::NotUsable(solver::Unusable::Grip) => {
                            assert!(
                                trip.holding(gear, stage, speed, trip.air(Metres(0.0)))
                                    > trip.grip_for_retarding(grade)
                            );
                        }
                        other => panic!("{} {gear:?} {stage:?} {share}: {other:?}", kind.key()),
                    }
                }
            }
        }
    }
}
