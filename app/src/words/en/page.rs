//! English words of the page's frame.

use super::English;
use crate::format::{self, Units};
use crate::message::Phase;
use crate::trouble::WorkTrouble;
use crate::words::say::file_name;
use crate::words::{EntryWords, PageWords, RoadWords};

impl PageWords for English {
    fn made_for(&self, facts: &str) -> String {
        format!("Worked out for: {facts}.")
    }
    fn to_truck(&self) -> &'static str {
        "Is this your truck and your day? Enter yours."
    }
    fn to_class(&self) -> &'static str {
        "Class"
    }
    fn targets(&self) -> &'static str {
        "Size of buttons and fields"
    }
    fn usual_targets(&self) -> &'static str {
        "bare hands"
    }
    fn large_targets(&self) -> &'static str {
        "gloves"
    }
    fn purpose(&self) -> &'static str {
        "How to come down each hill of a road: gear, retarder stage, speed, brake heat"
    }
    fn road_section(&self) -> &'static str {
        "Road"
    }
    fn descents_section(&self) -> &'static str {
        "Descents"
    }
    fn sections(&self) -> &'static str {
        "Sections of this page"
    }
    fn skip_to_answer(&self) -> &'static str {
        "Skip to the answer"
    }
    fn units(&self) -> &'static str {
        "Units"
    }
    fn metric(&self) -> &'static str {
        "km/h · m · t"
    }
    fn imperial(&self) -> &'static str {
        "mph · ft · lb"
    }
    fn theme(&self) -> &'static str {
        "Light or night"
    }
    fn light(&self) -> &'static str {
        "light"
    }
    fn night(&self) -> &'static str {
        "night"
    }
    fn system(&self) -> &'static str {
        "auto"
    }
    fn choose_file(&self) -> &'static str {
        "Choose a GPX file"
    }
    fn or_drop(&self) -> &'static str {
        "or drop one anywhere on the page"
    }
    fn drop_here(&self) -> &'static str {
        "Drop the GPX file: it is read on this machine only"
    }
    fn stays_here(&self) -> &'static str {
        "Nothing leaves this machine."
    }
    fn demo_mark(&self) -> &'static str {
        "invented demo"
    }
    fn demo_sentence(&self) -> &'static str {
        "This is an invented road, not a real pass. Choose your own GPX file, or drop it anywhere on the page; it stays on this machine."
    }
    fn show_demo(&self) -> &'static str {
        "Show the demo"
    }
    fn reverse(&self) -> &'static str {
        "Reverse"
    }
    fn reversed_mark(&self) -> &'static str {
        "other way round than recorded"
    }
    fn course(&self) -> &'static str {
        "Track in the file"
    }
    fn which_track(&self, file: &str, count: usize) -> String {
        format!("{file} holds {count} roads. Which one will you drive?")
    }
    fn course_unusable(&self) -> &'static str {
        "without heights, or too short"
    }
    fn leave_it(&self) -> &'static str {
        "Leave it"
    }
    fn which_order(&self, count: usize) -> String {
        format!("{count} files: in which order are they driven?")
    }
    fn which_order_sentence(&self) -> &'static str {
        "They are joined from top to bottom. Where one ends more than 2 km from the start of the next, the order or a direction is wrong."
    }
    fn join(&self, count: usize) -> String {
        if count == 1 { "Open this file".to_owned() } else { format!("Join {count} files") }
    }
    fn leg_up(&self, name: &str) -> String {
        format!("Drive {name} earlier")
    }
    fn leg_down(&self, name: &str) -> String {
        format!("Drive {name} later")
    }
    fn turn_leg(&self) -> &'static str {
        "Backwards"
    }
    fn leave_leg(&self, name: &str) -> String {
        format!("Leave {name} out")
    }
    fn same_question(&self, count: usize) -> String {
        format!("{count} files lie on each other. Do they show the same road?")
    }
    fn same_sentence(&self) -> &'static str {
        "As the same road they become one: the heights of all are used, and where they differ by more than they may be off, the steeper one is used and the place is told. The plan is never faster than the faster of them alone. Nothing is combined by itself."
    }
    fn combine(&self, count: usize) -> String {
        format!("Same road: combine {count} recordings")
    }
    fn two_alike(&self, first: &str, second: &str) -> String {
        format!(
            "{first} and {second} lie on each other. To combine them into one road, leave the other files out."
        )
    }
    fn meets(&self, new: &str, before: &str) -> String {
        format!("{new} lies on {before}. Do they show the same road?")
    }
    fn compare_both(&self) -> &'static str {
        "Compare: both side by side"
    }
    fn join_both(&self) -> &'static str {
        "Join: one after the other"
    }
    fn combined(&self, count: usize, files: &str) -> String {
        format!("One road of {count} recordings: {files}")
    }
    fn take_apart(&self) -> &'static str {
        "Take them apart"
    }
    fn part_of(&self, from_m: f64, to_m: f64, units: Units) -> String {
        format!("A part of the road: {} as recorded.", format::span(from_m, to_m, units))
    }
    fn whole_road(&self) -> &'static str {
        "Take the whole road"
    }
    fn course_choice(&self, number: usize, name: &str, route: bool, length: &str) -> String {
        let kind = if route { "route" } else { "track" };
        if name.is_empty() {
            format!("{number} · unnamed {kind} · {length}")
        } else {
            format!("{number} · {name} ({kind}) · {length}")
        }
    }
    fn phase(&self, phase: Phase) -> &'static str {
        match phase {
            Phase::Reading => "Reading the file",
            Phase::Surveying => "Working out heights and grades",
            Phase::Planning => "Working out gears, speeds and heat",
        }
    }
    fn starting(&self) -> &'static str {
        "Starting"
    }
    fn cancel(&self) -> &'static str {
        "Cancel"
    }
    fn close(&self) -> &'static str {
        "Close"
    }
    fn try_again(&self) -> &'static str {
        "Try again"
    }
    fn trouble_head(&self, trouble: &WorkTrouble) -> String {
        match trouble {
            WorkTrouble::File { name, .. } => format!("“{name}” cannot be used"),
            WorkTrouble::ManyFiles => "Too many files at once".to_owned(),
            WorkTrouble::NotAFile => "That was not a file".to_owned(),
            WorkTrouble::BuiltInMissing => "The invented road could not be loaded".to_owned(),
            WorkTrouble::CannotStart => "The calculation could not be started".to_owned(),
            WorkTrouble::Stopped { .. } => "The calculation stopped on an error of its own".to_owned(),
            WorkTrouble::Cancelled => "Cancelled".to_owned(),
            WorkTrouble::Truck { .. } => "This truck cannot be worked out".to_owned(),
            WorkTrouble::TruckFile { .. } => "That truck file cannot be used".to_owned(),
            WorkTrouble::ProjectFile { .. } => "That project cannot be used".to_owned(),
            WorkTrouble::CannotExport => "The file could not be saved".to_owned(),
            WorkTrouble::NoPicture => "The card could not be saved as a picture".to_owned(),
        }
    }
    fn trouble(&self, trouble: &WorkTrouble, units: Units) -> String {
        match trouble {
            WorkTrouble::File { error, .. } => self.file_error(error),
            WorkTrouble::ManyFiles => "Up to 20 files can be joined to one road. Choose fewer.".to_owned(),
            WorkTrouble::NotAFile => "Drop a GPX file, or use the button to choose one.".to_owned(),
            WorkTrouble::BuiltInMissing => {
                "The page itself works: choose a GPX file of your own.".to_owned()
            }
            WorkTrouble::CannotStart => {
                "The browser did not load the part that calculates. Reload the page; if that does not help, use a browser of the last few years with WebAssembly and workers switched on.".to_owned()
            }
            WorkTrouble::Stopped { detail } => format!(
                "It was started again, and nothing that you entered is lost. Change the entry made last, or try again. For a report: {detail}"
            ),
            WorkTrouble::Cancelled => {
                "The figures below still belong to the former entries. Change an entry, or try again, to work them out.".to_owned()
            }
            WorkTrouble::Truck { error } => self.truck_error(error, units),
            WorkTrouble::TruckFile { error } | WorkTrouble::ProjectFile { error } => self.truck_file_error(error, units),
            WorkTrouble::NoPicture => {
                "This browser does not draw it. Print the card instead: printing to a file makes a PDF of it.".to_owned()
            }
            WorkTrouble::CannotExport => {
                "The part that writes it could not be loaded, or the browser did not allow saving. Reload the page, or try another browser.".to_owned()
            }
        }
    }
    fn former_stays(&self) -> &'static str {
        "The road shown below is the former one."
    }
    fn not_current(&self) -> &'static str {
        "The figures shown belong to the entries or the road before."
    }
    fn check_entry(&self) -> &'static str {
        "Check this entry:"
    }
    fn export(&self) -> &'static str {
        "Save crests and gear changes as GPX"
    }
    fn export_sentence(&self) -> &'static str {
        "Waypoints at each crest, foot, and change of gear or stage, for a device that shows them."
    }
    fn export_name(&self, road: &str) -> String {
        file_name(road, "road", "-descents.gpx")
    }
    fn no_road(&self) -> &'static str {
        "No road yet"
    }
    fn no_road_sentence(&self) -> &'static str {
        "Choose a GPX file with heights, or drop it anywhere on this page. It is read on this machine and goes nowhere else."
    }
}
