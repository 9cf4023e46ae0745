//! Cooling of brakes: the newer constants of the published model, drums of tractor and trailer, discs.

use super::downgrade_temperature::{braking_hp, celsius, fahrenheit, rise_of_one_stop, whole_truck};
use super::{Expected, Origin, Row, Status, near, near_or_known, number};
use crate::trucks::{FOOT, HORSEPOWER, MPH, loaded_80_000_lb, no_retarder, preset, truck};
use solver::constants::{NEWER_COOLING, NEWER_HEAT_CAPACITY_DRUM};
use solver::day::Day;
use solver::motion::{BrakeHeat, HeatLump, Trip};
use solver::truck::{AxleGroup, AxlePlace, BrakeKind, Preset, Stage};
use solver::units::{Celsius, Grade, Metres, MetresPerSecond, Seconds, Watts};

/// Source of the rows on the newer constants.
const NEWER: &str = "A state transport department's update of the published downgrade model after road tests of a modern combination (research report, 2018; abstract); constants from memory, two recalls agree";
const TEMPERATURE: Origin = Origin { key: "GSRS-NEW", status: Status::FromMemory, source: NEWER };
const IN_SI: Origin = Origin { key: "GSRS-NEW-SI", status: Status::FromMemory, source: NEWER };
const FASTEST: Origin = Origin { key: "GSRS-NEW-VMAX", status: Status::FromMemory, source: NEWER };
const SIGN: Origin = Origin {
    key: "GSRS-SIGN",
    status: Status::Printed,
    source: "Speeds posted by mass on a 6 % downgrade (SIGN), against the published downgrade model with its older constants (from memory) over 5 mi, at the top of each class",
};
const SHARE: Origin = Origin {
    key: "SIGN-SHARE",
    status: Status::Computed,
    source: "Published downgrade model (constants from memory) at the speeds posted by mass on a 6 % downgrade (SIGN)",
};
const LUMP: Origin = Origin {
    key: "GSRS-LUMP",
    status: Status::Secondary,
    source: "Conclusions of a university's mountain-descent study, 1992, quoted: brakes that do little leave the rest very hot",
};
const RECOVER: Origin = Origin {
    key: "RECOVER",
    status: Status::Printed,
    source: "A road authority's note 52, 1997: brakes come back to 70, 80 and 100 % in 3, 10 and 30 min on a tractor, in 8, 18 and 60 on a trailer; whether moving or parked was not in the part read",
};
const TAU: Origin = Origin {
    key: "RECOVER-TAU",
    status: Status::Computed,
    source: "Time constants that fit the times of RECOVER, from 400 to 100 or 150 °C in air of 20 °C, if the brakes stand",
};
const FADE: Origin = Origin {
    key: "FADE-US-T",
    status: Status::Secondary,
    source: "US federal dynamometer test, poor copies: 10 snubs from 50 to 15 mph at 9 ft/s² every 72 s; temperatures computed with the published model's older constants",
};
const FINS: Origin = Origin {
    key: "DISC-H",
    status: Status::Printed,
    source: "Int. J. Thermal Sciences 47 (2008) 458, abstract: fins of a vented disc of car size, 27.0, 52.7 and 78.3 W/(m² K) at 342, 684 and 1,025/min",
};
const WHOLE: Origin = Origin {
    key: "DISC-SHARE",
    status: Status::Computed,
    source: "Int. J. Thermal Sciences 47 (2008) 458, abstract: fins are 45.5 % of the whole at 342/min and 55.4 % at 1,025/min, wheel radius 0.5 m",
};
const REST: Origin = Origin {
    key: "DISC-REST",
    status: Status::Printed,
    source: "J. Mech. Eng. 66 (2020) 15, abstract: 3 to 5 W/(m² K) from a car's disc at rest",
};

/// °F.
const TENTH: f64 = 0.1;
/// m/s.
const STANDING: MetresPerSecond = MetresPerSecond(0.0);

