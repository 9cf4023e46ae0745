//! Trucks to begin with: generic, with each assumed value marked.
//!
//! Masses, gear sets marked (P), full-load curves, tyres, drag areas and effort shares are generic printed
//! data (keys in `solver/docs/sources.md`). All else is assumed and says so.

use super::brakes::{AxleGroup, AxlePlace, BrakeKind};
use super::engine::TorquePoint;
use super::gear_sets;
use super::retarder::{Retarder, RetarderKind};
use super::spec::TruckSpec;
use super::transmission::Transmission;
use super::tyres::{SIZES, TyreSize};
use crate::limits::Entry;

/// Full-load curves (engine speed 1/min, torque N·m), printed generic data.
const ENGINE_12_7_L: [(f64, f64); 7] = [
    (1000.0, 2134.0),
    (1200.0, 2134.0),
    (1400.0, 2134.0),
    (1600.0, 1928.0),
    (1800.0, 1722.0),
    (2000.0, 1253.0),
    (2100.0, 1019.0),
];
const ENGINE_15_L: [(f64, f64); 6] = [
    (1200.0, 2102.0),
    (1400.0, 2102.0),
    (1600.0, 2004.0),
    (1800.0, 1781.0),
    (2000.0, 1584.0),
    (2100.0, 1477.0),
];
const ENGINE_10_8_L: [(f64, f64); 4] =
    [(1200.0, 1695.0), (1600.0, 1469.0), (1800.0, 1306.0), (2000.0, 1096.0)];

/// Highest engine speed allowed on overrun, 1/min. Assumed: engines allow 2,100 to 2,500.
const HIGHEST_RPM: f64 = 2_100.0;

/// Torque of a retarder at the output of an automatic gearbox, N·m. Assumed.
const RETARDER_OF_AUTOMATIC_NM: f64 = 2_000.0;

/// A truck to begin with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Preset {
    /// Tractor and semitrailer of five axles at 80,000 lb.
    FiveAxle36,
    /// Tractor and semitrailer of five axles at 40 t.
    FiveAxle40,
    /// The 40 t combination with a hydrodynamic retarder and an engine brake on one lever.
    FiveAxle40Both,
    /// The 40 t combination, empty.
    FiveAxleEmpty,
    /// Tractor and semitrailer of six axles at 44 t.
    SixAxle44,
    /// Rigid truck with a drawbar trailer at 40 t.
    Drawbar40,
    /// Rigid truck of two axles at 18 t.
    Rigid18,
    /// Tipper of three axles at 26 t.
    Tipper26,
    /// Refuse truck of three axles at 26 t, with an automatic gearbox and a retarder at its output.
    Refuse26,
    /// Tractor with two trailers at 62.5 t.
    BDouble,
    /// Coach of two axles.
    Coach,
    /// Coach of two axles with a torque converter and a hydrodynamic retarder.
    CoachConverter,
}

impl Preset {
    /// All presets.
    pub const ALL: [Self; 12] = [
        Self::FiveAxle36,
        Self::FiveAxle40,
        Self::FiveAxle40Both,
        Self::FiveAxleEmpty,
        Self::SixAxle44,
        Self::Drawbar40,
        Self::Rigid18,
        Self::Tipper26,
        Self::Refuse26,
        Self::BDouble,
        Self::Coach,
        Self::CoachConverter,
    ];

    /// Its name on the command line and in a link.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::FiveAxle36 => "five-axle-36t",
            Self::FiveAxle40 => "five-axle-40t",
            Self::FiveAxle40Both => "five-axle-40t-both",
            Self::FiveAxleEmpty => "five-axle-empty",
            Self::SixAxle44 => "six-axle-44t",
            Self::Drawbar40 => "drawbar-40t",
            Self::Rigid18 => "rigid-18t",
            Self::Tipper26 => "tipper-26t",
            Self::Refuse26 => "refuse-26t",
            Self::BDouble => "b-double-62t",
            Self::Coach => "coach",
            Self::CoachConverter => "coach-converter",
        }
    }

    /// The preset of that name.
    #[must_use]
    pub fn by_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|preset| preset.key() == key)
    }

    /// The truck.
    #[must_use]
    pub fn spec(self) -> TruckSpec {
        match self {
            Self::FiveAxle36 => five_axle_36(),
            Self::FiveAxle40 => five_axle_40(),
            Self::FiveAxle40Both => five_axle_40_both(),
            Self::FiveAxleEmpty => five_axle_empty(),
            Self::SixAxle44 => six_axle_44(),
            Self::Drawbar40 => drawbar_40(),
            Self::Rigid18 => rigid_18(),
            Self::Tipper26 => tipper_26(),
            Self::Refuse26 => refuse_26(),
            Self::BDouble => b_double(),
            Self::Coach => coach(),
            Self::CoachConverter => coach_converter(),
        }
    }
}

