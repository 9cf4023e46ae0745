//! What is said is complete, plain, and on the cautious side.

mod card;
mod card_sheet;
mod short;
mod way;

use super::*;
use crate::entries::{Entries, EntryProblem};
use crate::format::{
    self,
    Units::{Imperial, Metric},
};
use crate::lesson::Lesson;
use crate::tell::LessonNote;
use ::tests::plain_roads::hill;
use ::words::Curves;
use solver::day::{Day, ServiceBrakes, Withheld};
use solver::limits::{self, Entry};
use solver::plan::{Change, ChangeHow, Choice, Governs, NoSafeSpeed, Note, Plan, SlowCurve, Verdict};
use solver::study::{Adjustment, DescentSureness, Input, Lost};
use solver::truck::{AxlePlace, BrakeKind, Preset, TruckError};
use solver::units::{Celsius, Joules, Kilograms, Metres, MetresPerSecond};
use workers::desk::Desk;
use workers::message::{Given, Reply, Request, Task};

/// All that can keep a speed down.
const GOVERNS: [Governs; 7] = [
    Governs::SpeedLimit,
    Governs::Posted,
    Governs::EngineSpeed,
    Governs::Control,
    Governs::Curve,
    Governs::Grip,
    Governs::Heat,
];

fn planned(service_brakes: ServiceBrakes) -> (Plan, Day) {
    let entries = Entries::of(Preset::FiveAxle36);
    let day = Day { service_brakes, ..Day::USUAL };
    let task = Task::whole(entries.truck, day);
    let mut plan = None;
    Desk::new().answer(Request::Open(task, Given::joined(vec![false])), vec![hill()], &mut |reply, _| {
        if let Reply::Planned(it) = reply {
            plan = Some(it);
        }
    });
    (plan.expect("a hill gives a plan"), day)
}

#[test]
fn the_deciding_sentence_names_gear_stage_speed_and_place() {
    let (plan, _) = planned(ServiceBrakes::InReserve);
    let descent = plan.deciding().expect("the hill is a descent");
    let advice = descent.choice.advice().expect("a loaded truck crawls down 8 %");
    for (units, unit) in [(Metric, "km/h"), (Imperial, "mph")] {
        let pieces = words().decides(descent, plan.descents.len(), units);
        assert!(joined(&words().decides(descent, 3, units)).starts_with("Hardest descent (1 of 3), from"));
        let text = joined(&pieces);
        assert!(text.contains(&format!("gear {}", advice.gear.number())), "{text}");
        assert!(text.contains(&words().stage(advice.stage)), "{text}");
        assert!(text.contains(unit), "{text}");
        let crest = Piece::Strong(format::place(descent.crest.0, units));
        assert!(pieces.contains(&crest) && !text.contains("Hardest"), "{text}");
        assert!(pieces.contains(&Piece::Strong(crate::format::hold_speed(advice.speed.0, units))));
    }
}

#[test]
fn both_ways_to_use_the_service_brakes_are_told_with_the_minutes_between() {
    for service_brakes in [ServiceBrakes::InReserve, ServiceBrakes::MaySnub] {
        let (plan, day) = planned(service_brakes);
        let descent = plan.deciding().expect("a descent");
        let text = words().other_mode(descent, &day, Metric);
        let same = descent.in_reserve == descent.snubbing;
        assert!(same == text.starts_with("The same"), "{text}");
        assert!(same || text.contains("minute") || text == "No safe speed found", "{text}");
    }
}

#[test]
fn no_safe_speed_says_why() {
    let (mut plan, day) = planned(ServiceBrakes::InReserve);
    let descent = &mut plan.descents[0];
    let gear = descent.hold().gear;
    for because in GOVERNS {
        descent.choice = Choice::NoSafeSpeed(NoSafeSpeed {
            because,
            slowest: MetresPerSecond(2.0),
            gear,
            hottest_after_stop: Celsius(300.0),
            falls_short: None,
        });
        let text = words().governs(descent, &day, Metric);
        assert!(text.contains("another road"), "{text}");
        let sentence = joined(&words().decides(descent, 1, Metric));
        assert!(sentence.contains("no safe speed found"), "{sentence}");
        assert!(sentence.contains("do not take this truck down"), "{sentence}");
        assert_eq!(descent.choice.verdict(), Verdict::NoSafeSpeed);
    }
}

