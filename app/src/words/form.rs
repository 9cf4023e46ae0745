//! Words of the truck's form that are not yet in the catalogues.

use crate::entries::{AtEngine, OnShaft};
use crate::format::Units;
use solver::plan::Verdict;
use solver::truck::{AxlePlace, BrakeKind};

/// Words of the form.
pub trait FormWords {
    /// Help with the presets.
    fn preset_hint(&self) -> &'static str;
    /// Head of what stands on plates and in papers.
    fn on_plate(&self) -> &'static str;
    /// Head of what a driver has in his head.
    fn in_head(&self) -> &'static str;
    /// What is folded away below them, and why.
    fn rest_sentence(&self) -> &'static str;
    /// Name of the engine speed in top gear, with the road speed at which it is read.
    fn top_gear_speed(&self, units: Units) -> &'static str;
    /// What axle ratio follows from it.
    fn is_axle_ratio(&self, ratio: &str) -> String;
    /// Why no axle ratio can follow from it, and what to look at.
    fn no_axle_ratio(&self, ratio: &str, range: &str) -> String;
    /// Help with the tyre sizes.
    fn tyre_hint(&self) -> &'static str;
    /// Help with the gear sets.
    fn gear_set_hint(&self) -> &'static str;
    /// Help with the gearboxes.
    fn transmission_hint(&self) -> &'static str;
    /// A retarder on the shaft, or a table instead.
    fn on_shaft(&self, it: OnShaft) -> &'static str;
    /// Help with it.
    fn on_shaft_hint(&self) -> &'static str;
    /// The question whether there is an engine brake.
    fn at_engine_label(&self) -> &'static str;
    /// An engine brake.
    fn at_engine(&self, it: AtEngine) -> &'static str;
    /// Help with it.
    fn at_engine_hint(&self) -> &'static str;
    /// Label of the lever's positions.
    fn lever_label(&self) -> &'static str;
    /// Help with them.
    fn lever_hint(&self) -> &'static str;
    /// Shares that are none of an even lever.
    fn own_lever(&self) -> &'static str;
    /// Label of the shape of the engine brake's power.
    fn shape_label(&self) -> &'static str;
    /// A shape: by an exponent, or as declared.
    fn shape(&self, by_exponent: bool) -> &'static str;
    /// Help with it.
    fn shape_hint(&self) -> &'static str;
    /// The axles of a group.
    fn axles_of(&self, place: AxlePlace) -> &'static str;
    /// Label of the brakes of a group.
    fn brakes_of(&self, place: AxlePlace) -> &'static str;
    /// A kind of brake.
    fn brake(&self, kind: BrakeKind) -> &'static str;
    /// No axles: no trailer.
    fn without_trailer(&self) -> &'static str;
    /// Help with the axles.
    fn axles_hint(&self) -> &'static str;
    /// “10 % wrong”.
    fn wrong_by(&self, by: &str) -> String;
    /// So many gears.
    fn so_many_gears(&self, gears: u8) -> String;
    /// So many stages.
    fn so_many_stages(&self, stages: u8) -> String;
    /// That neither gear nor speed changes.
    fn no_other(&self) -> &'static str;
    /// What another verdict means, in short.
    fn other_verdict(&self, verdict: Verdict) -> &'static str;
    /// That it is worked out when a plan is shown.
    fn worth_waits(&self) -> &'static str;
    /// That it is being worked out.
    fn worth_at_work(&self) -> &'static str;
    /// That the road has no descent to try it on.
    fn worth_no_descent(&self) -> &'static str;
    /// That it could not be worked out.
    fn worth_not(&self) -> &'static str;
}
