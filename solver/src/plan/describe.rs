//! The description of one descent.

use super::answer::{Advice, Choice, Descent, Snub, Steepest, Verdict};
use super::approach::Approach;
use super::ask::{Ask, Way};
use super::choose::{Chosen, Down, snub_to};
use super::drive::{Ahead, Figures};
use super::free_run::{HELD, Held, NEEDED, RUNS_AWAY};
use super::ladder::Ladder;
use super::stages::stage_spans;
use super::table::table;
use super::ways::{ChangeHow, Leg, LegChange, Proof, Relief, Touch, WayDown};
use crate::constants::SNUB_TIME;
use crate::motion::{Hold, crawl};
use crate::road::Road;
use crate::truck::{Gear, Stage};
use crate::units::{Celsius, Grade, Joules, Metres, MetresPerSecond, Newtons, Seconds};

/// Lengths over which the steepest grade of a descent is told, m.
const STEEPEST_OVER: [f64; 3] = [100.0, 500.0, 1_000.0];

/// A gap in the push shorter than this is no relief, m. Assumed.
const LEAST_RELIEF: f64 = 150.0;

/// The advice for the chosen way.
pub(super) fn choice(ask: &Ask<'_>, chosen: &Chosen) -> Choice {
    match chosen {
        Chosen::Down(down) => Choice::Held(advice(ask, down)),
        Chosen::None(none, _) => Choice::NoSafeSpeed(*none),
    }
}

fn advice(ask: &Ask<'_>, down: &Down) -> Advice {
    let Down { way, driven, .. } = down;
    let margin = margin(ask, way);
    let doubted = || driven.holds.iter().any(|hold| ask.hill.may_gain(&ask.ladder, &held(hold)));
    let proof = match proof(&down.touches) {
        Proof::Holds if doubted() => Proof::OnAverage,
        proof => proof,
    };
    let held = way.verdict <= Verdict::LittleInReserve;
    let verdict = if held && proof == Proof::NeedsBrakes { Verdict::NeedsServiceBrakes } else { way.verdict };
    let Figures { holding_work, service_work, time, .. } = driven.figures;
    let warmer = Celsius(down.touched_k);
    let slowest = slowest(&driven.holds);
    let stage = stage_of(ask, &slowest);
    Advice {
        verdict,
        proof,
        gear: slowest.gear,
        stage,
        speed: slowest.speed,
        fastest_leg: fastest_leg(&driven.holds, &slowest),
        engine_speed: ask.trip.truck.engine_speed(slowest.gear, slowest.speed),
        margin,
        governs: way.governs,
        hottest: driven.figures.hottest + warmer,
        hottest_after_stop: driven.figures.hottest_after_stop + warmer,
        touched_k: down.touched_k,
        holding_work,
        service_work,
        time,
        snub: (!held).then(|| snub(ask, way, service_work)).flatten(),
    }
}

pub(super) fn slowest(holds: &[Hold]) -> Hold {
    let mut slowest = holds[0];
    for hold in holds {
        if hold.speed < slowest.speed {
            slowest = *hold;
        }
    }
    slowest
}

/// The fastest hold, where it differs from the slowest.
fn fastest_leg(holds: &[Hold], slowest: &Hold) -> Option<(Gear, MetresPerSecond)> {
    let fastest = holds.iter().max_by(|a, b| a.speed.0.total_cmp(&b.speed.0))?;
    (fastest.speed > slowest.speed).then_some((fastest.gear, fastest.speed))
}

/// Full-stage holding force over the demand on the grade that the gear is chosen for, less 1.
fn margin(ask: &Ask<'_>, way: &Way) -> f64 {
    let sustained = ask.sustained();
    let air = ask.trip.air(sustained.height);
    let demand = ask.trip.demand(way.speed, sustained.grade, air);
    if demand.0 <= 0.0 {
        return f64::INFINITY;
    }
    ask.trip.retarding(way.gear, way.speed, sustained.grade, air) / demand - 1.0
}

fn held(hold: &Hold) -> Held {
    Held { from: hold.from, to: hold.to, gear: hold.gear, speed: hold.speed }
}

