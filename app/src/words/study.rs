//! Words of what follows from a plan: what would change it, how sure it is, what if.

use super::say::{UNKNOWN, enough_percent, name_or, radius};
use super::{PlanWords, RoadsideWords};
use crate::format::{self, Units};
use solver::plan::{Carried, Change, HeatStep};
use solver::road::PlaceKind;
use solver::study::{
    Adjustment, DescentSureness, Input, Lost, Measured, NotMeasured, Reach, SlowFor, Slowing,
};
use solver::truck::{AxlePlace, BrakeKind, SLACK_STROKE, stroke_limit_at};
use solver::units::{Metres, MetresPerSecond};

/// Words of a study.
pub trait StudyWords: PlanWords + RoadsideWords {
    /// Label of what would change the answer.
    fn change_label(&self) -> &'static str;
    /// What would let the retarder hold it with the reserve.
    fn change(&self, change: &Change, reserve: f64, units: Units) -> Vec<String> {
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
    /// At which mass it would be held.
    fn light_enough(&self, mass: &str) -> String;
    /// At none.
    fn no_lighter_load(&self) -> &'static str;
    /// With how much more retarding.
    fn more_retarding(&self, share: &str) -> String;
    /// Which reserve can be kept in place of the one asked for.
    fn reserve_kept(&self, kept: &str, asked: &str) -> String;
    /// With brakes how cool at the crest.
    fn cool_enough(&self, at: &str) -> String;
    /// Label of what is carried into a rise.
    fn carried_label(&self) -> &'static str;
    /// What is carried into a rise.
    fn carried(&self, carried: Carried, units: Units) -> String {
        self.meets_rise(&format::distance(carried.at.0, units), &format::met_speed(carried.speed.0, units))
    }
    /// Where the rise begins, and with which speed.
    fn meets_rise(&self, at: &str, speed: &str) -> String;
    /// Label of how sure it is.
    fn sure_label(&self) -> &'static str;
    /// How sure it is, of so many runs.
    fn sure(&self, sure: &DescentSureness, runs: usize, units: Units) -> Vec<String> {
        let of = |count: usize| match count {
            0 => self.in_none(runs),
            all if all == runs => self.in_all(runs),
            some => self.in_some(some, runs),
        };
        let (cool, hot) = sure.after_stop_c;
        let [cool, hot] = [cool, hot].map(|it| format::temperature(f64::from(it), units));
        let what: Vec<&str> = sure.matters.iter().take(2).map(|(input, _)| self.input(*input)).collect();
        let matters = (!what.is_empty()).then(|| self.spread_from(&what.join(self.and_then())));
        let first = [
            self.driven_so(runs),
            self.speed_held(&of(sure.held)),
            self.limit_kept(&of(sure.kept)),
            self.nine_of_ten(&cool, &hot),
        ];
        first.into_iter().chain(matters).collect()
    }
    /// What was done.
    fn driven_so(&self, runs: usize) -> String;
    /// In none of so many runs.
    fn in_none(&self, runs: usize) -> String;
    /// In all of them.
    fn in_all(&self, runs: usize) -> String;
    /// In some of them.
    fn in_some(&self, some: usize, runs: usize) -> String;
    /// In how many the retarder alone held the speed.
    fn speed_held(&self, of: &str) -> String;
    /// In how many the brakes kept the limit.
    fn limit_kept(&self, of: &str) -> String;
    /// Between which temperatures the brakes were in nine of ten.
    fn nine_of_ten(&self, cool: &str, hot: &str) -> String;
    /// What that spread comes from.
    fn spread_from(&self, inputs: &str) -> String;
    /// An input as it stands in that sentence.
    fn input(&self, input: Input) -> &'static str;
    /// Between two of them.
    fn and_then(&self) -> &'static str;
    /// Why it is not worked out.
    fn too_long_to_be_sure(&self) -> &'static str;
    /// While that is worked out.
    fn studying(&self, share: f32) -> String;
    /// What is still worked out.
    fn not_yet(&self) -> &'static str;
    /// Label of the lost retarder.
    fn lost_label(&self) -> &'static str;
    /// What is left then.
    fn lost(&self, lost: &Lost, crest_m: f64, foot_m: f64, units: Units) -> Vec<String> {
        let distance = |at: Metres| format::distance(at.0, units);
        let stop = match lost.can_stop(foot_m) {
            Reach::AllTheWay => self.stops_anywhere().to_owned(),
            Reach::Part(until) => self.stops_until(&distance(until)),
            Reach::Nowhere => self.stops_nowhere().to_owned(),
        };
        let hold = match lost.can_hold(crest_m) {
            Reach::AllTheWay => self.brakes_hold().to_owned(),
            Reach::Part(from) => self.brakes_hold_from(&distance(from)),
            Reach::Nowhere => self.brakes_hold_nowhere().to_owned(),
        };
        let neither = lost.neither_from.map(|from| self.neither_from(&distance(from)));
        let ramps = lost.ramps.iter().map(|ramp| {
            let speed = format::met_speed(ramp.speed.0, units);
            let needs = format::height(ramp.needs.0, units);
            self.ramp_met(&distance(ramp.at), &distance(ramp.lost_at), &speed, &needs)
        });
        let none = lost.ramps.is_empty().then(|| self.no_ramp_entered().to_owned());
        let first = [Some(stop), Some(hold), neither].into_iter().flatten();
        first.chain(ramps).chain(none).collect()
    }
    /// Braking hard stops it from anywhere.
    fn stops_anywhere(&self) -> &'static str;
    /// It does so as far as this place, and not behind it.
    fn stops_until(&self, until: &str) -> String;
    /// It does so nowhere.
    fn stops_nowhere(&self) -> &'static str;
    /// The service brakes hold it to the foot.
    fn brakes_hold(&self) -> &'static str;
    /// They do so from this place on.
    fn brakes_hold_from(&self, from: &str) -> String;
    /// They do so from nowhere.
    fn brakes_hold_nowhere(&self) -> &'static str;
    /// From where on neither would do.
    fn neither_from(&self, from: &str) -> String;
    /// An escape ramp: with which speed it would be met, rolling from where, and which length of bed that needs.
    fn ramp_met(&self, at: &str, lost_at: &str, speed: &str, needs: &str) -> String;
    /// None is entered, and what that does not mean.
    fn no_ramp_entered(&self) -> &'static str;
    /// Label of brakes out of adjustment.
    fn adjustment_label(&self) -> &'static str;
    /// What comes of it, a sentence a group.
    fn adjustment(&self, all: &[Adjustment], units: Units) -> Vec<String> {
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
    /// What is taken to be the case with drums: at which temperature a cold stroke of 1¾ in reaches the limit of 2 in,
    /// and one of 1⅝ and 1½.
    fn long_stroke(&self, at: &str, shorter: &str, short: &str) -> String;
    /// What is taken to be the case with discs.
    fn half_braked(&self) -> &'static str;
    /// How hot a group would be after a hard stop, and whether that is over the limit.
    fn out_of_adjustment(&self, axles: &str, heat: &str, over: &str) -> String;
    /// An axle group.
    fn axles(&self, place: AxlePlace) -> &'static str;
    /// Label of slowing ahead.
    fn slowing_label(&self) -> &'static str;
    /// What the list of it means.
    fn slowing_sentence(&self) -> &'static str;
    /// Heads of its columns: place, what, speed, where, gear, the service brakes alone.
    fn slowing_heads(&self) -> [&'static str; 6];
    /// One row of it.
    fn slowing(&self, slowing: &Slowing, units: Units) -> [String; 6] {
        let distance = |at: Metres| format::distance(at.0, units);
        let met_speed = |speed: MetresPerSecond| format::met_speed(speed.0, units);
        let (from, gear) = match slowing.lift_off {
            Some((from, speed)) => {
                let rest = slowing.cut_out.map_or_else(String::new, |off| self.rest_below(&met_speed(off)));
                let from = self.full_stage_from(&distance(from), &met_speed(speed));
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
        [distance(slowing.at), what, to, from, gear, self.by_brakes_alone(&way, &after)]
    }
    /// From where on and with which speed it does.
    fn full_stage_from(&self, from: &str, speed: &str) -> String;
    /// Below which speed the service brakes do the rest, behind that.
    fn rest_below(&self, speed: &str) -> String;
    /// The retarder alone does not do it.
    fn brake_early(&self) -> &'static str;
    /// In place of a speed: a stop.
    fn standstill(&self) -> &'static str;
    /// Which way the service brakes need, and how warm they are then.
    fn by_brakes_alone(&self, way: &str, after: &str) -> String;
    /// A curve of this radius.
    fn curve_of(&self, radius: &str) -> String;
    /// A stop without a name.
    fn place_to_stop(&self) -> &'static str;
    /// A town without a name.
    fn town(&self) -> &'static str;
    /// How many more there are.
    fn slowing_more(&self, count: usize) -> String;
    /// How sure it is, in one sentence.
    fn sure_in_short(&self, sure: &DescentSureness, runs: usize) -> String {
        let rest = if sure.held == runs && sure.kept == runs {
            self.held_and_kept().to_owned()
        } else {
            let [held, kept] = [sure.held, sure.kept].map(|it| format::share(it as f64 / runs as f64));
            self.shares_held(&held, &kept)
        };
        format!("{}{}{rest}", self.driven_in_short(runs), self.colon())
    }
    /// What was done, before a colon.
    fn driven_in_short(&self, runs: usize) -> String;
    /// The retarder held it and the brakes kept the limit each time.
    fn held_and_kept(&self) -> &'static str;
    /// In which shares they did.
    fn shares_held(&self, held: &str, kept: &str) -> String;
    /// Head of the evidence.
    fn evidence_head(&self) -> &'static str;
    /// What it is.
    fn evidence_sentence(&self) -> &'static str;
    /// How many values there are, and how many are known to differ.
    fn evidence_count(&self, rows: usize, known: usize) -> String;
    /// Heads of its columns: what, the source's value, ours, the difference.
    fn evidence_heads(&self) -> [&'static str; 4];
    /// Mark of a value that is known to differ.
    fn evidence_difference(&self) -> &'static str;
    /// It cannot be fetched.
    fn evidence_missing(&self) -> &'static str;
    /// Head of the panel in which a steady speed is entered.
    fn measured_head(&self) -> &'static str;
    /// What it is for.
    fn measured_sentence(&self) -> &'static str;
    /// Labels of gear, stage, engine speed, speed, grade and place.
    fn measured_fields(&self) -> [&'static str; 6];
    /// Hint of the place.
    fn measured_place_hint(&self) -> &'static str;
    /// Works it out.
    fn measure(&self) -> &'static str;
    /// A field that cannot be read.
    fn measured_missing(&self) -> &'static str;
    /// What was measured.
    fn measured(&self, measured: &Measured, units: Units) -> String {
        self.held_with(
            &format::engine_speed(measured.engine_speed.0),
            &format::power(measured.power.0, units),
            &format::power(measured.assumed.0, units),
            &format::share(measured.scale),
        )
    }
    /// At which engine speed it held with which power, what the data give, and the share.
    fn held_with(&self, engine_speed: &str, power: &str, assumed: &str, share: &str) -> String;
    /// Why nothing was.
    fn not_measured(&self, why: &NotMeasured) -> String;
    /// Scales the truck's retarder by it.
    fn use_measured(&self) -> &'static str;
    /// Back to what its data say.
    fn undo_measured(&self) -> &'static str;
    /// What is in use now.
    fn scale_in_use(&self, scale: f64) -> String;
}
