//! What no answer may do: hide a hill, take a steep pitch for a mild one, say "held" where the service brakes
//! hold, recommend a stage that does not grip, or get faster when something gets worse.

use solver::day::{Day, ServiceBrakes, Surface};
use solver::motion::Trip;
use solver::plan::{Descent, HeatStep, Note, Plan, Touch, Verdict};
use solver::road::Road;
use solver::study::{Reach, Seen, measured, study};
use solver::truck::{Preset, Truck, Warmth};
use solver::units::{Celsius, Grade, Metres, MetresPerSecond, RevPerMin};
use tests::generate::{Alignment, Bend, Drive, Instrument, Plan as Shape, Tangent, TrueRoad};
use tests::trucks::{loaded_80_000_lb, no_retarder, preset, truck};
use tests::truth::survey_drive;

/// A road of stretches (length, m, and grade) between 600 m and 400 m of level road.
fn road(top_m: f64, stretches: &[(f64, f64)]) -> Road {
    let mut heights = vec![top_m];
    let level = [(400.0, 0.0)];
    for (length, grade) in [(600.0, 0.0)].iter().chain(stretches).chain(&level) {
        for _ in 0..(length / 10.0_f64).round() as usize {
            let last = heights[heights.len() - 1];
            heights.push(last + 10.0 * grade);
        }
    }
    Road::from_heights("road", 10.0, heights).expect("heights are sound")
}

/// The road with bends of this radius on `of` cells in each 300 m.
fn winding(road: &Road, radius_m: f64, of: usize) -> Road {
    let mut value = serde_json::to_value(road).expect("a road is written");
    let bend = |from: usize| serde_json::json!({"from": from, "to": from + of, "radius_m": radius_m, "turn": "Left", "hairpin": false});
    value["curves"] = (80..road.cells() - 80).step_by(30).map(bend).collect();
    serde_json::from_value(value).expect("a road is read")
}

fn planned(road: &Road, truck: &Truck, day: &Day) -> Plan {
    solver::analyse(road, truck, day, &mut |_| true).expect("not stopped").0
}

fn kmh(descent: &Descent) -> f64 {
    descent.choice.advice().map_or(0.0, |advice| advice.speed.kmh())
}

fn only(road: &Road, truck: &Truck, day: &Day) -> Descent {
    let plan = planned(road, truck, day);
    assert_eq!(plan.descents.len(), 1);
    plan.descents[0].clone()
}

/// The service brakes' share of a descent's braking work.
fn service_share(descent: &Descent) -> f64 {
    let advice = descent.choice.advice().expect("held");
    advice.service_work.0 / (advice.service_work.0 + advice.holding_work.0)
}

fn wet() -> Day {
    Day { surface: Surface::Wet, ..Day::USUAL }
}

#[test]
fn a_hill_that_no_gear_holds_is_not_lost_behind_a_climb() {
    let weak = truck(loaded_80_000_lb(no_retarder()));
    let plan =
        planned(&road(1_200.0, &[(900.0, -0.11), (3_760.0, 0.05), (900.0, -0.11)]), &weak, &Day::USUAL);
    assert!(!plan.descents.is_empty(), "two hills of 99 m are no descent");
}

#[test]
fn a_climb_between_two_hills_does_not_make_them_mild() {
    let weak = truck(loaded_80_000_lb(no_retarder()));
    let plan =
        planned(&road(1_200.0, &[(900.0, -0.11), (3_000.0, 0.05), (900.0, -0.11)]), &weak, &Day::USUAL);
    for descent in &plan.descents {
        assert!(descent.choice.verdict() > Verdict::LittleInReserve, "{} km/h", kmh(descent));
    }
}

#[test]
fn steps_of_one_hill_are_a_descent() {
    let steps = [(180.0, -0.10), (160.0, 0.0)].repeat(20);
    let plan = planned(&road(1_200.0, &steps), &preset(Preset::FiveAxle40), &Day::USUAL);
    let hottest = plan.totals.hottest_after_stop.0;
    assert!(
        !plan.descents.is_empty(),
        "360 m down in 6.8 km is no hill, and the brakes reach {hottest:.0} °C"
    );
}

