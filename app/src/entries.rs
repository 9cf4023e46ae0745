//! What is entered: truck and day, the text of each field, and what is wrong with it.

use crate::format::{Units, mass, parse_number, shown_as, typed};
use serde::{Deserialize, Serialize};
use solver::day::{Day, Load};
use solver::limits::{self, Entry, bounds};
use solver::truck::{Preset, Retarder, TableRow, TruckError, TruckSpec};

mod choices;
mod retarder;

pub use retarder::{AtEngine, InShort, OnShaft, answers};

/// The truck that the page begins with.
pub const EXAMPLE: Preset = Preset::FiveAxle36;

/// A truck with more than this on each axle may be a loaded one, kg: 60 % of the 7.3 t of the first
/// preset. Assumed.
const LADEN_FROM_KG: f64 = 4_400.0;

/// Whether a truck is, number for number and by its name, the one that the page begins with.
#[must_use]
pub fn is_example(truck: &TruckSpec) -> bool {
    *truck == EXAMPLE.spec()
}

/// Why an entry is not taken.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum EntryProblem {
    /// The text is no number.
    NotANumber(Entry),
    /// The number is outside its range.
    OutOfRange(Entry),
    /// The list of gears or stages, or two entries that do not fit together.
    Truck(TruckError),
    /// No axle has this ratio, which follows from the engine speed in top gear.
    AxleRatio(f64),
}

/// A field of the page: one number, or one of the two lists.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Field {
    /// A single number.
    Number(Entry),
    /// Gear ratios.
    Gears,
    /// Retarder stages.
    Stages,
    /// Retarder table by speed and stage.
    Table,
}

impl Field {
    /// Number of fields.
    pub const COUNT: usize = limits::ALL.len() + 3;

    /// All fields.
    pub fn all() -> impl Iterator<Item = Self> {
        let numbers = limits::ALL.into_iter().map(|limit| Self::Number(limit.entry));
        numbers.chain([Self::Gears, Self::Stages, Self::Table])
    }

    /// The place of the field among [`Field::all`].
    #[must_use]
    pub fn index(self) -> usize {
        match self {
            Self::Number(entry) => entry as usize,
            Self::Gears => limits::ALL.len(),
            Self::Stages => limits::ALL.len() + 1,
            Self::Table => limits::ALL.len() + 2,
        }
    }

    /// The key of the field in the page, spelt as in the truck file.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::Number(entry) => entry.key(),
            Self::Gears => "gears",
            Self::Stages => "stages",
            Self::Table => "retarder_table",
        }
    }
}

/// Truck and day as entered. Single numbers are within their ranges; whether they fit
/// together is told by [`Entries::problem`].
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Entries {
    /// The truck.
    pub truck: TruckSpec,
    /// The day.
    pub day: Day,
    /// The preset begun with; `None` once the truck was changed.
    pub preset: Option<String>,
    /// Share of the gross mass on the driven axles, kept when the mass changes; `None` once
    /// the mass on the driven axles was entered.
    drive_share: Option<f64>,
    /// Engine speed in top gear where that was entered: the axle ratio follows it when gears or tyres change.
    top_gear_rpm: Option<f64>,
}

impl Entries {
    /// A preset on the usual day.
    #[must_use]
    pub fn of(preset: Preset) -> Self {
        let truck = preset.spec();
        let share = truck.drive_axle_mass_kg / truck.gross_mass_kg;
        let preset = Some(preset.key().to_owned());
        Self { truck, day: Day::USUAL, preset, drive_share: Some(share), top_gear_rpm: None }
    }

    /// Another truck on the same day.
    pub fn take_preset(&mut self, preset: Preset) {
        *self = Self { day: self.day, ..Self::of(preset) };
    }

    /// A truck of one's own on the same day.
    pub fn take_own(&mut self, truck: TruckSpec) {
        let drive_share = Some(truck.drive_axle_mass_kg / truck.gross_mass_kg);
        *self = Self { truck, day: self.day, preset: None, drive_share, top_gear_rpm: None };
    }

    /// Whether what was kept can still be used: ranges may have changed since.
    #[must_use]
    pub fn is_sound(&self) -> bool {
        self.problem().is_none() && self.day.checked().is_ok()
    }

