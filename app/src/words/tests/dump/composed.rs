//! What is put together of messages: of plans, of what was studied, of what the pictures show.

use super::grid::*;
use super::samples::*;
use super::{Dump, say};
use crate::cab::CardOf;
use crate::chart::GradeHere;
use crate::chart::{Bracket, Here, Reading, ReadoutCell};
use crate::tell::Curves;
use crate::words::LANGUAGES;
use solver::HeatStep;
use solver::motion::Answer;
use solver::plan::{Choice, Totals};
use solver::units::{Joules, MetresPerSecond, RevPerMin};

pub(super) fn all(d: &mut Dump) {
    languages(d);
    plans(d);
    cards(d);
    pictures(d);
}

fn languages(d: &mut Dump) {
    d.line("LANGUAGES", &[], &format!("{LANGUAGES:?}"));
    say!(d w colon());
    say!(d w semicolon());
    say!(d w between_ramps());
    say!(d w leads(straight_m in measures(), towards in 0..9, units in units()));
}

fn plans(d: &mut Dump) {
    let (descents, days) = (&descents(), &days());
    say!(d w decides(descent at descents, count in [1, 5], units in units()));
    say!(d w along(descent at descents, units in units()));
    say!(d w chosen_for(descent at descents, units in units()));
    say!(d w touched(descent at descents, units in units()));
    say!(d w touches(descent at descents, units in units()));
    say!(d w legs(descent at descents, step_m in [10.0], units in units()));
    say!(d w governs(descent at descents, day at days, units in units()));
    say!(d w other_mode(descent at descents, day at days, units in units()));
    say!(d w advice(descent at descents, units in units()));
    say!(d w grades(descent at descents, base_m in [100.0, 400.0], units in units()));
    say!(d w climb(descent at descents, units in units()));
    say!(d w at_crest(descent at descents, units in units()));
    say!(d w table_caption(descent at descents, units in units()));
    say!(d w card_grade(descent at descents, units in units()));
    say!(d w mark_crest(descent at descents, units in units()));
    for (number, descent) in descents.iter().enumerate() {
        let asked = [number.to_string()];
        for units in units() {
            let w = d.w();
            let heavier = format!("{:?}", w.heavier(descent.heavier.as_ref(), units));
            d.line("w.heavier", &asked, &heavier);
            d.line("w.choice", &asked, &w.choice(&descent.choice, units));
            d.line("w.verdict_of", &asked, w.verdict_of(&descent.choice));
            let Choice::Held(advice) = &descent.choice else { continue };
            d.line("w.gears_down", &asked, &w.gears_down(descent, advice, units));
            d.line("w.untouched", &asked, &w.untouched(descent, advice, units));
            let one_gear = format!("{:?}", w.one_gear(descent, advice, units));
            d.line("w.one_gear", &asked, &one_gear);
            for leg in &descent.legs {
                d.line("w.mark_leg", &asked, &w.mark_leg(leg, leg.stage, units));
                d.line("w.leg", &asked, &w.leg(leg, units));
            }
            for row in &descent.table.rows {
                for answer in &row.answers {
                    let said = format!("{:?}", w.answer(answer, units));
                    d.line("w.answer", &asked, &said);
                }
            }
        }
    }
    say!(d w why_not_faster(advice at &advices(), day at days, units in units()));
    say!(d w brake_heat(advice at &advices(), day at days, units in units()));
    say!(d w snub(advice at &advices(), units in units()));
    say!(d w in_short(advice at &advices(), units in units()));
    let answers = [
        Answer::Settles { speed: MetresPerSecond(8.0), engine_speed: RevPerMin(1_890.0) },
        Answer::MoreThanNeeded,
        Answer::Overruns { above: None },
        Answer::Overruns { above: Some(MetresPerSecond(8.0)) },
    ];
    say!(d w answer(answer at &answers, units in units()));
    let unusable = unusable().map(Answer::NotUsable);
    say!(d w answer(answer at &unusable, units in units()));
    say!(d w gear(gear in gears()));
    say!(d w stage(stage in stages()));
    say!(d w numbered_stage(number in bytes()));
    say!(d w table_stage(stage in counts()));
    say!(d w short_stage(stage in bytes()));
    for gear in gears() {
        say!(d w mark_change(gear in [gear], stage in stages()));
    }
    say!(d w stage_span(stage in stages(), from_m in [0.0, 1_234.0], to_m in [12_345.0], units in units()));
    say!(d w relief(from_m in [0.0, 1_234.0], to_m in [1_534.0], units in units()));
    say!(d w curves(curves at &curves(), units in units()));
    for case in cases() {
        for (service, crawl) in [(2.1e6, None), (0.0, Some(3.0)), (250e6, Some(8.0))] {
            let totals = Totals {
                service_work: Joules(service),
                crawl: crawl.map(MetresPerSecond),
                ..case.plan.totals
            };
            say!(d w totals(totals at &[totals], units in units()));
            let totals = Totals { holding_work: Joules(1_000e6), ..totals };
            say!(d w totals(totals at &[totals], units in units()));
        }
        for descent in &case.plan.descents {
            let Some(of) = Curves::of(&case.plan, descent, 10.0) else { continue };
            say!(d w curves(curves at &[of], units in units()));
        }
    }
}

