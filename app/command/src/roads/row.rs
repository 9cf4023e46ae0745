//! The rows of a table. Every file has at least one: where nothing is to be said of a descent the
//! row says so in `descents`, and where a file cannot be planned it says why in `error`.

use super::Found;
use super::table::Columns;
use crate::{file, json, sentences};
#[cfg(feature = "parquet")]
use parquet_derive::ParquetRecordWriter;
use serde::Serialize;
use solver::analyse;
use solver::motion::Trip;
use solver::plan::Plan;
use solver::report::rows;
use solver::road::{self, Road};
use std::panic::{self, AssertUnwindSafe};

/// What is known of a file, whichever rows it gives.
#[derive(Clone, Default)]
pub(crate) struct File {
    path: String,
    road: Option<Planned>,
    error: Option<String>,
}

/// What is known of a road that was planned.
#[derive(Clone)]
struct Planned {
    name: String,
    course: u32,
    courses: u32,
    length_m: f64,
    unassessed_m: f64,
    quality: String,
    notes: String,
    descents: u32,
}

/// A row of a table of one kind.
pub(crate) trait Row: Sized + Serialize + Columns + Send + 'static {
    /// The rows of a plan; none where it has no descent.
    fn of_plan(file: &File, road: &Road, plan: &Plan) -> Vec<Self>;
    /// The one row of a file without any of them.
    fn of_file(file: &File) -> Self;
}

/// The rows of a file.
pub(crate) struct OfFile<R> {
    /// At least one.
    pub(crate) rows: Vec<R>,
    /// It could not be planned.
    pub(crate) refused: bool,
}

/// Reads and plans a file.
pub(crate) fn of_file<R: Row>(found: &Found, trip: Trip<'_>, reverse: bool) -> OfFile<R> {
    let path = match found {
        Ok(path) => path.display().to_string(),
        Err(error) => error.path().map_or_else(String::new, |path| path.display().to_string()),
    };
    let mut file = File { path, ..File::default() };
    match guarded(|| plan(found, trip, reverse)) {
        Ok((planned, road, plan)) => {
            file.road = Some(planned);
            let mut rows = R::of_plan(&file, &road, &plan);
            if rows.is_empty() {
                rows.push(R::of_file(&file));
            }
            OfFile { rows, refused: false }
        }
        Err(sentence) => {
            file.error = Some(sentence);
            OfFile { rows: vec![R::of_file(&file)], refused: true }
        }
    }
}

/// The answer of `work`, or a sentence where it breaks down: a mistake that one file in many brings
/// to light must not cost the table of all.
fn guarded<T>(work: impl FnOnce() -> Result<T, String>) -> Result<T, String> {
    // Nothing that was half done is used again.
    panic::catch_unwind(AssertUnwindSafe(work)).unwrap_or_else(|_| {
        Err(String::from(
            "The calculation broke down on this file. That is a mistake in the program: report it with the file.",
        ))
    })
}

fn plan(found: &Found, trip: Trip<'_>, reverse: bool) -> Result<(Planned, Road, Plan), String> {
    let path = found.as_ref().map_err(|error| format!("It could not be looked into: {error}."))?;
    let bytes = file::read(path)?;
    let refused = |error: road::FileError| sentences::file_error(&error);
    let document = road::read(&bytes, &mut |_| true).map_err(refused)?;
    let course = document.suggested();
    let road = road::survey(&document, course, &mut |_| true).map_err(refused)?;
    let road = if reverse { road.reversed() } else { road };
    // Nobody stops it, so there is a plan.
    let (plan, _) = analyse(&road, trip.truck, trip.day, &mut |_| true)
        .ok_or_else(|| refused(road::FileError::Cancelled))?;
    let planned = Planned {
        name: road.name().to_owned(),
        course: count(course + 1),
        courses: count(document.usable().count()),
        length_m: road.length_m(),
        unassessed_m: plan.totals.unassessed.0,
        quality: json::quality(&road),
        notes: json::notes(&plan).collect::<Vec<_>>().join("; "),
        descents: count(plan.descents.len()),
    };
    Ok((planned, road, plan))
}

/// Counts of a file are bounded far below what a column holds.
fn count(of: usize) -> u32 {
    u32::try_from(of).unwrap_or(u32::MAX)
}

/// The name of a variant as it stands in JSON.
fn name(of: impl Serialize) -> Option<String> {
    let value = serde_json::to_value(of).ok()?;
    value.as_str().map(str::to_owned)
}

