//! What the card for the cab says, in every language.

use super::*;
use crate::card::facts::{CardOf, Know, Order};
use crate::card::sheet::{How, Row, Sheet};
use crate::marker::Marker;
use ::tests::plain_roads::road;
use solver::day::Surface;
use solver::plan::SlowCurve;
use solver::road::{Curve, Span, Turn, Unassessed};
use solver::truck::{Retarder, RetarderKind, TruckSpec};
use workers::message::{RoadChoice, RoadFacts};

pub(super) use crate::words::IN_ALL as LANGUAGES;
/// What each of them calls a retarder that is said to hold, or to be tried.
const RETARDERS: [&str; LANGUAGES.len()] = ["retarder", "ralentizador", "ralentisseur", "Dauerbremse"];

/// A road planned, and what it was planned for.
pub(super) struct Case {
    pub(super) road: RoadFacts,
    pub(super) plan: Plan,
    pub(super) truck: TruckSpec,
    pub(super) day: Day,
}

impl Case {
    pub(super) fn of(file: Vec<u8>, retarder: bool, surface: Surface, reversed: bool) -> Self {
        let mut truck = Entries::of(Preset::FiveAxle36).truck;
        if !retarder {
            truck.retarder = Retarder::None;
        }
        Self::on(Day { surface, ..Day::USUAL }, file, truck, reversed)
    }

    pub(super) fn on(day: Day, file: Vec<u8>, truck: TruckSpec, reversed: bool) -> Self {
        let task = Task { road: RoadChoice { reversed, ..RoadChoice::default() }, truck: truck.clone(), day };
        let (mut facts, mut plan) = (None, None);
        Desk::new().answer(Request::Open(task, Given::joined(vec![false])), vec![file], &mut |reply, _| {
            match reply {
                Reply::Surveyed(it) => facts = Some(*it),
                Reply::Planned(it) => plan = Some(it),
                _ => {}
            }
        });
        Self { road: facts.expect("a road"), plan: plan.expect("a plan"), truck, day }
    }

    pub(super) fn card(&self) -> CardOf<'_> {
        CardOf {
            plan: &self.plan,
            truck: &self.truck,
            is_example: false,
            day: &self.day,
            places: &self.road.places,
            limits: &self.road.limits,
            unassessed: &self.road.unassessed,
            step_m: self.road.step_m,
            length_m: self.road.length_m,
            ends_m: (1_878.0, 313.0),
            reversed: self.road.reversed,
            marker: Marker::NONE,
            units: Metric,
        }
    }

    /// What is to know of a descent.
    pub(super) fn know(&self, language: Spoken, index: usize) -> String {
        let know = self.card().know(&self.plan.descents[index]);
        let told: Vec<String> = know.iter().map(|it| joined(&language.card_know(self.card(), it))).collect();
        told.join(" ")
    }

    pub(super) fn sheet(&self, language: Spoken, order: Order) -> Sheet {
        language.card_sheet(self.card(), &self.road.name, order)
    }

    /// So many descents like the first, one behind the other, each two kilometres on.
    pub(super) fn repeated(mut self, count: usize) -> Self {
        let first = self.plan.descents[0].clone();
        let on = |number: usize| {
            let (points, metres) = ((number - 1) * 100, Metres((number - 1) as f64 * 2_000.0));
            let mut descent = first.clone();
            descent.number = number;
            (descent.from, descent.to) = (first.from + points, first.to + points);
            (descent.crest.0, descent.foot.0) = (first.crest.0 + metres.0, first.foot.0 + metres.0);
            descent
        };
        self.plan.descents = (1..=count).map(on).collect();
        self
    }
}

/// A road that falls 3 % at most, which the engine alone holds.
pub(super) fn gentle() -> Vec<u8> {
    road("Gentle hill", &[(100, 0.0), (150, -0.6), (100, 0.0)])
}

