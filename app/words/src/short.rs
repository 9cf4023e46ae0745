//! Short answers, of a few words each, for one line beside a question. The sentence that says it in full stands
//! in a method without the word `short`.

use crate::down;
use crate::format::{self, Units};
use crate::say::enough_percent;
use crate::{Curves, Spoken};
use solver::day::{Day, Lead, ServiceBrakes};
use solver::plan::{Advice, Change, Choice, Descent, Governs, Proof, Verdict, WayDown};
use solver::study::{DescentSureness, Lost, Reach};

/// Between the parts of a short answer.
const DOT: &str = " · ";

impl Spoken {
    /// With 10 % more mass: “gear 4 · 20 km/h”.
    #[must_use]
    pub fn short_heavier(&self, descent: &Descent, units: Units) -> String {
        descent.heavier.as_ref().map_or_else(
            || self.short_out_of_range().to_owned(),
            |heavier| {
                let worse = heavier.verdict() > descent.choice.verdict();
                let verdict = worse.then(|| self.short_verdict(heavier.verdict()));
                self.short_choice(heavier, &descent.choice, verdict, units)
            },
        )
    }

    /// With the service brakes used in the other way that a day can allow.
    #[must_use]
    pub fn short_other_mode(&self, descent: &Descent, day: &Day, units: Units) -> String {
        let other = match day.service_brakes {
            ServiceBrakes::InReserve => &descent.snubbing,
            ServiceBrakes::MaySnub => &descent.in_reserve,
        };
        // Its question tells already that the service brakes are used.
        self.short_choice(other, &descent.choice, None, units)
    }

