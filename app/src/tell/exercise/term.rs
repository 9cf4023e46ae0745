//! What lines of an exercise are about.

use solver::truck::Gear;
use solver::units::MetresPerSecond;

/// Label of a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Label {
    /// A quantity.
    Term(Term),
    /// A gear at a speed.
    Gear(Gear, MetresPerSecond),
}

/// A quantity of an exercise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Term {
    /// Rolling resistance coefficient.
    RollingCoefficient,
    /// Drag area.
    DragArea,
    /// Density of the air.
    AirDensity,
    /// Density of the air over that at sea level, at 15 °C.
    AirDensityRatio,
    /// Headwind; negative from behind.
    Headwind,
    /// Holding force by engine speed and road speed.
    HoldingTable,
    /// Heat capacity of the axle group's brakes.
    HeatCapacity,
    /// Heat that they give off per degree above the air.
    Cooling,
    /// Share of the braking that the axle group does.
    GroupShare,
    /// Temperature of the air.
    AirTemperature,
    /// Temperature of the brakes at the crest.
    BrakesAtCrest,
    /// Sine of the angle of the road.
    Sine,
    /// Its cosine.
    Cosine,
    /// Gravity along the road.
    Gravity,
    /// Rolling resistance.
    Rolling,
    /// Speed against the air.
    AgainstAir,
    /// Air resistance.
    Air,
    /// What is left to hold back.
    Demand,
    /// Holding force against what is left to hold back.
    HoldingAgainstDemand,
    /// Speed at which both are compared.
    ComparedAt,
    /// Length in feet.
    LengthInFeet,
    /// Work of gravity.
    GravityWork,
    /// Work against rolling resistance.
    RollingWork,
    /// Work against the air.
    AirWork,
    /// Work left to be taken away.
    WorkLeft,
    /// Work of engine and retarder.
    CarriedWork,
    /// Work of the service brakes.
    ServiceWork,
    /// Time at the slower speed.
    SlowTime,
    /// Time at the faster speed.
    FastTime,
    /// Time saved.
    TimeSaved,
    /// Energy of motion at the faster speed over that at the slower.
    MotionEnergy,
    /// Power of the axle group's brakes.
    GroupPower,
    /// Time down.
    TimeDown,
    /// Time constant: heat capacity over cooling.
    TimeConstant,
    /// Temperature in the long run.
    Settled,
    /// Share of the rise that is still ahead.
    Ahead,
    /// Temperature at the foot.
    AtFoot,
}

impl Term {
    /// All of them.
    pub const ALL: [Self; 37] = [
        Self::RollingCoefficient,
        Self::DragArea,
        Self::AirDensity,
        Self::AirDensityRatio,
        Self::Headwind,
        Self::HoldingTable,
        Self::HeatCapacity,
        Self::Cooling,
        Self::GroupShare,
        Self::AirTemperature,
        Self::BrakesAtCrest,
        Self::Sine,
        Self::Cosine,
        Self::Gravity,
        Self::Rolling,
        Self::AgainstAir,
        Self::Air,
        Self::Demand,
        Self::HoldingAgainstDemand,
        Self::ComparedAt,
        Self::LengthInFeet,
        Self::GravityWork,
        Self::RollingWork,
        Self::AirWork,
        Self::WorkLeft,
        Self::CarriedWork,
        Self::ServiceWork,
        Self::SlowTime,
        Self::FastTime,
        Self::TimeSaved,
        Self::MotionEnergy,
        Self::GroupPower,
        Self::TimeDown,
        Self::TimeConstant,
        Self::Settled,
        Self::Ahead,
        Self::AtFoot,
    ];
}
