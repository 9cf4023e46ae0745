//! Words of the card for the cab.

use super::say::{capital, name_or, span};
use super::way::changes;
use super::{EntryWords, PageWords, RoadsideWords, WayWords, WhyWords};
use crate::cab::{CardOf, Know};
use crate::down;
use crate::format::{self, Units};
use crate::paper::Texts;
use solver::plan::{Descent, LegChange};
use solver::road::{Place, PlaceKind};
use solver::truck::{Gear, Stage};

/// Words of the card.
pub trait CardWords: EntryWords + PageWords + WayWords + RoadsideWords + WhyWords {
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
    /// Name of that file, for a road as recorded or turned around.
    fn picture_name(&self, road: &str, reversed: bool) -> String;
    /// Saves its rows.
    fn save_rows(&self) -> &'static str;
    /// Label of the marker at the start.
    fn marker_label(&self) -> &'static str;
    /// Markers count down.
    fn counts_down(&self) -> &'static str;
    /// That the markers typed do not reach over the road: what would stand at its start and at its
    /// end, the remedy, and what the card has meanwhile.
    fn markers_miss(&self, start: &str, end: &str) -> String;
    /// That the card belongs to entries before.
    fn card_is_old(&self) -> &'static str;
    /// Which way it goes: the heights of start and end, and whether that is against the recording.
    fn card_way(&self, card: CardOf<'_>) -> String {
        let [start, end] = [card.ends_m.0, card.ends_m.1].map(|it| format::height(it, card.units));
        let way = format!("{start} → {end}");
        if card.reversed { format!("{way} · {}", self.reversed_mark()) } else { way }
    }
    /// What holds for the whole plan and is said with it.
    fn card_notes(&self, card: CardOf<'_>) -> Vec<String> {
        card.plan.notes.iter().map(|note| self.note(*note).to_owned()).collect()
    }
    /// Where no safe speed was found: what is read first, and for which descents.
    fn card_stop(&self, card: CardOf<'_>) -> Option<[String; 2]> {
        /// More numbers would be no line any more.
        const MOST_NUMBERS: usize = 12;
        let numbers = card.without_speed();
        let count = numbers.len();
        let mut list = numbers.iter().take(MOST_NUMBERS).map(usize::to_string).collect::<Vec<_>>().join(", ");
        if count > MOST_NUMBERS {
            list.push_str(", …");
        }
        (count > 0).then(|| [self.do_not_descend().to_owned(), self.no_speed_for(&list, count)])
    }
    /// Not to go down with what is entered.
    fn do_not_descend(&self) -> &'static str;
    /// For which descents, by their numbers, no safe speed was found, and what comes first.
    fn no_speed_for(&self, numbers: &str, count: usize) -> String;
    /// The texts of the card, for which room is to be found.
    fn card_texts(&self, card: CardOf<'_>) -> Texts {
        let worst = card.plan.worst_first();
        Texts {
            facts: self.card_facts(card),
            stop: self.card_stop(card),
            notes: self.card_notes(card),
            rows: worst.into_iter().map(|it| (self.card_known(card, it), changes(it).count())).collect(),
            lists: [self.before_crest(card), self.in_trouble(card), self.card_places(card)],
            small: self.card_small(),
        }
    }
    /// The small print, and that no practitioner has read the words where that is so.
    fn card_small(&self) -> String {
        let unread = self.unread().map(|unread| format!(" {unread}"));
        format!("{}{}", self.card_cautions(), unread.unwrap_or_default())
    }
    /// All that is to know of a descent; where no safe speed was found, that stands before it.
    fn card_known(&self, card: CardOf<'_>, descent: &Descent) -> String {
        let large = usize::from(descent.choice.advice().is_none());
        let known = card.know(descent);
        let told: Vec<String> = known.iter().skip(large).map(|it| self.card_know(card, it)).collect();
        told.join(" ")
    }
    /// Truck and day in one line.
    fn card_facts(&self, card: CardOf<'_>) -> String {
        let (day, units) = (card.day, card.units);
        self.facts_of([
            &format::mass(card.truck.gross_mass_kg, units),
            self.retarder(card.truck.retarder.kind()),
            self.surface(day.surface),
            self.load(day.load),
            &format::entered_temperature(day.air_c, units),
            &format::entered_temperature(day.brakes_at_start_c, units),
        ])
    }
    /// The same: mass, retarder, surface, load, air, and the brakes at the start.
    fn facts_of(&self, facts: [&str; 6]) -> String;
    /// Heads of the columns: descent, grade, gear, stage, hold, what to know.
    fn card_heads(&self) -> [&'static str; 6];
    /// From and to of a descent, in kilometres and in miles.
    fn card_span(&self, card: CardOf<'_>, descent: &Descent) -> [String; 2] {
        self.both_spans(card, descent.crest.0, descent.foot.0)
    }
    /// From and to of a stretch, m from the start, in both.
    fn both_spans(&self, card: CardOf<'_>, from_m: f64, to_m: f64) -> [String; 2] {
        let [from, to] = [from_m, to_m].map(|it| card.marker.at(it));
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
    /// By which place a gear is in, or from which it may be.
    fn card_change(&self, card: CardOf<'_>, change: LegChange) -> String {
        self.by_place(change.how, &self.at(card, change.at.0))
    }
    /// Mean grade, and the even grade that the gear is chosen for, with the length that asks for most.
    fn card_grade(&self, descent: &Descent, units: Units) -> [String; 2] {
        let sustained = descent.sustained;
        let (grade, length) = (format::grade(sustained.grade.0), format::length(sustained.length.0, units));
        [format::grade(descent.mean.0), self.card_asks(&grade, &length)]
    }
    /// That even grade and that length.
    fn card_asks(&self, grade: &str, length: &str) -> String;
    /// The hold speed: number, unit, and what stands below it.
    fn card_hold(&self, speed: f64, engine_speed: f64, units: Units) -> [String; 3] {
        let below =
            format!("{} · {}", format::hold_speed(speed, units.other()), format::engine_speed(engine_speed));
        [format::hold_number(speed, units), units.speed().to_owned(), below]
    }
    /// One thing to know of a descent.
    fn card_know(&self, card: CardOf<'_>, know: &Know) -> String {
        let units = card.units;
        let at = |metres: &f64| self.at(card, *metres);
        match know {
            Know::Verdict(choice) => capital(self.verdict_of(choice)) + ".",
            Know::BeginsUnknown => self.know_begins_unknown().to_owned(),
            Know::NotAssessed { from_m, to_m } => {
                let [km, miles] = self.both_spans(card, *from_m, *to_m);
                self.not_assessed_on(&format!("{km} ({miles})"))
            }
            Know::Snub(snub) => self
                .know_snub(&format::hold_number(snub.from.0, units), &format::hold_speed(snub.to.0, units)),
            Know::Brakes { needed, at_m, more } => {
                let mut places: Vec<String> = at_m.iter().map(at).collect();
                places.extend((*more > 0).then(|| self.and_more(*more)));
                self.brakes_at_places(*needed, &places.join(", "))
            }
            Know::InDoubt(grade) => self.know_in_doubt(&format::grade(grade.0)),
            Know::Easing { at_m } => self.know_easing(&at(at_m)),
            Know::SlowCurve { speed, at_m, below_hold } => {
                let (speed, at) = (format::hold_speed(*speed, units), at(at_m));
                match below_hold {
                    0 | 1 => self.know_slow_curve(&speed, &at),
                    _ => self.know_slow_curves(*below_hold, &speed, &at),
                }
            }
            Know::Posted { speed, from_m, to_m } => {
                let [km, miles] = self.both_spans(card, *from_m, *to_m);
                self.know_posted(&format::hold_speed(*speed, units), &km, &miles)
            }
            Know::Ramp { at_m } => self.know_ramp(&at(at_m)),
            Know::Quiet { at_m } => self.know_quiet(&at(at_m)),
            Know::AtFoot { name, at_m } => {
                self.know_at_foot(&name_or(name, self.to_stop_at_foot()), &at(at_m))
            }
            Know::CutShort => self.know_cut_short().to_owned(),
        }
    }
    /// From which speed down to which to snub.
    fn know_snub(&self, from: &str, to: &str) -> String;
    /// That steep bits up to a grade cannot be ruled out, and what follows.
    fn know_in_doubt(&self, grade: &str) -> String;
    /// Where it eases, but is not over.
    fn know_easing(&self, at: &str) -> String;
    /// That it is not known how it begins.
    fn know_begins_unknown(&self) -> &'static str;
    /// How many curves, more than one, ask for less than the hold speed, and the slowest of them.
    fn know_slow_curves(&self, count: usize, speed: &str, at: &str) -> String;
    /// The slowest curve.
    fn know_slow_curve(&self, speed: &str, at: &str) -> String;
    /// A posted limit, from where to where.
    fn know_posted(&self, speed: &str, km: &str, miles: &str) -> String;
    /// An escape ramp.
    fn know_ramp(&self, at: &str) -> String;
    /// A quiet zone, and what it may mean.
    fn know_quiet(&self, at: &str) -> String;
    /// What waits at the foot.
    fn know_at_foot(&self, name: &str, at: &str) -> String;
    /// The same where it has no name.
    fn to_stop_at_foot(&self) -> &'static str;
    /// That it is not known how it goes on.
    fn know_cut_short(&self) -> &'static str;
    /// Descents that found no room.
    fn card_more(&self, count: usize) -> String;
    /// Items of the list before the crest.
    fn before_crest(&self, card: CardOf<'_>) -> Vec<String> {
        let stop = card.places_of(PlaceKind::BrakeCheck).next().map_or_else(
            || self.stop_where_allowed().to_owned(),
            |check| self.stop_at_check(&self.at(card, card.metres(check.index))),
        );
        let tried = card.tries_retarder().then(|| self.try_retarder().to_owned());
        let gear = card.first_held().map(|(descent, advice)| {
            let (gear, stage, _) = down::first(descent, advice);
            let engaged = match descent.from {
                0 => self.gear_at_start(gear, stage),
                _ => self.gear_before(gear, stage, &self.at(card, descent.crest.0)),
            };
            format!("{engaged} {}", self.shifting(down::in_legs(descent)))
        });
        let list = [Some(stop), tried, Some(self.look_ahead().to_owned()), gear];
        list.into_iter().flatten().collect()
    }
    /// Head of that list.
    fn before_crest_head(&self) -> &'static str;
    /// To stop at the brake check, and what to look at.
    fn stop_at_check(&self, at: &str) -> String;
    /// The same without a brake check.
    fn stop_where_allowed(&self) -> &'static str;
    /// To try the retarder.
    fn try_retarder(&self) -> &'static str;
    /// Whether it is still the road that was planned.
    fn look_ahead(&self) -> &'static str;
    /// Gear and stage of the first advice, and before which place.
    fn gear_before(&self, gear: Gear, stage: Stage, at: &str) -> String;
    /// The same where the road starts in that descent: before setting off.
    fn gear_at_start(&self, gear: Gear, stage: Stage) -> String;
    /// Not to shift on the hill; in legs, only where the rows have it.
    fn shifting(&self, in_legs: bool) -> &'static str;
    /// What to do in trouble, in order.
    fn in_trouble(&self, card: CardOf<'_>) -> Vec<String> {
        let ramps = card.places_of(PlaceKind::EscapeRamp).map(|it| self.at(card, card.metres(it.index)));
        let ramps: Vec<String> = ramps.collect();
        let way_up = if ramps.is_empty() {
            self.any_way_up().to_owned()
        } else {
            self.take_ramp(&ramps.join(self.between_ramps()))
        };
        let list = [
            self.brake_now().to_owned(),
            self.stay_in_gear().to_owned(),
            way_up,
            self.warn_others().to_owned(),
        ];
        list.to_vec()
    }
    /// Head of that list.
    fn in_trouble_head(&self) -> &'static str;
    /// To brake hard while that still helps.
    fn brake_now(&self) -> &'static str;
    /// To stay in gear.
    fn stay_in_gear(&self) -> &'static str;
    /// To take any way that rises; no ramp is entered.
    fn any_way_up(&self) -> &'static str;
    /// To take a ramp at one of these places, or any way that rises.
    fn take_ramp(&self, ramps: &str) -> String;
    /// Between those places.
    fn between_ramps(&self) -> &'static str {
        ", "
    }
    /// To warn the others.
    fn warn_others(&self) -> &'static str;
    /// The places.
    fn card_places(&self, card: CardOf<'_>) -> Vec<String> {
        let one = |it: &Place| {
            let (at, name) = (self.at(card, card.metres(it.index)), self.place_kind(it.kind));
            format!("{at}{}{}", self.colon(), name_or(&it.name, name))
        };
        let mut list: Vec<String> = card.places.iter().map(one).collect();
        if list.is_empty() {
            list.push(self.no_places_entered().to_owned());
        }
        list
    }
    /// None are entered, and what that does not mean.
    fn no_places_entered(&self) -> &'static str;
    /// The small print.
    fn card_cautions(&self) -> &'static str;
    /// Name of the file of rows, for a road as recorded or turned around.
    fn rows_name(&self, road: &str, reversed: bool) -> String;
}
