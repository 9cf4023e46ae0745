//! A descent in legs: a gear and a speed for each, where the hill lets them follow one another.
//!
//! A leg ends only where its bucket is empty, so that a change does not start the count of heat afresh. Of
//! all sequences the one with the least time is taken, with a price on each change. A change down needs the
//! retarder alone to bring the speed down in time, and the truck must not run away while the gear is out.

use super::ask::{Ask, Way};
use super::free_run::{HELD, Held};
use super::hill::Buckets;
use super::ladder::Rung;
use crate::constants::{GRAVITY, LEAST_SLOWING, SPEED_SLACK};
use crate::truck::Transmission;
use crate::units::MetresPerSecond;

/// Spacing of the places at which legs may begin and end, m.
const EVERY_M: f64 = 250.0;

/// Shortest leg, m. Assumed.
const SHORTEST_M: f64 = 1_500.0;

/// Time that a change must save, s. Assumed: with 30 s two recordings of one road agree less, and nobody
/// changes gear on a hill to save half a minute.
const PRICE_S: f64 = 120.0;

/// By hand, a change down needs a grade gentler than this. Print conflicts: some manuals give a procedure for
/// changing down on a hill, others forbid it. The cautious reading wins.
const EASING: f64 = 0.02;

/// Largest share up to which a leg may fill the bucket of the averages. Otherwise an even hill would be cut into
/// legs that each just fit. Assumed.
const FILLED: f64 = 0.2;

/// A change up needs the higher gear to hold the truck over this length, m. Assumed.
const BEHIND_M: f64 = 500.0;

/// Largest number of speeds tried.
const MOST_RUNGS: usize = 16;

/// A leg as the search finds it: grid points, rung, and where the truck begins to slow for the next.
#[derive(Debug, Clone, Copy)]
pub(super) struct Part {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) rung: Rung,
    pub(super) slows_from: usize,
}

/// The legs of a descent that save time over one gear all the way; `None` where none do. No leg is
/// faster over a cell than `fastest` allows, m/s.
pub(super) fn legs(ask: &Ask<'_>, one: &Way, fastest: &[f64]) -> Option<Vec<Part>> {
    let search = Search::of(ask, one, fastest)?;
    let parts = search.shortest()?;
    (parts.len() > 1).then_some(parts)
}

struct Search<'s, 'a> {
    ask: &'s Ask<'a>,
    /// Cells at which legs may begin and end.
    at: Vec<usize>,
    /// From fast to slow; the last rung is that of one gear all the way.
    rungs: Vec<Rung>,
    fastest: &'s [f64],
}

/// The best way to end a leg somewhere.
#[derive(Clone, Copy)]
struct Best {
    time: f64,
    /// Where the leg began, and the rung of the leg before.
    from: usize,
    before: Option<usize>,
}

impl<'s, 'a> Search<'s, 'a> {
    fn of(ask: &'s Ask<'a>, one: &Way, fastest: &'s [f64]) -> Option<Self> {
        let cells = ask.hill.cells();
        let every = ((EVERY_M / ask.hill.step_m).round() as usize).max(1);
        let mut at: Vec<usize> = (0..cells).step_by(every).collect();
        if at.len() > 1 && cells - at[at.len() - 1] < every {
            at.pop();
        }
        at.push(cells);
        let mut rungs: Vec<Rung> = Vec::new();
        for rung in ask.ladder.rungs.iter().filter(|rung| rung.speed > one.speed) {
            // In one gear a faster speed that holds as much makes a slower one idle. In another gear it does not:
            // curves may keep the truck from the faster one.
            let idle = |last: &Rung| last.gear == rung.gear && last.with_reserve >= rung.with_reserve;
            if !rungs.last().is_some_and(idle) {
                rungs.push(*rung);
            }
        }
        // The slowest speeds of each gear matter least.
        while rungs.len() > MOST_RUNGS {
            let gap = |k: &usize| (rungs[k - 1].speed.0 / rungs[k + 1].speed.0 * 1e6) as i64;
            let closest = (1..rungs.len() - 1).min_by_key(gap)?;
            rungs.remove(closest);
        }
        rungs.push(*ask.ladder.rung_at(one.speed)?);
        Some(Self { ask, at, rungs, fastest })
    }

    fn shortest(&self) -> Option<Vec<Part>> {
        let (points, rungs) = (self.at.len(), self.rungs.len());
        let mut best: Vec<Vec<Option<Best>>> = vec![vec![None; rungs]; points];
        let mut ok: Vec<Option<Option<usize>>> = vec![None; rungs * rungs];
        for start in 0..points - 1 {
            ok.fill(None);
            for rung in 0..rungs {
                let Some((begun, before)) = self.begin(&best, start, rung, &mut ok) else { continue };
                self.ends(start, rung, |end, time| {
                    let time = begun + time;
                    if best[end][rung].is_none_or(|best| time < best.time) {
                        best[end][rung] = Some(Best { time, from: start, before });
                    }
                });
            }
        }
        self.backwards(&best)
    }

