//! The recordings that a road was made of, each by itself.

use super::Road;
use super::alike::Match;
use serde::{Deserialize, Serialize};

/// One recording of a combined road: the whole recording, in the direction of the road, even where only a
/// part is shown.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct Alone {
    road: Road,
    /// For each cell of the combined road the cell of this recording on which it lies; `None` off it.
    on: Vec<Option<usize>>,
}

impl Alone {
    /// The recordings of a road, or the road itself where it is one recording, related to the cells of a road
    /// made with it. `on` tells where those lie on it.
    fn of(road: &Road, cells: usize, on: &dyn Fn(usize) -> Option<usize>) -> Vec<Self> {
        if road.alone.is_empty() {
            return vec![Self { road: road.clone(), on: (0..cells).map(on).collect() }];
        }
        let through = |it: &Self| {
            let on_it = |cell: usize| it.on[on(cell)?];
            Self { road: it.road.clone(), on: (0..cells).map(on_it).collect() }
        };
        road.alone.iter().map(through).collect()
    }

    /// The recordings of a road and of another that lies on it.
    pub(super) fn of_both(base: &Road, other: &Road, ground: &Match) -> Vec<Self> {
        let middle = |cell: usize| {
            let (from, to) = ground.place(cell).zip(ground.place(cell + 1))?;
            Some(((0.5 * (from + to)) as usize).min(other.cells() - 1))
        };
        let mut all = Self::of(base, base.cells(), &Some);
        all.extend(Self::of(other, base.cells(), &middle));
        all
    }

    pub(super) fn is_on(&self, cells: usize) -> bool {
        self.road.alone.is_empty()
            && self.on.len() == cells
            && self.on.iter().flatten().all(|cell| *cell < self.road.cells())
    }

    /// The recordings, related to the cells of a part.
    pub(super) fn part(&self, from: usize, to: usize) -> Self {
        Self { road: self.road.clone(), on: self.on[from..to].to_vec() }
    }

    pub(super) fn reversed(&self) -> Self {
        let last = self.road.cells() - 1;
        Self {
            road: self.road.reversed(),
            on: self.on.iter().rev().map(|cell| cell.map(|cell| last - cell)).collect(),
        }
    }
}

impl Road {
    /// The recordings of this road, and for each of its cells the cell of the recording on which it lies;
    /// empty for a road that is one recording.
    pub(crate) fn each_alone(&self) -> impl Iterator<Item = (&Road, &[Option<usize>])> {
        self.alone.iter().map(|it| (&it.road, &it.on[..]))
    }
}
