//! Sets for tests: every preset on a few roads.

use super::{Ground, Sheet};
use crate::format::Units;
use ::tests::plain_roads::road;
use solver::analyse;
use solver::day::Day;
use solver::plan::Plan;
use solver::road::{read, survey};
use solver::truck::{Preset, Truck, TruckSpec};

/// Seeds tried.
pub(crate) const SEEDS: u32 = 200;

/// A road by its legs: points 20 m apart, and the rise from one to the next, m.
pub(crate) type Legs = &'static [(u32, f64)];

/// A hill of 8 %; a long one of 4.5 % with a steep end; three steps; a short one of 11 %.
pub(crate) const ROADS: [Legs; 4] = [
    &[(100, 0.0), (250, -1.6), (100, 0.0)],
    &[(60, 0.4), (500, -0.9), (120, -1.5), (60, 0.0)],
    &[(50, 0.0), (100, -1.2), (80, 0.3), (90, -1.7), (100, 0.1), (150, -1.4), (50, 0.0)],
    &[(120, 0.2), (45, -2.2), (120, 0.0)],
];

/// The plan of a truck on such a road.
pub(crate) fn planned(legs: Legs, spec: &TruckSpec, day: &Day) -> Plan {
    let document = read(&road("Test road", legs), &mut |_| true).expect("a GPX file");
    let road = survey(&document, 0, &mut |_| true).expect("a road");
    let truck = Truck::new(spec.clone()).expect("a truck");
    analyse(&road, &truck, day, &mut |_| true).expect("a plan").0
}

/// A set that must be there.
pub(crate) fn sheet(seed: u32, units: Units, ground: &Ground, spec: &TruckSpec, day: &Day) -> Sheet {
    Sheet::new(seed, units, ground, spec, day).expect("a truck gives a sheet")
}

/// Every preset on every road: what a set is drawn from.
pub(crate) fn every_ground(day: &Day) -> Vec<(TruckSpec, Ground)> {
    let specs = Preset::ALL.into_iter().map(Preset::spec);
    specs
        .flat_map(|spec| {
            ROADS.map(|legs| {
                let ground = Ground::of(&planned(legs, &spec, day));
                (spec.clone(), ground)
            })
        })
        .collect()
}

/// All sets of every preset on every road, the units by turns.
pub(crate) fn every_sheet(day: &Day, mut look: impl FnMut(&TruckSpec, &Ground, &Sheet)) {
    for (spec, ground) in every_ground(day) {
        for seed in 0..SEEDS {
            let units = if seed % 2 == 0 { Units::Metric } else { Units::Imperial };
            look(&spec, &ground, &sheet(seed, units, &ground, &spec, day));
        }
    }
}