    /// The least time with which a leg may begin here with this rung, and the rung of the leg before.
    fn begin(
        &self,
        best: &[Vec<Option<Best>>],
        start: usize,
        rung: usize,
        ok: &mut [Option<Option<usize>>],
    ) -> Option<(f64, Option<usize>)> {
        if start == 0 {
            return Some((0.0, None));
        }
        let mut least: Option<(f64, Option<usize>)> = None;
        for (before, ended) in best[start].iter().enumerate() {
            let Some(ended) = ended.filter(|_| before != rung) else { continue };
            let time = ended.time + PRICE_S;
            if least.is_some_and(|(least, _)| least <= time) {
                continue;
            }
            let known = &mut ok[before * self.rungs.len() + rung];
            if known.get_or_insert_with(|| self.changes(self.at[start], before, rung)).is_some() {
                least = Some((time, Some(before)));
            }
        }
        least
    }

    /// Reports each point at which a leg that begins here may end, with its time.
    fn ends(&self, start: usize, rung: usize, mut told: impl FnMut(usize, f64)) {
        let hill = &self.ask.hill;
        let Rung { speed, with_reserve, .. } = self.rungs[rung];
        let shortest = (SHORTEST_M / hill.step_m) as usize;
        let (mut time, mut reached) = (0.0, 0usize);
        let last = self.at.len() - 1;
        let mut cell = self.at[start];
        let begin = cell;
        let faster = rung + 1 < self.rungs.len();
        let mut buckets = Buckets::empty(cell);
        for end in start + 1..=last {
            while cell < self.at[end] {
                let full = buckets.fill(hill, cell, with_reserve).is_some();
                if full || faster && buckets.share(hill) > FILLED {
                    return;
                }
                let fastest = hill.ground.at_most(hill.from + cell, hill.from + cell + 1);
                if speed.0 > fastest.min(self.fastest[cell]) {
                    return;
                }
                let cap = self.ask.reach.cap(cell);
                reached += usize::from(cap >= speed.0 - 1.0 / 3.6);
                time += hill.step_m / cap.min(speed.0);
                cell += 1;
            }
            let whole = start == 0 && end == last;
            let long = cell - begin >= shortest;
            let driven = 2 * reached >= cell - begin || !faster;
            // A faster one all the way was driven before, and did not do.
            if (whole && !faster || long && !whole && buckets.are_empty()) && driven {
                told(end, time);
            }
        }
    }

    /// Where the truck begins to slow for a change from one rung to another at a cell; `None` where the
    /// change is not allowed.
    fn changes(&self, at: usize, before: usize, after: usize) -> Option<usize> {
        let (fast, slow) = (&self.rungs[before], &self.rungs[after]);
        let step_m = self.ask.hill.step_m;
        let trip = self.ask.trip;
        let spec = trip.truck.spec();
        let open = spec.transmission.shift_time().0 + spec.retarder_delay_s;
        let rolling = spec.rolling_resistance;
        let fall_of = |cell: usize| self.ask.hill.fine[cell] / step_m + rolling;
        let here = fall_of(at.saturating_sub(1));
        if here * GRAVITY * open > SPEED_SLACK {
            return None;
        }
        if slow.speed > fast.speed {
            return self.holds_behind(at, slow).then_some(at);
        }
        let by_hand = spec.transmission == Transmission::Manual;
        let mut speed = slow.speed.0;
        let mut cell = at;
        let earliest = at.saturating_sub((SHORTEST_M / step_m) as usize);
        while speed < fast.speed.0 {
            cell = cell.checked_sub(1).filter(|cell| *cell >= earliest)?;
            let fall = fall_of(cell);
            if by_hand && fall > EASING {
                return None;
            }
            let gear = trip.lowest_gear_within(MetresPerSecond(speed), 1.0)?.min(fast.gear).max(slow.gear);
            let holds = self.ask.ladder.held(gear, MetresPerSecond(speed), 0.0);
            let slowing = GRAVITY * (holds + rolling - fall) / trip.truck.rotating_factor(gear);
            if slowing < LEAST_SLOWING {
                return None;
            }
            speed = (speed * speed + 2.0 * slowing * step_m).sqrt();
        }
        Some(cell)
    }

    /// Whether the higher gear holds the truck on the first stretch behind a change up.
    fn holds_behind(&self, at: usize, rung: &Rung) -> bool {
        let hill = &self.ask.hill;
        let to = (at + (BEHIND_M / hill.step_m) as usize).min(hill.cells());
        let held = Held { from: hill.from + at, to: hill.from + to, gear: rung.gear, speed: rung.speed };
        hill.gains_at_most(&self.ask.ladder, &held, HELD)
    }

    fn backwards(&self, best: &[Vec<Option<Best>>]) -> Option<Vec<Part>> {
        let mut end = self.at.len() - 1;
        let fastest = |best: &[Option<Best>]| {
            let mut found: Option<(usize, f64)> = None;
            for (rung, it) in best.iter().enumerate() {
                if let Some(it) = it.filter(|it| found.is_none_or(|(_, time)| it.time < time)) {
                    found = Some((rung, it.time));
                }
            }
            found.map(|(rung, _)| rung)
        };
        let mut rung = fastest(&best[end])?;
        let mut parts: Vec<Part> = Vec::new();
        let mut slows_from = self.at[end];
        let grid = |cell: usize| cell + self.ask.hill.from;
        loop {
            let it = best[end][rung]?;
            let (from, to) = (grid(self.at[it.from]), grid(self.at[end]));
            parts.push(Part { from, to, rung: self.rungs[rung], slows_from: grid(slows_from) });
            let Some(before) = it.before else { break };
            slows_from = self.changes(self.at[it.from], before, rung)?;
            (end, rung) = (it.from, before);
        }
        parts.reverse();
        Some(parts)
    }
}
