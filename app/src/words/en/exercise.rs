//! English words of exercises with worked answers.

use super::English;
use crate::exercise::{BrakeHeat, ControlSpeed, Exercise, GearTried};
use crate::words::say::capital;
use crate::words::{ExerciseWords, PlanWords, Term};
use solver::truck::{AxlePlace, Gear};

impl ExerciseWords for English {
    fn exercise_head(&self) -> &'static str {
        "Exercises"
    }
    fn exercise_sentence(&self) -> &'static str {
        "Sums on the descents of this road, for the truck and the day entered, with masses, grades and speeds varied. Print one sheet to work on and one with the answers."
    }
    fn sheet_head(&self, seed: u32) -> String {
        format!("Exercises, set {seed}")
    }
    fn blank_sheet(&self) -> &'static str {
        "Sheet to work on"
    }
    fn answer_sheet(&self) -> &'static str {
        "Sheet with answers"
    }
    fn another_set(&self) -> &'static str {
        "Another set"
    }
    fn sheet_caution(&self) -> &'static str {
        "These figures are for teaching. They are no advice for any road, truck or load: masses, grades and speeds are varied, and much is left out."
    }
    fn no_exercises(&self) -> &'static str {
        "No descent on this road is long enough to set exercises on."
    }
    fn stages_left_out(&self) -> &'static str {
        "On this day no retarder stage is recommended. Exercises on gear and stage are left out."
    }
    fn exercise(&self, number: usize, exercise: &Exercise) -> String {
        let subject = match exercise {
            Exercise::ControlSpeed(_) => "control speed",
            Exercise::GearChoice(_) => "choosing the gear",
            Exercise::BrakingWork(_) => "braking work",
            Exercise::Haste(_) => "time saved by going faster",
            Exercise::BrakeHeat(_) => "brake heat",
        };
        format!("Exercise {number}: {subject}")
    }
    fn given_label(&self) -> &'static str {
        "Given"
    }
    fn room_label(&self) -> &'static str {
        "Your working and answer"
    }
    fn steps_label(&self) -> &'static str {
        "Worked steps"
    }
    fn solution_label(&self) -> &'static str {
        "Answer"
    }
    fn ask_control_speed(&self, it: &ControlSpeed, mass: &str, grade: &str) -> String {
        format!(
            "A truck of {mass} is on a downgrade of {grade} in {}, {}, with no throttle and no service brakes. Does it settle at a speed, and at which?",
            self.gear(it.gear),
            self.stage(it.stage)
        )
    }
    fn ask_gear(&self, mass: &str, grade: &str, reserve: &str) -> String {
        format!(
            "A truck of {mass} is to be held on a downgrade of {grade} by engine and retarder alone, with {reserve} in reserve. Below stand gears at the fastest speed at which each is used to hold, with the engine speed and the holding force of the strongest stage that the driven axles grip. Which is the highest gear that keeps the reserve, and at what speed?"
        )
    }
    fn ask_work(&self, mass: &str, drop: &str, length: &str, speed: &str, share: &str) -> String {
        format!(
            "A truck of {mass} goes down {drop} over {length} of road at a steady {speed}. How much energy must engine, retarder and brakes take away? Engine and retarder carry {share} of it: how much is left for the service brakes?"
        )
    }
    fn ask_time(&self, length: &str, fast: &str, slow: &str) -> String {
        format!(
            "A descent is {length} long. How much time does a truck save that goes down it at {fast} instead of {slow}? By how much does its energy of motion grow?"
        )
    }
    fn ask_heat(&self, it: &BrakeHeat, length: &str, speed: &str, power: &str) -> String {
        format!(
            "On a descent of {length} at a steady {speed} the service brakes take {power} all the way; engine and resistance take the rest. How warm are the brakes of {} at the foot?",
            place(it)
        )
    }
    fn settles(&self, speed: &str, engine_speed: &str) -> String {
        format!(
            "It settles at about {speed} ({engine_speed}): there it holds as much as is left to hold back."
        )
    }
    fn slows_down(&self) -> &'static str {
        "It does not settle: it holds back more than needed at every speed of this gear, and slows down. A weaker stage or a higher gear may do."
    }
    fn gets_away_above(&self, speed: &str) -> String {
        format!(
            "It does not settle: it holds back more than needed below about {speed}, and above that it overruns. A truck that has got faster is not caught again. It needs a lower gear, engaged before the crest; else the service brakes must help."
        )
    }
    fn gets_away(&self) -> &'static str {
        "It does not settle: it overruns at every speed of this gear. It needs a lower gear, engaged before the crest, or a stronger stage where there is one; else the service brakes must help."
    }
    fn gear_chosen(&self, tried: &GearTried, speed: &str, engine_speed: &str, reserve: &str) -> String {
        format!(
            "{}, {}, at no more than {speed} ({engine_speed}), with {reserve} in reserve. It is engaged before the crest.",
            capital(&self.gear(tried.gear)),
            self.stage(tried.stage)
        )
    }
    fn no_gear_keeps(&self) -> &'static str {
        "None: not even the lowest gear keeps the reserve. A truck like this must not go down there: less mass or another road."
    }
    fn work_left(&self, left: &str, service: &str) -> String {
        format!("About {left} must be taken away; about {service} of that is left for the service brakes.")
    }
    fn time_saved(&self, time: &str, times: &str) -> String {
        format!(
            "About {time}, and the energy of motion is {times} times as large: so much more for the brakes in every stop. Whether engine and retarder would hold the truck at that speed is not asked here."
        )
    }
    fn warm_at_foot(&self, foot: &str, limit: &str, over: bool) -> String {
        let kept = if over {
            format!("over the limit of {limit} entered")
        } else {
            format!("not over the limit of {limit} entered, but with no stop in hand")
        };
        format!(
            "About {foot} at the foot: {kept}. Left out: a stop, brakes that do not share evenly, their adjustment, radiation, and cooling that differs from truck to truck by a factor of two and more."
        )
    }
    fn term(&self, term: Term) -> &'static str {
        match term {
            Term::RollingCoefficient => "Rolling resistance coefficient",
            Term::DragArea => "Drag area",
            Term::AirDensity => "Density of the air",
            Term::AirDensityRatio => "Density of the air, over that at sea level",
            Term::Headwind => "Headwind (a tailwind is negative)",
            Term::HoldingTable => "Holding force by engine speed and road speed",
            Term::HeatCapacity => "Heat that these brakes store",
            Term::Cooling => "Heat that they give off at this speed",
            Term::GroupShare => "Their share of the braking",
            Term::AirTemperature => "Air",
            Term::BrakesAtCrest => "Brakes at the crest",
            Term::Sine => "Sine of the angle of the road",
            Term::Cosine => "Cosine of the angle",
            Term::Gravity => "Gravity along the road",
            Term::Rolling => "Rolling resistance",
            Term::AgainstAir => "Speed against the air",
            Term::Air => "Air resistance",
            Term::Demand => "Left to hold back",
            Term::HoldingAgainstDemand => "Holding force, against what is left to hold back",
            Term::ComparedAt => "Reckoned at",
            Term::LengthInFeet => "Length in feet",
            Term::GravityWork => "Work of gravity",
            Term::RollingWork => "Taken by rolling resistance",
            Term::AirWork => "Taken by the air",
            Term::WorkLeft => "Left to be taken away",
            Term::CarriedWork => "Engine and retarder",
            Term::ServiceWork => "Service brakes",
            Term::SlowTime => "Time at the slower speed",
            Term::FastTime => "Time at the faster speed",
            Term::TimeSaved => "Time saved",
            Term::MotionEnergy => "Energy of motion, faster over slower",
            Term::GroupPower => "Power at these brakes",
            Term::TimeDown => "Time down",
            Term::TimeConstant => "Time constant: heat stored over heat given off",
            Term::Settled => "Temperature that they would reach in the long run",
            Term::Ahead => "Share of that rise still ahead at the foot",
            Term::AtFoot => "At the foot",
        }
    }
    fn gear_at(&self, gear: Gear, speed: &str) -> String {
        format!("{} at {speed}", capital(&self.gear(gear)))
    }
    fn enough(&self, enough: bool) -> &'static str {
        if enough { "enough" } else { "too little" }
    }
}

fn place(it: &BrakeHeat) -> &'static str {
    match (it.place, it.axles) {
        (AxlePlace::Steer, 1) => "the steer axle",
        (AxlePlace::Steer, _) => "the steer axles",
        (AxlePlace::Drive, 1) => "the driven axle",
        (AxlePlace::Drive, _) => "the driven axles",
        (AxlePlace::Trailer, 1) => "the trailer axle",
        (AxlePlace::Trailer, _) => "the trailer axles",
    }
}
