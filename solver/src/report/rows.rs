//! A plan as flat rows that serialise: for tables of many roads.

use crate::plan::{Choice, Descent, Governs, Leg, Plan, Proof, Verdict};
use crate::truck::{Gear, Stage};
use serde::Serialize;

/// One descent. Where no speed is safe gear, stage and speeds are `None`.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[non_exhaustive]
pub struct DescentRow {
    /// Number in road order, from 1.
    pub descent: usize,
    /// Distance of the crest from the start of the road, m.
    pub crest_m: f64,
    /// Distance of the foot, m.
    pub foot_m: f64,
    /// Height lost, m.
    pub drop_m: f64,
    /// Mean grade, negative.
    pub mean_grade: f64,
    /// Steepest mean grade over a kilometre, negative.
    pub steepest_km: f64,
    /// The verdict.
    pub verdict: Verdict,
    /// What the roll down the recorded road shows for this way; `None` without a safe speed.
    pub proof: Option<Proof>,
    /// Gear of the slowest leg.
    pub gear: Option<Gear>,
    /// Stage of the slowest leg.
    pub stage: Option<Stage>,
    /// Speed of the slowest leg, km/h.
    pub hold_kmh: Option<f64>,
    /// What keeps the speed from being higher.
    pub governs: Governs,
    /// Hottest brakes after one hard stop, °C.
    pub hottest_after_stop_c: f64,
    /// From crest to foot, s.
    pub time_s: Option<f64>,
    /// Number of legs: 1 where one gear is kept.
    pub legs: usize,
    /// Number of stretches on which the service brakes are needed.
    pub touches: usize,
}

/// One leg of a descent.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[non_exhaustive]
pub struct LegRow {
    /// Number of the descent, from 1.
    pub descent: usize,
    /// Number of the leg in it, from 1.
    pub leg: usize,
    /// Where it begins, m from the start of the road.
    pub from_m: f64,
    /// Where it ends, m.
    pub to_m: f64,
    /// Gear.
    pub gear: Gear,
    /// Stage.
    pub stage: Stage,
    /// Speed, km/h.
    pub hold_kmh: f64,
}

/// One row for each descent, in road order.
///
/// ```
/// use solver::report::rows;
/// use solver::{Day, Preset, Road, Truck, analyse};
///
/// let truck = Truck::new(Preset::FiveAxle36.spec())?;
/// let heights = (0..=600).map(|k| 900.0 - 0.6 * f64::from((k - 100_i32).clamp(0, 400))).collect();
/// let road = Road::from_heights("hill", 10.0, heights)?;
/// let (plan, _) = analyse(&road, &truck, &Day::USUAL, &mut |_| true).expect("nothing stops it");
/// let rows = rows::descents(&plan);
/// assert!(rows.len() == 1 && rows[0].gear.is_some());
/// # Ok::<(), solver::Error>(())
/// ```
#[must_use]
pub fn descents(plan: &Plan) -> Vec<DescentRow> {
    plan.descents.iter().map(row).collect()
}

/// One row for each leg, in road order; `step_m` is the step of the road's grid.
#[must_use]
pub fn legs(plan: &Plan, step_m: f64) -> Vec<LegRow> {
    let of = |descent: &Descent| {
        let number = descent.number;
        let one = move |(index, leg): (usize, &Leg)| LegRow {
            descent: number,
            leg: index + 1,
            from_m: leg.from as f64 * step_m,
            to_m: leg.to as f64 * step_m,
            gear: leg.gear,
            stage: leg.stage,
            hold_kmh: leg.speed.kmh(),
        };
        descent.legs.iter().enumerate().map(one).collect::<Vec<_>>()
    };
    plan.descents.iter().flat_map(of).collect()
}

fn row(descent: &Descent) -> DescentRow {
    let advice = descent.choice.advice();
    let (governs, after_stop) = match &descent.choice {
        Choice::Held(advice) => (advice.governs, advice.hottest_after_stop),
        Choice::NoSafeSpeed(none) => (none.because, none.hottest_after_stop),
    };
    DescentRow {
        descent: descent.number,
        crest_m: descent.crest.0,
        foot_m: descent.foot.0,
        drop_m: descent.drop.0,
        mean_grade: descent.mean.0,
        steepest_km: descent.steepest_km().0,
        verdict: descent.choice.verdict(),
        proof: advice.map(|it| it.proof),
        gear: advice.map(|it| it.gear),
        stage: advice.map(|it| it.stage),
        hold_kmh: advice.map(|it| it.speed.kmh()),
        governs,
        hottest_after_stop_c: after_stop.0,
        time_s: advice.map(|it| it.time.0),
        legs: descent.legs.len(),
        touches: descent.touches.len(),
    }
}
