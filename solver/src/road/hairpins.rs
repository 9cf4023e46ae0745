//! Hairpins: turns of 150° and more with a radius under 30 m.
//!
//! Turns are counted, not places. A turn lasts for as long as the road bends in one direction. So a bend that
//! the recording breaks in two is one turn. Bends to either side are two turns, and no hairpin unless one of
//! them turns far enough by itself.

use std::ops::Range;

/// Least turn of a hairpin in the track, degrees: halfway between a hairpin, 150°, and a bend of 140°, since
/// recorded points cut corners and headings are a little off.
const TURN_DEG: f64 = 145.0;
/// Turn of the tightest part, which gives the radius, degrees.
const TIGHT_DEG: f64 = 120.0;
/// Largest radius of a hairpin's tightest part, metres.
const RADIUS_M: f64 = 30.0;
/// Over three grid points, a smaller radius than this counts as a bend, metres.
const BENDS_M: f64 = 100.0;
/// Bends to one side with at most this many straight grid points between are one turn.
const STRAIGHT_POINTS: usize = 3;

/// The hairpins of a road as ranges of grid points, from the change of heading at each point, radians.
pub(super) fn find(turns: &[f64], step_m: f64) -> Vec<Range<usize>> {
    let mut found = bends(turns, step_m);
    found.retain(|bend| is_hairpin(&turns[bend.clone()], step_m));
    found
}

/// Stretches that bend in one direction, each with a point to either side.
fn bends(turns: &[f64], step_m: f64) -> Vec<Range<usize>> {
    let last = turns.len().saturating_sub(1);
    let mut bends: Vec<(Range<usize>, bool)> = Vec::new();
    for point in 1..last {
        let turn = turns[point - 1] + turns[point] + turns[point + 1];
        if turn.abs() < 3.0 * step_m / BENDS_M {
            continue;
        }
        let left = turn > 0.0;
        match bends.last_mut() {
            Some((bend, side)) if *side == left && point <= bend.end + STRAIGHT_POINTS => {
                bend.end = point + 1
            }
            Some(_) | None => bends.push((point..point + 1, left)),
        }
    }
    bends.into_iter().map(|(bend, _)| bend.start - 1..bend.end + 1).collect()
}

fn is_hairpin(turns: &[f64], step_m: f64) -> bool {
    let sum: f64 = turns.iter().sum();
    if sum.abs() < TURN_DEG.to_radians() {
        return false;
    }
    let mut from = 0;
    let mut turned = 0.0;
    for to in 0..turns.len() {
        turned += turns[to] * sum.signum();
        // The shortest stretch that ends here and turns far enough.
        while turned - turns[from] * sum.signum() >= TIGHT_DEG.to_radians() {
            turned -= turns[from] * sum.signum();
            from += 1;
        }
        let length_m = (to - from + 1) as f64 * step_m;
        if turned >= TIGHT_DEG.to_radians() && length_m < RADIUS_M * turned {
            return true;
        }
    }
    false
}

#[cfg(test)]
mod tests {
    use super::find;

    /// Changes of heading at points 10 m apart, degrees.
    fn count(degrees: &[f64]) -> usize {
        let turns: Vec<f64> = degrees.iter().map(|it| it.to_radians()).collect();
        find(&turns, 10.0).len()
    }

    #[test]
    fn a_turn_is_counted_once_and_only_if_it_turns_far_enough() {
        assert_eq!(count(&[0.0, 0.0, 0.0, 40.0, 45.0, 45.0, 40.0, 0.0, 0.0, 0.0]), 1);
        assert_eq!(
            count(&[0.0, 0.0, 0.0, 40.0, 45.0, 0.0, 45.0, 40.0, 0.0, 0.0, 0.0]),
            1,
            "one, broken in two"
        );
        assert_eq!(count(&[0.0, 0.0, 0.0, 45.0, 45.0, 45.0, 0.0, 0.0, 0.0]), 0, "135 degrees");
        assert_eq!(count(&[0.0, 0.0, 0.0, 50.0, 50.0, -50.0, -50.0, 0.0, 0.0, 0.0]), 0, "to either side");
        assert_eq!(
            count(&[0.0, 10.0, 15.0, 15.0, 15.0, 15.0, 15.0, 15.0, 15.0, 15.0, 15.0, 15.0, 0.0]),
            0,
            "38 m"
        );
    }

    #[test]
    fn few_points_have_none() {
        assert_eq!(count(&[]), 0);
        assert_eq!(count(&[170.0, 170.0]), 0);
    }
}
