//! What is said is complete, plain, and on the cautious side.

use super::*;
use crate::desk::Desk;
use crate::entries::Entries;
use crate::format::Units::{Imperial, Metric};
use crate::message::{Reply, Request, Task};
use crate::test_roads::hill;
use solver::day::{Day, ServiceBrakes};
use solver::limits::{self, Entry};
use solver::plan::{Choice, Governs, NoSafeSpeed, Note, Plan, Verdict};
use solver::truck::{Preset, TruckError};
use solver::units::{Celsius, MetresPerSecond};

fn planned(service_brakes: ServiceBrakes) -> (Plan, Day) {
    let entries = Entries::of(Preset::FiveAxle36);
    let day = Day { service_brakes, ..Day::USUAL };
    let task = Task { course: None, part: None, reversed: false, truck: entries.truck, day };
    let mut plan = None;
    Desk::new().answer(Request::Open(task, vec![false]), vec![hill()], &mut |reply, _| {
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
        let text = joined(&pieces);
        assert!(text.contains(&format!("gear {}", advice.gear.number())), "{text}");
        assert!(text.contains(&words().stage(advice.stage)), "{text}");
        assert!(text.contains(unit), "{text}");
        assert!(text.contains("from the crest at"), "{text}");
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
fn no_safe_speed_says_why_and_what_would_change_it() {
    let (mut plan, day) = planned(ServiceBrakes::InReserve);
    let descent = &mut plan.descents[0];
    for because in [
        Governs::SpeedLimit,
        Governs::EngineSpeed,
        Governs::Control,
        Governs::Curve,
        Governs::Grip,
        Governs::Heat,
    ] {
        for held_at_mass_kg in [Some(20_050.0), None] {
            descent.choice = Choice::NoSafeSpeed(NoSafeSpeed {
                because,
                slowest: MetresPerSecond(2.0),
                hottest_after_stop: Celsius(300.0),
                held_at_mass_kg,
            });
            let text = words().governs(descent, &day, Metric);
            assert!(text.contains("another road"), "{text}");
            assert_eq!(text.contains("At 20.0\u{a0}t or less"), held_at_mass_kg.is_some(), "{text}");
            let sentence = joined(&words().decides(descent, 1, Metric));
            assert!(sentence.contains("no safe speed was found"), "{sentence}");
            assert!(sentence.contains("do not take this truck down"), "{sentence}");
            assert_eq!(descent.choice.verdict(), Verdict::NoSafeSpeed);
        }
    }
}

#[test]
fn a_problem_names_the_range_in_the_units_shown() {
    let problem = EntryProblem::OutOfRange(Entry::GrossMass);
    let text = words().problem(problem, "2", Metric);
    assert_eq!(text, "2 is out of range. Enter a value from 3.5 to 200 t.");
    let text = words().problem(problem, "2", Imperial);
    assert_eq!(text, "2 is out of range. Enter a value from 7717 to 440924 lb.");
    let text = words().problem(EntryProblem::Truck(TruckError::Gears), "", Metric);
    assert_eq!(text, TruckError::Gears.to_string());
    for limit in &limits::ALL {
        let text = words().problem(EntryProblem::NotANumber(limit.entry), "x", Imperial);
        assert!(text.contains("“x” is not a number") && text.contains(" to "), "{text}");
    }
}

#[test]
fn sentences_end_and_are_not_empty() {
    let notes = [
        Note::StagesWithheld,
        Note::StartsInDescent,
        Note::PartlyUnassessed,
        Note::PoorHeights,
        Note::CannotClimb,
    ];
    let sentences = notes.map(|note| words().note(note));
    for text in sentences.iter().chain(words().cautions()).chain([&words().parked()]) {
        assert!(text.len() > 20 && text.ends_with('.'), "{text}");
    }
}

#[test]
fn the_exported_name_is_safe() {
    assert_eq!(words().export_name("Kestrel Gap, eastbound"), "Kestrel-Gap--eastbound-descents.gpx");
    assert_eq!(words().export_name("../../etc"), "etc-descents.gpx");
    assert_eq!(words().export_name(""), "road-descents.gpx");
}
