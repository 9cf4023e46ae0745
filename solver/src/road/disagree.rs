//! Where two recordings of one road differ.

use super::finding::{Finding, FindingKind};
use crate::order::ascending;
use std::ops::Range;

/// A stretch on which two recordings differ by more than both doubts allow.
#[derive(Clone)]
pub(super) struct Disagreement {
    pub(super) cells: Range<usize>,
    /// Largest difference of the two, metres, and the length over which it is taken.
    pub(super) apart_m: f64,
    pub(super) length_m: f64,
    /// Rise or fall of the second beyond that of the first, metres.
    pub(super) steeper_m: f64,
}

/// Stretches that touch become one.
pub(super) fn joined(found: Vec<Disagreement>) -> Vec<Disagreement> {
    let along = ascending(found.iter().map(|it| it.cells.start as f64));
    let mut joined: Vec<Disagreement> = Vec::new();
    for it in along.into_iter().map(|index| found[index].clone()) {
        match joined.last_mut() {
            Some(last) if it.cells.start <= last.cells.end => {
                last.cells.end = last.cells.end.max(it.cells.end);
                if it.apart_m > last.apart_m {
                    (last.apart_m, last.length_m) = (it.apart_m, it.length_m);
                }
            }
            Some(_) | None => joined.push(it),
        }
    }
    joined
}

impl Disagreement {
    pub(super) fn finding(&self, step_m: f64) -> Finding {
        Finding {
            kind: FindingKind::RecordingsDisagree { apart_m: self.apart_m, length_m: self.length_m },
            count: 1,
            from_m: Some(self.cells.start as f64 * step_m),
            to_m: Some(self.cells.end as f64 * step_m),
        }
    }
}
