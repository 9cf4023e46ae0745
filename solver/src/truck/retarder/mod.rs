//! Retarders: a closed set, one file for each kind.
//!
//! To add a kind, write its file, add the variant, and follow the compiler.

mod ambient;
mod compression_release;
mod electromagnetic;
mod engine_curve;
mod entered_table;
mod exhaust_valve;
mod hydrodynamic;
mod kind;
mod warmth;

pub use ambient::Ambient;
pub use electromagnetic::Electromagnetic;
pub use engine_curve::EngineCurve;
pub use entered_table::{EnteredTable, TableOf, TableRow};
pub use hydrodynamic::Hydrodynamic;
pub(super) use kind::EngineSize;
pub use kind::RetarderKind;
pub use warmth::Warmth;

use crate::units::{RevPerMin, Seconds, Watts};
use serde::{Deserialize, Serialize};

/// The retarder of a truck.
///
/// Stages are the shares of full retarding, weakest first, the last one 1; "off" is not among them. Where
/// engine and driveline work together, one lever asks the same share of both.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Retarder {
    /// No retarder: the motoring engine alone holds.
    None,
    /// At the engine.
    Engine {
        /// The engine brake.
        brake: EngineBrake,
        /// Shares by stage.
        stages: Vec<f64>,
    },
    /// On the propeller shaft.
    Driveline {
        /// The shaft retarder.
        retarder: Driveline,
        /// Shares by stage.
        stages: Vec<f64>,
    },
    /// At the engine and on the propeller shaft.
    Both {
        /// The part at the engine.
        brake: EngineBrake,
        /// The part on the shaft.
        retarder: Driveline,
        /// Shares by stage.
        stages: Vec<f64>,
    },
    /// As entered by speed and stage.
    Table(EnteredTable),
}

/// A retarder at the engine.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum EngineBrake {
    /// Exhaust valves that open near the top of compression.
    CompressionRelease(EngineCurve),
    /// A valve in the exhaust pipe.
    ExhaustValve(EngineCurve),
}

impl EngineBrake {
    /// Its power curve.
    #[must_use]
    pub fn curve(&self) -> &EngineCurve {
        match self {
            Self::CompressionRelease(curve) | Self::ExhaustValve(curve) => curve,
        }
    }

    pub(super) fn curve_mut(&mut self) -> &mut EngineCurve {
        match self {
            Self::CompressionRelease(curve) | Self::ExhaustValve(curve) => curve,
        }
    }
}

/// A retarder on the propeller shaft.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Driveline {
    /// Hydrodynamic.
    Hydrodynamic(Hydrodynamic),
    /// Electromagnetic.
    Electromagnetic(Electromagnetic),
}

impl Driveline {
    pub(super) fn torque_mut(&mut self) -> &mut f64 {
        match self {
            Self::Hydrodynamic(it) => &mut it.torque_nm,
            Self::Electromagnetic(it) => &mut it.torque_nm,
        }
    }

    pub(super) fn speed_mut(&mut self) -> &mut f64 {
        match self {
            Self::Hydrodynamic(it) => &mut it.full_torque_rpm,
            Self::Electromagnetic(it) => &mut it.peak_rpm,
        }
    }
}

impl Retarder {
    /// A compression-release brake of this power at this engine speed, in three stages. Shape and cut-out are
    /// assumed.
    #[must_use]
    pub fn compression_release(peak_power_kw: f64, peak_rpm: f64) -> Self {
        let cut_out_rpm = compression_release::CUT_OUT_RPM;
        let curve = EngineCurve { peak_power_kw, peak_rpm, exponent: None, cut_out_rpm };
        let stages = vec![1.0 / 3.0, 2.0 / 3.0, 1.0];
        Self::Engine { brake: EngineBrake::CompressionRelease(curve), stages }
    }

    /// Shares of full retarding by stage. Empty where there is no retarder, and for an entered table, which
    /// has a column for each stage.
    #[must_use]
    pub fn shares(&self) -> &[f64] {
        match self {
            Self::None | Self::Table(_) => &[],
            Self::Engine { stages, .. } | Self::Driveline { stages, .. } | Self::Both { stages, .. } => {
                stages
            }
        }
    }

    pub(super) fn shares_mut(&mut self) -> Option<&mut Vec<f64>> {
        match self {
            Self::None | Self::Table(_) => None,
            Self::Engine { stages, .. } | Self::Driveline { stages, .. } | Self::Both { stages, .. } => {
                Some(stages)
            }
        }
    }

    /// The retarder without its strongest stage; `None` where it has none. The result is no valid entry,
    /// since its last share is below 1.
    pub(super) fn without_strongest(mut self) -> Option<Self> {
        match self.stage_count() {
            0 => return None,
            1 => return Some(Self::None),
            _ => {}
        }
        if let Some(shares) = self.shares_mut() {
            shares.pop();
        }
        if let Self::Table(table) = &mut self {
            for row in &mut table.rows {
                row.values.pop();
            }
        }
        Some(self)
    }

