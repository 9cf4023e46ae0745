//! What is said of findings, errors and results: the sentences of the page, in metric units.

use solver::limits::OutOfRange;
use solver::report::truck_file::TruckFileError;
use solver::road::{FileError, Finding};
use solver::truck::TruckError;
use words::format::Units;
use words::words;

/// Entries and places are told as they are entered here.
const UNITS: Units = Units::Metric;

/// Why a file gives no road, and the remedy.
pub(crate) fn file_error(error: &FileError) -> String {
    words().file_error(error)
}

/// Why a truck cannot be computed with.
pub(crate) fn truck_error(error: &TruckError) -> String {
    words().truck_error(error, UNITS)
}

/// Why a truck file cannot be used.
pub(crate) fn truck_file_error(error: &TruckFileError) -> String {
    words().truck_file_error(error, UNITS)
}

/// Which entry of the day is out of its range.
pub(crate) fn out_of_range(error: &OutOfRange) -> String {
    words().entry_error(error, UNITS)
}

/// What a result is not, a sentence a line.
pub(crate) fn caution() -> String {
    words().cautions().iter().map(|sentence| format!("{sentence}\n")).collect()
}

/// What was found in a file and repaired, with its place to ten metres where it has one.
pub(crate) fn finding(finding: &Finding) -> String {
    let said = words().finding(finding);
    let said = said.trim_end_matches('.');
    let km = |metres: f64| metres / 1e3;
    match (finding.from_m, finding.to_m) {
        (Some(from), Some(to)) if to > from => format!("{said} (km {:.2} to {:.2}).", km(from), km(to)),
        (Some(from), _) => format!("{said} (from km {:.2}).", km(from)),
        (None, _) => format!("{said}."),
    }
}
