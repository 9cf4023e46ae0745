//! The truck's form: what is asked, in which order, and what a wrong answer costs.

use crate::format::{Units, shown_as, stands_apart, typed, whole};
use crate::words::Spoken;
use solver::limits::{self, Entry, Off};
use solver::study::{Difference, Worth};

impl Spoken {
    /// Name of an entry where it depends on the units shown.
    #[must_use]
    pub fn entry_in(&self, entry: Entry, units: Units) -> &'static str {
        if entry == Entry::TopGearSpeed { self.top_gear_speed(units) } else { self.entry(entry) }
    }

    /// The sentence of an axle ratio that is out of range.
    #[must_use]
    pub fn axle_ratio_problem(&self, ratio: f64) -> String {
        let limit = limits::of(Entry::AxleRatio);
        let range = format!("{} {} {}", typed(limit.min), self.numerals().to, typed(limit.max));
        self.no_axle_ratio(&typed(ratio), &range)
    }

    /// What a wrong value costs: “10 % wrong: 1 gear, 5 km/h”. Of the highest engine speed both sides.
    #[must_use]
    pub fn worth(&self, worth: &Worth, units: Units) -> String {
        let shown = shown_as(limits::of(worth.entry).quantity, units);
        let gap = if stands_apart(shown.unit) { "\u{a0}" } else { "" };
        let by = match worth.off {
            Off::Share(share) => format!("{}\u{a0}%", whole(share * 100.0)),
            Off::Step(step) => format!("{}{gap}{}", shown.text(step), shown.unit),
        };
        if worth.entry == Entry::HighestEngineSpeed {
            let side = |sign: char, it: Option<Difference>| {
                it.map(|it| format!("{sign}{by}{}{}", self.colon(), self.difference(&it, units, true)))
            };
            let sides: Vec<String> =
                [side('+', worth.more), side('−', worth.less)].into_iter().flatten().collect();
            return if sides.is_empty() { self.worth_not().to_owned() } else { sides.join(self.semicolon()) };
        }
        match worth.largest() {
            Some(it) => {
                format!("{}{}{}", self.wrong_by(&by), self.colon(), self.difference(&it, units, false))
            }
            None => self.worth_not().to_owned(),
        }
    }
    /// “1 gear, 5 km/h”; with signs where the side is told.
    #[must_use]
    pub fn difference(&self, it: &Difference, units: Units, signed: bool) -> String {
        if it.is_none() {
            return self.no_other().to_owned();
        }
        let sign = |negative: bool| match (signed, negative) {
            (false, _) => "",
            (true, false) => "+",
            (true, true) => "−",
        };
        let mut parts = Vec::new();
        if it.gears != 0 {
            parts.push(format!(
                "{}{}",
                sign(it.gears < 0),
                self.so_many_gears(usize::from(it.gears.unsigned_abs()))
            ));
        }
        if it.speed_kmh.abs() > 1e-6 {
            let speed = it.speed_kmh.abs() / 3.6 / units.metres_per_second_per_speed();
            let number = whole(speed.round().max(1.0));
            parts.push(format!("{}{number}\u{a0}{}", sign(it.speed_kmh < 0.0), units.speed()));
        }
        if it.stages != 0 && parts.is_empty() {
            parts.push(format!(
                "{}{}",
                sign(it.stages < 0),
                self.so_many_stages(usize::from(it.stages.unsigned_abs()))
            ));
        }
        parts.extend(it.verdict.map(|verdict| self.other_verdict(verdict).to_owned()));
        parts.join(", ")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::format::Units::{Imperial, Metric};
    use crate::words::{IN_ALL, words};
    use solver::plan::Verdict;

    const NONE: Difference = Difference { gears: 0, speed_kmh: 0.0, stages: 0, verdict: None };

    fn of(entry: Entry, less: Option<Difference>, more: Option<Difference>) -> Worth {
        Worth { entry, off: limits::off(entry).expect("of a truck"), less, more }
    }

    fn said(worth: &Worth, units: Units) -> String {
        words().worth(worth, units).replace('\u{a0}', " ")
    }

    #[test]
    fn the_larger_side_is_told_in_gears_and_speed() {
        let slower = Difference { gears: -1, speed_kmh: -5.0, ..NONE };
        let worth = of(Entry::GrossMass, Some(NONE), Some(slower));
        assert_eq!(said(&worth, Metric), "5 % wrong: 1 gear, 5 km/h");
        assert_eq!(said(&worth, Imperial), "5 % wrong: 1 gear, 3 mph");
        let two =
            of(Entry::RetarderPeakPower, Some(Difference { gears: -2, speed_kmh: -13.0, ..NONE }), None);
        assert_eq!(said(&two, Metric), "20 % wrong: 2 gears, 13 km/h");
        let closed = Difference { verdict: Some(Verdict::NoSafeSpeed), ..NONE };
        assert_eq!(said(&of(Entry::DragArea, Some(closed), None), Metric), "15 % wrong: no safe speed");
        let stage = Difference { stages: 1, ..NONE };
        assert_eq!(said(&of(Entry::ShiftsUpSpeed, Some(stage), None), Metric), "100/min wrong: 1 stage");
        let nothing = of(Entry::WheelInertia, Some(NONE), Some(NONE));
        assert_eq!(said(&nothing, Metric), "20 % wrong: neither gear nor speed changes");
        // A little faster is not nothing, in whatever unit.
        let little = Difference { speed_kmh: 0.4, ..NONE };
        assert_eq!(said(&of(Entry::RetarderDelay, None, Some(little)), Imperial), "0.5 s wrong: 1 mph");
        assert_eq!(said(&of(Entry::DragArea, None, None), Metric), words().worth_not());
    }

    #[test]
    fn the_highest_engine_speed_is_told_with_both_sides() {
        let slower = Difference { speed_kmh: -3.0, verdict: Some(Verdict::LittleInReserve), ..NONE };
        let faster = Difference { gears: 1, speed_kmh: 4.0, ..NONE };
        let both = of(Entry::HighestEngineSpeed, Some(slower), Some(faster));
        let told = "+100/min: +1 gear, +4 km/h; −100/min: −3 km/h, little in reserve";
        assert_eq!(said(&both, Metric), told);
        let one = of(Entry::HighestEngineSpeed, None, Some(NONE));
        assert_eq!(said(&one, Metric), "+100/min: neither gear nor speed changes");
        assert_eq!(said(&of(Entry::HighestEngineSpeed, None, None), Metric), words().worth_not());
    }

    #[test]
    fn no_language_says_one_thing_for_two() {
        for words in IN_ALL {
            let what = words.tag();
            let states =
                [words.worth_waits(), words.worth_at_work(), words.worth_no_descent(), words.worth_not()];
            let changed = Difference { gears: 2, ..NONE };
            let told = words.worth(&of(Entry::GrossMass, Some(changed), None), Metric);
            assert!(states.iter().all(|it| it.ends_with('.') && !told.contains(it)), "{what}");
            for (index, it) in states.iter().enumerate() {
                assert!(!states[..index].contains(it), "{what}: {it}");
            }
            assert!(told.starts_with('5') && told.contains('2'), "{what}: {told}");
            let problem = words.axle_ratio_problem(13.25);
            assert!(problem.contains("13") && problem.contains("12") && problem.contains('1'), "{problem}");
            for entry in limits::ALL.map(|limit| limit.entry) {
                assert!(words.hint(entry).ends_with('.'), "{what}: {entry:?}");
            }
            let verdicts = [Verdict::RetarderHolds, Verdict::LittleInReserve, Verdict::NeedsServiceBrakes];
            let closed = words.other_verdict(Verdict::NoSafeSpeed);
            assert!(verdicts.iter().all(|it| words.other_verdict(*it) != closed), "{what}");
        }
    }
}
