//! The truck: from what was entered to what can be computed with.
//!
//! [`TruckSpec`] is plain data that may be wrong; [`Truck`] cannot be. Nothing here knows of
//! a road.

mod brakes;
mod engine;
mod gearbox;
mod presets;
mod retarder;
mod spec;
mod tyres;

pub use brakes::{AxleGroup, AxlePlace, BrakeKind};
pub use engine::TorquePoint;
pub use presets::{Preset, gear_sets};
pub use retarder::{CompressionRelease, Retarder};
pub use spec::{TruckError, TruckSpec};
pub use tyres::{LabelClass, SIZES as TYRE_SIZES, TyreSize};

use crate::units::{Kilograms, MetresPerSecond, Newtons, RevPerMin, Watts};

/// A gear by its number, first gear 1. Only a [`Truck`] hands them out, so the number fits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, serde::Serialize, serde::Deserialize)]
#[serde(transparent)]
pub struct Gear(u8);

impl Gear {
    /// Its number, from 1.
    #[must_use]
    pub fn number(self) -> u8 {
        self.0
    }

    fn index(self) -> usize {
        usize::from(self.0 - 1)
    }
}

/// A retarder stage by its number; 0 is off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, serde::Serialize, serde::Deserialize)]
#[serde(transparent)]
pub struct Stage(u8);

impl Stage {
    /// Retarder off: the motoring engine alone.
    pub const OFF: Self = Self(0);

    /// Its number; 0 is off.
    #[must_use]
    pub fn number(self) -> u8 {
        self.0
    }
}

/// A truck that passed its check.
#[derive(Debug, Clone, PartialEq)]
pub struct Truck {
    spec: TruckSpec,
}

impl Truck {
    /// Checks what was entered.
    ///
    /// # Errors
    /// [`TruckError`] says in a sentence what to change.
    pub fn new(spec: TruckSpec) -> Result<Self, TruckError> {
        spec.check()?;
        Ok(Self { spec })
    }

    /// What was entered.
    #[must_use]
    pub fn spec(&self) -> &TruckSpec {
        &self.spec
    }

    /// The same truck with its mass, and that on its driven axles, times `factor`; `None`
    /// where that leaves the range of masses.
    #[must_use]
    pub fn heavier(&self, factor: f64) -> Option<Self> {
        let mut spec = self.spec.clone();
        spec.gross_mass_kg *= factor;
        spec.drive_axle_mass_kg *= factor;
        Self::new(spec).ok()
    }

    /// Gross combination mass.
    #[must_use]
    pub fn mass(&self) -> Kilograms {
        Kilograms(self.spec.gross_mass_kg)
    }

    /// Gears, first gear first.
    pub fn gears(&self) -> impl DoubleEndedIterator<Item = Gear> + use<> {
        #[allow(clippy::cast_possible_truncation, reason = "bounds::GEARS is far below 255")]
        let count = self.spec.gears.len() as u8;
        (1..=count).map(Gear)
    }

    /// Stages, "off" first.
    pub fn stages(&self) -> impl DoubleEndedIterator<Item = Stage> + use<> {
        #[allow(clippy::cast_possible_truncation, reason = "bounds::STAGES is far below 255")]
        let count = self.spec.retarder.stages().len() as u8;
        (0..=count).map(Stage)
    }

    /// The strongest stage; "off" where there is no retarder.
    #[must_use]
    pub fn full_stage(&self) -> Stage {
        self.stages().next_back().unwrap_or(Stage::OFF)
    }

    /// Ratio of a gear.
    #[must_use]
    pub fn ratio(&self, gear: Gear) -> f64 {
        self.spec.gears[gear.index()]
    }

    /// Radians of the engine per metre of road, i_a·g/r: the only place that knows it.
    fn turns(&self, gear: Gear) -> f64 {
        self.spec.axle_ratio * self.ratio(gear) / self.spec.rolling_radius_m
    }

    /// Engine speed at a road speed: n = 60·v·g·i_a/(2π·r).
    #[must_use]
    pub fn engine_speed(&self, gear: Gear, speed: MetresPerSecond) -> RevPerMin {
        RevPerMin(speed.0 * self.turns(gear) * 30.0 / std::f64::consts::PI)
    }

    /// Road speed at an engine speed.
    #[must_use]
    pub fn road_speed(&self, gear: Gear, speed: RevPerMin) -> MetresPerSecond {
        MetresPerSecond(speed.radians_per_second() / self.turns(gear))
    }

