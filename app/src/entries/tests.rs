//! Typed texts become numbers within their ranges, or a problem, and nothing else.

use super::*;
use Units::{Imperial, Metric};

fn start() -> Entries {
    Entries::of(Preset::FiveAxle36)
}

#[test]
fn fields_have_their_order() {
    for (index, field) in Field::all().enumerate() {
        assert_eq!(field.index(), index, "{}", field.key());
    }
    assert_eq!(Field::all().count(), Field::COUNT);
}

#[test]
fn every_preset_shows_texts_that_it_takes_back() {
    for preset in Preset::ALL {
        for units in [Metric, Imperial] {
            let entries = Entries::of(preset);
            for field in Field::all().filter(|field| entries.has(*field)) {
                let text = entries.text(field, units);
                let mut again = entries.clone();
                again.take(field, &text, units).unwrap_or_else(|e| panic!("{} {text}: {e:?}", field.key()));
                assert_eq!(again.text(field, units), text, "{}", field.key());
            }
        }
    }
}

#[test]
fn a_number_out_of_range_changes_nothing() {
    let mut entries = start();
    let problem = entries.take(Field::Number(Entry::GrossMass), "2", Metric);
    assert_eq!(problem, Err(EntryProblem::OutOfRange(Entry::GrossMass)));
    let problem = entries.take(Field::Number(Entry::GrossMass), "36,287", Metric);
    assert_eq!(problem, Err(EntryProblem::OutOfRange(Entry::GrossMass)), "kilograms typed as tonnes");
    let problem = entries.take(Field::Number(Entry::GrossMass), "heavy", Metric);
    assert_eq!(problem, Err(EntryProblem::NotANumber(Entry::GrossMass)));
    assert_eq!(entries, start());
}

#[test]
fn less_mass_is_less_on_the_driven_axles_until_that_is_entered() {
    let mut entries = start();
    entries.take(Field::Number(Entry::GrossMass), "15", Metric).expect("in range");
    assert!(entries.problem().is_none());
    assert!((entries.truck.drive_axle_mass_kg - 15_000.0 * 15_422.0 / 36_287.0).abs() < 1e-6);
    assert!(entries.is_assumed(Field::Number(Entry::DriveAxleMass)));
    assert!(!entries.is_assumed(Field::Number(Entry::GrossMass)));
    entries.take(Field::Number(Entry::DriveAxleMass), "9", Metric).expect("in range");
    entries.take(Field::Number(Entry::GrossMass), "80,000", Imperial).expect("in range");
    assert!((entries.truck.drive_axle_mass_kg - 9_000.0).abs() < 1e-6);
    entries.take(Field::Number(Entry::GrossMass), "8", Metric).expect("in range");
    assert_eq!(entries.problem(), Some(TruckError::DriveAxleHeavierThanTruck));
}

#[test]
fn gears_and_stages_are_lists() {
    let mut entries = start();
    entries.take(Field::Gears, "6, 3.5; 2,1 / 1", Metric).expect("falling");
    assert_eq!(entries.text(Field::Gears, Metric), "6  3.5  2.1  1");
    assert_eq!(entries.take(Field::Gears, "1 2 3", Metric), Err(EntryProblem::Truck(TruckError::Gears)));
    assert_eq!(entries.take(Field::Gears, "", Metric), Err(EntryProblem::Truck(TruckError::Gears)));
    entries.take(Field::Stages, "50 100", Metric).expect("rising to 100");
    assert_eq!(entries.text(Field::Stages, Metric), "50  100");
    assert_eq!(entries.take(Field::Stages, "50 90", Metric), Err(EntryProblem::Truck(TruckError::Stages)));
    assert_eq!(entries.preset, None);
}

#[test]
fn day_entries_leave_the_preset_alone() {
    let mut entries = start();
    entries.take(Field::Number(Entry::HeatLimit), "400", Imperial).expect("in range");
    assert!((entries.day.heat_limit_c - 204.444_44).abs() < 1e-3);
    assert_eq!(entries.preset.as_deref(), Some("five-axle-36t"));
    entries.take_preset(Preset::Coach);
    assert!((entries.day.heat_limit_c - 204.444_44).abs() < 1e-3, "the day stays");
}

#[test]
fn a_preset_with_another_mass_is_not_called_by_the_old_one() {
    let mut entries = start();
    let mass = Field::Number(Entry::GrossMass);
    for (typed, units, name) in [
        ("44", Metric, "Five-axle combination, 44.0 t"),
        ("97,000", Imperial, "Five-axle combination, 97,000 lb"),
        ("20", Metric, "Five-axle combination, 20.0 t"),
    ] {
        entries.take(mass, typed, units).expect("in range");
        assert_eq!(entries.truck.name, name);
    }
    let mut coach = Entries::of(Preset::Coach);
    let called = coach.truck.name.clone();
    for typed in ["14", "15"] {
        coach.take(mass, typed, Metric).expect("in range");
        assert_eq!(coach.truck.name, format!("{called}, {typed}.0 t"));
    }
    // A name that a person gave is theirs.
    entries.truck.name = "Blue one, 30 t".to_owned();
    entries.take(mass, "25", Metric).expect("in range");
    assert_eq!(entries.truck.name, "Blue one, 30 t");
}

#[test]
fn an_unloaded_truck_is_not_taken_to_weigh_less_by_itself() {
    let mut entries = start();
    assert!(!entries.weighs_as_laden(), "it is loaded");
    for load in [Load::Empty, Load::NoTrailer] {
        entries.day.load = load;
        assert!(entries.weighs_as_laden(), "{load:?} with the mass of the preset");
    }
    for (tonnes, laden) in [("36", true), ("23", true), ("15", false), ("8", false)] {
        entries.take(Field::Number(Entry::GrossMass), tonnes, Metric).expect("in range");
        assert_eq!(entries.weighs_as_laden(), laden, "{tonnes} t");
    }
    entries.day.load = Load::Laden;
    assert!(!entries.weighs_as_laden());
}

#[test]
fn what_is_kept_comes_back() {
    let entries = start();
    let bytes = postcard::to_allocvec(&entries).expect("plain data");
    let back: Entries = postcard::from_bytes(&bytes).expect("the same data");
    assert_eq!(back, entries);
    assert!(back.is_sound());
}
