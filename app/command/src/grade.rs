//! `steadygrade grade`: what every gear and stage does on one grade.

use crate::arguments::GradeWords;
use crate::{json, setup, text};
use solver::motion::Trip;
use solver::units::Metres;

pub(crate) fn run(words: &GradeWords) -> Result<String, String> {
    let (truck, day) = (setup::truck(&words.truck)?, setup::day(&words.day)?);
    let trip = Trip { truck: &truck, day: &day };
    let table = solver::plan::table(trip, words.grade, Metres(words.height_m));
    if words.json { json::of_table(&table) } else { Ok(text::of_table(trip, &table)) }
}