/// A steep pitch decides the speed, or the plan says that the service brakes are needed there, and how much
/// they warm. Beside it stands the speed at which the pitch is held without them, as for the pitch by itself.
#[test]
fn a_steep_pitch_in_a_mild_hill_decides_or_is_told() {
    let truck = preset(Preset::FiveAxle36);
    let alone = only(&road(1_200.0, &[(250.0, -0.10)]), &truck, &Day::USUAL);
    let within =
        only(&road(1_200.0, &[(3_000.0, -0.01), (250.0, -0.10), (3_000.0, -0.01)]), &truck, &Day::USUAL);
    let on_the_pitch = |touch: &&Touch| touch.certain && touch.from.0 < 3_850.0 && touch.to.0 > 3_600.0;
    if kmh(&within) > kmh(&alone) + 1.01 {
        let told = within.touches.iter().find(on_the_pitch).expect("the pitch is told");
        assert!(told.kelvin <= 15.0, "{told:?}");
        let needs = within.choice.verdict() >= Verdict::NeedsServiceBrakes;
        assert!(needs || told.gains.kmh() <= 10.0, "{told:?}");
    }
    let [alone, within] = [alone, within].map(|it| it.untouched.expect("some speed holds it").speed.kmh());
    assert!(within <= alone + 1.01, "{within} km/h, alone {alone} km/h");
}

#[test]
fn a_wet_road_is_not_taken_faster_than_a_dry_one() {
    for preset_of in [Preset::FiveAxle36, Preset::FiveAxle40, Preset::BDouble] {
        for grade in [-0.06, -0.07, -0.08, -0.10] {
            let (road, truck) = (road(1_200.0, &[(2_000.0, grade)]), preset(preset_of));
            let (dry, wet) = (kmh(&only(&road, &truck, &Day::USUAL)), kmh(&only(&road, &truck, &wet())));
            assert!(wet <= dry + 1.01, "{preset_of:?} on {grade}: {wet} km/h wet, {dry} km/h dry");
        }
    }
}

#[test]
fn a_little_more_mass_does_not_nearly_double_the_speed() {
    let (road, truck) = (road(1_200.0, &[(1_500.0, -0.13)]), preset(Preset::CoachConverter));
    let heavier = truck.heavier(1.01).expect("in range");
    let (here, more) = (kmh(&only(&road, &truck, &Day::USUAL)), kmh(&only(&road, &heavier, &Day::USUAL)));
    assert!(more <= here + 5.0, "{here} km/h, with 1 % more mass {more} km/h");
}

#[test]
fn every_stage_advised_grips() {
    let (truck, day) = (preset(Preset::FiveAxle40), wet());
    let trip = Trip { truck: &truck, day: &day };
    for grade in [-0.08, -0.09, -0.10, -0.11] {
        let road = road(1_200.0, &[(4_000.0, grade)]);
        let descent = only(&road, &truck, &day);
        let Some(advice) = descent.choice.advice() else { continue };
        for span in descent.stages.iter().filter(|span| !span.stage.is_off()) {
            let air = trip.air(Metres(road.heights_m()[span.from]));
            let force = trip.holding(advice.gear, span.stage, advice.speed, air).0;
            let grip = trip.grip_for_retarding(Grade(grade)).0;
            assert!(
                force <= grip,
                "{grade}: stage {} holds {force:.0} N, grip {grip:.0} N",
                span.stage.number()
            );
        }
    }
}

#[test]
fn what_the_retarder_is_said_to_hold_in_curves_it_holds() {
    let straight = road(1_200.0, &[(4_000.0, -0.06)]);
    let descent = only(&winding(&straight, 25.0, 25), &preset(Preset::FiveAxle36), &Day::USUAL);
    assert!(
        descent.choice.verdict() > Verdict::LittleInReserve || service_share(&descent) < 0.2,
        "{:.0} % for the service brakes",
        100.0 * service_share(&descent)
    );
}

