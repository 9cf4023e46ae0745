//! The kinds by name, and a retarder of each to begin with.

use super::{
    Driveline, Electromagnetic, EngineBrake, EnteredTable, Hydrodynamic, Retarder, TableOf, TableRow,
    compression_release, engine_curve::declared, exhaust_valve,
};
use crate::limits::Entry;
use serde::{Deserialize, Serialize};

/// A kind of retarder.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RetarderKind {
    /// None.
    None,
    /// Compression release.
    CompressionRelease,
    /// Exhaust valve.
    ExhaustValve,
    /// Hydrodynamic.
    Hydrodynamic,
    /// Electromagnetic.
    Electromagnetic,
    /// Compression release and hydrodynamic.
    CompressionAndHydrodynamic,
    /// Exhaust valve and hydrodynamic.
    ExhaustAndHydrodynamic,
    /// Compression release and electromagnetic.
    CompressionAndElectromagnetic,
    /// Exhaust valve and electromagnetic.
    ExhaustAndElectromagnetic,
    /// Power at the engine by speed and stage.
    EnginePowerTable,
    /// Torque at the shaft by speed and stage.
    ShaftTorqueTable,
}

/// Data of an engine for which a retarder is begun.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::truck) struct EngineSize {
    pub(in crate::truck) litres: f64,
    pub(in crate::truck) rated_kw: f64,
    pub(in crate::truck) highest_rpm: f64,
}

impl RetarderKind {
    /// All kinds.
    pub const ALL: [Self; 11] = [
        Self::None,
        Self::CompressionRelease,
        Self::ExhaustValve,
        Self::Hydrodynamic,
        Self::Electromagnetic,
        Self::CompressionAndHydrodynamic,
        Self::ExhaustAndHydrodynamic,
        Self::CompressionAndElectromagnetic,
        Self::ExhaustAndElectromagnetic,
        Self::EnginePowerTable,
        Self::ShaftTorqueTable,
    ];

    /// Its key, as the page uses it.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::None => "none",
            Self::CompressionRelease => "compression-release",
            Self::ExhaustValve => "exhaust-valve",
            Self::Hydrodynamic => "hydrodynamic",
            Self::Electromagnetic => "electromagnetic",
            Self::CompressionAndHydrodynamic => "compression-hydrodynamic",
            Self::ExhaustAndHydrodynamic => "exhaust-hydrodynamic",
            Self::CompressionAndElectromagnetic => "compression-electromagnetic",
            Self::ExhaustAndElectromagnetic => "exhaust-electromagnetic",
            Self::EnginePowerTable => "engine-table",
            Self::ShaftTorqueTable => "shaft-table",
        }
    }

    /// The kind with this key.
    #[must_use]
    pub fn by_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.key() == key)
    }

    /// A retarder of this kind for an engine; its numbers are assumed.
    pub(in crate::truck) fn assumed(self, engine: EngineSize) -> Retarder {
        let compression = || {
            EngineBrake::CompressionRelease(compression_release::assumed(
                engine.litres,
                engine.rated_kw,
                engine.highest_rpm,
            ))
        };
        let exhaust = || EngineBrake::ExhaustValve(exhaust_valve::assumed(engine.litres, engine.highest_rpm));
        let hydrodynamic = || Driveline::Hydrodynamic(Hydrodynamic::assumed(engine.rated_kw));
        let electromagnetic = || Driveline::Electromagnetic(Electromagnetic::assumed());
        let thirds = || vec![1.0 / 3.0, 2.0 / 3.0, 1.0];
        let quarters = || vec![0.25, 0.5, 0.75, 1.0];
        match self {
            Self::None => Retarder::None,
            Self::CompressionRelease => Retarder::Engine { brake: compression(), stages: thirds() },
            Self::ExhaustValve => Retarder::Engine { brake: exhaust(), stages: vec![1.0] },
            Self::Hydrodynamic => Retarder::Driveline { retarder: hydrodynamic(), stages: quarters() },
            Self::Electromagnetic => Retarder::Driveline { retarder: electromagnetic(), stages: quarters() },
            Self::CompressionAndHydrodynamic => both(compression(), hydrodynamic(), thirds()),
            Self::ExhaustAndHydrodynamic => both(exhaust(), hydrodynamic(), quarters()),
            Self::CompressionAndElectromagnetic => both(compression(), electromagnetic(), thirds()),
            Self::ExhaustAndElectromagnetic => both(exhaust(), electromagnetic(), quarters()),
            Self::EnginePowerTable => {
                let curve = compression_release::assumed(engine.litres, engine.rated_kw, engine.highest_rpm);
                table(TableOf::EnginePower, engine.highest_rpm, |share| {
                    (curve.peak_power_kw * declared(share)).round()
                })
            }
            Self::ShaftTorqueTable => table(TableOf::ShaftTorque, engine.highest_rpm, |share| {
                Hydrodynamic::assumed(engine.rated_kw).torque_nm * 0.5 * share
            }),
        }
    }

    /// Entries for the numbers of retarders, all of them assumed to begin with.
    pub(in crate::truck) fn entries() -> [Entry; 13] {
        [
            Entry::RetarderDelay,
            Entry::RetarderPeakPower,
            Entry::RetarderPeakSpeed,
            Entry::RetarderExponent,
            Entry::RetarderCutOut,
            Entry::ShaftTorque,
            Entry::ShaftSpeed,
            Entry::ShortPower,
            Entry::ShortTime,
            Entry::SustainedPower,
            Entry::SustainedSpeed,
            Entry::HotShare,
            Entry::WarmUpTime,
        ]
    }
}