/// The proof that follows from the touches.
pub(super) fn proof(touches: &[Touch]) -> Proof {
    let of = |touch: &Touch| {
        if touch.gains.0 > if touch.certain { NEEDED } else { RUNS_AWAY } {
            Proof::NeedsBrakes
        } else if touch.certain {
            Proof::Touches
        } else {
            Proof::OnAverage
        }
    };
    touches.iter().map(of).max().unwrap_or(Proof::Holds)
}

/// The weakest stage that holds a stretch on the average and lets the truck roll down it no faster than the
/// strongest.
fn stage_of(ask: &Ask<'_>, hold: &Hold) -> Stage {
    let trip = ask.trip;
    let strongest = trip.strongest_stage();
    let (from, to) = (hold.from - ask.hill.from, hold.to - ask.hill.from);
    let asked = ask.hill.asks(from, to).holds;
    let air = trip.air(ask.stretch.highest);
    let holds = |stage: &Stage| {
        let ladder = Ladder::bare(trip, air, *stage);
        ladder.held(hold.gear, hold.speed, 0.0) >= asked && ask.hill.gains_at_most(&ladder, &held(hold), HELD)
    };
    trip.truck.stages().take_while(|stage| *stage < strongest).find(holds).unwrap_or(strongest)
}

/// Snubs on the grade that the gear is chosen for. Together they do `work`. More are added for the fall of
/// unassessed stretches, where the run does none.
fn snub(ask: &Ask<'_>, way: &Way, work: Joules) -> Option<Snub> {
    let sustained = ask.sustained();
    let (trip, speed) = (ask.trip, way.speed);
    let to = snub_to(speed);
    let air = trip.air(sustained.height);
    let mass = trip.truck.inertial_mass(way.gear).0;
    let held = trip.retarding(way.gear, speed, sustained.grade, air);
    let pushing = (trip.demand(speed, sustained.grade, air) - held).0;
    if pushing <= 0.0 {
        return None;
    }
    let braking = Newtons(pushing + mass * (speed - to).0 / SNUB_TIME);
    let each = braking * ((speed + to) * 0.5) * Seconds(SNUB_TIME);
    let count = (work / each * falls_in_all(ask)).ceil().max(1.0);
    let off = Seconds((speed - to).0 * mass / pushing);
    Some(Snub { from: speed, to, on: Seconds(SNUB_TIME), off, count: count as u32 })
}

/// The whole fall of the descent over its assessed fall; 1 where all of it or none is assessed.
fn falls_in_all(ask: &Ask<'_>) -> f64 {
    let (from, to) = (ask.stretch.from, ask.stretch.to);
    let ground = ask.hill.ground;
    let known = (from..to).filter(|cell| ask.road.assessed()[*cell]);
    let (known_m, all_m): (f64, f64) =
        (known.map(|cell| ground.fall(cell, cell + 1)).sum(), ground.fall(from, to));
    if known_m > 0.0 { (all_m / known_m).max(1.0) } else { 1.0 }
}

/// Describes a descent; the caller adds the other choices.
pub(super) fn descent(
    ask: &Ask<'_>,
    (approach, ahead): (&Approach, &Ahead),
    number: usize,
    chosen: &Chosen,
    choice: Choice,
) -> Descent {
    let (trip, road, stretch) = (ask.trip, ask.road, ask.stretch);
    let sustained = ask.sustained();
    let mean = Grade(road.mean_grade(stretch.from, stretch.to));
    let metre = |point: usize| Metres(point as f64 * road.step_m());
    let holds = chosen.holds(ask);
    let down = match chosen {
        Chosen::Down(down) => Some(down),
        Chosen::None(..) => None,
    };
    Descent {
        number,
        from: stretch.from,
        to: stretch.to,
        crest: metre(stretch.from),
        foot: metre(stretch.to),
        drop: Metres(road.surface_m()[stretch.from] - road.surface_m()[stretch.to]),
        mean,
        steepest: steepest(road, stretch.from, stretch.to),
        sustained,
        brakes_at_crest: down.map_or(Celsius(f64::NAN), |down| down.driven.at_crest),
        in_reserve: choice,
        snubbing: choice,
        heavier: None,
        table: table(trip, sustained.grade, sustained.height),
        stages: holds.iter().flat_map(|hold| stage_spans(trip, road, hold)).collect(),
        reliefs: reliefs(ask),
        legs: down.map_or(Vec::new(), |down| legs(ask, down)),
        one_gear: down.map(|down| way_down(ask, down, &down.way)),
        untouched: down.and_then(|down| untouched(ask, down, approach, ahead)),
        touches: down.map_or(Vec::new(), |down| down.touches.clone()),
        change: ask.change(&choice, approach),
        carried: None,
        climbs_in: crawl(trip, -mean, sustained.height),
        cut_short: stretch.cut_short,
        choice,
    }
}

