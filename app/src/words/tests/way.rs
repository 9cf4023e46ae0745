//! What is said of legs, of the service brakes on the way, and of other ways down.

use super::card::{Case, LANGUAGES};
use super::*;
use crate::card::facts::{Know, Order};
use crate::card::sheet::Row;
use ::tests::plain_roads::road;
use ::words::down;
use solver::day::Lead;
use solver::plan::{Advice, Descent, Proof, Touch};
use solver::units::Grade;

/// A gentle hill, a stretch nearly level, and a steep one: a descent in two legs.
const GENTLE_THEN_STEEP: [(u32, f64); 5] = [(100, 0.0), (300, -0.8), (50, -0.1), (250, -1.8), (100, 0.0)];

fn two_hills(lead: Lead) -> Case {
    let truck = Entries::of(Preset::FiveAxle36).truck;
    let file = road("Two hills in one", &GENTLE_THEN_STEEP);
    Case::on(Day { lead, ..Day::USUAL }, file, truck, false)
}

fn only(case: &Case) -> &Descent {
    assert_eq!(case.plan.descents.len(), 1);
    &case.plan.descents[0]
}

#[test]
fn the_sentence_begins_at_the_crest_and_names_each_change_by_its_place() {
    let case = two_hills(Lead::Usual);
    let descent = only(&case);
    let [first, second] = descent.legs[..] else { panic!("{:?}", descent.legs) };
    assert!(second.gear < first.gear && second.speed < first.speed, "{:?}", descent.legs);
    let at = format::place(second.change.expect("changed to").at.0, Metric);
    for language in LANGUAGES {
        let text = joined(&language.decides(descent, 1, Metric));
        let places =
            [&language.gear(first.gear), &language.stage(first.stage), &at, &language.gear(second.gear)]
                .map(|it| text.find(it.as_str()));
        assert!(places.windows(2).all(|it| it[0] < it[1]) && places[0].is_some(), "{text}");
        assert!(text.ends_with('.') && !text.contains(".."), "{text}");
        for told in [language.along(descent, Metric), language.legs(descent, 10.0, Metric).join(" ")] {
            assert!(told.contains(&language.gear(second.gear)), "{told}");
        }
        assert!(!language.chosen_for(descent, Metric).contains(&format::place(descent.foot.0, Metric)));
    }
    let text = joined(&words().decides(descent, 1, Metric));
    assert!(text.contains(&format!(". By {at}: gear {}, ", second.gear.number())), "{text}");
}

#[test]
fn a_gear_is_never_said_to_be_in_before_one_may_change_up() {
    let change = |how| LANGUAGES.map(|language| language.by_place(how, "1"));
    for (down, up) in change(ChangeHow::Down).iter().zip(&change(ChangeHow::Up)) {
        assert_ne!(down, up);
    }
    let here = |how| LANGUAGES.map(|language| language.by_here(how));
    assert!(here(ChangeHow::Down).iter().zip(&here(ChangeHow::Up)).all(|(down, up)| down != up));
}

#[test]
fn the_other_ways_stand_beside_with_their_minutes() {
    let case = two_hills(Lead::Usual);
    let descent = only(&case);
    let advice = descent.choice.advice().expect("held");
    let untouched = descent.untouched.expect("the steep part is even");
    for language in LANGUAGES {
        let one = language.one_gear(descent, advice, Metric).expect("legs lead");
        let never = language.untouched(descent, advice, Metric);
        for (text, way) in [(&one, descent.one_gear.expect("one gear holds too")), (&never, untouched)] {
            assert!(text.contains(&way.gear.number().to_string()) && text.ends_with('.'), "{text}");
        }
        let none = Descent { untouched: None, ..descent.clone() };
        assert_eq!(language.untouched(&none, advice, Metric), language.no_untouched());
        // One gear whose own run gains nothing is such a way.
        let one = Descent { legs: none.legs[..1].to_vec(), ..none };
        assert_eq!(advice.proof, Proof::Holds);
        assert_eq!(language.untouched(&one, advice, Metric), language.same_choice());
    }
    assert!(words().untouched(descent, advice, Metric).ends_with(" minutes more."));
}

#[test]
fn a_choice_in_legs_tells_from_which_gear_to_which() {
    let case = two_hills(Lead::Usual);
    let heavier = only(&case).heavier.expect("within range");
    let advice = heavier.advice().expect("held");
    let (fastest, speed) = advice.fastest_leg.expect("in legs, too");
    assert!(fastest > advice.gear && speed > advice.speed, "{advice:?}");
    for language in LANGUAGES {
        let text = language.heavier(Some(&heavier), Metric);
        let told = [
            format!("{}", advice.gear.number()),
            format!("{}", fastest.number()),
            language.stage(advice.stage),
            format::hold_speed(advice.speed.0, Metric),
            format::hold_speed(speed.0, Metric),
        ];
        let mut rest = &text[..];
        for it in &told {
            let at = rest.find(it.as_str()).unwrap_or_else(|| panic!("{it} in {text}"));
            rest = &rest[at + it.len()..];
        }
    }
    let one = two_hills(Lead::OneGear);
    let kept = only(&one).choice.advice().expect("held");
    assert_eq!(kept.fastest_leg, None);
}

