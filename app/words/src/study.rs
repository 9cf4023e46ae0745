//! Words of what follows from a plan: what would change it, how sure it is, what if.

use crate::Spoken;
use crate::format::{self, Units};
use crate::say::{UNKNOWN, enough_percent, name_or, radius};
use solver::plan::{Carried, Change, Descent, HeatStep};
use solver::road::PlaceKind;
use solver::study::{Adjustment, DescentSureness, Lost, Measured, NotMeasured, Reach, SlowFor, Slowing};
use solver::truck::{BrakeKind, SLACK_STROKE, stroke_limit_at};
use solver::units::{Metres, MetresPerSecond};

impl Spoken {
    /// What would let the retarder hold it with the reserve.
    #[must_use]
    pub fn change(&self, change: &Change, reserve: f64, units: Units) -> Vec<String> {
        let mass = change.mass.map_or_else(
            || self.no_lighter_load().to_owned(),
            |mass| self.light_enough(&format::mass_at_most(mass.0, units)),
        );
        let retarding = change.retarding.map(|factor| self.more_retarding(&enough_percent(factor - 1.0)));
        let kept =
            change.reserve.map(|kept| self.reserve_kept(&format::margin(kept), &format::margin(reserve)));
        let cool = change.cool_to.map(|at| self.cool_enough(&format::entered_temperature(at.0, units)));
        [Some(mass), retarding, kept, cool].into_iter().flatten().collect()
    }

    /// What is carried into a rise.
    #[must_use]
    pub fn carried(&self, carried: Carried, units: Units) -> String {
        self.meets_rise(&format::place(carried.at.0, units), &format::met_speed(carried.speed.0, units))
    }

    /// How sure it is, of so many runs.
    #[must_use]
    pub fn sure(&self, sure: &DescentSureness, descent: &Descent, runs: usize, units: Units) -> Vec<String> {
        let of = |count: usize| match count {
            0 => self.in_none(runs),
            all if all == runs => self.in_all(runs),
            some => self.in_some(some, runs),
        };
        let (cool, hot) = sure.after_stop_c;
        let [cool, hot] = [cool, hot].map(|it| format::temperature(f64::from(it), units));
        let what: Vec<&str> = sure.matters.iter().take(2).map(|(input, _)| self.input(*input)).collect();
        let matters = (!what.is_empty()).then(|| self.spread_from(&what.join(self.and_then())));
        let held = self.speed_held(&of(sure.held));
        let first = [
            self.driven_so(runs),
            format!("{held}{}", self.but_for_touches(descent)),
            self.limit_kept(&of(sure.kept)),
            self.nine_of_ten(&cool, &hot),
        ];
        first.into_iter().chain(matters).collect()
    }

    /// What is left when the retarder is lost.
    #[must_use]
    pub fn lost(&self, lost: &Lost, crest_m: f64, foot_m: f64, units: Units) -> Vec<String> {
        let place = |at: Metres| format::place(at.0, units);
        let stop = match lost.can_stop(foot_m) {
            Reach::AllTheWay => self.stops_anywhere().to_owned(),
            Reach::Part(until) => self.stops_until(&place(until)),
            Reach::Nowhere => self.stops_nowhere().to_owned(),
        };
        let hold = match lost.can_hold(crest_m) {
            Reach::AllTheWay => self.brakes_hold().to_owned(),
            Reach::Part(from) => self.brakes_hold_from(&place(from)),
            Reach::Nowhere => self.brakes_hold_nowhere().to_owned(),
        };
        let neither = lost.neither_from.map(|from| self.neither_from(&place(from)));
        let ramps = lost.ramps.iter().map(|ramp| {
            let speed = format::met_speed(ramp.speed.0, units);
            let needs = format::height(ramp.needs.0, units);
            self.ramp_met(&place(ramp.at), &place(ramp.lost_at), &speed, &needs)
        });
        let none = lost.ramps.is_empty().then(|| self.no_ramp_entered().to_owned());
        let first = [Some(stop), Some(hold), neither].into_iter().flatten();
        first.chain(ramps).chain(none).collect()
    }

