//! Words of one descent's details, and of its table.

use crate::Spoken;
use crate::down;
use crate::format::{self, Units};
use crate::say::{capital, radius};
use solver::motion::{Answer, litres_of_fuel};
use solver::plan::{Choice, Descent, Plan, SlowCurve, Totals};
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
    /// The slow curves of a descent, where there are any. Without an advised speed there is none that a
    /// curve could ask for less than.
    #[must_use]
    pub fn of(plan: &Plan, descent: &Descent, step_m: f64) -> Option<Self> {
        descent.choice.advice()?;
        let slowest = plan.slowest_curve(descent)?;
        Some(Self {
            count: plan.slow_curves(descent).count(),
            hairpins: plan.slow_curves(descent).filter(|it| it.curve.hairpin).count(),
            slowest,
            at_m: down::metres(slowest.curve.from, step_m),
        })
    }
}

impl Spoken {
    /// Gear, stage, speed, engine speed, reserve, time; of several gears those of the slowest part.
    #[must_use]
    pub fn advice(&self, descent: &Descent, units: Units) -> String {
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
        let (gear, named) = (advice.gear.number(), self.stage(stage));
        let told = self.advice_in_full(gear, stage.is_off(), &named, &speed, &engine_speed, &reserve, &time);
        if down::in_legs(descent) { format!("{}{}{told}", self.slowest_leg(), self.colon()) } else { told }
    }

    /// What the answers in the table mean: a word of it, and its meaning.
    #[must_use]
    pub fn table_meanings(&self) -> Vec<(&'static str, &'static str)> {
        self.table_legend().chunks_exact(2).map(|pair| (pair[0], pair[1])).collect()
    }

    /// One stage span.
    #[must_use]
    pub fn stage_span(&self, stage: Stage, from_m: f64, to_m: f64, units: Units) -> String {
        format!("{}{}{}", format::span(from_m, to_m, units), self.colon(), self.stage(stage))
    }

    /// One relief.
    #[must_use]
    pub fn relief(&self, from_m: f64, to_m: f64, units: Units) -> String {
        self.eases_over(&format::span(from_m, to_m, units), &format::length(to_m - from_m, units))
    }

    /// Mean and steepest grades, each over its length; `base_m` is what the heights can hold.
    #[must_use]
    pub fn grades(&self, descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
        let mean = self.mean_grade(&format::grade(descent.mean.0));
        let steepest = descent.steepest.iter().rev().map(|it| {
            let doubt = if it.length.0 < base_m { self.too_short_for_heights() } else { "" };
            let (length, from) = (format::length(it.length.0, units), format::place(it.from.0, units));
            self.steepest_over(&format::grade(it.grade.0), &length, &from, doubt)
        });
        std::iter::once(mean).chain(steepest).collect()
    }

    /// Curves of a descent that ask for less than its speed.
    #[must_use]
    pub fn curves(&self, curves: &Curves, units: Units) -> Vec<String> {
        let SlowCurve { curve, speed } = curves.slowest;
        let slowest = self.slowest_curve(
            &format::hold_speed(speed.0, units),
            &format::place(curves.at_m, units),
            self.side(curve.turn == Turn::Left),
            &radius(curve.radius_m, units),
        );
        vec![
            format!("{}. {slowest}", self.curve_count(curves.count, curves.hairpins)),
            self.curves_estimated().to_owned(),
        ]
    }

    /// Gear that climbs the same hill.
    #[must_use]
    pub fn climb(&self, descent: &Descent, units: Units) -> String {
        let told = descent
            .climbs_in
            .map(|(gear, speed)| self.climbs_in(gear.number(), &format::met_speed(speed.0, units)));
        told.unwrap_or_else(|| self.climbs_in_none().to_owned())
    }

    /// Brakes on arrival.
    #[must_use]
    pub fn at_crest(&self, descent: &Descent, units: Units) -> String {
        self.brakes_arrive(&format::temperature(descent.brakes_at_crest.0, units))
    }

    /// Caption of the table.
    #[must_use]
    pub fn table_caption(&self, descent: &Descent, units: Units) -> String {
        let table = &descent.table;
        self.table_of(&format::grade(table.grade.0), &format::height(table.height.0, units))
    }

    /// Head of a stage column.
    #[must_use]
    pub fn table_stage(&self, stage: usize) -> String {
        if stage == 0 { self.off().to_owned() } else { self.stage_number(stage) }
    }

    /// One answer, first line and second line.
    #[must_use]
    pub fn answer(&self, answer: &Answer, units: Units) -> (String, Option<String>) {
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

    /// Totals of the road, one line.
    #[must_use]
    pub fn totals(&self, totals: &Totals, units: Units) -> String {
        let whole = self.whole_way(
            &self.time(totals.time.0),
            &self.fall(totals, units),
            &format::work(totals.holding_work.0),
            &format::work(totals.service_work.0),
        );
        let crawl = totals.crawl.map(|it| self.slowest_climb(&format::met_speed(it.0, units)));
        let fuel = self.fuel_burnt(litres_of_fuel(totals.fuel), units);
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

    /// “about 17 l”, or “under 1 l”.
    fn fuel_burnt(&self, litres: f64, units: Units) -> String {
        let least = format::fuel(units.litres_per_fuel(), units);
        let burnt = format::fuel(litres, units);
        if litres < 0.5 * units.litres_per_fuel() { self.less_than(&least) } else { self.about(&burnt) }
    }

    /// The fall, and how much of it is not assessed where that is more than nothing.
    #[must_use]
    pub fn fall(&self, totals: &Totals, units: Units) -> String {
        let all = format::height(totals.fall.0, units);
        let blank = format::height(totals.fall_unassessed.0, units);
        if blank == format::height(0.0, units) { all } else { self.fall_in_part(&all, &blank) }
    }
}
