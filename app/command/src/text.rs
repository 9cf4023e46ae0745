//! The answer as text.

use crate::sentences;
use solver::motion::{Answer, Trip, Unusable};
use solver::plan::{Choice, Descent, Governs, Lanes, Plan, Proof, Table, Totals, WayDown};
use solver::report::gpx::annotated;
use solver::road::Road;
use std::fmt::Write;
use words::format::Units;
use words::{captions, words};

pub(crate) fn of_road(trip: Trip<'_>, road: &Road, plan: &Plan) -> String {
    let mut out = String::new();
    let quality = road.quality();
    let name = if road.name().is_empty() { "road" } else { road.name() };
    let _ = writeln!(
        out,
        "{name}: {:.1} km, {:.0} m down{}; heights {:?} (roughness {:.1} points)",
        road.length_m() / 1e3,
        plan.totals.fall.0,
        unassessed(&plan.totals),
        quality.class,
        quality.roughness_before
    );
    let _ = writeln!(out, "{}, {:.1} t\n", trip.truck.spec().name, trip.truck.mass().0 / 1e3);
    for finding in road.findings() {
        let _ = writeln!(out, "- {}", sentences::finding(finding));
    }
    for note in &plan.notes {
        let _ = writeln!(out, "! {}", words().note(*note, Units::Metric));
    }
    grades(&mut out, road);
    for descent in &plan.descents {
        of_descent(&mut out, descent);
    }
    if plan.descents.is_empty() {
        out.push_str("\nNo descent that needs a gear chosen for it was found.\n");
    }
    let totals = &plan.totals;
    let _ = writeln!(
        out,
        "\nThe whole road: {:.0} min, retarder {:.1} MJ, service brakes {:.1} MJ{}, hottest {:.0} °C, after a hard stop {:.0} °C\n",
        totals.time.0 / 60.0,
        totals.holding_work.0 / 1e6,
        totals.service_work.0 / 1e6,
        if totals.unassessed.0 > 0.0 { " where it is assessed" } else { "" },
        totals.hottest.0,
        totals.hottest_after_stop.0
    );
    out.push_str(&sentences::caution());
    out
}

/// How much of the fall is not assessed, and over which length.
fn unassessed(totals: &Totals) -> String {
    if totals.unassessed.0 <= 0.0 {
        return String::new();
    }
    let (fall, length) = (totals.fall_unassessed.0, totals.unassessed.0 / 1e3);
    format!(", {fall:.0} m of it on {length:.1} km that are not assessed")
}

fn grades(out: &mut String, road: &Road) {
    out.push_str("\ngrades      from      to   grade      ±\n");
    for s in road.segments() {
        let km = |point: usize| point as f64 * road.step_m() / 1e3;
        let _ = writeln!(
            out,
            "        {:8.2}{:8.2}{:7.1} %{:5.1} %",
            km(s.from),
            km(s.to),
            s.grade * 100.0,
            s.plus_minus * 100.0
        );
    }
}

fn of_descent(out: &mut String, d: &Descent) {
    let _ = writeln!(
        out,
        "\nDescent {}: km {:.2} to {:.2}, {:.0} m down, mean {:.1} %, steepest km {:.1} %, gear chosen for {:.1} % (asked for over {:.0} m)",
        d.number,
        d.crest.0 / 1e3,
        d.foot.0 / 1e3,
        d.drop.0,
        d.mean.0 * 100.0,
        d.steepest_km().0 * 100.0,
        d.sustained.grade.0 * 100.0,
        d.sustained.length.0
    );
    let _ = writeln!(out, "  as entered:        {}", of_choice(&d.choice));
    for leg in d.legs.iter().filter(|_| d.legs.len() > 1) {
        let by = leg.change.map_or(d.crest.0, |change| change.at.0) / 1e3;
        let grade =
            leg.change.map_or(String::new(), |change| format!(" (on {:.1} %)", change.grade.0 * 100.0));
        let _ = writeln!(
            out,
            "    by km {by:.2}{grade}: gear {}, stage {}, {:.0} km/h",
            leg.gear.number(),
            leg.stage.number(),
            leg.speed.kmh()
        );
    }
    for (told, way) in [("one gear all the way", &d.one_gear), ("nothing for the brakes", &d.untouched)] {
        if let Some(way) = way {
            let _ = writeln!(out, "  {told}: {}", of_way(way));
        }
    }
    for touch in &d.touches {
        let _ = writeln!(
            out,
            "  {} km {:.2} to {:.2}, {:.1} %: {:+.0} km/h without the service brakes, {:.0} K with them",
            if touch.certain { "the brakes touch at" } else { "in doubt:" },
            touch.from.0 / 1e3,
            touch.to.0 / 1e3,
            touch.grade.0 * 100.0,
            touch.gains.kmh(),
            touch.kelvin
        );
    }
    let _ = writeln!(out, "  brakes in reserve: {}", of_choice(&d.in_reserve));
    let _ = writeln!(out, "  snubs allowed:     {}", of_choice(&d.snubbing));
    if let Some(heavier) = &d.heavier {
        let _ = writeln!(out, "  10 % heavier:      {}", of_choice(heavier));
    }
    if let Some((gear, speed)) = d.climbs_in {
        let _ =
            writeln!(out, "  the same hill is climbed in gear {} at {:.0} km/h", gear.number(), speed.kmh());
    }
    if !d.reliefs.is_empty() {
        let _ = writeln!(out, "  {} relief(s) inside: do not shift up there", d.reliefs.len());
    }
}