#[test]
fn where_one_gear_leads_nothing_is_said_of_legs() {
    for lead in [Lead::OneGear, Lead::Untouched] {
        let case = two_hills(lead);
        let descent = only(&case);
        let advice = descent.choice.advice().expect("held");
        assert_eq!(descent.legs.len(), 1);
        for language in LANGUAGES {
            assert!(language.legs(descent, 10.0, Metric).is_empty());
            assert_eq!(language.one_gear(descent, advice, Metric), None);
            assert!(language.chosen_for(descent, Metric).contains(&format::place(descent.foot.0, Metric)));
            if lead == Lead::Untouched {
                assert_eq!(language.untouched(descent, advice, Metric), language.same_choice());
            }
        }
    }
}

fn touch(from: f64, kelvin: f64, certain: bool) -> Touch {
    let (gains, grade) = (MetresPerSecond(3.0), Grade(-0.09 - kelvin / 1e4));
    Touch { from: Metres(from), to: Metres(from + 200.0), kelvin, gains, grade, certain }
}

fn with(case: &Case, proof: Proof, touches: Vec<Touch>) -> Descent {
    let mut descent = only(case).clone();
    let Choice::Held(advice) = &mut descent.choice else { panic!("held") };
    advice.proof = proof;
    descent.touches = touches;
    descent
}

/// All that the card has of a descent.
fn known(language: Spoken, case: &Case, descent: &Descent) -> String {
    let card = case.card();
    card.know(descent).iter().map(|it| joined(&language.card_know(card, it)) + " ").collect()
}

#[test]
fn the_worst_places_are_named_and_the_rest_is_counted() {
    let case = two_hills(Lead::OneGear);
    let kelvin = [5.0, 40.0, 10.0, 30.0, 20.0];
    let touches = kelvin.iter().zip(1_u32..).map(|(k, km)| touch(f64::from(km) * 1e3, *k, true));
    let descent = with(&case, Proof::NeedsBrakes, touches.collect());
    for language in LANGUAGES {
        let told = language.touched(&descent, Metric);
        let [text] = &told[..] else { panic!("{told:?}") };
        let places = ["2.0 ", "4.0 ", "5.0 "].map(|it| text.find(it));
        assert!(places.windows(2).all(|it| it[0] < it[1]) && places[0].is_some(), "{text}");
        assert!(!text.contains("1.0 ") && !text.contains("3.0 "), "{text}");
        assert!(text.contains(&language.and_more(2)), "{text}");
        assert_eq!(language.touches(&descent, Metric).len(), kelvin.len());
        let card = known(language, &case, &descent);
        assert!(card.contains("km\u{a0}2.0") && !card.contains("km\u{a0}1.0"), "{card}");
    }
}

#[test]
fn what_cannot_be_ruled_out_is_said_and_never_as_if_it_were_clear() {
    let case = two_hills(Lead::OneGear);
    let verdict = |descent: &Descent| words().verdict_of(&descent.choice);
    let clear = with(&case, Proof::Holds, Vec::new());
    assert_eq!(verdict(&clear), words().verdict(Verdict::RetarderHolds));
    assert_eq!(words().touched(&clear, Metric), Vec::<String>::new());
    let doubt = with(&case, Proof::OnAverage, vec![touch(2e3, 5.0, false), touch(4e3, 25.0, false)]);
    let both = with(&case, Proof::Touches, vec![touch(2e3, 5.0, true), touch(4e3, 25.0, false)]);
    for language in LANGUAGES {
        let [of_clear, of_doubt, of_both] = [&clear, &doubt, &both].map(|it| language.verdict_of(&it.choice));
        assert!(of_clear != of_doubt && of_doubt != of_both && of_clear != of_both);
        let told = language.touched(&doubt, Metric);
        assert!(told.len() == 1 && told[0].contains(&format::grade(-0.0925)), "{told:?}");
        assert_eq!(language.touched(&both, Metric).len(), 2);
        let list = language.touches(&both, Metric);
        assert_eq!([0, 1].map(|at: usize| list[at].ends_with(language.doubted())), [false, true]);
        assert!(known(language, &case, &doubt).contains(&format::grade(-0.0925)));
    }
    assert!(words().touched(&doubt, Metric)[0].contains("keep the service brakes ready"));
}