/// 36,287 kg and 15,422 kg on the drive tandem (80,000 and 34,000 lb), drag area 5.68 m² and
/// the gear set are printed; rolling resistance is the low end of label class C.
fn five_axle_36() -> TruckSpec {
    let mut spec = base("Five-axle combination, 36.3 t", &ENGINE_12_7_L, 12.7, 310.0);
    spec.gross_mass_kg = 36_287.0;
    spec.drive_axle_mass_kg = 15_422.0;
    spec.drag_area_m2 = 5.68;
    spec.gears = gear_sets::TEN_OVERDRIVE.to_vec();
    spec.axle_ratio = 3.70;
    roll_on(&mut spec, SIZES[1], 18);
    spec.axle_groups = five_axles(BrakeKind::Drum);
    spec
}

/// 40 t, 11.5 t on the driven axle, drag area 5.3 m² and the gear set are printed.
fn five_axle_40() -> TruckSpec {
    let mut spec = base("Five-axle combination, 40 t", &ENGINE_12_7_L, 12.7, 325.0);
    spec.gross_mass_kg = 40_000.0;
    spec.drive_axle_mass_kg = 11_500.0;
    spec.drag_area_m2 = 5.3;
    spec.gears = gear_sets::TWELVE.to_vec();
    spec.transmission = Transmission::Automated;
    spec.axle_ratio = 2.64;
    roll_on(&mut spec, SIZES[4], 6);
    trail_on(&mut spec, SIZES[7], 6);
    spec.axle_groups = vec![
        group(AxlePlace::Steer, 1, BrakeKind::Disc, 0.16),
        group(AxlePlace::Drive, 1, BrakeKind::Disc, 0.28),
        group(AxlePlace::Trailer, 3, BrakeKind::Disc, 0.56),
    ];
    spec
}

fn five_axle_40_both() -> TruckSpec {
    let mut spec = five_axle_40();
    "Five-axle combination, 40 t, engine brake and hydrodynamic retarder".clone_into(&mut spec.name);
    spec.take_retarder(RetarderKind::None);
    spec.take_retarder(RetarderKind::CompressionAndHydrodynamic);
    spec
}

/// Masses assumed: an empty curtain-sided semitrailer behind a two-axle tractor.
fn five_axle_empty() -> TruckSpec {
    let mut spec = five_axle_40();
    "Five-axle combination, empty, 14.5 t".clone_into(&mut spec.name);
    spec.gross_mass_kg = 14_500.0;
    spec.drive_axle_mass_kg = 4_800.0;
    spec.assumed.extend([Entry::GrossMass, Entry::DriveAxleMass]);
    spec
}

/// 44 t on six axles, one of them driven at 11.5 t. Drag area and effort shares are those of the 40 t,
/// assumed.
fn six_axle_44() -> TruckSpec {
    let mut spec = five_axle_40();
    "Six-axle combination, 44 t".clone_into(&mut spec.name);
    spec.gross_mass_kg = 44_000.0;
    roll_on(&mut spec, SIZES[4], 8);
    trail_on(&mut spec, SIZES[7], 6);
    spec.axle_groups = vec![
        group(AxlePlace::Steer, 1, BrakeKind::Disc, 0.15),
        group(AxlePlace::Drive, 2, BrakeKind::Disc, 0.35),
        group(AxlePlace::Trailer, 3, BrakeKind::Disc, 0.50),
    ];
    spec.assumed.push(Entry::DragArea);
    spec
}

