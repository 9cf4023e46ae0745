//! Words of the page's frame: names, buttons, files, progress, trouble.

use crate::format::Units;
use crate::message::Phase;
use crate::trouble::WorkTrouble;

/// Words of the page's frame.
pub trait PageWords {
    /// For which truck and day the answer is; `facts` tell them.
    fn made_for(&self, facts: &str) -> String;
    /// Leads to the entries of the truck.
    fn to_truck(&self) -> &'static str;
    /// Leads to the class view.
    fn to_class(&self) -> &'static str;
    /// Label of the size of buttons and fields.
    fn targets(&self) -> &'static str;
    /// As usual.
    fn usual_targets(&self) -> &'static str;
    /// Large, for hands in gloves.
    fn large_targets(&self) -> &'static str;
    /// What the page is, in a line.
    fn purpose(&self) -> &'static str;
    /// Link to the section of the road.
    fn road_section(&self) -> &'static str;
    /// Link to the section of the descents.
    fn descents_section(&self) -> &'static str;
    /// Name of the navigation, for screen readers.
    fn sections(&self) -> &'static str;
    /// Jumps over the header.
    fn skip_to_answer(&self) -> &'static str;
    /// Group of unit buttons.
    fn units(&self) -> &'static str;
    /// Metric button.
    fn metric(&self) -> &'static str;
    /// Imperial button.
    fn imperial(&self) -> &'static str;
    /// Group of theme buttons.
    fn theme(&self) -> &'static str;
    /// Theme buttons.
    fn light(&self) -> &'static str;
    /// Dark theme.
    fn night(&self) -> &'static str;
    /// As the machine is set.
    fn system(&self) -> &'static str;
    /// Button that chooses a file.
    fn choose_file(&self) -> &'static str;
    /// Beside it.
    fn or_drop(&self) -> &'static str;
    /// While a file hovers over the page.
    fn drop_here(&self) -> &'static str;
    /// Nothing leaves the machine.
    fn stays_here(&self) -> &'static str;
    /// Mark of the demo.
    fn demo_mark(&self) -> &'static str;
    /// What the demo is.
    fn demo_sentence(&self) -> &'static str;
    /// Button back to the demo.
    fn show_demo(&self) -> &'static str;
    /// Button that turns the road around.
    fn reverse(&self) -> &'static str;
    /// Mark of a road that was turned around.
    fn reversed_mark(&self) -> &'static str;
    /// Label of the choice of tracks.
    fn course(&self) -> &'static str;
    /// Asks which track of a file is meant.
    fn which_track(&self, file: &str, count: usize) -> String;
    /// Why a track cannot be chosen.
    fn course_unusable(&self) -> &'static str;
    /// Leaves what was asked about as it was.
    fn leave_it(&self) -> &'static str;
    /// Asks for the order of several files.
    fn which_order(&self, count: usize) -> String;
    /// What comes of it.
    fn which_order_sentence(&self) -> &'static str;
    /// Joins the files.
    fn join(&self, count: usize) -> String;
    /// Moves a file ahead.
    fn leg_up(&self, name: &str) -> String;
    /// Moves a file back.
    fn leg_down(&self, name: &str) -> String;
    /// Drives a file backwards.
    fn turn_leg(&self) -> &'static str;
    /// Leaves a file out.
    fn leave_leg(&self, name: &str) -> String;
    /// Asks whether files that lie on each other are the same road.
    fn same_question(&self, count: usize) -> String;
    /// What comes of each choice.
    fn same_sentence(&self) -> &'static str;
    /// Makes one road of recordings.
    fn combine(&self, count: usize) -> String;
    /// That two files of several lie on each other, and how to make one road of them.
    fn two_alike(&self, first: &str, second: &str) -> String;
    /// Asks the same of a file that was opened and one that was there before.
    fn meets(&self, new: &str, before: &str) -> String;
    /// Keeps the one before beside it.
    fn compare_both(&self) -> &'static str;
    /// Puts both in order, to be driven one after the other.
    fn join_both(&self) -> &'static str;
    /// Of how many recordings a road was made.
    fn combined(&self, count: usize, files: &str) -> String;
    /// Has these files in hand again.
    fn take_apart(&self) -> &'static str;
    /// What part of the road is shown, m from its start as recorded.
    fn part_of(&self, from_m: f64, to_m: f64, units: Units) -> String;
    /// Back to the whole road.
    fn whole_road(&self) -> &'static str;
    /// One choice.
    fn course_choice(&self, number: usize, name: &str, route: bool, length: &str) -> String;
    /// Phase of work.
    fn phase(&self, phase: Phase) -> &'static str;
    /// Starting, before anything is known.
    fn starting(&self) -> &'static str;
    /// Cancel button.
    fn cancel(&self) -> &'static str;
    /// Closes a message.
    fn close(&self) -> &'static str;
    /// Tries again.
    fn try_again(&self) -> &'static str;
    /// Head of the box for a file that cannot be used.
    fn trouble_head(&self, trouble: &WorkTrouble) -> String;
    /// What to do about it.
    fn trouble(&self, trouble: &WorkTrouble, units: Units) -> String;
    /// What is still shown.
    fn former_stays(&self) -> &'static str;
    /// The result below does not fit the entries.
    fn not_current(&self) -> &'static str;
    /// Before the name of the entry that is wrong.
    fn check_entry(&self) -> &'static str;
    /// Writes the file with waypoints.
    fn export(&self) -> &'static str;
    /// What is in it.
    fn export_sentence(&self) -> &'static str;
    /// Name of the exported file.
    fn export_name(&self, road: &str) -> String;
    /// Without a road.
    fn no_road(&self) -> &'static str;
    /// What to do without a road.
    fn no_road_sentence(&self) -> &'static str;
}
