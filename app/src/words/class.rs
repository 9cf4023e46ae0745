//! Words of the class view: for an instructor, a projector and a room.

use super::say::capital;
use crate::class::Screen;
use crate::format::{self, Units};
use solver::study::{RideEnd, Slip};
use solver::units::MetresPerSecond;

/// Words of the class view.
pub trait ClassWords: Send + Sync {
    /// Name of a screen.
    fn screen(&self, screen: Screen) -> &'static str;
    /// The one idea of a screen.
    fn idea(&self, screen: Screen) -> &'static str;
    /// What the person in front may say there, a sentence each.
    fn notes(&self, screen: Screen) -> &'static [&'static str];
    /// Name of the buttons that lead from screen to screen.
    fn screens(&self) -> &'static str;
    /// Leads to the road page.
    fn to_road_page(&self) -> &'static str;
    /// Shows or hides the notes.
    fn show_notes(&self) -> &'static str;
    /// Which keys do what.
    fn keys(&self) -> &'static str;
    /// What none of it is, and who comes first.
    fn class_caution(&self) -> &'static str;
    /// Label of the grade.
    fn grade_label(&self) -> &'static str;
    /// Label of the mass.
    fn mass_label(&self) -> &'static str;
    /// Label of the stage.
    fn stage_label(&self) -> &'static str;
    /// What the picture of forces shows, for who cannot see it.
    fn forces_about(&self) -> &'static str;
    /// Name of the upward axis.
    fn holding_axis(&self) -> &'static str;
    /// Where no gear settles with this stage.
    fn none_settles(&self) -> &'static str;
    /// Where a line meets the hill all that holds is used up.
    fn nothing_in_reserve(&self) -> &'static str;
    /// Which gear holds with a reserve, up to which speed; `None`: none does.
    fn reserve_kept(&self, reserve: &str, kept: Option<(String, String)>) -> String;
    /// Prints what is on the screen.
    fn print_screen(&self) -> &'static str;
    /// What the profile is, for who cannot see it.
    fn profile_about(&self) -> &'static str;
    /// What the picture of the truck shows.
    fn truck_about(&self) -> &'static str;
    /// A ride is being worked out.
    fn driving(&self) -> &'static str;
    /// This cannot be driven on this road with this truck.
    fn no_ride(&self) -> &'static str;
    /// Starts the run.
    fn start(&self) -> &'static str;
    /// Stops it.
    fn stop(&self) -> &'static str;
    /// Goes one step on.
    fn step(&self) -> &'static str;
    /// Goes back to the start.
    fn anew(&self) -> &'static str;
    /// Makes it slower.
    fn slower(&self) -> &'static str;
    /// Makes it faster.
    fn faster(&self) -> &'static str;
    /// How many times as fast as on the road.
    fn rate(&self, times: f64) -> String {
        format!("× {times:.0}")
    }
    /// Name of the force of the hill.
    fn arrow_hill(&self) -> &'static str;
    /// Of the engine's pull.
    fn arrow_engine(&self) -> &'static str;
    /// Of retarder and motoring engine.
    fn arrow_retarder(&self) -> &'static str;
    /// Of the service brakes.
    fn arrow_service(&self) -> &'static str;
    /// Of rolling and air.
    fn arrow_resistance(&self) -> &'static str;
    /// Label of the speed.
    fn gauge_speed(&self) -> &'static str;
    /// Label of the gear.
    fn gauge_gear(&self) -> &'static str;
    /// Label of the retarder's stage.
    fn gauge_stage(&self) -> &'static str;
    /// Label of the engine speed.
    fn gauge_engine(&self) -> &'static str;
    /// Label of the retarding power.
    fn gauge_power(&self) -> &'static str;
    /// Label of the brake temperature.
    fn gauge_brakes(&self) -> &'static str;
    /// Label of that after one hard stop.
    fn after_stop(&self) -> &'static str;
    /// Back to the exercise before.
    fn exercise_back(&self) -> &'static str;
    /// On to the next exercise.
    fn exercise_on(&self) -> &'static str;
    /// Name of the choice of what is done otherwise.
    fn slips(&self) -> &'static str;
    /// What is done, or met, otherwise.
    fn slip(&self, slip: Slip, units: Units) -> String {
        let faster = MetresPerSecond::from_kmh(Slip::FASTER_KMH).0;
        match slip {
            Slip::Planned => self.as_planned().to_owned(),
            Slip::GearHigh => self.gear_high().to_owned(),
            Slip::Heavier => self.somewhat_heavier().to_owned(),
            Slip::Faster => self.faster_by(&format::met_speed(faster, units)),
            Slip::StageLost => self.stage_lost().to_owned(),
            Slip::HotBrakes => self.hot_brakes().to_owned(),
        }
    }
    /// Nothing is done otherwise.
    fn as_planned(&self) -> &'static str;
    /// One gear higher than planned.
    fn gear_high(&self) -> &'static str;
    /// A tenth heavier than entered.
    fn somewhat_heavier(&self) -> &'static str;
    /// Faster than planned by a speed.
    fn faster_by(&self, speed: &str) -> String;
    /// A stage fails.
    fn stage_lost(&self) -> &'static str;
    /// The brakes are hot at the start.
    fn hot_brakes(&self) -> &'static str;
    /// Where two rides part.
    fn they_part(&self, at_m: f64, units: Units) -> String;
    /// They do nowhere.
    fn nowhere_apart(&self) -> &'static str;
    /// How both ended, a sentence a line.
    fn pair_end(&self, right: &RideEnd, wrong: &RideEnd, slip: Slip, units: Units) -> Vec<String> {
        let sooner = right.time.0 - wrong.time.0;
        let time = if sooner.abs() < SAME_TIME_S {
            self.no_time_apart().to_owned()
        } else {
            self.time_apart(sooner)
        };
        let hot = |end: &RideEnd| format::temperature(end.hottest_after_stop.0, units);
        let first = self.compared(&capital(&self.slip(slip, units)), &time, &hot(wrong), &hot(right));
        let limit = wrong.over_limit_from.map(|at| self.passes_limit(&format::distance(at.0, units)));
        let hotter = wrong.hottest_after_stop.0 - right.hottest_after_stop.0;
        let little = (limit.is_none() && hotter < FORGIVEN_K).then(|| self.forgiven().to_owned());
        [Some(first), limit, little].into_iter().flatten().collect()
    }
    /// Arriving sooner by so many seconds, or later where negative.
    fn time_apart(&self, sooner_s: f64) -> String;
    /// Arriving at the same time.
    fn no_time_apart(&self) -> &'static str;
    /// What it came to: the time, and the brakes after a hard stop, otherwise and as planned.
    fn compared(&self, name: &str, time: &str, wrong: &str, right: &str) -> String;
    /// From where on a hard stop would pass the limit, and that brakes fade.
    fn passes_limit(&self, from: &str) -> String;
    /// It made the brakes little hotter, this time.
    fn forgiven(&self) -> &'static str;
}

/// Two rides that end within this time of each other, s, end at the same time.
const SAME_TIME_S: f64 = 30.0;
/// Brakes hotter by less than this, K, are not worth a warning of their own. Assumed.
const FORGIVEN_K: f64 = 20.0;
