//! English words of what follows from a plan.

use super::English;
use crate::format;
use crate::words::StudyWords;
use solver::study::{Input, NotMeasured};
use solver::truck::AxlePlace;

impl StudyWords for English {
    fn change_label(&self) -> &'static str {
        "What would change it"
    }
    fn light_enough(&self, mass: &str) -> String {
        format!("At {mass} or less the retarder would hold it with the reserve.")
    }
    fn no_lighter_load(&self) -> &'static str {
        "No lighter load would change that."
    }
    fn more_retarding(&self, share: &str) -> String {
        format!("With {share} more retarding than this truck has, it would be held with the reserve.")
    }
    fn reserve_kept(&self, kept: &str, asked: &str) -> String {
        format!("As it is, at most {kept} in reserve can be kept, not {asked}.")
    }
    fn cool_enough(&self, at: &str) -> String {
        format!("With brakes no warmer than {at} at the crest the limit would be kept: let them cool first.")
    }
    fn carried_label(&self) -> &'static str {
        "Into the next rise"
    }
    fn meets_rise(&self, at: &str, speed: &str) -> String {
        format!(
            "Held to the foot like this, it enters the rise at {at} with about {speed}. Do not release early for more."
        )
    }
    fn sure_label(&self) -> &'static str {
        "How sure"
    }
    fn driven_so(&self, runs: usize) -> String {
        format!(
            "Driven {runs} times with grades, mass, resistance, wind, retarder and brakes each a little off."
        )
    }
    fn in_none(&self, runs: usize) -> String {
        format!("in none of {runs}")
    }
    fn in_all(&self, runs: usize) -> String {
        format!("in all {runs}")
    }
    fn in_some(&self, some: usize, runs: usize) -> String {
        format!("in {some} of {runs}")
    }
    fn speed_held(&self, of: &str) -> String {
        format!("The retarder alone held the speed {of}.")
    }
    fn limit_kept(&self, of: &str) -> String {
        format!("The brakes, one hard stop included, kept the limit {of}.")
    }
    fn nine_of_ten(&self, cool: &str, hot: &str) -> String {
        format!("In nine of ten the brakes were between {cool} and {hot} after a hard stop.")
    }
    fn spread_from(&self, inputs: &str) -> String {
        format!("Most of that spread comes from {inputs}.")
    }
    fn input(&self, input: Input) -> &'static str {
        match input {
            Input::Grade => "the grades",
            Input::Mass => "the mass",
            Input::Rolling => "rolling resistance",
            Input::Drag => "air drag",
            Input::Retarder => "what the retarder gives",
            Input::Wind => "the wind",
            Input::BrakesAtStart => "the brakes at the start",
            Input::Cooling => "how much heat the brakes store and give off",
        }
    }
    fn and_then(&self) -> &'static str {
        ", then "
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
    fn stops_anywhere(&self) -> &'static str {
        "Braking hard within two seconds stops the truck within the heat limit from anywhere on the way."
    }
    fn stops_until(&self, until: &str) -> String {
        format!(
            "Braking hard within two seconds stops the truck within the heat limit as far as {until}; not behind it."
        )
    }
    fn stops_nowhere(&self) -> &'static str {
        "Not even at the crest would a hard stop keep the heat limit."
    }
    fn brakes_hold(&self) -> &'static str {
        "The service brakes could also hold it at its speed to the foot within the limit."
    }
    fn brakes_hold_from(&self, from: &str) -> String {
        format!(
            "Only from {from} on could the service brakes hold it at its speed to the foot; before that, stop."
        )
    }
    fn brakes_hold_nowhere(&self) -> &'static str {
        "The service brakes could not hold it to the foot: stop."
    }
    fn neither_from(&self, from: &str) -> String {
        format!("From {from} on neither would keep the limit.")
    }
    fn ramp_met(&self, at: &str, lost_at: &str, speed: &str, needs: &str) -> String {
        format!(
            "Escape ramp at {at}: rolling from {lost_at} without any brakes it would be met with about {speed}; a level bed of loose round gravel would need about {needs}."
        )
    }
    fn no_ramp_entered(&self) -> &'static str {
        "No escape ramp is entered on this descent; that does not mean that there is none."
    }
    fn adjustment_label(&self) -> &'static str {
        "Brakes out of adjustment"
    }
    fn long_stroke(&self, at: &str, shorter: &str, short: &str) -> String {
        format!(
            "If the drum brakes of one axle group had a cold stroke of 1¾ in (44 mm), a size 30 chamber would reach its limit of 2 in (51 mm) at {at}: above that they are not counted here, and the others are hotter. At 1⅝ in (41 mm) that is {shorter}, at 1½ in (38 mm) {short}."
        )
    }
    fn half_braked(&self) -> &'static str {
        "If the disc brakes of one axle group braked only half as much, the others would be hotter on the whole road."
    }
    fn out_of_adjustment(&self, axles: &str, heat: &str, over: &str) -> String {
        format!("{axles}: about {heat} after a hard stop{over}.")
    }
    fn axles(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Steer axle",
            AxlePlace::Drive => "Driven axles",
            AxlePlace::Trailer => "Trailer",
        }
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
    fn full_stage_from(&self, from: &str, speed: &str) -> String {
        format!("{from}, at {speed}")
    }
    fn rest_below(&self, speed: &str) -> String {
        format!("; below {speed} the service brakes")
    }
    fn brake_early(&self) -> &'static str {
        "not enough: brake early"
    }
    fn standstill(&self) -> &'static str {
        "stop"
    }
    fn by_brakes_alone(&self, way: &str, after: &str) -> String {
        format!("{way}, then about {after}")
    }
    fn curve_of(&self, radius: &str) -> String {
        format!("curve, radius about {radius}")
    }
    fn place_to_stop(&self) -> &'static str {
        "a place to stop"
    }
    fn town(&self) -> &'static str {
        "town"
    }
    fn slowing_more(&self, count: usize) -> String {
        if count == 1 {
            "And 1 more that asks for less.".to_owned()
        } else {
            format!("And {count} more that ask for less.")
        }
    }
    fn driven_in_short(&self, runs: usize) -> String {
        format!("Driven with grades, mass, wind, retarder and brakes a little off, {runs} times")
    }
    fn held_and_kept(&self) -> &'static str {
        "the retarder held it each time, and the brakes kept the limit."
    }
    fn shares_held(&self, held: &str, kept: &str) -> String {
        format!("the retarder alone held it in {held}, the brakes kept the limit in {kept}.")
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
    fn held_with(&self, engine_speed: &str, power: &str, assumed: &str, share: &str) -> String {
        format!(
            "At {engine_speed} it held with {power}; the truck’s data give {assumed}. That is {share} of what they say for the retarder."
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
