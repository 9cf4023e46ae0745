//! The card for the cab as a whole: its rows, its pages, and whose card it is.

use super::card::{Case, LANGUAGES, gentle};
use super::*;
use crate::card::facts::{Beyond, CardOf, Know, Order, Stretch};
use crate::card::sheet::{Row, Sheet};
use crate::marker::Marker;
use solver::day::Surface;
use solver::road::{Span, Unassessed};

#[test]
fn an_example_is_told_where_the_truck_is_asked_for_in_every_language() {
    let ice = Case::of(hill(), true, Surface::Ice, false);
    for language in LANGUAGES {
        assert_eq!(ice.sheet(language, Order::AlongRoad).example, None);
        let card = CardOf { is_example: true, ..ice.card() };
        let example = language.card_sheet(card, "road", Order::AlongRoad).example;
        assert_eq!(example.as_deref(), Some(language.example_export()));
        assert!(language.example_export().ends_with('.'));
    }
}

#[test]
fn the_card_has_every_note_and_every_descent_on_one_of_its_pages() {
    let mut case = Case::of(hill(), true, Surface::Dry, false).repeated(40);
    case.plan.notes = Vec::new();
    let bare = case.sheet(words(), Order::AlongRoad).pages();
    case.plan.notes =
        vec![Note::StagesWithheld(Withheld::Ice), Note::HoldByHand, Note::StartsInDescent, Note::PoorHeights];
    for language in LANGUAGES {
        let sheet = case.sheet(language, Order::AlongRoad);
        assert_eq!(sheet.notes.len(), case.plan.notes.len());
        for (note, text) in case.plan.notes.iter().zip(&sheet.notes) {
            assert_eq!(*text, language.note(*note, Metric));
            assert!(!text.contains(language.enter_brake_heat()), "on paper nothing can be entered: {text}");
        }
        let pages = sheet.pages();
        assert!(pages[0].parts.len() < bare[0].parts.len(), "the notes take room");
        let rows: Vec<usize> = pages.iter().flat_map(|it| &it.parts).map(|it| it.block).collect();
        assert_eq!(rows, (0..40).collect::<Vec<_>>());
        let told: Vec<String> = pages.iter().map(|it| language.card_page_of(&sheet, it)).collect();
        assert!(told[0].contains("1–") && told.iter().any(|it| it.contains("40")), "{told:?}");
    }
}

fn numbers(sheet: &Sheet) -> Vec<usize> {
    let number = |row: &Row| match row {
        Row::Descent(row) => Some(row.number),
        Row::Unknown(_) => None,
    };
    sheet.rows.iter().filter_map(number).collect()
}

#[test]
fn rows_are_in_the_order_of_driving_or_the_worst_first_and_the_hardest_is_marked() {
    let mut case = Case::of(hill(), true, Surface::Dry, false).repeated(5);
    let Choice::Held(advice) = &mut case.plan.descents[3].choice else { panic!("held") };
    advice.verdict = Verdict::NeedsServiceBrakes;
    for language in LANGUAGES {
        let sheet = case.sheet(language, Order::AlongRoad);
        assert_eq!(numbers(&sheet), [1, 2, 3, 4, 5]);
        let worst = numbers(&case.sheet(language, Order::WorstFirst));
        assert_eq!((worst[0], worst.len()), (4, 5));
        let marked = |row: &Row| matches!(row, Row::Descent(row) if row.is_hardest);
        assert_eq!(sheet.rows.iter().position(marked), Some(3));
        let hardest = sheet.hardest.expect("a hardest one");
        assert!(
            hardest.number == 4 && hardest.head.contains('5') && hardest.then.contains(", "),
            "{hardest:?}"
        );
        // Verdicts that differ stand in the rows, and what is alike is said once.
        assert!(!sheet.worked.contains(language.verdict(Verdict::RetarderHolds)), "{}", sheet.worked);
        let alike = Case::of(hill(), true, Surface::Dry, false).repeated(5).sheet(language, Order::AlongRoad);
        assert!(alike.worked.contains(language.verdict(Verdict::RetarderHolds)), "{}", alike.worked);
    }
}