    /// What brakes out of adjustment come to, a sentence for each axle group.
    #[must_use]
    pub fn adjustment(&self, all: &[Adjustment], units: Units) -> Vec<String> {
        let one = |it: &Adjustment| {
            let heat = format::temperature(it.hottest_after_stop.0, units);
            let over = format!(", {}", self.heat_step(HeatStep::OverLimit));
            self.out_of_adjustment(self.axles(it.place), &heat, if it.kept { "" } else { &over })
        };
        let has = |brake: BrakeKind| all.iter().any(|it| it.brake == brake);
        let at = |cold_in: f64| format::entered_temperature(stroke_limit_at(cold_in).0, units);
        let drums = has(BrakeKind::Drum).then(|| {
            self.long_stroke(&at(SLACK_STROKE), &at(SLACK_STROKE - 0.125), &at(SLACK_STROKE - 0.25))
        });
        let discs = has(BrakeKind::Disc).then(|| self.half_braked().to_owned());
        drums.into_iter().chain(discs).chain(all.iter().map(one)).collect()
    }

    /// One row of the table of what to slow for.
    #[must_use]
    pub fn slowing(&self, slowing: &Slowing, units: Units) -> [String; 6] {
        let place = |at: Metres| format::place(at.0, units);
        let met_speed = |speed: MetresPerSecond| format::met_speed(speed.0, units);
        let (from, gear) = match slowing.lift_off {
            Some((from, speed)) => {
                let rest = slowing.cut_out.map_or_else(String::new, |off| self.rest_below(&met_speed(off)));
                let from = self.full_stage_from(&place(from), &met_speed(speed));
                (from + &rest, slowing.gear.number().to_string())
            }
            None => (self.brake_early().to_owned(), UNKNOWN.to_owned()),
        };
        let what = match &slowing.what {
            SlowFor::Curve(radius_m) => self.curve_of(&radius(*radius_m, units)),
            SlowFor::Limit => self.posted_limit().to_owned(),
            SlowFor::Stop(name) => name_or(name, self.place_to_stop()),
            SlowFor::BrakeCheck(name) => name_or(name, self.place_kind(PlaceKind::BrakeCheck)),
            SlowFor::Town(name) => name_or(name, self.town()),
        };
        let to = if slowing.to.0 > 0.0 {
            format::hold_speed(slowing.to.0, units)
        } else {
            self.standstill().to_owned()
        };
        let way = format::height(slowing.brakes_need.0, units);
        let after = format::temperature(slowing.brakes_after.0, units);
        [place(slowing.at), what, to, from, gear, self.by_brakes_alone(&way, &after)]
    }

    /// How sure it is, in one sentence.
    #[must_use]
    pub fn sure_in_short(&self, sure: &DescentSureness, descent: &Descent, runs: usize) -> String {
        let rest = if sure.held == runs && sure.kept == runs {
            self.held_and_kept().to_owned()
        } else {
            let [held, kept] = [sure.held, sure.kept].map(|it| format::share(it as f64 / runs as f64));
            self.shares_held(&held, &kept)
        };
        let left_out = self.but_for_touches(descent);
        format!("{}{}{rest}{left_out}", self.driven_in_short(runs), self.colon())
    }

    /// That the places told as touches are not counted, with a space before it.
    fn but_for_touches(&self, descent: &Descent) -> String {
        if descent.touches.is_empty() { String::new() } else { format!(" {}", self.touches_left_out()) }
    }

    /// What was measured.
    #[must_use]
    pub fn measured(&self, measured: &Measured, units: Units) -> String {
        self.held_with(
            &format::engine_speed(measured.engine_speed.0),
            &format::power(measured.power.0, units),
            &format::power(measured.assumed.0, units),
            &format::share(measured.scale),
        )
    }

    /// Why nothing was measured.
    #[must_use]
    pub fn not_measured(&self, why: &NotMeasured) -> String {
        match why {
            NotMeasured::NoSuchStage => self.not_measured_no_such_stage().to_owned(),
            NotMeasured::Off => self.not_measured_off().to_owned(),
            NotMeasured::NotPushed => self.not_measured_not_pushed().to_owned(),
            NotMeasured::GaugesDiffer(turning) => {
                self.not_measured_gauges_differ(&format::engine_speed(turning.0))
            }
            NotMeasured::OutOfReach(factor) => self.not_measured_out_of_reach(&format::share(*factor)),
        }
    }
}