    /// Lowest engine speed of use with this stage: that of the engine, or the retarder's
    /// cut-out where a stage is on and cuts out later.
    #[must_use]
    pub fn lowest_engine_speed(&self, stage: Stage) -> RevPerMin {
        let cut_out = if stage == Stage::OFF { 0.0 } else { self.spec.retarder.cut_out_rpm() };
        RevPerMin(self.spec.lowest_rpm.max(cut_out))
    }

    /// Highest engine speed allowed with the wheels driving the engine.
    #[must_use]
    pub fn highest_engine_speed(&self) -> RevPerMin {
        RevPerMin(self.spec.highest_rpm)
    }

    /// Highest engine speed at which the engine still pulls: the end of its full-load curve.
    #[must_use]
    pub fn governed_speed(&self) -> RevPerMin {
        RevPerMin(self.spec.full_load.last().map_or(0.0, |p| p.engine_speed_rpm))
    }

    /// Power that turns the unfuelled engine over.
    #[must_use]
    pub fn motoring_power(&self, speed: RevPerMin) -> Watts {
        engine::motoring_power(self.spec.displacement_l, speed)
    }

    /// Power that holds back at the engine with the stage on, before altitude:
    /// P_m + f·(P_r − P_m), never less than motoring; motoring alone below the cut-out.
    #[must_use]
    pub fn retarding_power(&self, stage: Stage, speed: RevPerMin) -> Watts {
        let motoring = self.motoring_power(speed);
        let share = match stage.0.checked_sub(1) {
            None => return motoring,
            Some(index) => self.spec.retarder.stages()[usize::from(index)],
        };
        match self.spec.retarder.full_power(speed) {
            None => motoring,
            Some(full) => motoring + (full - motoring).max_zero() * share,
        }
    }

    /// Force at the wheels that holds the truck back, with `altitude` scaling what the engine
    /// does: [(T_engine + T_gearbox loss)·g]·i_a/(r·η). On overrun the losses help.
    #[must_use]
    pub fn holding_force(&self, gear: Gear, stage: Stage, speed: MetresPerSecond, altitude: f64) -> Newtons {
        let engine_speed = self.engine_speed(gear, speed);
        let power = self.retarding_power(stage, engine_speed).0 * altitude;
        let torque = power / engine_speed.radians_per_second();
        let loss = gearbox::loss_torque(self.ratio(gear), engine_speed, torque);
        Newtons((torque + loss) * self.turns(gear) / self.spec.axle_efficiency)
    }

    /// Force at the wheels with full load in a gear; zero where the engine speed is off its
    /// full-load curve.
    #[must_use]
    pub fn pulling_force(&self, gear: Gear, speed: MetresPerSecond) -> Newtons {
        let engine_speed = self.engine_speed(gear, speed);
        let torque = engine::full_load_torque(&self.spec.full_load, engine_speed);
        if torque <= 0.0 {
            return Newtons(0.0);
        }
        let loss = gearbox::loss_torque(self.ratio(gear), engine_speed, torque);
        let turned = (torque - loss).max(0.0);
        Newtons(turned * self.turns(gear) * self.spec.axle_efficiency)
    }

    /// Rated power: the largest on the full-load curve.
    #[must_use]
    pub fn rated_power(&self) -> Watts {
        let power = |p: &TorquePoint| p.torque_nm * RevPerMin(p.engine_speed_rpm).radians_per_second();
        Watts(self.spec.full_load.iter().map(power).fold(0.0, f64::max))
    }

    /// The turning of all wheels as a mass on the road: ΣJ_wheel/r².
    #[must_use]
    pub fn wheels_as_mass(&self) -> Kilograms {
        let r = self.spec.rolling_radius_m;
        Kilograms(self.spec.wheel_inertia_kg_m2 / (r * r))
    }

    /// Mass that must be sped up or slowed, over the mass of the truck:
    /// λ = 1 + (ΣJ_wheel + J_engine·(g·i_a)²)/(m·r²).
    #[must_use]
    pub fn rotating_factor(&self, gear: Gear) -> f64 {
        let turns = self.turns(gear);
        let engine = engine::inertia(self.spec.displacement_l) * turns * turns;
        1.0 + (self.wheels_as_mass().0 + engine) / self.spec.gross_mass_kg
    }
}

impl Watts {
    fn max_zero(self) -> Self {
        Self(self.0.max(0.0))
    }
}