/// A rigid truck of three axles, one of them driven, with a two-axle trailer. All but masses and gears is
/// assumed.
fn drawbar_40() -> TruckSpec {
    let mut spec = five_axle_40();
    "Rigid with drawbar trailer, 40 t".clone_into(&mut spec.name);
    spec.drag_area_m2 = 6.0;
    roll_on(&mut spec, SIZES[4], 8);
    trail_on(&mut spec, SIZES[4], 8);
    spec.axle_groups = vec![
        group(AxlePlace::Steer, 1, BrakeKind::Disc, 0.18),
        group(AxlePlace::Drive, 2, BrakeKind::Disc, 0.40),
        group(AxlePlace::Trailer, 2, BrakeKind::Disc, 0.42),
    ];
    spec.assumed.push(Entry::DragArea);
    spec
}

fn rigid_18() -> TruckSpec {
    let mut spec = base("Two-axle rigid, 18 t", &ENGINE_10_8_L, 10.8, 225.0);
    spec.gross_mass_kg = 18_000.0;
    spec.drive_axle_mass_kg = 11_500.0;
    spec.drag_area_m2 = 5.3;
    spec.gears = gear_sets::NINE.to_vec();
    spec.axle_ratio = 3.70;
    roll_on(&mut spec, SIZES[3], 6);
    spec.axle_groups = vec![
        group(AxlePlace::Steer, 1, BrakeKind::Disc, 0.40),
        group(AxlePlace::Drive, 1, BrakeKind::Disc, 0.60),
    ];
    spec.assumed.push(Entry::DragArea);
    spec
}

/// Drag area 5.8 m² and the gear set are printed.
fn tipper_26() -> TruckSpec {
    let mut spec = base("Three-axle tipper, 26 t", &ENGINE_10_8_L, 10.8, 225.0);
    spec.gross_mass_kg = 26_000.0;
    spec.drive_axle_mass_kg = 19_000.0;
    spec.drag_area_m2 = 5.8;
    spec.gears = gear_sets::TEN_DIRECT.to_vec();
    spec.axle_ratio = 4.10;
    roll_on(&mut spec, SIZES[5], 10);
    spec.axle_groups = vec![
        group(AxlePlace::Steer, 1, BrakeKind::Drum, 0.30),
        group(AxlePlace::Drive, 2, BrakeKind::Drum, 0.70),
    ];
    spec
}

/// The gear set is printed; the retarder, the axle ratio and the whole converter are assumed.
fn refuse_26() -> TruckSpec {
    let mut spec = tipper_26();
    "Three-axle refuse truck, automatic, 26 t".clone_into(&mut spec.name);
    spec.gears = gear_sets::SIX_CONVERTER.to_vec();
    spec.axle_ratio = 5.40;
    spec.transmission = Transmission::CONVERTER;
    spec.take_retarder(RetarderKind::Hydrodynamic);
    spec.set_assumed(Entry::ShaftTorque, RETARDER_OF_AUTOMATIC_NM);
    spec.assumed.extend([Entry::DragArea, Entry::LockUpGear, Entry::LockUpSpeed]);
    spec
}

/// 62.5 t and 26 % of it on the driven axles are printed.
fn b_double() -> TruckSpec {
    let mut spec = base("Nine-axle double combination, 62.5 t", &ENGINE_15_L, 15.0, 350.0);
    spec.gross_mass_kg = 62_500.0;
    spec.drive_axle_mass_kg = 16_250.0;
    spec.drag_area_m2 = 6.5;
    spec.gears = gear_sets::EIGHTEEN.to_vec();
    spec.axle_ratio = 4.30;
    roll_on(&mut spec, SIZES[2], 34);
    spec.axle_groups = vec![
        group(AxlePlace::Steer, 1, BrakeKind::Drum, 0.07),
        group(AxlePlace::Drive, 2, BrakeKind::Drum, 0.26),
        group(AxlePlace::Trailer, 6, BrakeKind::Drum, 0.67),
    ];
    spec.assumed.push(Entry::DragArea);
    spec
}

