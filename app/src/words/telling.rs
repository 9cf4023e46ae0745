//! What is found in a file, and why a file or a truck is not taken: words that are not yet in the catalogues.

use crate::format::Units;
use solver::report::truck_file::TruckFileError;
use solver::road::{FileError, Finding, Unassessed};
use solver::truck::TruckError;

/// Words of findings and errors.
pub trait TellingWords {
    /// Why a file cannot be used, and what to do.
    fn file_error(&self, error: &FileError) -> String;
    /// One finding.
    fn finding(&self, finding: &Finding) -> String;
    /// Why a stretch is not assessed.
    fn reason(&self, why: Unassessed) -> String;
    /// Why a truck is not taken, but for an entry out of its range.
    fn wrong_truck(&self, error: &TruckError, units: Units) -> String;
    /// Why a truck file is not taken, but for its truck.
    fn wrong_truck_file(&self, error: &TruckFileError) -> String;
}
