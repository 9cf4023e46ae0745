//! Roads whose truth is known, and the files that instruments would record on them.
//!
//! A road is an [`Alignment`] (tangents joined by parabolas, as roads are built) over a [`Plan`] (straights
//! and arcs, hairpins among them). [`Drive`] goes along it and writes what an instrument of one of three
//! kinds would record. Everything follows from a seed. There is no clock and no other source of chance, and
//! the bits are equal on every machine.

mod alignment;
mod built;
mod chance;
mod drive;
mod hills;
mod lessons;
mod pass;
mod plan;
mod write;

pub use alignment::{Alignment, Tangent};
pub use built::BuiltIn;
pub use chance::Chance;
pub use drive::{Bump, Drive, Instrument, Sample};
pub use hills::Hill;
pub use lessons::{Lesson, lesson};
pub use pass::demo;
pub use plan::{Bend, Plan};
pub use write::{Mark, gpx_text};

/// A road with known truth: heights and shape in plan.
#[derive(Clone, Debug)]
pub struct TrueRoad {
    /// Its heights.
    pub alignment: Alignment,
    /// Its shape seen from above.
    pub plan: Plan,
}

impl TrueRoad {
    /// A hilly road of about `length_m` metres: grades between −10 and +8 %, tangents of 200 to
    /// 1,500 m, parabolas of 60 to 200 m between them, bends of 25 to 600 m, some hairpins.
    #[must_use]
    pub fn random(seed: u64, length_m: f64) -> TrueRoad {
        let mut chance = Chance::new(seed);
        TrueRoad {
            alignment: Alignment::random(&mut chance, length_m),
            plan: Plan::random(&mut chance, length_m + 2_000.0),
        }
    }

    /// Length, metres.
    #[must_use]
    pub fn length_m(&self) -> f64 {
        self.alignment.length_m()
    }
}
