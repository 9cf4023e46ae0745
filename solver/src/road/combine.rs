//! Two recordings of one road as one road.
//!
//! Rises from one grid point to the next are averaged, each weighed by how little its recording is in doubt.
//! So a constant offset between the two drops out. One recording cannot tell a bend of the road from one of
//! its own errors, but two can: both have the road's bends, and their difference has only errors. Where they
//! disagree by more than both doubts allow, the steeper is taken, so that the plan is never faster for it.

use super::alike::{Match, lie_on_each_other};
use super::alone::Alone;
use super::disagree::{Disagreement, joined};
use super::doubt::{Doubt, bend};
use super::finding::{Finding, FindingKind};
use super::profile::{cells_in, spans};
use super::shown::{Mended, Shown};
use super::survey::unassessed;
use super::{Parts, Place, PostedLimit, Road};
use crate::order::ascending;
use std::ops::Range;

/// Lengths over which the two recordings are compared, metres.
const COMPARED_M: [f64; 2] = [200.0, 500.0];
/// Recordings disagree where they differ by more than this many times the sum of both doubts.
const DISAGREE: f64 = 2.0;
/// Least weight of a recording (assumed), since the errors are estimates, too.
const LEAST_WEIGHT: f64 = 0.05;
/// Recordings disagree only where they differ by more than this many times their usual difference. Rough
/// heights disagree a little everywhere.
const UNUSUAL: f64 = 3.5;
/// Factor from a median deviation to a standard deviation.
const MEDIAN_TO_SIGMA: f64 = 1.4826;
/// The bend of errors is taken over twice this length, metres. Over 300 m the road's own bends are larger
/// than the errors, and they drop out only on the average (own choice by the errors on generated roads).
const BEND_M: f64 = 100.0;

/// Places with one name and kind within this distance are one place, metres. Assumed.
const SAME_PLACE_M: f64 = 200.0;

/// Least difference of two recordings over 200 m, metres, root of the mean square. Below it one is a copy of
/// the other and adds nothing. Assumed.
const COPIED_M: f64 = 0.05;

/// One road from two recordings of one ground. `None` where they lie on different ground, where one is a copy
/// of the other, and where their heights are quite different on most of the way. The road has the grid and
/// the curves of the recording with less blank or, where equal, with less doubt. It has the names, places and
/// limits of both.
#[must_use]
pub fn combine(a: &Road, b: &Road) -> Option<Road> {
    let (base, other) = if better(b, a) { (b, a) } else { (a, b) };
    let ground = lie_on_each_other(base, other)?;
    let pair = Pair::new(base, other, &ground);
    if pair.is_one_recording() || pair.has_other_heights() {
        return None;
    }
    let windows = pair.disagreements();
    let surface_m = pair.surface(&windows);
    let disagreements = joined(windows);
    let mut why = vec![None; base.cells()];
    for span in base.unassessed() {
        for cell in (span.from..span.to).filter(|cell| pair.rises[*cell].other.is_none()) {
            why[cell] = Some(span.why);
        }
    }
    let mut findings = vec![combined(base, other, pair.known_by_both())];
    findings.extend(kept(base, &why));
    findings.extend(pair.told_before());
    findings.extend(disagreements.iter().map(|it| it.finding(base.step_m())));
    let (spans, faults) = (spans(&why), faults(base));
    let bridged = |road: &Road| road.findings().iter().any(|it| is_bridge(&it.kind));
    let mended = Mended {
        heights_m: surface_m.clone(),
        step_m: base.step_m(),
        spans: &spans,
        from_terrain: bridged(base) || bridged(other),
        faults: &faults,
    };
    let Shown { heights_m, quality, segments } =
        mended.show(&surface_m, &mut findings, &mut |_| Ok(())).ok()?;
    let known = |(i, height_m): (usize, &f64)| {
        let seen = base.recorded_m()[i].is_finite() || pair.heights[i].is_some();
        if seen { *height_m } else { f64::NAN }
    };
    Some(Road::from_parts(Parts {
        name: names(a, b),
        step_m: base.step_m(),
        unassessed: unassessed(&why),
        recorded_m: surface_m.iter().enumerate().map(known).collect(),
        doubt: pair.doubt(ground.points()),
        alone: Alone::of_both(base, other, &ground),
        surface_m,
        heights_m,
        positions: base.positions().to_vec(),
        segments,
        curves: base.curves().to_vec(),
        quality,
        places: pair.places(),
        limits: pair.limits(),
        findings,
    }))
}

