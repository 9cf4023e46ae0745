//! English words of the card for the cab.

use super::English;
use crate::cab::{CardOf, Know};
use crate::format::{self, Units};
use crate::words::say::{capital, file_name, name_or, span};
use crate::words::{CardWords, EntryWords, PlanWords, RoadsideWords};
use solver::road::{Place, PlaceKind};

impl CardWords for English {
    fn card_head(&self) -> &'static str {
        "Card"
    }
    fn to_card(&self) -> &'static str {
        "The card for the cab, to print"
    }
    fn card_sentence(&self) -> &'static str {
        "For the cab, so that no screen is needed on the way: print it, fold it in the middle. Read it before the crest, parked."
    }
    fn print_card(&self) -> &'static str {
        "Print the card"
    }
    fn save_picture(&self) -> &'static str {
        "Save it as a picture"
    }
    fn picture_name(&self, road: &str) -> String {
        file_name(road, "road", "-card.png")
    }
    fn save_rows(&self) -> &'static str {
        "Save its rows as CSV"
    }
    fn marker_label(&self) -> &'static str {
        "Marker or odometer at the start of the road"
    }
    fn counts_down(&self) -> &'static str {
        "markers count down"
    }
    fn card_facts(&self, card: CardOf<'_>) -> String {
        let day = card.day;
        format!(
            "{} · {} · {}, {} · air {} · brakes {} at the start",
            format::mass(card.truck.gross_mass_kg, card.units),
            self.retarder(card.truck.retarder.kind()),
            self.surface(day.surface),
            self.load(day.load),
            format::entered_temperature(day.air_c, card.units),
            format::entered_temperature(day.brakes_at_start_c, card.units)
        )
    }
    fn card_heads(&self) -> [&'static str; 6] {
        ["descent, from – to", "grade", "gear", "stage", "hold", "what to know"]
    }
    fn mile(&self) -> &'static str {
        "mile"
    }
    fn card_worst(&self, grade: &str, length: &str) -> String {
        format!("worst {grade}, {length}")
    }
    fn card_know(&self, card: CardOf<'_>, know: &Know) -> String {
        let at = |metres: f64| self.at(card, metres);
        match know {
            Know::Verdict(verdict) => capital(self.verdict(*verdict)) + ".",
            Know::Snub(snub) => format!(
                "Snub {} to {}, release, repeat.",
                format::hold_number(snub.from.0, card.units),
                format::hold_speed(snub.to.0, card.units)
            ),
            Know::Easing { at_m } => format!("The easing at {} is not the end: stay in gear.", at(*at_m)),
            Know::SlowCurve { speed, at_m } => {
                format!("Slowest curve {}, {}.", format::hold_speed(*speed, card.units), at(*at_m))
            }
            Know::Posted { speed, from_m, to_m } => {
                let [from, to] = [from_m, to_m].map(|it| card.marker.at(*it));
                format!(
                    "Posted {}, {}, {}.",
                    format::hold_speed(*speed, card.units),
                    span("km", from, to, Units::Metric),
                    span(self.mile(), from, to, Units::Imperial)
                )
            }
            Know::Ramp { at_m } => format!("Escape ramp at {}.", at(*at_m)),
            Know::Quiet { at_m } => {
                format!("Quiet zone at {}: an engine brake may be forbidden.", at(*at_m))
            }
            Know::AtFoot { name, at_m } => {
                format!("At the foot: {}, {}.", name_or(name, "a place to stop"), at(*at_m))
            }
            Know::CutShort => "How it goes on is not known.".to_owned(),
        }
    }
    fn card_more(&self, count: usize) -> String {
        if count == 1 {
            return "And 1 more descent on this road that is not on this card: plan the road in parts."
                .to_owned();
        }
        format!("And {count} more descents on this road that are not on this card: plan the road in parts.")
    }
    fn before_crest(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let stop = match card.places_of(PlaceKind::BrakeCheck).next() {
            Some(check) => format!(
                "Stop at the brake check, {}: adjustment, leaks, drums or discs, tyres, load.",
                self.at(card, card.metres(check.index))
            ),
            None => "Stop where it is allowed: adjustment, leaks, drums or discs, tyres, load.".to_owned(),
        };
        let gear = card.first_held().map(|(descent, advice)| {
            format!(
                "Gear {} and {} engaged before {}. No shifting on the hill.",
                advice.gear.number(),
                self.stage(advice.stage),
                self.at(card, descent.crest.0)
            )
        });
        let list = [
            Some(stop),
            Some("Lift off briefly: does the retarder come in, at every stage?".to_owned()),
            Some("Weather, signs, closures: is it still the road that was planned?".to_owned()),
            gear,
        ];
        ("Before the crest", list.into_iter().flatten().collect())
    }
    fn in_trouble(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let ramps = card.places_of(PlaceKind::EscapeRamp);
        let ramps: Vec<String> = ramps.map(|it| self.at(card, card.metres(it.index))).collect();
        let ramp = if ramps.is_empty() {
            "Take an escape ramp or any way that rises. None is entered here; there may be some.".to_owned()
        } else {
            format!("Take the escape ramp at {}, or any way that rises.", ramps.join(", "))
        };
        let list = [
            "Brake hard now and stop, while the brakes are cool enough to do it.".to_owned(),
            "Stay in gear. Never neutral, never the clutch, no shift down at speed.".to_owned(),
            ramp,
            "Lights and horn: warn the others.".to_owned(),
        ];
        ("If it gets away", list.to_vec())
    }
    fn card_places(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let one = |it: &Place| {
            format!(
                "{}: {}",
                self.at(card, card.metres(it.index)),
                name_or(&it.name, self.place_kind(it.kind))
            )
        };
        let mut list: Vec<String> = card.places.iter().map(one).collect();
        if list.is_empty() {
            list.push("None are entered. That does not mean that there are none.".to_owned());
        }
        ("Places", list)
    }
    fn card_cautions(&self) -> &'static str {
        "Worked out from your entries and recorded heights, which err; not permission to descend. It cannot see adjustment, tyres, surface, weather, traffic or the load. Posted signs, the law, your employer and the vehicle’s maker come first. The service brakes remain the means to stop. In doubt: stop at the top, go slower, take another road."
    }
    fn rows_name(&self, road: &str) -> String {
        file_name(road, "road", "-descents.csv")
    }
}
