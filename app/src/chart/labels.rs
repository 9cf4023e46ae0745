//! What is written in the pictures, by whoever knows the language.

use super::layout::Lane;
use super::picture::{Bracket, Hold};
use crate::format::Units;
use solver::{HeatStep, Verdict};

/// The words of a picture.
pub(crate) trait Labels {
    /// Name of a lane, short enough for the column left of it.
    fn lane_title(&self, lane: Lane) -> &'static str;
    /// A descent beside its number: its length and its crest, m; its steepest grade where it is to be told.
    /// The longest wording first.
    fn bar(&self, descent: &Bracket, at_m: [f64; 2], steepest: Option<f64>, units: Units) -> Vec<String>;
    /// A change of gear.
    fn change(&self, gears: [u8; 2]) -> String;
    /// On which grade it happens, rise over run.
    fn on_grade(&self, grade: f64) -> String;
    /// A change down on the hill, before which the truck is braked.
    fn brake_then(&self, leg: &Hold, units: Units) -> String;
    /// A verdict.
    fn verdict(&self, verdict: Verdict) -> &'static str;
    /// A place along the road, m from the start, without its unit.
    fn place(&self, at_m: f64, units: Units) -> String;
    /// A mile, before a figure.
    fn mile(&self) -> &'static str;
    /// A stage, short enough for its band.
    fn short_stage(&self, stage: u8) -> String;
    /// A step of brake heat.
    fn heat_step(&self, step: HeatStep) -> &'static str;
    /// On a stretch that was not assessed.
    fn not_assessed(&self) -> &'static str;
    /// At the line of the speed limit, m/s.
    fn speed_limit(&self, limit_mps: f64, units: Units) -> String;
    /// Beside a sample of the line of speeds that curves allow.
    fn bend_caps(&self) -> &'static str;
    /// At the line of the greatest brake temperature, °C.
    fn heat_limit(&self, limit_c: f64, units: Units) -> String;
    /// Beside a sample of the line of temperatures after a stop.
    fn after_stop(&self) -> &'static str;
    /// Below the arrow to the north.
    fn north(&self) -> &'static str;
    /// At the start of the road and at its end.
    fn ends(&self) -> [&'static str; 2];
}
