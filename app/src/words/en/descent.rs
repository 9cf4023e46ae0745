//! English words of one descent's details and of its table.

use super::{English, minutes};
use crate::format::{self, Units};
use crate::words::say::{capital, radius};
use crate::words::{Curves, DescentWords, PlanWords};
use solver::motion::{Answer, Unusable};
use solver::plan::{Choice, Descent, Totals};
use solver::road::{Curve, Turn};
use solver::truck::Stage;

impl DescentWords for English {
    fn sign_label(&self) -> &'static str {
        "As a road sign would state it"
    }
    fn sign(&self, grade: &str, length: &str) -> String {
        format!("{grade} for {length}")
    }
    fn advice_label(&self) -> &'static str {
        "How to come down"
    }
    fn advice(&self, descent: &Descent, units: Units) -> String {
        let Choice::Held(advice) = &descent.choice else {
            return "No speed was found that keeps the limits. As entered, do not take this truck down it."
                .to_owned();
        };
        let reserve = if advice.margin < 0.0 {
            format!(
                "At full stage {} of what is needed is missing on the steepest part: the service brakes must help.",
                format::margin(-advice.margin)
            )
        } else {
            format!("At full stage {} more than needed on the steepest part.", format::margin(advice.margin))
        };
        format!(
            "Gear {}, up to {}, {} at {}. {reserve} {} from crest to foot.",
            advice.gear.number(),
            self.stage(advice.stage),
            format::hold_speed(advice.speed.0, units),
            format::engine_speed(advice.engine_speed.0),
            capital(&minutes(advice.time.0))
        )
    }
    fn way_label(&self) -> &'static str {
        "Stages on the way down"
    }
    fn stage_span(&self, stage: Stage, from_m: f64, to_m: f64, units: Units) -> String {
        format!("{}: {}", format::span(from_m, to_m, units), self.stage(stage))
    }
    fn relief_label(&self) -> &'static str {
        "Where it eases"
    }
    fn relief(&self, from_m: f64, to_m: f64, units: Units) -> String {
        format!(
            "{}: flat or rising for {}. Do not shift up: the descent goes on.",
            format::span(from_m, to_m, units),
            format::length(to_m - from_m, units)
        )
    }
    fn grades_label(&self) -> &'static str {
        "How steep"
    }
    fn grades(&self, descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
        let mean = format!("{} on average.", format::grade(descent.mean.0));
        let steepest = descent.steepest.iter().rev().map(|it| {
            let doubt =
                if it.length.0 < base_m { "; the heights do not hold over so short a way" } else { "" };
            format!(
                "{} over the steepest {}, from {}{doubt}.",
                format::grade(it.grade.0),
                format::length(it.length.0, units),
                format::distance(it.from.0, units)
            )
        });
        std::iter::once(mean).chain(steepest).collect()
    }
    fn curves_label(&self) -> &'static str {
        "Curves"
    }
    fn curves(&self, curves: &Curves, units: Units) -> Vec<String> {
        let count = match (curves.count, curves.hairpins) {
            (1, 0) => "1 curve asks for less than this speed".to_owned(),
            (1, _) => "1 hairpin asks for less than this speed".to_owned(),
            (all, 0) => format!("{all} curves ask for less than this speed"),
            (all, 1) => format!("{all} curves ask for less than this speed, 1 of them a hairpin"),
            (all, some) => format!("{all} curves ask for less than this speed, {some} of them hairpins"),
        };
        let slowest = &curves.slowest;
        vec![
            format!("{count}. The slowest: {}.", curve(&slowest.curve, slowest.speed.0, curves.at_m, units)),
            "Radii are estimates from the track; superelevation, sight and surface are not known.".to_owned(),
        ]
    }
    fn climb_label(&self) -> &'static str {
        "Up the same hill"
    }
    fn climb(&self, descent: &Descent, units: Units) -> String {
        match descent.climbs_in {
            Some((gear, speed)) => format!(
                "At full load it climbs in gear {} at about {}. The gear to go down is often lower.",
                gear.number(),
                format::met_speed(speed.0, units)
            ),
            None => "No gear climbs it at full load.".to_owned(),
        }
    }
    fn cut_short(&self) -> &'static str {
        "The descent is cut off where the road can no longer be assessed. How it goes on is not known."
    }
    fn at_crest(&self, descent: &Descent, units: Units) -> String {
        format!(
            "Brakes arrive at the crest with about {}.",
            format::temperature(descent.brakes_at_crest.0, units)
        )
    }
    fn table_caption(&self, descent: &Descent, units: Units) -> String {
        format!(
            "What each gear and stage does on {} at {} above the sea, without throttle and without the service brakes",
            format::grade(descent.table.grade.0),
            format::height(descent.table.height.0, units)
        )
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["gear", "usable speeds", "reserve at the top"]
    }
    fn table_stage(&self, stage: usize) -> String {
        if stage == 0 { "off".to_owned() } else { format!("stage {stage}") }
    }
    fn answer(&self, answer: &Answer, units: Units) -> (String, Option<String>) {
        match answer {
            Answer::Settles { speed, engine_speed } => {
                (format::met_speed(speed.0, units), Some(format::engine_speed(engine_speed.0)))
            }
            Answer::MoreThanNeeded => ("more than needed".to_owned(), None),
            Answer::Overruns { above } => (
                "overruns".to_owned(),
                above.map(|speed| format!("above {}", format::met_speed(speed.0, units))),
            ),
            Answer::NotUsable(why) => ("not usable".to_owned(), Some(self.unusable(*why).to_owned())),
        }
    }
    fn unusable(&self, why: Unusable) -> &'static str {
        match why {
            Unusable::Slippery => "too slippery",
            Unusable::Grip => "too little grip",
            Unusable::CutOut => "cut out",
            Unusable::Unlocked => "converter open",
        }
    }
    fn table_legend(&self) -> &'static [(&'static str, &'static str)] {
        &[
            ("a speed", "the truck settles there, with the engine speed below it"),
            ("more than needed", "it slows down: a weaker stage or a higher gear would do"),
            (
                "overruns",
                "it gets faster until the engine turns too fast: use a lower gear or the service brakes",
            ),
            ("not usable", "for the reason given"),
            (
                "in one gear",
                "any speed from where the strongest stage settles up to the top of the gear can be held, by changing stages",
            ),
        ]
    }
    fn table_chosen(&self) -> &'static str {
        "advised"
    }
    fn totals(&self, totals: &Totals, units: Units) -> String {
        let crawl = totals.crawl.map_or_else(String::new, |speed| {
            format!(" Slowest on a climb: about {}.", format::met_speed(speed.0, units))
        });
        format!(
            "Whole road: {}, {} down. Retarder and engine take {}, the service brakes {}.{crawl}",
            minutes(totals.time.0),
            format::height(totals.fall.0, units),
            format::work(totals.holding_work.0),
            format::work(totals.service_work.0)
        ) + &fuel(totals, units)
    }
}

fn curve(curve: &Curve, speed: f64, at_m: f64, units: Units) -> String {
    format!(
        "at most {} at {}, {}, radius about {}",
        format::hold_speed(speed, units),
        format::distance(at_m, units),
        side(curve.turn == Turn::Left),
        radius(curve.radius_m, units)
    )
}

pub(super) fn side(left: bool) -> &'static str {
    if left { "to the left" } else { "to the right" }
}

/// Fuel, and the share of the braking work that the service brakes take.
fn fuel(totals: &Totals, units: Units) -> String {
    format!(
        " That is {} of the braking for the service brakes. Fuel: about {}.",
        format::share(totals.service_share()),
        format::fuel(solver::motion::litres_of_fuel(totals.fuel), units)
    )
}
