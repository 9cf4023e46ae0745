//! The smallest cases found for the sweeps' findings: even grades between level road, exact heights.

use crate::sweep::at_most;
use solver::day::{Day, Surface};
use solver::motion::Trip;
use solver::plan::Choice;
use solver::road::Road;
use solver::truck::{Preset, RetarderKind, Truck};
use tests::free_run::held_everywhere;
use tests::generate::{Alignment, Tangent};
use tests::trucks::truck;

/// Stretches: length, m, and grade.
type Stretches = &'static [(f64, f64)];

/// Level road before and behind, m.
const LEVEL_M: (f64, f64) = (600.0, 400.0);

fn tangents(stretches: Stretches) -> Vec<Tangent> {
    let level = |length_m| (length_m, 0.0);
    let all = [level(LEVEL_M.0)].into_iter().chain(stretches.iter().copied()).chain([level(LEVEL_M.1)]);
    all.map(|(length_m, grade)| Tangent { length_m, grade, curve_m: 0.0 }).collect()
}

fn road(stretches: Stretches) -> Road {
    let mut heights = vec![1_000.0];
    for tangent in tangents(stretches) {
        for _ in 0..(tangent.length_m / 10.0).round() as usize {
            heights.push(heights[heights.len() - 1] + 10.0 * tangent.grade);
        }
    }
    Road::from_heights("small", 10.0, heights).expect("heights are sound")
}

fn with(preset: Preset, kind: Option<RetarderKind>) -> Truck {
    let mut spec = preset.spec();
    if let Some(kind) = kind {
        spec.take_retarder(kind);
    }
    truck(spec)
}

/// The hold in one gear, km/h; 0 without a safe speed.
fn kmh(stretches: Stretches, truck: &Truck, day: &Day) -> f64 {
    let (plan, _) = solver::analyse(&road(stretches), truck, day, &mut |_| true).expect("not stopped");
    let descent = plan.descents.first().expect("a hill is a descent");
    match &descent.choice {
        Choice::Held(_) => descent.one_gear.expect("one gear stands beside every answer").speed.kmh(),
        Choice::NoSafeSpeed(_) => 0.0,
    }
}

const WET: Day = Day { surface: Surface::Wet, ..Day::USUAL };
const BOTH: Option<RetarderKind> = Some(RetarderKind::CompressionAndHydrodynamic);

/// 40 t with engine brake and hydrodynamic retarder.
#[test]
fn rain_does_not_make_a_steep_hill_fast() {
    let (truck, hill): (_, Stretches) = (with(Preset::FiveAxle40, BOTH), &[(600.0, -0.11)]);
    let more = kmh(hill, &truck, &WET) - kmh(hill, &truck, &Day::USUAL);
    at_most("600 m of −11 %: faster in the wet, km/h", more, 1.01, None, true);
}

/// 40 t with its own retarder.
#[test]
fn a_little_more_mass_does_not_make_a_steep_foot_fast() {
    let (truck, hill): (_, Stretches) = (with(Preset::FiveAxle40, None), &[(2_000.0, -0.04), (300.0, -0.09)]);
    let heavier = truck.heavier(1.01).expect("in range");
    let more = kmh(hill, &heavier, &Day::USUAL) - kmh(hill, &truck, &Day::USUAL);
    at_most("300 m of −9 % at the foot: faster by mass, km/h", more, 1.01, None, true);
}

/// 62.5 t with a hydrodynamic retarder.
#[test]
fn a_weaker_retarder_does_not_make_a_hill_fast() {
    let (truck, hill): (_, Stretches) =
        (with(Preset::BDouble, Some(RetarderKind::Hydrodynamic)), &[(600.0, -0.07)]);
    let more = kmh(hill, &truck.with_retarding(0.9), &Day::USUAL) - kmh(hill, &truck, &Day::USUAL);
    at_most("600 m of −7 %: faster by less retarding, km/h", more, 1.01, None, true);
}

/// 62.5 t with both.
#[test]
fn a_gear_that_holds_every_metre_is_not_passed_over() {
    let (truck, hill): (_, Stretches) = (with(Preset::BDouble, BOTH), &[(1_000.0, -0.03), (600.0, -0.09)]);
    let (trip, truth) = (Trip { truck: &truck, day: &Day::USUAL }, Alignment::new(1_000.0, &tangents(hill)));
    let end = LEVEL_M.0 + hill.iter().map(|(length, _)| length).sum::<f64>();
    let (_, fast) =
        held_everywhere(trip, &truth, (LEVEL_M.0, end), Day::USUAL.reserve).expect("some speed holds");
    let times = fast.kmh() / kmh(hill, &truck, &Day::USUAL);
    at_most("600 m of −9 % at the foot: holds everywhere, times faster", times, 1.1, None, true);
}
