//! Words of one descent's details, and of its table.

use super::say::{capital, radius};
use super::{TwoWords, WayWords};
use crate::cab;
use crate::down;
use crate::format::{self, Units};
use solver::motion::{Answer, Unusable, litres_of_fuel};
use solver::plan::{Advice, Choice, Descent, Plan, SlowCurve, Totals};
use solver::road::Turn;
use solver::truck::Stage;

/// The curves of a descent that ask for less than its speed; there is at least one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curves {
    /// How many.
    pub count: usize,
    /// How many of them are hairpins.
    pub hairpins: usize,
    /// The slowest of them.
    pub slowest: SlowCurve,
    /// Where that one begins, m from the start of the road.
    pub at_m: f64,
}

impl Curves {
    /// Those of a descent, where there are any. Without an advised speed there is none that a
    /// curve could ask for less than.
    #[must_use]
    pub fn of(plan: &Plan, descent: &Descent, step_m: f64) -> Option<Self> {
        descent.choice.advice()?;
        let slowest = plan.slowest_curve(descent)?;
        Some(Self {
            count: plan.slow_curves(descent).count(),
            hairpins: plan.slow_curves(descent).filter(|it| it.curve.hairpin).count(),
            slowest,
            at_m: cab::metres(slowest.curve.from, step_m),
        })
    }
}

