//! The truck: from the entries to a truck that can be computed with.
//!
//! [`TruckSpec`] is plain data that may be wrong; [`Truck`] cannot be. Nothing here knows about roads.

mod brakes;
mod engine;
mod enter;
mod fit;
pub mod gear_sets;
mod gearbox;
mod presets;
mod retarder;
mod spec;
mod transmission;
mod tyres;

pub use brakes::{AxleGroup, AxlePlace, BrakeKind, SLACK_STROKE, stroke_limit_at};
pub use engine::TorquePoint;
pub use presets::Preset;
pub use retarder::{
    Ambient, Driveline, Electromagnetic, EngineBrake, EngineCurve, EnteredTable, Hydrodynamic, Retarder,
    RetarderKind, TableOf, TableRow, Warmth,
};
pub use spec::{TruckError, TruckSpec};
pub use transmission::Transmission;
pub use tyres::{SIZES as TYRE_SIZES, TyreSize};

use crate::units::{Celsius, Kilograms, MetresPerSecond, Newtons, RevPerMin, Seconds, Watts};
use brakes::BrakeBand;

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

    /// Whether the retarder is off.
    #[must_use]
    pub fn is_off(self) -> bool {
        self == Self::OFF
    }

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
    /// Place of its service brakes within what is known of cooling and capacity.
    brakes: BrakeBand,
    /// An axle group that no longer brakes above a temperature.
    out_above: Option<(usize, Celsius)>,
}

impl Truck {
    /// Checks what was entered.
    ///
    /// ```
    /// use solver::{Entry, Preset, Truck};
    ///
    /// let mut spec = Preset::FiveAxle40.spec();
    /// spec.set(Entry::GrossMass, 36_000.0);
    /// let truck = Truck::new(spec)?;
    /// assert_eq!(truck.mass().0, 36_000.0);
    /// # Ok::<(), solver::Error>(())
    /// ```
    ///
    /// # Errors
    /// [`TruckError`] says what is wrong.
    pub fn new(spec: TruckSpec) -> Result<Self, TruckError> {
        spec.check()?;
        Ok(Self { spec, brakes: BrakeBand::TAKEN, out_above: None })
    }

    /// What was entered.
    #[must_use]
    pub fn spec(&self) -> &TruckSpec {
        &self.spec
    }

    /// The truck with its mass, and that on its driven axles, times `factor`; `None` where the result is out
    /// of range.
    #[must_use]
    pub fn heavier(&self, factor: f64) -> Option<Self> {
        let mut spec = self.spec.clone();
        spec.gross_mass_kg *= factor;
        spec.drive_axle_mass_kg *= factor;
        Self::new(spec).ok()
    }

    /// The truck without its strongest retarder stage: the next weaker one becomes the strongest. `None`
    /// where it has no retarder.
    #[must_use]
    pub fn without_strongest_stage(&self) -> Option<Self> {
        let mut truck = self.clone();
        truck.spec.retarder = self.spec.retarder.clone().without_strongest()?;
        Some(truck)
    }

    /// The truck with its retarding times `factor`, above 0. For studies of one truck: the scale may leave
    /// the range of the entry.
    #[must_use]
    pub fn with_retarding(&self, factor: f64) -> Self {
        let mut truck = self.clone();
        truck.spec.retarding_scale *= factor;
        truck
    }