#[test]
fn unknown_stretches_are_rows_in_their_order_and_the_head_says_how_much_they_are() {
    let mut case = Case::of(hill(), true, Surface::Dry, false).repeated(2);
    let (first, second) = (case.plan.descents[0].clone(), case.plan.descents[1].clone());
    let span = |from, to| Span { from, to, why: Unassessed::Step };
    let within = span(first.from + 10, first.from + 20);
    case.road.unassessed = vec![span(0, 20), span(30, 50), within, span(second.to + 10, second.to + 40)];
    let stretches = case.card().stretches(Order::AlongRoad);
    let unknown = |it: &Stretch<'_>| match it {
        Stretch::Unknown(spans) => spans.len(),
        Stretch::Descent(_) => 0,
    };
    assert_eq!(stretches.iter().map(unknown).collect::<Vec<_>>(), [2, 0, 0, 1]);
    let worst = case.card().stretches(Order::WorstFirst);
    assert_eq!(worst.iter().map(unknown).collect::<Vec<_>>(), [0, 0, 3]);
    case.plan.totals.unassessed = Metres(1_600.0);
    for language in LANGUAGES {
        let sheet = case.sheet(language, Order::AlongRoad);
        let Row::Unknown(text) = &sheet.rows[0] else { panic!("{:?}", sheet.rows[0]) };
        assert!(text.contains(&format::span(0.0, case.card().metres(20), Metric)), "{text}");
        let covers = sheet.covers.expect("not all of the road");
        assert!(covers.contains(&format::distance(1_600.0, Metric)), "{covers}");
    }
    case.road.unassessed = (0..40).map(|it| span(2 * it, 2 * it + 1)).collect();
    let first = case.card().stretches(Order::AlongRoad).iter().map(unknown).sum::<usize>();
    let known = case.road.unassessed.iter().filter(|it| it.from >= case.plan.descents[0].from).count();
    assert_eq!(first + known, 40, "each once, however many: those in a descent are told with it");
}

#[test]
fn what_comes_soon_behind_a_foot_is_told_with_it() {
    let case = Case::of(hill(), true, Surface::Dry, false).repeated(2);
    let mut case = case;
    let foot = case.plan.descents[0].foot.0;
    let gear = case.plan.descents[0].legs[0].gear;
    let beyond = |case: &Case| match case.card().know(&case.plan.descents[0]).pop() {
        Some(Know::Foot { beyond, .. }) => beyond,
        other => panic!("{other:?}"),
    };
    let points = case.plan.descents[0].to;
    (case.plan.descents[1].from, case.plan.descents[1].crest) = (points + 25, Metres(foot + 500.0));
    assert_eq!(beyond(&case), Some(Beyond::Crest { number: 2, after_m: 500.0, gear: Some((gear, false)) }));
    for language in LANGUAGES {
        assert!(case.know(language, 0).contains(&language.know_stay(gear.number())));
    }
    let truck = solver::Truck::new(case.truck.clone()).expect("a truck");
    let lower = truck.gears().find(|it| it.number() + 1 == gear.number()).expect("a lower gear");
    case.plan.descents[1].legs[0].gear = lower;
    assert_eq!(beyond(&case), Some(Beyond::Crest { number: 2, after_m: 500.0, gear: Some((lower, true)) }));
    // What is not known comes before it.
    case.road.unassessed = vec![Span { from: points + 10, to: points + 20, why: Unassessed::Step }];
    assert!(matches!(beyond(&case), Some(Beyond::Unknown { .. })));
    case.road.unassessed.clear();
    case.plan.descents[1].crest = Metres(foot + 1_500.0);
    assert_eq!(beyond(&case), None);
}

#[test]
fn the_card_of_one_descent_is_one_page_in_every_language_and_on_ice_two_at_most() {
    let demo = std::fs::read(concat!(env!("CARGO_MANIFEST_DIR"), "/../public/demo.gpx")).expect("a file");
    for surface in [Surface::Dry, Surface::Wet, Surface::Ice] {
        let case = Case::of(demo.clone(), true, surface, false);
        assert_eq!(case.plan.descents.len(), 1);
        for language in LANGUAGES {
            let card = CardOf { is_example: true, ..case.card() };
            let pages = language.card_sheet(card, &case.road.name, Order::AlongRoad).pages();
            // On ice what is said above the rows takes half a page.
            let most = if surface == Surface::Ice { 2 } else { 1 };
            assert!(pages.len() <= most, "{surface:?}, {}: {}", language.tag(), pages.len());
        }
    }
}

#[test]
fn whose_card_it_is_stands_on_it_in_every_language() {
    let dry = Case::of(hill(), true, Surface::Dry, false);
    let bare = Case::of(gentle(), false, Surface::Dry, false);
    for language in LANGUAGES {
        let sheet = dry.sheet(language, Order::AlongRoad);
        let [mass, gears, stages, surface] = &sheet.checks[..] else { panic!("{:?}", sheet.checks) };
        assert!(mass.contains("t (") && mass.contains("lb"), "{mass}");
        assert!(gears.contains(&dry.truck.gears.len().to_string()), "{gears}");
        assert!(stages.contains(&dry.truck.retarder.stage_count().to_string()), "{stages}");
        assert!(surface.contains(language.surface(Surface::Dry)), "{surface}");
        assert_eq!(bare.sheet(language, Order::AlongRoad).checks[2], language.check_no_retarder());
        assert!(sheet.worked.starts_with(&dry.truck.name), "{}", sheet.worked);
        assert!(sheet.know_head.ends_with(language.card_no_marker()), "{}", sheet.know_head);
        let marked = CardOf { marker: Marker { at_start_m: 1e5, counts_down: true }, ..dry.card() };
        let Sheet { about, know_head, .. } = language.card_sheet(marked, "road", Order::AlongRoad);
        assert!(!know_head.contains(language.card_no_marker()), "{know_head}");
        assert!(about.contains(&language.card_marker(&format::place(1e5, Metric), true)), "{about}");
    }
}
