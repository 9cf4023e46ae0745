//! `steadygrade road`: the plan of each file.

use crate::arguments::{Arguments, RoadWords};
use crate::{file, json, pair, print, sentences, setup, text};
use clap::CommandFactory;
use clap::error::ErrorKind;
use serde_json::{Value, json};
use solver::analyse;
use solver::motion::Trip;
use solver::plan::{Lanes, Plan};
use solver::road::{self, Road};
use std::path::Path;

pub(crate) fn run(words: &RoadWords) -> Result<(), String> {
    let (truck, day) = (setup::truck(&words.truck)?, setup::day(&words.day)?);
    let trip = Trip { truck: &truck, day: &day };
    let [only] = &words.files[..] else { return each(words, trip) };
    let road = open(words, only)?;
    if let Some(second) = &words.with {
        let other = open(words, second)?;
        return with_second(words, trip, road, other)
            .map_err(|sentence| format!("{} and {}: {sentence}", only.display(), second.display()));
    }
    let (plan, lanes) = plan(trip, &road)?;
    if let Some(out) = &words.gpx_out {
        let written =
            text::as_gpx(&road, &plan, &lanes).ok_or("A road without positions cannot be written as GPX.")?;
        file::write(out, written.as_bytes(), words.overwrite)?;
    }
    if words.study {
        let study = solver::study::study(&road, trip.truck, trip.day, &plan);
        let sure = solver::study::sureness(&road, trip.truck, trip.day, &plan, &mut |_| true);
        return print(&json::pretty(&(study, sure.map(|(sureness, _)| sureness)))?);
    }
    if words.json {
        print(&json::pretty(&json::of_road(&road, &plan))?)
    } else {
        print(&text::of_road(trip, &road, &plan))
    }
}

/// Two recordings of one road.
fn with_second(words: &RoadWords, trip: Trip<'_>, road: Road, other: Road) -> Result<(), String> {
    const APART: &str = "they cannot be combined: they do not lie on each other in one direction, one is a \
        copy of the other, or their heights are quite others. Plan each by itself, or turn one round.";
    if words.json {
        let both = road::combine(&road, &other).ok_or(APART)?;
        let (plan, _) = plan(trip, &both)?;
        print(&json::pretty(&json::of_road(&both, &plan))?)
    } else {
        print(&pair::of_pair(trip, road, other).ok_or(APART)?)
    }
}

/// Several files: one that cannot be used does not keep the others back.
fn each(words: &RoadWords, trip: Trip<'_>) -> Result<(), String> {
    if words.with.is_some() || words.gpx_out.is_some() || words.study {
        let sentence = "--with, --gpx-out and --study go with one file. Give the files one by one.";
        Arguments::command().error(ErrorKind::ArgumentConflict, sentence).exit();
    }
    let mut refused = 0_usize;
    for path in &words.files {
        let planned = open(words, path).and_then(|road| Ok((plan(trip, &road)?.0, road)));
        refused += usize::from(planned.is_err());
        let told = if words.json {
            let mut line = match planned {
                Ok((plan, road)) => json::of_road(&road, &plan),
                Err(sentence) => json!({ "error": sentence }),
            };
            line["file"] = Value::from(path.display().to_string());
            format!("{line}\n")
        } else {
            let text = planned.map(|(plan, road)| text::of_road(trip, &road, &plan));
            format!("== {} ==\n{}\n\n", path.display(), text.unwrap_or_else(|sentence| sentence).trim_end())
        };
        print(&told)?;
    }
    let count = words.files.len();
    if refused == 0 {
        return Ok(());
    }
    Err(format!("{refused} of {count} files could not be planned. In place of a plan stands why."))
}

fn plan(trip: Trip<'_>, road: &Road) -> Result<(Plan, Lanes), String> {
    // Nobody stops it, so there is a plan.
    let stopped = || sentences::file_error(&road::FileError::Cancelled);
    analyse(road, trip.truck, trip.day, &mut |_| true).ok_or_else(stopped)
}

fn open(words: &RoadWords, path: &Path) -> Result<Road, String> {
    let refused = |error| format!("{}: {}", path.display(), sentences::file_error(&error));
    let bytes = file::read(path)?;
    let document = road::read(&bytes, &mut |_| true).map_err(refused)?;
    let course = match words.course {
        None => document.suggested(),
        Some(n) => n as usize - 1,
    };
    let road = road::survey(&document, course, &mut |_| true).map_err(refused)?;
    Ok(if words.reverse { road.reversed() } else { road })
}
