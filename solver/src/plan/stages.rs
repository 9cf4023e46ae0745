//! Stages along a descent.

use crate::motion::{Hold, Trip};
use crate::road::Road;
use crate::truck::Stage;
use crate::units::{Grade, Metres, MetresPerSecond};
use serde::{Deserialize, Serialize};

/// A stretch of a descent with one stage.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct StageSpan {
    /// Grid index where it begins.
    pub from: usize,
    /// Grid index where it ends.
    pub to: usize,
    /// The weakest stage that holds there.
    pub stage: Stage,
}

/// The weakest stage that holds on each grade of a stretch, or the strongest where none does; equal
/// neighbours are joined.
pub(crate) fn stage_spans(trip: Trip<'_>, road: &Road, hold: &Hold) -> Vec<StageSpan> {
    let mut spans: Vec<StageSpan> = Vec::new();
    let inside = road.segments().iter().filter(|s| s.to > hold.from && s.from < hold.to);
    for segment in inside {
        let (mut from, end) = (segment.from.max(hold.from), segment.to.min(hold.to));
        let grade = Grade(road.mean_grade(from, end));
        let air = trip.air(Metres(road.heights_m()[from]));
        while from < end {
            let (speed, to) = driven_at(road, hold.speed, from, end);
            let demand = trip.demand(speed, grade, air);
            let stage = trip.weakest_stage(hold.gear, speed, grade, air, demand);
            match spans.last_mut() {
                Some(last) if last.stage == stage && last.to == from => last.to = to,
                Some(_) | None => spans.push(StageSpan { from, to, stage }),
            }
            from = to;
        }
    }
    spans
}

/// The speed driven from a grid point on (the hold speed or a lower posted limit), and the end of that speed,
/// at most `end`.
pub(super) fn driven_at(
    road: &Road,
    hold: MetresPerSecond,
    from: usize,
    end: usize,
) -> (MetresPerSecond, usize) {
    let (mut speed, mut to) = (hold, end);
    for limit in road.limits() {
        if (limit.from..limit.to).contains(&from) {
            speed = MetresPerSecond(speed.0.min(limit.speed().0));
            to = to.min(limit.to);
        } else if limit.from > from {
            to = to.min(limit.from);
        }
    }
    (speed, to)
}