/// A little above the hold speed, the motoring engine takes more than the driven axles grip on snow.
#[test]
fn what_the_engine_is_said_to_hold_on_snow_it_holds() {
    let mut spec = Preset::Rigid18.spec();
    spec.gross_mass_kg = 9_236.0;
    spec.drive_axle_mass_kg = 5_901.0;
    let day = Day { surface: Surface::Snow, speed_limit_kmh: 61.0, air_c: -6.0, ..Day::USUAL };
    let descent = only(&road(0.0, &[(1_400.0, -0.1067)]), &truck(spec), &day);
    if descent.choice.verdict() <= Verdict::LittleInReserve {
        let share = service_share(&descent);
        assert!(share < 0.2, "{} km/h, {:.0} % for the service brakes", kmh(&descent), 100.0 * share);
    }
}

#[test]
fn brakes_near_the_limit_are_not_cool() {
    for (after, start, limit) in [(250.0, 260.0, 260.0), (255.0, 259.0, 260.0), (259.9, 260.0, 260.0)] {
        let step = HeatStep::of(Celsius(after), Celsius(start), Celsius(limit));
        assert_eq!(step, HeatStep::Hot, "{after} °C after a stop, limit {limit} °C");
    }
}

/// The answer told for 10 % more mass is the plan made with that mass.
#[test]
fn ten_per_cent_more_mass_brings_its_own_heat_to_the_second_hill() {
    let road = road(1_600.0, &[(2_500.0, -0.13), (1_400.0, 0.0), (2_000.0, -0.11)]);
    let (truck, day) =
        (preset(Preset::FiveAxle40), Day { service_brakes: ServiceBrakes::MaySnub, ..Day::USUAL });
    let (light, heavy) =
        (planned(&road, &truck, &day), planned(&road, &truck.heavier(1.1).expect("in range"), &day));
    let told = light.descents[1].heavier.expect("in range");
    let (told, real) = (*told.advice().expect("held"), *heavy.descents[1].choice.advice().expect("held"));
    assert!(
        told.speed.kmh() <= real.speed.kmh() + 1.01,
        "told {} km/h, planned {}",
        told.speed.kmh(),
        real.speed.kmh()
    );
}

