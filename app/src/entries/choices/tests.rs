//! What follows from a choice, and what stays as it was entered.

use crate::entries::{Entries, EntryProblem, Field};
use crate::format::Units::{Imperial, Metric};
use solver::limits::Entry;
use solver::truck::{BrakeKind, Preset, RetarderKind, TYRE_SIZES, TruckError, gear_sets};

const PACE: Field = Field::Number(Entry::TopGearSpeed);
const RATIO: Field = Field::Number(Entry::AxleRatio);

fn start() -> Entries {
    Entries::of(Preset::FiveAxle40)
}

#[test]
fn the_engine_speed_in_top_gear_stays_when_gears_and_tyres_change() {
    let mut entries = start();
    assert!(entries.is_assumed(PACE), "as the axle ratio is");
    entries.take(PACE, "1150", Metric).expect("an axle has such a ratio");
    assert!(!entries.is_assumed(PACE) && !entries.is_assumed(RATIO));
    let before = entries.truck.axle_ratio;
    entries.take_tyres(&TYRE_SIZES[5]);
    assert!(entries.truck.axle_ratio > before, "larger tyres, the same engine speed");
    entries.take_gears(&gear_sets::TEN_OVERDRIVE);
    assert_eq!(entries.text(PACE, Metric), "1150");
    entries.take(Field::Number(Entry::RollingRadius), "0.48", Metric).expect("in range");
    assert_eq!(entries.text(PACE, Metric), "1150");
    // A ratio read off the plate counts.
    entries.take(RATIO, "3.7", Metric).expect("in range");
    entries.take_gears(&gear_sets::TWELVE);
    assert_eq!(entries.text(RATIO, Metric), "3.7");
    assert_ne!(entries.text(PACE, Metric), "1150");
}

#[test]
fn at_50_mph_it_is_the_same_axle() {
    let (mut metric, mut imperial) = (start(), start());
    metric.take(PACE, "1200", Metric).expect("in range");
    imperial.take(PACE, "1207", Imperial).expect("in range");
    let (one, other) = (metric.truck.axle_ratio, imperial.truck.axle_ratio);
    assert!((one / other - 1.0).abs() < 1e-4, "{one} and {other}");
    assert_eq!(metric.text(PACE, Imperial), "1207");
}

#[test]
fn an_engine_speed_that_no_axle_gives_changes_nothing() {
    let mut entries = start();
    let problem = entries.take(PACE, "500", Metric);
    assert!(matches!(problem, Err(EntryProblem::AxleRatio(ratio)) if ratio < 1.5), "{problem:?}");
    assert_eq!(entries.take(PACE, "60", Metric), Err(EntryProblem::OutOfRange(Entry::TopGearSpeed)));
    assert_eq!(entries, start());
}

#[test]
fn litres_and_power_move_what_is_assumed_of_the_retarder_only() {
    let mut entries = start();
    entries.take(Field::Number(Entry::Displacement), "10.8", Metric).expect("in range");
    entries.take(Field::Number(Entry::RatedPower), "270", Metric).expect("in range");
    let power = Field::Number(Entry::RetarderPeakPower);
    assert_eq!(entries.text(power, Metric), "270");
    assert!(entries.is_assumed(power));
    entries.take(power, "300", Metric).expect("in range");
    entries.take(Field::Number(Entry::RatedPower), "400", Metric).expect("in range");
    assert_eq!(entries.text(power, Metric), "300");
}

#[test]
fn axles_change_shares_and_wheels_but_no_mass_that_was_entered() {
    let mut entries = Entries::of(Preset::FiveAxle36);
    entries.take_axles(2, 0, BrakeKind::Drum);
    assert_eq!((entries.truck.axle_groups.len(), entries.problem()), (2, None));
    entries.take_axles(2, 3, BrakeKind::Disc);
    assert_eq!((entries.truck.axle_groups[2].axles, entries.problem()), (3, None));
    let mass = Field::Number(Entry::DriveAxleMass);
    entries.take_axles(1, 1, BrakeKind::Drum);
    assert!(entries.is_assumed(mass));
    let halved = entries.truck.drive_axle_mass_kg / entries.truck.gross_mass_kg;
    entries.take(Field::Number(Entry::GrossMass), "30", Metric).expect("in range");
    assert!((entries.truck.drive_axle_mass_kg / 30_000.0 - halved).abs() < 1e-9, "it follows from there");
    entries.take(mass, "9", Metric).expect("in range");
    entries.take_axles(1, 2, BrakeKind::Drum);
    entries.take_axles(1, 1, BrakeKind::Drum);
    assert!((entries.truck.drive_axle_mass_kg - 9_000.0).abs() < 1e-9 && !entries.is_assumed(mass));
}

#[test]
fn a_second_answer_about_the_retarder_leaves_the_first_alone() {
    let mut entries = start();
    let power = Field::Number(Entry::RetarderPeakPower);
    entries.take(power, "290", Metric).expect("in range");
    entries.take_retarder(RetarderKind::CompressionAndHydrodynamic);
    assert_eq!(entries.text(power, Metric), "290");
    entries.take_lever(6);
    assert_eq!(entries.text(Field::Stages, Metric).split_whitespace().count(), 6);
    assert_eq!(entries.take(Field::Stages, "10 20", Metric), Err(EntryProblem::Truck(TruckError::Stages)));
    entries.take_shape(true);
    assert!(entries.has(Field::Number(Entry::RetarderExponent)));
    entries.take_shape(false);
    assert!(!entries.has(Field::Number(Entry::RetarderExponent)));
    assert_eq!(entries.preset, None);
}
