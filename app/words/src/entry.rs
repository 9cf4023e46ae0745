//! What is entered of truck and day: ranges, and why a truck or a truck file is not taken.

use crate::Spoken;
use crate::format::{self, Units, shown_as, stands_apart, typed};
use solver::limits::{self, Entry, OutOfRange, bounds};
use solver::report::truck_file::TruckFileError;
use solver::truck::{AxleGroup, TruckError};

impl Spoken {
    /// “3.5 to 200 t”.
    #[must_use]
    pub fn range(&self, low: &str, high: &str, unit: &str) -> String {
        let gap = if stands_apart(unit) { "\u{a0}" } else { "" };
        format!("{low} {} {high}{gap}{unit}", self.numerals().to)
    }

    /// The range that is asked for, in the units shown.
    #[must_use]
    pub fn asked(&self, entry: Entry, units: Units) -> String {
        let limit = limits::of(entry);
        let shown = shown_as(limit.quantity, units);
        let (low, high) = shown.range(limit);
        self.range(&low, &high, shown.unit)
    }

    /// That an entry is out of its range, with the range.
    #[must_use]
    pub fn entry_error(&self, error: &OutOfRange, units: Units) -> String {
        self.truck_entry(self.entry(error.entry), &self.asked(error.entry, units))
    }

    /// Why a truck is not taken.
    #[must_use]
    pub fn truck_error(&self, error: &TruckError, units: Units) -> String {
        match error {
            TruckError::Entry(out) => self.entry_error(out, units),
            TruckError::DriveAxleHeavierThanTruck => self.truck_drive_axle_mass().to_owned(),
            TruckError::EngineSpeedsCrossed => self.truck_engine_speeds().to_owned(),
            TruckError::Gears => {
                let (low, high) = bounds::GEAR_RATIO;
                self.truck_gears(&bounds::GEARS.to_string(), &typed(low), &typed(high))
            }
            TruckError::FullLoad => {
                let (low, high) = bounds::CURVE_RPM;
                let most = bounds::CURVE_POINTS.to_string();
                self.truck_full_load(&most, &typed(low), &typed(high), &typed(bounds::TORQUE))
            }
            TruckError::Stages => self.truck_stages(&bounds::STAGES.to_string()),
            TruckError::Table => {
                let (low, high) = bounds::TABLE_RPM;
                let most = bounds::STAGES.to_string();
                self.truck_table(bounds::TABLE_ROWS, &typed(low), &typed(high), &most)
            }
            TruckError::AxleGroups => {
                self.truck_axle_groups(&bounds::AXLE_GROUPS.to_string(), bounds::AXLES_OF_GROUP)
            }
        }
    }

    /// Why a truck file is not taken.
    #[must_use]
    pub fn truck_file_error(&self, error: &TruckFileError, units: Units) -> String {
        match error {
            TruckFileError::Broken { line, what } => self.truck_file_broken(*line, what),
            TruckFileError::CutOff => self.truck_file_cut_off().to_owned(),
            TruckFileError::Version { found, newest } => {
                self.truck_file_newer(&found.to_string(), &newest.to_string())
            }
            TruckFileError::Truck(error) => self.truck_error(error, units),
        }
    }

    /// An axle group: how many axles, which, their brakes, and their share of the braking.
    #[must_use]
    pub fn braked_axles(&self, group: &AxleGroup) -> String {
        let share = format::whole((group.effort_share * 100.0).round());
        self.axle_group(group.axles, group.place, group.brake, &share)
    }
}
