//! What a person adds to a road: places, and speed limits posted on a stretch of it.

use super::{Place, Road};
use crate::limits::{self, Entry};
use crate::order::ascending;
use crate::units::MetresPerSecond;
use serde::{Deserialize, Serialize};

/// A speed limit on a stretch of road, in both directions.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct PostedLimit {
    /// Grid index where it begins.
    pub from: usize,
    /// Grid index where it ends; greater than `from`.
    pub to: usize,
    /// The limit, km/h; in the range of [`Entry::SpeedLimit`].
    pub kmh: f64,
}

impl PostedLimit {
    /// The limit.
    #[must_use]
    pub fn speed(&self) -> MetresPerSecond {
        MetresPerSecond::from_kmh(self.kmh)
    }

    /// The part of it between two grid points; `None` where it has none.
    #[must_use]
    pub fn within(&self, from: usize, to: usize) -> Option<Self> {
        let cut = Self { from: self.from.max(from), to: self.to.min(to), ..*self };
        (cut.from < cut.to).then_some(cut)
    }

    pub(super) fn is_on(&self, cells: usize) -> bool {
        self.from < self.to && self.to <= cells && limits::of(Entry::SpeedLimit).check(self.kmh).is_ok()
    }
}

/// Places and limits of a road, by its grid points.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Roadside {
    /// Places.
    pub places: Vec<Place>,
    /// Limits; where two overlap the lower one holds.
    pub limits: Vec<PostedLimit>,
}

impl Road {
    /// The road with these places and limits instead of its own. Whatever lies off the road, and a limit
    /// outside the range of limits, is left out.
    #[must_use]
    pub fn with_roadside(&self, roadside: &Roadside) -> Road {
        let (cells, mut road) = (self.cells(), self.clone());
        let places: Vec<&Place> = roadside.places.iter().filter(|it| it.index <= cells).collect();
        let limits: Vec<&PostedLimit> = roadside.limits.iter().filter(|it| it.is_on(cells)).collect();
        let by_place = ascending(places.iter().map(|it| it.index as f64));
        let by_start = ascending(limits.iter().map(|it| it.from as f64));
        road.places = by_place.into_iter().map(|at| places[at].clone()).collect();
        road.limits = by_start.into_iter().map(|at| *limits[at]).collect();
        road
    }

    /// The road without its posted limits.
    pub(crate) fn without_limits(&self) -> Road {
        Road { limits: Vec::new(), ..self.clone() }
    }

    /// Limits posted along the road, in the order in which they begin.
    pub fn limits(&self) -> &[PostedLimit] {
        &self.limits
    }
}
