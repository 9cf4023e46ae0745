//! Retarders: a closed set, one file a kind.
//!
//! To add a kind, write its file, add the variant, and follow the compiler.

mod compression_release;

pub use compression_release::CompressionRelease;

use crate::units::{RevPerMin, Watts};
use serde::{Deserialize, Serialize};

/// The retarder of a truck.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Retarder {
    /// None: the motoring engine alone holds.
    None,
    /// The engine's exhaust valves open near the top of compression.
    CompressionRelease(CompressionRelease),
}

impl Retarder {
    /// Shares of full retarding by stage, weakest first, "off" not among them.
    #[must_use]
    pub fn stages(&self) -> &[f64] {
        match self {
            Self::None => &[],
            Self::CompressionRelease(it) => &it.stages,
        }
    }

    /// Power of all stages at the engine with motoring included; `None` where the retarder
    /// is cut out.
    #[must_use]
    pub(super) fn full_power(&self, speed: RevPerMin) -> Option<Watts> {
        match self {
            Self::None => None,
            Self::CompressionRelease(it) => it.full_power(speed),
        }
    }

    /// Engine speed below which it is off, 1/min; zero where there is none.
    #[must_use]
    pub fn cut_out_rpm(&self) -> f64 {
        match self {
            Self::None => 0.0,
            Self::CompressionRelease(it) => it.cut_out_rpm,
        }
    }
}
