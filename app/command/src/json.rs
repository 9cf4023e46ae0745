//! The answer as JSON with stable names.

use crate::sentences;
use serde::Serialize;
use serde_json::{Value, json};
use solver::plan::{Advice, Choice, Descent, Note, Plan, Table, WayDown};
use solver::road::Road;
use solver::units::Joules;

pub(crate) fn pretty(value: &impl Serialize) -> Result<String, String> {
    serde_json::to_string_pretty(value).map(|text| text + "\n").map_err(|e| e.to_string())
}

pub(crate) fn of_road(road: &Road, plan: &Plan) -> Value {
    let quality = road.quality();
    let metre = |point: usize| point as f64 * road.step_m();
    let totals = &plan.totals;
    json!({
        "road": {
            "name": road.name(),
            "length_m": road.length_m(),
            "mean_grade": road.mean_grade(0, road.cells()),
            "steepest_km": road.steepest(0, road.cells(), 1_000.0).map(|(_, grade)| grade),
            "quality": self::quality(road),
            "roughness_before": quality.roughness_before,
            "roughness_after": quality.roughness_after,
            "findings": road.findings().iter().map(sentences::finding).collect::<Vec<_>>(),
            "unassessed": road.unassessed().iter().map(|span| json!({
                "from_m": metre(span.from), "to_m": metre(span.to),
            })).collect::<Vec<_>>(),
        },
        "grades": road.segments().iter().map(|s| json!({
            "from_m": metre(s.from), "to_m": metre(s.to), "grade": s.grade, "plus_minus": s.plus_minus,
        })).collect::<Vec<_>>(),
        "descents": plan.descents.iter().map(|d| of_descent(road, d)).collect::<Vec<_>>(),
        "notes": notes(plan).collect::<Vec<_>>(),
        "totals": {
            "time_s": totals.time.0,
            "fall_m": totals.fall.0,
            "fall_unassessed_m": totals.fall_unassessed.0,
            "unassessed_m": totals.unassessed.0,
            "holding_work_mj": megajoules(totals.holding_work),
            "service_work_mj": megajoules(totals.service_work),
            "hottest_c": totals.hottest.0,
            "hottest_after_stop_c": totals.hottest_after_stop.0,
        },
    })
}

/// How far the heights can be trusted, as it stands in JSON.
pub(crate) fn quality(road: &Road) -> String {
    format!("{:?}", road.quality().class).to_lowercase()
}

/// What is to be known of the whole plan, as it stands in JSON.
pub(crate) fn notes(plan: &Plan) -> impl Iterator<Item = String> {
    plan.notes.iter().map(|note| match note {
        Note::HotElsewhere { at } => format!("HotElsewhere({:.0})", at.0),
        _ => format!("{note:?}"),
    })
}

fn of_descent(road: &Road, descent: &Descent) -> Value {
    let metre = |point: usize| point as f64 * road.step_m();
    let mut value = json!({
        "number": descent.number,
        "crest_m": descent.crest.0,
        "foot_m": descent.foot.0,
        "drop_m": descent.drop.0,
        "mean_grade": descent.mean.0,
        "steepest_km": descent.steepest_km().0,
        "sustained_grade": descent.sustained.grade.0,
        "sustained_length_m": descent.sustained.length.0,
        "brakes_at_crest_c": descent.brakes_at_crest.0,
        "climb_gear": descent.climbs_in.map(|(gear, _)| gear.number()),
        "reliefs": descent.reliefs.iter().map(|relief| json!({
            "from_m": metre(relief.from), "to_m": metre(relief.to),
        })).collect::<Vec<_>>(),
        "legs": descent.legs.iter().map(|leg| json!({
            "from_m": metre(leg.from), "to_m": metre(leg.to), "gear": leg.gear, "stage": leg.stage,
            "hold_kmh": leg.speed.kmh(),
            "change": leg.change.map(|change| json!({
                "at_m": change.at.0, "grade": change.grade.0, "how": change.how,
            })),
        })).collect::<Vec<_>>(),
        "one_gear": descent.one_gear.as_ref().map(of_way),
        "untouched": descent.untouched.as_ref().map(of_way),
        "touches": descent.touches.iter().map(|touch| json!({
            "from_m": touch.from.0, "to_m": touch.to.0, "kelvin": touch.kelvin,
            "gains_kmh": touch.gains.kmh(), "grade": touch.grade.0, "certain": touch.certain,
        })).collect::<Vec<_>>(),
        "in_reserve": of_choice(&descent.in_reserve),
        "snubbing": of_choice(&descent.snubbing),
        "heavier": descent.heavier.as_ref().map(of_choice),
    });
    if let (Value::Object(all), Value::Object(chosen)) = (&mut value, of_choice(&descent.choice)) {
        all.extend(chosen);
    }
    value
}

fn of_way(way: &WayDown) -> Value {
    json!({ "gear": way.gear, "stage": way.stage, "hold_kmh": way.speed.kmh(), "time_s": way.time.0 })
}

fn of_choice(choice: &Choice) -> Value {
    let advice = choice.advice();
    let number = |pick: fn(&Advice) -> f64| advice.map(pick);
    json!({
        "verdict": choice.verdict(),
        "proof": advice.map(|a| a.proof),
        "gear": advice.map(|a| a.gear),
        "stage": advice.map(|a| a.stage),
        "hold_kmh": number(|a| a.speed.kmh()),
        "engine_rpm": number(|a| a.engine_speed.0),
        "margin": number(|a| a.margin).filter(|margin| margin.is_finite()),
        "governs": advice.map(|a| a.governs),
        "hottest_c": number(|a| a.hottest.0),
        "hottest_after_stop_c": number(|a| a.hottest_after_stop.0),
        "service_work_mj": number(|a| megajoules(a.service_work)),
        "holding_work_mj": number(|a| megajoules(a.holding_work)),
        "time_s": number(|a| a.time.0),
        "falls_short": falls_short(choice),
    })
}

/// By how much the retarder falls short where no speed is safe; null where it holds the hill at some speed.
fn falls_short(choice: &Choice) -> Option<Value> {
    let Choice::NoSafeSpeed(none) = choice else { return None };
    let short = none.falls_short?;
    let (holds, asks) = (short.holds.0, short.asks.0);
    Some(json!({ "gear": short.gear, "speed_kmh": short.speed.kmh(), "holds_n": holds, "asks_n": asks }))
}

fn megajoules(work: Joules) -> f64 {
    work.0 / 1e6
}

pub(crate) fn of_table(table: &Table) -> Result<String, String> {
    pretty(&json!({
        "grade": table.grade.0,
        "height_m": table.height.0,
        "rows": table.rows.iter().map(|row| json!({
            "gear": row.gear,
            "slowest_kmh": row.slowest.kmh(),
            "ceiling_kmh": row.ceiling.kmh(),
            "margin_at_ceiling": row.margin_at_ceiling,
            "answers": row.answers,
        })).collect::<Vec<_>>(),
    }))
}
