//! Service brakes as lumps of heat, one for each axle group.

use super::Truck;
use crate::constants::{
    AXLE_COOLING_PER_SPEED, AXLE_COOLING_STILL, AXLE_HEAT_CAPACITY_DISC, AXLE_HEAT_CAPACITY_DRUM,
    DISC_BENDS_AT, DISC_COOLING_AT_REST, DISC_LIKE_DRUM_AT, DISC_STILL_OVER_SLOPE, NEWER_COOLING,
    NEWER_HEAT_CAPACITY_DRUM, STROKE_COLD_AT, STROKE_LIMIT, STROKE_PER_KELVIN, TRACTOR_COOLING_STILL,
};
use crate::units::{Celsius, MetresPerSecond};
use serde::{Deserialize, Serialize};

/// Where an axle group sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum AxlePlace {
    /// Steered front axle or axles.
    Steer,
    /// Driven axles and what shares their suspension.
    Drive,
    /// Axles of a trailer, or of all trailers together.
    Trailer,
}

/// Kind of foundation brake.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BrakeKind {
    /// Drum.
    Drum,
    /// Disc.
    Disc,
}

/// An axle group as entered.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AxleGroup {
    /// Where it sits.
    pub place: AxlePlace,
    /// Braked axles in it.
    pub axles: u8,
    /// Drum or disc.
    pub brake: BrakeKind,
    /// Its share of the braking work; the shares of all groups add up to 1.
    pub effort_share: f64,
}

impl AxleGroup {
    /// Heat stored per kelvin, J/K.
    #[must_use]
    pub fn heat_capacity(&self) -> f64 {
        let per_axle = match self.brake {
            BrakeKind::Drum => AXLE_HEAT_CAPACITY_DRUM,
            BrakeKind::Disc => AXLE_HEAT_CAPACITY_DISC,
        };
        per_axle * f64::from(self.axles)
    }

    /// Heat given to the air per kelvin above it, W/K, at a road speed. It is uncertain by a factor of two
    /// and more: measured axles differ that much.
    #[must_use]
    pub fn cooling(&self, speed: MetresPerSecond) -> f64 {
        let per_axle = match self.brake {
            BrakeKind::Drum => drum_cooling(self.place, speed.0),
            BrakeKind::Disc => disc_cooling(speed.0),
        };
        per_axle * f64::from(self.axles)
    }
}

/// Cooling of the drums of one axle, W/K.
fn drum_cooling(place: AxlePlace, speed: f64) -> f64 {
    let still = match place {
        AxlePlace::Steer | AxlePlace::Drive => TRACTOR_COOLING_STILL * AXLE_COOLING_STILL,
        AxlePlace::Trailer => AXLE_COOLING_STILL,
    };
    still + AXLE_COOLING_PER_SPEED * speed
}

/// Cooling of the discs of one axle, W/K. Discs live on the air that flows past. It is a straight line in
/// speed as measured; below 20 km/h another straight line leads down to the cooling at rest.
fn disc_cooling(speed: f64) -> f64 {
    let level = AXLE_COOLING_STILL + AXLE_COOLING_PER_SPEED * DISC_LIKE_DRUM_AT;
    let line =
        |speed: f64| level * (speed + DISC_STILL_OVER_SLOPE) / (DISC_LIKE_DRUM_AT + DISC_STILL_OVER_SLOPE);
    if speed >= DISC_BENDS_AT {
        return line(speed);
    }
    DISC_COOLING_AT_REST + (line(DISC_BENDS_AT) - DISC_COOLING_AT_REST) * speed / DISC_BENDS_AT
}

/// Place of a truck's brakes within what is known about them. At −1 they cool half as well as taken, at 0 as
/// taken, and at 1 they store and cool as in the newer constants (GSRS-NEW) at each speed. The newer
/// constants say nothing about discs: their cooling rises by the same share, and their capacity stays.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct BrakeBand(pub(super) f64);

impl BrakeBand {
    /// Cooling and capacity as taken.
    pub(super) const TAKEN: Self = Self(0.0);

    /// Factor on the cooling taken.
    pub(super) fn cooling(self, speed: MetresPerSecond) -> f64 {
        if self.0 <= 0.0 {
            return libm::exp2(self.0);
        }
        // Mean of five axles: one steered, two driven, two of a trailer.
        let still = AXLE_COOLING_STILL * (3.0 * TRACTOR_COOLING_STILL + 2.0) / 5.0;
        let taken = still + AXLE_COOLING_PER_SPEED * speed.0;
        libm::pow((NEWER_COOLING.0 + NEWER_COOLING.1 * speed.0) / taken, self.0)
    }

    /// Factor on the capacity taken.
    pub(super) fn capacity(self, brake: BrakeKind) -> f64 {
        match brake {
            BrakeKind::Drum => libm::pow(NEWER_HEAT_CAPACITY_DRUM / AXLE_HEAT_CAPACITY_DRUM, self.0.max(0.0)),
            BrakeKind::Disc => 1.0,
        }
    }
}