/// What a row says of its file. Rows are flat, as tables are, so each kind of row has these columns itself.
macro_rules! of_file {
    () => {
        fn of_file(file: &File) -> Self {
            let bare = Self { file: file.path.clone(), error: file.error.clone(), ..Self::default() };
            let Some(road) = file.road.clone() else { return bare };
            Self {
                road: Some(road.name),
                course: Some(road.course),
                courses: Some(road.courses),
                length_m: Some(road.length_m),
                unassessed_m: Some(road.unassessed_m),
                quality: Some(road.quality),
                notes: Some(road.notes),
                descents: Some(road.descents),
                ..bare
            }
        }
    };
}

/// A descent. Where no speed is safe gear, stage and speeds are empty.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "parquet", derive(ParquetRecordWriter))]
pub(crate) struct DescentRow {
    file: String,
    road: Option<String>,
    course: Option<u32>,
    courses: Option<u32>,
    length_m: Option<f64>,
    unassessed_m: Option<f64>,
    quality: Option<String>,
    notes: Option<String>,
    descents: Option<u32>,
    descent: Option<u32>,
    crest_m: Option<f64>,
    foot_m: Option<f64>,
    drop_m: Option<f64>,
    mean_grade: Option<f64>,
    steepest_km: Option<f64>,
    verdict: Option<String>,
    proof: Option<String>,
    gear: Option<u32>,
    stage: Option<u32>,
    hold_kmh: Option<f64>,
    governs: Option<String>,
    hottest_after_stop_c: Option<f64>,
    time_s: Option<f64>,
    legs: Option<u32>,
    touches: Option<u32>,
    error: Option<String>,
}

impl Row for DescentRow {
    fn of_plan(file: &File, _: &Road, plan: &Plan) -> Vec<Self> {
        let row = |row: rows::DescentRow| Self {
            descent: Some(count(row.descent)),
            crest_m: Some(row.crest_m),
            foot_m: Some(row.foot_m),
            drop_m: Some(row.drop_m),
            mean_grade: Some(row.mean_grade),
            steepest_km: Some(row.steepest_km),
            verdict: name(row.verdict),
            proof: row.proof.and_then(name),
            gear: row.gear.map(|gear| u32::from(gear.number())),
            stage: row.stage.map(|stage| u32::from(stage.number())),
            hold_kmh: row.hold_kmh,
            governs: name(row.governs),
            hottest_after_stop_c: Some(row.hottest_after_stop_c),
            time_s: row.time_s,
            legs: Some(count(row.legs)),
            touches: Some(count(row.touches)),
            ..Self::of_file(file)
        };
        rows::descents(plan).into_iter().map(row).collect()
    }

    of_file!();
}

/// A leg. A descent on which no speed is safe has one row, without gear, stage and speed.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "parquet", derive(ParquetRecordWriter))]
pub(crate) struct LegRow {
    file: String,
    road: Option<String>,
    course: Option<u32>,
    courses: Option<u32>,
    length_m: Option<f64>,
    unassessed_m: Option<f64>,
    quality: Option<String>,
    notes: Option<String>,
    descents: Option<u32>,
    descent: Option<u32>,
    verdict: Option<String>,
    leg: Option<u32>,
    from_m: Option<f64>,
    to_m: Option<f64>,
    gear: Option<u32>,
    stage: Option<u32>,
    hold_kmh: Option<f64>,
    error: Option<String>,
}

impl Row for LegRow {
    fn of_plan(file: &File, road: &Road, plan: &Plan) -> Vec<Self> {
        let all = rows::legs(plan, road.step_m());
        let of_descent = |descent: rows::DescentRow| {
            let whole = Self {
                descent: Some(count(descent.descent)),
                verdict: name(descent.verdict),
                from_m: Some(descent.crest_m),
                to_m: Some(descent.foot_m),
                ..Self::of_file(file)
            };
            let its_own = all.iter().filter(|leg| leg.descent == descent.descent);
            let legs: Vec<Self> = its_own.map(|leg| whole.with(leg)).collect();
            if legs.is_empty() { vec![whole] } else { legs }
        };
        rows::descents(plan).into_iter().flat_map(of_descent).collect()
    }

    of_file!();
}

impl LegRow {
    fn with(&self, leg: &rows::LegRow) -> Self {
        Self {
            leg: Some(count(leg.leg)),
            from_m: Some(leg.from_m),
            to_m: Some(leg.to_m),
            gear: Some(u32::from(leg.gear.number())),
            stage: Some(u32::from(leg.stage.number())),
            hold_kmh: Some(leg.hold_kmh),
            ..self.clone()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::guarded;

    #[test]
    fn a_calculation_that_breaks_down_is_told() {
        assert_eq!(guarded(|| Ok(7)), Ok(7));
        let none: &[u8] = &[];
        let broken = guarded(|| Ok(none[std::hint::black_box(3)]));
        assert!(broken.is_err_and(|sentence| sentence.contains("report it")));
    }
}
