//! Words of the card for the cab.

use super::say::{capital, file_name, name_or, plain, span};
use crate::card::facts::{Beyond, CardOf, Know};
use crate::format::{self, Units};
use crate::words::{Piece, Spoken};
use ::words::down;
use solver::plan::Note;
use solver::road::{Place, PlaceKind};

impl Spoken {
    /// Which way it goes: the heights of start and end, and whether that is against the recording.
    #[must_use]
    pub fn card_way(&self, card: CardOf<'_>) -> String {
        let [start, end] = [card.ends_m.0, card.ends_m.1].map(|it| format::height(it, card.units));
        let way = format!("{start} → {end}");
        if card.reversed { format!("{way} · {}", self.reversed_mark()) } else { way }
    }

    /// What holds for the whole plan and is said with it. Of what is not known its own line tells more.
    #[must_use]
    pub fn card_notes(&self, card: CardOf<'_>) -> Vec<String> {
        let notes = card.plan.notes.iter().filter(|note| **note != Note::PartlyUnassessed);
        notes.map(|note| self.note_at(*note, |metres| self.at(card, metres))).collect()
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

    /// The small print, and that no practitioner has read the words where that is so.
    #[must_use]
    pub fn card_small(&self) -> String {
        let unread = self.unread().map(|unread| format!(" {unread}"));
        format!("{}{}", self.card_cautions(), unread.unwrap_or_default())
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

    /// A place in a row: “km 12.4 (7.7)”, kilometres and miles as the head of the column says.
    #[must_use]
    pub fn briefly_at(&self, card: CardOf<'_>, metres: f64) -> String {
        let at = card.marker.at(metres);
        let [km, miles] = [Units::Metric, Units::Imperial].map(|units| format::distance_number(at, units));
        format!("km\u{a0}{km}\u{a0}({miles})")
    }

    /// One thing to know of a descent.
    #[must_use]
    pub fn card_know(&self, card: CardOf<'_>, know: &Know) -> Vec<Piece> {
        let units = card.units;
        let at = |metres: &f64| self.briefly_at(card, *metres);
        let text = match know {
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
            Know::Size { length_m, drop_m } => {
                self.know_size(&format::length(*length_m, units), &format::height(*drop_m, units))
            }
            Know::Steepest { grade, at_m } => return self.know_steepest(&format::grade(grade.0), &at(at_m)),
            Know::Easing { at_m } => self.know_easing(&at(at_m)),
            Know::SlowCurve { speed, at_m, below_hold } => {
                let (slowest, at) = (format::hold_speed(*speed, units), at(at_m));
                match below_hold {
                    None => self.know_slow_curve(&slowest, &at),
                    Some((count, hold)) => {
                        let under = format::hold_speed(*hold, units);
                        return self.know_slow_curves(*count, &under, &slowest, &at);
                    }
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
            Know::Foot { at_m, beyond } => return self.know_end(card, &at(at_m), *beyond),
            Know::CutShort { at_m, gear } => {
                return match gear {
                    Some(gear) => self.know_cut_short(&at(at_m), gear.number()),
                    None => self.know_cut_short_bare(&at(at_m)),
                };
            }
        };
        vec![plain(text)]
    }

    /// Where a descent ends, and what comes soon behind it.
    fn know_end(&self, card: CardOf<'_>, foot: &str, beyond: Option<Beyond>) -> Vec<Piece> {
        let mut told = self.know_foot(foot);
        let length = |metres: f64| format::length(metres, card.units);
        let then = beyond.map(|it| match it {
            Beyond::Unknown { after_m, to_m } => {
                self.know_then_unknown(&length(after_m), &self.briefly_at(card, to_m))
            }
            Beyond::Crest { number, after_m, gear } => {
                let crest = self.know_then_crest(&length(after_m), number);
                let gear = gear.map(|(gear, is_other)| match is_other {
                    true => self.know_then_gear(gear.number()),
                    false => self.know_stay(gear.number()),
                });
                gear.map_or(crest.clone(), |gear| format!("{crest}{}{gear}", self.colon()))
            }
        });
        told.extend(then.map(|then| plain(format!("{}{then}", self.colon()))));
        told
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
            format!("{engaged} {}", self.shifting(card.plan.descents.iter().any(down::in_legs)))
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
    pub fn picture_name(&self, road: &str, truck: &str, reversed: bool) -> String {
        self.saved_name(road, truck, self.picture_name_ending(reversed))
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
    pub fn rows_name(&self, road: &str, truck: &str, reversed: bool) -> String {
        self.saved_name(road, truck, self.rows_name_ending(reversed))
    }

    /// Road and truck, each shortened; a truck without a name is left out.
    fn saved_name(&self, road: &str, truck: &str, ending: &str) -> String {
        let short = |name: &str, letters: usize| name.chars().take(letters).collect::<String>();
        let truck = short(truck, 20);
        let stem = short(road, 36);
        let stem = if stem.is_empty() { self.file_stem().to_owned() } else { stem };
        let stem = if truck.is_empty() { stem } else { format!("{stem}-{truck}") };
        file_name(&stem, self.file_stem(), ending)
    }
}
