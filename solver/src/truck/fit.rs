//! Fitting another retarder to a truck.

use super::retarder::{Driveline, EngineBrake, Retarder, RetarderKind};
use super::spec::TruckSpec;
use crate::limits::Entry;

impl TruckSpec {
    /// Fits a retarder of another kind; one of the present kind stays. A part that both kinds have, at the
    /// engine or on the shaft, is kept with its numbers. So are lever positions that differ from those of the
    /// former kind. The rest is assumed.
    pub fn take_retarder(&mut self, kind: RetarderKind) {
        let former = self.retarder.kind();
        if former == kind {
            return;
        }
        let engine = self.engine_size();
        let usual = former.assumed(engine);
        let old = std::mem::replace(&mut self.retarder, kind.assumed(engine));
        self.retarding_scale = 1.0;
        let was_assumed = std::mem::take(&mut self.assumed);
        let same_brake = keep_brake(&mut self.retarder, &old);
        let same_shaft = keep_driveline(&mut self.retarder, &old);
        if let Some(shares) = self.shares_mut()
            && !old.shares().is_empty()
            && old.shares() != usual.shares()
        {
            *shares = old.shares().to_vec();
        }
        let kept = |entry: &Entry| match entry {
            Entry::RetarderPeakPower
            | Entry::RetarderPeakSpeed
            | Entry::RetarderExponent
            | Entry::RetarderCutOut => same_brake,
            Entry::RetarderDelay => old.is_at_engine(),
            _ => same_shaft,
        };
        let own = RetarderKind::entries();
        let assumed = |entry: &Entry| !kept(entry) || was_assumed.contains(entry);
        let has: Vec<Entry> = own.into_iter().filter(|it| assumed(it) && self.get(*it).is_some()).collect();
        self.assumed = was_assumed;
        self.assumed.retain(|entry| !own.contains(entry));
        self.assumed.extend(has);
    }
}

/// Keeps the former part at the engine where the new retarder has one of its kind.
fn keep_brake(new: &mut Retarder, old: &Retarder) -> bool {
    use EngineBrake::{CompressionRelease, ExhaustValve};
    match (new.brake_mut(), old.brake()) {
        (Some(CompressionRelease(to)), Some(CompressionRelease(from)))
        | (Some(ExhaustValve(to)), Some(ExhaustValve(from))) => {
            *to = from.clone();
            true
        }
        _ => false,
    }
}

/// Keeps the former part on the shaft where the new retarder has one of its kind.
fn keep_driveline(new: &mut Retarder, old: &Retarder) -> bool {
    use Driveline::{Electromagnetic, Hydrodynamic};
    match (new.driveline_mut(), old.driveline()) {
        (Some(Hydrodynamic(to)), Some(Hydrodynamic(from))) => {
            *to = from.clone();
            true
        }
        (Some(Electromagnetic(to)), Some(Electromagnetic(from))) => {
            *to = from.clone();
            true
        }
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::super::Preset;
    use super::*;

    #[test]
    fn a_part_that_both_have_keeps_what_was_entered() {
        let mut spec = Preset::FiveAxle36.spec();
        spec.set(Entry::RetarderPeakPower, 280.0);
        spec.set_lever_positions(5);
        spec.take_retarder(RetarderKind::CompressionAndHydrodynamic);
        assert_eq!(spec.get(Entry::RetarderPeakPower), Some(280.0));
        assert!(!spec.is_assumed(Entry::RetarderPeakPower) && spec.is_assumed(Entry::RetarderCutOut));
        assert!(spec.is_assumed(Entry::ShaftTorque));
        assert_eq!(spec.retarder.stage_count(), 5, "the lever is the driver's");
        spec.set(Entry::ShaftTorque, 3_000.0);
        spec.take_retarder(RetarderKind::ExhaustAndHydrodynamic);
        assert_eq!(spec.get(Entry::ShaftTorque), Some(3_000.0));
        assert!(spec.is_assumed(Entry::RetarderPeakPower), "another engine brake");
        spec.take_retarder(RetarderKind::Electromagnetic);
        assert!(spec.is_assumed(Entry::ShaftTorque) && spec.get(Entry::RetarderPeakPower).is_none());
        assert!(spec.check().is_ok());
    }

    #[test]
    fn the_usual_lever_of_one_kind_is_not_that_of_another() {
        let mut spec = Preset::FiveAxle36.spec();
        spec.take_retarder(RetarderKind::Hydrodynamic);
        assert_eq!(spec.retarder.stage_count(), 4);
        spec.take_retarder(RetarderKind::ExhaustValve);
        assert_eq!(spec.retarder.stage_count(), 1);
    }
}
