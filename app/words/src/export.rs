//! Words that stand in a file saved for a device.

use crate::down::{self, Told};
use crate::format::{self, Units};
use crate::say::capital;
use crate::{Spoken, words};
use solver::plan::{Choice, Descent, Leg, Plan};
use solver::report::gpx::{Captions, Wording};
use solver::truck::{Gear, Stage};

impl Spoken {
    /// At a crest.
    #[must_use]
    pub fn mark_crest(&self, descent: &Descent, units: Units) -> String {
        let how = match &descent.choice {
            Choice::Held(held) => self.mark_held(down::first(descent, held), units),
            Choice::NoSafeSpeed(_) => self.no_safe_speed().to_owned(),
        };
        format!("{}{}{how}", self.crest_number(descent.number), self.colon())
    }

    /// Gear, stage, and the speed to hold.
    #[must_use]
    pub fn mark_held(&self, (gear, stage, speed): Told, units: Units) -> String {
        let hold = self.hold(&format::hold_speed(speed.0, units));
        format!("{}, {}, {hold}", self.gear(gear), self.stage(stage))
    }

    /// Where a gear is in, or from where it may be.
    #[must_use]
    pub fn mark_leg(&self, leg: &Leg, stage: Stage, units: Units) -> String {
        let by = leg.change.map_or("", |change| self.by_here(change.how));
        capital(&format!("{by}{}{}", self.colon(), self.mark_held((leg.gear, stage, leg.speed), units)))
    }

    /// Where the stage changes.
    #[must_use]
    pub fn mark_change(&self, gear: Gear, stage: Stage) -> String {
        format!("{}, {}", capital(&self.gear(gear)), self.stage(stage))
    }
}

impl Spoken {
    /// At a foot, and the gear that is next where one is.
    #[must_use]
    pub fn foot(&self, number: usize, next: Option<u8>) -> String {
        next.map_or_else(|| self.mark_foot(number), |gear| self.mark_foot_then(number, gear))
    }
}

/// The words for a plan, in the language and the units chosen. `first` stands before the caution of each
/// mark.
#[must_use]
pub fn captions(plan: &Plan, gears: &[u8], units: Units, first: Option<&'static str>) -> Captions {
    Captions::of(plan, gears, &Chosen(units, first))
}

struct Chosen(Units, Option<&'static str>);

impl Wording for Chosen {
    fn caution(&self) -> String {
        let caution = words().mark_caution();
        self.1.map_or_else(|| caution.to_owned(), |first| format!("{first} {caution}"))
    }
    fn crest(&self, descent: &Descent) -> String {
        words().mark_crest(descent, self.0)
    }
    fn change(&self, gear: Gear, stage: Stage) -> String {
        words().mark_change(gear, stage)
    }
    fn leg(&self, leg: &Leg, stage: Stage) -> String {
        words().mark_leg(leg, stage, self.0)
    }
    fn foot(&self, descent: &Descent, next: Option<u8>) -> String {
        words().foot(descent.number, next)
    }
}
