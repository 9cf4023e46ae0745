//! Words of the reasons.

use crate::format::{self, Units};
use solver::day::{Day, Lead, ServiceBrakes};
use solver::plan::{Advice, Choice, Descent, Governs, NoSafeSpeed, Note, Verdict};

/// Words of the reasons.
pub trait WhyWords {
    /// Label of what governs.
    fn governs_label(&self) -> &'static str;
    /// What keeps the speed from being higher; or why no speed was found.
    fn governs(&self, descent: &Descent, day: &Day, units: Units) -> String {
        match &descent.choice {
            Choice::Held(advice) => self.why_not_faster(advice, day, units),
            Choice::NoSafeSpeed(none) => self.why_no_speed(none, day, units),
        }
    }
    /// What keeps the speed from being higher.
    fn why_not_faster(&self, advice: &Advice, day: &Day, units: Units) -> String {
        if day.lead == Lead::Untouched
            && day.service_brakes == ServiceBrakes::InReserve
            && advice.governs == Governs::Control
            && advice.verdict == Verdict::RetarderHolds
        {
            return self.untouched_governs().to_owned();
        }
        // Where no snubs are told the gear holds it by itself; single places need the service brakes.
        let alone = advice.snub.is_none() && advice.verdict == Verdict::NeedsServiceBrakes;
        let verdict = if alone { Verdict::RetarderHolds } else { advice.verdict };
        self.governed_by(
            &Advice { verdict, ..*advice },
            &format::hold_speed(day.speed_limit_kmh / 3.6, units),
            &format::margin(day.reserve),
            &format::entered_temperature(day.heat_limit_c, units),
        )
    }
    /// Faster, the service brakes would not stay untouched, which the day asks for.
    fn untouched_governs(&self) -> &'static str;
    /// What governs this advice; the limit, the reserve and the heat limit entered.
    fn governed_by(&self, advice: &Advice, limit: &str, reserve: &str, heat_limit: &str) -> String;
    /// Why no speed was found.
    fn why_no_speed(&self, none: &NoSafeSpeed, day: &Day, units: Units) -> String {
        let because = self.no_speed_because(
            none.because,
            &format::met_speed(none.slowest.0, units),
            &format::temperature(none.hottest_after_stop.0, units),
            &format::entered_temperature(day.heat_limit_c, units),
        );
        format!("{because} {}", self.else_another_road())
    }
    /// What rules out the slowest speed tried; how hot the brakes would be after a hard stop, and their limit.
    fn no_speed_because(&self, because: Governs, slowest: &str, reached: &str, limit: &str) -> String;
    /// What follows where that cannot be changed.
    fn else_another_road(&self) -> &'static str;
    /// A note of the plan.
    fn note(&self, note: Note) -> &'static str;
}
