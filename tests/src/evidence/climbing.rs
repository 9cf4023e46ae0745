//! CLIMB and CRAWL: a truck of 200 lb/hp on an upgrade.

use super::{Expected, Origin, Row, Status, near};
use crate::trucks::{
    FOOT, HORSEPOWER, MPH, POUND, ideal_gears, rated_power, standard_day, truck, with_mass_to_power,
};
use solver::day::Day;
use solver::motion::{BrakeHeat, Run, State, Trip, crawl, pulling_gear};
use solver::road::Road;
use solver::truck::TruckSpec;
use solver::units::{Grade, Metres, MetresPerSecond};

const CLIMB: Origin = Origin {
    key: "CLIMB",
    status: Status::Printed,
    source: "A state highway design manual, exhibit 1270-3: speeds of a truck of 120 kg/kW, read off a chart",
};
const CRAWL: Origin = Origin {
    key: "CRAWL",
    status: Status::Computed,
    source: "NCHRP Report 505, appendix E: performance equation from memory, 200 lb/hp, 620 lb for each square foot of front assumed",
};
/// Rounding of the recorded differences, mph.
const ROUNDING: f64 = 0.05;
/// Metres between the heights of the road.
const STEP_M: f64 = 10.0;

/// Standard gravity in ft/s², and ft/s in a mile per hour.
const GRAVITY_FT: f64 = solver::constants::GRAVITY / FOOT;
const FEET_PER_SECOND: f64 = MPH / FOOT;

/// The source's truck. Its equation is from memory and gives its table to the last digit (tested below).
/// Acceleration in ft/s², V in ft/s, mass over power in lb/hp: −0.2445 − 0.0004·V − 0.021·V²/620 + (15,368 −
/// 222.6)/(200·V) − g·G.
mod theirs {
    /// Rolling resistance, ft/s², at rest and for each ft/s.
    pub(super) const ROLLING: (f64, f64) = (0.2445, 0.0004);
    /// Air drag, ft/s² for each (ft/s)², at 620 lb for each square foot of frontal area.
    pub(super) const DRAG: f64 = 0.021 / 620.0;
    /// Power at the wheels, less that of the engine's auxiliaries, ft²/s³ for each hp/lb.
    pub(super) const POWER: f64 = 15_368.0 - 222.6;
    /// One hp on one lb without any loss, in that unit: 550·g.
    pub(super) const WITHOUT_LOSS: f64 = 550.0 * super::GRAVITY_FT;
}

/// Pounds per horsepower, as kg/kW: 121.6.
fn pounds_per_horsepower(pounds: f64) -> f64 {
    pounds * POUND / (HORSEPOWER / 1e3)
}

/// Our truck with the source's rolling, drag and loss in place of its own; `mph` is the speed at which its
/// rolling resistance is taken.
pub(super) fn with_their_losses(mut spec: TruckSpec, mph: f64) -> TruckSpec {
    let feet = mph * FEET_PER_SECOND;
    spec.rolling_resistance = (theirs::ROLLING.0 + theirs::ROLLING.1 * feet) / GRAVITY_FT;
    // ½·ρ·C_dA/m is the drag for each (m/s)² and unit of mass.
    spec.drag_area_m2 = theirs::DRAG / FOOT * spec.gross_mass_kg / (0.5 * 1.225);
    spec.axle_efficiency *= theirs::POWER / theirs::WITHOUT_LOSS / share_at_the_wheels(&spec, mph);
    spec
}

/// Share of the rated power that reaches the wheels.
fn share_at_the_wheels(spec: &TruckSpec, mph: f64) -> f64 {
    let (truck, day) = (truck(spec.clone()), standard_day());
    let speed = MetresPerSecond(mph * MPH);
    let (_, pull) = pulling_gear(Trip { truck: &truck, day: &day }, speed);
    pull * speed / rated_power(&truck)
}

/// Speed, mph, at distances from the start, ft, on grades one after the other (length in ft, %), entered at a
/// speed.
///
/// # Panics
/// Never: the road is sound, and longer than every distance asked for.
pub(super) fn speeds_along(
    spec: TruckSpec,
    entered_mph: f64,
    grades: &[(f64, f64)],
    at_ft: &[f64],
) -> Vec<f64> {
    let length: f64 = grades.iter().map(|(feet, _)| feet * FOOT).sum();
    let height = |s: f64| {
        let rise = grades.iter().scan(0.0, |from, (feet, percent)| {
            let on = (s - *from).clamp(0.0, feet * FOOT);
            *from += feet * FOOT;
            Some(percent / 100.0 * on)
        });
        rise.sum()
    };
    let heights = (0..=(length / STEP_M) as usize).map(|k| height(k as f64 * STEP_M));
    let road = Road::from_heights("climb", STEP_M, heights.collect()).expect("heights are sound");
    let (truck, day) = (truck(spec), Day { speed_limit_kmh: 130.0, ..standard_day() });
    let trip = Trip { truck: &truck, day: &day };
    let speed = MetresPerSecond(entered_mph * MPH);
    let (gear, _) = pulling_gear(trip, speed);
    let start = State::settled(speed, gear, BrakeHeat::uniform(day.air()));
    let run = Run::along(trip, &road, 0, road.cells(), &[], start);
    let at = at_ft.iter().map(|feet| {
        let cells = feet * FOOT / STEP_M;
        // A sample is the speed at the end of its cell.
        let end = |cell: f64| run.samples[cell as usize - 1].speed.0 / MPH;
        let before = cells.floor();
        end(before) + (end(before + 1.0) - end(before)) * (cells - before)
    });
    at.collect()
}

