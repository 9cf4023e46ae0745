//! Roads for the tests of the picture. Invented: the lanes follow simple rules that look like
//! a plan and are not one.

use super::labels::Labels;
use super::layout::Lane;
use super::picture::{Bend, Bracket, Change, Flag, Hold, RoadPicture, Slope};
use crate::format::Units;
use solver::road::PlaceKind;
use solver::{HeatStep, Lanes, Verdict};

/// Stretches: length in grid cells of 10 m, grade in thousandths.
const PASS: [(usize, i16); 12] = [
    (120, 4),
    (360, 42),
    (240, 61),
    (60, 3),
    (430, -58),
    (40, 6),
    (140, -81),
    (320, -56),
    (60, -4),
    (380, -59),
    (180, -8),
    (70, 0),
];

/// A pass of 24 km with three descents, a stretch that was not assessed, and places.
pub(crate) fn pass() -> RoadPicture {
    road(&PASS, 0.0)
}

/// A road of about `points` grid points: the pass, over and over.
pub(crate) fn long(points: usize) -> RoadPicture {
    let rounds = points / PASS.iter().map(|it| it.0).sum::<usize>() + 1;
    let all: Vec<_> = (0..rounds).flat_map(|_| PASS).collect();
    road(&all, 0.35)
}

/// Labels of the length that real ones have.
pub(crate) struct Plain;

impl Labels for Plain {
    fn lane_title(&self, _: Lane) -> &'static str {
        "a lane"
    }
    fn bar(&self, _: &Bracket, [length_m, _]: [f64; 2], _: Option<f64>, _: Units) -> Vec<String> {
        vec![format!("of {length_m:.0} m"), String::from("km")]
    }
    fn change(&self, [from, to]: [u8; 2]) -> String {
        format!("{from} → {to}")
    }
    fn on_grade(&self, grade: f64) -> String {
        format!("on {grade:.2}")
    }
    fn brake_then(&self, leg: &Hold, _: Units) -> String {
        format!("brake, then gear {}", leg.gear)
    }
    fn verdict(&self, _: Verdict) -> &'static str {
        "a verdict"
    }
    fn place(&self, at_m: f64, _: Units) -> String {
        format!("{:.1}", at_m / 1000.0)
    }
    fn mile(&self) -> &'static str {
        "mile"
    }
    fn short_stage(&self, stage: u8) -> String {
        stage.to_string()
    }
    fn heat_step(&self, _: HeatStep) -> &'static str {
        "a step"
    }
    fn not_assessed(&self) -> &'static str {
        "not assessed"
    }
    fn speed_limit(&self, limit_mps: f64, _: Units) -> String {
        format!("limit {limit_mps:.0}")
    }
    fn bend_caps(&self) -> &'static str {
        "in curves"
    }
    fn heat_limit(&self, limit_c: f64, _: Units) -> String {
        format!("limit {limit_c:.0}")
    }
    fn after_stop(&self) -> &'static str {
        "after a stop"
    }
    fn north(&self) -> &'static str {
        "N"
    }
    fn ends(&self) -> [&'static str; 2] {
        ["from", "to"]
    }
}

fn road(stretches: &[(usize, i16)], ripple: f32) -> RoadPicture {
    let step_m = 10.0_f32;
    let (mut heights, mut slopes, mut descents) = (vec![620.0_f32], Vec::new(), Vec::new());
    for (cells, thousandths) in stretches {
        let from = heights.len() - 1;
        let grade = f32::from(*thousandths) / 1000.0;
        for cell in 0..*cells {
            let bump = ripple * ((cell % 7) as f32 - 3.0);
            heights.push(heights[heights.len() - 1] + grade * step_m + bump * 0.1);
        }
        let to = heights.len() - 1;
        slopes.push(Slope { from, to, grade, plus_minus: 0.004 });
        if *thousandths < -40 {
            lengthen(&mut descents, from, to, grade);
        }
    }
    finish(step_m, heights, slopes, descents)
}

/// Adds a descent, or lengthens the one that ends here.
fn lengthen(descents: &mut Vec<Bracket>, from: usize, to: usize, grade: f32) {
    match descents.last_mut() {
        Some(last) if last.to == from => {
            last.to = to;
            let (speed, gear, _) = driven(grade);
            if last.legs.last().is_none_or(|leg| leg.gear != gear) {
                let change = Some(Change::on(grade, false));
                last.legs.push(Hold { from, gear, speed: speed / 3.6, change });
            }
            last.verdict = Verdict::NeedsServiceBrakes;
        }
        Some(_) | None => {
            let number = descents.len() + 1;
            let verdict = Verdict::RetarderHolds;
            let (speed, gear, _) = driven(grade);
            let legs = vec![Hold { from, gear, speed: speed / 3.6, change: None }];
            descents.push(Bracket { number, from, to, mean: grade, verdict, legs });
        }
    }
}