fn coach() -> TruckSpec {
    let mut spec = base("Intercity coach, two axles", &ENGINE_10_8_L, 10.8, 225.0);
    spec.gross_mass_kg = 19_000.0;
    spec.drive_axle_mass_kg = 12_000.0;
    spec.drag_area_m2 = 3.9;
    spec.gears = gear_sets::TWELVE.to_vec();
    spec.transmission = Transmission::Automated;
    spec.axle_ratio = 2.85;
    roll_on(&mut spec, SIZES[3], 6);
    spec.axle_groups = vec![
        group(AxlePlace::Steer, 1, BrakeKind::Disc, 0.40),
        group(AxlePlace::Drive, 1, BrakeKind::Disc, 0.60),
    ];
    spec.assumed.extend([Entry::GrossMass, Entry::DragArea]);
    spec
}

/// The gear set is printed; the retarder and the whole converter are assumed.
fn coach_converter() -> TruckSpec {
    let mut spec = coach();
    "Intercity coach, torque converter".clone_into(&mut spec.name);
    spec.gears = gear_sets::SIX_CONVERTER.to_vec();
    spec.axle_ratio = 4.30;
    spec.transmission = Transmission::CONVERTER;
    spec.take_retarder(RetarderKind::Hydrodynamic);
    spec.assumed.extend([Entry::LockUpGear, Entry::LockUpSpeed]);
    spec
}

/// Values that the presets share, with those that are assumed.
fn base(name: &str, full_load: &[(f64, f64)], litres: f64, retarder_kw: f64) -> TruckSpec {
    let curve =
        full_load.iter().map(|&(engine_speed_rpm, torque_nm)| TorquePoint { engine_speed_rpm, torque_nm });
    TruckSpec {
        name: name.to_owned(),
        gross_mass_kg: 0.0,
        drive_axle_mass_kg: 0.0,
        rolling_radius_m: 0.0,
        wheel_inertia_kg_m2: 0.0,
        rolling_resistance: 0.0051,
        drag_area_m2: 0.0,
        displacement_l: litres,
        full_load: curve.collect(),
        lowest_rpm: 1_000.0,
        highest_rpm: HIGHEST_RPM,
        shifts_up_rpm: None,
        gears: Vec::new(),
        axle_ratio: 0.0,
        axle_efficiency: 0.955,
        transmission: Transmission::Manual,
        retarder: Retarder::compression_release(retarder_kw, HIGHEST_RPM),
        retarder_delay_s: TruckSpec::RETARDER_DELAY_S,
        retarding_scale: 1.0,
        rollover_threshold_g: TruckSpec::ROLLOVER_THRESHOLD_G,
        axle_groups: Vec::new(),
        assumed: vec![
            Entry::RolloverThreshold,
            Entry::LowestEngineSpeed,
            Entry::HighestEngineSpeed,
            Entry::AxleRatio,
            Entry::RetarderPeakPower,
            Entry::RetarderPeakSpeed,
            Entry::RetarderCutOut,
            Entry::RetarderDelay,
        ],
    }
}

fn roll_on(spec: &mut TruckSpec, tyre: TyreSize, tyres: u8) {
    spec.rolling_radius_m = tyre.rolling_radius_m();
    spec.wheel_inertia_kg_m2 = f64::from(tyres) * tyre.inertia_kg_m2;
}

/// Adds tyres that are not driven.
fn trail_on(spec: &mut TruckSpec, tyre: TyreSize, tyres: u8) {
    spec.wheel_inertia_kg_m2 += f64::from(tyres) * tyre.inertia_kg_m2;
}

/// Effort shares of a five-axle combination, 12/44/44 % (value from memory).
fn five_axles(brake: BrakeKind) -> Vec<AxleGroup> {
    vec![
        group(AxlePlace::Steer, 1, brake, 0.12),
        group(AxlePlace::Drive, 2, brake, 0.44),
        group(AxlePlace::Trailer, 2, brake, 0.44),
    ]
}

fn group(place: AxlePlace, axles: u8, brake: BrakeKind, effort_share: f64) -> AxleGroup {
    AxleGroup { place, axles, brake, effort_share }
}

#[cfg(test)]
mod tests {
    use super::super::Truck;
    use super::*;

    #[test]
    fn every_preset_is_a_truck() {
        for preset in Preset::ALL {
            let truck = Truck::new(preset.spec()).unwrap_or_else(|e| panic!("{}: {e}", preset.key()));
            assert_eq!(Preset::by_key(preset.key()), Some(preset));
            assert!(truck.full_stage().number() >= 3, "{}", preset.key());
        }
    }
}
