//! Two recordings of one road: the plan of both together beside the plan of each alone.

use solver::motion::Trip;
use solver::plan::Plan;
use solver::road::{FindingKind, Match, Road, lie_on_each_other};
use solver::{analyse, road};
use std::fmt::Write;

/// Speeds are compared as they are told, in whole km/h.
const SAME_KMH: f64 = 0.5;

/// Length over which the doubt of heights is told, metres.
const DOUBT_OVER_M: f64 = 500.0;

/// A recording, or both, with its plan.
struct Planned {
    road: Road,
    plan: Plan,
    /// For each grid point of the road compared with, the place on this road.
    ground: Match,
}

impl Planned {
    fn of(trip: Trip<'_>, road: Road, on: &Road) -> Option<Self> {
        let (plan, _) = analyse(&road, trip.truck, trip.day, &mut |_| true)?;
        let ground = lie_on_each_other(on, &road)?;
        Some(Self { road, plan, ground })
    }

    /// Gear and speed, km/h, told at a grid point of the road compared with.
    fn advice(&self, point: usize) -> Option<(u8, f64)> {
        let at = self.ground.place(point)?;
        let within = |from: usize, to: usize| from as f64 <= at && at <= to as f64;
        let descent = self.plan.descents.iter().find(|it| within(it.from, it.to))?;
        descent.choice.advice()?;
        let holds = descent.holds();
        // While the truck slows for the next leg, the leg before counts.
        let hold = holds.iter().rev().find(|it| it.from as f64 <= at).or(holds.first())?;
        Some((hold.gear.number(), hold.speed.kmh()))
    }
}

/// How two plans compare, counted in grid points.
#[derive(Default)]
struct Tally {
    both: usize,
    same_gear: usize,
    one_sided: usize,
}

impl Tally {
    fn add(&mut self, one: Option<(u8, f64)>, other: Option<(u8, f64)>) {
        match (one, other) {
            (Some((gear, _)), Some((other, _))) => {
                self.both += 1;
                self.same_gear += usize::from(gear == other);
            }
            (Some(_), None) | (None, Some(_)) => self.one_sided += 1,
            (None, None) => {}
        }
    }

    fn told(&self) -> String {
        let percent = |part: usize, of: usize| 100.0 * part as f64 / of.max(1) as f64;
        format!(
            "same gear on {:.0} %, advice on one side only on {:.0} %",
            percent(self.same_gear, self.both),
            percent(self.one_sided, self.both + self.one_sided)
        )
    }
}

/// The figures of a pair; `None` where the two are not one road or cannot be planned.
pub(crate) fn of_pair(trip: Trip<'_>, first: Road, second: Road) -> Option<String> {
    let both = road::combine(&first, &second)?;
    let on = both.clone();
    let all = [("first", first), ("second", second), ("together", both)];
    let mut planned = Vec::with_capacity(all.len());
    for (name, road) in all {
        planned.push((name, Planned::of(trip, road, &on)?));
    }
    let mut out = String::new();
    for (name, it) in &planned {
        of_road(&mut out, name, it);
    }
    let [(_, first), (_, second), (_, both)] = &planned[..] else { return None };
    let mut tallies = [Tally::default(), Tally::default(), Tally::default()];
    let (mut compared, mut faster, mut most_kmh) = (0usize, 0usize, 0.0_f64);
    for point in 0..=on.cells() {
        let [a, b, together] = [first, second, both].map(|it| it.advice(point));
        tallies[0].add(together, a);
        tallies[1].add(together, b);
        tallies[2].add(a, b);
        if let (Some((_, together)), Some((_, a)), Some((_, b))) = (together, a, b) {
            compared += 1;
            let by = together - a.max(b);
            if by > SAME_KMH {
                faster += 1;
                most_kmh = most_kmh.max(by);
            }
        }
    }
    for (name, tally) in
        ["together and first", "together and second", "first and second"].iter().zip(&tallies)
    {
        let _ = writeln!(out, "{name}: {}", tally.told());
    }
    let share = 100.0 * faster as f64 / compared.max(1) as f64;
    let _ = writeln!(out, "faster than each alone on {share:.1} % of the way, by {most_kmh:.0} km/h at most");
    Some(out)
}

fn of_road(out: &mut String, name: &str, it: &Planned) {
    let Planned { road, plan, .. } = it;
    let doubt = road.doubt();
    let disagree =
        road.findings().iter().filter(|it| matches!(it.kind, FindingKind::RecordingsDisagree { .. }));
    let _ = writeln!(
        out,
        "{name}: {:.2} km, heights {:?}, sigma over {DOUBT_OVER_M:.0} m {:.1} m, usually {:.1} m; disagree at {} place(s)",
        road.length_m() / 1e3,
        road.quality().class,
        doubt.sigma_m(DOUBT_OVER_M),
        doubt.usual_sigma_m(DOUBT_OVER_M),
        disagree.count()
    );
    for descent in &plan.descents {
        let km = |point: usize| point as f64 * road.step_m() / 1e3;
        let _ = write!(out, "    km {:.2} to {:.2}:", km(descent.from), km(descent.to));
        if descent.choice.advice().is_none() {
            out.push_str(" no safe speed found\n");
            continue;
        }
        for leg in &descent.legs {
            let _ = write!(out, " gear {} {:.0} km/h;", leg.gear.number(), leg.speed.kmh());
        }
        out.push('\n');
    }
}