/// What a stretch of one grade is driven with: km/h, gear, stage.
fn driven(grade: f32) -> (f32, u8, u8) {
    let stage = |over: f32| if grade < over { 2 } else { 1 };
    match grade {
        steep if steep < -0.07 => (38.4, 6, 3),
        down if down < -0.04 => (48.0, 7, stage(-0.057)),
        up if up > 0.05 => (72.0 - 500.0 * up, 8, 0),
        up if up > 0.03 => (72.0 - 500.0 * up, 9, 0),
        level => (72.0 - 500.0 * level.max(0.0), 12, 0),
    }
}

/// Brakes that warm on every descent and cool elsewhere, °C.
fn temperatures(grades: &[f32]) -> Vec<f32> {
    let mut warm = 66.0_f32;
    let next = |grade: &f32| {
        warm = (warm + if *grade < -0.055 { 0.45 } else { -0.0015 * (warm - 20.0) }).min(290.0);
        warm
    };
    grades.iter().map(next).collect()
}

fn heat_step(celsius: f32) -> HeatStep {
    match celsius {
        over if over > 232.0 => HeatStep::OverLimit,
        hot if hot > 180.0 => HeatStep::Hot,
        warm if warm > 100.0 => HeatStep::Warm,
        _ => HeatStep::Cool,
    }
}

/// A road that winds: east and north, m.
fn winding(points: usize, step_m: f32) -> (Vec<f32>, Vec<f32>) {
    let turn = |index: usize| (index as f32 / 170.0).sin() * 1.9 + index as f32 / 900.0;
    let (mut east, mut north) = (vec![0.0_f32], vec![0.0_f32]);
    for index in 1..points {
        east.push(east[index - 1] + step_m * turn(index).cos());
        north.push(north[index - 1] + step_m * turn(index).sin());
    }
    (east, north)
}

fn finish(step_m: f32, heights: Vec<f32>, slopes: Vec<Slope>, descents: Vec<Bracket>) -> RoadPicture {
    let points = heights.len();
    let grade_at = |index: usize| slopes.iter().find(|it| index < it.to).map_or(0.0, |it| it.grade);
    let grades: Vec<f32> = (0..points).map(grade_at).collect();
    let assessed: Vec<bool> = (0..points).map(|i| !(1005..1040).contains(&i)).collect();
    let pick = |value: &dyn Fn(usize) -> u8| {
        (0..points).map(|i| if assessed[i] { value(i) } else { Lanes::BLANK }).collect()
    };
    let known = |value: &dyn Fn(usize) -> f32| {
        (0..points).map(|i| if assessed[i] { value(i) } else { f32::NAN }).collect()
    };
    let warm = temperatures(&grades);
    let (east, north) = winding(points, step_m);
    let flag = |at: usize, name: &str, kind| Flag { at, name: name.to_owned(), kind };
    let crest = descents.first().map_or(0, |it| it.from);
    RoadPicture {
        step_m,
        recorded_m: heights.iter().enumerate().map(|(i, h)| h + ((i * 29 % 13) as f32 - 6.0) * 0.3).collect(),
        speed: known(&|i| driven(grades[i]).0 / 3.6),
        engine_speed: known(&|i| 1500.0 + 40.0 * f32::from(driven(grades[i]).1)),
        temperature: known(&|i| warm[i]),
        after_stop: known(&|i| warm[i] + 34.0),
        carried: known(&|_| 0.94),
        gear: pick(&|i| driven(grades[i]).1),
        stage: pick(&|i| driven(grades[i]).2),
        heat: pick(&|i| heat_step(warm[i]) as u8),
        temperature_band: None,
        speed_band: None,
        assessed: assessed.clone().into(),
        east_m: east.into(),
        north_m: north.into(),
        heights_m: heights.into(),
        gears: 12,
        stages: 3,
        heat_limit_c: 260.0,
        start_c: 66.0,
        speed_limit: 80.0 / 3.6,
        bends: vec![
            Bend { from: crest + 40, to: crest + 46, radius_m: 15.0, left: true, hairpin: true, speed: 2.8 },
            Bend {
                from: crest + 90,
                to: crest + 110,
                radius_m: 80.0,
                left: false,
                hairpin: false,
                speed: 9.0,
            },
        ],
        posted: Vec::new(),
        beside: None,
        places: vec![
            flag(crest.saturating_sub(60), "Brake check area", PlaceKind::BrakeCheck),
            flag(crest + 540, "Escape ramp <left>", PlaceKind::EscapeRamp),
            flag(points - 200, "Harrow Mills", PlaceKind::Settlement),
        ],
        slopes,
        hardest: descents.iter().rev().max_by_key(|it| it.verdict).map(|it| it.number),
        descents,
    }
}
