//! What is written in the pictures, by whoever knows the language.

use super::layout::Lane;
use super::picture::Bracket;
use crate::format::Units;
use solver::HeatStep;

/// The words of a picture.
pub(crate) trait Labels {
    /// Name of a lane.
    fn lane(&self, lane: Lane) -> &'static str;
    /// Unit of a lane; empty where it has none.
    fn lane_unit(&self, lane: Lane, units: Units) -> &'static str;
    /// A descent of this length, m, above its bracket; the longest wording first.
    fn bracket(&self, descent: &Bracket, length_m: f64, units: Units) -> Vec<String>;
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