/// Words of one descent's details.
pub trait DescentWords: WayWords + TwoWords {
    /// Label of the sign.
    fn sign_label(&self) -> &'static str;
    /// What a sign would state.
    fn sign(&self, grade: &str, length: &str) -> String;
    /// Label and sentence of the advice in full.
    fn advice_label(&self) -> &'static str;
    /// Gear, stage, speed, engine speed, reserve, time; of several gears those of the slowest part.
    fn advice(&self, descent: &Descent, units: Units) -> String {
        let Choice::Held(advice) = &descent.choice else {
            return self.no_advice().to_owned();
        };
        let reserve = if advice.margin < 0.0 {
            self.falls_short(&format::margin(-advice.margin))
        } else {
            self.more_than_asked(&format::margin(advice.margin))
        };
        let speed = format::hold_speed(advice.speed.0, units);
        let engine_speed = format::engine_speed(advice.engine_speed.0);
        let time = capital(&self.time(advice.time.0));
        let (_, stage, _) = down::slowest(descent, advice);
        let told =
            self.advice_in_full(&Advice { stage, ..*advice }, [&speed, &engine_speed, &reserve, &time]);
        if down::in_legs(descent) { format!("{}{}{told}", self.slowest_leg(), self.colon()) } else { told }
    }
    /// That no speed keeps the limits, and what follows from that.
    fn no_advice(&self) -> &'static str;
    /// How much of what is needed is missing at full stage.
    fn falls_short(&self, share: &str) -> String;
    /// How much more than needed there is at full stage.
    fn more_than_asked(&self, share: &str) -> String;
    /// Gear and stage of an advice, its speeds, the sentence of its reserve, and the time it takes.
    fn advice_in_full(&self, advice: &Advice, told: [&str; 4]) -> String;
    /// Label of the way down.
    fn way_label(&self) -> &'static str;
    /// One stage span.
    fn stage_span(&self, stage: Stage, from_m: f64, to_m: f64, units: Units) -> String {
        format!("{}{}{}", format::span(from_m, to_m, units), self.colon(), self.stage(stage))
    }
    /// Label of reliefs.
    fn relief_label(&self) -> &'static str;
    /// One relief.
    fn relief(&self, from_m: f64, to_m: f64, units: Units) -> String {
        self.eases_over(&format::span(from_m, to_m, units), &format::length(to_m - from_m, units))
    }
    /// Where it eases, and over which length.
    fn eases_over(&self, span: &str, length: &str) -> String;
    /// Label of the grades.
    fn grades_label(&self) -> &'static str;
    /// Mean and steepest grades, each over its length; `base_m` is what the heights can hold.
    fn grades(&self, descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
        let mean = self.mean_grade(&format::grade(descent.mean.0));
        let steepest = descent.steepest.iter().rev().map(|it| {
            let doubt = if it.length.0 < base_m { self.too_short_for_heights() } else { "" };
            let (length, from) = (format::length(it.length.0, units), format::distance(it.from.0, units));
            self.steepest_over(&format::grade(it.grade.0), &length, &from, doubt)
        });
        std::iter::once(mean).chain(steepest).collect()
    }
    /// The mean grade.
    fn mean_grade(&self, grade: &str) -> String;
    /// The steepest grade over a length, where it begins, and what is to be doubted of it.
    fn steepest_over(&self, grade: &str, length: &str, from: &str, doubt: &str) -> String;
    /// That the heights do not hold over so short a length, at the end of a sentence.
    fn too_short_for_heights(&self) -> &'static str;
    /// Label of the curves.
    fn curves_label(&self) -> &'static str;
    /// Curves of a descent that ask for less than its speed.
    fn curves(&self, curves: &Curves, units: Units) -> Vec<String> {
        let SlowCurve { curve, speed } = curves.slowest;
        let slowest = self.slowest_curve(
            &format::hold_speed(speed.0, units),
            &format::distance(curves.at_m, units),
            self.side(curve.turn == Turn::Left),
            &radius(curve.radius_m, units),
        );
        vec![format!("{}. {slowest}", self.curve_count(curves)), self.curves_estimated().to_owned()]
    }
    /// How many curves and hairpins ask for less than the speed.
    fn curve_count(&self, curves: &Curves) -> String;
    /// The slowest of them: its speed, where, to which side, its radius.
    fn slowest_curve(&self, speed: &str, at: &str, side: &str, radius: &str) -> String;
    /// What is not known of curves.
    fn curves_estimated(&self) -> &'static str;
    /// To the left or to the right.
    fn side(&self, left: bool) -> &'static str;
    /// Label of the climb.
    fn climb_label(&self) -> &'static str;
    /// Gear that climbs the same hill.
    fn climb(&self, descent: &Descent, units: Units) -> String {
        let told = descent
            .climbs_in
            .map(|(gear, speed)| self.climbs_in(gear.number(), &format::met_speed(speed.0, units)));
        told.unwrap_or_else(|| self.climbs_in_none().to_owned())
    }
    /// Gear and speed that climb it.
    fn climbs_in(&self, gear: u8, speed: &str) -> String;
    /// No gear climbs it.
    fn climbs_in_none(&self) -> &'static str;
    /// The descent ends where the road is not assessed.
    fn cut_short(&self) -> &'static str;
    /// Brakes on arrival.
    fn at_crest(&self, descent: &Descent, units: Units) -> String {
        self.brakes_arrive(&format::temperature(descent.brakes_at_crest.0, units))
    }
    /// How warm the brakes arrive at the crest.
    fn brakes_arrive(&self, heat: &str) -> String;
    /// Caption of the table.
    fn table_caption(&self, descent: &Descent, units: Units) -> String {
        let table = &descent.table;
        self.table_of(&format::grade(table.grade.0), &format::height(table.height.0, units))
    }
    /// Grade and height for which the table is.
    fn table_of(&self, grade: &str, height: &str) -> String;
    /// Heads: gear, speed range.
    fn table_heads(&self) -> [&'static str; 3];
    /// Head of a stage column.
    fn table_stage(&self, stage: usize) -> String {
        if stage == 0 { self.off().to_owned() } else { self.stage_number(stage) }
    }
    /// One answer, first line and second line.
    fn answer(&self, answer: &Answer, units: Units) -> (String, Option<String>) {
        let (first, second) = match answer {
            Answer::Settles { speed, engine_speed } => {
                return (format::met_speed(speed.0, units), Some(format::engine_speed(engine_speed.0)));
            }
            Answer::MoreThanNeeded => (self.more_than_needed(), None),
            Answer::Overruns { above } => {
                (self.overruns(), above.map(|it| self.above_speed(&format::met_speed(it.0, units))))
            }
            Answer::NotUsable(why) => (self.not_usable(), Some(self.unusable(*why).to_owned())),
        };
        (first.to_owned(), second)
    }
    /// It holds back more than needed.
    fn more_than_needed(&self) -> &'static str;
    /// It gets faster.
    fn overruns(&self) -> &'static str;
    /// From which speed on.
    fn above_speed(&self, speed: &str) -> String;
    /// It is not to be used.
    fn not_usable(&self) -> &'static str;
    /// Why a cell is not usable.
    fn unusable(&self, why: Unusable) -> &'static str;
    /// What the words of the table mean.
    fn table_legend(&self) -> &'static [(&'static str, &'static str)];
    /// The row chosen.
    fn table_chosen(&self) -> &'static str;
    /// Totals of the road, one line.
    fn totals(&self, totals: &Totals, units: Units) -> String {
        let whole = self.whole_way(
            &self.time(totals.time.0),
            &self.fall(totals, units),
            &format::work(totals.holding_work.0),
            &format::work(totals.service_work.0),
        );
        let crawl = totals.crawl.map(|it| self.slowest_climb(&format::met_speed(it.0, units)));
        let fuel = format::fuel(litres_of_fuel(totals.fuel), units);
        let share = totals.service_share();
        // A little is not nothing: the work of the service brakes stands right before it.
        let share = match share > 0.0 && share < 0.005 {
            true => self.less_than(&format::share(0.01)),
            false => format::share(share),
        };
        // Right behind the work that it is a share of.
        let blank = (totals.unassessed.0 > 0.0)
            .then(|| self.no_work_counted(&format::length(totals.unassessed.0, units)));
        let all = [Some(whole), Some(self.share_and_fuel(&share, &fuel)), crawl, blank].into_iter().flatten();
        all.collect::<Vec<_>>().join(" ")
    }
    /// The fall, and how much of it is not assessed where that is more than nothing.
    fn fall(&self, totals: &Totals, units: Units) -> String {
        let all = format::height(totals.fall.0, units);
        let blank = format::height(totals.fall_unassessed.0, units);
        if blank == format::height(0.0, units) { all } else { self.fall_in_part(&all, &blank) }
    }
    /// A fall, and how much of it is not assessed.
    fn fall_in_part(&self, all: &str, blank: &str) -> String;
    /// That no work is counted on what is not assessed.
    fn no_work_counted(&self, length: &str) -> String;
    /// The time, the fall, the work of retarder and engine, and that of the service brakes.
    fn whole_way(&self, time: &str, fall: &str, holding: &str, service: &str) -> String;
    /// The slowest speed on a climb.
    fn slowest_climb(&self, speed: &str) -> String;
    /// Less than this share, in that sentence.
    fn less_than(&self, share: &str) -> String;
    /// The share of the braking work that the service brakes take, and the fuel.
    fn share_and_fuel(&self, share: &str, fuel: &str) -> String;
}