    /// The truck with its mass, rolling resistance, drag area and retarding each times a factor near 1, and
    /// its service brakes anywhere from −1 to 1 within what is known of them. For the spread of the entries,
    /// which may lie a little outside their ranges.
    #[must_use]
    pub(crate) fn shaken(&self, mass: f64, rolling: f64, drag: f64, retarding: f64, brakes: f64) -> Self {
        let mut truck = self.with_retarding(retarding);
        truck.spec.gross_mass_kg *= mass;
        truck.spec.drive_axle_mass_kg *= mass;
        truck.spec.rolling_resistance *= rolling;
        truck.spec.drag_area_m2 *= drag;
        truck.brakes = BrakeBand(brakes);
        truck
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
        let count = self.spec.retarder.stage_count() as u8;
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

    /// Radians of the engine per metre of road, i_a·g/r; computed only here.
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

    /// Lowest useful engine speed with this stage: that of the engine, the retarder's cut-out where a stage
    /// is on, or the speed at which a lock-up opens, whichever is highest.
    #[must_use]
    pub fn lowest_engine_speed(&self, stage: Stage) -> RevPerMin {
        let cut_out = if stage == Stage::OFF { 0.0 } else { self.spec.retarder.cut_out_rpm() };
        let (_, lock_up) = self.spec.transmission.lock_up();
        RevPerMin(self.spec.lowest_rpm.max(cut_out).max(lock_up.0))
    }

    /// Whether the engine can hold anything back in a gear. It cannot behind an open torque converter.
    #[must_use]
    pub fn is_coupled(&self, gear: Gear) -> bool {
        f64::from(gear.0) >= self.spec.transmission.lock_up().0
    }

    /// Whether the truck may roll through a bend slower than its engine must turn: behind a torque converter.
    #[must_use]
    pub fn creeps(&self) -> bool {
        matches!(self.spec.transmission, Transmission::TorqueConverter { .. })
    }

    fn is_locked(&self, gear: Gear, speed: RevPerMin) -> bool {
        let (_, open_below) = self.spec.transmission.lock_up();
        // Rounding may put a speed at the very edge of the lock-up on either side of it.
        self.is_coupled(gear) && speed >= open_below * (1.0 - 1e-9)
    }

    /// Highest engine speed at which the truck may be held. It is the highest allowed on overrun, or the
    /// speed at which a gearbox that shifts by itself shifts up and drops the retarder.
    #[must_use]
    pub fn highest_engine_speed(&self) -> RevPerMin {
        self.shifts_up_at()
            .map_or(RevPerMin(self.spec.highest_rpm), |it| RevPerMin(it.0.min(self.spec.highest_rpm)))
    }

    /// Engine speed at which the gearbox shifts up by itself: as entered, or the governed speed. `None` where
    /// it never does.
    fn shifts_up_at(&self) -> Option<RevPerMin> {
        let at = self.spec.shifts_up_rpm.unwrap_or_else(|| self.spec.governed_rpm());
        self.spec.transmission.chooses_gears().then_some(RevPerMin(at))
    }

    /// Whether the gearbox shifts up by itself below the highest allowed engine speed.
    #[must_use]
    pub fn shifts_up_early(&self) -> bool {
        self.shifts_up_at().is_some_and(|at| at.0 < self.spec.highest_rpm)
    }

    /// Highest engine speed at which the engine still pulls: the end of its full-load curve.
    #[must_use]
    pub fn governed_speed(&self) -> RevPerMin {
        RevPerMin(self.spec.governed_rpm())
    }

    /// Power that turns the unfuelled engine over.
    #[must_use]
    pub fn motoring_power(&self, speed: RevPerMin) -> Watts {
        engine::motoring_power(self.spec.displacement_l, speed)
    }

    /// Holding power at the engine with the stage on, before altitude: P_m + f·(P_r − P_m), never less than
    /// motoring. Motoring alone below the cut-out.
    #[must_use]
    pub fn retarding_power(&self, stage: Stage, speed: RevPerMin) -> Watts {
        let motoring = self.motoring_power(speed);
        let Some(index) = stage.0.checked_sub(1) else { return motoring };
        match self.spec.retarder.engine_power(usize::from(index), speed, motoring) {
            None => motoring,
            Some(full) => motoring + Watts((full - motoring).0.max(0.0)) * self.spec.retarding_scale,
        }
    }

    /// Torque of a retarder on the propeller shaft with the stage on, N·m.
    #[must_use]
    pub fn shaft_torque(
        &self,
        gear: Gear,
        stage: Stage,
        speed: MetresPerSecond,
        ambient: Ambient,
        warmth: Warmth,
    ) -> f64 {
        let Some(index) = stage.0.checked_sub(1) else { return 0.0 };
        let engine = self.engine_speed(gear, speed);
        let shaft = RevPerMin(engine.0 / self.ratio(gear));
        let torque = self.spec.retarder.shaft_torque(usize::from(index), shaft, engine, ambient, warmth);
        torque * self.spec.retarding_scale
    }

    /// Holding force at the wheels, with the ambient air scaling the engine's part: [(T_engine + T_gearbox
    /// loss)·g + T_shaft]·i_a/(r·η). On overrun the losses help. Behind an open torque converter only a
    /// retarder on the shaft counts.
    #[must_use]
    pub fn holding_force(
        &self,
        gear: Gear,
        stage: Stage,
        speed: MetresPerSecond,
        ambient: Ambient,
        warmth: Warmth,
    ) -> Newtons {
        let engine_speed = self.engine_speed(gear, speed);
        let shaft = self.shaft_torque(gear, stage, speed, ambient, warmth) / self.ratio(gear);
        let engine = if self.is_locked(gear, engine_speed) {
            let power = self.retarding_power(stage, engine_speed).0 * ambient.altitude_factor;
            let torque = power / engine_speed.radians_per_second();
            torque + gearbox::loss_torque(self.ratio(gear), engine_speed, torque)
        } else {
            0.0
        };
        Newtons((engine + shaft) * self.turns(gear) / self.spec.axle_efficiency)
    }

    /// Power that the shaft takes up with the stage on.
    #[must_use]
    pub fn shaft_power(
        &self,
        gear: Gear,
        stage: Stage,
        speed: MetresPerSecond,
        ambient: Ambient,
        warmth: Warmth,
    ) -> Watts {
        let shaft = RevPerMin(self.engine_speed(gear, speed).0 / self.ratio(gear));
        Watts(self.shaft_torque(gear, stage, speed, ambient, warmth) * shaft.radians_per_second())
    }

    /// Warmth of the retarder after `time` in which the shaft took up `power`.
    #[must_use]
    pub fn warmed(
        &self,
        from: Warmth,
        power: Watts,
        engine: RevPerMin,
        ambient: Ambient,
        time: Seconds,
    ) -> Warmth {
        self.spec.retarder.warmed(from, power, engine, ambient, time)
    }

    /// Pulling force at the wheels at full load in a gear; zero where the engine speed is outside its
    /// full-load curve.
    #[must_use]
    pub fn pulling_force(&self, gear: Gear, speed: MetresPerSecond) -> Newtons {
        let engine_speed = self.engine_speed(gear, speed);
        let torque = self.full_load_torque(engine_speed);
        if torque <= 0.0 {
            return Newtons(0.0);
        }
        let loss = gearbox::loss_torque(self.ratio(gear), engine_speed, torque);
        let turned = (torque - loss).max(0.0);
        Newtons(turned * self.turns(gear) * self.spec.axle_efficiency)
    }

    /// Full-load torque, N·m; zero outside the engine's curve.
    #[must_use]
    pub fn full_load_torque(&self, speed: RevPerMin) -> f64 {
        engine::full_load_torque(&self.spec.full_load, speed)
    }

    /// Torque of the engine, N·m, that gives this pulling force at the wheels.
    #[must_use]
    pub fn torque_to_pull(&self, gear: Gear, speed: MetresPerSecond, pull: Newtons) -> f64 {
        let engine_speed = self.engine_speed(gear, speed);
        let turned = pull.0 / (self.turns(gear) * self.spec.axle_efficiency);
        // The loss is a share of the torque sought; the torque passed through is near enough.
        turned + gearbox::loss_torque(self.ratio(gear), engine_speed, turned)
    }

    /// Rotational inertia of all wheels as a mass on the road: ΣJ_wheel/r².
    #[must_use]
    pub fn wheels_as_mass(&self) -> Kilograms {
        let r = self.spec.rolling_radius_m;
        Kilograms(self.spec.wheel_inertia_kg_m2 / (r * r))
    }

    /// Mass to be accelerated or slowed: λ·m.
    #[must_use]
    pub fn inertial_mass(&self, gear: Gear) -> Kilograms {
        self.mass() * self.rotating_factor(gear)
    }

    /// Mass to be accelerated or slowed, over the mass of the truck: λ = 1 + (ΣJ_wheel +
    /// J_engine·(g·i_a)²)/(m·r²).
    #[must_use]
    pub fn rotating_factor(&self, gear: Gear) -> f64 {
        let turns = self.turns(gear);
        let engine = engine::inertia(self.spec.displacement_l) * turns * turns;
        1.0 + (self.wheels_as_mass().0 + engine) / self.spec.gross_mass_kg
    }
}