#[test]
fn no_safe_speed_stands_above_the_rows_in_every_language() {
    let ice = Case::of(hill(), true, Surface::Ice, false);
    let dry = Case::of(hill(), true, Surface::Dry, false);
    assert_eq!(ice.card().without_speed(), [1], "ice on 8 % has no safe speed");
    for language in LANGUAGES {
        let [stop, why] = language.card_stop(ice.card()).expect("it is said");
        assert!(stop.chars().filter(|c| c.is_uppercase()).count() >= 4, "{stop}");
        assert!(why.contains(" 1 ") || why.contains(" 1."), "{why}");
        assert!(why.ends_with('.'), "{why}");
        assert_eq!(language.card_stop(dry.card()), None);
        let sheet = ice.sheet(language, Order::AlongRoad);
        let Row::Descent(row) = &sheet.rows[0] else { panic!("{:?}", sheet.rows) };
        assert!(matches!(&row.ways[..], [way] if matches!(&way.how, How::None(_))), "{row:?}");
        assert!(sheet.hardest.is_some_and(|it| it.way.is_none()));
    }
    let mut many = ice.plan.clone();
    many.descents = (1..=20)
        .map(|number| {
            let mut descent = ice.plan.descents[0].clone();
            descent.number = number;
            descent
        })
        .collect();
    let [_, why] = words().card_stop(CardOf { plan: &many, ..ice.card() }).expect("it is said");
    assert!(why.contains("descents 1, 2, ") && why.contains("12, …") && !why.contains("13"), "{why}");
}

/// The road that the page begins with has one descent.
#[test]
fn where_the_engine_alone_holds_the_retarder_is_not_said_to() {
    let bare = Case::of(gentle(), false, Surface::Dry, false);
    let snow = Case::of(gentle(), true, Surface::Snow, false);
    for (case, none) in [(&bare, true), (&snow, false)] {
        assert_eq!(case.truck.retarder.kind() == RetarderKind::None, none);
        assert!(!case.card().tries_retarder());
        let descent = &case.plan.descents[0];
        let advice = descent.choice.advice().expect("3 % is held");
        assert!(advice.stage.is_off(), "{:?}", advice.stage);
        for (language, retarder) in LANGUAGES.into_iter().zip(RETARDERS) {
            let verdict = language.verdict_of(&descent.choice);
            assert!(!verdict.contains(retarder), "{verdict}");
            assert_ne!(verdict, language.verdict(Verdict::RetarderHolds));
            assert!(!case.know(language, 0).contains(retarder), "{}", case.know(language, 0));
            let before = language.before_crest(case.card());
            assert!(!before.iter().any(|it| it == language.try_retarder()), "{before:?}");
            assert!(!language.why_not_faster(advice, &case.day, Metric).contains(retarder));
        }
    }
    let dry = Case::of(hill(), true, Surface::Dry, false);
    for language in LANGUAGES {
        let before = language.before_crest(dry.card());
        assert!(before.iter().any(|it| it == language.try_retarder()), "{before:?}");
        assert_eq!(
            language.verdict_of(&dry.plan.descents[0].choice),
            language.verdict(Verdict::RetarderHolds)
        );
    }
}

/// Control governs in each verdict: the retarder is named only where a stage is called for.
#[test]
fn why_not_faster_names_the_retarder_only_with_a_stage() {
    let bare = Case::of(gentle(), false, Surface::Dry, false);
    let dry = Case::of(hill(), true, Surface::Dry, false);
    for (case, named) in [(&bare, false), (&dry, true)] {
        let mut advice = *case.plan.descents[0].choice.advice().expect("held");
        advice.governs = Governs::Control;
        for verdict in [Verdict::RetarderHolds, Verdict::LittleInReserve, Verdict::NeedsServiceBrakes] {
            advice.verdict = verdict;
            for (language, retarder) in LANGUAGES.into_iter().zip(RETARDERS) {
                let text = language.why_not_faster(&advice, &case.day, Metric);
                assert_eq!(text.contains(retarder), named, "{text}");
            }
        }
    }
}

