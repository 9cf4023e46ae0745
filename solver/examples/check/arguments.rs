//! The words of the command line.

use solver::day::{Day, ServiceBrakes};
use solver::truck::{Preset, RetarderKind, Truck, TruckSpec};
use solver::units::{Grade, Metres};

pub(crate) enum Job {
    Road { path: String },
    Grade { grade: Grade, height: Metres },
    PrintTruck,
}

pub(crate) struct Arguments {
    pub(crate) job: Job,
    pub(crate) reverse: bool,
    pub(crate) json: bool,
    pub(crate) course: Option<usize>,
    pub(crate) gpx_out: Option<String>,
    pub(crate) second: Option<String>,
    preset: Preset,
    truck_file: Option<String>,
    day_file: Option<String>,
    mass_kg: Option<f64>,
    may_snub: bool,
    retarder: Option<RetarderKind>,
    pub(crate) study: bool,
}

const USAGE: &str = "Say which road: check ROAD.gpx [--reverse] [--preset NAME | --truck TRUCK.json] \
[--mass-kg N] [--json], or a grade: check --grade -0.06 [--height-m N]. All options stand at the top of \
solver/examples/check.rs.";

impl Arguments {
    pub(crate) fn read(words: impl Iterator<Item = String>) -> Result<Self, String> {
        let mut read = Self {
            job: Job::PrintTruck,
            reverse: false,
            json: false,
            course: None,
            gpx_out: None,
            second: None,
            preset: Preset::FiveAxle36,
            truck_file: None,
            day_file: None,
            mass_kg: None,
            may_snub: false,
            retarder: None,
            study: false,
        };
        let (mut path, mut grade, mut height, mut print_truck) = (None, None, 0.0, false);
        let mut words = words;
        while let Some(word) = words.next() {
            let mut next = || words.next().ok_or(format!("{word} needs a value. {USAGE}"));
            match word.as_str() {
                "--reverse" => read.reverse = true,
                "--json" => read.json = true,
                "--study" => read.study = true,
                "--retarder" => read.retarder = Some(retarder(&next()?)?),
                "--may-snub" => read.may_snub = true,
                "--print-truck" => print_truck = true,
                "--preset" => read.preset = preset(&next()?)?,
                "--truck" => read.truck_file = Some(next()?),
                "--day" => read.day_file = Some(next()?),
                "--with" => read.second = Some(next()?),
                "--gpx-out" => read.gpx_out = Some(next()?),
                "--mass-kg" => read.mass_kg = Some(number(&word, &next()?)?),
                "--grade" => grade = Some(number(&word, &next()?)?),
                "--height-m" => height = number(&word, &next()?)?,
                "--course" => read.course = Some(number(&word, &next()?)? as usize),
                other if !other.starts_with("--") && path.is_none() => path = Some(other.to_owned()),
                other => return Err(format!("{other} is not understood. {USAGE}")),
            }
        }
        read.job = match (path, grade, print_truck) {
            (Some(path), None, false) => Job::Road { path },
            (None, Some(grade), false) => Job::Grade { grade: steep(grade)?, height: Metres(height) },
            (None, None, true) => Job::PrintTruck,
            (Some(_) | None, Some(_) | None, true | false) => return Err(USAGE.to_owned()),
        };
        Ok(read)
    }

    pub(crate) fn truck(&self) -> Result<Truck, String> {
        let mut spec = match &self.truck_file {
            None => self.preset.spec(),
            Some(path) => truck_file(path)?,
        };
        if let Some(mass_kg) = self.mass_kg {
            spec.drive_axle_mass_kg *= mass_kg / spec.gross_mass_kg;
            spec.gross_mass_kg = mass_kg;
        }
        if let Some(kind) = self.retarder {
            spec.take_retarder(kind);
        }
        Truck::new(spec).map_err(|e| e.to_string())
    }

    pub(crate) fn day(&self) -> Result<Day, String> {
        let mut day = match &self.day_file {
            None => Day::USUAL,
            Some(path) => from_json::<Day>(path)?,
        };
        if self.may_snub {
            day.service_brakes = ServiceBrakes::MaySnub;
        }
        day.checked().map_err(|e| e.to_string())
    }
}

fn preset(key: &str) -> Result<Preset, String> {
    Preset::by_key(key).ok_or_else(|| {
        let keys: Vec<&str> = Preset::ALL.iter().map(|preset| preset.key()).collect();
        format!("There is no preset {key}. Choose one of {}.", keys.join(", "))
    })
}

fn retarder(key: &str) -> Result<RetarderKind, String> {
    RetarderKind::by_key(key).ok_or_else(|| {
        let keys: Vec<&str> = RetarderKind::ALL.iter().map(|kind| kind.key()).collect();
        format!("There is no retarder {key}. Choose one of {}.", keys.join(", "))
    })
}

fn number(name: &str, word: &str) -> Result<f64, String> {
    match word.parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(value),
        Ok(_) | Err(_) => Err(format!("{name} needs a number, not {word}.")),
    }
}

/// A grade as a share: −0.06 is 6 % downhill. Percent entered by mistake are refused.
fn steep(grade: f64) -> Result<Grade, String> {
    if (-0.5..=0.5).contains(&grade) {
        Ok(Grade(grade))
    } else {
        Err(format!(
            "--grade is a share, downhill negative: -0.06 is 6 % down; {grade} is out of range (-0.5 to 0.5)."
        ))
    }
}

/// A truck file, as the page saves and opens it.
fn truck_file(path: &str) -> Result<TruckSpec, String> {
    solver::report::truck_file::read(&text_of(path)?).map_err(|e| format!("{path} could not be used. {e}"))
}

fn from_json<T: serde::de::DeserializeOwned>(path: &str) -> Result<T, String> {
    serde_json::from_str(&text_of(path)?).map_err(|e| format!("{path} could not be used: {e}."))
}

fn text_of(path: &str) -> Result<String, String> {
    std::fs::read_to_string(path).map_err(|e| format!("{path} could not be opened: {e}."))
}