fn of_way(way: &WayDown) -> String {
    format!(
        "gear {}, stage {}, {:.0} km/h, {:.0} min",
        way.gear.number(),
        way.stage.number(),
        way.speed.kmh(),
        way.time.0 / 60.0
    )
}

fn of_choice(choice: &Choice) -> String {
    match choice {
        Choice::Held(a) => {
            let snub = a.snub.map_or(String::new(), |s| {
                format!(
                    ", snub {:.0} to {:.0} km/h about every {:.0} s",
                    s.from.kmh(),
                    s.to.kmh(),
                    s.on.0 + s.off.0
                )
            });
            format!(
                "gear {}, stage {}, {:.0} km/h, {:.0} 1/min; {}, {} ({:+.0} %), governed by {}; brakes {:.0} °C, after a stop {:.0} °C{snub}",
                a.gear.number(),
                a.stage.number(),
                a.speed.kmh(),
                a.engine_speed.0,
                words().verdict(a.verdict),
                proof(a.proof),
                a.margin * 100.0,
                governs(a.governs),
                a.hottest.0,
                a.hottest_after_stop.0
            )
        }
        Choice::NoSafeSpeed(none) => {
            let short = none.falls_short.map_or_else(String::new, |it| {
                let (holds, asks) = (it.holds.0 / 1e3, it.asks.0 / 1e3);
                format!(
                    "; engine and retarder hold {holds:.1} of {asks:.1} kN at most, at {:.0} km/h",
                    it.speed.kmh()
                )
            });
            format!(
                "no safe speed found, down to {:.0} km/h, because of {}{short}",
                none.slowest.kmh(),
                governs(none.because)
            )
        }
    }
}

fn proof(proof: Proof) -> &'static str {
    match proof {
        Proof::Holds => "rolled down",
        Proof::OnAverage => "on the average",
        Proof::Touches => "the brakes touch",
        Proof::NeedsBrakes => "the brakes are needed",
    }
}

fn governs(governs: Governs) -> &'static str {
    match governs {
        Governs::SpeedLimit => "the speed limit",
        Governs::Posted => "a posted limit",
        Governs::EngineSpeed => "engine speed",
        Governs::Control => "control",
        Governs::Curve => "curves",
        Governs::Grip => "grip",
        Governs::Heat => "brake heat",
    }
}

pub(crate) fn of_table(trip: Trip<'_>, table: &Table) -> String {
    let mut out = String::new();
    let _ = writeln!(
        out,
        "{}, {:.1} t on {:.1} % at {:.0} m",
        trip.truck.spec().name,
        trip.truck.mass().0 / 1e3,
        table.grade.0 * 100.0,
        table.height.0
    );
    if table.grade.0 > 0.0 {
        out.push_str("This grade rises; downhill is written with a minus: -6%.\n");
    }
    out.push_str("gear   km/h from–to   margin   off, then stages\n");
    for row in &table.rows {
        let margin = row.margin_at_ceiling.map_or("–".to_owned(), |m| format!("{:+.0} %", m * 100.0));
        let answers: Vec<String> = row.answers.iter().map(of_answer).collect();
        let _ = writeln!(
            out,
            "{:4}   {:5.1} – {:5.1}  {margin:>7}   {}",
            row.gear.number(),
            row.slowest.kmh(),
            row.ceiling.kmh(),
            answers.join(" | ")
        );
    }
    out.push('\n');
    out.push_str(&sentences::caution());
    out
}

fn of_answer(answer: &Answer) -> String {
    match answer {
        Answer::Settles { speed, engine_speed } => {
            format!("settles at {:.1} ({:.0})", speed.kmh(), engine_speed.0)
        }
        Answer::MoreThanNeeded => "more than needed".to_owned(),
        Answer::Overruns { above: None } => "overruns".to_owned(),
        Answer::Overruns { above: Some(speed) } => format!("overruns above {:.1}", speed.kmh()),
        Answer::NotUsable(Unusable::Slippery) => "not usable: slippery".to_owned(),
        Answer::NotUsable(Unusable::Grip) => "not usable: grip".to_owned(),
        Answer::NotUsable(Unusable::Unlocked) => "not usable: converter open".to_owned(),
        Answer::NotUsable(Unusable::CutOut) => "not usable: cut out".to_owned(),
    }
}

/// The road with its plan as GPX 1.1.
pub(crate) fn as_gpx(road: &Road, plan: &Plan, lanes: &Lanes) -> Option<String> {
    annotated(road, plan, &captions(plan, &lanes.gear, Units::Metric, None))
}
