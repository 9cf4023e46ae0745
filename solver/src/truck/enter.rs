//! What a person reads off a truck's plates and dials and enters, and what follows from it.

use super::brakes::{AxleGroup, AxlePlace, BrakeKind};
use super::engine::TorquePoint;
use super::retarder::{EngineSize, RetarderKind};
use super::spec::TruckSpec;
use crate::limits::{Entry, bounds};
use std::f64::consts::PI;

/// Road speed at which drivers know the engine speed of their top gear, m/s: 80 km/h.
const PACE: f64 = 80.0 / 3.6;

impl TruckSpec {
    /// Rated power, kW: the largest power of the full-load curve.
    #[must_use]
    pub fn rated_kw(&self) -> f64 {
        let power = |p: &TorquePoint| p.torque_nm * p.engine_speed_rpm * PI / 30.0;
        self.full_load.iter().map(power).fold(0.0, f64::max) / 1e3
    }

    /// Sets the rated power, kW. The torque of the full-load curve changes in proportion, and engine speeds
    /// stay. Engines of one family differ in little else; assumed.
    pub fn set_rated_kw(&mut self, rated_kw: f64) {
        let factor = rated_kw / self.rated_kw();
        if factor.is_finite() {
            self.full_load.iter_mut().for_each(|point| point.torque_nm *= factor);
        }
    }

    /// Stretches the full-load curve to this governed speed, 1/min, at the same power. A gearbox that shifts
    /// up at the governed speed, because nothing else was entered, continues to do so.
    fn set_governed_rpm(&mut self, governed: f64) {
        let factor = governed / self.governed_rpm();
        if !factor.is_finite() || factor <= 0.0 {
            return;
        }
        for point in &mut self.full_load {
            point.engine_speed_rpm *= factor;
            point.torque_nm /= factor;
        }
        if let Some(last) = self.full_load.last_mut() {
            last.engine_speed_rpm = governed;
        }
        if self.is_assumed(Entry::ShiftsUpSpeed) {
            self.shifts_up_rpm = None;
        }
    }

    /// Engine speed at 80 km/h in the top gear, 1/min; `None` without gears.
    fn top_gear_rpm(&self) -> Option<f64> {
        let turns = PACE / self.rolling_radius_m * 30.0 / PI;
        self.gears.last().map(|top| turns * top * self.axle_ratio)
    }

    /// The axle ratio at which the engine turns at this speed, 1/min, at 80 km/h in top gear.
    #[must_use]
    pub fn axle_ratio_at(&self, top_gear_rpm: f64) -> Option<f64> {
        let now = self.top_gear_rpm()?;
        (now > 0.0).then(|| self.axle_ratio * top_gear_rpm / now)
    }

    /// The value of an entry that is not stored but follows from others.
    pub(super) fn derived(&self, entry: Entry) -> Option<f64> {
        if entry == Entry::RatedPower {
            Some(self.rated_kw())
        } else if entry == Entry::GovernedSpeed {
            Some(self.governed_rpm())
        } else if entry == Entry::TopGearSpeed {
            self.top_gear_rpm()
        } else {
            None
        }
    }

    /// Sets such an entry; `false` where it is none.
    pub(super) fn set_derived(&mut self, entry: Entry, value: f64) -> bool {
        if entry == Entry::RatedPower {
            self.set_rated_kw(value);
        } else if entry == Entry::GovernedSpeed {
            self.set_governed_rpm(value);
        } else if entry == Entry::TopGearSpeed {
            if let Some(ratio) = self.axle_ratio_at(value) {
                self.set(Entry::AxleRatio, ratio);
            }
        } else {
            return false;
        }
        true
    }

