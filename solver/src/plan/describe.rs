//! What is told of one descent.

use super::answer::{
    Advice, ChangeHow, Choice, Descent, Leg, LegChange, Proof, Relief, Snub, Steepest, Touch, Verdict,
    WayDown,
};
use super::approach::Approach;
use super::ask::{Ask, Way};
use super::choose::{Chosen, Down, snub_to};
use super::drive::{Ahead, Figures};
use super::free_run::{HELD, Held, NEEDED};
use super::hill::TOUCH_K;
use super::ladder::Ladder;
use super::stages::stage_spans;
use super::table::table;
use crate::motion::{Hold, Run, crawl};
use crate::road::Road;
use crate::truck::Stage;
use crate::units::{Celsius, Grade, Joules, Metres, Newtons, Seconds};

/// A snub takes about 3 s.
const SNUB_TIME: f64 = 3.0;

/// Lengths over which the steepest grade of a descent is told, m.
const STEEPEST_OVER: [f64; 3] = [100.0, 500.0, 1_000.0];

/// A break in the push shorter than this is no relief, m. Assumed.
const LEAST_RELIEF: f64 = 150.0;

/// The advice of what was chosen.
pub(super) fn choice(ask: &Ask<'_>, chosen: &Chosen) -> Choice {
    match chosen {
        Chosen::Down(down) => Choice::Held(advice(ask, down)),
        Chosen::None(none) => Choice::NoSafeSpeed(*none),
    }
}

fn advice(ask: &Ask<'_>, down: &Down) -> Advice {
    let Down { way, driven, .. } = down;
    let margin = margin(ask, way);
    let stage = driven.holds.iter().map(|hold| stage_of(ask, hold)).max().unwrap_or(Stage::OFF);
    let touches = touches(ask, &driven.holds);
    let proof = proof(&touches);
    let held = way.verdict <= Verdict::LittleInReserve;
    let verdict = if held && proof == Proof::NeedsBrakes { Verdict::NeedsServiceBrakes } else { way.verdict };
    let Figures { hottest, hottest_after_stop, holding_work, service_work, time } = driven.figures;
    let slowest = slowest(&driven.holds);
    Advice {
        verdict,
        proof,
        gear: slowest.gear,
        stage,
        speed: slowest.speed,
        engine_speed: ask.trip.truck.engine_speed(slowest.gear, slowest.speed),
        margin,
        governs: way.governs,
        hottest,
        hottest_after_stop,
        holding_work,
        service_work,
        time,
        snub: (!held).then(|| snub(ask, way, service_work)).flatten(),
    }
}

fn slowest(holds: &[Hold]) -> Hold {
    let mut slowest = holds[0];
    for hold in holds {
        if hold.speed < slowest.speed {
            slowest = *hold;
        }
    }
    slowest
}

/// What the full stage holds over the demand on the grade that the gear is chosen for, less 1.
fn margin(ask: &Ask<'_>, way: &Way) -> f64 {
    let sustained = ask.sustained();
    let air = ask.trip.air(sustained.height);
    let demand = ask.trip.demand(way.speed, sustained.grade, air);
    if demand.0 <= 0.0 {
        return f64::INFINITY;
    }
    ask.trip.retarding(way.gear, way.speed, sustained.grade, air) / demand - 1.0
}

/// Where the truck gains speed with the full stage.
fn touches(ask: &Ask<'_>, holds: &[Hold]) -> Vec<Touch> {
    holds.iter().flat_map(|hold| ask.felt.touches(&ask.ladder, &held(hold))).collect()
}

fn held(hold: &Hold) -> Held {
    Held { from: hold.from, to: hold.to, gear: hold.gear, speed: hold.speed }
}

fn proof(touches: &[Touch]) -> Proof {
    let of = |touch: &Touch| match (touch.certain, touch.gains.0 > NEEDED) {
        (true, true) => Proof::NeedsBrakes,
        (true, false) => Proof::Touches,
        (false, _) => Proof::OnAverage,
    };
    touches.iter().map(of).max().unwrap_or(Proof::Holds)
}

