//! `steadygrade`: roads, grades and folders of roads without a browser.
//!
//! ```text
//! steadygrade road FILE…               the plan of a road
//! steadygrade grade -6%                every gear and stage on one grade
//! steadygrade truck                    the trucks to begin with, or one with all its values
//! steadygrade roads FOLDER --out TABLE  all roads of a folder in one table
//! ```
//!
//! The JSON has stable names with their units: `road` (name, length_m, mean_grade, steepest_km,
//! quality, roughness_before, roughness_after, findings, unassessed), `grades` (from_m, to_m, grade,
//! plus_minus), `descents` (number, crest_m, foot_m, drop_m, mean_grade, steepest_km, sustained_grade,
//! sustained_length_m, verdict, proof, gear, stage, hold_kmh, engine_rpm, margin, governs,
//! brakes_at_crest_c, hottest_c, hottest_after_stop_c, service_work_mj, holding_work_mj,
//! time_s, falls_short, climb_gear, reliefs, legs, one_gear, untouched, touches, in_reserve, snubbing,
//! heavier), `notes` and `totals` (time_s, fall_m, fall_unassessed_m, unassessed_m, holding_work_mj,
//! service_work_mj, hottest_c, hottest_after_stop_c). That of a grade: `grade`, `height_m`, `rows`
//! (gear, slowest_kmh, ceiling_kmh, margin_at_ceiling, answers). Where there is no advice its fields
//! are null.

mod arguments;
mod file;
mod grade;
mod json;
mod pair;
mod road;
mod roads;
mod sentences;
mod setup;
mod text;
mod truck;

use arguments::{Arguments, Job};
use clap::Parser;
use std::io::{ErrorKind, Write};
use std::process::ExitCode;

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    let done = match &arguments.job {
        Job::Road(words) => road::run(words),
        Job::Grade(words) => grade::run(words).and_then(|text| print(&text)),
        Job::Truck(words) => truck::run(words).and_then(|text| print(&text)),
        Job::Roads(words) => roads::run(words),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(sentence) => {
            eprintln!("{sentence}");
            ExitCode::FAILURE
        }
    }
}

/// Writes to standard output. That a reader wants no more is not an error.
///
/// # Errors
/// A sentence when the text could not be written.
fn print(text: &str) -> Result<(), String> {
    let mut out = std::io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() != ErrorKind::BrokenPipe => {
            Err(format!("The answer could not be written: {error}."))
        }
        Ok(()) | Err(_) => Ok(()),
    }
}