/// Whether a road knows more of its way than another, or as much with less doubt.
fn better(one: &Road, other: &Road) -> bool {
    let blank = |road: &Road| road.assessed().iter().filter(|assessed| !**assessed).count();
    let (of_one, of_other) = (blank(one), blank(other));
    of_one < of_other || (of_one == of_other && one.doubt().bend_m < other.doubt().bend_m)
}

/// What is known of the rise of one cell, metres.
#[derive(Clone, Copy)]
struct Rise {
    /// By the first recording: along its surface, which is straight where it has no heights.
    base_m: f64,
    /// Whether the first recording is assessed there.
    assessed: bool,
    /// By the second recording, where it lies on the road and is assessed.
    other: Option<f64>,
}

struct Pair<'a> {
    base: &'a Road,
    other: &'a Road,
    ground: &'a Match,
    /// Heights of the second recording at the grid points of the first, where it lies there and is assessed.
    heights: Vec<Option<f64>>,
    rises: Vec<Rise>,
    /// Weight of the second recording, from 0 to 1.
    weight: f64,
}

impl<'a> Pair<'a> {
    fn new(base: &'a Road, other: &'a Road, ground: &'a Match) -> Self {
        let heights = heights_on(base, other, ground);
        let rise = |cell: usize| Rise {
            base_m: base.surface_m()[cell + 1] - base.surface_m()[cell],
            assessed: base.assessed()[cell],
            other: heights[cell].zip(heights[cell + 1]).map(|(from, to)| to - from),
        };
        let rises: Vec<Rise> = (0..base.cells()).map(rise).collect();
        let weight = weight(base, &heights);
        Self { base, other, ground, heights, rises, weight }
    }

    /// The combined heights: rises added up from the first height on.
    fn surface(&self, disagreements: &[Disagreement]) -> Vec<f64> {
        // Stretches may overlap. Each votes in a cell with the amount by which one recording is steeper than
        // the other.
        let mut votes: Vec<Option<f64>> = vec![None; self.rises.len()];
        for it in disagreements {
            for vote in &mut votes[it.cells.clone()] {
                *vote = Some(vote.unwrap_or(0.0) + it.steeper_m);
            }
        }
        let weight = |vote: Option<f64>| match vote {
            None => self.weight,
            Some(steeper_m) if steeper_m > 0.0 => 1.0,
            Some(_) => 0.0,
        };
        let mut height_m = self.base.surface_m()[0];
        let mut surface_m = vec![height_m];
        for (rise, vote) in self.rises.iter().zip(votes) {
            height_m += match rise.other {
                None => rise.base_m,
                Some(other_m) if !rise.assessed => other_m,
                Some(other_m) => rise.base_m + weight(vote) * (other_m - rise.base_m),
            };
            surface_m.push(height_m);
        }
        surface_m
    }

    /// Whether both recordings are equal all along.
    fn is_one_recording(&self) -> bool {
        let width = cells_in(COMPARED_M[0], self.base.step_m());
        let ends = 0..(self.rises.len() + 1).saturating_sub(width);
        let apart = ends.filter_map(|from| self.both(from..from + width)).map(|(a, b)| (a - b) * (a - b));
        let (sum, count) = apart.fold((0.0, 0usize), |(sum, count), apart2| (sum + apart2, count + 1));
        count > 0 && sum <= COPIED_M * COPIED_M * count as f64
    }

    /// Whether the recordings differ on most of the way by more than twice the better one's doubt allows. The
    /// other then has heights of another road or in another unit. A difference that is everywhere would stand
    /// out nowhere.
    fn has_other_heights(&self) -> bool {
        let [_, length_m] = COMPARED_M;
        let width = cells_in(length_m, self.base.step_m());
        let ends = 0..(self.rises.len() + 1).saturating_sub(width);
        let apart = ends.filter_map(|from| self.both(from..from + width)).map(|(a, b)| (a - b).abs());
        let run_m = width as f64 * self.base.step_m();
        let sigma_m = self.base.doubt().sigma_m(run_m).min(self.other.doubt().sigma_m(run_m));
        median(apart) > 2.0 * DISAGREE * sigma_m
    }

    /// Number of cells that both know.
    fn known_by_both(&self) -> usize {
        self.rises.iter().filter(|rise| rise.assessed && rise.other.is_some()).count()
    }