#[test]
fn the_card_says_which_way_it_goes() {
    let (there, back) = (
        Case::of(hill(), true, Surface::Dry, false),
        Case::of(road("Hill, eastbound", &[(100, 0.0), (250, 1.6), (100, 0.0)]), true, Surface::Dry, true),
    );
    assert_eq!(words().card_way(there.card()), "1,878\u{a0}m → 313\u{a0}m");
    assert_eq!(words().card_way(CardOf { units: Imperial, ..there.card() }), "6,160\u{a0}ft → 1,030\u{a0}ft");
    assert!(back.road.reversed && back.plan.descents.len() == 1);
    for language in LANGUAGES {
        assert!(!language.card_way(there.card()).contains(language.reversed_mark()));
        assert!(language.card_way(back.card()).ends_with(language.reversed_mark()));
        for name in [
            |it: Spoken, road: &str, reversed| it.picture_name(road, "", reversed),
            |it: Spoken, road: &str, reversed| it.rows_name(road, "", reversed),
        ] {
            let names = [false, true].map(|reversed| name(language, "Hill, eastbound", reversed));
            assert!(names[0] != names[1] && names.iter().all(|it| it.starts_with("Hill--eastbound-")));
            let long = name(language, &"long name ".repeat(20), true);
            assert!(long.ends_with(names[1].trim_start_matches("Hill--eastbound")), "{long}");
        }
    }
    assert_eq!(words().rows_name("Hill", "", true), "Hill-reversed-descents.csv");
    assert_eq!(words().rows_name("", "", false), "road-descents.csv");
    assert_eq!(words().picture_name("Hill/road", "Blue: 30 t", false), "Hill-road-Blue--30-t-card.png");
    let long = words().picture_name(&"r".repeat(90), &"t".repeat(90), false);
    assert_eq!(long, format!("{}-{}-card.png", "r".repeat(36), "t".repeat(20)), "both are seen");
    for (case, way) in [(&there, "as recorded"), (&back, "against recording")] {
        let csv = case.card().csv();
        let rows: Vec<&str> = csv.split_terminator("\r\n").collect();
        assert_eq!(rows.len(), 2, "{csv}");
        assert!(rows[0].ends_with(",direction,truck"), "{csv}");
        assert!(rows[1].ends_with(&format!(",{way},as entered")), "{csv}");
        let example = CardOf { is_example: true, ..case.card() }.csv();
        assert!(example.ends_with(&format!(",{way},example truck not yours\r\n")), "{example}");
        assert_eq!(rows[0].split(',').count(), rows[1].split(',').count());
    }
}

#[test]
fn a_descent_at_the_start_is_prepared_before_setting_off() {
    let case = Case::of(road("Steep start", &[(250, -1.6), (100, 0.0)]), true, Surface::Dry, false);
    let later = Case::of(hill(), true, Surface::Dry, false);
    assert_eq!(case.plan.descents[0].from, 0);
    for language in LANGUAGES {
        let advice = case.plan.descents[0].choice.advice().expect("held");
        let before = language.before_crest(case.card());
        let last = before.last().expect("a list");
        let engaged = language.gear_at_start(advice.gear.number(), &language.stage(advice.stage));
        assert_eq!(*last, format!("{engaged} {}", language.shifting(false)));
        assert!(!last.contains("km") && last.contains(&advice.gear.number().to_string()), "{last}");
        let before = language.before_crest(later.card());
        let crest = language.at(later.card(), later.plan.descents[0].crest.0);
        assert!(before.last().is_some_and(|it| it.contains(&crest)), "{before:?}");
        let [start, crest] = [&case, &later].map(|it| language.chosen_for(&it.plan.descents[0], Metric));
        let crest_word = ["crest", "cima", "sommet", "Kuppe"];
        assert!(crest_word.iter().any(|it| crest.contains(it)), "{crest}");
        assert!(!crest_word.iter().any(|it| start.contains(it)), "{start}");
    }
}

