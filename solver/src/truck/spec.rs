//! A truck as entered, before it is checked.

use super::brakes::AxleGroup;
use super::engine::TorquePoint;
use super::retarder::{Driveline, Electromagnetic, EngineBrake, EngineCurve, Hydrodynamic, Retarder};
use super::transmission::Transmission;
use crate::limits::{self, Entry, OutOfRange, bounds};
use serde::{Deserialize, Serialize};
use std::fmt;

/// Everything that is entered of a truck. A truck file (`truck_file` in the reports) has it under `truck`, as
/// JSON with these names.
///
/// Names carry their units. Unknown names are refused, so that a misspelt entry is not silently dropped.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TruckSpec {
    /// What the driver calls it.
    pub name: String,
    /// Gross combination mass, kg.
    pub gross_mass_kg: f64,
    /// Mass on the driven axles, kg.
    pub drive_axle_mass_kg: f64,
    /// Loaded rolling radius, m.
    pub rolling_radius_m: f64,
    /// Inertia of all wheels together, kg·m².
    pub wheel_inertia_kg_m2: f64,
    /// Rolling resistance coefficient, the low end.
    pub rolling_resistance: f64,
    /// Drag area, m².
    pub drag_area_m2: f64,
    /// Displacement, l.
    pub displacement_l: f64,
    /// Full-load torque by engine speed, slowest first.
    pub full_load: Vec<TorquePoint>,
    /// Lowest useful engine speed, 1/min.
    pub lowest_rpm: f64,
    /// Highest engine speed allowed on overrun, 1/min.
    pub highest_rpm: f64,
    /// Engine speed at which a gearbox that shifts by itself shifts up and drops the retarder, 1/min. The
    /// governed speed where a file does not say. Not used for a gearbox that is shifted by hand.
    #[serde(default)]
    pub shifts_up_rpm: Option<f64>,
    /// Gear ratios, first gear first.
    pub gears: Vec<f64>,
    /// Axle ratio.
    pub axle_ratio: f64,
    /// Axle efficiency.
    pub axle_efficiency: f64,
    /// Gearbox; shifted by hand where a file does not say.
    #[serde(default)]
    pub transmission: Transmission,
    /// Retarder.
    pub retarder: Retarder,
    /// Time after a shift until a retarder at the engine holds again, s.
    #[serde(default = "usual_delay")]
    pub retarder_delay_s: f64,
    /// Measured retarding power over the power that the data state; 1 where nobody has measured.
    #[serde(default = "as_its_data_say")]
    pub retarding_scale: f64,
    /// Static rollover threshold, g: the lateral acceleration at which the truck tips on a tilt table. 0.35
    /// where a file does not say: the least that one vehicle rule allows (ROLLOVER).
    #[serde(default = "least_rollover_threshold")]
    pub rollover_threshold_g: f64,
    /// Axle groups.
    pub axle_groups: Vec<AxleGroup>,
    /// Entries whose values are assumed, neither printed by a source nor entered.
    pub assumed: Vec<Entry>,
}

fn least_rollover_threshold() -> f64 {
    TruckSpec::ROLLOVER_THRESHOLD_G
}

fn usual_delay() -> f64 {
    TruckSpec::RETARDER_DELAY_S
}

fn as_its_data_say() -> f64 {
    1.0
}

impl TruckSpec {
    /// Delay of a retarder after a shift where nobody has timed it, s. Assumed.
    pub const RETARDER_DELAY_S: f64 = 1.0;

    /// Rollover threshold where nobody has measured it, g (ROLLOVER; printed for heavy vehicles of one
    /// country, assumed elsewhere).
    pub const ROLLOVER_THRESHOLD_G: f64 = 0.35;

    /// The value of an entry in its own unit; `None` for an entry of the day, and for one of a retarder that
    /// this truck does not have.
    #[must_use]
    pub fn get(&self, entry: Entry) -> Option<f64> {
        self.kept(entry).or_else(|| self.derived(entry))
    }

    fn kept(&self, entry: Entry) -> Option<f64> {
        self.clone().place(entry).copied()
    }

    /// Sets an entry and no longer marks it as assumed. An entry that this truck does not have is left alone.
    pub fn set(&mut self, entry: Entry, value: f64) {
        if let Some(place) = self.place(entry) {
            *place = value;
        } else if !self.set_derived(entry, value) {
            return;
        }
        self.assumed.retain(|e| *e != entry);
    }

    /// Sets an entry to a value that is assumed.
    pub(super) fn set_assumed(&mut self, entry: Entry, value: f64) {
        self.set(entry, value);
        self.assumed.push(entry);
    }

    /// Whether the value of an entry is assumed.
    #[must_use]
    pub fn is_assumed(&self, entry: Entry) -> bool {
        self.assumed.contains(&entry)
    }

