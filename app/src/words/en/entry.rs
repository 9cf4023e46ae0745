//! English words of the entries.

use super::English;
use crate::format::Units;
use crate::words::EntryWords;
use crate::words::say::file_name;
use solver::day::{Lead, Load, ServiceBrakes, Surface};
use solver::limits::{self, Entry};
use solver::report::truck_file::TruckFileError;
use solver::truck::{AxleGroup, AxlePlace, BrakeKind, Preset, RetarderKind, Transmission, TruckError};

impl EntryWords for English {
    fn truck_head(&self) -> &'static str {
        "Truck"
    }
    fn day_head(&self) -> &'static str {
        "Day"
    }
    fn preset_label(&self) -> &'static str {
        "Begin with a truck like yours"
    }
    fn preset(&self, preset: Preset, units: Units) -> &'static str {
        match (preset, units) {
            (Preset::FiveAxle36, Units::Metric) => "Five-axle combination, 36.3 t",
            (Preset::FiveAxle36, Units::Imperial) => "Five-axle combination, 80,000 lb",
            (Preset::FiveAxle40, Units::Metric) => "Five-axle combination, 40 t",
            (Preset::FiveAxle40, Units::Imperial) => "Five-axle combination, 88,200 lb",
            (Preset::FiveAxle40Both, Units::Metric) => {
                "Five-axle combination, 40 t, hydrodynamic and engine brake"
            }
            (Preset::FiveAxle40Both, Units::Imperial) => {
                "Five-axle combination, 88,200 lb, hydrodynamic and engine brake"
            }
            (Preset::FiveAxleEmpty, Units::Metric) => "Five-axle combination, empty, 14.5 t",
            (Preset::FiveAxleEmpty, Units::Imperial) => "Five-axle combination, empty, 32,000 lb",
            (Preset::SixAxle44, Units::Metric) => "Six-axle combination, 44 t",
            (Preset::SixAxle44, Units::Imperial) => "Six-axle combination, 97,000 lb",
            (Preset::Drawbar40, Units::Metric) => "Rigid with drawbar trailer, 40 t",
            (Preset::Drawbar40, Units::Imperial) => "Rigid with drawbar trailer, 88,200 lb",
            (Preset::Refuse26, Units::Metric) => "Refuse truck, automatic, 26 t",
            (Preset::Refuse26, Units::Imperial) => "Refuse truck, automatic, 57,300 lb",
            (Preset::Rigid18, Units::Metric) => "Two-axle rigid, 18 t",
            (Preset::Rigid18, Units::Imperial) => "Two-axle rigid, 39,700 lb",
            (Preset::Tipper26, Units::Metric) => "Three-axle tipper, 26 t",
            (Preset::Tipper26, Units::Imperial) => "Three-axle tipper, 57,300 lb",
            (Preset::BDouble, Units::Metric) => "Nine-axle double, 62.5 t",
            (Preset::BDouble, Units::Imperial) => "Nine-axle double, 137,800 lb",
            (Preset::Coach, Units::Metric) => "Intercity coach, 19 t",
            (Preset::Coach, Units::Imperial) => "Intercity coach, 41,900 lb",
            (Preset::CoachConverter, Units::Metric) => "Intercity coach, converter, 19 t",
            (Preset::CoachConverter, Units::Imperial) => "Intercity coach, converter, 41,900 lb",
        }
    }
    fn own_truck(&self) -> &'static str {
        "Your own entries"
    }
    fn more_entries(&self) -> &'static str {
        "Assumed for this truck"
    }
    fn assumed(&self) -> &'static str {
        "assumed"
    }
    fn assumed_sentence(&self) -> &'static str {
        "Values marked “assumed” have no printed source for this truck: put in your own."
    }
    fn entry(&self, entry: Entry) -> &'static str {
        limits::of(entry).name
    }
    fn not_a_number(&self, typed: &str) -> String {
        format!("“{typed}” is not a number.")
    }
    fn out_of_range(&self, typed: &str) -> String {
        format!("{typed} is out of range.")
    }
    fn enter_from(&self, range: &str) -> String {
        format!("Enter a value from {range}.")
    }
    fn truck_error(&self, error: &TruckError, units: Units) -> String {
        match error {
            TruckError::Entry(out) => {
                format!("{}: enter a value from {}.", self.entry(out.entry), self.asked(out.entry, units))
            }
            TruckError::DriveAxleHeavierThanTruck
            | TruckError::EngineSpeedsCrossed
            | TruckError::Gears
            | TruckError::FullLoad
            | TruckError::Stages
            | TruckError::Table
            | TruckError::AxleGroups => error.to_string(),
        }
    }
    fn truck_file_error(&self, error: &TruckFileError, units: Units) -> String {
        match error {
            TruckFileError::Broken { .. } | TruckFileError::CutOff | TruckFileError::Version { .. } => {
                error.to_string()
            }
            TruckFileError::Truck(error) => self.truck_error(error, units),
        }
    }
    fn gears(&self) -> &'static str {
        "Gear ratios"
    }
    fn gears_hint(&self) -> &'static str {
        "First gear first, with blanks between."
    }
    fn stages(&self) -> &'static str {
        "Retarder stages"
    }
    fn stages_hint(&self) -> &'static str {
        "Share of full retarding by stage in per cent, weakest first, the last 100."
    }
    fn retarder_table(&self) -> &'static str {
        "Retarder by speed and stage"
    }
    fn shaft_table_hint(&self) -> &'static str {
        "A line a speed: shaft speed, a colon, then the torque of each stage in N·m, weakest first. Outside the table it counts as off."
    }
    fn engine_table_hint(&self) -> &'static str {
        "A line a speed: engine speed, a colon, then the power of each stage in kW, weakest first. Outside the table it counts as off."
    }
    fn retarder_label(&self) -> &'static str {
        "Retarder"
    }
    fn retarder(&self, kind: RetarderKind) -> &'static str {
        match kind {
            RetarderKind::None => "none",
            RetarderKind::CompressionRelease => "engine brake, compression release",
            RetarderKind::ExhaustValve => "exhaust brake",
            RetarderKind::Hydrodynamic => "driveline, hydrodynamic",
            RetarderKind::Electromagnetic => "driveline, electromagnetic",
            RetarderKind::CompressionAndHydrodynamic => "compression release and hydrodynamic",
            RetarderKind::ExhaustAndHydrodynamic => "exhaust brake and hydrodynamic",
            RetarderKind::CompressionAndElectromagnetic => "compression release and electromagnetic",
            RetarderKind::ExhaustAndElectromagnetic => "exhaust brake and electromagnetic",
            RetarderKind::EnginePowerTable => "my own table, at the engine",
            RetarderKind::ShaftTorqueTable => "my own table, at the shaft",
        }
    }
    fn transmission_label(&self) -> &'static str {
        "Gearbox"
    }
    fn transmission(&self, transmission: Transmission) -> &'static str {
        match transmission {
            Transmission::Manual => "by hand",
            Transmission::Automated => "automated",
            Transmission::TorqueConverter { .. } => "converter",
        }
    }
    fn load_label(&self) -> &'static str {
        "Load"
    }
    fn load(&self, load: Load) -> &'static str {
        match load {
            Load::Laden => "loaded",
            Load::Empty => "empty",
            Load::NoTrailer => "no trailer",
        }
    }
    fn mass_stays(&self, mass: &str) -> String {
        format!("This does not change the mass: {mass} is still entered. Enter what the truck weighs now.")
    }
    fn gear_set_label(&self) -> &'static str {
        "Number of gears"
    }
    fn gear_set(&self, gears: usize, overdrive: bool) -> String {
        let top = if overdrive { "overdrive" } else { "direct on top" };
        format!("{gears} gears, {top}")
    }
    fn own_gears(&self) -> &'static str {
        "as typed below"
    }
    fn tyre_label(&self) -> &'static str {
        "Tyres of the driven axles"
    }
    fn own_tyre(&self) -> &'static str {
        "rolling radius as typed"
    }
    fn curves_name(&self) -> &'static str {
        "Power by engine speed"
    }
    fn curves_about(&self, unit: &str) -> String {
        format!(
            "Power in {unit} by engine speed: thick what it pulls with, dashed what engine and retarder hold with, stage by stage. What a retarder on the shaft gives for good is drawn for the direct gear."
        )
    }
    fn own_trucks(&self) -> &'static str {
        "Your own trucks"
    }
    fn truck_name(&self) -> &'static str {
        "Name of this truck"
    }
    fn keep_truck(&self) -> &'static str {
        "Keep it under this name"
    }
    fn rename_truck(&self, name: &str) -> String {
        format!("Rename “{name}” to this")
    }
    fn take_truck(&self, name: &str) -> String {
        format!("Plan with “{name}”")
    }
    fn remove_truck(&self, name: &str) -> String {
        format!("Remove “{name}”")
    }
    fn undo(&self) -> &'static str {
        "Undo"
    }
    fn remove(&self) -> &'static str {
        "Remove"
    }
    fn no_name(&self) -> &'static str {
        "Give it a name first."
    }
    fn too_many_trucks(&self) -> &'static str {
        "No room for another truck: remove one first."
    }
    fn save_truck(&self) -> &'static str {
        "Save as a file"
    }
    fn open_truck(&self) -> &'static str {
        "Open a truck file"
    }
    fn truck_file_name(&self, name: &str) -> String {
        file_name(name, "own", "-truck.json")
    }
    fn axle_groups(&self) -> &'static str {
        "Braked axles"
    }
    fn axle_group(&self, group: &AxleGroup) -> String {
        let place = match group.place {
            AxlePlace::Steer => "steer",
            AxlePlace::Drive => "drive",
            AxlePlace::Trailer => "trailer",
        };
        let brake = match group.brake {
            BrakeKind::Drum => "drum",
            BrakeKind::Disc => "disc",
        };
        let share = crate::format::whole((group.effort_share * 100.0).round());
        let noun = if group.axles == 1 { "axle" } else { "axles" };
        format!("{} {place} {noun}, {brake}, {share} % of the braking", group.axles)
    }
    fn surface_label(&self) -> &'static str {
        "Surface"
    }
    fn surface(&self, surface: Surface) -> &'static str {
        match surface {
            Surface::Dry => "dry",
            Surface::Wet => "wet",
            Surface::Snow => "snow",
            Surface::Ice => "ice",
        }
    }
    fn service_brakes_label(&self) -> &'static str {
        "Service brakes"
    }
    fn service_brakes(&self, service_brakes: ServiceBrakes) -> &'static str {
        match service_brakes {
            ServiceBrakes::InReserve => "kept in reserve",
            ServiceBrakes::MaySnub => "may snub",
        }
    }
    fn lead_label(&self) -> &'static str {
        "Way down"
    }
    fn lead(&self, lead: Lead) -> &'static str {
        match lead {
            Lead::Usual => "fastest held",
            Lead::OneGear => "one gear",
            Lead::Untouched => "brakes untouched",
        }
    }
    fn lead_hint(&self, lead: Lead) -> &'static str {
        match lead {
            Lead::Usual => {
                "On a long hill the gear may change by places that are named, where that saves minutes."
            }
            Lead::OneGear => "One gear from the crest to the foot, and its speed.",
            Lead::Untouched => {
                "One gear in which the retarder alone holds every recorded pitch, also where the heights are in doubt."
            }
        }
    }
    fn usual_day(&self) -> &'static str {
        "Back to the usual day"
    }
    fn kept_here(&self) -> &'static str {
        "Entries are kept in this browser only."
    }
}