/// The weakest stage that holds a stretch on the average and rolls down it no faster than the strongest.
fn stage_of(ask: &Ask<'_>, hold: &Hold) -> Stage {
    let trip = ask.trip;
    let strongest = trip.strongest_stage();
    let (from, to) = (hold.from - ask.hill.from, hold.to - ask.hill.from);
    let asked = ask.hill.asks_between(from, to).holds;
    let air = trip.air(ask.stretch.highest);
    let holds = |stage: &Stage| {
        let ladder = Ladder::bare(trip, air, *stage);
        ladder.held(hold.gear, hold.speed, 0.0) >= asked && ask.felt.gains_at_most(&ladder, &held(hold), HELD)
    };
    trip.truck.stages().take_while(|stage| *stage < strongest).find(holds).unwrap_or(strongest)
}

/// Snubs on the grade that the gear is chosen for; so many that together they do `work`.
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
    let count = (work / each).ceil().max(1.0);
    let off = Seconds((speed - to).0 * mass / pushing);
    Some(Snub { from: speed, to, on: Seconds(SNUB_TIME), off, count: count as u32 })
}

/// Everything that is told of a descent; the other choices are the caller's.
pub(super) fn descent(
    ask: &Ask<'_>,
    approach: &Approach,
    ahead: &Ahead,
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
        Chosen::None(_) => None,
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
        one_gear: down.and_then(|down| one_gear(ask, approach, ahead, down)),
        untouched: down.and_then(|_| untouched(ask, approach, ahead)),
        touches: down.map_or(Vec::new(), |down| touches(ask, &down.driven.holds)),
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

fn one_gear(ask: &Ask<'_>, approach: &Approach, ahead: &Ahead, down: &Down) -> Option<WayDown> {
    if down.parts.is_empty() {
        return Some(way_down(ask, down));
    }
    ask.one_gear(down.way, approach, ahead, Celsius(f64::INFINITY)).ok().map(|down| way_down(ask, &down))
}

fn way_down(ask: &Ask<'_>, down: &Down) -> WayDown {
    let hold = down.driven.holds[0];
    let stage = stage_of(ask, &hold);
    WayDown { gear: hold.gear, stage, speed: hold.speed, time: down.driven.figures.time }
}

/// The fastest way whose free run gains nothing worth a word.
fn untouched(ask: &Ask<'_>, approach: &Approach, ahead: &Ahead) -> Option<WayDown> {
    let way = ask.held().find(|way| ask.is_untouched(way))?;
    ask.one_gear(way, approach, ahead, Celsius(f64::INFINITY)).ok().map(|down| way_down(ask, &down))
}

impl Ask<'_> {
    /// Whether no pitch that is to be believed leaves more to the service brakes than a touch.
    pub(super) fn takes_pitches(&self, way: &Way) -> bool {
        let Way { gear, speed, .. } = *way;
        let held = Held { from: self.stretch.from, to: self.stretch.to, gear, speed };
        self.felt.touches(&self.ladder, &held).iter().all(|touch| !touch.certain || touch.kelvin <= TOUCH_K)
    }

    pub(super) fn is_untouched(&self, way: &Way) -> bool {
        let Way { gear, speed, .. } = *way;
        let held = Held { from: self.stretch.from, to: self.stretch.to, gear, speed };
        self.felt.gains_at_most(&self.ladder, &held, HELD)
    }
}

fn steepest(road: &Road, from: usize, to: usize) -> Vec<Steepest> {
    let over = |length: f64| {
        let (at, grade) = road.steepest(from, to, length)?;
        let from = Metres(at as f64 * road.step_m());
        Some(Steepest { length: Metres(length), from, grade: Grade(grade) })
    };
    STEEPEST_OVER.into_iter().filter_map(over).collect()
}

/// Stretches on which nothing pushes.
fn reliefs(ask: &Ask<'_>) -> Vec<Relief> {
    let shortest = (LEAST_RELIEF / ask.road.step_m()) as usize;
    let mut found: Vec<Relief> = Vec::new();
    let mut from = None;
    let pushes = ask.felt.pushes.iter().map(|push| *push > 0.0).chain([true]);
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

/// The figures of the chosen way as the run along the whole road has them.
pub(super) fn as_driven(road: &Road, run: &Run, descent: &mut Descent) {
    let before = descent.from.checked_sub(1).map_or(Seconds(0.0), |cell| run.samples[cell].time);
    let figures = Figures::of(road, descent.from, &run.samples[descent.from..descent.to], before);
    if let Choice::Held(advice) = &mut descent.choice {
        advice.hottest = figures.hottest;
        advice.hottest_after_stop = figures.hottest_after_stop;
        advice.holding_work = figures.holding_work;
        advice.service_work = figures.service_work;
        advice.time = figures.time;
    }
}