fn both(brake: EngineBrake, retarder: Driveline, stages: Vec<f64>) -> Retarder {
    Retarder::Both { brake, retarder, stages }
}

/// A table to start from: four speeds, three stages.
fn table(of: TableOf, highest_rpm: f64, full: impl Fn(f64) -> f64) -> Retarder {
    let rows = [0.45, 0.65, 0.85, 1.0].map(|share| {
        let values = [1.0 / 3.0, 2.0 / 3.0, 1.0].map(|stage| (stage * full(share)).round());
        TableRow { rpm: (share * highest_rpm).round(), values: values.to_vec() }
    });
    Retarder::Table(EnteredTable { of, rows: rows.to_vec() })
}

impl Retarder {
    /// Its kind.
    #[must_use]
    pub fn kind(&self) -> RetarderKind {
        use Driveline::{Electromagnetic, Hydrodynamic};
        use EngineBrake::{CompressionRelease, ExhaustValve};
        match self {
            Self::None => RetarderKind::None,
            Self::Engine { brake: CompressionRelease(_), .. } => RetarderKind::CompressionRelease,
            Self::Engine { brake: ExhaustValve(_), .. } => RetarderKind::ExhaustValve,
            Self::Driveline { retarder: Hydrodynamic(_), .. } => RetarderKind::Hydrodynamic,
            Self::Driveline { retarder: Electromagnetic(_), .. } => RetarderKind::Electromagnetic,
            Self::Both { brake: CompressionRelease(_), retarder: Hydrodynamic(_), .. } => {
                RetarderKind::CompressionAndHydrodynamic
            }
            Self::Both { brake: ExhaustValve(_), retarder: Hydrodynamic(_), .. } => {
                RetarderKind::ExhaustAndHydrodynamic
            }
            Self::Both { brake: CompressionRelease(_), retarder: Electromagnetic(_), .. } => {
                RetarderKind::CompressionAndElectromagnetic
            }
            Self::Both { brake: ExhaustValve(_), retarder: Electromagnetic(_), .. } => {
                RetarderKind::ExhaustAndElectromagnetic
            }
            Self::Table(table) => match table.of {
                TableOf::EnginePower => RetarderKind::EnginePowerTable,
                TableOf::ShaftTorque => RetarderKind::ShaftTorqueTable,
            },
        }
    }
}
