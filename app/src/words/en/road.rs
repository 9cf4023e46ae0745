//! English words of the road.

use super::English;
use crate::words::RoadWords;
use solver::road::{Class, FileError, Finding, Span};

impl RoadWords for English {
    fn road_head(&self) -> &'static str {
        "This road as recorded"
    }
    fn both_ends(&self, start: &str, end: &str) -> String {
        format!("driven from the end at {start} to the end at {end}")
    }
    fn left_blank(&self, length: &str, lower: Option<&str>) -> String {
        let lower = lower.map_or_else(String::new, |it| format!("; the road is {it} lower behind them"));
        format!("{length} could not be assessed{lower}. Nothing is advised there.")
    }
    fn climbs_between(&self, start: &str, end: &str) -> String {
        format!("This road climbs from {start} to {end} in the direction shown. Coming down it?")
    }
    fn grade_holds(&self, class: Class, base: &str) -> String {
        match class {
            Class::Good => format!("Heights are good: a grade holds over {base} or more."),
            Class::Fair => {
                format!("Heights are fair: a grade holds over {base} or more; shorter steps are not seen.")
            }
            Class::Poor => format!(
                "Heights are poor: a grade holds over {base} or more, and is advisory only. Check it against the signs."
            ),
        }
    }
    fn roughness(&self, before: &str, after: &str) -> String {
        format!(
            "Nine in ten neighbouring stretches of 100 m differ by no more than {before} points as recorded, {after} after smoothing."
        )
    }
    fn findings_head(&self, count: usize) -> String {
        if count == 1 {
            "1 thing noticed or repaired in the file".to_owned()
        } else {
            format!("{count} things noticed or repaired in the file")
        }
    }
    fn no_findings(&self) -> &'static str {
        "Nothing had to be repaired."
    }
    fn file_error(&self, error: &FileError) -> String {
        match error {
            // The page cannot know which of the two it is.
            FileError::NothingInside => "No track and no route could be read in the GPX file. If it was cut off when it was copied, copy it again; if not, export the track itself, not only its summary.".to_owned(),
            _ => error.to_string(),
        }
    }
    fn finding(&self, finding: &Finding) -> String {
        format!("{}.", finding.what())
    }
    fn onward_from(&self, place: &str) -> String {
        format!("from {place}")
    }
    fn show_place(&self, place: &str) -> String {
        format!("Show {place} on the road")
    }
    fn unassessed_head(&self, count: usize) -> String {
        if count == 1 {
            "1 stretch is not assessed: nothing is advised there".to_owned()
        } else {
            format!("{count} stretches are not assessed: nothing is advised there")
        }
    }
    fn unassessed(&self, span: &Span) -> String {
        format!("{}.", span.why)
    }
}