/// Snubs are told by their own sentence, for the whole way.
#[test]
fn where_snubs_are_told_no_places_are() {
    let case = two_hills(Lead::OneGear);
    let mut descent = with(&case, Proof::NeedsBrakes, vec![touch(2e3, 5.0, true)]);
    let Choice::Held(advice) = &mut descent.choice else { panic!("held") };
    let speed = MetresPerSecond(10.0);
    let s = solver::units::Seconds(3.0);
    advice.snub = Some(solver::plan::Snub { from: speed, to: speed, on: s, off: s, count: 4 });
    assert_eq!(down::Touched::of(&descent), None);
    assert!(words().touches(&descent, Metric).is_empty());
}

#[test]
fn the_card_has_a_row_for_each_change_and_the_first_gear_before_the_crest() {
    let case = two_hills(Lead::Usual);
    let card = case.card();
    let descent = only(&case);
    let (first, second) = (descent.legs[0], descent.legs[1]);
    let advice = descent.choice.advice().expect("held");
    for language in LANGUAGES {
        let sheet = case.sheet(language, Order::AlongRoad);
        let [Row::Descent(row)] = &sheet.rows[..] else { panic!("{:?}", sheet.rows) };
        let [at_crest, changed] = &row.ways[..] else { panic!("{:?}", row.ways) };
        assert!(
            at_crest.change.is_none() && changed.by[1] == "8.7" || changed.by[1] == "8,7",
            "{:?}",
            changed.by
        );
        let slowed =
            language.card_change_down(&format::hold_speed(second.speed.0, Metric), second.gear.number());
        assert_eq!(changed.change, Some(slowed));
        assert_eq!(sheet.rows[0].block().pieces.len(), 2);
        let before = language.before_crest(card);
        let last = before.last().expect("a list");
        assert!(last.contains(&first.gear.number().to_string()), "{last}");
        assert!(
            last.ends_with(language.shifting(true)) && !last.contains(language.shifting(false)),
            "{last}"
        );
    }
    let turns = card.engine_speed(advice, first.gear, first.speed);
    assert!((card.engine_speed(advice, advice.gear, advice.speed) - advice.engine_speed.0).abs() < 1e-9);
    assert!((1_000.0..2_400.0).contains(&turns), "{turns}");
    assert!(card.csv().contains(&format!("{}@", second.gear.number())), "{}", card.csv());
}

#[test]
fn the_saved_road_marks_each_change_of_gear() {
    let case = two_hills(Lead::Usual);
    let leg = only(&case).legs[1];
    let marks = format!("{:?}", ::words::captions(&case.plan, &[], Metric, None));
    let gear = leg.gear.number();
    assert!(marks.contains(&format!("\"By here: gear {gear}, ")), "{marks}");
    let example = words().example_export();
    assert!(!marks.contains(example));
    let marks_of_example = format!("{:?}", ::words::captions(&case.plan, &[], Metric, Some(example)));
    assert!(marks_of_example.contains(&format!("caution: \"{example} ")), "{marks_of_example}");
    assert!(marks.contains(&format!("\"Gear {}, ", only(&case).legs[0].gear.number())), "{marks}");
}

/// “Stay in gear” where a row says to change would be told twice, once wrong.
#[test]
fn an_easing_in_which_the_gear_is_changed_is_not_said_to_be_one_to_stay_in() {
    let case = two_hills(Lead::Usual);
    let mut descent = only(&case).clone();
    let (before, leg) = (descent.legs[0], descent.legs[1]);
    let easing = |from, to| solver::plan::Relief { from, to };
    descent.reliefs = vec![easing(300, 330), easing(before.slows_from + 5, leg.from + 20)];
    let told: Vec<usize> = down::easings(&descent).map(|it| it.from).collect();
    assert_eq!(told, [300]);
    let easings = case.card().know(&descent).into_iter().filter(|it| matches!(it, Know::Easing { .. }));
    assert_eq!(easings.count(), 1);
    descent.legs.truncate(1);
    assert_eq!(down::easings(&descent).count(), 2);
}

/// The deciding gear holds; it is at one place that the service brakes are needed.
#[test]
fn a_place_that_needs_the_service_brakes_does_not_make_the_gear_one_that_does_not_hold() {
    let case = two_hills(Lead::OneGear);
    let mut held = *only(&case).choice.advice().expect("held");
    (held.governs, held.proof) = (Governs::Control, Proof::NeedsBrakes);
    let needs = Advice { verdict: Verdict::NeedsServiceBrakes, ..held };
    for language in LANGUAGES {
        let why = |advice: &Advice| language.why_not_faster(advice, &case.day, Metric);
        assert_eq!(why(&needs), why(&held));
    }
}

#[test]
fn untouched_leading_is_named_as_what_keeps_it_slow() {
    let case = two_hills(Lead::Untouched);
    let mut advice = *only(&case).choice.advice().expect("held");
    advice.governs = Governs::Control;
    for language in LANGUAGES {
        let text = language.why_not_faster(&advice, &case.day, Metric);
        assert_eq!(text, language.untouched_governs());
        let usual = language.why_not_faster(&advice, &Day { lead: Lead::Usual, ..case.day }, Metric);
        assert_ne!(text, usual);
    }
}
