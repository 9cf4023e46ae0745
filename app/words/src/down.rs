//! What is told of the way down a descent, before it is put into words: its legs, and where the service
//! brakes are asked for.

use solver::order::ascending;
use solver::plan::{Advice, Descent, Leg, LegChange, Proof, Relief, Touch};
use solver::road::Span;
use solver::truck::{Gear, Stage};
use solver::units::{Grade, MetresPerSecond};

/// Most places that are named in a sentence.
const MOST_PLACES: usize = 3;

/// Gear, stage and speed.
pub type Told = (Gear, Stage, MetresPerSecond);

/// How the descent of an advice is begun.
#[must_use]
pub fn first(descent: &Descent, advice: &Advice) -> Told {
    descent.legs.first().map_or((advice.gear, advice.stage, advice.speed), told)
}

/// The slowest leg of an advice, with the stage of that leg.
#[must_use]
pub fn slowest(descent: &Descent, advice: &Advice) -> Told {
    let leg = descent.legs.iter().find(|leg| leg.gear == advice.gear && leg.speed == advice.speed);
    leg.map_or((advice.gear, advice.stage, advice.speed), told)
}

fn told(leg: &Leg) -> Told {
    (leg.gear, leg.stage, leg.speed)
}

/// The steepest grade of a descent that is told: of its steepest lengths, or the mean where it is too short for any.
#[must_use]
pub fn steepest(descent: &Descent) -> f64 {
    descent.steepest.iter().map(|it| it.grade.0).fold(descent.mean.0, f64::min)
}

/// Whether the gear changes on the way.
#[must_use]
pub fn in_legs(descent: &Descent) -> bool {
    descent.legs.len() > 1
}

/// The legs behind the first, each with its change.
pub fn changes(descent: &Descent) -> impl Iterator<Item = (LegChange, &Leg)> {
    descent.legs.iter().filter_map(|leg| Some((leg.change?, leg)))
}

/// Metres from the start of a road to a grid point.
#[must_use]
pub fn metres(index: usize, step_m: f64) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "a road has far fewer than 2⁵² grid points")]
    let index = index as f64;
    index * step_m
}

/// What was not assessed between crest and foot, by grid points.
pub fn blanks<'a>(descent: &'a Descent, unassessed: &'a [Span]) -> impl Iterator<Item = (usize, usize)> + 'a {
    let within = |it: &Span| (it.from.max(descent.from), it.to.min(descent.to));
    unassessed.iter().map(within).filter(|(from, to)| from < to)
}

/// Where it eases and the gear stays in: of several gears not where one is changed.
pub fn easings(descent: &Descent) -> impl Iterator<Item = &Relief> {
    let pairs = || descent.legs.iter().zip(descent.legs.iter().skip(1));
    let meets = |it: &Relief, from: usize, to: usize| from <= it.to && to >= it.from;
    let changed = move |it: &&Relief| pairs().any(|(before, leg)| meets(it, before.slows_from, leg.from));
    descent.reliefs.iter().filter(move |it| !changed(it))
}

/// Where the truck gets faster than held without the service brakes.
#[derive(Debug, Clone, PartialEq)]
pub struct Touched<'a> {
    /// The service brakes are needed there, not only touched.
    pub needed: bool,
    /// The worst of the places that are to be believed, along the road.
    pub worst: Vec<&'a Touch>,
    /// How many more such places there are.
    pub more: usize,
    /// The steepest place that the heights leave in doubt.
    pub in_doubt: Option<Grade>,
}

impl<'a> Touched<'a> {
    /// The places of a descent; `None` where there are none, and where snubs are told instead.
    #[must_use]
    pub fn of(descent: &'a Descent) -> Option<Self> {
        let advice = descent.choice.advice().filter(|it| it.snub.is_none() && it.proof != Proof::Holds)?;
        let certain: Vec<&Touch> = descent.touches.iter().filter(|it| it.certain).collect();
        let mut worst = ascending(certain.iter().map(|it| -it.kelvin));
        worst.truncate(MOST_PLACES);
        // Along the road again.
        let named = |(index, it): (usize, &'a Touch)| worst.contains(&index).then_some(it);
        let doubted = descent.touches.iter().filter(|it| !it.certain).map(|it| it.grade);
        Some(Self {
            needed: advice.proof == Proof::NeedsBrakes,
            more: certain.len() - worst.len(),
            worst: certain.into_iter().enumerate().filter_map(named).collect(),
            in_doubt: doubted.reduce(|a, b| if b.0 < a.0 { b } else { a }),
        })
    }
}
