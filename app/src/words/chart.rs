//! Words of the road picture.

use super::CardWords;
use super::say::UNKNOWN;
use crate::chart::{Bracket, Here, Lane, Reading, ReadoutCell};
use crate::format::{self, Units};
use solver::HeatStep;

/// Words of the road picture.
pub trait ChartWords: CardWords {
    /// Name of the whole picture.
    fn picture(&self) -> &'static str;
    /// Before the readings that may fill the profile.
    fn fill_by(&self) -> &'static str;
    /// A reading, on its button.
    fn reading(&self, reading: Reading) -> &'static str;
    /// A value of a reading in the legend: a gear, a stage, a step of heat, speed or grade.
    fn step(&self, reading: Reading, value: u8, units: Units) -> String;
    /// Name of the zoom buttons together.
    fn zoom(&self) -> &'static str;
    /// Closer.
    fn zoom_in(&self) -> &'static str;
    /// Less close.
    fn zoom_out(&self) -> &'static str;
    /// The whole road.
    fn zoom_all(&self) -> &'static str;
    /// Title of a lane.
    fn lane(&self, lane: Lane) -> &'static str;
    /// Unit of a lane; empty where it has none.
    fn lane_unit(&self, lane: Lane, units: Units) -> &'static str;
    /// What the thin line of the temperature lane is.
    fn after_stop(&self) -> &'static str;
    /// A stage, short enough for its band.
    fn short_stage(&self, stage: u8) -> String;
    /// A heat step.
    fn heat(&self, step: HeatStep) -> &'static str;
    /// The bars of the speed lane: what curves allow.
    fn bend_caps(&self) -> &'static str;
    /// Works out only what the window shows.
    fn only_this(&self) -> &'static str;
    /// Where the road was not assessed.
    fn not_assessed(&self) -> &'static str;
    /// The limit line of the speed lane.
    fn speed_limit(&self, limit_mps: f64, units: Units) -> String;
    /// The limit line of the temperature lane.
    fn heat_limit(&self, limit_c: f64, units: Units) -> String;
    /// A descent above its bracket, the longest wording first.
    fn bracket(&self, descent: &Bracket, length_m: f64, units: Units) -> Vec<String>;
    /// Name of the cursor.
    fn cursor(&self) -> &'static str;
    /// What the cursor stands on, in one sentence.
    fn spoken(&self, here: &Here, units: Units) -> String;
    /// Head of a cell of the readout.
    fn readout_head(&self, cell: ReadoutCell, here: &Here, units: Units) -> String;
    /// Content of a cell of the readout.
    fn readout(&self, cell: ReadoutCell, here: &Here, units: Units) -> String {
        let temperature = |celsius: Option<f64>| or_unknown(celsius, |it| format::temperature(it, units));
        match cell {
            ReadoutCell::At => {
                let kilometres = format::distance(here.at_m, Units::Metric);
                format!(
                    "{kilometres} · {} {}",
                    self.mile(),
                    format::distance_number(here.at_m, Units::Imperial)
                )
            }
            ReadoutCell::Grade => or_unknown(here.grade, |it| {
                format!("{} ± {}", format::grade(it.grade), format::tenths(100.0 * it.plus_minus))
            }),
            ReadoutCell::Height => or_unknown(here.height_m, |it| format::height(it, units)),
            ReadoutCell::GearStage => {
                let gear = or_unknown(here.gear, |it| it.to_string());
                let stage = or_unknown(here.stage, |it| self.short_stage(it));
                format!("{gear} · {stage}")
            }
            ReadoutCell::Speed => {
                let speed = or_unknown(here.speed, |it| format::hold_speed(it, units));
                let engine = or_unknown(here.engine_speed, format::engine_speed);
                format!("{speed} · {engine}")
            }
            ReadoutCell::Carried => or_unknown(here.carried, format::margin),
            ReadoutCell::Brakes => temperature(here.temperature),
            ReadoutCell::IfStopped => temperature(here.after_stop),
        }
    }
    /// What lies about the cursor and what comes next.
    fn surroundings(&self, here: &Here, units: Units) -> String;
    /// Name of the strip of the whole road.
    fn strip(&self) -> &'static str;
    /// Name of the plan shape.
    fn plan_shape(&self) -> &'static str;
    /// Where the road starts.
    fn start(&self) -> &'static str;
    /// Where it ends.
    fn end(&self) -> &'static str;
    /// North, a letter.
    fn north(&self) -> &'static str;
}

fn or_unknown<T>(value: Option<T>, text: impl Fn(T) -> String) -> String {
    value.map_or_else(|| UNKNOWN.to_owned(), text)
}