#[test]
fn no_curve_is_held_against_a_speed_that_was_not_given() {
    let (mut plan, _) = planned(ServiceBrakes::InReserve);
    let descent = plan.descents[0].clone();
    let curve = solver::road::Curve {
        from: descent.from + 20,
        to: descent.from + 26,
        turn: solver::road::Turn::Left,
        radius_m: 15.0,
        hairpin: true,
    };
    plan.curves = vec![SlowCurve { curve, speed: MetresPerSecond(3.0) }];
    assert_eq!(Curves::of(&plan, &descent, 10.0).map(|it| it.count), Some(1));
    let none = NoSafeSpeed {
        because: Governs::Control,
        slowest: MetresPerSecond(2.0),
        gear: descent.hold().gear,
        hottest_after_stop: Celsius(300.0),
        falls_short: None,
    };
    let closed = solver::plan::Descent { choice: Choice::NoSafeSpeed(none), ..descent };
    assert_eq!(Curves::of(&plan, &closed, 10.0), None);
}

#[test]
fn a_share_stands_behind_what_it_is_a_share_of_and_a_little_is_not_nothing() {
    let (mut plan, _) = planned(ServiceBrakes::InReserve);
    let totals = &mut plan.totals;
    totals.crawl = Some(MetresPerSecond(3.0));
    for (service, share) in [(2.1e6, "do under 1\u{a0}%"), (0.0, "do 0\u{a0}%"), (250e6, "do 20\u{a0}%")] {
        totals.holding_work = Joules(1_000e6);
        totals.service_work = Joules(service);
        let text = words().totals(totals, Metric);
        assert!(text.contains(share), "{text}");
        let [work, part, climb] =
            ["the service brakes", "The service brakes do", "Slowest"].map(|it| text.find(it));
        assert!(work < part && part < climb && work.is_some(), "{text}");
    }
}

#[test]
fn what_would_change_it_is_told_on_the_cautious_side() {
    let change = Change {
        mass: Some(Kilograms(20_050.0)),
        retarding: Some(1.231),
        reserve: Some(0.049),
        cool_to: Some(Celsius(150.0)),
    };
    let text = words().change(&change, 0.15, Metric).join(" ");
    assert!(text.contains("At 20.0\u{a0}t or less"), "{text}");
    assert!(text.contains("24\u{a0}% more retarding"), "{text}");
    assert!(text.contains("at most 4\u{a0}% in reserve can be kept, not 15\u{a0}%"), "{text}");
    assert!(text.contains("no warmer than 150\u{a0}°C"), "{text}");
    let none = Change { mass: None, retarding: None, reserve: None, cool_to: None };
    assert_eq!(words().change(&none, 0.15, Metric), ["No lighter load would change that."]);
}

#[test]
fn a_lost_retarder_is_told_with_what_is_left() {
    let lost = |stop, held, neither| Lost {
        stop_until: stop,
        held_from: held,
        neither_from: neither,
        ramps: Vec::new(),
    };
    let at = |metres| Some(Metres(metres));
    let text = words().lost(&lost(at(9_000.0), at(1_000.0), None), 1_000.0, 9_000.0, Metric).join(" ");
    assert!(text.contains("from anywhere on the way") && text.contains("to the foot within"), "{text}");
    assert!(text.contains("does not mean that there is none"), "{text}");
    let text = words().lost(&lost(at(4_000.0), None, at(4_000.0)), 1_000.0, 9_000.0, Metric).join(" ");
    assert!(text.contains("as far as km\u{a0}4.0, not beyond"), "{text}");
    assert!(text.contains("could not hold it to the foot: stop."), "{text}");
    assert!(text.contains("From km\u{a0}4.0 on, neither"), "{text}");
}

#[test]
fn out_of_adjustment_is_told_by_stroke_of_drums_and_by_half_of_discs() {
    let of = |brake| Adjustment {
        place: AxlePlace::Trailer,
        brake,
        hottest: Celsius(150.0),
        hottest_after_stop: Celsius(281.0),
        kept: false,
    };
    let text = words().adjustment(&[of(BrakeKind::Drum)], Metric).join(" ");
    for said in ["1¾\u{a0}in (44\u{a0}mm)", "139\u{a0}°C", "198\u{a0}°C", "257\u{a0}°C"] {
        assert!(text.contains(said), "{said}: {text}");
    }
    assert!(!text.contains("half as much") && text.contains("over the limit"), "{text}");
    let text = words().adjustment(&[of(BrakeKind::Disc)], Metric).join(" ");
    assert!(text.contains("half as much") && !text.contains("stroke"), "{text}");
    let both = words().adjustment(&[of(BrakeKind::Drum), of(BrakeKind::Disc)], Metric);
    assert_eq!(both.len(), 4);
}

