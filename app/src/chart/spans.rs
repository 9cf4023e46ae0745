//! What the picture shows, in stretches: for whoever reads it as a table.

use super::picture::{Bracket, RoadPicture, small, value};
use solver::HeatStep;

/// A stretch on which one thing is to be done.
///
/// On a descent that is one gear at one stage, but for what is too short to be told; between descents, where the driver drives as on
/// any road, all of it is one stretch, and the ends of what changes on it are given.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Span {
    /// Where it begins, m from the start.
    pub(crate) from_m: f64,
    /// Where it ends.
    pub(crate) to_m: f64,
    /// Whether the road was assessed here; where not, nothing else is known.
    pub(crate) assessed: bool,
    /// Number of the descent that it is part of.
    pub(crate) descent: Option<usize>,
    /// Mean grade, rise over run.
    pub(crate) grade: f64,
    /// Lowest and highest gear.
    pub(crate) gear: Option<(u8, u8)>,
    /// Lowest and highest stage.
    pub(crate) stage: Option<(u8, u8)>,
    /// Slowest and fastest speed, m/s.
    pub(crate) speed: Option<(f64, f64)>,
    /// Hottest step.
    pub(crate) heat: Option<HeatStep>,
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
pub(crate) fn spans(picture: &RoadPicture) -> Vec<Span> {
    let last = picture.points().saturating_sub(1);
    let short = |from: usize, to: usize| picture.place_of(to - from) < SHORTEST_TOLD_M;
    let mut all: Vec<(usize, usize, Same)> = Vec::new();
    let (mut from, mut now) = (0, same(picture, 0));
    for index in 1..=last {
        let next = same(picture, index);
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
    all.iter().map(|(from, to, same)| span(picture, *from, *to, same)).collect()
}

fn same(picture: &RoadPicture, index: usize) -> Same {
    // A value holds from its grid point to the next, so that a foot is no part of its descent.
    let on_it = |it: &&Bracket| it.from <= index && index < it.to;
    let descent = picture.descents.iter().rev().find(on_it).map(|it| it.number);
    let assessed = picture.is_assessed(index);
    let told = |lane: &[u8]| small(lane, index).filter(|_| descent.is_some() && assessed);
    Same { assessed, descent, gear: told(&picture.gear), stage: told(&picture.stage) }
}

fn span(picture: &RoadPicture, from: usize, to: usize, same: &Same) -> Span {
    let within = if same.assessed { from..to } else { from..from };
    let ends = |told: Option<u8>, lane: &[u8]| match told {
        Some(told) => Some((told, told)),
        None => {
            let values = || within.clone().filter_map(|index| small(lane, index));
            Some((values().min()?, values().max()?))
        }
    };
    let speeds = within.clone().filter_map(|index| value(&picture.speed, index));
    let speed = speeds.fold((f64::INFINITY, 0.0_f64), |(low, high), it| (low.min(it), high.max(it)));
    let height = |index| value(&picture.heights_m, index).unwrap_or(f64::NAN);
    let (from_m, to_m) = (picture.place_of(from), picture.place_of(to));
    let hottest = ends(None, &picture.heat).map(|(_, hottest)| usize::from(hottest));
    Span {
        from_m,
        to_m,
        assessed: same.assessed,
        descent: same.descent,
        grade: (height(to) - height(from)) / (to_m - from_m),
        gear: ends(same.gear, &picture.gear),
        stage: ends(same.stage, &picture.stage),
        speed: Some(speed).filter(|(low, _)| low.is_finite()),
        heat: hottest.and_then(|it| HeatStep::ALL.get(it).copied()),
    }
}

#[cfg(test)]
mod tests {
    use super::spans;
    use crate::chart::sample;

    #[test]
    fn stretches_tile_the_road_and_each_descent_begins_and_ends_with_one() {
        let picture = sample::pass();
        let all = spans(&picture);
        assert!(all[0].from_m == 0.0);
        assert!(all.windows(2).all(|pair| pair[0].to_m == pair[1].from_m));
        assert!((all[all.len() - 1].to_m - picture.length_m()).abs() < 1e-6);
        for descent in &picture.descents {
            let own: Vec<_> = all.iter().filter(|it| it.descent == Some(descent.number)).collect();
            assert!((own[0].from_m - picture.place_of(descent.from)).abs() < 1e-6);
            assert!((own[own.len() - 1].to_m - picture.place_of(descent.to)).abs() < 1e-6);
            let one = |ends: Option<(u8, u8)>| ends.is_some_and(|(low, high)| low == high);
            assert!(own.iter().all(|it| one(it.gear) && one(it.stage)));
            assert!(own.len() == 1 || own.iter().all(|it| it.to_m - it.from_m >= 100.0));
            let fall: f64 = own.iter().map(|it| it.grade * (it.to_m - it.from_m)).sum();
            let run = picture.place_of(descent.to) - picture.place_of(descent.from);
            assert!((fall / run - f64::from(descent.mean)).abs() < 0.002, "{fall} over {run}");
        }
    }

    #[test]
    fn nothing_is_said_where_the_road_was_not_assessed() {
        let all = spans(&sample::pass());
        let blank: Vec<_> = all.iter().filter(|it| !it.assessed).collect();
        assert!(!blank.is_empty());
        assert!(blank.iter().all(|it| it.gear.is_none() && it.stage.is_none()));
        assert!(blank.iter().all(|it| it.speed.is_none() && it.heat.is_none()));
        assert!(all.iter().filter(|it| it.assessed).all(|it| it.speed.is_some()));
    }

    #[test]
    fn a_road_without_length_has_no_stretch() {
        let mut picture = sample::pass();
        picture.heights_m = vec![1.0].into();
        assert!(spans(&picture).is_empty());
    }
}
