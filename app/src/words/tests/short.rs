//! Short answers: few words, in every language, and on the cautious side.

use super::*;
use ::words::Tongue;
use solver::road::{Curve, Turn};
use solver::study::RampAhead;
use std::collections::BTreeSet;

/// Words without figures and units.
fn word_count(text: &str) -> usize {
    let words =
        text.split(|c: char| c.is_whitespace() || c == '–').filter(|it| it.chars().all(char::is_alphabetic));
    words.filter(|it| !it.is_empty() && !["km", "mi", "t", "min", "mph"].contains(it)).count()
}

fn is_short(text: &str) {
    assert!((1..=5).contains(&text.split(' ').filter(|it| *it != "·").count()), "{text}");
    assert!(word_count(text) <= 5 && !text.ends_with('.') && !text.contains("  "), "{text}");
}

/// The plan of the hill, with its descent, on a day with the service brakes in reserve.
fn hill_plan() -> (Plan, Day) {
    planned(ServiceBrakes::InReserve)
}

#[test]
fn no_short_answer_is_long_in_any_language() {
    let (plan, day) = hill_plan();
    let descent = plan.deciding().expect("a descent");
    let advice = *descent.choice.advice().expect("held");
    let mut none = descent.clone();
    for tongue in Tongue::ALL {
        let w = tongue.words();
        for units in [Metric, Imperial] {
            is_short(&w.short_heavier(descent, units));
            is_short(&w.short_other_mode(descent, &day, units));
            is_short(&w.short_heat(descent, &day, units).expect("held"));
            is_short(&w.short_untouched(descent, units).expect("held"));
        }
        for governs in GOVERNS {
            let mut held = descent.clone();
            held.choice = Choice::Held(solver::plan::Advice { governs, ..advice });
            is_short(w.short_governs(&held, &day));
            none.choice = Choice::NoSafeSpeed(no_safe_speed(governs, descent));
            is_short(w.short_governs(&none, &day));
        }
        assert_eq!(w.short_heat(&none, &day, Metric), None);
        assert_eq!(w.short_untouched(&none, Metric), None);
        assert_eq!(w.short_one_gear(&none), None);
        for (mass, retarding, reserve, cool_to) in [
            (Some(Kilograms(30_460.0)), None, None, None),
            (None, Some(1.2), None, None),
            (None, None, Some(0.07), None),
            (None, None, None, Some(Celsius(82.0))),
            (None, None, None, None),
        ] {
            is_short(&w.short_change(&Change { mass, retarding, reserve, cool_to }, Metric));
        }
    }
}

fn no_safe_speed(because: Governs, descent: &solver::plan::Descent) -> NoSafeSpeed {
    NoSafeSpeed {
        because,
        slowest: MetresPerSecond(3.0),
        gear: descent.hold().gear,
        hottest_after_stop: Celsius(412.0),
        falls_short: None,
    }
}

#[test]
fn each_reason_has_words_of_its_own() {
    let (plan, day) = hill_plan();
    let descent = plan.deciding().expect("a descent");
    for tongue in Tongue::ALL {
        let w = tongue.words();
        let said = GOVERNS.map(|governs| {
            let mut held = descent.clone();
            let advice = *descent.choice.advice().expect("held");
            held.choice = Choice::Held(solver::plan::Advice { governs, ..advice });
            w.short_governs(&held, &day)
        });
        assert_eq!(said.iter().collect::<BTreeSet<_>>().len(), GOVERNS.len(), "{said:?}");
    }
}

