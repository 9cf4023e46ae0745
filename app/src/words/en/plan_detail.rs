//! English words of one descent's details and of its table.

use super::minutes;
use crate::format::{self, Units};
use crate::words::Curves;
use crate::words::say::{capital, radius};
use solver::motion::{Answer, Unusable};
use solver::plan::{Choice, Descent, Totals};
use solver::road::{Curve, Turn};
use solver::truck::Stage;

pub(super) fn stage_name(stage: Stage) -> String {
    if stage == Stage::OFF { "retarder off".to_owned() } else { format!("stage {}", stage.number()) }
}

pub(super) fn advice(descent: &Descent, units: Units) -> String {
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
        stage_name(advice.stage),
        format::hold_speed(advice.speed.0, units),
        format::engine_speed(advice.engine_speed.0),
        capital(&minutes(advice.time.0))
    )
}

pub(super) fn grades(descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
    let mean = format!("{} on average.", format::grade(descent.mean.0));
    let steepest = descent.steepest.iter().rev().map(|it| {
        let doubt = if it.length.0 < base_m { "; the heights do not hold over so short a way" } else { "" };
        format!(
            "{} over the steepest {}, from {}{doubt}.",
            format::grade(it.grade.0),
            format::length(it.length.0, units),
            format::distance(it.from.0, units)
        )
    });
    std::iter::once(mean).chain(steepest).collect()
}

pub(super) fn curves(curves: &Curves, units: Units) -> Vec<String> {
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

pub(super) fn climb(descent: &Descent, units: Units) -> String {
    match descent.climbs_in {
        Some((gear, speed)) => format!(
            "At full load it climbs in gear {} at about {}. The gear to go down is often lower.",
            gear.number(),
            format::met_speed(speed.0, units)
        ),
        None => "No gear climbs it at full load.".to_owned(),
    }
}

pub(super) fn caption(descent: &Descent, units: Units) -> String {
    format!(
        "What each gear and stage does on {} at {} above the sea, without throttle and without the service brakes",
        format::grade(descent.table.grade.0),
        format::height(descent.table.height.0, units)
    )
}

pub(super) fn answer(answer: &Answer, units: Units) -> (String, Option<String>) {
    match answer {
        Answer::Settles { speed, engine_speed } => {
            (format::met_speed(speed.0, units), Some(format::engine_speed(engine_speed.0)))
        }
        Answer::MoreThanNeeded => ("more than needed".to_owned(), None),
        Answer::Overruns { above } => {
            ("overruns".to_owned(), above.map(|speed| format!("above {}", format::met_speed(speed.0, units))))
        }
        Answer::NotUsable(why) => ("not usable".to_owned(), Some(unusable(*why).to_owned())),
    }
}

pub(super) fn unusable(why: Unusable) -> &'static str {
    match why {
        Unusable::Slippery => "too slippery",
        Unusable::Grip => "too little grip",
        Unusable::CutOut => "cut out",
        Unusable::Unlocked => "converter open",
    }
}

pub(super) const LEGEND: &[(&str, &str)] = &[
    ("a speed", "the truck settles there, with the engine speed below it"),
    ("more than needed", "it slows down: a weaker stage or a higher gear would do"),
    ("overruns", "it gets faster until the engine turns too fast: use a lower gear or the service brakes"),
    ("not usable", "for the reason given"),
    (
        "in one gear",
        "any speed from where the strongest stage settles up to the top of the gear can be held, by changing stages",
    ),
];

pub(super) fn totals(totals: &Totals, units: Units) -> String {
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

/// Fuel, and the share of the braking work that the service brakes take.
fn fuel(totals: &Totals, units: Units) -> String {
    format!(
        " That is {} of the braking for the service brakes. Fuel: about {}.",
        format::share(totals.service_share()),
        format::fuel(solver::motion::litres_of_fuel(totals.fuel), units)
    )
}
