//! Truck and day from the words of the command line.

use crate::arguments::{DayWords, TruckWords};
use crate::{file, sentences};
use solver::day::{Day, ServiceBrakes};
use solver::report::truck_file;
use solver::truck::{Preset, Truck, TruckSpec};
use std::path::Path;

/// The truck as entered.
///
/// # Errors
/// A sentence when it cannot be computed with.
pub(crate) fn truck(words: &TruckWords) -> Result<Truck, String> {
    let mut spec = match &words.truck {
        None => words.preset.unwrap_or(Preset::FiveAxle36).spec(),
        Some(path) => truck_of(path)?,
    };
    if let Some(mass_kg) = words.mass_kg {
        spec.drive_axle_mass_kg *= mass_kg / spec.gross_mass_kg;
        spec.gross_mass_kg = mass_kg;
    }
    if let Some(kind) = words.retarder {
        spec.take_retarder(kind);
    }
    Truck::new(spec).map_err(|error| sentences::truck_error(&error))
}

/// A truck file, as the page saves and opens it.
fn truck_of(path: &Path) -> Result<TruckSpec, String> {
    let unusable =
        |error| format!("{} could not be used. {}", path.display(), sentences::truck_file_error(&error));
    truck_file::read(&file::read_text(path)?).map_err(unusable)
}

/// The day as entered.
///
/// # Errors
/// A sentence when an entry is missing, misspelt or out of its range.
pub(crate) fn day(words: &DayWords) -> Result<Day, String> {
    let mut day = match &words.day {
        None => Day::USUAL,
        Some(path) => day_of(path)?,
    };
    if words.may_snub {
        day.service_brakes = ServiceBrakes::MaySnub;
    }
    day.checked().map_err(|error| sentences::out_of_range(&error))
}

fn day_of(path: &Path) -> Result<Day, String> {
    serde_json::from_str(&file::read_text(path)?).map_err(|error| {
        let usual = serde_json::to_string_pretty(&Day::USUAL).unwrap_or_default();
        format!("{} could not be used as a day: {error}. The usual day is\n{usual}", path.display())
    })
}
