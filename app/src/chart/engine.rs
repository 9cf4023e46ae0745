//! The truck's power by engine speed: what it pulls with, and what each stage holds with.

use super::markup::{Anchor, Markup};
use super::path::Path;
use super::scale::Scale;
use super::ticks::nice_ticks;
use crate::format::{self, Units};
use solver::truck::{Ambient, Gear, Stage, Truck, Warmth};
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
    let (slow, fast) = range(truck);
    let rpm = |k: usize| slow + (fast - slow) * (k as f64 / POINTS as f64);
    let holding = |stage, n: f64| holding(truck, stage, n);
    let pulling = |n: f64| pulling(truck, n);
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

/// Engine speeds between which the curves are drawn, 1/min.
fn range(truck: &Truck) -> (f64, f64) {
    (truck.spec().lowest_rpm.min(800.0), truck.highest_engine_speed().0)
}

/// Power that pulls at an engine speed, W.
fn pulling(truck: &Truck, rpm: f64) -> f64 {
    truck.full_load_torque(RevPerMin(rpm)) * RevPerMin(rpm).radians_per_second()
}

/// Power that a stage holds with at an engine speed, W.
fn holding(truck: &Truck, stage: Stage, rpm: f64) -> f64 {
    let off_direct = |gear: &Gear| (truck.ratio(*gear) - 1.0).abs();
    let direct = truck.gears().min_by(|a, b| off_direct(a).total_cmp(&off_direct(b)));
    let on_shaft = direct.map_or(0.0, |gear| {
        let speed = truck.road_speed(gear, RevPerMin(rpm));
        truck.shaft_power(gear, stage, speed, Ambient::STANDARD, Warmth::SUSTAINED).0
    });
    truck.retarding_power(stage, RevPerMin(rpm)).0 + on_shaft
}

/// The curves at round engine speeds: that speed, what pulls there and what each stage holds, in
/// the unit read.
#[must_use]
pub(crate) fn figures(truck: &Truck, units: Units) -> Vec<Vec<f64>> {
    let (slow, fast) = range(truck);
    let at = |rpm: f64| {
        let mut row = vec![rpm, pulling(truck, rpm) / units.watts_per_power()];
        for stage in truck.stages() {
            row.push(holding(truck, stage, rpm) / units.watts_per_power());
        }
        row
    };
    nice_ticks(slow, fast, 8).values.into_iter().map(at).collect()
}

#[cfg(test)]
mod tests {
    use super::{draw, figures};
    use crate::format::Units;
    use solver::truck::{Preset, RetarderKind, Truck};
    use solver::units::RevPerMin;

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

    #[test]
    fn the_figures_are_those_of_the_curves() {
        let truck = Truck::new(Preset::FiveAxle36.spec()).expect("a truck");
        let rows = figures(&truck, Units::Metric);
        assert!(rows.len() >= 5, "{}", rows.len());
        for row in &rows {
            assert_eq!(row.len(), 2 + truck.stages().count());
            let full = truck.retarding_power(truck.full_stage(), RevPerMin(row[0])).0;
            assert!((1e3 * row[row.len() - 1] - full).abs() < 1.0, "nothing of it is on the shaft");
            assert!(row[2..].windows(2).all(|pair| pair[0] <= pair[1]), "more stage, more power");
        }
    }
}
