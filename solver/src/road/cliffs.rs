//! Places where heights rise or fall as no road does.
//!
//! However deep a crest or sag of a road is, its flanks are such that a road can have them. Above a tunnel or
//! below a bridge terrain data show a hillside. Noise can make a short stretch steep, too. So what counts is
//! the height beyond what the steepest road would rise.

use crate::order::ascending;
use std::ops::Range;

/// No road for trucks is steeper than this for long (common practice, no source).
const STEEPEST_ROAD: f64 = 0.20;
/// Rise of a cliff beyond the steepest road, metres. Coarse terrain data with errors of 2 m that change
/// within 60 m do not reach it on grades of 18 % (own choice by generated roads).
const EXCESS_M: f64 = 8.0;
/// A cliff extends outwards as long as the heights are steeper than this.
const FOOT_GRADE: f64 = 0.15;

/// A run of grid points on which heights rise, or fall, as no road does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Cliff {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) rises: bool,
}

impl Cliff {
    /// Rise or fall, metres, without sign.
    pub(super) fn rise_m(&self, heights_m: &[f64]) -> f64 {
        (heights_m[self.to] - heights_m[self.from]).abs()
    }
}

/// The cliffs of a span of cells, in the order of the road.
pub(super) fn find(heights_m: &[f64], span: &Range<usize>, step_m: f64) -> Vec<Cliff> {
    let mut cliffs = find_side(heights_m, span, step_m, true);
    cliffs.extend(find_side(heights_m, span, step_m, false));
    let along = ascending(cliffs.iter().map(|cliff| cliff.from as f64));
    along.into_iter().map(|index| cliffs[index].clone()).collect()
}

/// The cliffs that rise, or those that fall: the runs with the most height beyond what a road could have.
fn find_side(heights_m: &[f64], span: &Range<usize>, step_m: f64, rises: bool) -> Vec<Cliff> {
    let sign = if rises { 1.0 } else { -1.0 };
    let mut cliffs: Vec<Cliff> = Vec::new();
    let (mut from, mut to) = (span.start, span.start);
    let (mut excess_m, mut most_m) = (0.0, 0.0);
    for cell in span.clone() {
        excess_m += sign * (heights_m[cell + 1] - heights_m[cell]) - STEEPEST_ROAD * step_m;
        if excess_m > most_m {
            (most_m, to) = (excess_m, cell + 1);
        }
        let over = excess_m <= 0.0 || most_m - excess_m >= EXCESS_M || cell + 1 == span.end;
        if over {
            if most_m >= EXCESS_M {
                cliffs.push(widened(Cliff { from, to, rises }, heights_m, span, step_m));
            }
            (from, to, excess_m, most_m) = (cell + 1, cell + 1, 0.0, 0.0);
        }
    }
    cliffs
}

/// Extends a cliff outwards to its feet.
fn widened(mut cliff: Cliff, heights_m: &[f64], span: &Range<usize>, step_m: f64) -> Cliff {
    let sign = if cliff.rises { 1.0 } else { -1.0 };
    let steep = |cell: usize| sign * (heights_m[cell + 1] - heights_m[cell]) > FOOT_GRADE * step_m;
    while cliff.from > span.start && steep(cliff.from - 1) {
        cliff.from -= 1;
    }
    while cliff.to < span.end && steep(cliff.to) {
        cliff.to += 1;
    }
    cliff
}

#[cfg(test)]
mod tests {
    use super::{Cliff, find};

    /// Heights on a grid of 10 m from grades in per cent, one for each cell.
    fn heights(grades: &[(usize, f64)]) -> Vec<f64> {
        let mut heights = vec![500.0];
        for (cells, grade) in grades {
            for _ in 0..*cells {
                heights.push(heights[heights.len() - 1] + 0.1 * grade);
            }
        }
        heights
    }

    #[test]
    fn a_hill_above_a_tunnel_has_two_and_a_steep_road_none() {
        let hill = heights(&[(50, -2.0), (6, 60.0), (30, 0.0), (6, -62.0), (50, -2.0)]);
        let found = find(&hill, &(0..142), 10.0);
        let cliff = |from, to, rises| Cliff { from, to, rises };
        assert_eq!(found, [cliff(50, 56, true), cliff(86, 92, false)]);
        let road = heights(&[(50, -2.0), (40, -18.0), (10, 0.0), (40, 18.0), (50, 2.0)]);
        assert!(find(&road, &(0..190), 10.0).is_empty());
    }
}