/// Five axles with the newer constants, the end of the study's band. Ours has one capacity, that at 25 mph.
/// Theirs grows from 435 to 638 kJ/K between 0 and 60 mph, as no iron does.
fn newer(mph: f64) -> HeatLump {
    HeatLump {
        capacity: 5.0 * NEWER_HEAT_CAPACITY_DRUM,
        cooling: 5.0 * (NEWER_COOLING.0 + NEWER_COOLING.1 * mph * MPH),
    }
}

/// Their engine takes 63.3 hp instead of 73.
fn newer_power(pounds: f64, grade: f64, mph: f64) -> Watts {
    Watts((braking_hp(pounds, grade, mph) + 73.0 - 63.3) * HORSEPOWER)
}

fn newer_after(pounds: f64, grade: f64, miles: f64, mph: f64) -> f64 {
    let time = Seconds(miles / mph * 3_600.0);
    fahrenheit(newer(mph).after(celsius(150.0), celsius(90.0), newer_power(pounds, grade, mph), time))
}

/// The rows of GSRS with the newer constants. The differences come from the capacity.
pub(super) fn newer_temperatures() -> Vec<Row> {
    [
        (80_000.0, 0.06, 3.0, 20.0, 307.5, Some(-3.87)),
        (80_000.0, 0.06, 6.0, 20.0, 411.4, Some(-5.12)),
        (80_000.0, 0.06, 6.0, 30.0, 455.2, Some(5.49)),
        (80_000.0, 0.04, 6.0, 30.0, 299.4, Some(2.72)),
        (60_000.0, 0.06, 6.0, 30.0, 338.4, Some(3.37)),
        (70_000.0, 0.05, 5.0, 40.0, 317.0, Some(8.59)),
        (80_000.0, 0.07, 6.0, 15.0, 435.4, Some(-11.27)),
    ]
    .map(|(pounds, grade, miles, mph, expected, known)| {
        let (weight, slope) = (number(pounds, 0), number(grade * 100.0, 0));
        let what = format!(
            "Newer constants: brakes of {weight} lb after {miles} mi of {slope} % at {mph} mph, from 150 °F"
        );
        let expected = near_or_known(expected, TENTH, known, 0.05);
        TEMPERATURE.row(what, "°F", expected, newer_after(pounds, grade, miles, mph))
    })
    .to_vec()
}

/// Cooling of five axles, older and newer constants; the tolerance is half of the last digit.
pub(super) fn newer_in_si() -> Vec<Row> {
    let five = preset(Preset::FiveAxle36);
    let row = |(mph, older, newest): (f64, f64, f64)| {
        let of = |words: &str| format!("Cooling of five axles at {mph} mph, {words} constants");
        [
            IN_SI.row(of("older"), "W/K", near(older, 0.5), whole_truck(&five, mph).cooling),
            IN_SI.row(of("newer"), "W/K", near(newest, 0.5), newer(mph).cooling),
        ]
    };
    [(0.0, 134.0, 215.0), (20.0, 190.0, 424.0), (40.0, 246.0, 634.0), (60.0, 302.0, 843.0)]
        .into_iter()
        .flat_map(row)
        .collect()
}

/// The fastest speed that keeps 500 °F with one stop in hand.
pub(super) fn newer_fastest() -> Vec<Row> {
    [(4.0, 75.6, Some(-10.3)), (6.0, 36.9, Some(-3.25)), (8.0, 23.3, None), (10.0, 19.5, Some(0.3))]
        .map(|(miles, mph, known)| {
            let kept =
                |v: f64| newer_after(80_000.0, 0.06, miles, v) + rise_of_one_stop(80_000.0, v) <= 500.0;
            let ours = (50..2_000).map(|tenth| f64::from(tenth) * 0.05).take_while(|v| kept(*v)).last();
            let what = format!("Newer constants: fastest speed of 80,000 lb down {miles} mi of 6 % within 500 °F, one stop in hand");
            FASTEST.row(what, "mph", near_or_known(mph, 0.2, known, 0.05), ours.unwrap_or(0.0))
        })
        .to_vec()
}

