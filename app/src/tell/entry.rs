//! Words of the fields of truck and day.

use super::say::file_name;
use crate::entries::EntryProblem;
use crate::format::Units;
use crate::words::Spoken;
use solver::truck::RetarderKind;

impl Spoken {
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

    /// Name of the file of a truck.
    #[must_use]
    pub fn truck_file_name(&self, name: &str) -> String {
        file_name(name, self.truck_file_stem(), self.truck_file_name_ending())
    }
}
