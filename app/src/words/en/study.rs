//! English words of what follows from a plan.

use super::English;
use crate::format::{self, Units};
use crate::words::StudyWords;
use crate::words::say::{enough_percent, name_or, radius};
use solver::plan::{Carried, Change};
use solver::study::{
    Adjustment, DescentSureness, Input, Lost, Measured, NotMeasured, Reach, SlowFor, Slowing,
};
use solver::truck::AxlePlace;

impl StudyWords for English {
    fn change_label(&self) -> &'static str {
        "What would change it"
    }
    fn change(&self, change: &Change, reserve: f64, units: Units) -> Vec<String> {
        let mass = match change.mass {
            Some(mass) => format!(
                "At {} or less the retarder would hold it with the reserve.",
                format::mass_at_most(mass.0, units)
            ),
            None => "No lighter load would change that.".to_owned(),
        };
        let retarding = change.retarding.map(|factor| {
            format!(
                "With {} more retarding than this truck has, it would be held with the reserve.",
                enough_percent(factor - 1.0)
            )
        });
        let kept = change.reserve.map(|kept| {
            let (kept, asked) = (format::margin(kept), format::margin(reserve));
            format!("As it is, at most {kept} in reserve can be kept, not {asked}.")
        });
        let cool = change.cool_to.map(|at| {
            let at = format::entered_temperature(at.0, units);
            format!(
                "With brakes no warmer than {at} at the crest the limit would be kept: let them cool first."
            )
        });
        [Some(mass), retarding, kept, cool].into_iter().flatten().collect()
    }
    fn carried_label(&self) -> &'static str {
        "Into the next rise"
    }
    fn carried(&self, carried: Carried, units: Units) -> String {
        format!(
            "Held to the foot like this, it enters the rise at {} with about {}. Do not release early for more.",
            format::distance(carried.at.0, units),
            format::met_speed(carried.speed.0, units)
        )
    }
    fn sure_label(&self) -> &'static str {
        "How sure"
    }
    fn sure(&self, sure: &DescentSureness, runs: usize, units: Units) -> Vec<String> {
        let held = of_runs(sure.held, runs, "The retarder alone held the speed");
        let kept = of_runs(sure.kept, runs, "The brakes, one hard stop included, kept the limit");
        let (cool, hot) = sure.after_stop_c;
        let heat = format!(
            "In nine of ten the brakes were between {} and {} after a hard stop.",
            format::temperature(f64::from(cool), units),
            format::temperature(f64::from(hot), units)
        );
        let what = sure.matters.iter().take(2).map(|(input, _)| input_name(*input)).collect::<Vec<_>>();
        let matters =
            (!what.is_empty()).then(|| format!("Most of that spread comes from {}.", what.join(", then ")));
        let intro = format!(
            "Driven {runs} times with grades, mass, resistance, wind, retarder and brakes each a little off."
        );
        [Some(intro), Some(held), Some(kept), Some(heat), matters].into_iter().flatten().collect()
    }
    fn too_long_to_be_sure(&self) -> &'static str {
        "This road is too long to be driven 256 times: work out a part of it to learn how sure its plan is."
    }
    fn studying(&self, share: f32) -> String {
        format!("Working out how sure this is: {}", format::share(f64::from(share)))
    }
    fn not_yet(&self) -> &'static str {
        "…"
    }
    fn lost_label(&self) -> &'static str {
        "If the retarder is lost"
    }
    fn lost(&self, lost: &Lost, crest_m: f64, foot_m: f64, units: Units) -> Vec<String> {
        let stop = match lost.can_stop(foot_m) {
            Reach::AllTheWay => {
                "Braking hard within two seconds stops the truck within the heat limit from anywhere on the way."
                    .to_owned()
            }
            Reach::Part(until) => format!(
                "Braking hard within two seconds stops the truck within the heat limit as far as {}; not behind it.",
                format::distance(until.0, units)
            ),
            Reach::Nowhere => "Not even at the crest would a hard stop keep the heat limit.".to_owned(),
        };
        let hold = match lost.can_hold(crest_m) {
            Reach::AllTheWay => {
                "The service brakes could also hold it at its speed to the foot within the limit.".to_owned()
            }
            Reach::Part(from) => format!(
                "Only from {} on could the service brakes hold it at its speed to the foot; before that, stop.",
                format::distance(from.0, units)
            ),
            Reach::Nowhere => "The service brakes could not hold it to the foot: stop.".to_owned(),
        };
        let neither = lost
            .neither_from
            .map(|from| format!("From {} on neither would keep the limit.", format::distance(from.0, units)));
        let ramps = lost.ramps.iter().map(|ramp| {
            format!(
                "Escape ramp at {}: rolling from {} without any brakes it would be met with about {}; a level bed of loose round gravel would need about {}.",
                format::distance(ramp.at.0, units),
                format::distance(ramp.lost_at.0, units),
                format::met_speed(ramp.speed.0, units),
                format::height(ramp.needs.0, units)
            )
        });
        let none = lost.ramps.is_empty().then(|| {
            "No escape ramp is entered on this descent; that does not mean that there is none.".to_owned()
        });
        let first = [Some(stop), Some(hold), neither].into_iter().flatten();
        first.chain(ramps).chain(none).collect()
    }
    fn adjustment_label(&self) -> &'static str {
        "Brakes out of adjustment"
    }
    fn adjustment(&self, all: &[Adjustment], units: Units) -> Vec<String> {
        let one = |it: &Adjustment| {
            let heat = format::temperature(it.hottest_after_stop.0, units);
            let kept = if it.kept { "" } else { ", over the limit" };
            format!("{}: about {heat} after a hard stop{kept}.", place(it.place))
        };
        let intro =
            "If one axle group braked only half as much, the others would be hotter on the whole road.";
        std::iter::once(intro.to_owned()).chain(all.iter().map(one)).collect()
    }
    fn slowing_label(&self) -> &'static str {
        "Slowing for what lies ahead"
    }
    fn slowing_sentence(&self) -> &'static str {
        "Off the throttle and on full stage from there, the retarder alone brings this truck down to the speed, and the service brakes stay cool. Signs and what you see come first."
    }
    fn slowing_heads(&self) -> [&'static str; 6] {
        ["at", "what for", "down to", "full stage from", "in gear", "service brakes alone"]
    }
    fn slowing(&self, slowing: &Slowing, units: Units) -> [String; 6] {
        let (from, gear) = match slowing.lift_off {
            Some((from, speed)) => (
                format!("{}, at {}", format::distance(from.0, units), format::met_speed(speed.0, units)),
                slowing.gear.number().to_string(),
            ),
            None => ("not enough: brake early".to_owned(), "–".to_owned()),
        };
        let rest = slowing.cut_out.filter(|_| slowing.lift_off.is_some());
        let rest = rest.map_or_else(String::new, |off| {
            format!("; below {} the service brakes", format::met_speed(off.0, units))
        });
        let to = if slowing.to.0 > 0.0 { format::hold_speed(slowing.to.0, units) } else { "stop".to_owned() };
        [
            format::distance(slowing.at.0, units),
            what_for(&slowing.what, units),
            to,
            from + &rest,
            gear,
            format!(
                "{}, then about {}",
                format::height(slowing.brakes_need.0, units),
                format::temperature(slowing.brakes_after.0, units)
            ),
        ]
    }
    fn slowing_more(&self, count: usize) -> String {
        if count == 1 {
            "And 1 more that asks for less.".to_owned()
        } else {
            format!("And {count} more that ask for less.")
        }
    }
    fn sure_in_short(&self, sure: &DescentSureness, runs: usize) -> String {
        let how = format!("with grades, mass, wind, retarder and brakes a little off, {runs} times");
        if sure.held == runs && sure.kept == runs {
            return format!("Driven {how}: the retarder held it each time, and the brakes kept the limit.");
        }
        format!(
            "Driven {how}: the retarder alone held it in {}, the brakes kept the limit in {}.",
            format::share(sure.held as f64 / runs as f64),
            format::share(sure.kept as f64 / runs as f64)
        )
    }
    fn evidence_head(&self) -> &'static str {
        "Evidence"
    }
    fn evidence_sentence(&self) -> &'static str {
        "What the calculation is held against: values from outside this project, each with its source and how we came by it, and what comes out here. The same rows are the project’s tests."
    }
    fn evidence_count(&self, rows: usize, known: usize) -> String {
        format!(
            "{rows} values; {known} of them differ from their source by more than its tolerance, and are marked so."
        )
    }
    fn evidence_heads(&self) -> [&'static str; 4] {
        ["what", "the source has", "here", "difference"]
    }
    fn evidence_difference(&self) -> &'static str {
        "differs"
    }
    fn evidence_missing(&self) -> &'static str {
        "The rows could not be loaded. Open this again, or reload the page."
    }
    fn measured_head(&self) -> &'static str {
        "What held today"
    }
    fn measured_sentence(&self) -> &'static str {
        "You held a steady speed on a hill with the retarder alone, no throttle and no service brake? Enter what you saw, afterwards and parked: it tells what your retarder really gives with the mass and day entered above."
    }
    fn measured_fields(&self) -> [&'static str; 6] {
        ["Gear", "Stage", "Engine speed", "Steady speed", "Grade, downhill", "or: place on the road shown"]
    }
    fn measured_place_hint(&self) -> &'static str {
        "Where a place is given, grade and height there are taken instead."
    }
    fn measure(&self) -> &'static str {
        "Work it out"
    }
    fn measured_missing(&self) -> &'static str {
        "Enter gear, stage, engine speed and steady speed, and a downgrade or a place on a descent of the road shown, all as numbers."
    }
    fn measured(&self, measured: &Measured, units: Units) -> String {
        format!(
            "At {} it held with {}; the truck’s data give {}. That is {} of what they say for the retarder.",
            format::engine_speed(measured.engine_speed.0),
            format::power(measured.power.0, units),
            format::power(measured.assumed.0, units),
            format::share(measured.scale)
        )
    }
    fn not_measured(&self, why: &NotMeasured) -> String {
        match why {
            NotMeasured::NoSuchStage => "This truck has no such gear or stage.".to_owned(),
            NotMeasured::Off => "With the retarder off nothing is told about it: enter a stage.".to_owned(),
            NotMeasured::NotPushed => {
                "That grade does not push this truck at that speed: enter a steeper stretch.".to_owned()
            }
            NotMeasured::GaugesDiffer(turning) => format!(
                "In that gear at that speed the engine would turn at about {}: gear, axle ratio, tyre or one of the two figures is wrong.",
                format::engine_speed(turning.0)
            ),
            NotMeasured::OutOfReach(factor) => format!(
                "The retarder would have to give {} of what its data say. Rather the mass, the grade or the stage is not as entered, or the service brakes helped.",
                format::share(*factor)
            ),
        }
    }
    fn use_measured(&self) -> &'static str {
        "Plan with this"
    }
    fn undo_measured(&self) -> &'static str {
        "Back to the truck’s data"
    }
    fn scale_in_use(&self, scale: f64) -> String {
        format!("Plans count on {} of the retarder’s data.", format::share(scale))
    }
}

