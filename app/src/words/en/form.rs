//! English words of the truck's form.

use super::English;
use crate::entries::{AtEngine, OnShaft};
use crate::format::Units;
use crate::words::FormWords;
use solver::plan::Verdict;
use solver::truck::{AxlePlace, BrakeKind};

impl FormWords for English {
    fn preset_hint(&self) -> &'static str {
        "Take the truck most like yours. Its values stand until you enter your own."
    }
    fn on_plate(&self) -> &'static str {
        "On the plates and in the papers"
    }
    fn in_head(&self) -> &'static str {
        "What you know as its driver"
    }
    fn rest_sentence(&self) -> &'static str {
        "These are assumed until you enter them. Behind each stands what a wrong value costs on the road shown, on the descent that decides."
    }
    fn top_gear_speed(&self, units: Units) -> &'static str {
        match units {
            Units::Metric => "Engine speed at 80 km/h in top gear",
            Units::Imperial => "Engine speed at 50 mph in top gear",
        }
    }
    fn is_axle_ratio(&self, ratio: &str) -> String {
        format!("That is an axle ratio of {ratio}.")
    }
    fn no_axle_ratio(&self, ratio: &str, range: &str) -> String {
        format!(
            "With these gears and tyres that would be an axle ratio of {ratio}; axles have {range}. Look at the engine speed, the top gear and the tyres."
        )
    }
    fn tyre_hint(&self) -> &'static str {
        "It stands on the sidewall. Worn tyres roll a little shorter."
    }
    fn gear_set_hint(&self) -> &'static str {
        "Count the forward gears. “Overdrive”: the top gear turns the shaft faster than the engine."
    }
    fn transmission_hint(&self) -> &'static str {
        "Automated: no clutch pedal, but a clutch. Converter: it pulls away without one."
    }
    fn on_shaft(&self, it: OnShaft) -> &'static str {
        match it {
            OnShaft::Nothing => "none",
            OnShaft::Hydrodynamic => "fluid retarder",
            OnShaft::Electromagnetic => "magnetic retarder",
            OnShaft::EngineTable => "my own table, at the engine",
            OnShaft::ShaftTable => "my own table, at the shaft",
        }
    }
    fn on_shaft_hint(&self) -> &'static str {
        "A device on gearbox or shaft. A fluid one warms the coolant; a magnetic one has a heavy rotor with fins."
    }
    fn at_engine_label(&self) -> &'static str {
        "Also an engine brake?"
    }
    fn at_engine(&self, it: AtEngine) -> &'static str {
        match it {
            AtEngine::Nothing => "none",
            AtEngine::ExhaustFlap => "exhaust flap",
            AtEngine::Compression => "engine brake",
        }
    }
    fn at_engine_hint(&self) -> &'static str {
        "Exhaust flap: a flap in the exhaust pipe. Engine brake: the exhaust valves work, loudly. In doubt take the flap: it holds less."
    }
    fn lever_label(&self) -> &'static str {
        "Positions of its lever, without off"
    }
    fn lever_hint(&self) -> &'static str {
        "Each is taken to give the same step. The shares can be entered below."
    }
    fn own_lever(&self) -> &'static str {
        "as typed below"
    }
    fn shape_label(&self) -> &'static str {
        "Power of the engine brake by engine speed"
    }
    fn shape(&self, by_exponent: bool) -> &'static str {
        if by_exponent { "by an exponent" } else { "as engines declare it" }
    }
    fn shape_hint(&self) -> &'static str {
        "As engines declare it unless you have figures of your own."
    }
    fn axles_of(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Steered axles",
            AxlePlace::Drive => "Driven axles and beside them",
            AxlePlace::Trailer => "Trailer axles",
        }
    }
    fn brakes_of(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Brakes of the steered axles",
            AxlePlace::Drive => "Brakes of the driven axles",
            AxlePlace::Trailer => "Brakes of the trailer",
        }
    }
    fn brake(&self, kind: BrakeKind) -> &'static str {
        match kind {
            BrakeKind::Drum => "drum",
            BrakeKind::Disc => "disc",
        }
    }
    fn without_trailer(&self) -> &'static str {
        "no trailer"
    }
    fn axles_hint(&self) -> &'static str {
        "Count the axles with brakes. How they share the work is assumed."
    }
    fn wrong_by(&self, by: &str) -> String {
        format!("{by} wrong")
    }
    fn so_many_gears(&self, gears: u8) -> String {
        if gears == 1 { "1\u{a0}gear".to_owned() } else { format!("{gears}\u{a0}gears") }
    }
    fn so_many_stages(&self, stages: u8) -> String {
        if stages == 1 { "1\u{a0}stage".to_owned() } else { format!("{stages}\u{a0}stages") }
    }
    fn no_other(&self) -> &'static str {
        "neither gear nor speed changes"
    }
    fn other_verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "the retarder would hold it",
            Verdict::LittleInReserve => "little in reserve",
            Verdict::NeedsServiceBrakes => "needs the service brakes",
            Verdict::NoSafeSpeed => "no safe speed",
        }
    }
    fn worth_waits(&self) -> &'static str {
        "What a wrong value costs: told when a plan is shown."
    }
    fn worth_at_work(&self) -> &'static str {
        "What a wrong value costs: being worked out."
    }
    fn worth_no_descent(&self) -> &'static str {
        "What a wrong value costs: this road has no descent to try it on."
    }
    fn worth_not(&self) -> &'static str {
        "What a wrong value costs: could not be worked out."
    }
}
