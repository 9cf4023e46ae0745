//! What can go wrong around a calculation.

use solver::report::truck_file::TruckFileError;
use solver::road::FileError;
use solver::truck::TruckError;

/// What went wrong on the page's own side.
#[derive(Debug, Clone, PartialEq)]
pub enum WorkTrouble {
    /// The file named cannot be used.
    File {
        /// Name of the file.
        name: String,
        /// Why.
        error: FileError,
    },
    /// More files at once than can be joined.
    ManyFiles,
    /// What was dropped is no file.
    NotAFile,
    /// A road of the page's own could not be fetched.
    BuiltInMissing,
    /// The part that calculates could not be started.
    CannotStart,
    /// The part that calculates stopped on an error of its own.
    Stopped {
        /// What it said, for a report.
        detail: String,
    },
    /// The person cancelled; the result shown is that of the former entries.
    Cancelled,
    /// The truck was refused in the end.
    Truck {
        /// Why.
        error: TruckError,
    },
    /// The truck file cannot be used.
    TruckFile {
        /// Why.
        error: TruckFileError,
    },
    /// The project file cannot be used.
    ProjectFile {
        /// Why.
        error: TruckFileError,
    },
    /// The file with the waypoints could not be written.
    CannotExport,
    /// The card could not be drawn as a picture.
    NoPicture,
}
