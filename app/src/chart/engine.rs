//! The truck's power by engine speed: what it pulls with, and what each stage holds with.

use super::markup::{Anchor, Markup};
use super::path::Path;
use super::scale::Scale;
use super::ticks::nice_ticks;
use crate::format::{self, Units};
use solver::truck::{Truck, Warmth};
use solver::units::RevPerMin;

/// Ends of the curves in a drawing of 300 by 170 px of its own.
const LEFT: f64 = 34.0;
const RIGHT: f64 = 290.0;
const TOP: f64 = 18.0;
const FOOT: f64 = 144.0;
/// Points of a curve.
const POINTS: usize = 48;

/// Draws pulling power, and holding power of each stage: at the engine with motoring, and on the
/// shaft what lasts in the highest gear that is direct or nearest to it.
#[must_use]
pub(crate) fn draw(truck: &Truck, units: Units) -> Markup {
    let mut layer = Markup::default();
    let (slow, fast) = (truck.spec().lowest_rpm.min(800.0), truck.highest_engine_speed().0);
    let rpm = |k: usize| slow + (fast - slow) * (k as f64 / POINTS as f64);
    let direct =
        truck.gears().min_by(|a, b| (truck.ratio(*a) - 1.0).abs().total_cmp(&(truck.ratio(*b) - 1.0).abs()));
    let holding = |stage, n: f64| {
        let at_engine = truck.retarding_power(stage, RevPerMin(n)).0;
        let on_shaft = direct.map_or(0.0, |gear| {
            let speed = truck.road_speed(gear, RevPerMin(n));
            truck.shaft_power(gear, stage, speed, Warmth::SUSTAINED).0
        });
        at_engine + on_shaft
    };
    let pulling = |n: f64| truck.full_load_torque(RevPerMin(n)) * RevPerMin(n).radians_per_second();
    let most =
        (0..=POINTS).map(rpm).map(|n| pulling(n).max(holding(truck.full_stage(), n))).fold(1.0, f64::max);
    let across = Scale::new((slow, fast), (LEFT, RIGHT));
    let up = Scale::new((0.0, most / units.watts_per_power()), (FOOT, TOP));
    for mark in nice_ticks(0.0, most / units.watts_per_power(), 4).values {
        layer.line("engine-grid", (LEFT, up.at(mark)), (RIGHT, up.at(mark)));
        layer.text("engine-tick", Anchor::End, (LEFT - 4.0, up.at(mark) + 4.0), &format::whole(mark));
    }
    for mark in nice_ticks(slow, fast, 4).values {
        layer.text("engine-tick", Anchor::Middle, (across.at(mark), FOOT + 14.0), &format::whole(mark));
    }
    let mut curve = |class: &str, power: &dyn Fn(f64) -> f64| {
        // A curve that is off for a while comes in pieces.
        let mut path = Path::default();
        let mut piece: Vec<(f64, f64)> = Vec::new();
        for n in (0..=POINTS).map(rpm) {
            let value = power(n);
            if value > 0.0 {
                piece.push((across.at(n), up.at(value / units.watts_per_power())));
            } else if !piece.is_empty() {
                path.polyline(&std::mem::take(&mut piece));
            }
        }
        path.polyline(&piece);
        layer.path(class, &path);
    };
    for stage in truck.stages() {
        curve("engine-hold", &|n| holding(stage, n));
    }
    curve("engine-pull", &pulling);
    layer
}

#[cfg(test)]
mod tests {
    use super::draw;
    use crate::format::Units;
    use solver::truck::{Preset, RetarderKind, Truck};

    #[test]
    fn each_stage_has_its_curve_for_every_kind() {
        for kind in RetarderKind::ALL {
            let mut spec = Preset::FiveAxle36.spec();
            spec.take_retarder(kind);
            let truck = Truck::new(spec).expect("a truck");
            let text = draw(&truck, Units::Metric).into_string();
            assert_eq!(text.matches("engine-hold").count(), truck.stages().count(), "{kind:?}");
            assert_eq!(text.matches("engine-pull").count(), 1);
            assert!(!text.contains("NaN"));
        }
    }
}
