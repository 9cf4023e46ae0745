//! Words of the reasons.

use crate::Spoken;
use crate::format::{self, Units};
use crate::short::chosen_by_day;
use solver::day::Day;
use solver::motion::{Answer, Unusable};
use solver::plan::{Advice, Choice, Descent, NoSafeSpeed, Note, Verdict};

impl Spoken {
    /// The question that [`Self::governs`] answers.
    #[must_use]
    pub fn governs_label(&self, descent: &Descent) -> &'static str {
        self.why_label(descent.choice.advice().is_some())
    }

    /// What keeps the speed from being higher; or why no speed was found.
    #[must_use]
    pub fn governs(&self, descent: &Descent, day: &Day, units: Units) -> String {
        match &descent.choice {
            Choice::Held(advice) => self.why_not_faster(advice, day, units),
            Choice::NoSafeSpeed(none) => self.why_no_speed(none, has_stages(descent), day, units),
        }
    }

    /// What keeps the speed from being higher.
    #[must_use]
    pub fn why_not_faster(&self, advice: &Advice, day: &Day, units: Units) -> String {
        if chosen_by_day(advice, day) {
            return self.untouched_governs().to_owned();
        }
        // Where no snubs are told the gear holds it by itself; single places need the service brakes.
        let alone = advice.snub.is_none() && advice.verdict == Verdict::NeedsServiceBrakes;
        let verdict = if alone { Verdict::RetarderHolds } else { advice.verdict };
        self.governed_by(
            advice.governs,
            verdict,
            advice.stage.is_off(),
            &format::hold_speed(day.speed_limit_kmh / 3.6, units),
            &format::margin(day.reserve),
            &format::entered_temperature(day.heat_limit_c, units),
        )
    }

    /// Why no speed was found, for a truck with a retarder (`fitted`) or without.
    #[must_use]
    pub fn why_no_speed(&self, none: &NoSafeSpeed, fitted: bool, day: &Day, units: Units) -> String {
        let because = self.no_speed_because(
            none.because,
            fitted,
            &format::met_speed(none.slowest.0, units),
            &format::temperature(none.hottest_after_stop.0, units),
            &format::entered_temperature(day.heat_limit_c, units),
        );
        let short = none.falls_short.map(|short| {
            let [asks, holds] = [short.asks, short.holds].map(|force| format::force(force.0, units));
            format!(" {}", self.force_falls_short(&asks, &holds, &format::hold_speed(short.speed.0, units)))
        });
        format!("{because}{} {}", short.unwrap_or_default(), self.else_another_road())
    }

    /// A note of the plan.
    #[must_use]
    pub fn note(&self, note: Note, units: Units) -> String {
        self.note_at(note, |metres| format::place(metres, units))
    }

    /// A note of the plan, with its place, m from the start of the road, as the caller writes places.
    #[must_use]
    pub fn note_at(&self, note: Note, place: impl Fn(f64) -> String) -> String {
        let told = match note {
            Note::StagesWithheld(why) => self.note_stages_withheld(why),
            Note::WetCap => self.note_wet_cap(),
            Note::HoldByHand => self.note_hold_by_hand(),
            Note::StartsInDescent => self.note_starts_in_descent(),
            Note::PartlyUnassessed => self.note_partly_unassessed(),
            Note::PoorHeights => self.note_poor_heights(),
            Note::HotElsewhere { at } => return self.note_hot_elsewhere(&place(at.0)),
            Note::CannotClimb => self.note_cannot_climb(),
            Note::ShiftsUpByItself => self.note_shifts_up_by_itself(),
        };
        told.to_owned()
    }
}

/// Whether the truck has a retarder that may be used on this day: a stage beside “off” that is not too slippery.
fn has_stages(descent: &Descent) -> bool {
    let usable = |answer: &Answer| *answer != Answer::NotUsable(Unusable::Slippery);
    descent.table.rows.iter().any(|row| row.answers.iter().skip(1).any(usable))
}
