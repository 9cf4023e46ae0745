//! Words of the entries of truck and day.

use super::FormWords;
use crate::entries::EntryProblem;
use crate::format::{Units, shown_as};
use solver::day::{Lead, Load, ServiceBrakes, Surface};
use solver::limits::{self, Entry};
use solver::report::truck_file::TruckFileError;
use solver::truck::{AxleGroup, Preset, RetarderKind, Transmission, TruckError};

/// Words of the entries.
pub trait EntryWords: FormWords {
    /// Head of the truck's entries.
    fn truck_head(&self) -> &'static str;
    /// Head of the day's entries.
    fn day_head(&self) -> &'static str;
    /// Label of the presets.
    fn preset_label(&self) -> &'static str;
    /// A preset's name in these units.
    fn preset(&self, preset: Preset, units: Units) -> &'static str;
    /// A preset that was changed.
    fn own_truck(&self) -> &'static str;
    /// The folded rest.
    fn more_entries(&self) -> &'static str;
    /// Mark of an assumed value.
    fn assumed(&self) -> &'static str;
    /// What the mark means.
    fn assumed_sentence(&self) -> &'static str;
    /// Name of an entry.
    fn entry(&self, entry: Entry) -> &'static str;
    /// The same where it depends on the units shown.
    fn entry_in(&self, entry: Entry, units: Units) -> &'static str {
        if entry == Entry::TopGearSpeed { self.top_gear_speed(units) } else { self.entry(entry) }
    }
    /// “3.5 to 200 t”.
    fn range(&self, low: &str, high: &str, unit: &str) -> String {
        let gap = if unit.is_empty() { "" } else { " " };
        format!("{low} {} {high}{gap}{unit}", self.numerals().to)
    }
    /// The range that is asked for, in the units shown.
    fn asked(&self, entry: Entry, units: Units) -> String {
        let limit = limits::of(entry);
        let shown = shown_as(limit.quantity, units);
        let (low, high) = shown.range(limit);
        self.range(&low, &high, shown.unit)
    }
    /// Why it is not taken, and what is.
    fn problem(&self, problem: EntryProblem, typed: &str, units: Units) -> String {
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
    /// That this is no number.
    fn not_a_number(&self, typed: &str) -> String;
    /// That this number is outside its range.
    fn out_of_range(&self, typed: &str) -> String;
    /// To enter a value of this range.
    fn enter_from(&self, range: &str) -> String;
    /// Why a truck is not taken.
    fn truck_error(&self, error: &TruckError, units: Units) -> String;
    /// Why a truck file is not taken.
    fn truck_file_error(&self, error: &TruckFileError, units: Units) -> String;
    /// Label of the gears.
    fn gears(&self) -> &'static str;
    /// Hint of the gears.
    fn gears_hint(&self) -> &'static str;
    /// Label of the stages.
    fn stages(&self) -> &'static str;
    /// Hint of the stages.
    fn stages_hint(&self) -> &'static str;
    /// Label of the retarder table.
    fn retarder_table(&self) -> &'static str;
    /// Hint of the retarder table.
    fn retarder_table_hint(&self, kind: RetarderKind) -> &'static str {
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
    /// The same of a table of torque at the shaft.
    fn shaft_table_hint(&self) -> &'static str;
    /// The same of a table of power at the engine.
    fn engine_table_hint(&self) -> &'static str;
    /// Label of the retarder kinds.
    fn retarder_label(&self) -> &'static str;
    /// A kind of retarder.
    fn retarder(&self, kind: RetarderKind) -> &'static str;
    /// Label of the gearboxes.
    fn transmission_label(&self) -> &'static str;
    /// A gearbox.
    fn transmission(&self, transmission: Transmission) -> &'static str;
    /// Label of the load.
    fn load_label(&self) -> &'static str;
    /// A state of loading.
    fn load(&self, load: Load) -> &'static str;
    /// That the choice of load leaves the mass as it is entered, and what is to be done.
    fn mass_stays(&self, mass: &str) -> String;
    /// Label of the gear sets.
    fn gear_set_label(&self) -> &'static str;
    /// A gear set by its number of gears, and whether the top one is an overdrive.
    fn gear_set(&self, gears: usize, overdrive: bool) -> String;
    /// Gears that are none of them.
    fn own_gears(&self) -> &'static str;
    /// Label of the tyre sizes.
    fn tyre_label(&self) -> &'static str;
    /// A rolling radius that is none of them.
    fn own_tyre(&self) -> &'static str;
    /// Name of the picture of the truck's power.
    fn curves_name(&self) -> &'static str;
    /// What it shows, in this unit.
    fn curves_about(&self, unit: &str) -> String;
    /// Head of the trucks that are kept.
    fn own_trucks(&self) -> &'static str;
    /// Label of the truck's name.
    fn truck_name(&self) -> &'static str;
    /// Keeps the truck entered under its name.
    fn keep_truck(&self) -> &'static str;
    /// Gives a kept truck the name entered.
    fn rename_truck(&self, name: &str) -> String;
    /// Takes a kept truck.
    fn take_truck(&self, name: &str) -> String;
    /// Takes a kept truck out of the list.
    fn remove_truck(&self, name: &str) -> String;
    /// Undoes the last change of the list.
    fn undo(&self) -> &'static str;
    /// Remove, on a button beside the name.
    fn remove(&self) -> &'static str;
    /// Why a truck cannot be kept.
    fn no_name(&self) -> &'static str;
    /// Why no further truck can be kept.
    fn too_many_trucks(&self) -> &'static str;
    /// Saves the truck as a file.
    fn save_truck(&self) -> &'static str;
    /// Opens a truck file.
    fn open_truck(&self) -> &'static str;
    /// Name of the truck file.
    fn truck_file_name(&self, name: &str) -> String;
    /// Label of the axle groups.
    fn axle_groups(&self) -> &'static str;
    /// One axle group.
    fn axle_group(&self, group: &AxleGroup) -> String;
    /// Label of the surface.
    fn surface_label(&self) -> &'static str;
    /// A surface.
    fn surface(&self, surface: Surface) -> &'static str;
    /// Label of the service brakes.
    fn service_brakes_label(&self) -> &'static str;
    /// A use of them.
    fn service_brakes(&self, service_brakes: ServiceBrakes) -> &'static str;
    /// Label of the way down that leads.
    fn lead_label(&self) -> &'static str;
    /// A way down that may lead.
    fn lead(&self, lead: Lead) -> &'static str;
    /// What it means, in a sentence.
    fn lead_hint(&self, lead: Lead) -> &'static str;
    /// Back to the usual day.
    fn usual_day(&self) -> &'static str;
    /// Where entries are kept.
    fn kept_here(&self) -> &'static str;
}