#[test]
fn how_sure_it_is_is_told_in_runs() {
    let sure = DescentSureness {
        held: 256,
        kept: 12,
        after_stop_c: (101.0, 149.0),
        fastest: (5.0, 6.0),
        matters: vec![(Input::Cooling, 0.8), (Input::Mass, 0.1), (Input::Wind, 0.06)],
    };
    let (plan, _) = planned(ServiceBrakes::InReserve);
    let mut descent = plan.descents[0].clone();
    descent.touches.clear();
    let text = words().sure(&sure, &descent, 256, Metric).join(" ");
    assert!(!text.contains("left out"), "{text}");
    descent.touches = vec![solver::plan::Touch {
        from: solver::units::Metres(2e3),
        to: solver::units::Metres(2.2e3),
        kelvin: 4.0,
        gains: MetresPerSecond(1.5),
        grade: solver::units::Grade(-0.1),
        certain: false,
    }];
    assert!(words().sure_in_short(&sure, &descent, 256).contains("left out"));
    assert!(text.contains("held the speed in all 256.") && text.contains("in 12 of 256."), "{text}");
    assert!(text.contains("between 105\u{a0}°C and 150\u{a0}°C"), "{text}");
    assert!(text.contains("from how much heat the brakes store and give off, then the mass."), "{text}");
}

#[test]
fn a_problem_names_the_range_in_the_units_shown() {
    let problem = EntryProblem::OutOfRange(Entry::GrossMass);
    let text = words().problem(problem, "2", Metric);
    assert_eq!(text, "2 is out of range. Enter a value from 3.5 to 200\u{a0}t.");
    let text = words().problem(problem, "2", Imperial);
    assert_eq!(text, "2 is out of range. Enter a value from 7717 to 440924\u{a0}lb.");
    let text = words().problem(EntryProblem::Truck(TruckError::Gears), "", Metric);
    assert_eq!(text, words().truck_error(&TruckError::Gears, Metric));
    for limit in &limits::ALL {
        let text = words().problem(EntryProblem::NotANumber(limit.entry), "x", Imperial);
        assert!(text.contains("“x” is not a number") && text.contains(" to "), "{text}");
    }
}

#[test]
fn sentences_end_and_are_not_empty() {
    let notes = [
        Note::StagesWithheld(Withheld::Ice),
        Note::StagesWithheld(Withheld::Snow),
        Note::StagesWithheld(Withheld::EmptyInTheWet),
        Note::StagesWithheld(Withheld::NoTrailerInTheWet),
        Note::WetCap,
        Note::HoldByHand,
        Note::ShiftsUpByItself,
        Note::StartsInDescent,
        Note::PartlyUnassessed,
        Note::PoorHeights,
        Note::HotElsewhere { at: Metres(12_340.0) },
        Note::CannotClimb,
    ];
    let others = words().cautions().into_iter().chain([words().parked()]).map(str::to_owned);
    for text in notes.map(|note| words().note(note, Metric)).into_iter().chain(others) {
        assert!(text.len() > 20 && text.ends_with('.'), "{text}");
    }
}

#[test]
fn the_exported_name_is_safe() {
    assert_eq!(words().export_name("Kestrel Gap, eastbound"), "Kestrel-Gap--eastbound-descents.gpx");
    assert_eq!(words().export_name("../../etc"), "etc-descents.gpx");
    assert_eq!(words().export_name(""), "road-descents.gpx");
}

/// What the solver works out would contradict a figure sooner or later.
#[test]
fn lessons_are_whole_sentences_without_figures_in_every_language() {
    let mut said = std::collections::BTreeSet::new();
    for language in IN_ALL {
        for lesson in Lesson::ALL {
            let LessonNote { name, shows, believed, happens, question } = language.lesson(lesson);
            for sentence in [shows, believed, happens] {
                assert!(sentence.len() > 20 && sentence.ends_with('.'), "{sentence}");
            }
            assert!(question.ends_with('?') && !name.is_empty(), "{name}: {question}");
            for text in [name, shows, believed, happens, question] {
                assert!(!text.contains(|c: char| c.is_ascii_digit()), "{text}");
                assert!(said.insert(text), "said twice: {text}");
            }
        }
        for text in [language.lessons_invented(), language.lessons_said_for()] {
            assert!(text.ends_with('.') && said.insert(text), "{text}");
        }
    }
}