#[test]
fn a_row_counts_the_curves_that_ask_for_less_than_the_hold_speed() {
    let mut case = Case::of(hill(), true, Surface::Dry, false);
    let descent = &case.plan.descents[0];
    let hold = descent.choice.advice().expect("held").speed.0;
    let curve = |at: usize, speed: f64| SlowCurve {
        curve: Curve { from: descent.from + at, to: descent.from + at + 5, ..CURVE },
        speed: MetresPerSecond(speed),
    };
    // Two below the hold speed, one above it.
    let curves = vec![curve(20, hold - 1.0), curve(60, hold + 1.0), curve(100, hold - 2.0)];
    case.plan.curves.clone_from(&curves);
    for language in LANGUAGES {
        assert!(case.know(language, 0).contains("2 "), "{}", case.know(language, 0));
    }
    let told = case.know(words(), 0).replace('\u{a0}', " ");
    assert!(told.contains("2 curves under ") && told.contains(", slowest "), "{told}");
    case.plan.curves.truncate(2);
    assert!(case.know(words(), 0).contains("1 curve under "), "{}", case.know(words(), 0));
    // Without a hold speed there is none to be under.
    let ice = Case::of(hill(), true, Surface::Ice, false);
    let descent = &ice.plan.descents[0];
    let slow = Know::SlowCurve { speed: 5.0, at_m: descent.crest.0, below_hold: None };
    assert!(joined(&words().card_know(ice.card(), &slow)).starts_with("Slowest curve "));
}

const CURVE: Curve = Curve { from: 0, to: 1, radius_m: 30.0, turn: Turn::Left, hairpin: false };

/// The hill of the tests without heights on some of its points, 20 m apart.
fn blank_on(points: std::ops::Range<usize>) -> Case {
    let text = String::from_utf8(hill()).expect("text");
    let blank = |(number, point): (usize, &str)| match (point.find("<ele>"), point.find("</ele>")) {
        (Some(from), Some(to)) if points.contains(&number) => {
            format!("{}{}", &point[..from], &point[to + "</ele>".len()..])
        }
        _ => point.to_owned(),
    };
    let file: Vec<String> = text.split("<trkpt").enumerate().map(blank).collect();
    let case = Case::of(file.join("<trkpt").into_bytes(), true, Surface::Dry, false);
    assert_eq!(case.road.unassessed.len(), 1, "{:?}", case.road.unassessed);
    case
}

#[test]
fn what_was_not_assessed_of_a_descent_is_named_with_it() {
    let case = blank_on(170..245);
    assert_eq!(case.plan.descents.len(), 1, "the hill goes on behind it");
    let span = case.road.unassessed[0];
    let know = case.card().know(&case.plan.descents[0]);
    let (from_m, to_m) = (case.card().metres(span.from), case.card().metres(span.to));
    assert_eq!(know[1], Know::NotAssessed { from_m, to_m }, "right behind the verdict");
    for language in LANGUAGES {
        let told = case.know(language, 0);
        assert!(told.contains("km\u{a0}3.") || told.contains("km 3."), "{told}");
    }
    let whole = Case::of(hill(), true, Surface::Dry, false);
    let named = |it: &Know| matches!(it, Know::NotAssessed { .. });
    assert!(!whole.card().know(&whole.plan.descents[0]).iter().any(named));
}

#[test]
fn a_descent_that_begins_or_ends_at_a_blank_stretch_says_what_is_not_known() {
    let mut case = Case::of(hill(), true, Surface::Dry, false);
    let descent = &mut case.plan.descents[0];
    descent.cut_short = true;
    let blank = Span { from: descent.from - 20, to: descent.from, why: Unassessed::Step };
    case.road.unassessed = vec![blank];
    let know = case.card().know(&case.plan.descents[0]);
    assert_eq!(know[1], Know::BeginsUnknown, "right behind the verdict");
    for language in LANGUAGES {
        let told = case.know(language, 0);
        assert!(told.contains(language.know_begins_unknown()), "{told}");
        let gear = case.plan.descents[0].legs[0].gear;
        let at = language.briefly_at(case.card(), case.plan.descents[0].foot.0);
        assert!(told.contains(&joined(&language.know_cut_short(&at, gear.number()))), "{told}");
        assert!(!told.contains(&joined(&language.know_foot(&at))), "it is no foot: {told}");
    }
}

#[test]
fn markers_that_miss_are_told_with_both_ends() {
    for language in LANGUAGES {
        let text = language.markers_miss("10.0 km", "−12.7 km");
        assert!(text.contains("10.0 km") && text.contains("−12.7 km") && text.ends_with('.'), "{text}");
    }
}
