//! Words of the class view: for an instructor, a projector and a room.

use super::say::capital;
use crate::format::{self, Units};
use crate::screen::Screen;
use crate::words::Spoken;
use solver::study::{RideEnd, Slip};
use solver::units::MetresPerSecond;

impl Spoken {
    /// How many times as fast as on the road.
    #[must_use]
    pub fn rate(&self, times: f64) -> String {
        format!("× {times:.0}")
    }

    /// The gear that keeps the reserve, and its speed; or that none does.
    #[must_use]
    pub fn class_reserve(&self, reserve: &str, kept: Option<(String, String)>) -> String {
        match kept {
            Some((gear, speed)) => self.class_reserve_kept(reserve, &gear, &speed),
            None => self.class_no_gear_keeps(reserve),
        }
    }

    /// What an instructor may say with a screen.
    #[must_use]
    pub fn notes(&self, screen: Screen) -> Vec<&'static str> {
        match screen {
            Screen::Roads => self.notes_roads().to_vec(),
            Screen::Forces => self.notes_forces().to_vec(),
            Screen::Run => self.notes_run().to_vec(),
            Screen::Pair => self.notes_pair().to_vec(),
            Screen::Exercises => self.notes_exercises().to_vec(),
        }
    }

    /// What is done, or met, otherwise.
    #[must_use]
    pub fn slip(&self, slip: Slip, units: Units) -> String {
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

    /// How both ended, a sentence a line.
    #[must_use]
    pub fn pair_end(&self, right: &RideEnd, wrong: &RideEnd, slip: Slip, units: Units) -> Vec<String> {
        let sooner = right.time.0 - wrong.time.0;
        let time = if sooner.abs() < SAME_TIME_S {
            self.no_time_apart().to_owned()
        } else {
            self.time_apart(sooner > 0.0, &self.time(sooner.abs()))
        };
        let hot = |end: &RideEnd| format::temperature(end.hottest_after_stop.0, units);
        let first = self.compared(&capital(&self.slip(slip, units)), &time, &hot(wrong), &hot(right));
        let limit = wrong.over_limit_from.map(|at| self.passes_limit(&format::place(at.0, units)));
        let hotter = wrong.hottest_after_stop.0 - right.hottest_after_stop.0;
        let little = (limit.is_none() && hotter < FORGIVEN_K).then(|| self.forgiven().to_owned());
        [Some(first), limit, little].into_iter().flatten().collect()
    }
}

/// Two rides that end within this time of each other, s, end at the same time.
const SAME_TIME_S: f64 = 30.0;
/// Brakes hotter by less than this, K, are not worth a warning of their own. Assumed.
const FORGIVEN_K: f64 = 20.0;