/// On a short hill a retarder is cold and gives more than it can sustain.
#[test]
fn a_cold_retarder_does_not_raise_what_it_gives_for_good() {
    let (truck, day) = (preset(Preset::CoachConverter), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let gear = truck.gears().nth(2).expect("six gears");
    let (stage, grade, height) = (truck.full_stage(), Grade(-0.12), Metres(500.0));
    let air = trip.air(height);
    let (mut slow, mut fast) =
        (truck.road_speed(gear, RevPerMin(1_000.0)).0, truck.road_speed(gear, RevPerMin(1_300.0)).0);
    // The speed that a driver sees there, with a cold retarder that gives what its data say.
    for _ in 0..50 {
        let middle = MetresPerSecond(0.5 * (slow + fast));
        let held = truck.holding_force(gear, stage, middle, air.ambient, Warmth::COLD);
        if held.0 > trip.demand(middle, grade, air).0 { fast = middle.0 } else { slow = middle.0 }
    }
    let speed = MetresPerSecond(fast);
    let seen = Seen {
        gear: 3,
        stage: stage.number(),
        engine_speed: truck.engine_speed(gear, speed),
        speed,
        grade,
        height,
    };
    if let Ok(found) = measured(trip, seen) {
        assert!(found.scale <= 1.03, "a retarder as its data say is scaled by {:.2}", found.scale);
    }
}

#[test]
fn no_stop_is_promised_that_the_surface_does_not_give() {
    let (truck, day) = (preset(Preset::FiveAxle40), Day { surface: Surface::Ice, ..Day::USUAL });
    // Friction 0.05 does not even hold the truck on 6 %.
    let road = road(600.0, &[(400.0, -0.06)]);
    let plan = planned(&road, &truck, &day);
    for (descent, lost) in plan.descents.iter().zip(study(&road, &truck, &day, &plan).lost) {
        assert_ne!(lost.can_stop(descent.foot.0), Reach::AllTheWay);
    }
}

/// A road with these tangents, as a barometric recorder records it.
fn recorded(tangents: &[(f64, f64)]) -> Road {
    let tangents: Vec<Tangent> = tangents
        .iter()
        .map(|(length_m, grade)| Tangent { length_m: *length_m, grade: *grade, curve_m: 80.0 })
        .collect();
    let truth = TrueRoad {
        alignment: Alignment::new(900.0, &tangents),
        plan: Shape {
            lat_deg: -40.0,
            lon_deg: -20.0,
            heading_deg: 90.0,
            bends: vec![Bend::straight(9_000.0)],
        },
    };
    survey_drive(&truth, &Drive::new(Instrument::Recorder, 10.0, 3))
}

/// A pitch steeper than trucks usually meet is planned for like any other hill, not taken out.
#[test]
fn a_hill_is_planned_for_what_is_very_steep_in_it() {
    let (truck, day) = (preset(Preset::FiveAxle40), Day::USUAL);
    let hill = |steep| {
        recorded(&[(1_500.0, 0.0), (1_500.0, -0.06), (700.0, steep), (1_500.0, -0.06), (1_000.0, 0.0)])
    };
    let (steep, steeper) = (planned(&hill(-0.145), &truck, &day), planned(&hill(-0.175), &truck, &day));
    assert!(!steeper.notes.contains(&Note::PartlyUnassessed), "{:?}", steeper.notes);
    let whole = kmh(&steep.descents[0]);
    for metre in [2_500.0, 4_500.0] {
        let lies = |it: &Descent| it.crest.0 < metre && metre < it.foot.0;
        assert!(steeper.descents.iter().any(lies), "{metre} m lies on no descent");
    }
    for descent in &steeper.descents {
        assert!(kmh(descent) <= whole, "{} km/h, {whole} on a hill of 14.5 %", kmh(descent));
    }
    let snubbed = |it: &Descent| it.snubbing.advice().map_or(0.0, |advice| advice.speed.kmh());
    let whole = snubbed(&steep.descents[0]);
    for descent in &steeper.descents {
        assert!(snubbed(descent) <= whole, "snubbed at {} km/h, {whole} on 14.5 %", snubbed(descent));
    }
}

/// Steps that are too far apart to be one hill, and each too small to be a descent, still heat the brakes.
#[test]
fn brakes_that_pass_the_limit_between_descents_are_told() {
    let steps: Vec<(f64, f64)> = [(100.0, -0.10), (1_000.0, 0.0)].repeat(60);
    let (truck, day) = (truck(loaded_80_000_lb(no_retarder())), Day { speed_limit_kmh: 100.0, ..Day::USUAL });
    let plan = planned(&road(900.0, &steps), &truck, &day);
    assert!(plan.descents.is_empty(), "{} descents", plan.descents.len());
    assert!(plan.totals.hottest_after_stop.0 > day.heat_limit_c, "{:?}", plan.totals);
    let hot = |plan: &Plan| {
        plan.notes
            .iter()
            .find_map(|note| if let Note::HotElsewhere { at } = note { Some(at.0) } else { None })
    };
    // Each step adds heat that the level stretch behind it does not take away: the last is the hottest.
    let at = hot(&plan).expect("a place");
    assert!((60_000.0..66_000.0).contains(&at), "hottest at {at} m");
    let mild = planned(&road(900.0, &[(100.0, -0.10)]), &truck, &day);
    assert_eq!(hot(&mild), None);
}

/// Steps nearer to each other are one descent. Its answer keeps the brakes below the limit, or says that no
/// speed does.
#[test]
fn steps_that_heat_the_brakes_together_are_planned_together() {
    let steps: Vec<(f64, f64)> = [(190.0, -0.10), (310.0, 0.0)].repeat(40);
    let (truck, day) = (truck(loaded_80_000_lb(no_retarder())), Day { speed_limit_kmh: 100.0, ..Day::USUAL });
    let descent = only(&road(900.0, &steps), &truck, &day);
    let cool = descent.choice.advice().is_none_or(|it| it.hottest_after_stop.0 <= day.heat_limit_c);
    assert!(cool && descent.foot.0 > 19_000.0, "{:?}", descent.choice);
}
