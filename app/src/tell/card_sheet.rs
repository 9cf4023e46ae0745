//! The card for the cab as texts: what stands on it, row by row.

use super::say::capital;
use crate::card::facts::{CardOf, Know, Order, Stretch};
use crate::card::room::flowing;
use crate::card::sheet::{DescentRow, Hardest, How, Page, Row, Sheet, Way};
use crate::format::{self, Units};
use crate::marker::Marker;
use crate::words::Spoken;
use ::words::down::{self, Told};
use solver::plan::{Advice, ChangeHow, Choice, Descent, Leg, Verdict};

impl Spoken {
    /// The card.
    #[must_use]
    pub fn card_sheet(&self, card: CardOf<'_>, name: &str, order: Order) -> Sheet {
        let alike = self.all_alike_on(card);
        let apart = alike.is_none();
        let row = |stretch: Stretch<'_>| match stretch {
            Stretch::Descent(descent) => Row::Descent(self.descent_row(card, descent, apart)),
            Stretch::Unknown(spans) => Row::Unknown(self.unknown_row(card, &spans)),
        };
        let marked = (card.marker != Marker::NONE).then(|| {
            self.card_marker(&format::place(card.marker.at_start_m, card.units), card.marker.counts_down)
        });
        let [_, _, _, _, know] = self.card_heads();
        let fall = format::height(card.plan.totals.fall.0, card.units);
        let sum = self.card_sum(&self.in_both(card.length_m), &fall, card.plan.descents.len());
        let name_of_truck = Some(card.truck.name.trim().to_owned()).filter(|it| !it.is_empty());
        let worked = name_of_truck.into_iter().chain([self.card_facts(card)]).collect::<Vec<_>>().join(" · ");
        Sheet {
            name: name.to_owned(),
            know_head: match &marked {
                Some(_) => know.to_owned(),
                None => format!("{know} {}", self.card_no_marker()),
            },
            about: [Some(sum), Some(self.card_way(card)), marked]
                .into_iter()
                .flatten()
                .collect::<Vec<_>>()
                .join(" · "),
            covers: self.covers(card),
            worked: alike.map_or(worked.clone(), |alike| format!("{worked}. {alike}")),
            facts: self.card_facts(card),
            your_truck: self.your_truck().to_owned(),
            one_empty: self.one_empty(),
            checks: self.card_checks(card),
            example: card.is_example.then(|| self.example_export().to_owned()),
            stop: self.card_stop(card),
            notes: self.card_notes(card),
            hardest: self.hardest_on(card),
            rows: card.stretches(order).into_iter().map(row).collect(),
            before: self.before_crest(card),
            trouble: self.in_trouble(card),
            places: format!("{}{}{}", self.places_nav(), self.colon(), self.card_places(card).join(" · ")),
            small: self.card_small(),
        }
    }

    /// Which descents stand on a page: “descents 1–6”; empty where none does.
    #[must_use]
    pub fn card_page_of(&self, sheet: &Sheet, page: &Page) -> String {
        let numbers = sheet.numbers_on(page);
        if numbers.is_empty() { String::new() } else { self.card_page_has(numbers.len(), &ranges(&numbers)) }
    }

    /// Of how much of the road the card speaks; `None` where that is all of it.
    fn covers(&self, card: CardOf<'_>) -> Option<String> {
        let totals = &card.plan.totals;
        let unknown = totals.unassessed.0;
        let length = |metres: f64| format::distance(metres, card.units);
        (unknown > 0.0).then(|| {
            let fall = format::height(totals.fall_unassessed.0, card.units);
            self.card_covers(
                &length(card.length_m - unknown),
                &length(card.length_m),
                &length(unknown),
                &fall,
            )
        })
    }

    /// A length in both sets of units: “130.5 km (81.1 mi)”.
    fn in_both(&self, metres: f64) -> String {
        let [km, miles] = [Units::Metric, Units::Imperial].map(|units| format::distance(metres, units));
        format!("{km} ({miles})")
    }

    /// What must be so that it is the driver's card.
    fn card_checks(&self, card: CardOf<'_>) -> Vec<String> {
        let (truck, units) = (card.truck, card.units);
        let [mass, other] = [units, units.other()].map(|units| format::mass(truck.gross_mass_kg, units));
        let stages = match card.tries_retarder() {
            true => self.check_stages(truck.retarder.stage_count()),
            false => self.check_no_retarder().to_owned(),
        };
        vec![
            self.check_mass(&format!("{mass} ({other})")),
            self.check_gears(truck.gears.len(), &format::mark(truck.axle_ratio, 2)),
            stages,
            self.check_surface(self.surface(card.day.surface)),
        ]
    }

    /// Where every descent has the best verdict, in the same words: those.
    fn all_alike_on(&self, card: CardOf<'_>) -> Option<String> {
        let descents = &card.plan.descents;
        let verdict = self.verdict_of(&descents.first()?.choice);
        let alike = |it: &Descent| {
            it.choice.verdict() == Verdict::RetarderHolds && self.verdict_of(&it.choice) == verdict
        };
        descents.iter().all(alike).then(|| self.all_alike(descents.len(), verdict))
    }

    fn hardest_on(&self, card: CardOf<'_>) -> Option<Hardest> {
        let worst = card.plan.worst_first();
        let descent = *worst.first()?;
        let next: Vec<String> = worst.iter().skip(1).take(2).map(|it| it.number.to_string()).collect();
        let way = descent.choice.advice().map(|advice| {
            let slowest = down::slowest(descent, advice);
            let leg = descent.legs.iter().find(|leg| leg.gear == slowest.0 && leg.speed == slowest.2);
            let change = leg.and_then(|leg| leg.change);
            let (how, at) = change.map_or((ChangeHow::Down, descent.crest.0), |it| (it.how, it.at.0));
            Way { change: None, by: self.by(card, how, at), how: self.held(card, advice, slowest) }
        });
        Some(Hardest {
            number: descent.number,
            head: self.hardest_of(worst.len()),
            way,
            steep: self.card_steepest(&format::grade(down::steepest(descent))),
            then: if next.is_empty() { String::new() } else { self.hardest_then(&next.join(", ")) },
        })
    }

    fn descent_row(&self, card: CardOf<'_>, descent: &Descent, with_verdict: bool) -> DescentRow {
        let ways = match &descent.choice {
            Choice::Held(advice) => self.ways(card, descent, advice),
            // The verdict stands where gear, stage and speed would, as large as they.
            Choice::NoSafeSpeed(_) => {
                let by = self.by(card, ChangeHow::Down, descent.crest.0);
                vec![Way { change: None, by, how: How::None(capital(self.no_safe_speed())) }]
            }
        };
        let said =
            |it: &Know| !matches!(it, Know::Verdict(choice) if !with_verdict || choice.advice().is_none());
        let known = card.know(descent);
        let told = |of_holding: bool| {
            let all = known.iter().filter(|it| said(it) && it.is_of_holding() == of_holding);
            flowing(all.map(|it| self.card_know(card, it)))
        };
        let know = [true, false].map(told).into_iter().filter(|it| !it.is_empty()).collect();
        let is_hardest = card.plan.deciding().is_some_and(|it| it.number == descent.number);
        DescentRow { number: descent.number, is_hardest, ways, know }
    }

    fn ways(&self, card: CardOf<'_>, descent: &Descent, advice: &Advice) -> Vec<Way> {
        let first = Way {
            change: None,
            by: self.by(card, ChangeHow::Down, descent.crest.0),
            how: self.held(card, advice, down::first(descent, advice)),
        };
        let further =
            descent.legs.windows(2).filter_map(|pair| self.further(card, advice, &pair[0], &pair[1]));
        std::iter::once(first).chain(further).collect()
    }

    /// A leg behind another.
    fn further(&self, card: CardOf<'_>, advice: &Advice, before: &Leg, leg: &Leg) -> Option<Way> {
        let change = leg.change?;
        let told = match change.how {
            ChangeHow::Down => {
                self.card_change_down(&format::hold_speed(leg.speed.0, card.units), leg.gear.number())
            }
            ChangeHow::Up => self.card_change_up(leg.gear.number(), before.gear.number()),
        };
        Some(Way {
            change: Some(told),
            by: self.by(card, change.how, change.at.0),
            how: self.held(card, advice, (leg.gear, leg.stage, leg.speed)),
        })
    }

    /// By which place a gear is in, or from which it may be: what stands before the distance, the distance in
    /// the units chosen, and the place in the others.
    fn by(&self, card: CardOf<'_>, how: ChangeHow, metres: f64) -> [String; 3] {
        let at = card.marker.at(metres);
        let word = |units: Units| if units == Units::Metric { "km" } else { self.mile() };
        let other = card.units.other();
        [
            self.card_by(how, word(card.units)),
            format::distance_number(at, card.units),
            format!("{}\u{a0}{}", word(other), format::distance_number(at, other)),
        ]
    }

    fn held(&self, card: CardOf<'_>, advice: &Advice, (gear, stage, speed): Told) -> How {
        let units = card.units;
        let turns = card.engine_speed(advice, gear, speed);
        let hold = [
            format::hold_number(speed.0, units),
            units.speed().to_owned(),
            format::hold_speed(speed.0, units.other()),
            format::engine_speed(turns),
        ];
        How::Held { gear: gear.number(), stage: stage.number(), hold }
    }

    fn unknown_row(&self, card: CardOf<'_>, spans: &[(f64, f64)]) -> String {
        let spans = spans.iter().map(|(from_m, to_m)| {
            let [from, to] = [from_m, to_m].map(|it| card.marker.at(*it));
            format::span(from, to, card.units)
        });
        self.card_unknown(&spans.collect::<Vec<_>>().join(", "))
    }
}

/// Numbers in the order given, those that follow each other taken together: “1–6, 9”.
fn ranges(numbers: &[usize]) -> String {
    let runs = numbers.chunk_by(|a, b| a + 1 == *b);
    let told = runs.map(|run| match run {
        [first, _, .., last] => format!("{first}–{last}"),
        [first, last] => format!("{first}, {last}"),
        _ => run.iter().map(usize::to_string).collect(),
    });
    told.collect::<Vec<_>>().join(", ")
}

#[cfg(test)]
mod tests {
    use super::ranges;

    #[test]
    fn numbers_that_follow_each_other_are_taken_together() {
        for (numbers, told) in [
            (&[1, 2, 3, 4][..], "1–4"),
            (&[4], "4"),
            (&[1, 2], "1, 2"),
            (&[9, 11, 4, 5, 6, 1], "9, 11, 4–6, 1"),
            (&[], ""),
        ] {
            assert_eq!(ranges(numbers), told);
        }
    }
}