    /// Disagreements among the recordings that the second road was made of.
    fn told_before(&self) -> impl Iterator<Item = Finding> + '_ {
        let placed = self.other.findings().iter().zip(&self.other.finding_spans);
        placed.filter_map(|(finding, (from, to))| {
            let FindingKind::RecordingsDisagree { .. } = finding.kind else { return None };
            let metres = |at: usize| Some(self.ground.point_at(at)? as f64 * self.base.step_m());
            Some(Finding { from_m: Some(metres((*from)?)?), to_m: Some(metres((*to)?)?), ..finding.clone() })
        })
    }

    /// Places of both: those of the second that lie on the first and are not there already.
    fn places(&self) -> Vec<Place> {
        let near = cells_in(SAME_PLACE_M, self.base.step_m());
        let mut places = self.base.places().to_vec();
        for place in self.other.places() {
            let Some(index) = self.ground.point_at(place.index) else { continue };
            let same = |it: &Place| {
                it.kind == place.kind && it.name == place.name && it.index.abs_diff(index) <= near
            };
            if !places.iter().any(same) {
                places.push(Place { index, ..place.clone() });
            }
        }
        let along = ascending(places.iter().map(|place| place.index as f64));
        along.into_iter().map(|at| places[at].clone()).collect()
    }

    /// Posted limits of both; where two overlap, the lower one holds.
    fn limits(&self) -> Vec<PostedLimit> {
        let mut limits = self.base.limits.clone();
        for limit in &self.other.limits {
            let ends = self.ground.point_at(limit.from).zip(self.ground.point_at(limit.to));
            let on_it = ends.map(|(from, to)| PostedLimit { from, to, ..*limit });
            limits.extend(on_it.filter(|it| it.from < it.to && !limits.contains(it)));
        }
        let along = ascending(limits.iter().map(|limit| limit.from as f64));
        along.into_iter().map(|at| limits[at]).collect()
    }

    /// Stretches where both know the road and disagree on it, over any of the lengths.
    fn disagreements(&self) -> Vec<Disagreement> {
        let mut found: Vec<Disagreement> = Vec::new();
        for length_m in COMPARED_M {
            let width = cells_in(length_m, self.base.step_m());
            let run_m = width as f64 * self.base.step_m();
            let rises = (0..(self.rises.len() + 1).saturating_sub(width))
                .filter_map(|from| self.both(from..from + width).map(|rises| (from, rises)));
            let rises: Vec<(usize, (f64, f64))> = rises.collect();
            let usual_m = median(rises.iter().map(|(_, (base_m, other_m))| (base_m - other_m).abs()));
            let doubt_m = self.base.doubt().sigma_m(run_m) + self.other.doubt().sigma_m(run_m);
            let allowed_m = (DISAGREE * doubt_m).max(UNUSUAL * MEDIAN_TO_SIGMA * usual_m);
            for (from, (base_m, other_m)) in rises {
                let apart_m = (base_m - other_m).abs();
                if apart_m > allowed_m {
                    let steeper_m = other_m.abs() - base_m.abs();
                    found.push(Disagreement { cells: from..from + width, apart_m, length_m, steeper_m });
                }
            }
        }
        found
    }

    /// Rises of both over cells that both know, metres.
    fn both(&self, cells: Range<usize>) -> Option<(f64, f64)> {
        let ends = self.heights[cells.start].zip(self.heights[cells.end]);
        let rises = &self.rises[cells.clone()];
        let known = rises.iter().all(|rise| rise.assessed && rise.other.is_some());
        let surface = self.base.surface_m();
        ends.filter(|_| known).map(|(from, to)| (surface[cells.end] - surface[cells.start], to - from))
    }

    /// On the common ground the doubt of both together; elsewhere that of the first.
    fn doubt(&self, common: usize) -> Doubt {
        let share = (common as f64 / self.heights.len() as f64).min(1.0);
        let (a, b) = (self.base.doubt(), self.other.doubt());
        let both = |one: f64, other: f64| {
            let together2 = 1.0 / (1.0 / (one * one) + 1.0 / (other * other));
            (share * together2 + (1.0 - share) * one * one).sqrt()
        };
        Doubt {
            bend_m: both(a.bend_m, b.bend_m),
            usual_bend_m: both(a.usual_bend_m, b.usual_bend_m),
            ripple_m: both(a.ripple_m, b.ripple_m),
        }
    }
}

/// Heights of the second road at the grid points of the first, where it lies there and is assessed.
fn heights_on(base: &Road, other: &Road, ground: &Match) -> Vec<Option<f64>> {
    let height = |point: usize| {
        let place = ground.place(point)?;
        let cell = (place as usize).min(other.cells() - 1);
        other.assessed()[cell].then_some(height_at(other.surface_m(), place))
    };
    (0..=base.cells()).map(height).collect()
}

