//! Where a truck is, and what acts on it, at a time of its ride; and how its figures are written.

use crate::format::{self, Units};
use crate::words::words;
use solver::Lanes;
use solver::study::RideLanes;

/// A moment of a ride. Quantities are NaN, gear and stage `None`, where nothing is said.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Moment {
    /// Time since the start, s.
    pub(super) time: f64,
    /// Distance from the start of the road, m.
    pub(super) at_m: f64,
    /// Speed, m/s.
    pub(super) speed: f64,
    /// Engine speed, 1/min.
    pub(super) engine_speed: f64,
    /// Hottest service brakes, °C.
    pub(super) temperature: f64,
    /// Hottest service brakes after one hard stop, °C.
    pub(super) after_stop: f64,
    /// Gravity along the road, N; positive where it pushes.
    pub(super) gravity: f64,
    /// Rolling and air, N; positive where they hold back.
    pub(super) resistance: f64,
    /// Retarder and motoring, N.
    pub(super) held: f64,
    /// Service brakes, N.
    pub(super) braked: f64,
    /// The engine's pull, N.
    pub(super) pulled: f64,
    /// Gear.
    pub(super) gear: Option<u8>,
    /// Stage, 0 is off.
    pub(super) stage: Option<u8>,
}

/// What stands where nothing is said.
pub(super) const NOTHING: &str = "–";

fn written(value: f64, text: impl Fn(f64) -> String) -> String {
    if value.is_finite() { text(value) } else { NOTHING.to_owned() }
}

impl Moment {
    pub(super) fn gear_text(&self) -> String {
        self.gear.map_or_else(|| NOTHING.to_owned(), |gear| gear.to_string())
    }

    pub(super) fn stage_text(&self) -> String {
        match self.stage {
            None => NOTHING.to_owned(),
            Some(0) => words().table_stage(0),
            Some(stage) => stage.to_string(),
        }
    }

    pub(super) fn speed_text(&self, units: Units) -> String {
        written(self.speed, |it| format::met_speed(it, units))
    }

    pub(super) fn engine_speed_text(&self) -> String {
        written(self.engine_speed, format::engine_speed)
    }

    /// The power of retarder and motoring.
    pub(super) fn power_text(&self, units: Units) -> String {
        written(self.held * self.speed, |it| format::power(it, units))
    }

    pub(super) fn temperature_text(&self, units: Units) -> String {
        written(self.temperature, |it| format::temperature(it, units))
    }

    pub(super) fn after_stop_text(&self, units: Units) -> String {
        written(self.after_stop, |it| format::temperature(it, units))
    }
}

/// The moment at a time: what changes steadily is read between two grid points, forces and gear
/// are those of the cell. Before the start and behind the end it is the first and the last one.
pub(super) fn moment(ride: &RideLanes, step_m: f64, time: f64) -> Option<Moment> {
    let last = ride.points().checked_sub(1)?;
    let next = ride.time.partition_point(|it| f64::from(*it) < time).min(last);
    let before = next.saturating_sub(1);
    let of = |lane: &[f32], at: usize| lane.get(at).map_or(f64::NAN, |it| f64::from(*it));
    let (from, to) = (of(&ride.time, before), of(&ride.time, next));
    let share = if to > from { ((time - from) / (to - from)).clamp(0.0, 1.0) } else { 1.0 };
    let between = |lane: &[f32]| {
        let (a, b) = (of(lane, before), of(lane, next));
        a + (b - a) * share
    };
    let small = |lane: &[u8]| lane.get(next).copied().filter(|it| *it != Lanes::BLANK);
    Some(Moment {
        time: time.clamp(0.0, of(&ride.time, last)),
        at_m: (before as f64 + share * (next - before) as f64) * step_m,
        speed: between(&ride.speed),
        engine_speed: of(&ride.engine_speed, next),
        temperature: between(&ride.temperature),
        after_stop: between(&ride.after_stop),
        gravity: of(&ride.gravity, next),
        resistance: of(&ride.resistance, next),
        held: of(&ride.held, next),
        braked: of(&ride.braked, next),
        pulled: of(&ride.pulled, next),
        gear: small(&ride.gear),
        stage: small(&ride.stage),
    })
}

/// How long the ride takes, s.
pub(super) fn duration(ride: &RideLanes) -> f64 {
    ride.time.last().map_or(0.0, |it| f64::from(*it))
}

/// The largest force of the ride, N: arrows are drawn to it.
pub(super) fn largest_force(ride: &RideLanes) -> f64 {
    let lanes = [&ride.gravity, &ride.held, &ride.braked, &ride.pulled, &ride.resistance];
    let all = lanes.into_iter().flatten().map(|it| f64::from(it.abs()));
    all.filter(|it| it.is_finite()).fold(1.0, f64::max)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ride() -> RideLanes {
        let flat = |value: f32| vec![value; 4];
        RideLanes {
            time: vec![0.0, 1.0, 3.0, 7.0],
            speed: vec![10.0, 10.0, 5.0, 2.5],
            engine_speed: flat(1_500.0),
            temperature: vec![80.0, 90.0, 110.0, 150.0],
            after_stop: flat(200.0),
            gravity: vec![1e4, 1e4, 3e4, 3e4],
            resistance: flat(2e3),
            held: flat(2e4),
            braked: flat(0.0),
            pulled: flat(0.0),
            gear: vec![8, 8, 5, Lanes::BLANK],
            stage: vec![0, 0, 3, 3],
        }
    }

    #[test]
    fn between_two_points_it_is_between() {
        let it = moment(&ride(), 10.0, 2.0).expect("a ride");
        assert!((it.at_m - 15.0).abs() < 1e-9 && (it.temperature - 100.0).abs() < 1e-9, "{it:?}");
        assert_eq!((it.gear, it.stage), (Some(5), Some(3)), "the cell's own");
        assert!((it.gravity - 3e4).abs() < 1e-9);
    }

    #[test]
    fn the_ends_hold_and_blank_is_nothing() {
        let (start, end) = (moment(&ride(), 10.0, -5.0), moment(&ride(), 10.0, 99.0));
        assert!(start.is_some_and(|it| it.at_m.abs() < 1e-9 && it.time.abs() < 1e-9));
        let end = end.expect("a ride");
        assert!((end.at_m - 30.0).abs() < 1e-9 && (end.time - 7.0).abs() < 1e-9);
        assert_eq!(end.gear, None);
        assert_eq!(moment(&RideLanes::default(), 10.0, 1.0), None);
        assert!((largest_force(&ride()) - 3e4).abs() < 1e-6 && (duration(&ride()) - 7.0).abs() < 1e-9);
    }
}
