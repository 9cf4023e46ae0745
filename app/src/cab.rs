//! What the card for the cab says, before it is put into words: which facts, in which order.

use crate::format::Units;
use crate::marker::Marker;
use solver::day::Day;
use solver::plan::{Advice, Descent, Plan, Snub, Verdict};
use solver::road::{Place, PlaceKind, PostedLimit};
use solver::truck::TruckSpec;

/// A place this near behind the foot waits at the foot, m.
const AT_FOOT_M: f64 = 1_500.0;
/// A place this near before the foot waits there too, m.
const BEFORE_FOOT_M: f64 = 300.0;

/// What a card is about.
#[derive(Clone, Copy)]
pub struct CardOf<'a> {
    /// The plan.
    pub plan: &'a Plan,
    /// Truck and day.
    pub truck: &'a TruckSpec,
    /// The day.
    pub day: &'a Day,
    /// Places along the road.
    pub places: &'a [Place],
    /// Limits posted on stretches of it.
    pub limits: &'a [PostedLimit],
    /// Distance of grid points, m.
    pub step_m: f64,
    /// What stands on the markers.
    pub marker: Marker,
    /// The units chosen; distances and speeds stand in both.
    pub units: Units,
}

/// One thing to know of a descent. Places are m from the start of the road.
#[derive(Debug, Clone, PartialEq)]
pub enum Know {
    /// Always the first.
    Verdict(Verdict),
    /// How the service brakes are used.
    Snub(Snub),
    /// It eases here, but is not over.
    Easing {
        /// Where.
        at_m: f64,
    },
    /// The curve that asks for most.
    SlowCurve {
        /// Its speed, m/s.
        speed: f64,
        /// Where it begins.
        at_m: f64,
    },
    /// A limit posted on the way.
    Posted {
        /// Its speed, m/s.
        speed: f64,
        /// Where it begins and ends, within the descent.
        from_m: f64,
        /// Its end.
        to_m: f64,
    },
    /// An escape ramp.
    Ramp {
        /// Where.
        at_m: f64,
    },
    /// A sign may forbid engine brakes here.
    Quiet {
        /// Where.
        at_m: f64,
    },
    /// What waits at the foot.
    AtFoot {
        /// Its name; may be empty.
        name: String,
        /// Where.
        at_m: f64,
    },
    /// The descent is cut off where the road is not assessed.
    CutShort,
}

impl<'a> CardOf<'a> {
    /// What to know of a descent, in the order in which it is read.
    #[must_use]
    pub fn know(&self, descent: &Descent) -> Vec<Know> {
        let (crest, foot) = (descent.crest.0, descent.foot.0);
        let mut all = vec![Know::Verdict(descent.choice.verdict())];
        all.extend(descent.choice.advice().and_then(|advice| advice.snub).map(Know::Snub));
        all.extend(descent.reliefs.iter().map(|it| Know::Easing { at_m: self.metres(it.from) }));
        let slow = self.plan.slowest_curve(descent);
        all.extend(slow.map(|it| Know::SlowCurve { speed: it.speed.0, at_m: self.metres(it.curve.from) }));
        let limits = self.limits.iter().filter_map(|it| it.within(descent.from, descent.to));
        all.extend(limits.map(|it| Know::Posted {
            speed: it.speed().0,
            from_m: self.metres(it.from),
            to_m: self.metres(it.to),
        }));
        let ramps = self.places_of(PlaceKind::EscapeRamp).map(|it| self.metres(it.index));
        let ramps = ramps.filter(|at_m| (crest..=foot + AT_FOOT_M).contains(at_m));
        all.extend(ramps.map(|at_m| Know::Ramp { at_m }));
        let quiet = self.places_of(PlaceKind::QuietZone).map(|it| self.metres(it.index));
        let quiet = quiet.filter(|at_m| (crest..=foot).contains(at_m));
        all.extend(quiet.map(|at_m| Know::Quiet { at_m }));
        let waits = self.places.iter().find(|it| {
            matches!(it.kind, PlaceKind::Stop | PlaceKind::Settlement)
                && (foot - BEFORE_FOOT_M..=foot + AT_FOOT_M).contains(&self.metres(it.index))
        });
        all.extend(waits.map(|it| Know::AtFoot { name: it.name.clone(), at_m: self.metres(it.index) }));
        all.extend(descent.cut_short.then_some(Know::CutShort));
        all
    }

    /// Places of a kind, along the road.
    pub fn places_of(&self, kind: PlaceKind) -> impl Iterator<Item = &'a Place> {
        self.places.iter().filter(move |it| it.kind == kind)
    }

    /// The first descent that has an advice: its gear is engaged before its crest.
    #[must_use]
    pub fn first_held(&self) -> Option<(&'a Descent, &'a Advice)> {
        let first = self.plan.descents.first()?;
        first.choice.advice().map(|advice| (first, advice))
    }

    /// Metres from the start of the road to a grid point.
    #[must_use]
    pub fn metres(&self, index: usize) -> f64 {
        metres(index, self.step_m)
    }
}

/// Metres from the start of a road to a grid point.
#[must_use]
pub fn metres(index: usize, step_m: f64) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "a road has far fewer than 2⁵² grid points")]
    let index = index as f64;
    index * step_m
}
