//! The sentences of the solver about what it refuses and what it found, in one place.

use solver::limits::OutOfRange;
use solver::report::truck_file::TruckFileError;
use solver::road::{FileError, Finding};
use solver::truck::TruckError;

/// Why a file gives no road, and the remedy.
pub(crate) fn file_error(error: &FileError) -> String {
    error.to_string()
}

/// Why a truck cannot be computed with.
pub(crate) fn truck_error(error: &TruckError) -> String {
    error.to_string()
}

/// Why a truck file cannot be used.
pub(crate) fn truck_file_error(error: &TruckFileError) -> String {
    error.to_string()
}

/// Which entry of the day is out of its range.
pub(crate) fn out_of_range(error: &OutOfRange) -> String {
    error.to_string()
}

/// What was found in a file and repaired.
pub(crate) fn finding(finding: &Finding) -> String {
    finding.to_string()
}
