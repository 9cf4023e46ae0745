//! Words of the card for the cab.

use super::say::span;
use crate::cab::{CardOf, Know};
use crate::format::{self, Units};
use solver::plan::Descent;

/// Words of the card.
pub trait CardWords {
    /// Head of the section.
    fn card_head(&self) -> &'static str;
    /// Leads to it from the answer.
    fn to_card(&self) -> &'static str;
    /// What it is for.
    fn card_sentence(&self) -> &'static str;
    /// Prints it.
    fn print_card(&self) -> &'static str;
    /// Saves it as a picture.
    fn save_picture(&self) -> &'static str;
    /// Name of that file.
    fn picture_name(&self, road: &str) -> String;
    /// Saves its rows.
    fn save_rows(&self) -> &'static str;
    /// Label of the marker at the start.
    fn marker_label(&self) -> &'static str;
    /// Markers count down.
    fn counts_down(&self) -> &'static str;
    /// Truck and day in one line.
    fn card_facts(&self, card: CardOf<'_>) -> String;
    /// Heads of the columns: descent, grade, gear, stage, hold, what to know.
    fn card_heads(&self) -> [&'static str; 6];
    /// From and to of a descent, in kilometres and in miles.
    fn card_span(&self, card: CardOf<'_>, descent: &Descent) -> [String; 2] {
        let (from, to) = (card.marker.at(descent.crest.0), card.marker.at(descent.foot.0));
        [span("km", from, to, Units::Metric), span(self.mile(), from, to, Units::Imperial)]
    }
    /// The unit before a mile marker.
    fn mile(&self) -> &'static str;
    /// A place by what stands on the markers: “km 12.4 (mile 7.7)”.
    fn at(&self, card: CardOf<'_>, metres: f64) -> String {
        let at = card.marker.at(metres);
        let [km, miles] = [Units::Metric, Units::Imperial].map(|units| format::distance_number(at, units));
        format!("km\u{a0}{km} ({}\u{a0}{miles})", self.mile())
    }
    /// Mean grade, and the steepest that the gear is chosen for.
    fn card_grade(&self, descent: &Descent, units: Units) -> [String; 2] {
        let sustained = descent.sustained;
        let (grade, length) = (format::grade(sustained.grade.0), format::length(sustained.length.0, units));
        [format::grade(descent.mean.0), self.card_worst(&grade, &length)]
    }
    /// The steepest stretch that the gear is chosen for.
    fn card_worst(&self, grade: &str, length: &str) -> String;
    /// The hold speed: number, unit, and what stands below it.
    fn card_hold(&self, speed: f64, engine_speed: f64, units: Units) -> [String; 3] {
        let below =
            format!("{} · {}", format::hold_speed(speed, units.other()), format::engine_speed(engine_speed));
        [format::hold_number(speed, units), units.speed().to_owned(), below]
    }
    /// One thing to know of a descent.
    fn card_know(&self, card: CardOf<'_>, know: &Know) -> String;
    /// Descents that found no room.
    fn card_more(&self, count: usize) -> String;
    /// Head and items of the list before the crest.
    fn before_crest(&self, card: CardOf<'_>) -> (&'static str, Vec<String>);
    /// Head and items of what to do in trouble, in order.
    fn in_trouble(&self, card: CardOf<'_>) -> (&'static str, Vec<String>);
    /// Head and items of the places.
    fn card_places(&self, card: CardOf<'_>) -> (&'static str, Vec<String>);
    /// The small print.
    fn card_cautions(&self) -> &'static str;
    /// Name of the file of rows.
    fn rows_name(&self, road: &str) -> String;
}
