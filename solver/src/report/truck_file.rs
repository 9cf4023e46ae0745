//! The truck file: a truck as JSON, to be kept, sent and opened again.
//!
//! `{"steadygrade_truck": 1, "truck": { … }}`, the fields of [`TruckSpec`] with their units in
//! their names. Unknown fields are refused, so that a misspelt one is not dropped silently; what
//! version 1 did not ask for at first may be missing and has the value that its field documents.

use crate::truck::{Truck, TruckError, TruckSpec};
use serde::{Deserialize, Serialize};
use std::fmt;

/// The version written, and the newest that is read.
pub const VERSION: u32 = 1;

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    steadygrade_truck: u32,
    truck: TruckSpec,
}

/// Why a truck file, a link or a project file cannot be used. Its `Display` is for logs: a key that stays, and its
/// values.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum TruckFileError {
    /// No truck file: not JSON, or a field is missing, misspelt or of the wrong kind.
    Broken {
        /// Line, from 1.
        line: usize,
        /// What is wrong there.
        what: String,
    },
    /// Bytes behind its header are missing, or there are too many.
    CutOff,
    /// Of a version that this program does not know.
    Version {
        /// Its version.
        found: u32,
        /// The newest that is read.
        newest: u32,
    },
    /// Its truck does not pass its check.
    Truck(TruckError),
}

impl fmt::Display for TruckFileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Broken { line, what } => write!(f, "broken line={line} what={what:?}"),
            Self::CutOff => f.write_str("cut-off"),
            Self::Version { found, newest } => write!(f, "version found={found} newest={newest}"),
            Self::Truck(error) => error.fmt(f),
        }
    }
}

impl std::error::Error for TruckFileError {}

/// Writes a truck.
#[must_use]
pub fn write(spec: &TruckSpec) -> String {
    let file = File { steadygrade_truck: VERSION, truck: spec.clone() };
    // Numbers, texts and lists always have a JSON form.
    serde_json::to_string_pretty(&file).map_or_else(|_| String::new(), |text| text + "\n")
}

/// Reads a truck and checks it.
///
/// # Errors
/// [`TruckFileError`] says where and what.
pub fn read(text: &str) -> Result<TruckSpec, TruckFileError> {
    #[derive(Deserialize)]
    struct Versioned {
        steadygrade_truck: u32,
    }
    let version = serde_json::from_str::<Versioned>(text).map_err(broken)?.steadygrade_truck;
    if version != VERSION {
        return Err(TruckFileError::Version { found: version, newest: VERSION });
    }
    let file: File = serde_json::from_str(text).map_err(broken)?;
    Truck::new(file.truck.clone()).map_err(TruckFileError::Truck)?;
    Ok(file.truck)
}

pub(super) fn broken(error: serde_json::Error) -> TruckFileError {
    let text = error.to_string();
    let what = text.split(" at line ").next().unwrap_or_default().to_owned();
    TruckFileError::Broken { line: error.line().max(1), what }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::truck::{Preset, RetarderKind};

    #[test]
    fn every_truck_is_read_back_as_written() {
        for preset in Preset::ALL {
            for kind in RetarderKind::ALL {
                let mut spec = preset.spec();
                spec.take_retarder(kind);
                assert_eq!(read(&write(&spec)), Ok(spec));
            }
        }
    }

    #[test]
    fn what_is_wrong_is_told_with_its_line() {
        let text = write(&Preset::Coach.spec());
        let misspelt = text.replace("gross_mass_kg", "gros_mass_kg");
        let Err(TruckFileError::Broken { line, what }) = read(&misspelt) else { panic!("a misspelt field") };
        assert!(line > 2 && what.contains("gros_mass_kg"), "{line}: {what}");
        assert!(matches!(read("not json"), Err(TruckFileError::Broken { line: 1, .. })));
        assert!(matches!(read(""), Err(TruckFileError::Broken { .. })));
        let newer = text.replace("\"steadygrade_truck\": 1", "\"steadygrade_truck\": 7");
        assert_eq!(read(&newer), Err(TruckFileError::Version { found: 7, newest: VERSION }));
        let heavy = text.replace("\"gross_mass_kg\": 19000.0", "\"gross_mass_kg\": 1.0");
        assert!(matches!(read(&heavy), Err(TruckFileError::Truck(_))), "{:?}", read(&heavy));
    }
}
