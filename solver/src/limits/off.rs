//! How far an entry of the truck may be off where nobody has measured it.

use super::{Entry, of};
use serde::{Deserialize, Serialize};

/// A plausible error of an entry, either way.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Off {
    /// A share of the value.
    Share(f64),
    /// An amount in the unit of the entry.
    Step(f64),
}

impl Off {
    /// The values one error below and one above, kept within the entry's range; `None` where the range leaves
    /// nothing on that side.
    #[must_use]
    pub fn around(self, entry: Entry, value: f64) -> [Option<f64>; 2] {
        let by = match self {
            Self::Share(share) => share * value,
            Self::Step(step) => step,
        };
        let limit = of(entry);
        [-by, by].map(|by| {
            let moved = (value + by).clamp(limit.min, limit.max);
            ((moved - value).abs() > 1e-9).then_some(moved)
        })
    }
}

/// How far an entry of the truck may plausibly be off; `None` for an entry of the day. All errors are
/// assumed, for the reason beside each.
#[must_use]
pub fn off(entry: Entry) -> Option<Off> {
    use Off::{Share, Step};
    Some(match entry {
        // Shipping papers and scales differ.
        Entry::GrossMass => Share(0.05),
        // The load sits further forward or back.
        Entry::DriveAxleMass => Share(0.10),
        // Wear, inflation and load of one size.
        Entry::RollingRadius => Share(0.02),
        // Rims and makes of one size differ, and so may the number of tyres.
        Entry::WheelInertia => Share(0.20),
        // From the middle of a label class to its ends, and from new tyres to worn ones.
        Entry::RollingResistance => Share(0.25),
        // One body with and without deflectors.
        Entry::DragArea => Share(0.15),
        // Litres are rounded on plates.
        Entry::Displacement => Share(0.05),
        // Read off a dial.
        Entry::LowestEngineSpeed
        | Entry::HighestEngineSpeed
        | Entry::GovernedSpeed
        | Entry::ShiftsUpSpeed
        | Entry::LockUpSpeed
        | Entry::RetarderPeakSpeed
        | Entry::RetarderCutOut
        | Entry::SustainedSpeed => Step(100.0),
        // Read off a dial.
        Entry::TopGearSpeed => Step(50.0),
        // One step between ratios on offer.
        Entry::AxleRatio => Share(0.05),
        // Within one kind of axle; a single and a double reduction differ by more.
        Entry::AxleEfficiency => Share(0.02),
        // Engines of one size are sold with several ratings.
        Entry::RatedPower => Share(0.10),
        // Declared powers of engine brakes per litre differ by this much.
        Entry::RetarderPeakPower => Share(0.20),
        // Within the shapes that fit the declared curves.
        Entry::RetarderExponent => Step(0.3),
        // What a weighed descent and a level lead-in can resolve.
        Entry::RetardingScale => Share(0.10),
        // Half of the usual delay, or half as much again.
        Entry::RetarderDelay => Step(0.5),
        // One step between sizes on offer.
        Entry::ShaftTorque => Share(0.15),
        // It is printed for one step-up ratio and fitted with another.
        Entry::ShaftSpeed => Share(0.20),
        // A larger or smaller cooler, a fan that runs or not.
        Entry::ShortPower | Entry::SustainedPower => Share(0.20),
        // Usually nobody has timed it.
        Entry::ShortTime | Entry::WarmUpTime => Share(0.30),
        // Between a well ventilated rotor and one behind a gearbox.
        Entry::HotShare => Share(0.20),
        // The next gear.
        Entry::LockUpGear => Step(1.0),
        // A load that sits higher.
        Entry::RolloverThreshold => Step(0.05),
        Entry::AirTemperature
        | Entry::BrakesAtStart
        | Entry::Headwind
        | Entry::SpeedLimit
        | Entry::Reserve
        | Entry::HeatLimit
        | Entry::Superelevation
        | Entry::BrakeCheckStop => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_sides_stay_in_range_and_a_side_that_is_none_is_left_out() {
        let (sides, entry) = (Off::Share(0.1).around(Entry::GrossMass, 40_000.0), Entry::AxleEfficiency);
        assert_eq!(sides, [Some(36_000.0), Some(44_000.0)]);
        assert_eq!(Off::Share(0.02).around(entry, 1.0), [Some(0.98), None]);
        assert_eq!(Off::Step(0.5).around(Entry::RetarderDelay, 0.0), [None, Some(0.5)]);
        for limit in super::super::ALL {
            let Some(off) = off(limit.entry) else { continue };
            let middle = 0.5 * (limit.min + limit.max);
            let [less, more] = off.around(limit.entry, middle).map(Option::unwrap_or_default);
            assert!(less < middle && middle < more, "{:?}", limit.entry);
        }
    }
}
