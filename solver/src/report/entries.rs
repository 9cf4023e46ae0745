//! Truck and day as one text, for a link.
//!
//! `{"steadygrade_entries": 1, "truck": { … }, "day": { … }}`, with all fields: a later change of a preset
//! must not change what a link means. Unknown fields are refused.

use super::truck_file::{TruckFileError, VERSION, broken};
use crate::day::Day;
use crate::truck::{Truck, TruckError, TruckSpec};
use serde::{Deserialize, Serialize};

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Carried {
    steadygrade_entries: u32,
    truck: TruckSpec,
    day: Day,
}

/// Writes truck and day, on one line.
#[must_use]
pub fn write(truck: &TruckSpec, day: &Day) -> String {
    let carried = Carried { steadygrade_entries: VERSION, truck: truck.clone(), day: *day };
    // Numbers, texts and lists always have a JSON form.
    serde_json::to_string(&carried).unwrap_or_default()
}

/// Reads truck and day and checks both.
///
/// # Errors
/// [`TruckFileError`] says what is wrong.
pub fn read(text: &str) -> Result<(TruckSpec, Day), TruckFileError> {
    #[derive(Deserialize)]
    struct Versioned {
        steadygrade_entries: u32,
    }
    let version = serde_json::from_str::<Versioned>(text).map_err(broken)?.steadygrade_entries;
    if version != VERSION {
        return Err(TruckFileError::Version { found: version, newest: VERSION });
    }
    let carried: Carried = serde_json::from_str(text).map_err(broken)?;
    Truck::new(carried.truck.clone()).map_err(TruckFileError::Truck)?;
    let day = carried.day.checked().map_err(|out| TruckFileError::Truck(TruckError::Entry(out)))?;
    Ok((carried.truck, day))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::day::Lead;
    use crate::truck::Preset;

    #[test]
    fn truck_and_day_come_back_as_they_went() {
        for preset in Preset::ALL {
            let truck = TruckSpec { name: "Nº 7 “north”".to_owned(), ..preset.spec() };
            let day = Day { headwind_kmh: -12.5, ..Day::USUAL };
            assert_eq!(read(&write(&truck, &day)), Ok((truck, day)));
        }
    }

    /// Links stay in messages and bookmarks for years.
    #[test]
    fn which_way_leads_is_carried_and_a_link_from_before_means_the_usual_one() {
        for lead in Lead::ALL {
            let day = Day { lead, ..Day::USUAL };
            assert_eq!(read(&write(&Preset::Coach.spec(), &day)), Ok((Preset::Coach.spec(), day)));
        }
        let text = write(&Preset::Coach.spec(), &Day::USUAL);
        let before = text.replace("\"lead\":\"usual\",", "");
        assert!(before.len() < text.len(), "{text}");
        assert_eq!(read(&before), Ok((Preset::Coach.spec(), Day::USUAL)));
        let unknown = text.replace("\"lead\":\"usual\"", "\"lead\":\"fastest\"");
        assert!(matches!(read(&unknown), Err(TruckFileError::Broken { .. })));
    }

    #[test]
    fn what_is_cut_newer_or_out_of_range_is_refused() {
        let text = write(&Preset::Coach.spec(), &Day::USUAL);
        assert!(matches!(read(&text[..text.len() - 9]), Err(TruckFileError::Broken { .. })));
        assert!(matches!(read(""), Err(TruckFileError::Broken { .. })));
        let newer = text.replace("\"steadygrade_entries\":1", "\"steadygrade_entries\":2");
        assert_eq!(read(&newer), Err(TruckFileError::Version { found: 2, newest: VERSION }));
        let windy = write(&Preset::Coach.spec(), &Day { headwind_kmh: 900.0, ..Day::USUAL });
        assert!(matches!(read(&windy), Err(TruckFileError::Truck(TruckError::Entry(_)))), "{windy}");
    }
}
