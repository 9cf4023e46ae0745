//! What arguments range over.

use crate::chart::Lane;
use crate::down::Told;
use crate::format::Units;
use crate::tell::TwoRow;
use solver::day::{ServiceBrakes, Withheld};
use solver::limits::{ALL as LIMITS, Entry};
use solver::motion::Unusable;
use solver::plan::{ChangeHow, Governs, Note, Verdict};
use solver::road::Class;
use solver::truck::{AxlePlace, Gear, Preset, Stage, Transmission, Truck};
use solver::units::MetresPerSecond;
use workers::message::Phase;

pub(super) fn counts() -> [usize; 6] {
    [0, 1, 2, 5, 12, 12_345]
}
pub(super) fn bytes() -> [u8; 5] {
    [0, 1, 2, 5, 12]
}
pub(super) fn numbers() -> [u32; 5] {
    [0, 1, 2, 5, 12_345]
}
pub(super) fn shares() -> [f32; 4] {
    [0.0, 0.126, 0.5, 1.0]
}
/// Minutes on both sides of a word, lengths of each unit, and what is below zero.
pub(super) fn measures() -> [f64; 17] {
    [
        0.0, 0.3, 0.7, 1.0, 2.0, 5.0, 29.0, 31.0, 61.0, 89.0, 95.0, 1_234.5, 3_569.0, 3_601.0, 12_345.6,
        -1.0, -95.0,
    ]
}
pub(super) fn flags() -> [bool; 2] {
    [false, true]
}
pub(super) fn units() -> [Units; 2] {
    [Units::Metric, Units::Imperial]
}
pub(super) fn perhaps_bytes() -> [Option<u8>; 4] {
    [None, Some(1), Some(2), Some(5)]
}
pub(super) fn perhaps_texts() -> [Option<&'static str>; 3] {
    [None, Some(""), Some("⟨lower⟩")]
}
pub(super) fn perhaps_pairs() -> [Option<(String, String)>; 2] {
    [None, Some(("⟨gear⟩".to_owned(), "⟨speed⟩".to_owned()))]
}
pub(super) fn entries() -> [Entry; LIMITS.len()] {
    LIMITS.each_ref().map(|limit| limit.entry)
}
pub(super) fn lanes() -> [Lane; 6] {
    [Lane::Height, Lane::Gear, Lane::Stage, Lane::Heat, Lane::Speed, Lane::Temperature]
}
pub(super) fn unusable() -> [Unusable; 4] {
    [Unusable::Slippery, Unusable::Grip, Unusable::CutOut, Unusable::Unlocked]
}
pub(super) fn transmissions() -> [Transmission; 3] {
    [
        Transmission::Manual,
        Transmission::Automated,
        Transmission::TorqueConverter { lock_up_gear: 2.0, lock_up_rpm: 900.0 },
    ]
}
pub(super) fn service_brakes() -> [ServiceBrakes; 2] {
    [ServiceBrakes::InReserve, ServiceBrakes::MaySnub]
}
pub(super) fn changes() -> [ChangeHow; 2] {
    [ChangeHow::Down, ChangeHow::Up]
}
pub(super) fn phases() -> [Phase; 3] {
    [Phase::Reading, Phase::Surveying, Phase::Planning]
}
pub(super) fn verdicts() -> [Verdict; 4] {
    [Verdict::RetarderHolds, Verdict::LittleInReserve, Verdict::NeedsServiceBrakes, Verdict::NoSafeSpeed]
}
pub(super) fn classes() -> [Class; 3] {
    [Class::Good, Class::Fair, Class::Poor]
}
pub(super) fn axle_places() -> [AxlePlace; 3] {
    [AxlePlace::Steer, AxlePlace::Drive, AxlePlace::Trailer]
}
pub(super) fn governs() -> [Governs; 7] {
    [
        Governs::SpeedLimit,
        Governs::Posted,
        Governs::EngineSpeed,
        Governs::Control,
        Governs::Curve,
        Governs::Grip,
        Governs::Heat,
    ]
}
pub(super) fn notes() -> [Note; 12] {
    [
        Note::StagesWithheld(Withheld::Snow),
        Note::StagesWithheld(Withheld::Ice),
        Note::StagesWithheld(Withheld::EmptyInTheWet),
        Note::StagesWithheld(Withheld::NoTrailerInTheWet),
        Note::WetCap,
        Note::HoldByHand,
        Note::StartsInDescent,
        Note::PartlyUnassessed,
        Note::PoorHeights,
        Note::HotElsewhere,
        Note::CannotClimb,
        Note::ShiftsUpByItself,
    ]
}
pub(super) fn two_rows() -> [TwoRow; 22] {
    use TwoRow as It;
    [
        It::Truck,
        It::Worst,
        It::Descents,
        It::Hold,
        It::Hottest,
        It::Braked,
        It::Service,
        It::Holding,
        It::Down,
        It::Up,
        It::Crawl,
        It::Time,
        It::Rise,
        It::Fall,
        It::Length,
        It::Curves,
        It::Checks,
        It::Ramps,
        It::Parking,
        It::Blank,
        It::Fuel,
        It::Cost,
    ]
}

fn truck() -> Truck {
    Truck::new(Preset::FiveAxle36.spec()).expect("a preset is a truck")
}
pub(super) fn gears() -> Vec<Gear> {
    truck().gears().collect()
}
pub(super) fn stages() -> Vec<Stage> {
    truck().stages().collect()
}
pub(super) fn perhaps_told() -> Vec<Option<Told>> {
    let gear = gears()[4];
    let told = stages().into_iter().map(|stage| Some((gear, stage, MetresPerSecond(8.5))));
    std::iter::once(None).chain(told).collect()
}
