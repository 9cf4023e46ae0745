//! What exercises are set on: the descents of a plan in figures.

use solver::plan::{Descent, Plan};
use solver::units::{Grade, Metres, MetresPerSecond};

/// A shorter descent gives no exercise, m. Assumed.
const SHORTEST_M: f64 = 500.0;
/// A descent that loses less height gives no exercise either, m. Assumed.
const LOWEST_M: f64 = 20.0;
/// Share of the length that height can be at most: a cliff is no road. Assumed.
const STEEPEST: f64 = 0.4;

/// The descents that exercises are set on.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ground {
    /// The descents in road order.
    pub slopes: Vec<Slope>,
}

/// A descent in the figures that exercises take from it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope {
    /// The number of the descent on the road, from 1.
    pub number: usize,
    /// Length from crest to foot.
    pub length: Metres,
    /// Height lost.
    pub drop: Metres,
    /// What the gear is chosen for: a hill of this even grade asks for as much; negative.
    pub sustained: Grade,
    /// Highest road on it.
    pub height: Metres,
    /// What the plan holds on its slowest leg; where no speed is safe, the slowest speed tried.
    pub hold: MetresPerSecond,
}

impl Ground {
    /// Of a plan. Descents too short or too level to reckon with are left out.
    #[must_use]
    pub fn of(plan: &Plan) -> Self {
        Self { slopes: plan.descents.iter().filter_map(Slope::of).collect() }
    }
}

impl Slope {
    fn of(descent: &Descent) -> Option<Self> {
        let length = descent.foot - descent.crest;
        let fits = length.0 >= SHORTEST_M
            && descent.drop.0 >= LOWEST_M
            && descent.drop.0 <= STEEPEST * length.0
            && descent.sustained.grade.0 < 0.0;
        fits.then(|| Self {
            number: descent.number,
            length,
            drop: descent.drop,
            sustained: descent.sustained.grade,
            height: descent.sustained.height,
            hold: descent.hold().speed,
        })
    }
}
