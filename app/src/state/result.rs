//! A result: the road, the plan, what they were worked out for, and the picture of both.

use super::asked::{Asked, Origin};
use crate::browser::worker::Heard;
use crate::chart::{Bend, Bracket, Change, Flag, Hold, Posted, RoadPicture, Slope};
use crate::outline::Blank;
use solver::day::Day;
use solver::plan::{Descent, Leg, Plan, SlowCurve};
use solver::road::{Place, PostedLimit, Turn};
use solver::truck::TruckSpec;
use std::sync::Arc;
use workers::message::{LANE_FLOATS, RoadArrays, RoadFacts};

/// A road worked out.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Worked {
    /// The road.
    pub(crate) road: Arc<RoadFacts>,
    /// The plan.
    pub(crate) plan: Plan,
    /// The day that the plan is for.
    pub(crate) day: Day,
    /// The truck that the plan is for.
    pub(crate) truck: TruckSpec,
    /// The picture of both.
    pub(crate) picture: Arc<RoadPicture>,
    /// Where the road comes from.
    pub(crate) origin: Origin,
    /// Name of the file.
    pub(crate) file: String,
    /// How many recordings the road was made of.
    pub(crate) recordings: usize,
}

impl Worked {
    /// What the road is called: by its track, or else by its file.
    pub(crate) fn name(&self) -> &str {
        if self.road.name.is_empty() { &self.file } else { &self.road.name }
    }

    /// The descent in hand: the one chosen, by its number, or else the hardest.
    pub(crate) fn in_hand(&self, chosen: Option<usize>) -> Option<&Descent> {
        let found = self.plan.descents.iter().find(|it| Some(it.number) == chosen);
        found.or_else(|| self.plan.deciding())
    }

    /// Place of a grid point, m from the start.
    pub(crate) fn place_m(&self, index: usize) -> f64 {
        #[allow(clippy::cast_precision_loss, reason = "a road has far fewer than 2⁵² grid points")]
        let count = index as f64;
        count * self.road.step_m
    }

    /// Grid points of the road as recorded that two points of the road shown are, in the order
    /// of recording.
    pub(crate) fn recorded_part(&self, from: usize, to: usize) -> (usize, usize) {
        let points = self.picture.points();
        let start = self.road.part.map_or(0, |(start, _)| start);
        let (from, to) = if self.road.reversed {
            let last = points.saturating_sub(1);
            (last.saturating_sub(to), last.saturating_sub(from))
        } else {
            (from, to)
        };
        (start + from, start + to)
    }

    /// The grid point of the road as recorded that a point of the road shown is.
    pub(crate) fn recorded(&self, shown: usize) -> usize {
        self.recorded_part(shown, shown).0
    }

    /// The point of the road shown that a point of the road as recorded is; `None` where a part is
    /// shown that it does not lie on.
    pub(crate) fn shown(&self, recorded: usize) -> Option<usize> {
        let last = self.picture.points().saturating_sub(1);
        let start = self.road.part.map_or(0, |(start, _)| start);
        let along = recorded.checked_sub(start).filter(|along| *along <= last)?;
        Some(if self.road.reversed { last - along } else { along })
    }

    /// A stretch of the road as recorded that begins at a point and goes so far in the direction
    /// shown, or as far as the road; never empty.
    pub(crate) fn ahead_of(&self, recorded: usize, length_m: f64) -> (usize, usize) {
        let last = self.picture.points().saturating_sub(1);
        let from = self.shown(recorded).unwrap_or(0).min(last.saturating_sub(1));
        let to = self.picture.nearest(self.place_m(from) + length_m).max(from + 1);
        self.recorded_part(from, to)
    }

    /// What of the road was not assessed.
    pub(crate) fn blank(&self) -> Option<Blank> {
        Blank::of(&self.road, &self.picture.heights_m)
    }

    /// Heights of start and end, m.
    pub(crate) fn ends_m(&self) -> (f64, f64) {
        let heights = &self.picture.heights_m;
        let height = |at: Option<&f32>| f64::from(at.copied().unwrap_or(0.0));
        (height(heights.first()), height(heights.last()))
    }
}

/// The road's part of the picture, kept while only the plan changes.
#[derive(Clone)]
pub(super) struct Surveyed {
    pub(super) facts: Arc<RoadFacts>,
    heights: Arc<[f32]>,
    recorded: Arc<[f32]>,
    east: Arc<[f32]>,
    north: Arc<[f32]>,
    assessed: Arc<[bool]>,
}

