//! Holding force against road speed: a curve for each gear, the demand of a hill across them.
//!
//! A curve ends where its gear does, at the lowest and the highest useful engine speed. Where it
//! rises through the demand the truck settles: the control speed of that gear.

use super::markup::{Anchor, Markup};
use super::path::Path;
use super::scale::Scale;
use super::ticks::nice_ticks;
use crate::format::{self, Units};
use solver::motion::{Answer, Trip, control_speed};
use solver::plan::HOLD_SHARE;
use solver::truck::{Gear, Stage};
use solver::units::{Grade, Metres, MetresPerSecond};

/// The drawing is so large, px of its own, and legible from the last row: no text below 28 px.
pub(crate) const SIZE: (f64, f64) = (1_200.0, 340.0);
const LEFT: f64 = 120.0;
const RIGHT: f64 = 1_080.0;
const TOP: f64 = 24.0;
const FOOT: f64 = 280.0;
/// Points of a curve.
const POINTS: usize = 40;
/// The picture is so much higher than the steepest demand in it, and leaves lower gears out above.
const ROOM: f64 = 1.6;
/// Room that a gear's number takes, px.
const NUMBER_PX: f64 = 32.0;
/// Demands of other grades beside the one chosen, rise over run. Round figures to compare with.
const OTHERS: [f64; 4] = [-0.03, -0.06, -0.09, -0.12];

/// What is drawn.
#[derive(Clone, Copy)]
pub(crate) struct Forces<'a> {
    /// Truck and day.
    pub(crate) trip: Trip<'a>,
    /// Height above the sea.
    pub(crate) height: Metres,
    /// The grade, downhill negative.
    pub(crate) grade: Grade,
    /// The stage whose curves are drawn for all gears.
    pub(crate) stage: Stage,
    /// The units read.
    pub(crate) units: Units,
}

/// Scales of a drawing, for who drags in it.
#[derive(Clone, Copy)]
pub(crate) struct Scales {
    across: Scale,
    up: Scale,
}

