//! The words of the command line.

use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{Args, Parser, Subcommand, ValueEnum};
use solver::truck::{Preset, RetarderKind};
use solver::units::Grade;
use std::path::PathBuf;

/// Stands below the help of every subcommand.
const BELOW: &str = "\
Exit status: 0 when it is done, 1 when a file, a truck, a day or a place to write to cannot be used, 2 when the \
words are not understood.

A planning and teaching aid, not permission to descend.";

/// How to bring a truck down a road.
#[derive(Debug, Parser)]
#[command(name = "steadygrade", version, after_help = BELOW)]
pub(crate) struct Arguments {
    #[command(subcommand)]
    pub(crate) job: Job,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Job {
    /// Plan the road of each GPX file.
    #[command(after_help = BELOW)]
    Road(RoadWords),
    /// Tell what every gear and stage does on one grade.
    #[command(after_help = BELOW)]
    Grade(GradeWords),
    /// List the trucks to begin with, or print one as a truck file with all its values.
    #[command(after_help = BELOW)]
    Truck(TruckWords),
    /// Plan all GPX files of folders, and write a table.
    #[command(after_help = BELOW)]
    Roads(RoadsWords),
}

#[derive(Debug, Args)]
pub(crate) struct RoadWords {
    /// GPX files.
    #[arg(required = true, value_name = "FILE")]
    pub(crate) files: Vec<PathBuf>,
    #[command(flatten)]
    pub(crate) truck: TruckWords,
    #[command(flatten)]
    pub(crate) day: DayWords,
    /// Drive the road the other way.
    #[arg(long)]
    pub(crate) reverse: bool,
    /// The N-th track or route of a file, from 1. Left out: the longest one that has heights.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..))]
    pub(crate) course: Option<u32>,
    /// A second recording of the same road: the plan of both together beside that of each alone; with --json that of both together.
    #[arg(long, value_name = "SECOND.gpx", conflicts_with = "gpx_out")]
    pub(crate) with: Option<PathBuf>,
    /// Write the road with its plan as GPX 1.1, as other programs read it.
    #[arg(long, value_name = "FILE")]
    pub(crate) gpx_out: Option<PathBuf>,
    /// Let that file take the place of one that is there.
    #[arg(long, requires = "gpx_out")]
    pub(crate) overwrite: bool,
    /// What if, and how sure: JSON.
    #[arg(long, conflicts_with = "with")]
    pub(crate) study: bool,
    /// JSON with stable names in place of text. Of several files each has a line of its own, with its name in `file`.
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Debug, Args)]
pub(crate) struct GradeWords {
    /// The grade, downhill negative: -6% or -0.06.
    #[arg(allow_hyphen_values = true, value_parser = grade)]
    pub(crate) grade: Grade,
    /// Height above the sea, m.
    #[arg(long, value_name = "N", default_value_t = 0.0, allow_negative_numbers = true, value_parser = number)]
    pub(crate) height_m: f64,
    #[command(flatten)]
    pub(crate) truck: TruckWords,
    #[command(flatten)]
    pub(crate) day: DayWords,
    /// JSON with stable names in place of text.
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Debug, Args)]
pub(crate) struct RoadsWords {
    /// Folders, searched with all that is in them, or GPX files.
    #[arg(required = true, value_name = "FOLDER")]
    pub(crate) folders: Vec<PathBuf>,
    /// The table. The end of its name says which: .csv, .ndjson (a line of JSON a row) or .parquet.
    #[arg(long, value_name = "TABLE")]
    pub(crate) out: PathBuf,
    /// Let the table take the place of one that is there.
    #[arg(long)]
    pub(crate) overwrite: bool,
    /// What has a row of its own.
    #[arg(long, value_enum, default_value_t = Rows::Descents)]
    pub(crate) rows: Rows,
    #[command(flatten)]
    pub(crate) truck: TruckWords,
    #[command(flatten)]
    pub(crate) day: DayWords,
    /// Drive every road the other way.
    #[arg(long)]
    pub(crate) reverse: bool,
    /// Files worked at in the same moment. Left out: as many as there are cores to use.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..))]
    pub(crate) jobs: Option<u16>,
}

/// What has a row of its own. A road without any of them has one row that says so, and so has a
/// file that cannot be planned.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Rows {
    /// A descent.
    Descents,
    /// A leg of a descent: a stretch in one gear.
    Legs,
}

#[derive(Debug, Args)]
pub(crate) struct TruckWords {
    /// A truck to begin with; five-axle-36t where nothing is said.
    #[arg(long, value_name = "NAME", value_parser = presets(), hide_possible_values = true)]
    pub(crate) preset: Option<Preset>,
    /// A truck file: one saved by the page or printed by `steadygrade truck --preset NAME`.
    #[arg(long, value_name = "TRUCK.json", conflicts_with = "preset")]
    pub(crate) truck: Option<PathBuf>,
    /// Gross mass, kg; the driven axles keep their share of it.
    #[arg(long, value_name = "N", value_parser = number)]
    pub(crate) mass_kg: Option<f64>,
    /// Another kind of retarder, with assumed numbers.
    #[arg(long, value_name = "KIND", value_parser = retarders())]
    pub(crate) retarder: Option<RetarderKind>,
}

#[derive(Debug, Args)]
pub(crate) struct DayWords {
    /// A day of one's own, as JSON. Left out: dry, 80 km/h, 32 °C.
    #[arg(long, value_name = "DAY.json")]
    pub(crate) day: Option<PathBuf>,
    /// Allow snubs within the heat limit.
    #[arg(long)]
    pub(crate) may_snub: bool,
}

fn presets() -> impl TypedValueParser<Value = Preset> {
    let named = |key: String| Preset::by_key(&key).ok_or("no such truck");
    PossibleValuesParser::new(Preset::ALL.map(Preset::key)).try_map(named)
}

fn retarders() -> impl TypedValueParser<Value = RetarderKind> {
    let named = |key: String| RetarderKind::by_key(&key).ok_or("no such retarder");
    PossibleValuesParser::new(RetarderKind::ALL.map(RetarderKind::key)).try_map(named)
}

fn number(word: &str) -> Result<f64, String> {
    match word.parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(value),
        Ok(_) | Err(_) => Err(String::from("a number is needed here, with a point before decimals")),
    }
}

/// A grade in percent with its sign, or as a share. A bare -6 is refused: it would be 600 %.
fn grade(word: &str) -> Result<Grade, String> {
    let share = match word.strip_suffix('%') {
        Some(percent) => number(percent.trim_end())? / 100.0,
        None => number(word)?,
    };
    if (-0.5..=0.5).contains(&share) {
        Ok(Grade(share))
    } else {
        Err(String::from("6 % downhill is written as -6% or as -0.06; at most 50 % can be asked for"))
    }
}

#[cfg(test)]
mod tests {
    use super::{Arguments, grade};
    use clap::CommandFactory;

    #[test]
    fn the_words_do_not_contradict_each_other() {
        Arguments::command().debug_assert();
    }

    #[test]
    fn grades_are_read_in_percent_and_as_shares() {
        for (word, share) in [("-6%", -0.06), ("-6.5 %", -0.065), ("-0.06", -0.06), ("0", 0.0), ("4%", 0.04)]
        {
            assert_eq!(grade(word).map(|it| it.0.to_bits()), Ok(f64::to_bits(share)), "{word}");
        }
        for word in ["-6", "-60%", "-6,5%", "steep", "", "%", "nan", "inf%"] {
            assert!(grade(word).is_err(), "{word}");
        }
    }
}