/// The speeds posted for two classes of mass are those that the older constants allow on a hill of about that
/// length.
pub(super) fn posted_pair() -> Vec<Row> {
    [(80_000.0, 18.0), (65_000.0, 37.0)]
        .map(|(pounds, posted)| {
            let kept = |v: f64| {
                let after = super::downgrade_temperature::after(pounds, 0.06, 5.0, v, 150.0);
                after + rise_of_one_stop(pounds, v) <= 500.0
            };
            let ours = (50..2_000).map(|tenth| f64::from(tenth) * 0.05).take_while(|v| kept(*v)).last();
            let what = format!(
                "Speed of {} lb that keeps 500 °F down 5 mi of 6 %, by the default constants",
                number(pounds, 0)
            );
            SIGN.row(what, "mph", near(posted, 0.15 * posted), ours.unwrap_or(0.0))
        })
        .to_vec()
}

/// The service brakes' share of what holds the truck at the posted speeds, with the engine motoring in the
/// lowest gear that its highest speed allows.
///
/// # Panics
/// Never: the truck has a gear for these speeds.
pub(super) fn share_of_the_service_brakes() -> Vec<Row> {
    [(80_000.0, 18.0, 0.65, Some(-0.14)), (62_500.0, 37.0, 0.76, Some(0.045))]
        .map(|(pounds, mph, share, known)| {
            let mut spec = loaded_80_000_lb(no_retarder());
            let factor = pounds * crate::trucks::POUND / spec.gross_mass_kg;
            spec.gross_mass_kg *= factor;
            spec.drive_axle_mass_kg *= factor;
            let (truck, day) = (truck(spec), Day::USUAL);
            let trip = Trip { truck: &truck, day: &day };
            let (speed, air) = (MetresPerSecond(mph * MPH), trip.air(Metres(0.0)));
            let gear = trip.lowest_gear_within(speed, 1.0).expect("a gear for it");
            let held = trip.holding(gear, Stage::OFF, speed, air) / trip.demand(speed, Grade(-0.06), air);
            let what = format!(
                "Share left to the service brakes: {} lb at {mph} mph on 6 %, no retarder",
                number(pounds, 0)
            );
            SHARE.row(what, "", near_or_known(share, 0.02, known, 0.005), 1.0 - held)
        })
        .to_vec()
}