    fn place(&mut self, entry: Entry) -> Option<&mut f64> {
        match entry {
            Entry::GrossMass => Some(&mut self.gross_mass_kg),
            Entry::DriveAxleMass => Some(&mut self.drive_axle_mass_kg),
            Entry::RollingRadius => Some(&mut self.rolling_radius_m),
            Entry::WheelInertia => Some(&mut self.wheel_inertia_kg_m2),
            Entry::RollingResistance => Some(&mut self.rolling_resistance),
            Entry::DragArea => Some(&mut self.drag_area_m2),
            Entry::Displacement => Some(&mut self.displacement_l),
            Entry::LowestEngineSpeed => Some(&mut self.lowest_rpm),
            Entry::HighestEngineSpeed => Some(&mut self.highest_rpm),
            Entry::AxleRatio => Some(&mut self.axle_ratio),
            Entry::AxleEfficiency => Some(&mut self.axle_efficiency),
            Entry::RetarderPeakPower => self.engine_curve().map(|it| &mut it.peak_power_kw),
            Entry::RetarderPeakSpeed => self.engine_curve().map(|it| &mut it.peak_rpm),
            Entry::RetarderExponent => self.engine_curve().and_then(|it| it.exponent.as_mut()),
            Entry::RetarderCutOut => self.engine_curve().map(|it| &mut it.cut_out_rpm),
            Entry::ShaftTorque => self.retarder.driveline_mut().map(Driveline::torque_mut),
            Entry::ShaftSpeed => self.retarder.driveline_mut().map(Driveline::speed_mut),
            Entry::ShortPower => self.hydrodynamic().map(|it| &mut it.short_power_kw),
            Entry::ShortTime => self.hydrodynamic().map(|it| &mut it.short_time_s),
            Entry::SustainedPower => self.hydrodynamic().map(|it| &mut it.sustained_power_kw),
            Entry::SustainedSpeed => self.hydrodynamic().map(|it| &mut it.sustained_rpm),
            Entry::HotShare => self.electromagnetic().map(|it| &mut it.hot_share),
            Entry::WarmUpTime => self.electromagnetic().map(|it| &mut it.warm_up_s),
            Entry::RetarderDelay => self.retarder.is_at_engine().then_some(&mut self.retarder_delay_s),
            Entry::RetardingScale => (self.retarder.stage_count() > 0).then_some(&mut self.retarding_scale),
            Entry::LockUpGear => match &mut self.transmission {
                Transmission::TorqueConverter { lock_up_gear, .. } => Some(lock_up_gear),
                Transmission::Manual | Transmission::Automated => None,
            },
            Entry::LockUpSpeed => match &mut self.transmission {
                Transmission::TorqueConverter { lock_up_rpm, .. } => Some(lock_up_rpm),
                Transmission::Manual | Transmission::Automated => None,
            },
            Entry::ShiftsUpSpeed => {
                let governed = self.governed_rpm();
                self.transmission.chooses_gears().then(|| self.shifts_up_rpm.get_or_insert(governed))
            }
            Entry::RolloverThreshold => Some(&mut self.rollover_threshold_g),
            Entry::AirTemperature
            | Entry::BrakesAtStart
            | Entry::Headwind
            | Entry::SpeedLimit
            | Entry::Reserve
            | Entry::HeatLimit
            | Entry::Superelevation
            | Entry::BrakeCheckStop
            | Entry::RatedPower
            | Entry::GovernedSpeed
            | Entry::TopGearSpeed => None,
        }
    }

    /// The end of the full-load curve, 1/min, where the governor cuts the fuel.
    pub(super) fn governed_rpm(&self) -> f64 {
        self.full_load.last().map_or(0.0, |point| point.engine_speed_rpm)
    }

    /// Gives the engine brake either the declared shape or a power of the engine speed with the assumed
    /// exponent.
    pub fn curve_by_exponent(&mut self, by_exponent: bool) {
        let assumed = &mut self.assumed;
        let Some(curve) = self.retarder.brake_mut().map(EngineBrake::curve_mut) else { return };
        if curve.exponent.is_some() == by_exponent {
            return;
        }
        curve.exponent = by_exponent.then_some(EngineCurve::ASSUMED_EXPONENT);
        assumed.retain(|entry| *entry != Entry::RetarderExponent);
        assumed.extend(by_exponent.then_some(Entry::RetarderExponent));
    }

    fn engine_curve(&mut self) -> Option<&mut EngineCurve> {
        self.retarder.brake_mut().map(EngineBrake::curve_mut)
    }

    fn hydrodynamic(&mut self) -> Option<&mut Hydrodynamic> {
        match self.retarder.driveline_mut()? {
            Driveline::Hydrodynamic(it) => Some(it),
            Driveline::Electromagnetic(_) => None,
        }
    }

