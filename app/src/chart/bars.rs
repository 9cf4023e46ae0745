//! Numbered bars above the hill, one a descent, from crest to foot.
//!
//! A bar is a button, so it has a least width. Bars that would touch are joined into one with the numbers of
//! both ends; the chosen descent always keeps a bar of its own, and its neighbours make room for it.

use super::label::text_width;
use super::picture::Bracket;
use super::scene::Scene;
use solver::Verdict;

/// One bar, cut at the edges of the window.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Bar {
    /// Numbers of its first and last descent; the same for a single one.
    pub(crate) numbers: (usize, usize),
    /// Where it begins, px.
    pub(crate) x0: f64,
    /// Where it ends, px.
    pub(crate) x1: f64,
    /// It is the descent that is looked at.
    pub(crate) chosen: bool,
    /// The worst verdict of its descents.
    pub(crate) verdict: Verdict,
    /// Whether its number has room for a disc.
    pub(crate) disc: bool,
    /// What stands beside the number; empty where there is no room.
    pub(crate) text: String,
}

impl Bar {
    /// Its numbers, as they are read.
    #[must_use]
    pub(crate) fn label(&self) -> String {
        label(self.numbers)
    }
}

fn label((first, last): (usize, usize)) -> String {
    if first == last { first.to_string() } else { format!("{first}–{last}") }
}

/// A descent, or several that are joined, with what it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Group {
    numbers: (usize, usize),
    /// From the first crest to the last foot, px.
    own: (f64, f64),
    /// As it is drawn, px.
    drawn: (f64, f64),
    verdict: Verdict,
}

/// Bars nearer than this touch, px.
const GAP: f64 = 3.0;
/// Width of a number's disc with the space about it, px.
const DISC: f64 = 30.0;
/// Space about a text, px.
const ROOM: f64 = 10.0;

/// The bars of a scene, in road order.
#[must_use]
pub(crate) fn bars(scene: &Scene) -> Vec<Bar> {
    let (left, right) = (scene.layout.left, scene.layout.right);
    let ends = |descent: &Bracket| {
        let own = (scene.x(descent.from), scene.x(descent.to));
        let shown = own.1 > left && own.0 < right;
        let own = (own.0.max(left), own.1.min(right));
        let numbers = (descent.number, descent.number);
        shown.then_some(Group { numbers, own, drawn: own, verdict: descent.verdict })
    };
    let shown = scene.picture().descents.iter().filter_map(ends).collect();
    // A bar need not be as wide as it is high: its place says where the descent is.
    let least = 0.75 * scene.layout.target;
    let size = scene.layout.text_size();
    let named = |group: &Group| name(scene, group, size);
    placed(shown, scene.chosen, (left, right), least, size).iter().map(named).collect()
}

fn name(scene: &Scene, group: &Group, size: f64) -> Bar {
    let width = group.drawn.1 - group.drawn.0;
    let single = group.numbers.0 == group.numbers.1;
    let disc = single && width >= DISC + 2.0;
    let descent = scene.picture().descent(group.numbers.0).filter(|_| disc);
    let wordings = descent.map(|it| {
        let length = (it.to - it.from) as f64 * scene.picture().step();
        let steepest = scene.prepared.pitch(it.number).map(|it| it.grade);
        let crest = scene.picture().place_of(it.from);
        let alone = scene.picture().descents.len() == 1;
        scene.labels.bar(it, [length, crest], steepest.filter(|_| alone), scene.prepared.units)
    });
    let fits = |text: &String| DISC + BOLD * text_width(text, size) + ROOM <= width;
    Bar {
        numbers: group.numbers,
        x0: group.drawn.0,
        x1: group.drawn.1,
        chosen: single && scene.chosen == Some(group.numbers.0),
        verdict: group.verdict,
        disc,
        text: wordings.and_then(|all| all.into_iter().find(fits)).unwrap_or_default(),
    }
}

/// Bold letters are wider by this.
const BOLD: f64 = 1.08;

/// Places the bars of descents, in road order, between two edges.
fn placed(
    mut all: Vec<Group>,
    chosen: Option<usize>,
    (left, right): (f64, f64),
    least: f64,
    size: f64,
) -> Vec<Group> {
    let Some(own) = all.iter().position(|it| Some(it.numbers.0) == chosen) else {
        return joined(all, (left, right), least, size);
    };
    let after = all.split_off(own + 1);
    let Some(mut middle) = all.pop() else { return Vec::new() };
    // A neighbour that is cut by the window still needs its width.
    let room = least + GAP;
    let left_of = if all.is_empty() { left } else { left + room };
    let right_of = if after.is_empty() { right } else { right - room };
    middle.drawn = spread(middle.own, least, (left_of, right_of.max(left_of + least)));
    let mut bars = joined(all, (left, middle.drawn.0 - GAP), least, size);
    let after = joined(after, (middle.drawn.1 + GAP, right), least, size);
    bars.push(middle);
    bars.extend(after);
    bars
}