#[allow(clippy::cast_possible_truncation, reason = "a picture needs no more than single precision")]
fn single(value: f64) -> f32 {
    value as f32
}

impl Surveyed {
    /// Takes the arrays out of the message, in the order of [`RoadArrays`]. The heights of the
    /// road before are kept where they are the same: whoever looks at a road looks at the same
    /// one still when only a place was put on it.
    pub(super) fn new(facts: RoadFacts, heard: &Heard, before: Option<&Self>) -> Self {
        let assessed = heard.bytes(RoadArrays::FLOATS).iter().map(|byte| *byte != 0).collect();
        let heights = heard.floats(0);
        let same = before.filter(|it| it.heights == heights);
        Self {
            heights: same.map_or(heights, |it| it.heights.clone()),
            recorded: heard.floats(1),
            east: heard.floats(2),
            north: heard.floats(3),
            facts: Arc::new(facts),
            assessed,
        }
    }

    /// The result of a plan for this road; the arrays are in the order of the solver's lanes.
    pub(super) fn with_plan(&self, plan: Plan, heard: &Heard, asked: &Asked) -> Worked {
        let truck = &asked.task.truck;
        let day = asked.task.day;
        let count = |length: usize| u8::try_from(length).unwrap_or(u8::MAX);
        let picture = RoadPicture {
            step_m: single(self.facts.step_m),
            heights_m: self.heights.clone(),
            recorded_m: self.recorded.clone(),
            slopes: self.slopes(),
            assessed: self.assessed.clone(),
            speed: heard.floats(0),
            engine_speed: heard.floats(1),
            temperature: heard.floats(2),
            after_stop: heard.floats(3),
            temperature_band: None,
            speed_band: None,
            carried: heard.floats(4),
            gear: heard.bytes(LANE_FLOATS),
            stage: heard.bytes(LANE_FLOATS + 1),
            heat: heard.bytes(LANE_FLOATS + 2),
            east_m: self.east.clone(),
            north_m: self.north.clone(),
            gears: count(truck.gears.len()),
            stages: count(truck.retarder.stage_count()),
            heat_limit_c: single(day.heat_limit_c),
            start_c: single(day.brakes_at_start_c),
            speed_limit: single(day.speed_limit().0),
            descents: plan.descents.iter().map(bracket).collect(),
            hardest: plan.deciding().map(|it| it.number),
            bends: plan.curves.iter().map(bend).collect(),
            places: self.facts.places.iter().map(flag).collect(),
            posted: self.facts.limits.iter().map(posted).collect(),
            beside: None,
        };
        Worked {
            road: self.facts.clone(),
            plan,
            day,
            truck: truck.clone(),
            picture: Arc::new(picture),
            origin: asked.source.origin,
            file: asked.source.name(),
            recordings: asked.source.also.len() + 1,
        }
    }

    fn slopes(&self) -> Vec<Slope> {
        let slope = |segment: &solver::road::GradeSegment| Slope {
            from: segment.from,
            to: segment.to,
            grade: single(segment.grade),
            plus_minus: single(segment.plus_minus),
        };
        self.facts.segments.iter().map(slope).collect()
    }
}

fn bracket(descent: &Descent) -> Bracket {
    Bracket {
        number: descent.number,
        from: descent.from,
        to: descent.to,
        mean: single(descent.mean.0),
        verdict: descent.choice.verdict(),
        legs: descent.legs.iter().map(hold).collect(),
    }
}

fn hold(leg: &Leg) -> Hold {
    Hold {
        from: leg.from,
        gear: leg.gear.number(),
        speed: single(leg.speed.0),
        change: leg.change.map(Change::of),
    }
}

fn bend(slow: &SlowCurve) -> Bend {
    Bend {
        from: slow.curve.from,
        to: slow.curve.to,
        radius_m: single(slow.curve.radius_m),
        left: slow.curve.turn == Turn::Left,
        hairpin: slow.curve.hairpin,
        speed: single(slow.speed.0),
    }
}

fn posted(limit: &PostedLimit) -> Posted {
    Posted { from: limit.from, to: limit.to, speed: single(limit.speed().0) }
}

fn flag(place: &Place) -> Flag {
    Flag { at: place.index, name: place.name.clone(), kind: place.kind }
}