    /// The truck's entries or lists that do not fit together.
    #[must_use]
    pub fn problem(&self) -> Option<TruckError> {
        self.truck.check().err()
    }

    /// Whether the load is not “loaded” while the mass may be that of a loaded truck still: it is the
    /// preset's, or rests on each axle with as much as a loaded truck's.
    #[must_use]
    pub fn weighs_as_laden(&self) -> bool {
        let axles: f64 = self.truck.axle_groups.iter().map(|group| f64::from(group.axles)).sum();
        let laden = self.preset.is_some() || self.truck.gross_mass_kg > LADEN_FROM_KG * axles;
        self.day.load != Load::Laden && laden
    }

    /// Whether the truck or the day has this field.
    #[must_use]
    pub fn has(&self, field: Field) -> bool {
        match field {
            Field::Number(entry) => self.get(entry).is_some(),
            Field::Gears => true,
            Field::Stages => !self.truck.retarder.shares().is_empty(),
            Field::Table => matches!(self.truck.retarder, Retarder::Table(_)),
        }
    }

    /// The stored value of an entry, in its own unit.
    #[must_use]
    pub fn get(&self, entry: Entry) -> Option<f64> {
        self.truck.get(entry).or_else(|| self.day.get(entry))
    }

    /// Whether the value of the entry is assumed.
    #[must_use]
    pub fn is_assumed(&self, field: Field) -> bool {
        match field {
            Field::Number(Entry::TopGearSpeed) => self.truck.is_assumed(Entry::AxleRatio),
            Field::Number(entry) => self.truck.is_assumed(entry),
            Field::Gears | Field::Stages | Field::Table => false,
        }
    }

    /// The text of a field in these units.
    #[must_use]
    pub fn text(&self, field: Field, units: Units) -> String {
        match field {
            Field::Number(entry) => {
                let shown = shown_as(limits::of(entry).quantity, units);
                self.get(entry).map_or_else(String::new, |value| shown.text(value))
            }
            Field::Gears => list(&self.truck.gears, 1.0),
            Field::Stages => list(self.truck.retarder.shares(), 100.0),
            Field::Table => rows(&self.truck.retarder),
        }
    }

    /// Takes a typed text; on an error nothing is changed.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn take(&mut self, field: Field, text: &str, units: Units) -> Result<(), EntryProblem> {
        match field {
            Field::Number(entry) => self.take_number(entry, text, units),
            Field::Gears => {
                let gears = numbers(text, bounds::GEARS).ok_or(EntryProblem::Truck(TruckError::Gears))?;
                self.try_truck(TruckError::Gears, |truck| truck.gears = gears)?;
                self.keep_top_gear_speed();
                Ok(())
            }
            Field::Stages => {
                let shares = numbers(text, bounds::STAGES).ok_or(EntryProblem::Truck(TruckError::Stages))?;
                self.try_truck(TruckError::Stages, |truck| set_stages(truck, &shares))
            }
            Field::Table => {
                let rows = table_rows(text).ok_or(EntryProblem::Truck(TruckError::Table))?;
                self.try_truck(TruckError::Table, |truck| {
                    if let Retarder::Table(table) = &mut truck.retarder {
                        table.rows = rows;
                    }
                })
            }
        }
    }

    fn take_number(&mut self, entry: Entry, text: &str, units: Units) -> Result<(), EntryProblem> {
        let limit = limits::of(entry);
        let shown = shown_as(limit.quantity, units);
        let typed = parse_number(text).ok_or(EntryProblem::NotANumber(entry))?;
        let value = limit.check(shown.stored(typed)).map_err(|_| EntryProblem::OutOfRange(entry))?;
        if self.day.get(entry).is_some() {
            self.day.set(entry, value);
            return Ok(());
        }
        if entry == Entry::TopGearSpeed {
            let ratio = self.truck.axle_ratio_at(value).ok_or(EntryProblem::OutOfRange(entry))?;
            limits::of(Entry::AxleRatio).check(ratio).map_err(|_| EntryProblem::AxleRatio(ratio))?;
        }
        self.preset = None;
        self.truck.enter(entry, value);
        match entry {
            Entry::TopGearSpeed => self.top_gear_rpm = Some(value),
            Entry::AxleRatio => self.top_gear_rpm = None,
            Entry::RollingRadius => self.keep_top_gear_speed(),
            _ => {}
        }
        if entry == Entry::GrossMass {
            self.share_out_mass();
            if let Some(name) = named_anew(&self.truck, units) {
                self.truck.name = name;
            }
        }
        if entry == Entry::DriveAxleMass {
            self.drive_share = None;
        }
        Ok(())
    }

    /// A lighter load is lighter on the driven axles too. The share is that of the preset and
    /// so assumed; unloaded trucks carry more of their mass there, so the grip counted on is
    /// rather too small than too large.
    fn share_out_mass(&mut self) {
        let Some(share) = self.drive_share else { return };
        let range = limits::of(Entry::DriveAxleMass);
        let mass = (share * self.truck.gross_mass_kg).clamp(range.min, range.max);
        self.truck.set(Entry::DriveAxleMass, mass);
        self.truck.assumed.push(Entry::DriveAxleMass);
    }

    /// Changes the truck unless that raises `error`.
    fn try_truck(
        &mut self,
        error: TruckError,
        change: impl FnOnce(&mut TruckSpec),
    ) -> Result<(), EntryProblem> {
        let mut truck = self.truck.clone();
        change(&mut truck);
        if truck.check() == Err(error) {
            return Err(EntryProblem::Truck(error));
        }
        self.truck = truck;
        self.preset = None;
        Ok(())
    }
}

