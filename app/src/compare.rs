//! Two roads in figures: what a planner weighs, each for itself and none summed up in a score.

use crate::chart::{RoadPicture, value};
use solver::plan::{Choice, Plan};
use solver::road::PlaceKind;
use std::cmp::Ordering;
use workers::message::RoadFacts;

/// A road is called climbing or falling from this grade. Assumed, as in the solver's totals.
const CLIMBING: f64 = 0.02;
/// Retarder and motoring carry all of it from this share.
const ALL: f64 = 0.995;

/// What a road comes to for a truck on a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figures {
    /// How the worst descent is held; `None` on a road without one.
    pub worst: Option<Choice>,
    /// Descents.
    pub descents: usize,
    /// The slowest hold speed of a descent, m/s; `None` where none is held.
    pub slowest_hold: Option<f64>,
    /// Hottest service brakes after a hard stop at the worst place, °C.
    pub hottest_c: f64,
    /// Length on descents on which the service brakes help, m: where engine and retarder do not hold the
    /// truck alone, and where it slows for curves, limits and places.
    pub braked_m: f64,
    /// Work of the service brakes, J.
    pub service_j: f64,
    /// Work of retarder and motoring, J.
    pub holding_j: f64,
    /// Time on descents, crest to foot, s.
    pub down_s: f64,
    /// Time on climbs of 2 % and more, s.
    pub up_s: f64,
    /// Time in all, s.
    pub time_s: f64,
    /// Slowest speed on a climb, m/s; `None` where the road does not climb.
    pub crawl: Option<f64>,
    /// All that the road rises, m.
    pub rise_m: f64,
    /// All that the road falls, m.
    pub fall_m: f64,
    /// Length, m.
    pub length_m: f64,
    /// Energy of the fuel, J.
    pub fuel_j: f64,
    /// Curves that ask for less than the speed limit.
    pub curves: usize,
    /// Places to stop at or to end in: brake checks, escape ramps, parking.
    pub stops: [usize; 3],
    /// Length that is not assessed, m.
    pub blank_m: f64,
}

impl Figures {
    /// The figures of a road that was worked out.
    #[must_use]
    pub fn of(road: &RoadFacts, plan: &Plan, picture: &RoadPicture) -> Self {
        let advices = plan.descents.iter().filter_map(|it| it.choice.advice());
        let count = |kind: PlaceKind| road.places.iter().filter(|it| it.kind == kind).count();
        let totals = &plan.totals;
        let drive = Drive::along(picture);
        Self {
            worst: plan.deciding().map(|it| it.choice),
            descents: plan.descents.len(),
            slowest_hold: advices.map(|it| it.speed.0).min_by(f64::total_cmp),
            hottest_c: totals.hottest_after_stop.0,
            braked_m: drive.braked_m,
            service_j: totals.service_work.0,
            holding_j: totals.holding_work.0,
            down_s: drive.down_s,
            up_s: drive.up_s,
            time_s: totals.time.0,
            crawl: totals.crawl.map(|it| it.0),
            rise_m: drive.rise_m,
            fall_m: totals.fall.0,
            length_m: road.length_m,
            fuel_j: totals.fuel.0,
            curves: plan.curves.len(),
            stops: [PlaceKind::BrakeCheck, PlaceKind::EscapeRamp, PlaceKind::Parking].map(count),
            blank_m: road.unassessed.iter().map(|it| it.to - it.from).sum::<usize>() as f64 * road.step_m,
        }
    }

    /// What fuel and time cost together; `None` without a rate. `fuel` is for a litre, `hour` for an
    /// hour.
    #[must_use]
    pub fn cost(&self, fuel: Option<f64>, hour: Option<f64>) -> Option<f64> {
        let litres = solver::motion::litres_of_fuel(solver::units::Joules(self.fuel_j));
        match (fuel, hour) {
            (None, None) => None,
            (fuel, hour) => Some(fuel.unwrap_or(0.0) * litres + hour.unwrap_or(0.0) * self.time_s / 3_600.0),
        }
    }
}

/// A row of the comparison.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Row {
    /// Truck.
    Truck,
    /// Worst verdict.
    Worst,
    /// Descents.
    Descents,
    /// Slowest hold speed.
    Hold,
    /// Hottest brakes after a stop.
    Hottest,
    /// Length on descents on which service brakes help, to slow as well.
    Braked,
    /// Work of the service brakes.
    Service,
    /// Work of retarder and motoring.
    Holding,
    /// Time on descents.
    Down,
    /// Time on climbs.
    Up,
    /// Slowest on a climb.
    Crawl,
    /// Time.
    Time,
    /// Rise.
    Rise,
    /// Fall.
    Fall,
    /// Length.
    Length,
    /// Curves.
    Curves,
    /// Brake checks.
    Checks,
    /// Escape ramps.
    Ramps,
    /// Parking.
    Parking,
    /// Not assessed.
    Blank,
    /// Fuel.
    Fuel,
    /// Cost at the rates entered.
    Cost,
}