/// Cold stroke at which a size 30 drum brake counts as out of adjustment, in. Cold, it is still within its
/// limit of 2 in. Assumed.
pub const SLACK_STROKE: f64 = 1.75;

/// Bulk temperature at which a size 30 drum brake with this cold stroke, in, reaches its limit.
#[must_use]
pub fn stroke_limit_at(cold_stroke_in: f64) -> Celsius {
    Celsius(STROKE_COLD_AT + (STROKE_LIMIT - cold_stroke_in) / STROKE_PER_KELVIN)
}

impl Truck {
    /// The truck with one axle group out of adjustment. Drums with a long cold stroke no longer brake above
    /// the temperature at which they reach their limit; discs do half of their work (assumed); the others do
    /// the rest. `None` where there is no other group.
    #[must_use]
    pub(crate) fn out_of_adjustment(&self, group: usize) -> Option<Self> {
        const STILL_DOES: f64 = 0.5;
        let mut truck = self.clone();
        let groups = &mut truck.spec.axle_groups;
        let AxleGroup { effort_share: own, brake, .. } = *groups.get(group)?;
        let others = 1.0 - own;
        if groups.len() < 2 || others <= 0.0 {
            return None;
        }
        match brake {
            BrakeKind::Drum => truck.out_above = Some((group, stroke_limit_at(SLACK_STROKE))),
            BrakeKind::Disc => {
                for (index, it) in groups.iter_mut().enumerate() {
                    it.effort_share *=
                        if index == group { STILL_DOES } else { (1.0 - own * STILL_DOES) / others };
                }
            }
        }
        Some(truck)
    }

    /// Index of an axle group that no longer brakes above a temperature, and that temperature.
    #[must_use]
    pub(crate) fn out_above(&self) -> Option<(usize, Celsius)> {
        self.out_above
    }

    /// Heat that the brakes of a group give to the air per kelvin above it, W/K.
    #[must_use]
    pub fn cooling(&self, group: &AxleGroup, speed: MetresPerSecond) -> f64 {
        group.cooling(speed) * self.brakes.cooling(speed)
    }

    /// Heat that the brakes of a group store per kelvin, J/K.
    #[must_use]
    pub fn heat_capacity(&self, group: &AxleGroup) -> f64 {
        group.heat_capacity() * self.brakes.capacity(group.brake)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn axle(place: AxlePlace, brake: BrakeKind) -> AxleGroup {
        AxleGroup { place, axles: 1, brake, effort_share: 1.0 }
    }

    /// The disc cooling has no step, rises throughout, and crosses that of a trailer's drums at 60 km/h.
    #[test]
    fn discs_cool_less_at_rest_and_more_at_speed() {
        let (disc, drum) =
            (axle(AxlePlace::Drive, BrakeKind::Disc), axle(AxlePlace::Trailer, BrakeKind::Drum));
        let cooling = |group: AxleGroup, kmh: f64| group.cooling(MetresPerSecond::from_kmh(kmh));
        for tenth in 0..1_200 {
            let kmh = f64::from(tenth) * 0.1;
            let step = cooling(disc, kmh + 0.1) - cooling(disc, kmh);
            assert!(step > 0.0 && step < 0.2, "{kmh} km/h: {step} W/K");
            let more = cooling(disc, kmh) - cooling(drum, kmh);
            assert!(more.abs() < 1e-9 || (more > 0.0) == (kmh > 60.0), "{kmh} km/h: {more} W/K");
        }
    }

    /// Half at one end, as taken in the middle, and at the other end five axles together as in the newer
    /// constants.
    #[test]
    fn the_band_ends_at_the_newer_constants() {
        let places =
            [AxlePlace::Steer, AxlePlace::Drive, AxlePlace::Drive, AxlePlace::Trailer, AxlePlace::Trailer];
        for speed in [0.0, 8.0, 25.0].map(MetresPerSecond) {
            assert!((BrakeBand(-1.0).cooling(speed) - 0.5).abs() < 1e-12);
            assert!((BrakeBand::TAKEN.cooling(speed) - 1.0).abs() < 1e-12);
            let five: f64 = places.iter().map(|it| axle(*it, BrakeKind::Drum).cooling(speed)).sum();
            let newer = 5.0 * (NEWER_COOLING.0 + NEWER_COOLING.1 * speed.0);
            assert!((five * BrakeBand(1.0).cooling(speed) - newer).abs() < 1e-9, "{five} {newer}");
        }
        assert!((BrakeBand(-1.0).capacity(BrakeKind::Drum) - 1.0).abs() < 1e-12);
        assert!((BrakeBand(1.0).capacity(BrakeKind::Drum) - 1.447).abs() < 1e-3);
    }
}