    fn electromagnetic(&mut self) -> Option<&mut Electromagnetic> {
        match self.retarder.driveline_mut()? {
            Driveline::Hydrodynamic(_) => None,
            Driveline::Electromagnetic(it) => Some(it),
        }
    }

    /// Shares of full retarding by stage, where they can be set.
    pub fn shares_mut(&mut self) -> Option<&mut Vec<f64>> {
        self.retarder.shares_mut()
    }

    /// Checks every entry and list against the table of limits.
    ///
    /// # Errors
    /// The first [`TruckError`] found, single numbers before lists.
    pub fn check(&self) -> Result<(), TruckError> {
        for limit in limits::ALL {
            if let Some(value) = self.kept(limit.entry) {
                limit.check(value).map_err(TruckError::Entry)?;
            }
        }
        if self.drive_axle_mass_kg > self.gross_mass_kg {
            return Err(TruckError::DriveAxleHeavierThanTruck);
        }
        if self.lowest_rpm >= self.highest_rpm {
            return Err(TruckError::EngineSpeedsCrossed);
        }
        check_gears(&self.gears)?;
        check_full_load(&self.full_load)?;
        check_retarder(&self.retarder)?;
        check_axle_groups(&self.axle_groups)
    }
}

fn check_gears(gears: &[f64]) -> Result<(), TruckError> {
    let (low, high) = bounds::GEAR_RATIO;
    let in_range = gears.iter().all(|g| *g >= low && *g <= high);
    let falling = gears.windows(2).all(|pair| pair[0] > pair[1]);
    if gears.is_empty() || gears.len() > bounds::GEARS || !in_range || !falling {
        return Err(TruckError::Gears);
    }
    Ok(())
}

fn check_full_load(curve: &[TorquePoint]) -> Result<(), TruckError> {
    let rising = curve.windows(2).all(|pair| pair[0].engine_speed_rpm < pair[1].engine_speed_rpm);
    let (low, high) = bounds::CURVE_RPM;
    let in_range = curve.iter().all(|p| {
        p.engine_speed_rpm >= low
            && p.engine_speed_rpm <= high
            && p.torque_nm >= 0.0
            && p.torque_nm <= bounds::TORQUE
    });
    if curve.len() < 2 || curve.len() > bounds::CURVE_POINTS || !rising || !in_range {
        return Err(TruckError::FullLoad);
    }
    Ok(())
}

fn check_retarder(retarder: &Retarder) -> Result<(), TruckError> {
    let stages = match retarder {
        Retarder::None => return Ok(()),
        Retarder::Table(table) => return table.is_sound().then_some(()).ok_or(TruckError::Table),
        Retarder::Engine { stages, .. }
        | Retarder::Driveline { stages, .. }
        | Retarder::Both { stages, .. } => stages,
    };
    let rising = stages.windows(2).all(|pair| pair[0] < pair[1]);
    let whole = stages.last().is_some_and(|last| (last - 1.0).abs() < 1e-9);
    let positive = stages.first().is_some_and(|first| *first > 0.0);
    if !whole || !positive || !rising || stages.len() > bounds::STAGES {
        return Err(TruckError::Stages);
    }
    Ok(())
}

fn check_axle_groups(groups: &[AxleGroup]) -> Result<(), TruckError> {
    let shares: f64 = groups.iter().map(|g| g.effort_share).sum();
    let sound =
        groups.iter().all(|g| g.axles >= 1 && g.axles <= bounds::AXLES_OF_GROUP && g.effort_share > 0.0);
    if groups.is_empty() || groups.len() > bounds::AXLE_GROUPS || !sound || (shares - 1.0).abs() > 1e-6 {
        return Err(TruckError::AxleGroups);
    }
    Ok(())
}

/// Why a truck cannot be used. Its `Display` is for logs: a key that stays, and its values.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum TruckError {
    /// An entry is outside its range.
    Entry(OutOfRange),
    /// More mass on the driven axles than the whole truck has.
    DriveAxleHeavierThanTruck,
    /// The lowest useful engine speed is not below the highest allowed one.
    EngineSpeedsCrossed,
    /// Gear ratios are missing, too many, out of range, or not falling.
    Gears,
    /// The full-load curve has too few or too many points, is out of range, or does not rise in speed.
    FullLoad,
    /// The stage shares do not rise to 1.
    Stages,
    /// An entered table of retarding cannot be read between its rows.
    Table,
    /// Axle groups are missing, or their shares do not add up to 1.
    AxleGroups,
}

impl fmt::Display for TruckError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Entry(out) => return out.fmt(f),
            Self::DriveAxleHeavierThanTruck => "drive-axle-heavier-than-truck",
            Self::EngineSpeedsCrossed => "engine-speeds-crossed",
            Self::Gears => "gears",
            Self::FullLoad => "full-load",
            Self::Stages => "stages",
            Self::Table => "table",
            Self::AxleGroups => "axle-groups",
        })
    }
}

impl std::error::Error for TruckError {}