/// Height at a place of a grid, metres.
fn height_at(surface_m: &[f64], place: f64) -> f64 {
    let cell = (place as usize).min(surface_m.len() - 2);
    let (from, to) = (surface_m[cell], surface_m[cell + 1]);
    from + (to - from) * (place - cell as f64)
}

/// Number of recordings that a road was made of.
fn recordings(road: &Road) -> usize {
    road.alone.len().max(1)
}

/// Both names, or the one that exists.
fn names(a: &Road, b: &Road) -> String {
    let (a, b) = (a.name(), b.name());
    if a.is_empty() || b.is_empty() || a == b {
        return [a, b].into_iter().find(|name| !name.is_empty()).unwrap_or_default().to_owned();
    }
    format!("{a} + {b}")
}

/// The finding that recordings were combined, and how many in all.
fn combined(base: &Road, other: &Road, known_by_both: usize) -> Finding {
    let count = recordings(base) + recordings(other);
    let before = |road: &Road| {
        road.findings().iter().find_map(|it| match it.kind {
            FindingKind::RecordingsCombined { common_m } => Some(common_m),
            _ => None,
        })
    };
    let common_m = (known_by_both as f64 * base.step_m()).max(before(base).unwrap_or(0.0));
    Finding { kind: FindingKind::RecordingsCombined { common_m }, count, from_m: None, to_m: None }
}

/// Weight of the second recording, from how much the errors of each bend.
///
/// Both contain the road's own bends r; the errors e₁ and e₂ are independent. The mean squares of both and of
/// their difference are A = r + e₁, B = r + e₂ and D = e₁ + e₂. So e₁ = (D + A − B)/2, and the weights are as
/// 1/e.
fn weight(base: &Road, heights: &[Option<f64>]) -> f64 {
    let width = cells_in(BEND_M, base.step_m());
    let other: Vec<f64> = heights.iter().map(|height| height.unwrap_or(f64::NAN)).collect();
    // Of the first recording only what the second has, too.
    let surface = base.surface_m().iter().zip(&other);
    let first: Vec<f64> = surface.clone().map(|(a, b)| if b.is_finite() { *a } else { f64::NAN }).collect();
    let difference: Vec<f64> = surface.map(|(a, b)| a - b).collect();
    let square = |heights_m: &[f64]| bend(heights_m, width).map(|bend_m| bend_m * bend_m);
    let (Some(a), Some(b), Some(d)) = (square(&first), square(&other), square(&difference)) else {
        return 0.5;
    };
    let (of_first, of_second) = ((d + a - b).max(0.0), (d + b - a).max(0.0));
    let sum = of_first + of_second;
    if sum > 0.0 { (of_first / sum).clamp(LEAST_WEIGHT, 1.0 - LEAST_WEIGHT) } else { 0.5 }
}

fn median(values: impl Iterator<Item = f64>) -> f64 {
    let mut values: Vec<f64> = values.collect();
    if values.is_empty() {
        return 0.0;
    }
    let middle = values.len() / 2;
    *values.select_nth_unstable_by(middle, f64::total_cmp).1
}

/// Findings of the first recording that still hold. Those that follow from its heights are made anew, and
/// what the second one knows is assessed.
fn kept(base: &Road, why: &[Option<super::Unassessed>]) -> Vec<Finding> {
    let holds = |(finding, (from, to)): (&Finding, &(Option<usize>, Option<usize>))| {
        let still = match (&finding.kind, from, to) {
            (
                FindingKind::RoughHeights { .. }
                | FindingKind::VerySteep { .. }
                | FindingKind::RecordingsCombined { .. },
                _,
                _,
            ) => false,
            (FindingKind::NotAssessed { .. }, Some(from), Some(to)) => {
                why[*from..*to].iter().any(Option::is_some)
            }
            (_, _, _) => true,
        };
        still.then(|| finding.clone())
    };
    base.findings().iter().zip(&base.finding_spans).filter_map(holds).collect()
}

fn is_bridge(kind: &FindingKind) -> bool {
    matches!(kind, FindingKind::TunnelBridged { .. } | FindingKind::ViaductBridged { .. })
}

/// Stretches that were bridged.
fn faults(base: &Road) -> Vec<Range<usize>> {
    let placed = base.findings().iter().zip(&base.finding_spans);
    placed
        .filter(|(finding, _)| is_bridge(&finding.kind))
        .filter_map(|(_, (from, to))| Some((*from)?..(*to)?))
        .collect()
}
