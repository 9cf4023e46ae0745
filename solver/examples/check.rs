//! The solver without a browser.
//!
//! ```text
//! cargo run --release -p solver --example check -- ROAD.gpx [options]
//! cargo run --release -p solver --example check -- --grade -0.06 [options]
//!
//!   --reverse             drive the road the other way
//!   --course N            the N-th track or route of the file, from 1
//!   --with SECOND.gpx     a second recording of the same road: the plan of both together beside
//!                         that of each alone, as text
//!   --preset NAME         a truck to begin with (five-axle-36t, five-axle-40t, rigid-18t,
//!                         tipper-26t, b-double-62t, coach, coach-converter)
//!   --retarder KIND       another kind of retarder with assumed numbers (none,
//!                         compression-release, exhaust-valve, hydrodynamic, electromagnetic, …)
//!   --truck TRUCK.json    a truck file: one saved by the page or by --print-truck
//!   --day DAY.json        a day of one's own: the fields of `Day`
//!   --mass-kg N           gross mass; the driven axles keep their share of it
//!   --may-snub            allow snubs within the heat limit
//!   --grade I             print the gear × stage table of one constant grade, no road
//!   --height-m N          height of that grade, 0 if not given
//!   --gpx-out FILE        write the annotated road as GPX 1.1
//!   --print-truck         print the truck as a truck file, to begin one's own with
//!   --study               what if, and how sure: JSON
//!   --json                print JSON instead of text
//! ```
//!
//! The JSON has stable names with their units: `road` (name, length_m, mean_grade, steepest_km,
//! quality, roughness_before, findings, unassessed), `grades` (from_m, to_m, grade, plus_minus),
//! `descents` (number, crest_m, foot_m, drop_m, mean_grade, steepest_km, sustained_grade,
//! sustained_length_m, verdict, gear, stage, hold_kmh, engine_rpm, margin, governs,
//! brakes_at_crest_c, hottest_c, hottest_after_stop_c, service_work_mj, holding_work_mj,
//! time_s, climb_gear, reliefs, in_reserve, snubbing, heavier) and `totals` (time_s, fall_m, fall_unassessed_m, unassessed_m,
//! holding_work_mj, service_work_mj, hottest_c, hottest_after_stop_c). With `--grade`:
//! `grade`, `height_m`, `rows` (gear, slowest_kmh, ceiling_kmh, margin_at_ceiling, answers).
//! Where there is no advice its fields are null.
//!
//! A file, truck or day that cannot be used ends with a sentence on standard error and exit
//! status 1; words that are not understood with exit status 2.

mod check {
    pub(crate) mod arguments;
    pub(crate) mod json;
    pub(crate) mod pair;
    pub(crate) mod text;
}

use check::arguments::{Arguments, Job};
use solver::{Trip, analyse, road};
use std::process::ExitCode;

fn main() -> ExitCode {
    let arguments = match Arguments::read(std::env::args().skip(1)) {
        Ok(arguments) => arguments,
        Err(sentence) => {
            eprintln!("{sentence}");
            return ExitCode::from(2);
        }
    };
    match run(&arguments) {
        Ok(text) => {
            print!("{text}");
            ExitCode::SUCCESS
        }
        Err(sentence) => {
            eprintln!("{sentence}");
            ExitCode::FAILURE
        }
    }
}

fn run(arguments: &Arguments) -> Result<String, String> {
    let truck = arguments.truck()?;
    let day = arguments.day()?;
    let trip = Trip { truck: &truck, day: &day };
    match &arguments.job {
        Job::PrintTruck => Ok(solver::report::truck_file::write(truck.spec())),
        Job::Grade { grade, height } => {
            let table = solver::plan::table(trip, *grade, *height);
            if arguments.json {
                check::json::of_table(&table)
            } else {
                Ok(check::text::of_table(trip, &table))
            }
        }
        Job::Road { path } => {
            let road = open(arguments, path)?;
            if let Some(second) = &arguments.second {
                let other = open(arguments, second)?;
                return check::pair::of_pair(trip, road, other).ok_or_else(|| {
                    format!("{path} and {second} do not lie on each other in one direction, so they cannot be combined.")
                });
            }
            let (plan, lanes) = analyse(&road, &truck, &day, &mut |_| true)
                .ok_or("The calculation was stopped before it was done.")?;
            if let Some(out) = &arguments.gpx_out {
                let text = check::text::as_gpx(&road, &plan, &lanes)
                    .ok_or("A road without positions cannot be written as GPX.")?;
                std::fs::write(out, text).map_err(|e| format!("{out} could not be written: {e}."))?;
            }
            if arguments.study {
                let study = solver::study::study(&road, &truck, &day, &plan);
                let sure = solver::study::sureness(&road, &truck, &day, &plan, &mut |_| true);
                return check::json::pretty(&(study, sure.map(|(sureness, _)| sureness)));
            }
            if arguments.json {
                check::json::of_road(&road, &plan)
            } else {
                Ok(check::text::of_road(trip, &road, &plan))
            }
        }
    }
}

fn open(arguments: &Arguments, path: &str) -> Result<road::Road, String> {
    let bytes = std::fs::read(path).map_err(|e| format!("{path} could not be opened: {e}."))?;
    let document = road::read(&bytes, &mut |_| true).map_err(|e| e.to_string())?;
    let course = match arguments.course {
        None => document.suggested(),
        Some(n) if n >= 1 && n <= document.courses().len() => n - 1,
        Some(n) => {
            let count = document.courses().len();
            return Err(format!("There is no course {n}; this file has {count}. Choose one with --course."));
        }
    };
    let road = road::survey(&document, course, &mut |_| true).map_err(|e| e.to_string())?;
    Ok(if arguments.reverse { road.reversed() } else { road })
}