    /// Sets an entry as [`TruckSpec::set`] does, and lets the assumed numbers of the retarder follow litres
    /// and rated power. They do not follow the highest engine speed: with a lower one the same power would be
    /// assumed at fewer revolutions.
    pub fn enter(&mut self, entry: Entry, value: f64) {
        let kind = self.retarder.kind();
        let size = self.engine_size();
        let before = kind.assumed(size);
        self.set(entry, value);
        let after = kind.assumed(EngineSize { highest_rpm: size.highest_rpm, ..self.engine_size() });
        if before == after {
            return;
        }
        let of = |retarder| Self { retarder, ..self.clone() };
        let (before, after) = (of(before), of(after));
        for own in RetarderKind::entries() {
            let (Some(old), Some(new)) = (before.get(own), after.get(own)) else { continue };
            if (old - new).abs() > 1e-9 && self.is_assumed(own) {
                self.set_assumed(own, new);
            }
        }
    }

    /// The engine data from which an assumed retarder is made.
    pub(super) fn engine_size(&self) -> EngineSize {
        EngineSize { litres: self.displacement_l, rated_kw: self.rated_kw(), highest_rpm: self.highest_rpm }
    }

    /// Gives the retarder's lever this number of positions, "off" not counted, with even shares. A table has
    /// a column for each position and is left alone.
    pub fn set_lever_positions(&mut self, positions: u8) {
        let most = u8::try_from(bounds::STAGES).unwrap_or(u8::MAX);
        let positions = positions.clamp(1, most);
        if let Some(shares) = self.shares_mut() {
            *shares = (1..=positions).map(|at| f64::from(at) / f64::from(positions)).collect();
        }
    }

    /// Gives an axle group this number of braked axles and this kind of brake; 0 removes a trailer's group.
    /// Assumed: each axle brakes as much beside the others as before, wheels go in proportion to axles, and
    /// the driven axles carry no more than before, and less where there are fewer of them.
    pub fn set_axles(&mut self, group: usize, axles: u8, brake: BrakeKind) {
        let all = self.all_axles();
        let Some(it) = self.axle_groups.get_mut(group) else { return };
        let was = it.axles;
        if axles == 0 {
            if it.place != AxlePlace::Trailer || self.axle_groups.len() < 2 {
                return;
            }
            self.axle_groups.remove(group);
        } else {
            it.axles = axles.min(bounds::AXLES_OF_GROUP);
            it.brake = brake;
            it.effort_share *= f64::from(it.axles) / f64::from(was.max(1));
            if it.place == AxlePlace::Drive && it.axles < was {
                let less = self.drive_axle_mass_kg * f64::from(it.axles) / f64::from(was);
                self.set_assumed(Entry::DriveAxleMass, less);
            }
        }
        self.share_out_efforts(all);
    }

    /// Hooks on a trailer with this number of braked axles, each of which brakes like the average of the
    /// others. Assumed.
    pub fn hook_on(&mut self, axles: u8, brake: BrakeKind) {
        let (axles, all) = (axles.clamp(1, bounds::AXLES_OF_GROUP), self.all_axles());
        let effort_share = f64::from(axles) / all.max(1.0);
        self.axle_groups.push(AxleGroup { place: AxlePlace::Trailer, axles, brake, effort_share });
        self.share_out_efforts(all);
    }

    fn all_axles(&self) -> f64 {
        self.axle_groups.iter().map(|group| f64::from(group.axles)).sum()
    }