fn cards(d: &mut Dump) {
    for (number, case) in cases().iter().enumerate() {
        for units in units() {
            let card = CardOf { units, ..case.card() };
            let w = d.w();
            let asked = [number.to_string()];
            let said = [
                ("w.card_way", format!("{:?}", w.card_way(card))),
                ("w.card_stop", format!("{:?}", w.card_stop(card))),
                ("w.card_notes", format!("{:?}", w.card_notes(card))),
                ("w.card_facts", format!("{:?}", w.card_facts(card))),
                ("w.card_small", w.card_small()),
                ("w.before_crest", format!("{:?}", w.before_crest(card))),
                ("w.in_trouble", format!("{:?}", w.in_trouble(card))),
                ("w.card_places", format!("{:?}", w.card_places(card))),
            ];
            for (name, text) in said {
                d.line(name, &asked, &text);
            }
            for descent in &case.plan.descents {
                d.line("w.card_known", &asked, &w.card_known(card, descent));
                d.line("w.card_span", &asked, &format!("{:?}", w.card_span(card, descent)));
                for leg in &descent.legs {
                    let Some(change) = leg.change else { continue };
                    d.line("w.card_change", &asked, &w.card_change(card, change));
                }
                if let Choice::Held(advice) = &descent.choice {
                    let hold = w.card_hold(advice.speed.0, advice.engine_speed.0, units);
                    d.line("w.card_hold", &asked, &format!("{hold:?}"));
                }
            }
        }
    }
    let case = &cases()[0];
    for know in [
        crate::cab::Know::BeginsUnknown,
        crate::cab::Know::NotAssessed { from_m: 1_234.0, to_m: 2_345.0 },
        crate::cab::Know::Brakes { needed: true, at_m: vec![1_234.0, 2_345.0], more: 0 },
        crate::cab::Know::Brakes { needed: false, at_m: vec![1_234.0], more: 3 },
        crate::cab::Know::InDoubt(solver::units::Grade(-0.0834)),
        crate::cab::Know::Easing { at_m: 1_234.0 },
        crate::cab::Know::SlowCurve { speed: 8.0, at_m: 1_234.0, below_hold: 0 },
        crate::cab::Know::SlowCurve { speed: 8.0, at_m: 1_234.0, below_hold: 3 },
        crate::cab::Know::Posted { speed: 8.34, from_m: 1_234.0, to_m: 2_345.0 },
        crate::cab::Know::Ramp { at_m: 1_234.0 },
        crate::cab::Know::Quiet { at_m: 1_234.0 },
        crate::cab::Know::AtFoot { name: String::new(), at_m: 1_234.0 },
        crate::cab::Know::AtFoot { name: "Kestrel".to_owned(), at_m: 1_234.0 },
        crate::cab::Know::CutShort,
    ] {
        let text = d.w().card_know(case.card(), &know);
        d.line("w.card_know", &[format!("{know:?}")], &text);
    }
}

fn pictures(d: &mut Dump) {
    for reading in Reading::ALL {
        let values = match reading {
            Reading::Heat => 0..4,
            Reading::Grade => 0..8,
            Reading::Gear | Reading::Stage | Reading::Speed => 0..12,
        };
        say!(d w step(reading in [reading], value in values.clone(), units in units()));
    }
    say!(d w lane_unit(lane in lanes(), units in units()));
    say!(d w speed_limit(limit_mps in [8.0, 22.2], units in units()));
    say!(d w heat_limit(limit_c in [260.0], units in units()));
    for verdict in verdicts() {
        let bracket = Bracket { number: 2, from: 10, to: 200, mean: -0.061, asked: -0.072, verdict };
        say!(d w bracket(descent at &[bracket], length_m in [2_345.0], units in units()));
    }
    let nothing = Here {
        at_m: 2_345.0,
        assessed: true,
        height_m: None,
        grade: None,
        gear: None,
        stage: None,
        speed: None,
        engine_speed: None,
        carried: None,
        temperature: None,
        after_stop: None,
        heat: None,
        descent: None,
        next_descent: None,
        bend: None,
        next_place: None,
    };
    let all = Here {
        height_m: Some(1_234.0),
        grade: Some(GradeHere { grade: -0.062, plus_minus: 0.004, over_m: 100.0 }),
        gear: Some(5),
        stage: Some(3),
        speed: Some(9.0),
        engine_speed: Some(1_890.0),
        carried: Some(234e3),
        temperature: Some(123.0),
        after_stop: Some(211.0),
        heat: Some(HeatStep::Warm),
        descent: Some((2, 1_234.0)),
        next_place: Some(("Kestrel".to_owned(), 5.0)),
        ..nothing.clone()
    };
    let heres = [
        nothing.clone(),
        Here { assessed: false, ..nothing.clone() },
        Here {
            stage: Some(0),
            carried: Some(20e3),
            gear: Some(5),
            next_descent: Some((3, 800.0)),
            ..nothing.clone()
        },
        Here { stage: Some(0), heat: Some(HeatStep::OverLimit), ..all.clone() },
        Here {
            next_place: Some(("Kestrel".to_owned(), 1_234.0)),
            next_descent: Some((3, 800.0)),
            ..all.clone()
        },
        all,
    ];
    say!(d w spoken(here at &heres, units in units()));
    say!(d w surroundings(here at &heres, units in units()));
    say!(d w readout_head(cell in ReadoutCell::ALL, here at &heres, units in units()));
    say!(d w readout(cell in ReadoutCell::ALL, here at &heres, units in units()));
}
