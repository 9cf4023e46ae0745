//! English sentences for what is found in a file: those of the solver.

use super::English;
use crate::format::Units;
use crate::words::TellingWords;
use solver::report::truck_file::TruckFileError;
use solver::road::{FileError, Finding, Unassessed};
use solver::truck::TruckError;

impl TellingWords for English {
    fn file_error(&self, error: &FileError) -> String {
        match error {
            // The page cannot know which of the two it is.
            FileError::NothingInside => "No track and no route could be read in the GPX file. If it was cut off when it was copied, copy it again; if not, export the track itself, not only its summary.".to_owned(),
            _ => error.to_string(),
        }
    }
    fn finding(&self, finding: &Finding) -> String {
        format!("{}.", finding.what())
    }
    fn reason(&self, why: Unassessed) -> String {
        format!("{why}.")
    }
    fn wrong_truck(&self, error: &TruckError, _: Units) -> String {
        error.to_string()
    }
    fn wrong_truck_file(&self, error: &TruckFileError) -> String {
        error.to_string()
    }
}