impl Forces<'_> {
    fn scales(&self) -> Scales {
        let fastest = self.trip.top_speed().0;
        let steepest = OTHERS.iter().chain([&self.grade.0]).copied().fold(0.0, f64::min);
        let most = self.demand(Grade(steepest), 0.0).max(1.0) * ROOM;
        Scales { across: Scale::new((0.0, fastest), (LEFT, RIGHT)), up: Scale::new((0.0, most), (FOOT, TOP)) }
    }

    fn demand(&self, grade: Grade, speed: f64) -> f64 {
        self.trip.demand(MetresPerSecond(speed), grade, self.trip.air(self.height)).0
    }

    /// What each gear does with this stage on this grade, the lowest first.
    pub(crate) fn answers(&self) -> Vec<(Gear, Answer)> {
        let answer = |gear| control_speed(self.trip, gear, self.stage, self.grade, self.height);
        self.trip.truck.gears().map(|gear| (gear, answer(gear))).collect()
    }

    /// The highest gear that holds with the day's reserve, and the fastest whole speed in it: where a
    /// crossing has none at all. By the rule of the plan, for this grade and stage alone: a plan looks
    /// at curves, limits and heat as well.
    pub(crate) fn kept(&self) -> Option<(Gear, MetresPerSecond)> {
        let Trip { truck, day } = self.trip;
        let (air, unit) = (self.trip.air(self.height), self.units.metres_per_second_per_speed());
        let keeps = |gear| {
            let turned = truck.road_speed(gear, truck.highest_engine_speed() * HOLD_SHARE);
            let fastest = turned.0.min(day.speed_limit().0);
            // A hair more: 80 km/h in m/s and back may be a little less than 80.
            let speed = MetresPerSecond((fastest / unit + 1e-6).floor() * unit);
            if speed.0 <= 0.0
                || !truck.is_coupled(gear)
                || truck.engine_speed(gear, speed) < truck.lowest_engine_speed(self.stage)
            {
                return None;
            }
            let held = self.trip.holding(gear, self.stage, speed, air);
            let wanted = self.demand(self.grade, speed.0) * (1.0 + day.reserve);
            let gripped = held <= self.trip.grip_for_retarding(self.grade);
            (gripped && held.0 >= wanted).then_some((gear, speed))
        };
        truck.gears().rev().find_map(keeps)
    }

    /// The grade whose demand passes through a place in the drawing: rise over run.
    pub(crate) fn grade_at(&self, x: f64, y: f64) -> f64 {
        let Scales { across, up } = self.scales();
        let (speed, force) = (across.back(x), up.back(y));
        let weight = self.trip.weight().0;
        // Of small grades sine and tangent are one; the page rounds to a tenth of a point.
        let level = self.demand(Grade(0.0), speed);
        -(force - level) / weight
    }

    /// Draws it.
    pub(crate) fn draw(&self) -> Markup {
        let mut layer = Markup::default();
        let scales = self.scales();
        self.axes(&mut layer, scales);
        let mut ends = Vec::new();
        for gear in self.trip.truck.gears() {
            ends.extend(self.curve(&mut layer, scales, gear).map(|end| (gear, end)));
        }
        let shown = (self.grade.0 * 1_000.0).round();
        for other in OTHERS.into_iter().filter(|it| (it * 1_000.0).round() - shown != 0.0) {
            self.hill(&mut layer, scales, "force-other", Grade(other));
        }
        self.hill(&mut layer, scales, "force-demand", self.grade);
        self.crossings(&mut layer, scales);
        // Last, so that no line crosses a number.
        let mut before = (0.0_f64, 0.0_f64);
        for (gear, (x, y)) in ends {
            let mut place = (x + 2.0, (y - 10.0).max(TOP + 6.0));
            // High gears are cut off at the same speed: their numbers would lie on each other.
            if (place.0 - before.0).abs() < NUMBER_PX && (place.1 - before.1).abs() < NUMBER_PX {
                place.0 = before.0 - 1.4 * NUMBER_PX;
            }
            before = place;
            layer.text("force-number", Anchor::Middle, place, &gear.number().to_string());
        }
        layer
    }

    fn axes(&self, layer: &mut Markup, Scales { across, up }: Scales) {
        let speed = self.units.metres_per_second_per_speed();
        let (force, decimals) = (self.units.newtons_per_force(), 0);
        for mark in nice_ticks(0.0, up.domain().1 / force, 5).values {
            let y = up.at(mark * force);
            layer.line("force-grid", (LEFT, y), (RIGHT, y));
            layer.text("force-tick", Anchor::End, (LEFT - 10.0, y + 10.0), &format!("{mark:.decimals$}"));
        }
        for mark in nice_ticks(0.0, across.domain().1 / speed, 8).values {
            let x = across.at(mark * speed);
            layer.line("force-grid", (x, FOOT), (x, FOOT + 8.0));
            layer.text("force-tick", Anchor::Middle, (x, FOOT + 38.0), &format::whole(mark));
        }
        layer.text("force-tick", Anchor::Start, (RIGHT + 32.0, FOOT + 38.0), self.units.speed());
        layer.text("force-tick", Anchor::Start, (8.0, TOP + 8.0), self.units.force());
    }

    /// A gear's curve; its fast end, as far as it is inside.
    fn curve(&self, layer: &mut Markup, Scales { across, up }: Scales, gear: Gear) -> Option<(f64, f64)> {
        let truck = self.trip.truck;
        let (low, high) = (truck.lowest_engine_speed(self.stage), truck.highest_engine_speed());
        if low >= high || !truck.is_coupled(gear) {
            return None;
        }
        let ends = (truck.road_speed(gear, low).0, truck.road_speed(gear, high).0);
        let air = self.trip.air(self.height);
        let force = |v: f64| self.trip.holding(gear, self.stage, MetresPerSecond(v), air).0;
        let points: Vec<(f64, f64)> = (0..=POINTS)
            .map(|k| ends.0 + (ends.1 - ends.0) * (k as f64 / POINTS as f64))
            .take_while(|v| *v <= across.domain().1)
            .map(|v| (across.at(v), up.at(force(v))))
            .collect();
        let inside: Vec<(f64, f64)> = points.iter().copied().filter(|(_, y)| *y >= TOP - 6.0).collect();
        let mut path = Path::default();
        path.polyline(&inside);
        layer.path("force-gear", &path);
        inside.last().copied()
    }

    /// What a hill asks for, over all speeds, with its grade at its end.
    fn hill(&self, layer: &mut Markup, Scales { across, up }: Scales, class: &str, grade: Grade) {
        let fastest = across.domain().1;
        let points: Vec<(f64, f64)> = (0..=POINTS)
            .map(|k| fastest * (k as f64 / POINTS as f64))
            .map(|v| (across.at(v), up.at(self.demand(grade, v))))
            .filter(|(_, y)| (TOP..=FOOT).contains(y))
            .collect();
        let mut path = Path::default();
        path.polyline(&points);
        layer.path(class, &path);
        if let Some((x, y)) = points.last() {
            let text = format!("{class}-grade");
            layer.text(&text, Anchor::Start, (*x + 10.0, *y + 10.0), &format::grade(grade.0));
        }
    }

    /// Where gears settle.
    fn crossings(&self, layer: &mut Markup, Scales { across, up }: Scales) {
        for (gear, answer) in self.answers() {
            let Answer::Settles { speed, .. } = answer else { continue };
            let y = up.at(self.demand(self.grade, speed.0));
            if speed.0 <= across.domain().1 && y >= TOP {
                layer.group(&format!("crossing-{}", gear.number()));
                layer.circle("force-crossing", (across.at(speed.0), y), 11.0);
                layer.end();
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use solver::day::Day;
    use solver::truck::{Preset, RetarderKind, Truck};

    fn forces<'a>(truck: &'a Truck, day: &'a Day, grade: f64, stage: Stage) -> Forces<'a> {
        let trip = Trip { truck, day };
        Forces { trip, height: Metres(500.0), grade: Grade(grade), stage, units: Units::Metric }
    }

    #[test]
    fn a_curve_for_each_gear_and_a_mark_for_each_that_settles() {
        for kind in RetarderKind::ALL {
            let mut spec = Preset::FiveAxle36.spec();
            spec.take_retarder(kind);
            let truck = Truck::new(spec).expect("a truck");
            for stage in truck.stages() {
                let drawn = forces(&truck, &Day::USUAL, -0.06, stage);
                let settles =
                    drawn.answers().iter().filter(|(_, it)| matches!(it, Answer::Settles { .. })).count();
                let text = drawn.draw().into_string();
                assert!(!text.contains("NaN"), "{text}");
                assert!(text.matches("\"force-gear\"").count() >= 3, "{kind:?} {stage:?}");
                let marked = text.matches("force-crossing").count();
                assert!(marked <= settles && marked + 2 >= settles, "{marked} of {settles}");
            }
        }
    }

    #[test]
    fn what_is_dragged_to_is_the_grade_drawn_there() {
        let truck = Truck::new(Preset::FiveAxle36.spec()).expect("a truck");
        for grade in [-0.03, -0.055, -0.08] {
            let drawn = forces(&truck, &Day::USUAL, grade, truck.full_stage());
            let Scales { across, up } = drawn.scales();
            for speed in [3.0, 10.0, 20.0] {
                let (x, y) = (across.at(speed), up.at(drawn.demand(Grade(grade), speed)));
                let found = drawn.grade_at(x, y);
                assert!((found - grade).abs() < 5e-4, "{found} for {grade}");
            }
        }
    }

    #[test]
    fn what_keeps_the_reserve_is_no_crossing_and_no_higher_gear() {
        let truck = Truck::new(Preset::FiveAxle36.spec()).expect("a truck");
        let mut lower = 0;
        for grade in [-0.03, -0.045, -0.06, -0.075, -0.09] {
            let drawn = forces(&truck, &Day::USUAL, grade, truck.full_stage());
            let (gear, speed) = drawn.kept().expect("a gear keeps it");
            let held = drawn.trip.holding(gear, drawn.stage, speed, drawn.trip.air(drawn.height)).0;
            assert!(held >= 1.15 * drawn.demand(Grade(grade), speed.0), "{grade}: {gear:?} {speed:?}");
            let settles = |(gear, it): &(Gear, Answer)| matches!(it, Answer::Settles { .. }).then_some(*gear);
            let highest = drawn.answers().iter().filter_map(settles).next_back();
            lower += u32::from(highest.is_some_and(|it| it.number() > gear.number()));
            assert!(highest.is_none_or(|it| it.number() >= gear.number()), "{grade}: {highest:?} {gear:?}");
        }
        assert!(lower > 0, "somewhere the gear that settles has too little in reserve");
        let wall = forces(&truck, &Day::USUAL, -0.6, truck.full_stage());
        assert_eq!(wall.kept(), None);
    }

    #[test]
    fn a_steeper_hill_settles_slower_in_the_same_gear_or_not_at_all() {
        let truck = Truck::new(Preset::FiveAxle36.spec()).expect("a truck");
        let held = |grade| {
            let drawn = forces(&truck, &Day::USUAL, grade, truck.full_stage());
            drawn.answers().iter().filter(|(_, it)| !matches!(it, Answer::Overruns { .. })).count()
        };
        assert!(held(-0.04) > held(-0.08), "fewer gears hold the steeper hill");
    }
}