    /// Scales the shares to a sum of 1, and the wheels from the former number of axles to the present one.
    fn share_out_efforts(&mut self, axles_before: f64) {
        let sum: f64 = self.axle_groups.iter().map(|group| group.effort_share).sum();
        self.axle_groups.iter_mut().for_each(|group| group.effort_share /= sum);
        let axles = self.all_axles();
        if axles_before > 0.0 && (axles - axles_before).abs() > 0.5 {
            self.set_assumed(Entry::WheelInertia, self.wheel_inertia_kg_m2 * axles / axles_before);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Preset, Truck};
    use super::*;
    use crate::units::MetresPerSecond;

    fn near(found: f64, wanted: f64) {
        assert!((found - wanted).abs() < 1e-6 * wanted.abs().max(1.0), "{found} instead of {wanted}");
    }

    #[test]
    fn rated_power_scales_the_pull_and_what_is_assumed_of_the_retarder() {
        let mut spec = Preset::FiveAxle40Both.spec();
        let (torque, power) = (spec.full_load[0].torque_nm, spec.rated_kw());
        spec.enter(Entry::RatedPower, 1.1 * power);
        near(spec.rated_kw(), 1.1 * power);
        near(spec.full_load[0].torque_nm, 1.1 * torque);
        near(spec.get(Entry::SustainedPower).unwrap(), (0.9 * 1.1 * power).round());
        assert!(spec.is_assumed(Entry::SustainedPower), "still nobody's figure");
        let peak = spec.get(Entry::RetarderPeakSpeed);
        spec.enter(Entry::HighestEngineSpeed, 1_900.0);
        assert_eq!(spec.get(Entry::RetarderPeakSpeed), peak, "no more power at fewer turns");
        // Entered values stay, and so do values that do not depend on the engine.
        spec.set(Entry::SustainedPower, 200.0);
        spec.set_assumed(Entry::ShaftTorque, 2_000.0);
        spec.enter(Entry::RatedPower, power);
        spec.enter(Entry::Displacement, 9.0);
        near(spec.get(Entry::SustainedPower).unwrap(), 200.0);
        near(spec.get(Entry::ShaftTorque).unwrap(), 2_000.0);
        // 9 l at 25 kW per litre, but no less than 0.8 of the rated power.
        near(spec.get(Entry::RetarderPeakPower).unwrap(), (0.8 * power).round());
    }

    #[test]
    fn the_governed_speed_stretches_the_curve_at_the_same_power() {
        let mut spec = Preset::Rigid18.spec();
        let power = spec.rated_kw();
        spec.enter(Entry::GovernedSpeed, 2_500.0);
        near(spec.get(Entry::GovernedSpeed).unwrap(), 2_500.0);
        near(spec.rated_kw(), power);
        assert!(spec.check().is_ok());
    }

    #[test]
    fn the_engine_speed_in_top_gear_gives_the_axle_ratio() {
        for preset in Preset::ALL {
            let mut spec = preset.spec();
            let truck = Truck::new(spec.clone()).expect("a truck");
            let top = truck.gears().next_back().expect("it has gears");
            let told = truck.engine_speed(top, MetresPerSecond::from_kmh(80.0)).0;
            near(spec.get(Entry::TopGearSpeed).unwrap(), told);
            let ratio = spec.axle_ratio;
            spec.enter(Entry::TopGearSpeed, 0.9 * told);
            near(spec.axle_ratio, 0.9 * ratio);
            assert!(!spec.is_assumed(Entry::AxleRatio), "it was told in another way");
        }
    }

    #[test]
    fn levers_and_axles_are_shared_out_evenly() {
        let mut spec = Preset::FiveAxle36.spec();
        spec.set_lever_positions(5);
        assert_eq!(spec.retarder.shares().len(), 5);
        near(spec.retarder.shares()[1], 0.4);
        let share = |spec: &TruckSpec, at: usize| spec.axle_groups[at].effort_share;
        let (steer, mass) = (share(&spec, 0), spec.drive_axle_mass_kg);
        spec.set_axles(2, 3, BrakeKind::Disc);
        assert!(spec.check().is_ok() && share(&spec, 0) < steer, "one more helps");
        near(share(&spec, 2) / share(&spec, 1), 1.5);
        near(spec.wheel_inertia_kg_m2, 18.0 * 14.0 * 6.0 / 5.0);
        spec.set_axles(1, 1, BrakeKind::Drum);
        near(spec.drive_axle_mass_kg, 0.5 * mass);
        spec.set_axles(1, 3, BrakeKind::Drum);
        near(spec.drive_axle_mass_kg, 0.5 * mass);
        spec.set_axles(2, 0, BrakeKind::Drum);
        assert_eq!(spec.axle_groups.len(), 2);
        assert!(spec.check().is_ok());
        spec.hook_on(2, BrakeKind::Drum);
        assert!(spec.check().is_ok());
        near(share(&spec, 2), 1.0 / 3.0);
        // Steered and driven axles cannot be taken off.
        spec.set_axles(0, 0, BrakeKind::Drum);
        assert_eq!(spec.axle_groups.len(), 3);
    }
}