fn legs(ask: &Ask<'_>, down: &Down) -> Vec<Leg> {
    let road = ask.road;
    let mut legs: Vec<Leg> = Vec::new();
    for (index, hold) in down.driven.holds.iter().enumerate() {
        let part = down.parts.get(index);
        let change = legs.last().map(|last| LegChange {
            at: Metres(hold.from as f64 * road.step_m()),
            grade: Grade(road.mean_grade(hold.from.saturating_sub(10), hold.from + 10)),
            how: if hold.speed < last.speed { ChangeHow::Down } else { ChangeHow::Up },
        });
        legs.push(Leg {
            from: hold.from,
            to: part.map_or(hold.to, |part| part.to),
            slows_from: hold.to,
            gear: hold.gear,
            stage: stage_of(ask, hold),
            speed: hold.speed,
            change,
        });
    }
    legs
}

/// Another way in one gear. Its time is estimated from the speed that curves and limits leave, and scaled by
/// the ratio of driven to estimated time of the way that was driven.
fn way_down(ask: &Ask<'_>, down: &Down, way: &Way) -> WayDown {
    let hold = ask.hold(way.gear, way.speed, None);
    let longer = down.driven.figures.time.0 - reckoned(ask, &down.driven.holds);
    let time = Seconds(reckoned(ask, &[hold]) + longer);
    WayDown { gear: way.gear, stage: stage_of(ask, &hold), speed: way.speed, time }
}

/// Gear and speed at which no recorded pitch needs a touch. A speed faster than the one told is driven first,
/// since heat may rule it out.
fn untouched(ask: &Ask<'_>, down: &Down, approach: &Approach, ahead: &Ahead) -> Option<WayDown> {
    let way = ask.untouched()?;
    let limit = Celsius(ask.trip.day.heat_limit_c);
    let slower = way.speed <= slowest(&down.driven.holds).speed;
    (slower || ask.one_gear(way, approach, ahead, limit).is_ok()).then(|| way_down(ask, down, &way))
}

/// Estimated time of holds, one after the other.
fn reckoned(ask: &Ask<'_>, holds: &[Hold]) -> f64 {
    let mut hold = holds.iter().peekable();
    let mut speed = f64::INFINITY;
    let pace = |cell: usize| {
        if let Some(next) = hold.next_if(|it| it.from <= cell + ask.stretch.from) {
            speed = next.speed.0;
        }
        ask.road.step_m() / ask.reach.cap(cell).min(speed)
    };
    (0..ask.hill.cells()).map(pace).sum()
}

fn steepest(road: &Road, from: usize, to: usize) -> Vec<Steepest> {
    let over = |length: f64| {
        let (at, grade) = road.steepest(from, to, length)?;
        let from = Metres(at as f64 * road.step_m());
        Some(Steepest { length: Metres(length), from, grade: Grade(grade) })
    };
    STEEPEST_OVER.into_iter().filter_map(over).collect()
}

/// Stretches on which the hill does not push the truck.
fn reliefs(ask: &Ask<'_>) -> Vec<Relief> {
    let shortest = (LEAST_RELIEF / ask.road.step_m()) as usize;
    let mut found: Vec<Relief> = Vec::new();
    let mut from = None;
    let pushes = ask.hill.fine.iter().map(|push| *push > 0.0).chain([true]);
    for (cell, pushed) in (ask.stretch.from..).zip(pushes) {
        match (from, pushed) {
            (None, false) => from = Some(cell),
            (Some(start), true) => {
                if cell - start >= shortest && start > ask.stretch.from && cell < ask.stretch.to {
                    found.push(Relief { from: start, to: cell });
                }
                from = None;
            }
            (None, true) | (Some(_), false) => {}
        }
    }
    found
}