/// Which of two roads is the easier one in a row of the comparison: 0 the first, 1 the second. `None` where both
/// are equal, or the row tells nothing of that.
#[must_use]
pub fn easier(row: Row, of: &[Figures; 2]) -> Option<usize> {
    let verdict = |it: &Figures| it.worst.map_or(-1.0, |worst| f64::from(worst.verdict() as u8));
    // The lower the easier.
    let weight = |it: &Figures| match row {
        Row::Worst => Some(verdict(it)),
        Row::Descents => Some(it.descents as f64),
        Row::Hold => it.slowest_hold.map(|it| -it),
        Row::Hottest => Some(it.hottest_c),
        Row::Braked => Some(it.braked_m),
        Row::Service => Some(it.service_j),
        Row::Holding => Some(it.holding_j),
        Row::Down => Some(it.down_s),
        Row::Up => Some(it.up_s),
        Row::Crawl => it.crawl.map(|it| -it),
        Row::Time => Some(it.time_s),
        Row::Curves => Some(it.curves as f64),
        Row::Checks => Some(-(it.stops[0] as f64)),
        Row::Ramps => Some(-(it.stops[1] as f64)),
        Row::Parking => Some(-(it.stops[2] as f64)),
        Row::Blank => Some(it.blank_m),
        Row::Fuel => Some(it.fuel_j),
        Row::Truck | Row::Rise | Row::Fall | Row::Length | Row::Cost => None,
    };
    let [first, second] = of.each_ref().map(weight);
    match first?.total_cmp(&second?) {
        Ordering::Less => Some(0),
        Ordering::Greater => Some(1),
        Ordering::Equal => None,
    }
}

/// A time as it is shown, s: so that differences add up.
#[must_use]
pub fn to_minute(seconds: f64) -> f64 {
    (seconds / 60.0).round() * 60.0
}

/// What follows from the lanes, cell by cell.
#[derive(Default)]
struct Drive {
    braked_m: f64,
    down_s: f64,
    up_s: f64,
    rise_m: f64,
}

impl Drive {
    fn along(picture: &RoadPicture) -> Self {
        let step = picture.step();
        let mut drive = Self::default();
        for cell in 0..picture.points().saturating_sub(1) {
            let heights = value(&picture.heights_m, cell).zip(value(&picture.heights_m, cell + 1));
            let Some((here, next)) = heights else { continue };
            let rise = next - here;
            // Like the fall, the rise counts all of the road, also where it is not assessed.
            drive.rise_m += rise.max(0.0);
            let Some(speed) = value(&picture.speed, cell) else { continue };
            let time = if speed > 0.1 { step / speed } else { 0.0 };
            // Crest and foot belong to the descent, the cell behind the foot does not.
            let on_descent = picture.descents.iter().any(|it| (it.from..it.to).contains(&cell));
            if on_descent {
                drive.down_s += time;
                let carried = value(&picture.carried, cell).unwrap_or(1.0);
                drive.braked_m += if carried < ALL { step } else { 0.0 };
            } else if rise > CLIMBING * step {
                drive.up_s += time;
            }
        }
        drive
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chart::sample;
    use crate::entries::Entries;
    use ::tests::plain_roads::hill;
    use solver::truck::Preset;
    use workers::desk::Desk;
    use workers::message::{Given, LANE_FLOATS, Reply, Request, Task};

    /// The hill of the tests, worked out, with its arrays in a picture.
    fn worked() -> (RoadFacts, Plan, RoadPicture) {
        let entries = Entries::of(Preset::FiveAxle36);
        let task = Task::whole(entries.truck, entries.day);
        let (mut facts, mut plan, mut picture) = (None, None, sample::pass());
        Desk::new().answer(
            Request::Open(task, Given::joined(vec![false])),
            vec![hill()],
            &mut |reply, arrays| match reply {
                Reply::Surveyed(road) => {
                    picture.step_m = road.step_m as f32;
                    picture.heights_m = arrays.floats[0].clone().into();
                    facts = Some(*road);
                }
                Reply::Planned(it) => {
                    picture.speed = arrays.floats[0].clone().into();
                    picture.carried = arrays.floats[LANE_FLOATS - 1].clone().into();
                    picture.descents = it
                        .descents
                        .iter()
                        .map(|d| crate::chart::Bracket {
                            number: d.number,
                            from: d.from,
                            to: d.to,
                            mean: 0.0,
                            verdict: d.choice.verdict(),
                            legs: Vec::new(),
                        })
                        .collect();
                    plan = Some(it);
                }
                _ => {}
            },
        );
        (facts.expect("a road"), plan.expect("a plan"), picture)
    }

    #[test]
    fn the_parts_of_the_time_are_no_more_than_the_whole() {
        let (road, plan, picture) = worked();
        let figures = Figures::of(&road, &plan, &picture);
        assert_eq!((figures.worst, figures.descents), (Some(plan.descents[0].choice), 1));
        let advice = plan.descents[0].choice.advice().expect("held");
        assert!((figures.down_s - advice.time.0).abs() < 0.01 * advice.time.0 + 2.0, "{figures:?}");
        assert!(figures.down_s + figures.up_s <= figures.time_s * 1.01, "{figures:?}");
        assert!(figures.fall_m > 300.0 && figures.rise_m < 5.0, "the hill only falls: {figures:?}");
        assert!(figures.braked_m < 0.05 * figures.length_m, "the retarder holds it: {figures:?}");
    }

    #[test]
    fn money_comes_of_rates_alone() {
        let (road, plan, picture) = worked();
        let figures = Figures::of(&road, &plan, &picture);
        assert_eq!(figures.cost(None, None), None);
        let time = figures.cost(None, Some(60.0)).expect("a rate");
        assert!((time - figures.time_s / 60.0).abs() < 1e-9);
        let both = figures.cost(Some(1.5), Some(60.0)).expect("rates");
        assert!(both > time);
    }
}