/// What a truck that is called as a preset is called with the mass it has now: otherwise the name would
/// go on to say the preset's. `None` where a person named it.
fn named_anew(truck: &TruckSpec, units: Units) -> Option<String> {
    let stem = without_mass(&truck.name);
    let of_preset = Preset::ALL.into_iter().any(|preset| without_mass(&preset.spec().name) == stem);
    // Plain blanks: a name goes into fields and files.
    of_preset.then(|| format!("{stem}, {}", mass(truck.gross_mass_kg, units).replace('\u{a0}', " ")))
}

/// A name without the mass at its end: “Two-axle rigid, 18 t”.
fn without_mass(name: &str) -> &str {
    let is_mass = |end: &str| {
        let number = end.strip_suffix(" t").or_else(|| end.strip_suffix(" lb"));
        number.is_some_and(|it| it.starts_with(|c: char| c.is_ascii_digit()))
    };
    name.rsplit_once(", ").filter(|(_, end)| is_mass(end)).map_or(name, |(stem, _)| stem)
}

fn set_stages(truck: &mut TruckSpec, per_cent: &[f64]) {
    if let Some(stages) = truck.shares_mut() {
        *stages = per_cent.iter().map(|share| share / 100.0).collect();
    }
}

/// A retarder table as text: a line a speed, with the values of its stages behind it.
fn rows(retarder: &Retarder) -> String {
    let Retarder::Table(table) = retarder else { return String::new() };
    let line = |row: &TableRow| format!("{}: {}", list(&[row.rpm], 1.0), list(&row.values, 1.0));
    table.rows.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// Reads such a text back; `None` where a line has no speed or no value.
fn table_rows(text: &str) -> Option<Vec<TableRow>> {
    let row = |line: &str| {
        let (first, rest) = line.split_once(':').or_else(|| line.trim().split_once(char::is_whitespace))?;
        Some(TableRow { rpm: parse_number(first)?, values: numbers(rest, bounds::STAGES)? })
    };
    text.lines().filter(|line| !line.trim().is_empty()).map(row).collect()
}

/// Numbers with blanks between, each with as many decimals as it needs up to two.
fn list(values: &[f64], factor: f64) -> String {
    let one = |value: &f64| typed(value * factor);
    values.iter().map(one).collect::<Vec<_>>().join("  ")
}

/// Reads numbers with blanks, semicolons or slashes between; at most `most`.
fn numbers(text: &str, most: usize) -> Option<Vec<f64>> {
    let parts =
        text.split(|c: char| c.is_whitespace() || matches!(c, ';' | '/')).filter(|part| !part.is_empty());
    let found: Vec<f64> =
        parts.map(|part| parse_number(part.trim_end_matches(','))).collect::<Option<_>>()?;
    (!found.is_empty() && found.len() <= most).then_some(found)
}

#[cfg(test)]
mod tests;