/// Entered at 60 mph; +1 % from 4,000 ft.
fn speeds_on_the_climb(spec: TruckSpec) -> Vec<f64> {
    speeds_along(spec, 60.0, &[(4_000.0, 4.0), (2_600.0, 1.0)], &[1_200.0, 4_000.0, 5_000.0])
}

/// Places of the climb in words, with the chart's speeds there and the known difference of ours.
const CLIMB_CHART: [(&str, f64, Option<f64>); 3] = [
    ("after 1,200 ft", 50.0, None),
    ("after 4,000 ft", 35.0, Some(5.57)),
    ("after 4,000 ft and 1,000 ft of +1 % more", 41.0, Some(6.03)),
];

/// Speeds on the climb, and on the gentler grade after it. A truck with our five axles and ten gears slows
/// less than the chart's. The second rows show how much of that comes from its losses. They are those of
/// CRAWL's equation, since the chart states none of its own.
pub(super) fn slowing() -> Vec<Row> {
    let own = with_mass_to_power(120.0);
    let ours = speeds_on_the_climb(own.clone());
    let theirs = speeds_on_the_climb(with_their_losses(own, 50.0));
    let of_ours = CLIMB_CHART.into_iter().zip(ours).map(|((place, value, recorded), ours)| {
        let what = format!("Speed of a truck of 120 kg/kW that enters +4 % at 60 mph, {place}");
        let expected = match recorded {
            None => near(value, 3.0),
            Some(recorded) => {
                Expected::KnownDifference { value, tolerance: 3.0, recorded, rounding: ROUNDING }
            }
        };
        CLIMB.row(what, "mph", expected, ours)
    });
    let with_theirs = CLIMB_CHART.into_iter().zip(theirs).map(|((place, value, _), ours)| {
        let what = format!(
            "Speed on that climb with the rolling, drag and driveline loss of CRAWL's source, {place}"
        );
        CLIMB.row(what, "mph", near(value, 3.0), ours)
    });
    of_ours.chain(with_theirs).collect()
}

/// The source's table by grade in %, with the known differences of ours.
const CRAWL_TABLE: [(f64, f64, Option<f64>); 7] = [
    (2.0, 47.7, Some(6.77)),
    (3.0, 38.5, Some(4.89)),
    (4.0, 31.8, Some(3.66)),
    (5.0, 26.9, Some(2.61)),
    (6.0, 23.2, Some(2.18)),
    (7.0, 20.3, None),
    (8.0, 18.1, None),
];

/// Crawl speeds with a gear for any speed, then with the source's losses in our truck. The second rows show
/// where the differences come from. Our truck rolls and drives with less loss: about 90 % of rated power at
/// the wheels against 86 %, coefficient 0.0051 against 0.008 to 0.0085, drag area 5.7 m² against 6.6 m².
///
/// # Panics
/// Never: the truck climbs 8 %.
pub(super) fn crawling() -> Vec<Row> {
    let day = standard_day();
    let crawl_mph = |spec: TruckSpec, percent: f64| {
        let truck = truck(spec);
        let crawled = crawl(Trip { truck: &truck, day: &day }, Grade(percent / 100.0), Metres(0.0));
        crawled.expect("it climbs 8 %").1.0 / MPH
    };
    let own = TruckSpec { gears: ideal_gears(), ..with_mass_to_power(pounds_per_horsepower(200.0)) };
    let of_ours = |(percent, value, known): (f64, f64, Option<f64>)| {
        let expected = match known {
            None => near(value, 2.0),
            Some(recorded) => {
                Expected::KnownDifference { value, tolerance: 2.0, recorded, rounding: ROUNDING }
            }
        };
        let what = format!("Crawl speed of a truck of 200 lb/hp on +{percent} %");
        CRAWL.row(what, "mph", expected, crawl_mph(own.clone(), percent))
    };
    let with_theirs = |(percent, value, _): (f64, f64, Option<f64>)| {
        let what = format!(
            "Crawl speed on +{percent} % of 200 lb/hp with the source's rolling, drag and driveline loss"
        );
        CRAWL.row(what, "mph", near(value, 2.0), crawl_mph(with_their_losses(own.clone(), value), percent))
    };
    CRAWL_TABLE.map(of_ours).into_iter().chain(CRAWL_TABLE.map(with_theirs)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The constants from memory are those of the table: they give each of its figures.
    #[test]
    fn their_equation_gives_their_table() {
        for (percent, mph, _) in CRAWL_TABLE {
            let surplus = |mph: f64| {
                let v = mph * FEET_PER_SECOND;
                theirs::POWER / (200.0 * v)
                    - theirs::ROLLING.0
                    - theirs::ROLLING.1 * v
                    - theirs::DRAG * v * v
                    - GRAVITY_FT * percent / 100.0
            };
            assert!(surplus(mph - 0.06) > 0.0 && surplus(mph + 0.06) < 0.0, "{percent} %: {mph} mph");
        }
    }
}