    /// What keeps the speed from being higher, or why no speed is safe.
    #[must_use]
    pub fn short_governs(&self, descent: &Descent, day: &Day) -> &'static str {
        match &descent.choice {
            Choice::Held(advice) if chosen_by_day(advice, day) => self.short_own_choice(),
            Choice::Held(advice) => self.short_governed(advice.governs),
            Choice::NoSafeSpeed(none) => self.short_no_speed(none.because),
        }
    }

    /// The hottest brakes and the limit: “75 / 260 °C”. Nothing where no speed is safe.
    #[must_use]
    pub fn short_heat(&self, descent: &Descent, day: &Day, units: Units) -> Option<String> {
        let hottest = format::temperature(descent.choice.advice()?.hottest.0, units);
        let hottest = hottest.split_once(format::NO_BREAK).map_or(hottest.as_str(), |(number, _)| number);
        Some(format!("{hottest} / {}", format::entered_temperature(day.heat_limit_c, units)))
    }

    /// What to do when the retarder fails.
    #[must_use]
    pub fn short_lost(&self, lost: &Lost, crest_m: f64, foot_m: f64, units: Units) -> String {
        match (lost.can_hold(crest_m), lost.can_stop(foot_m)) {
            (Reach::AllTheWay, _) => self.short_brakes_hold().to_owned(),
            (_, Reach::AllTheWay) => self.short_stop_at_once().to_owned(),
            (_, Reach::Part(until)) => self.short_stop_before(&format::place(until.0, units)),
            (_, Reach::Nowhere) => self.short_no_stop().to_owned(),
        }
    }

    /// In how many runs the retarder held the speed and the brakes kept the limit: the smaller of the two
    /// counts.
    #[must_use]
    pub fn short_sure(&self, sure: &DescentSureness, runs: usize) -> String {
        self.short_count_of(sure.held.min(sure.kept), runs)
    }

    /// How many curves ask for less than the speed, and the speed of the slowest: “5 hairpins, 10 km/h”.
    #[must_use]
    pub fn short_curves(&self, curves: &Curves, units: Units) -> String {
        let speed = format::hold_speed(curves.slowest.speed.0, units);
        self.short_curve_count(curves.count, curves.hairpins == curves.count, &speed)
    }

    /// One gear all the way, and its time: “gear 4 · 66 min”. Nothing where the advice keeps one gear itself.
    #[must_use]
    pub fn short_one_gear(&self, descent: &Descent) -> Option<String> {
        descent.choice.advice().filter(|_| down::in_legs(descent))?;
        Some(descent.one_gear.as_ref().map_or_else(
            || self.short_none_found().to_owned(),
            |way| format!("{}{DOT}{}", self.gear(way.gear), self.short_time(way.time.0)),
        ))
    }

    /// Without the service brakes: “gear 4 · 20 km/h”. Nothing where no speed is safe.
    #[must_use]
    pub fn short_untouched(&self, descent: &Descent, units: Units) -> Option<String> {
        let advice = descent.choice.advice()?;
        let one_gear = !down::in_legs(descent);
        if one_gear && advice.proof == Proof::Holds && advice.snub.is_none() {
            return Some(self.short_same().to_owned());
        }
        let told = |way: &WayDown| match one_gear && way.gear == advice.gear && way.speed == advice.speed {
            true => self.short_same().to_owned(),
            false => {
                format!("{}{DOT}{}", self.gear(way.gear), format::hold_speed(way.speed.0, units))
            }
        };
        Some(descent.untouched.as_ref().map_or_else(|| self.short_no_gear().to_owned(), told))
    }

    /// The change that is the easiest to make of those with which the retarder would hold it.
    #[must_use]
    pub fn short_change(&self, change: &Change, units: Units) -> String {
        let cool = change.cool_to.map(|at| self.short_cool(&format::entered_temperature(at.0, units)));
        let mass = || change.mass.map(|mass| self.short_mass(&format::mass_at_most(mass.0, units)));
        let retarding = || change.retarding.map(|by| self.short_retarding(&enough_percent(by - 1.0)));
        let reserve = || change.reserve.map(|kept| self.short_reserve(&format::margin(kept)));
        let told = cool.or_else(mass).or_else(retarding).or_else(reserve);
        told.unwrap_or_else(|| self.short_no_change().to_owned())
    }

    /// A choice, told by what sets it apart from another. The stage is told only where gear and speed do not
    /// differ.
    fn short_choice(&self, choice: &Choice, than: &Choice, verdict: Option<&str>, units: Units) -> String {
        let Some(advice) = choice.advice() else { return self.short_no_safe_speed().to_owned() };
        let (gears, speeds) = self.short_gears(advice, units);
        let other = than.advice();
        let moved = other.map(|it| self.short_gears(it, units)) != Some((gears.clone(), speeds.clone()));
        let staged = other.is_some_and(|it| it.stage != advice.stage);
        if !moved && !staged && verdict.is_none() {
            return self.short_same().to_owned();
        }
        let stage = (!moved && staged).then(|| self.stage(advice.stage));
        let parts = [Some(gears), stage, Some(speeds), verdict.map(str::to_owned)];
        parts.into_iter().flatten().collect::<Vec<_>>().join(DOT)
    }

    /// Gear and speed of an advice; of several legs those of the slowest and the fastest.
    fn short_gears(&self, advice: &Advice, units: Units) -> (String, String) {
        let speed = format::hold_speed(advice.speed.0, units);
        let Some((gear, fastest)) = advice.fastest_leg else { return (self.gear(advice.gear), speed) };
        let slow = format::hold_number(advice.speed.0, units);
        let speeds = format!("{slow}–{}", format::hold_speed(fastest.0, units));
        (self.short_gear_range(advice.gear.number(), gear.number()), speeds)
    }

    /// A time as a table has it: “9 min”, in hours from 100 minutes on.
    #[must_use]
    pub fn short_time(&self, seconds: f64) -> String {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "no drive takes longer")]
        let minutes = (seconds / 60.0).ceil() as usize;
        if minutes < 100 {
            self.short_minutes(&minutes.to_string())
        } else {
            self.hours_and_minutes(minutes / 60, minutes % 60)
        }
    }
}

/// Whether the speed is kept down by what the day asks for: service brakes that are never touched.
pub(crate) fn chosen_by_day(advice: &Advice, day: &Day) -> bool {
    day.lead == Lead::Untouched
        && day.service_brakes == ServiceBrakes::InReserve
        && advice.governs == Governs::Control
        && advice.verdict == Verdict::RetarderHolds
}