/// “in all 256 …”, “in 12 of 256 …”.
fn of_runs(count: usize, runs: usize, what: &str) -> String {
    let of = match count {
        0 => format!("in none of {runs}"),
        all if all == runs => format!("in all {runs}"),
        some => format!("in {some} of {runs}"),
    };
    format!("{what} {of}.")
}

fn input_name(input: Input) -> &'static str {
    match input {
        Input::Grade => "the grades",
        Input::Mass => "the mass",
        Input::Rolling => "rolling resistance",
        Input::Drag => "air drag",
        Input::Retarder => "what the retarder gives",
        Input::Wind => "the wind",
        Input::BrakesAtStart => "the brakes at the start",
        Input::Cooling => "how well the brakes cool",
    }
}

fn place(place: AxlePlace) -> &'static str {
    match place {
        AxlePlace::Steer => "Steer axle",
        AxlePlace::Drive => "Driven axles",
        AxlePlace::Trailer => "Trailer",
    }
}

fn what_for(what: &SlowFor, units: Units) -> String {
    match what {
        SlowFor::Curve(radius_m) => format!("curve, radius about {}", radius(*radius_m, units)),
        SlowFor::Limit => "posted limit".to_owned(),
        SlowFor::Stop(name) => name_or(name, "a place to stop"),
        SlowFor::BrakeCheck(name) => name_or(name, "brake check"),
        SlowFor::Town(name) => name_or(name, "town"),
    }
}
