//! Words of the card for the cab.

use super::say::{capital, file_name, name_or, span};
use crate::card_facts::{CardOf, Know};
use crate::card_fit::Texts;
use crate::format::{self, Units};
use crate::words::Spoken;
use ::words::down::{self, changes};
use solver::plan::{Descent, LegChange};
use solver::road::{Place, PlaceKind};

impl Spoken {
    /// Which way it goes: the heights of start and end, and whether that is against the recording.
    #[must_use]
    pub fn card_way(&self, card: CardOf<'_>) -> String {
        let [start, end] = [card.ends_m.0, card.ends_m.1].map(|it| format::height(it, card.units));
        let way = format!("{start} → {end}");
        if card.reversed { format!("{way} · {}", self.reversed_mark()) } else { way }
    }

    /// What holds for the whole plan and is said with it; before all that the truck is but an example.
    #[must_use]
    pub fn card_notes(&self, card: CardOf<'_>) -> Vec<String> {
        let example = card.is_example.then(|| self.example_export().to_owned());
        let notes = card.plan.notes.iter().map(|note| self.note_at(*note, |metres| self.at(card, metres)));
        example.into_iter().chain(notes).collect()
    }

    /// Where no safe speed was found: what is read first, and for which descents.
    #[must_use]
    pub fn card_stop(&self, card: CardOf<'_>) -> Option<[String; 2]> {
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

    /// The texts of the card, for which room is to be found.
    #[must_use]
    pub fn card_texts(&self, card: CardOf<'_>) -> Texts {
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
    #[must_use]
    pub fn card_small(&self) -> String {
        let unread = self.unread().map(|unread| format!(" {unread}"));
        format!("{}{}", self.card_cautions(), unread.unwrap_or_default())
    }

    /// All that is to know of a descent; where no safe speed was found, that stands before it.
    #[must_use]
    pub fn card_known(&self, card: CardOf<'_>, descent: &Descent) -> String {
        let large = usize::from(descent.choice.advice().is_none());
        let known = card.know(descent);
        let told: Vec<String> = known.iter().skip(large).map(|it| self.card_know(card, it)).collect();
        told.join(" ")
    }

    /// Truck and day in one line.
    #[must_use]
    pub fn card_facts(&self, card: CardOf<'_>) -> String {
        let (day, units) = (card.day, card.units);
        self.facts_of(
            &format::mass(card.truck.gross_mass_kg, units),
            self.retarder(card.truck.retarder.kind()),
            self.surface(day.surface),
            self.load(day.load),
            &format::entered_temperature(day.air_c, units),
            &format::entered_temperature(day.brakes_at_start_c, units),
        )
    }

    /// From and to of a descent, in kilometres and in miles.
    #[must_use]
    pub fn card_span(&self, card: CardOf<'_>, descent: &Descent) -> [String; 2] {
        self.both_spans(card, descent.crest.0, descent.foot.0)
    }

    /// From and to of a stretch, m from the start, in both.
    #[must_use]
    pub fn both_spans(&self, card: CardOf<'_>, from_m: f64, to_m: f64) -> [String; 2] {
        let [from, to] = [from_m, to_m].map(|it| card.marker.at(it));
        [span("km", from, to, Units::Metric), span(self.mile(), from, to, Units::Imperial)]
    }

    /// A place by what stands on the markers: “km 12.4 (mile 7.7)”.
    #[must_use]
    pub fn at(&self, card: CardOf<'_>, metres: f64) -> String {
        let at = card.marker.at(metres);
        let [km, miles] = [Units::Metric, Units::Imperial].map(|units| format::distance_number(at, units));
        format!("km\u{a0}{km} ({}\u{a0}{miles})", self.mile())
    }

    /// By which place a gear is in, or from which it may be.
    #[must_use]
    pub fn card_change(&self, card: CardOf<'_>, change: LegChange) -> String {
        self.by_place(change.how, &self.at(card, change.at.0))
    }

    /// Mean grade, and the even grade that the gear is chosen for, with the length that asks for most.
    #[must_use]
    pub fn card_grade(&self, descent: &Descent, units: Units) -> [String; 2] {
        let sustained = descent.sustained;
        let (grade, length) = (format::grade(sustained.grade.0), format::length(sustained.length.0, units));
        [format::grade(descent.mean.0), self.card_asks(&grade, &length)]
    }

    /// The hold speed: number, unit, and what stands below it.
    #[must_use]
    pub fn card_hold(&self, speed: f64, engine_speed: f64, units: Units) -> [String; 3] {
        let below =
            format!("{} · {}", format::hold_speed(speed, units.other()), format::engine_speed(engine_speed));
        [format::hold_number(speed, units), units.speed().to_owned(), below]
    }

    /// One thing to know of a descent.
    #[must_use]
    pub fn card_know(&self, card: CardOf<'_>, know: &Know) -> String {
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

    /// Items of the list before the crest.
    #[must_use]
    pub fn before_crest(&self, card: CardOf<'_>) -> Vec<String> {
        let stop = card.places_of(PlaceKind::BrakeCheck).next().map_or_else(
            || self.stop_where_allowed().to_owned(),
            |check| self.stop_at_check(&self.at(card, card.metres(check.index))),
        );
        let tried = card.tries_retarder().then(|| self.try_retarder().to_owned());
        let gear = card.first_held().map(|(descent, advice)| {
            let (gear, stage, _) = down::first(descent, advice);
            let engaged = match descent.from {
                0 => self.gear_at_start(gear.number(), &self.stage(stage)),
                _ => {
                    let at = self.at(card, descent.crest.0);
                    self.gear_before(gear.number(), stage.is_off(), &self.stage(stage), &at)
                }
            };
            format!("{engaged} {}", self.shifting(down::in_legs(descent)))
        });
        let list = [Some(stop), tried, Some(self.look_ahead().to_owned()), gear];
        list.into_iter().flatten().collect()
    }

    /// What to do in trouble, in order.
    #[must_use]
    pub fn in_trouble(&self, card: CardOf<'_>) -> Vec<String> {
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

    /// The places.
    #[must_use]
    pub fn card_places(&self, card: CardOf<'_>) -> Vec<String> {
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

    /// Name of the card's picture as a file, for a road as recorded or turned around.
    #[must_use]
    pub fn picture_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, self.file_stem(), self.picture_name_ending(reversed))
    }

    /// Name of the file of a list of roads.
    #[must_use]
    pub fn list_name(&self) -> String {
        file_name("", self.list_stem(), self.list_ending())
    }

    /// Name of the file of a comparison, by the road shown.
    #[must_use]
    pub fn compared_name(&self, road: &str) -> String {
        file_name(road, self.file_stem(), self.compared_ending())
    }

    /// Name of the file of rows, for a road as recorded or turned around.
    #[must_use]
    pub fn rows_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, self.file_stem(), self.rows_name_ending(reversed))
    }
}