    /// Number of stages, "off" not counted.
    #[must_use]
    pub fn stage_count(&self) -> usize {
        match self {
            Self::Table(table) => table.stages(),
            Self::None | Self::Engine { .. } | Self::Driveline { .. } | Self::Both { .. } => {
                self.shares().len()
            }
        }
    }

    /// Its part at the engine, where there is one with a curve.
    #[must_use]
    pub fn brake(&self) -> Option<&EngineBrake> {
        match self {
            Self::None | Self::Driveline { .. } | Self::Table(_) => None,
            Self::Engine { brake, .. } | Self::Both { brake, .. } => Some(brake),
        }
    }

    pub(super) fn brake_mut(&mut self) -> Option<&mut EngineBrake> {
        match self {
            Self::None | Self::Driveline { .. } | Self::Table(_) => None,
            Self::Engine { brake, .. } | Self::Both { brake, .. } => Some(brake),
        }
    }

    /// Its part on the propeller shaft, where there is one with a shape of its own.
    #[must_use]
    pub fn driveline(&self) -> Option<&Driveline> {
        match self {
            Self::None | Self::Engine { .. } | Self::Table(_) => None,
            Self::Driveline { retarder, .. } | Self::Both { retarder, .. } => Some(retarder),
        }
    }

    pub(super) fn driveline_mut(&mut self) -> Option<&mut Driveline> {
        match self {
            Self::None | Self::Engine { .. } | Self::Table(_) => None,
            Self::Driveline { retarder, .. } | Self::Both { retarder, .. } => Some(retarder),
        }
    }

    /// Power at the engine of the stage with this index, 0 the weakest, motoring included; `None` where
    /// nothing at the engine is on.
    pub(super) fn engine_power(&self, stage: usize, speed: RevPerMin, motoring: Watts) -> Option<Watts> {
        match self {
            Self::None | Self::Driveline { .. } => None,
            Self::Engine { brake, stages } | Self::Both { brake, stages, .. } => {
                let full = brake.curve().full_power(speed)?;
                Some(motoring + (full - motoring) * stages[stage])
            }
            Self::Table(table) => match table.of {
                TableOf::EnginePower => table.at(stage, speed).map(|kilowatts| Watts(kilowatts * 1e3)),
                TableOf::ShaftTorque => None,
            },
        }
    }

    /// Torque at the propeller shaft of the stage with this index, N·m.
    pub(super) fn shaft_torque(
        &self,
        stage: usize,
        shaft: RevPerMin,
        engine: RevPerMin,
        ambient: Ambient,
        warmth: Warmth,
    ) -> f64 {
        match self {
            Self::None | Self::Engine { .. } => 0.0,
            Self::Driveline { retarder, stages } | Self::Both { retarder, stages, .. } => {
                let full = match retarder {
                    Driveline::Hydrodynamic(it) => it.full_torque(shaft, engine, ambient, warmth),
                    Driveline::Electromagnetic(it) => it.full_torque(shaft, warmth),
                };
                full * stages[stage]
            }
            Self::Table(table) => match table.of {
                TableOf::EnginePower => 0.0,
                TableOf::ShaftTorque => table.at(stage, shaft).unwrap_or(0.0),
            },
        }
    }

    /// Warmth after `time` with this power at the shaft.
    pub(super) fn warmed(
        &self,
        from: Warmth,
        power: Watts,
        engine: RevPerMin,
        ambient: Ambient,
        time: Seconds,
    ) -> Warmth {
        match self.driveline() {
            Some(Driveline::Hydrodynamic(it)) => it.warmed(from, power, engine, ambient, time),
            Some(Driveline::Electromagnetic(it)) => it.warmed(from, power, time),
            None => from,
        }
    }

    /// Engine speed below which its part at the engine is off, 1/min; zero where it has none.
    #[must_use]
    pub fn cut_out_rpm(&self) -> f64 {
        match self {
            Self::None | Self::Driveline { .. } => 0.0,
            Self::Engine { brake, .. } | Self::Both { brake, .. } => brake.curve().cut_out_rpm,
            Self::Table(table) => match table.of {
                TableOf::EnginePower => table.lowest_rpm(),
                TableOf::ShaftTorque => 0.0,
            },
        }
    }

    /// Whether some of it works at the engine, and so is off whenever the clutch opens.
    #[must_use]
    pub fn is_at_engine(&self) -> bool {
        match self {
            Self::None | Self::Driveline { .. } => false,
            Self::Engine { .. } | Self::Both { .. } => true,
            Self::Table(table) => table.of == TableOf::EnginePower,
        }
    }
}
