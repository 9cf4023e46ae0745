//! What a wrong entry costs on this road: the plan with the entry a plausible error lower and higher.

use crate::day::Day;
use crate::limits::{Entry, Off, off};
use crate::plan::{Choice, Descent, Plan, Verdict, plan};
use crate::road::Road;
use crate::truck::{Truck, TruckSpec};
use serde::{Deserialize, Serialize};

/// What one entry of the truck is worth on the deciding descent.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Worth {
    /// The entry.
    pub entry: Entry,
    /// Assumed error of the entry, either way.
    pub off: Off,
    /// Change of the answer with the lower value; `None` where no truck can have it.
    pub less: Option<Difference>,
    /// Change of the answer with the higher value; `None` where no truck can have it.
    pub more: Option<Difference>,
}

/// How the answer for a descent differs from the one shown; positive is higher and faster.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Difference {
    /// Difference in gears; zero where one of the two has no safe speed.
    pub gears: i8,
    /// Difference of the hold speeds, km/h; zero where one of the two has no safe speed.
    pub speed_kmh: f64,
    /// Difference in stages; zero where one of the two has no safe speed.
    pub stages: i8,
    /// The verdict, where it differs.
    pub verdict: Option<Verdict>,
}

impl Difference {
    fn between(shown: &Choice, other: &Choice) -> Self {
        let verdict = Some(other.verdict()).filter(|it| *it != shown.verdict());
        let (Some(shown), Some(other)) = (shown.advice(), other.advice()) else {
            return Self { gears: 0, speed_kmh: 0.0, stages: 0, verdict };
        };
        let signed = |number: u8| i8::try_from(number).unwrap_or(i8::MAX);
        Self {
            gears: signed(other.gear.number()) - signed(shown.gear.number()),
            speed_kmh: other.speed.kmh() - shown.speed.kmh(),
            stages: signed(other.stage.number()) - signed(shown.stage.number()),
            verdict,
        }
    }

    /// Whether gear, stage, speed and verdict are those shown.
    #[must_use]
    pub fn is_none(&self) -> bool {
        self.gears == 0 && self.speed_kmh.abs() < 1e-6 && self.stages == 0 && self.verdict.is_none()
    }

    /// Larger for what a driver would notice first: whether there is a safe speed, then gears, speed,
    /// verdict, and the stage.
    fn weight(&self) -> f64 {
        let closed = self.verdict == Some(Verdict::NoSafeSpeed);
        let said = f64::from(u8::from(self.verdict.is_some()));
        let (gears, stages) = (f64::from(self.gears.abs()), f64::from(self.stages.abs()));
        let closed = if closed { 1e6 } else { 0.0 };
        closed + 1e3 * gears + 10.0 * self.speed_kmh.abs() + 5.0 * said + 0.1 * stages
    }
}

impl Worth {
    /// The larger of the two differences; `None` where neither truck is possible.
    #[must_use]
    pub fn largest(&self) -> Option<Difference> {
        match (self.less, self.more) {
            (Some(less), Some(more)) => Some(if more.weight() > less.weight() { more } else { less }),
            (one, other) => one.or(other),
        }
    }
}

/// Plans the road with one entry of the truck lower and higher, and compares the deciding descent. `plan` is
/// the plan of this road, truck and day. `None` on a road without a descent, and for an entry that this truck
/// does not have.
#[must_use]
pub fn worth(road: &Road, truck: &Truck, day: &Day, plan: &Plan, entry: Entry) -> Option<Worth> {
    let shown = plan.deciding()?;
    let value = truck.spec().get(entry)?;
    let off = off(entry)?;
    let [less, more] = off.around(entry, value);
    let tried = |value: Option<f64>| tried(road, truck.spec(), day, shown, entry, value?);
    Some(Worth { entry, off, less: tried(less), more: tried(more) })
}

fn tried(
    road: &Road,
    spec: &TruckSpec,
    day: &Day,
    shown: &Descent,
    entry: Entry,
    value: f64,
) -> Option<Difference> {
    let mut spec = spec.clone();
    if entry == Entry::GrossMass {
        // An error of the gross mass rests on the driven axles, too.
        spec.drive_axle_mass_kg *= value / spec.gross_mass_kg;
    }
    spec.enter(entry, value);
    let truck = Truck::new(spec).ok()?;
    let (other, _) = plan(road, &truck, day, &mut |_| true)?;
    // The hill may push another truck over a little more or less of the descent, or over two parts of it.
    let on_it = other.worst_first().into_iter().find(|it| it.from < shown.to && it.to > shown.from)?;
    Some(Difference::between(&shown.choice, &on_it.choice))
}
