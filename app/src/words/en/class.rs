//! English words of the class view.

use super::{English, minutes};
use crate::class::Screen;
use crate::format::{self, Units};
use crate::words::ClassWords;

impl ClassWords for English {
    fn screen(&self, screen: Screen) -> &'static str {
        match screen {
            Screen::Roads => "Roads",
            Screen::Forces => "Forces",
            Screen::Run => "The run",
            Screen::Pair => "Side by side",
            Screen::Exercises => "Exercises",
        }
    }
    fn idea(&self, screen: Screen) -> &'static str {
        match screen {
            Screen::Roads => "A road to talk about",
            Screen::Forces => "Where a gear’s line meets the hill, the truck settles",
            Screen::Run => "One truck, down this road, as planned",
            Screen::Pair => "One road, one start, one thing done otherwise",
            Screen::Exercises => "Work it out first, then look",
        }
    }
    fn notes(&self, screen: Screen) -> &'static [&'static str] {
        match screen {
            Screen::Roads => &[
                "Choose a road, and let the class say how they would come down it before anything is shown.",
                "Any GPX file can be dropped here too: the road that they drive every week is the best one.",
            ],
            Screen::Forces => &[
                "Ask first: which gear? Then drag the hill to its grade.",
                "The hill asks for nearly the same force at every speed; a low gear gives more of it. That is all there is to the choice of a gear.",
                "Drag the hill until the mark falls off the end of a line: above that end the engine would turn too fast.",
                "Add a tenth of the mass and see the mark move.",
            ],
            Screen::Run => &[
                "Stop before a crest and ask what should be engaged by now.",
                "Stop on a relief: is it over?",
                "The temperature is a calculation. What it cannot see, such as adjustment, is worse than what it can.",
            ],
            Screen::Pair => &[
                "Let the class bet before it starts: how many degrees, how many minutes?",
                "Stop where they part. Nothing can be seen from the seat yet.",
                "At the end ask what was won by it.",
            ],
            Screen::Exercises => &[
                "Print the blank sheet; the answer sheet has the same number.",
                "Figures are rounded in the steps as they are written, so that they can be followed by hand.",
            ],
        }
    }
    fn screens(&self) -> &'static str {
        "Screens of the class"
    }
    fn to_road_page(&self) -> &'static str {
        "Road page"
    }
    fn show_notes(&self) -> &'static str {
        "Notes"
    }
    fn keys(&self) -> &'static str {
        "Page down and page up: next and former screen. N: these notes. Space: start and stop the run. Arrows left and right: step it. Up and down: faster and slower. Home: from the start."
    }
    fn class_caution(&self) -> &'static str {
        "For teaching, from entries and recorded heights, which err. Not permission to descend: signs, the law and the maker’s limits come first."
    }
    fn grade_label(&self) -> &'static str {
        "Hill"
    }
    fn mass_label(&self) -> &'static str {
        "Mass"
    }
    fn stage_label(&self) -> &'static str {
        "Retarder"
    }
    fn forces_about(&self) -> &'static str {
        "Holding force against road speed: a rising or falling line for each gear, and across them what hills ask for. Below it is said where each gear settles."
    }
    fn holding_axis(&self) -> &'static str {
        "force"
    }
    fn none_settles(&self) -> &'static str {
        "No gear settles on this hill with this stage."
    }
    fn nothing_in_reserve(&self) -> &'static str {
        "At a crossing nothing is in reserve."
    }
    fn reserve_kept(&self, reserve: &str, kept: Option<(String, String)>) -> String {
        match kept {
            Some((gear, speed)) => format!("{reserve} in reserve: {gear}, at no more than {speed}."),
            None => format!("{reserve} in reserve: no gear."),
        }
    }
    fn print_screen(&self) -> &'static str {
        "Print"
    }
    fn profile_about(&self) -> &'static str {
        "The road from start to end, with a mark for each truck"
    }
    fn truck_about(&self) -> &'static str {
        "The truck on its slope, with an arrow for each force; the gauges tell the same in figures"
    }
    fn driving(&self) -> &'static str {
        "Being driven …"
    }
    fn no_ride(&self) -> &'static str {
        "This cannot be driven here: there is no descent with a safe speed on this road, or nothing to lose."
    }
    fn start(&self) -> &'static str {
        "Go"
    }
    fn stop(&self) -> &'static str {
        "Stop"
    }
    fn step(&self) -> &'static str {
        "Step"
    }
    fn anew(&self) -> &'static str {
        "From the start"
    }
    fn slower(&self) -> &'static str {
        "Slower"
    }
    fn faster(&self) -> &'static str {
        "Faster"
    }
    fn arrow_hill(&self) -> &'static str {
        "hill"
    }
    fn arrow_engine(&self) -> &'static str {
        "engine"
    }
    fn arrow_retarder(&self) -> &'static str {
        "retarder"
    }
    fn arrow_service(&self) -> &'static str {
        "service brakes"
    }
    fn arrow_resistance(&self) -> &'static str {
        "rolling, air"
    }
    fn gauge_speed(&self) -> &'static str {
        "speed"
    }
    fn gauge_gear(&self) -> &'static str {
        "gear"
    }
    fn gauge_stage(&self) -> &'static str {
        "stage"
    }
    fn gauge_engine(&self) -> &'static str {
        "engine"
    }
    fn gauge_power(&self) -> &'static str {
        "retarding"
    }
    fn gauge_brakes(&self) -> &'static str {
        "brakes"
    }
    fn after_stop(&self) -> &'static str {
        "if stopped hard"
    }
    fn exercise_back(&self) -> &'static str {
        "Former exercise"
    }
    fn exercise_on(&self) -> &'static str {
        "Next exercise"
    }
    fn slips(&self) -> &'static str {
        "What the second truck does otherwise"
    }
    fn as_planned(&self) -> &'static str {
        "as planned"
    }
    fn gear_high(&self) -> &'static str {
        "one gear higher"
    }
    fn somewhat_heavier(&self) -> &'static str {
        "10 % heavier"
    }
    fn faster_by(&self, speed: &str) -> String {
        format!("{speed} faster")
    }
    fn stage_lost(&self) -> &'static str {
        "stage lost"
    }
    fn hot_brakes(&self) -> &'static str {
        "hot brakes"
    }
    fn they_part(&self, at_m: f64, units: Units) -> String {
        format!("They part at {}.", format::distance(at_m, units))
    }
    fn nowhere_apart(&self) -> &'static str {
        "On this road it makes no difference that is worth naming."
    }
    fn time_apart(&self, sooner_s: f64) -> String {
        format!("{} {}", minutes(sooner_s.abs()), if sooner_s > 0.0 { "sooner" } else { "later" })
    }
    fn no_time_apart(&self) -> &'static str {
        "no time"
    }
    fn compared(&self, name: &str, time: &str, wrong: &str, right: &str) -> String {
        format!("{name}: {time}; after a hard stop {wrong} in place of {right}.")
    }
    fn passes_limit(&self, from: &str) -> String {
        format!(
            "From {from} on a hard stop would pass the limit. Here the brakes hold however hot they are; on the road they fade."
        )
    }
    fn forgiven(&self) -> &'static str {
        "This hill forgives it. The next one may not."
    }
}
