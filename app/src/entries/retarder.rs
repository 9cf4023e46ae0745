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

/// The retarder in one answer, as a driver gives it at once.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InShort {
    /// An engine brake alone.
    EngineBrake,
    /// A flap in the exhaust pipe alone.
    ExhaustBrake,
    /// A hydrodynamic retarder alone.
    Hydrodynamic,
    /// An electric retarder alone.
    Electric,
    /// One at the engine and one on the shaft.
    Both,
    /// None.
    Nothing,
}

impl InShort {
    /// All of them.
    pub const ALL: [Self; 6] = [
        Self::EngineBrake,
        Self::ExhaustBrake,
        Self::Hydrodynamic,
        Self::Electric,
        Self::Both,
        Self::Nothing,
    ];

    /// The answer that a kind stands for; `None` for a table.
    #[must_use]
    pub fn of(kind: RetarderKind) -> Option<Self> {
        match answers(kind) {
            (shaft, _) if shaft.is_table() => None,
            (OnShaft::Nothing, AtEngine::Nothing) => Some(Self::Nothing),
            (OnShaft::Nothing, AtEngine::ExhaustFlap) => Some(Self::ExhaustBrake),
            (OnShaft::Nothing, AtEngine::Compression) => Some(Self::EngineBrake),
            (OnShaft::Hydrodynamic, AtEngine::Nothing) => Some(Self::Hydrodynamic),
            (OnShaft::Electromagnetic, AtEngine::Nothing) => Some(Self::Electric),
            _ => Some(Self::Both),
        }
    }

    /// Its key in the page.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::EngineBrake => "engine",
            Self::ExhaustBrake => "exhaust",
            Self::Hydrodynamic => "hydrodynamic",
            Self::Electric => "electric",
            Self::Both => "both",
            Self::Nothing => "none",
        }
    }

    /// The kind that it stands for on a truck that has `now`. Of two together the one that is there stays; the
    /// other is the one that holds less.
    #[must_use]
    pub fn kind(self, now: RetarderKind) -> RetarderKind {
        let (shaft, engine) = answers(now);
        match self {
            Self::EngineBrake => OnShaft::Nothing.with(AtEngine::Compression),
            Self::ExhaustBrake => OnShaft::Nothing.with(AtEngine::ExhaustFlap),
            Self::Hydrodynamic => OnShaft::Hydrodynamic.with(AtEngine::Nothing),
            Self::Electric => OnShaft::Electromagnetic.with(AtEngine::Nothing),
            Self::Both => {
                let shaft =
                    if matches!(shaft, OnShaft::Electromagnetic) { shaft } else { OnShaft::Hydrodynamic };
                let engine = if engine == AtEngine::Nothing { AtEngine::ExhaustFlap } else { engine };
                shaft.with(engine)
            }
            Self::Nothing => RetarderKind::None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_short_answer_is_given_back_whatever_was_fitted_before() {
        for now in RetarderKind::ALL {
            for answer in InShort::ALL {
                let kind = answer.kind(now);
                assert_eq!(InShort::of(kind), Some(answer), "{now:?}");
                // What is pressed already changes nothing.
                assert!(InShort::of(now) != Some(answer) || kind == now, "{now:?}");
            }
        }
        assert_eq!(InShort::of(RetarderKind::ShaftTorqueTable), None);
        let both = InShort::Both.kind(RetarderKind::CompressionRelease);
        assert_eq!(both, RetarderKind::CompressionAndHydrodynamic);
    }

    #[test]
    fn every_kind_is_two_answers_and_back() {
        for kind in RetarderKind::ALL {
            let (shaft, engine) = answers(kind);
            assert_eq!(shaft.with(engine), kind);
            assert!(!shaft.is_table() || engine == AtEngine::Nothing);
        }
    }
}
