//! Nothing that gets worse makes an answer faster: more mass, a steeper road, rain, hot brakes, a weaker
//! retarder, one more curve. The hold in one gear is compared at every place of a road; for legs the time in
//! all.

use crate::sweep::{at_most, cases};
use solver::day::{Day, Surface};
use solver::plan::{Choice, Plan};
use solver::road::Road;
use solver::truck::Truck;
use tests::cases::Case;
use tests::generate::{Hill, TrueRoad};

/// Cases tried in CI, each with every change.
const USUAL_CASES: u64 = 300;

/// Number of the first case: among the first thousand, these have most known misses.
const FIRST: u64 = 690;

/// A hold may be faster by this, km/h, since holds are whole.
const STEP_KMH: f64 = 1.01;

/// Spacing of the places that are compared, in grid points.
const EVERY: usize = 5;

#[derive(Debug, Clone, Copy)]
enum Change {
    Heavier,
    Steeper,
    Wet,
    HotBrakes,
    Weaker,
    Curve,
}

/// Each change for the worse, with the known shares of cases that are faster somewhere and sooner in all, %.
/// DIFFERENCE: wanted none.
const CHANGES: [(Change, Option<f64>, Option<f64>); 6] = [
    (Change::Heavier, None, Some(0.34)),
    (Change::Steeper, Some(0.34), Some(2.34)),
    (Change::Wet, None, Some(2.3)),
    (Change::Weaker, Some(1.01), Some(3.34)),
    (Change::Curve, None, None),
    (Change::HotBrakes, None, None),
];

impl Change {
    /// The case with this change for the worse; `None` where the change does not apply.
    fn made(self, case: &Case, truth: &TrueRoad, (road, plan): (&Road, &Plan)) -> Option<(Road, Truck, Day)> {
        let (road, truck, day) = (road.clone(), case.truck(), case.day);
        Some(match self {
            Self::Heavier => (road, truck.heavier(1.01)?, day),
            Self::Steeper => {
                let steeper =
                    TrueRoad { alignment: truth.alignment.steeper(0.001), plan: truth.plan.clone() };
                (case.recorded(&steeper), truck, day)
            }
            Self::Wet if day.surface == Surface::Dry => (road, truck, Day { surface: Surface::Wet, ..day }),
            Self::Wet => return None,
            Self::HotBrakes => (road, truck, Day { brakes_at_start_c: day.brakes_at_start_c + 20.0, ..day }),
            Self::Weaker => (road, truck.with_retarding(0.9), day),
            Self::Curve => (with_curve(&road, plan)?, truck, day),
        })
    }
}

/// The road with a curve of 40 m half-way down its first descent, where it has none.
fn with_curve(road: &Road, plan: &Plan) -> Option<Road> {
    let descent = plan.descents.first().filter(|_| road.curves().is_empty())?;
    let at = descent.from.midpoint(descent.to);
    let mut value = serde_json::to_value(road).expect("a road is written");
    let curve =
        serde_json::json!({"from": at, "to": at + 6, "radius_m": 40.0, "turn": "Left", "hairpin": false});
    value["curves"] = serde_json::json!([curve]);
    Some(serde_json::from_value(value).expect("a road is read"))
}

fn planned(road: &Road, truck: &Truck, day: &Day) -> Plan {
    solver::analyse(road, truck, day, &mut |_| true).expect("not stopped").0
}

/// The hold in one gear at a share of the way, km/h: 0 without a safe speed, infinite off descents.
fn hold_at(plan: &Plan, cells: usize, share: f64) -> f64 {
    let point = (share * cells as f64).round() as usize;
    let Some(descent) = plan.descents.iter().find(|it| it.from <= point && point <= it.to) else {
        return f64::INFINITY;
    };
    match &descent.choice {
        Choice::Held(_) => descent.one_gear.expect("one gear stands beside every answer").speed.kmh(),
        Choice::NoSafeSpeed(_) => 0.0,
    }
}

/// By how much the second is faster than the first, where the difference is largest, km/h. The ends of a
/// descent may move by 300 m.
fn faster(one: (&Plan, &Road), other: (&Plan, &Road)) -> f64 {
    let (cells, other_cells) = (one.1.cells(), other.1.cells());
    let ends = (300.0 / one.1.step_m()) as usize;
    let inside =
        |point: usize| one.0.descents.iter().any(|it| it.from + ends <= point && point + ends <= it.to);
    let more = (0..=cells).step_by(EVERY).filter(|point| inside(*point)).map(|point| {
        let share = point as f64 / cells as f64;
        hold_at(other.0, other_cells, share) - hold_at(one.0, cells, share)
    });
    more.fold(f64::NEG_INFINITY, f64::max)
}

#[test]
fn nothing_that_gets_worse_makes_it_faster() {
    let (count, usual) = cases(USUAL_CASES);
    let mut tried = [0_u32; CHANGES.len()];
    let mut misses: [[Vec<(f64, String)>; 2]; CHANGES.len()] = Default::default();
    for number in FIRST..FIRST + count {
        let case = Case::of(number);
        let (truth, truck) = (case.truth(), case.truck());
        let road = case.recorded(&truth);
        let plan = planned(&road, &truck, &case.day);
        for (k, (change, ..)) in CHANGES.into_iter().enumerate() {
            let Some((its_road, its_truck, its_day)) = change.made(&case, &truth, (&road, &plan)) else {
                continue;
            };
            let worse = planned(&its_road, &its_truck, &its_day);
            tried[k] += 1;
            let kmh = faster((&plan, &road), (&worse, &its_road));
            if kmh > STEP_KMH {
                misses[k][0].push((kmh, format!("faster by {kmh:.0} km/h: {}", case.words())));
            }
            // Where the road climbs as well, steeper downhill means less steep uphill.
            if matches!(change, Change::Steeper) && matches!(case.hill, Hill::Random | Hill::Sag) {
                continue;
            }
            let sooner = 100.0 * (1.0 - worse.totals.time.0 / plan.totals.time.0);
            if sooner > 1.0 {
                misses[k][1].push((sooner, format!("sooner by {sooner:.0} %: {}", case.words())));
            }
        }
    }
    for (((change, faster, sooner), misses), tried) in CHANGES.into_iter().zip(misses).zip(tried) {
        for (mut misses, (known, word)) in misses.into_iter().zip([(faster, "faster"), (sooner, "sooner")]) {
            misses.sort_by(|a, b| b.0.total_cmp(&a.0));
            misses.iter().take(3).for_each(|(_, words)| println!("{change:?}: {words}"));
            let share = 100.0 * misses.len() as f64 / f64::from(tried);
            at_most(&format!("{change:?}: {word}, % of {tried}"), share, 0.0, known, usual);
        }
    }
}
