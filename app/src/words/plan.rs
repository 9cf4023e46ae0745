//! Words of the plan: verdicts, descents.

use super::LanguageWords;
use super::say::capital;
use crate::format::{self, Units};
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Advice, Choice, Descent, HeatStep, Proof, Verdict};
use solver::truck::{Gear, Stage};

/// Words of the plan.
pub trait PlanWords: LanguageWords {
    /// A verdict.
    fn verdict(&self, verdict: Verdict) -> &'static str;
    /// The verdict of a choice. Where no stage is called for, it is the engine alone that holds.
    fn verdict_of(&self, choice: &Choice) -> &'static str {
        let Some(advice) = choice.advice() else { return self.verdict(choice.verdict()) };
        match (advice.verdict, advice.proof, advice.stage.is_off()) {
            (Verdict::RetarderHolds, Proof::OnAverage, _) => self.holds_on_average(),
            (Verdict::RetarderHolds, Proof::Touches, _) => self.brakes_touch(),
            (Verdict::RetarderHolds, _, true) => self.engine_holds(),
            (Verdict::LittleInReserve, _, true) => self.engine_holds_little(),
            (verdict, ..) => self.verdict(verdict),
        }
    }
    /// The engine alone holds, with the reserve.
    fn engine_holds(&self) -> &'static str;
    /// The engine alone holds, with less than the reserve.
    fn engine_holds_little(&self) -> &'static str;
    /// It is held on the average: short steep bits cannot be ruled out.
    fn holds_on_average(&self) -> &'static str;
    /// It is held, and the service brakes touch on short steep bits.
    fn brakes_touch(&self) -> &'static str;
    /// A heat step.
    fn heat_step(&self, step: HeatStep) -> &'static str;
    /// “stage 3” or “retarder off”.
    fn stage(&self, stage: Stage) -> String {
        self.numbered_stage(stage.number())
    }
    /// The same by its number, 0 for off.
    fn numbered_stage(&self, number: u8) -> String {
        if number == 0 { self.retarder_off().to_owned() } else { self.stage_number(number.into()) }
    }
    /// “stage 3”, by its number, from 1.
    fn stage_number(&self, number: usize) -> String;
    /// “retarder off”.
    fn retarder_off(&self) -> &'static str;
    /// The same among stages.
    fn off(&self) -> &'static str;
    /// “gear 5”.
    fn gear(&self, gear: Gear) -> String {
        self.gear_number(gear.number())
    }
    /// The same by its number.
    fn gear_number(&self, number: u8) -> String;
    /// “gear 5, stage 3, 38 km/h”; of several legs from which gear and speed to which.
    fn in_short(&self, advice: &Advice, units: Units) -> String {
        let speed = format::hold_speed(advice.speed.0, units);
        let stage = self.stage(advice.stage);
        let Some((gear, fastest)) = advice.fastest_leg else {
            return format!("{}, {stage}, {speed}", self.gear(advice.gear));
        };
        let fastest = format::hold_speed(fastest.0, units);
        self.in_legs([advice.gear.number(), gear.number()], &stage, [&speed, &fastest])
    }
    /// Legs from the slowest to the fastest: their gears, the stage of the slowest, their speeds.
    fn in_legs(&self, gears: [u8; 2], stage: &str, speeds: [&str; 2]) -> String;
    /// Where the road has no descent.
    fn no_descent(&self, partly_unassessed: bool) -> &'static str;
    /// Label of all descents in road order.
    fn along_label(&self) -> &'static str;
    /// In place of gear, stage and speed.
    fn no_safe_speed(&self) -> &'static str;
    /// How many more the list below holds.
    fn along_more(&self, count: usize) -> String;
    /// Label of the other way to use the service brakes.
    fn other_mode_label(&self, day: &Day) -> &'static str;
    /// The advice with the service brakes used in the other way, and the minutes between.
    fn other_mode(&self, descent: &Descent, day: &Day, units: Units) -> String {
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
        self.choice_apart(&self.choice(other, units), there.time.0 - here.time.0)
    }
    /// The other way comes to the same.
    fn same_choice(&self) -> &'static str;
    /// What the other way comes to, and the time that it takes more, s; less where negative.
    fn choice_apart(&self, choice: &str, more_s: f64) -> String;
    /// Label of the answer with more mass.
    fn heavier_label(&self) -> &'static str;
    /// The answer with more mass.
    fn heavier(&self, heavier: Option<&Choice>, units: Units) -> String {
        let told = heavier.map(|choice| format!("{}.", self.choice(choice, units)));
        told.unwrap_or_else(|| self.mass_out_of_range().to_owned())
    }
    /// That mass is more than can be entered.
    fn mass_out_of_range(&self) -> &'static str;
    /// Label of brake heat.
    fn heat_label(&self) -> &'static str;
    /// Brake heat of an advice.
    fn brake_heat(&self, advice: &Advice, day: &Day, units: Units) -> String {
        self.brakes_at(
            &format::temperature(advice.hottest.0, units),
            &format::temperature(advice.hottest_after_stop.0, units),
            &format::entered_temperature(day.heat_limit_c, units),
        )
    }
    /// The hottest brakes, the same after one hard stop, and the limit.
    fn brakes_at(&self, hottest: &str, after_stop: &str, limit: &str) -> String;
    /// How to snub.
    fn snub(&self, advice: &Advice, units: Units) -> Option<String> {
        let snub = advice.snub?;
        let [from, to] = [snub.from, snub.to].map(|it| format::hold_speed(it.0, units));
        let [on, off] = [snub.on, snub.off].map(|it| format!("{:.0}", it.0));
        Some(self.snub_between(&from, &to, &on, &off, snub.count))
    }
    /// From which speed down to which, s of braking and s between, and how often in all.
    fn snub_between(&self, from: &str, to: &str, on: &str, off: &str, count: u32) -> String;
    /// A short form of a choice: “gear 5, stage 3, 38 km/h”.
    fn choice(&self, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(advice) => {
                let (how, verdict) = (self.in_short(advice, units), self.verdict_of(choice));
                format!("{}{}{verdict}", capital(&how), self.colon())
            }
            Choice::NoSafeSpeed(_) => capital(self.no_safe_speed()),
        }
    }
    /// Parked use.
    fn parked(&self) -> &'static str;
    /// Cautions, each a sentence.
    fn cautions(&self) -> &'static [&'static str];
    /// Head of the list.
    fn descents_head(&self, count: usize) -> String;
    /// Buttons of the order.
    fn order(&self) -> &'static str;
    /// Worst first.
    fn worst_first(&self) -> &'static str;
    /// As they come.
    fn road_order(&self) -> &'static str;
    /// Heads of the list's columns: descent, from, length, drop, mean, what the hill asks for, gear,
    /// stage, hold, brakes after a stop.
    fn columns(&self) -> [&'static str; 10];
    /// A descent by its number.
    fn descent(&self, number: usize) -> String;
    /// Opens or closes the details.
    fn details_of(&self, number: usize) -> String;
}