/// Hottest brakes of 36 t after ten minutes of 150 kW, °C, with the trailer doing this part of its share.
fn hottest_with_trailer(does: f64) -> f64 {
    let mut spec = Preset::FiveAxle36.spec();
    let own = spec.axle_groups[2].effort_share;
    for group in &mut spec.axle_groups {
        group.effort_share *=
            if group.place == AxlePlace::Trailer { does } else { (1.0 - own * does) / (1.0 - own) };
    }
    let (truck, day) = (truck(spec), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let brakes = BrakeHeat::uniform(Celsius(day.brakes_at_start_c));
    let speed = MetresPerSecond::from_kmh(40.0);
    brakes.after(trip, Watts(150e3), speed, Seconds(600.0)).hottest(trip).0
}

/// An entered imbalance runs hotter.
pub(super) fn imbalance() -> Vec<Row> {
    let more = hottest_with_trailer(0.5) - hottest_with_trailer(1.0);
    let what = "Hottest brakes with a trailer that does half of its share, over those with one that does all";
    vec![LUMP.row(what, "K", Expected::MoreThan(0.0), more)]
}

/// Time constant of the brakes of one axle, min.
fn minutes(place: AxlePlace, brake: BrakeKind, speed: MetresPerSecond) -> f64 {
    let axle = AxleGroup { place, axles: 1, brake, effort_share: 1.0 };
    axle.heat_capacity() / axle.cooling(speed) / 60.0
}

/// The bounds are the smallest and the largest ratio of the note's three times.
pub(super) fn trailer_and_tractor() -> Vec<Row> {
    let of = |place| minutes(place, BrakeKind::Drum, STANDING);
    let ours = of(AxlePlace::Trailer) / of(AxlePlace::Drive);
    vec![RECOVER.row(
        "Time in which a trailer's drums cool, standing, over that of driven axles",
        "",
        Expected::Between(18.0 / 10.0, 8.0 / 3.0),
        ours,
    )]
}

pub(super) fn time_constants() -> Vec<Row> {
    let row = |what: &str, place, low, high| {
        let ours = minutes(place, BrakeKind::Drum, STANDING);
        TAU.row(what, "min", Expected::Between(low, high), ours)
    };
    vec![
        row("Time constant of the drums of driven axles, standing", AxlePlace::Drive, 19.0, 28.0),
        row("Time constant of a trailer's drums, standing", AxlePlace::Trailer, 39.0, 56.0),
    ]
}

/// Ten snubs of 36.3 t, with the cooling at the mean speed between them.
pub(super) fn fade_test() -> Vec<Row> {
    const SNUBS: usize = 10;
    let five = preset(Preset::FiveAxle36);
    let (fast, slow) = (50.0 * MPH, 15.0 * MPH);
    let on = Seconds((fast - slow) / (9.0 * FOOT));
    let work = 0.5 * five.mass().0 * (fast * fast - slow * slow);
    let lump = whole_truck(&five, 32.5);
    let (mut at, air) = (celsius(175.0), celsius(90.0));
    for snub in 0..SNUBS {
        // The last one is measured at its end.
        let off = if snub == 0 { 0.0 } else { 72.0 - on.0 };
        at = lump.after(at, air, Watts(0.0), Seconds(off));
        at = lump.after(at, air, Watts(work / on.0), on);
    }
    vec![
        FADE.row("Work of one snub of 36.3 t from 50 to 15 mph", "MJ", near(8.25, 0.01), work / 1e6),
        FADE.row("Brakes after ten snubs, from 79 °C, older constants", "°C", near(238.0, 3.0), at.0),
    ]
}

/// Cooling of an axle's discs at a rotational speed of a wheel of 0.5 m, 1/min.
fn disc_at(turns: f64) -> f64 {
    let axle = AxleGroup { place: AxlePlace::Drive, axles: 1, brake: BrakeKind::Disc, effort_share: 1.0 };
    axle.cooling(MetresPerSecond(turns * 2.0 * std::f64::consts::PI / 60.0 * 0.5))
}

/// A straight line: the middle of three values is the mean of the others, in theirs and in ours.
pub(super) fn discs_in_a_straight_line() -> Vec<Row> {
    let ours = disc_at(684.0) / (0.5 * (disc_at(342.0) + disc_at(1_025.0)));
    let theirs = 52.7 / (0.5 * (27.0 + 78.3));
    let what = "Cooling of discs at 684/min over the mean of that at 342 and 1,025/min";
    vec![FINS.row(what, "", near(theirs, 0.03), ours)]
}

/// In theirs, the fins are divided by their share; the tolerance is that of the measured line.
pub(super) fn discs_by_speed() -> Vec<Row> {
    let theirs = (78.3 / 0.554) / (27.0 / 0.455);
    let what = "Cooling of discs at 1,025/min over that at 342/min";
    vec![WHOLE.row(what, "", near(theirs, 0.03 * theirs), disc_at(1_025.0) / disc_at(342.0))]
}

/// Not above the printed value, and at most a third of the cooling at 20 km/h. The area is from DISC-CV.
pub(super) fn discs_at_rest() -> Vec<Row> {
    // Two faces and two walls of two discs: 434 mm across, channels 101 mm long (a doctoral thesis, 2009, abstract).
    let (outer, inner) = (0.217_f64, 0.217 - 0.101);
    let area = 8.0 * std::f64::consts::PI * (outer * outer - inner * inner);
    let at_20 = MetresPerSecond::from_kmh(20.0).0 / 0.5 * 60.0 / (2.0 * std::f64::consts::PI);
    vec![
        REST.row(
            "Cooling of discs at rest over the faces and channel walls of an axle's two, 434 mm across",
            "W/(m² K)",
            Expected::Between(3.0, 5.0),
            disc_at(0.0) / area,
        ),
        REST.row(
            "Cooling of discs at 20 km/h over that at rest",
            "",
            Expected::AtLeast(3.0),
            disc_at(at_20) / disc_at(0.0),
        ),
    ]
}