/// As wide as it is, but at least so wide, about its middle and inside the edges.
fn spread(own: (f64, f64), least: f64, (left, right): (f64, f64)) -> (f64, f64) {
    let (own0, own1) = (own.0.clamp(left, right.max(left)), own.1.clamp(left, right.max(left)));
    let width = (own1 - own0).max(least).min((right - left).max(0.0));
    let x0 = (0.5 * (own0 + own1 - width)).min(right - width).max(left);
    (x0, x0 + width)
}

/// Widens bars, and joins those that touch, until none does.
fn joined(mut all: Vec<Group>, edges: (f64, f64), least: f64, size: f64) -> Vec<Group> {
    // Ends: each round joins at least two.
    loop {
        for group in &mut all {
            let needed = BOLD * text_width(&label(group.numbers), size) + ROOM;
            group.drawn = spread(group.own, least.max(needed), edges);
        }
        let mut kept: Vec<Group> = Vec::with_capacity(all.len());
        for group in &all {
            match kept.last_mut() {
                Some(last) if group.drawn.0 < last.drawn.1 + GAP => {
                    last.numbers.1 = group.numbers.1;
                    last.own.1 = last.own.1.max(group.own.1);
                    last.drawn.1 = last.drawn.1.max(group.drawn.1);
                    last.verdict = last.verdict.max(group.verdict);
                }
                Some(_) | None => kept.push(*group),
            }
        }
        if kept.len() == all.len() {
            return kept;
        }
        all = kept;
    }
}

#[cfg(test)]
mod tests {
    use super::{GAP, Group, placed};
    use solver::Verdict;

    const EDGES: (f64, f64) = (60.0, 940.0);

    fn descents(ends: &[(f64, f64)]) -> Vec<Group> {
        let one = |(index, own): (usize, &(f64, f64))| Group {
            numbers: (index + 1, index + 1),
            own: *own,
            drawn: *own,
            verdict: if index == 2 { Verdict::NeedsServiceBrakes } else { Verdict::RetarderHolds },
        };
        ends.iter().enumerate().map(one).collect()
    }

    fn check(all: &[Group]) {
        assert!(all.windows(2).all(|pair| pair[0].drawn.1 + GAP <= pair[1].drawn.0 + 1e-9), "{all:?}");
        assert!(all.iter().all(|it| it.drawn.0 >= EDGES.0 - 1e-9 && it.drawn.1 <= EDGES.1 + 1e-9), "{all:?}");
    }

    #[test]
    fn bars_stand_over_their_descents_where_there_is_room() {
        let all = placed(descents(&[(100.0, 200.0), (300.0, 500.0)]), None, EDGES, 27.0, 13.0);
        assert_eq!(all.iter().map(|it| it.drawn).collect::<Vec<_>>(), [(100.0, 200.0), (300.0, 500.0)]);
    }

    #[test]
    fn bars_that_would_touch_are_joined_with_the_worst_verdict() {
        let ends = [(100.0, 120.0), (122.0, 130.0), (131.0, 150.0), (400.0, 410.0)];
        let all = placed(descents(&ends), None, EDGES, 27.0, 13.0);
        check(&all);
        assert_eq!(all.iter().map(|it| it.numbers).collect::<Vec<_>>(), [(1, 3), (4, 4)]);
        assert_eq!(all[0].verdict, Verdict::NeedsServiceBrakes);
        assert!(all[1].drawn.1 - all[1].drawn.0 >= 27.0);
    }

    #[test]
    fn the_chosen_one_stays_single_and_its_neighbours_make_room() {
        let ends: Vec<(f64, f64)> =
            (0..17).map(|it| (500.0 + 9.0 * f64::from(it), 507.0 + 9.0 * f64::from(it))).collect();
        for chosen in 1..=17 {
            let all = placed(descents(&ends), Some(chosen), EDGES, 27.0, 13.0);
            check(&all);
            let own: Vec<_> = all.iter().filter(|it| it.numbers == (chosen, chosen)).collect();
            assert_eq!(own.len(), 1, "{chosen}: {all:?}");
            assert!(own[0].drawn.1 - own[0].drawn.0 >= 27.0 - 1e-9);
            assert_eq!((all[0].numbers.0, all[all.len() - 1].numbers.1), (1, 17));
        }
    }

    #[test]
    fn at_the_edges_of_the_window_every_bar_can_still_be_pressed() {
        let ends = [(60.0, 62.0), (63.0, 900.0), (939.0, 940.0)];
        for chosen in 1..=3 {
            let all = placed(descents(&ends), Some(chosen), EDGES, 48.0, 13.0);
            check(&all);
            assert!(all.iter().all(|it| it.drawn.1 - it.drawn.0 >= 48.0 - 1e-9), "{chosen} {all:?}");
        }
    }
}
