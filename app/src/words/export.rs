//! Words that stand in a file saved for a device.

use super::say::capital;
use super::{PlanWords, words};
use crate::format::{self, Units};
use solver::plan::{Choice, Descent, Plan};
use solver::report::gpx::{Captions, Wording};
use solver::truck::{Gear, Stage};

/// Words of the waypoints.
pub trait ExportWords: PlanWords {
    /// With every advice: what it is not, and who comes first.
    fn mark_caution(&self) -> &'static str;
    /// At a crest.
    fn mark_crest(&self, number: usize, choice: &Choice, units: Units) -> String {
        let how = match choice {
            Choice::Held(held) => format!(
                "{}, {}, {}",
                self.gear(held.gear),
                self.stage(held.stage),
                self.hold(&format::hold_speed(held.speed.0, units))
            ),
            Choice::NoSafeSpeed(_) => self.no_safe_speed().to_owned(),
        };
        format!("{}{}{how}", self.crest_number(number), self.colon())
    }
    /// A crest by the number of its descent.
    fn crest_number(&self, number: usize) -> String;
    /// To hold this speed.
    fn hold(&self, speed: &str) -> String;
    /// Where the stage changes.
    fn mark_change(&self, gear: Gear, stage: Stage) -> String {
        format!("{}, {}", capital(&self.gear(gear)), self.stage(stage))
    }
    /// At a foot, and the gear that is next where one is.
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String;
}

/// The words for a plan, in the language and the units chosen.
#[must_use]
pub fn captions(plan: &Plan, gears: &[u8], units: Units) -> Captions {
    Captions::of(plan, gears, &Chosen(units))
}

struct Chosen(Units);

impl Wording for Chosen {
    fn caution(&self) -> String {
        words().mark_caution().to_owned()
    }
    fn crest(&self, descent: &Descent) -> String {
        words().mark_crest(descent.number, &descent.choice, self.0)
    }
    fn change(&self, gear: Gear, stage: Stage) -> String {
        words().mark_change(gear, stage)
    }
    fn foot(&self, descent: &Descent, next: Option<u8>) -> String {
        words().mark_foot(descent.number, next)
    }
}
