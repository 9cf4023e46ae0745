//! The retarder as a driver is asked for it: what sits on the shaft, and whether there is an engine brake.

use solver::truck::RetarderKind;

/// What holds back on the shaft, or a table in place of both.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OnShaft {
    /// Nothing.
    Nothing,
    /// A fluid that is stirred.
    Hydrodynamic,
    /// Eddy currents.
    Electromagnetic,
    /// A table of power at the engine.
    EngineTable,
    /// A table of torque at the shaft.
    ShaftTable,
}

/// What holds back at the engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AtEngine {
    /// Nothing but the engine itself.
    Nothing,
    /// A flap in the exhaust pipe.
    ExhaustFlap,
    /// Valves that open near the top of compression.
    Compression,
}

impl OnShaft {
    /// All answers.
    pub const ALL: [Self; 5] =
        [Self::Nothing, Self::Hydrodynamic, Self::Electromagnetic, Self::EngineTable, Self::ShaftTable];

    /// Whether a table says it all, so that no engine brake is asked for.
    #[must_use]
    pub fn is_table(self) -> bool {
        matches!(self, Self::EngineTable | Self::ShaftTable)
    }

    /// The key of the answer in the page.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.with(AtEngine::Nothing).key()
    }

    /// Both answers together.
    #[must_use]
    pub fn with(self, at_engine: AtEngine) -> RetarderKind {
        use AtEngine::{Compression, ExhaustFlap, Nothing};
        match (self, at_engine) {
            (Self::Nothing, Nothing) => RetarderKind::None,
            (Self::Nothing, ExhaustFlap) => RetarderKind::ExhaustValve,
            (Self::Nothing, Compression) => RetarderKind::CompressionRelease,
            (Self::Hydrodynamic, Nothing) => RetarderKind::Hydrodynamic,
            (Self::Hydrodynamic, ExhaustFlap) => RetarderKind::ExhaustAndHydrodynamic,
            (Self::Hydrodynamic, Compression) => RetarderKind::CompressionAndHydrodynamic,
            (Self::Electromagnetic, Nothing) => RetarderKind::Electromagnetic,
            (Self::Electromagnetic, ExhaustFlap) => RetarderKind::ExhaustAndElectromagnetic,
            (Self::Electromagnetic, Compression) => RetarderKind::CompressionAndElectromagnetic,
            (Self::EngineTable, _) => RetarderKind::EnginePowerTable,
            (Self::ShaftTable, _) => RetarderKind::ShaftTorqueTable,
        }
    }
}

impl AtEngine {
    /// All answers.
    pub const ALL: [Self; 3] = [Self::Nothing, Self::ExhaustFlap, Self::Compression];

    /// The key of the answer in the page.
    #[must_use]
    pub fn key(self) -> &'static str {
        OnShaft::Nothing.with(self).key()
    }
}

/// The two answers that a kind stands for.
#[must_use]
pub fn answers(kind: RetarderKind) -> (OnShaft, AtEngine) {
    let pairs = OnShaft::ALL.into_iter().flat_map(|shaft| AtEngine::ALL.map(|engine| (shaft, engine)));
    let found = pairs.into_iter().find(|(shaft, engine)| shaft.with(*engine) == kind);
    found.unwrap_or((OnShaft::Nothing, AtEngine::Nothing))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_is_two_answers_and_back() {
        for kind in RetarderKind::ALL {
            let (shaft, engine) = answers(kind);
            assert_eq!(shaft.with(engine), kind);
            assert!(!shaft.is_table() || engine == AtEngine::Nothing);
        }
    }
}
