//! All that can fail, as one error.

use crate::limits::OutOfRange;
use crate::report::truck_file::TruckFileError;
use crate::road::FileError;
use crate::truck::TruckError;
use std::fmt;

/// Why something could not be planned: what a caller's `?` joins.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Error {
    /// The file gives no road.
    File(FileError),
    /// The truck cannot be computed with.
    Truck(TruckError),
    /// The truck file cannot be read.
    TruckFile(TruckFileError),
    /// An entry of the day is outside its range.
    Day(OutOfRange),
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::File(error) => error.fmt(f),
            Self::Truck(error) => error.fmt(f),
            Self::TruckFile(error) => error.fmt(f),
            Self::Day(error) => error.fmt(f),
        }
    }
}

// What is told is the cause, so the cause is not told again as a source.
impl std::error::Error for Error {}

impl From<FileError> for Error {
    fn from(error: FileError) -> Self {
        Self::File(error)
    }
}

impl From<TruckError> for Error {
    fn from(error: TruckError) -> Self {
        Self::Truck(error)
    }
}

impl From<TruckFileError> for Error {
    fn from(error: TruckFileError) -> Self {
        Self::TruckFile(error)
    }
}

impl From<OutOfRange> for Error {
    fn from(error: OutOfRange) -> Self {
        Self::Day(error)
    }
}
