//! Words of the entries of truck and day.

use super::say::file_name;
use crate::entries::EntryProblem;
use crate::format::{self, Units, shown_as, stands_apart, typed};
use crate::words::Spoken;
use solver::limits::{self, Entry, bounds};
use solver::report::truck_file::TruckFileError;
use solver::truck::{AxleGroup, RetarderKind, TruckError};

impl Spoken {
    /// “3.5 to 200 t”.
    #[must_use]
    pub fn range(&self, low: &str, high: &str, unit: &str) -> String {
        let gap = if stands_apart(unit) { " " } else { "" };
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

    /// Why it is not taken, and what is.
    #[must_use]
    pub fn problem(&self, problem: EntryProblem, typed: &str, units: Units) -> String {
        let typed = typed.trim();
        let (entry, wrong) = match problem {
            EntryProblem::NotANumber(entry) if typed.is_empty() => (entry, None),
            EntryProblem::NotANumber(entry) => (entry, Some(self.not_a_number(typed))),
            EntryProblem::OutOfRange(entry) => (entry, Some(self.out_of_range(typed))),
            EntryProblem::Truck(error) => return self.truck_error(&error, units),
            EntryProblem::AxleRatio(ratio) => return self.axle_ratio_problem(ratio),
        };
        let enter = self.enter_from(&self.asked(entry, units));
        wrong.map_or_else(|| enter.clone(), |wrong| format!("{wrong} {enter}"))
    }

    /// Hint of the retarder table.
    #[must_use]
    pub fn retarder_table_hint(&self, kind: RetarderKind) -> &'static str {
        match kind {
            RetarderKind::ShaftTorqueTable => self.shaft_table_hint(),
            RetarderKind::None
            | RetarderKind::CompressionRelease
            | RetarderKind::ExhaustValve
            | RetarderKind::Hydrodynamic
            | RetarderKind::Electromagnetic
            | RetarderKind::CompressionAndHydrodynamic
            | RetarderKind::ExhaustAndHydrodynamic
            | RetarderKind::CompressionAndElectromagnetic
            | RetarderKind::ExhaustAndElectromagnetic
            | RetarderKind::EnginePowerTable => self.engine_table_hint(),
        }
    }

    /// Why a truck is not taken.
    #[must_use]
    pub fn truck_error(&self, error: &TruckError, units: Units) -> String {
        match error {
            TruckError::Entry(out) => self.truck_entry(self.entry(out.entry), &self.asked(out.entry, units)),
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

    /// Name of the file of a truck.
    #[must_use]
    pub fn truck_file_name(&self, name: &str) -> String {
        file_name(name, self.truck_file_stem(), self.truck_file_name_ending())
    }
}
