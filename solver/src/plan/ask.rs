//! What is asked of the choice: this truck, down this stretch, coming from there.

use super::answer::Choice;
use super::approach::Approach;
use super::descents::Stretch;
use crate::motion::{Hold, Trip, curves_between};
use crate::road::Road;
use crate::units::{Celsius, Grade, MetresPerSecond};

/// What is asked: this truck, down this stretch, coming from there.
#[derive(Clone, Copy)]
pub(super) struct Ask<'a> {
    pub(super) trip: Trip<'a>,
    pub(super) road: &'a Road,
    pub(super) stretch: &'a Stretch,
    pub(super) approach: &'a Approach,
    /// The slowest curve of the stretch; infinite without one.
    pub(super) slowest_curve: MetresPerSecond,
    /// The grade at its ends that is steeper than a road is believed to be.
    pub(super) beyond: Option<Grade>,
    /// No faster than this.
    pub(super) at_most: MetresPerSecond,
}

/// A choice, and what the run needs of it even where no speed is safe.
pub(super) struct Chosen {
    pub(super) choice: Choice,
    pub(super) hold: Hold,
    pub(super) brakes_at_crest: Celsius,
}

impl<'a> Ask<'a> {
    /// This truck, down this stretch, coming from there.
    pub(super) fn of(trip: Trip<'a>, road: &'a Road, stretch: &'a Stretch, approach: &'a Approach) -> Self {
        let curves = curves_between(trip, road, stretch.from, stretch.to);
        let slowest_curve = MetresPerSecond(curves.map(|(_, speed)| speed.0).fold(f64::INFINITY, f64::min));
        let (beyond, at_most) = (stretch.beyond(road), MetresPerSecond(f64::INFINITY));
        Self { trip, road, stretch, approach, slowest_curve, beyond, at_most }
    }
}
