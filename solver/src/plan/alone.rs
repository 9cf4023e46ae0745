//! Two recordings of one road are no reason to go faster.
//!
//! Where each recording has a pitch, but not at the same place, their average is gentler than either. Where
//! one has sharper curves, the combined road has only the curves of the other. The average may be right, or
//! not. So each place of the combined road is held no faster than the faster of the two recordings alone.

use super::answer::{Choice, Descent, Plan};
use crate::day::Day;
use crate::road::Road;
use crate::truck::Truck;

/// The fastest speed at which each cell of a combined road may be held, m/s. It is 0 where no recording alone
/// has a safe speed, and infinite where one of them asks for no hold or only one knows the road. The list is
/// empty for a road with one recording. `None` where `progress` stopped the work.
pub(super) fn fastest(
    road: &Road,
    truck: &Truck,
    day: &Day,
    progress: &mut dyn FnMut(f32) -> bool,
) -> Option<Vec<f64>> {
    let mut fastest: Vec<f64> = Vec::new();
    let mut known: Vec<u8> = Vec::new();
    for (alone, on) in road.each_alone() {
        let (plan, _) = super::plan(alone, truck, day, progress)?;
        let held = held(&plan, alone.cells());
        fastest.resize(road.cells(), 0.0);
        known.resize(road.cells(), 0);
        for ((fastest, known), cell) in fastest.iter_mut().zip(&mut known).zip(on) {
            if let Some(cell) = cell {
                *fastest = fastest.max(held[*cell]);
                *known = known.saturating_add(1);
            }
        }
    }
    for (fastest, known) in fastest.iter_mut().zip(known) {
        if known < 2 {
            *fastest = f64::INFINITY;
        }
    }
    Some(fastest)
}

fn held(plan: &Plan, cells: usize) -> Vec<f64> {
    let mut held = vec![f64::INFINITY; cells];
    for descent in &plan.descents {
        let Descent { from, to, choice, legs, .. } = descent;
        match choice {
            Choice::NoSafeSpeed(_) => held[*from..*to].fill(0.0),
            Choice::Held(_) => legs.iter().for_each(|leg| held[leg.from..leg.to].fill(leg.speed.0)),
        }
    }
    held
}
