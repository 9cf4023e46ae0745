//! Words of the plan: verdicts, descents.

use crate::Spoken;
use crate::format::{self, Units};
use crate::say::capital;
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Advice, Choice, Descent, Proof, Verdict};
use solver::truck::{Gear, Stage};

impl Spoken {
    /// The verdict of a choice. Where no stage is called for, it is the engine alone that holds.
    #[must_use]
    pub fn verdict_of(&self, choice: &Choice) -> &'static str {
        let Some(advice) = choice.advice() else { return self.verdict(choice.verdict()) };
        match (advice.verdict, advice.proof, advice.stage.is_off()) {
            (Verdict::RetarderHolds, Proof::OnAverage, _) => self.holds_on_average(),
            (Verdict::RetarderHolds, Proof::Touches, _) => self.brakes_touch(),
            (Verdict::RetarderHolds, _, true) => self.engine_holds(),
            (Verdict::LittleInReserve, _, true) => self.engine_holds_little(),
            (verdict, ..) => self.verdict(verdict),
        }
    }

    /// “stage 3” or “retarder off”.
    #[must_use]
    pub fn stage(&self, stage: Stage) -> String {
        self.numbered_stage(stage.number())
    }

    /// A stage by its number, 0 for off.
    #[must_use]
    pub fn numbered_stage(&self, number: u8) -> String {
        if number == 0 { self.retarder_off().to_owned() } else { self.stage_number(number.into()) }
    }

    /// “gear 5”.
    #[must_use]
    pub fn gear(&self, gear: Gear) -> String {
        self.gear_number(gear.number())
    }

    /// “gear 5, stage 3, 38 km/h”; of several legs from which gear and speed to which.
    #[must_use]
    pub fn in_short(&self, advice: &Advice, units: Units) -> String {
        let speed = format::hold_speed(advice.speed.0, units);
        let stage = self.stage(advice.stage);
        let Some((gear, fastest)) = advice.fastest_leg else {
            return format!("{}, {stage}, {speed}", self.gear(advice.gear));
        };
        let fastest = format::hold_speed(fastest.0, units);
        self.in_legs(advice.gear.number(), gear.number(), &stage, &speed, &fastest)
    }

    /// The advice with the service brakes used in the other way, and the minutes between.
    #[must_use]
    pub fn other_mode(&self, descent: &Descent, day: &Day, units: Units) -> String {
        let other = match day.service_brakes {
            ServiceBrakes::InReserve => &descent.snubbing,
            ServiceBrakes::MaySnub => &descent.in_reserve,
        };
        let (Some(here), Some(there)) = (descent.choice.advice(), other.advice()) else {
            return self.choice(other, units);
        };
        let same = here.gear == there.gear
            && here.stage == there.stage
            && here.fastest_leg == there.fastest_leg
            && format::hold_number(here.speed.0, units) == format::hold_number(there.speed.0, units);
        if same {
            return self.same_choice().to_owned();
        }
        self.apart(&self.choice(other, units), there.time.0 - here.time.0)
    }

    /// What another way comes to, and the time that it takes more, s; less where negative.
    #[must_use]
    pub fn apart(&self, choice: &str, more_s: f64) -> String {
        self.choice_apart(choice, more_s < 0.0, &self.time(more_s.abs()))
    }

    /// The answer with more mass.
    #[must_use]
    pub fn heavier(&self, heavier: Option<&Choice>, units: Units) -> String {
        let told = heavier.map(|choice| format!("{}.", self.choice(choice, units)));
        told.unwrap_or_else(|| self.mass_out_of_range().to_owned())
    }

    /// Brake heat of an advice.
    #[must_use]
    pub fn brake_heat(&self, advice: &Advice, day: &Day, units: Units) -> String {
        self.brakes_at(
            &format::temperature(advice.hottest.0, units),
            &format::temperature(advice.hottest_after_stop.0, units),
            &format::entered_temperature(day.heat_limit_c, units),
        )
    }

    /// How to snub.
    #[must_use]
    pub fn snub(&self, advice: &Advice, units: Units) -> Option<String> {
        let snub = advice.snub?;
        let [from, to] = [snub.from, snub.to].map(|it| format::hold_speed(it.0, units));
        let [on, off] = [snub.on, snub.off].map(|it| format!("{:.0}", it.0));
        Some(self.snub_between(&from, &to, &on, &off, snub.count))
    }

    /// A short form of a choice: “gear 5, stage 3, 38 km/h”.
    #[must_use]
    pub fn choice(&self, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(advice) => {
                let (how, verdict) = (self.in_short(advice, units), self.verdict_of(choice));
                format!("{}{}{verdict}", capital(&how), self.colon())
            }
            Choice::NoSafeSpeed(_) => capital(self.no_safe_speed()),
        }
    }
}