#[test]
fn more_mass_is_the_same_only_where_gear_stage_speed_and_verdict_are() {
    let (plan, _) = hill_plan();
    let mut descent = plan.deciding().expect("a descent").clone();
    let advice = *descent.choice.advice().expect("held");
    let heavier = |heavier: Choice| {
        let mut descent = descent.clone();
        descent.heavier = Some(heavier);
        words().short_heavier(&descent, Metric)
    };
    let gear = words().gear(advice.gear);
    let speed = format::hold_speed(advice.speed.0, Metric);
    assert_eq!(heavier(descent.choice), "the same");
    let slower = solver::plan::Advice { speed: MetresPerSecond(20.5 / 3.6), ..advice };
    assert_eq!(heavier(Choice::Held(slower)), format!("{gear} · 20\u{a0}km/h"));
    let worse = solver::plan::Advice { verdict: Verdict::NeedsServiceBrakes, ..advice };
    assert_eq!(heavier(Choice::Held(worse)), format!("{gear} · {speed} · service brakes"));
    let staged = solver::plan::Advice { stage: solver::truck::Stage::OFF, ..advice };
    assert_eq!(heavier(Choice::Held(staged)), format!("{gear} · retarder off · {speed}"));
    let none = Choice::NoSafeSpeed(no_safe_speed(Governs::Heat, &descent));
    assert_eq!(heavier(none), "no safe speed");
    descent.heavier = None;
    assert_eq!(words().short_heavier(&descent, Metric), "mass out of range");
}

#[test]
fn heat_stands_before_its_limit_and_is_rounded_up() {
    let (plan, mut day) = hill_plan();
    day.heat_limit_c = 260.0;
    let mut descent = plan.deciding().expect("a descent").clone();
    let advice = *descent.choice.advice().expect("held");
    descent.choice = Choice::Held(solver::plan::Advice { hottest: Celsius(71.0), ..advice });
    assert_eq!(words().short_heat(&descent, &day, Metric).as_deref(), Some("75 / 260\u{a0}°C"));
    assert_eq!(words().short_heat(&descent, &day, Imperial).as_deref(), Some("160 / 500\u{a0}°F"));
}

#[test]
fn a_lost_retarder_leaves_the_brakes_a_stop_or_nothing() {
    let (crest, foot) = (13_500.0, 16_700.0);
    let lost = |stop_until: Option<f64>, held_from: Option<f64>| Lost {
        stop_until: stop_until.map(Metres),
        held_from: held_from.map(Metres),
        neither_from: None,
        ramps: Vec::<RampAhead>::new(),
    };
    let said = |stop, held| words().short_lost(&lost(stop, held), crest, foot, Metric);
    assert_eq!(said(Some(foot), Some(crest)), "brakes hold it");
    assert_eq!(said(Some(foot), Some(15_000.0)), "stop at once");
    assert_eq!(said(Some(13_800.0), None), "stop before km\u{a0}13.8");
    // Held from somewhere on the way is no help to whoever loses the retarder before.
    assert_eq!(said(None, Some(15_000.0)), "no safe stop");
}

#[test]
fn sure_is_the_smaller_of_held_and_kept() {
    let sure = |held, kept| DescentSureness {
        held,
        kept,
        after_stop_c: (100.0, 200.0),
        fastest: (7.0, 8.0),
        matters: Vec::new(),
    };
    assert_eq!(words().short_sure(&sure(256, 256), 256), "256 of 256");
    assert_eq!(words().short_sure(&sure(240, 251), 256), "240 of 256");
    assert_eq!(words().short_sure(&sure(251, 240), 256), "240 of 256");
}

#[test]
fn curves_are_hairpins_only_where_all_are() {
    let curve = Curve { from: 3, to: 5, radius_m: 12.0, turn: Turn::Left, hairpin: true };
    let slowest = SlowCurve { curve, speed: MetresPerSecond(10.5 / 3.6) };
    let said =
        |count, hairpins| words().short_curves(&Curves { count, hairpins, slowest, at_m: 30.0 }, Metric);
    assert_eq!(said(5, 5), "5 hairpins, 10\u{a0}km/h");
    assert_eq!(said(1, 1), "1 hairpin, 10\u{a0}km/h");
    assert_eq!(said(5, 4), "5 curves, 10\u{a0}km/h");
    assert_eq!(said(1, 0), "1 curve, 10\u{a0}km/h");
}
