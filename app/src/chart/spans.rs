//! What the picture shows, in stretches: for whoever reads it as a table.

use super::picture::{Bracket, value};
use super::scene::Prepared;
use std::ops::Range;

/// A stretch on which one thing is to be done.
///
/// On a descent that is one gear at one stage, but for what is too short to be told; between
/// descents, where the driver drives as on any road, all of it is one stretch, and the ends of
/// what changes on it are given.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Span {
    /// Where it begins and ends, m from the start.
    pub(crate) ends_m: [f64; 2],
    /// Whether the road was assessed here; where not, nothing else is known.
    pub(crate) assessed: bool,
    /// Number of the descent that it is part of.
    pub(crate) descent: Option<usize>,
    /// Mean grade, rise over run.
    pub(crate) grade: f64,
    /// Least and greatest gear, stage, whole speed in the units read, and heat step.
    pub(crate) lanes: [Option<(u8, u8)>; 4],
}

/// A change that lasts no longer than this is left to the picture, m: distances are told in tenths
/// of a kilometre.
const SHORTEST_TOLD_M: f64 = 100.0;

/// What must not change within a stretch.
#[derive(Clone, Copy, PartialEq)]
struct Same {
    assessed: bool,
    descent: Option<usize>,
    gear: Option<u8>,
    stage: Option<u8>,
}

/// All stretches, in road order: they tile the road from end to end.
#[must_use]
pub(crate) fn spans(prepared: &Prepared) -> Vec<Span> {
    let picture = &prepared.picture;
    let last = picture.points().saturating_sub(1);
    let short = |from: usize, to: usize| picture.place_of(to - from) < SHORTEST_TOLD_M;
    let mut all: Vec<(usize, usize, Same)> = Vec::new();
    let (mut from, mut now) = (0, same(prepared, 0));
    for index in 1..=last {
        let next = same(prepared, index);
        if index < last && next == now {
            continue;
        }
        let part = (now.assessed, now.descent);
        match all.last_mut().filter(|it| (it.2.assessed, it.2.descent) == part) {
            // What is told is what lasts.
            Some(before) if short(before.0, before.1) => *before = (before.0, index, now),
            Some(before) if short(from, index) => before.1 = index,
            Some(_) | None => all.push((from, index, now)),
        }
        (from, now) = (index, next);
    }
    all.iter().map(|(from, to, same)| span(prepared, *from..*to, same)).collect()
}

fn same(prepared: &Prepared, index: usize) -> Same {
    // A value holds from its grid point to the next, so that a foot is no part of its descent.
    let on_it = |it: &&Bracket| it.from <= index && index < it.to;
    let descent = prepared.picture.descents.iter().rev().find(on_it).map(|it| it.number);
    let told = |lane: &[Option<u8>]| lane.get(index).copied().flatten().filter(|_| descent.is_some());
    let assessed = prepared.picture.is_assessed(index);
    Same { assessed, descent, gear: told(&prepared.gear), stage: told(&prepared.stage) }
}

fn span(prepared: &Prepared, cells: Range<usize>, same: &Same) -> Span {
    let picture = &prepared.picture;
    let height = |index| value(&picture.heights_m, index).unwrap_or(f64::NAN);
    let ends_m = [cells.start, cells.end].map(|index| picture.place_of(index));
    let grade = (height(cells.end) - height(cells.start)) / (ends_m[1] - ends_m[0]);
    let told = [same.gear, same.stage, None, None];
    let lanes = [&prepared.gear, &prepared.stage, &prepared.whole_speed, &prepared.heat];
    let lanes = [0, 1, 2, 3].map(|lane: usize| match told[lane] {
        _ if !same.assessed => None,
        Some(told) => Some((told, told)),
        None => ends(lanes[lane].get(cells.clone()).unwrap_or_default()),
    });
    Span { ends_m, assessed: same.assessed, descent: same.descent, grade, lanes }
}

fn ends(values: &[Option<u8>]) -> Option<(u8, u8)> {
    let mut ends = None;
    for value in values.iter().flatten() {
        let (low, high) = ends.unwrap_or((*value, *value));
        ends = Some((low.min(*value), high.max(*value)));
    }
    ends
}

#[cfg(test)]
mod tests {
    use super::{Span, spans};
    use crate::chart::reading::Reading;
    use crate::chart::sample;
    use crate::chart::scene::Prepared;
    use crate::chart::{RoadPicture, picture::value};
    use crate::format::Units;
    use std::sync::Arc;

    fn of(picture: &RoadPicture) -> Vec<Span> {
        spans(&Prepared::new(Arc::new(picture.clone()), Reading::Gear, Units::Metric))
    }

    #[test]
    fn stretches_tile_the_road_and_each_descent_begins_and_ends_with_one() {
        let picture = sample::pass();
        let all = of(&picture);
        assert!(all[0].ends_m[0].abs() < 1e-9);
        assert!(all.windows(2).all(|pair| (pair[0].ends_m[1] - pair[1].ends_m[0]).abs() < 1e-9));
        assert!((all[all.len() - 1].ends_m[1] - picture.length_m()).abs() < 1e-6);
        for descent in &picture.descents {
            let own: Vec<_> = all.iter().filter(|it| it.descent == Some(descent.number)).collect();
            let (first, last) = (own[0].ends_m[0], own[own.len() - 1].ends_m[1]);
            assert!((first - picture.place_of(descent.from)).abs() < 1e-6);
            assert!((last - picture.place_of(descent.to)).abs() < 1e-6);
            let one = |ends: Option<(u8, u8)>| ends.is_some_and(|(low, high)| low == high);
            assert!(own.iter().any(|it| it.assessed));
            let mut assessed = own.iter().filter(|it| it.assessed);
            assert!(assessed.all(|it| one(it.lanes[0]) && one(it.lanes[1])));
            let length = |it: &Span| it.ends_m[1] - it.ends_m[0];
            assert!(own.len() == 1 || own.iter().all(|it| length(it) >= 100.0));
            let fall: f64 = own.iter().map(|it| it.grade * length(it)).sum();
            let [top, foot] = [descent.from, descent.to].map(|it| f64::from(picture.heights_m[it]));
            assert!((fall - (foot - top)).abs() < 1e-6, "{fall}");
        }
    }

    #[test]
    fn between_descents_the_ends_of_what_changes_are_given() {
        let picture = sample::pass();
        let all = of(&picture);
        let first = all.iter().find(|it| it.descent.is_none() && it.assessed).expect("it begins so");
        let cells = picture.nearest(first.ends_m[0])..picture.nearest(first.ends_m[1]);
        let kmh = cells.filter_map(|index| value(&picture.speed, index)).map(|it| it * 3.6);
        let fastest = kmh.fold(0.0_f64, f64::max);
        let (slow, fast) = first.lanes[2].expect("a speed is known");
        assert!(slow <= fast && f64::from(fast) <= fastest + 0.01 && f64::from(fast) > fastest - 1.01);
    }

    #[test]
    fn nothing_is_said_where_the_road_was_not_assessed() {
        let all = of(&sample::pass());
        let blank: Vec<_> = all.iter().filter(|it| !it.assessed).collect();
        assert!(!blank.is_empty());
        assert!(blank.iter().all(|it| it.lanes == [None; 4]));
        assert!(all.iter().filter(|it| it.assessed).all(|it| it.lanes[2].is_some()));
    }

    #[test]
    fn a_road_without_length_has_no_stretch() {
        let mut picture = sample::pass();
        picture.heights_m = vec![1.0].into();
        assert!(of(&picture).is_empty());
    }
}
