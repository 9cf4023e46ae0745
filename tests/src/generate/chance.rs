//! A small seeded source of chance.

/// SplitMix64. Source: Steele, Lea, Flood 2014, “Fast splittable pseudorandom number
/// generators”, OOPSLA 2014 (constants from memory).
#[derive(Clone, Debug)]
pub struct Chance {
    state: u64,
}

impl Chance {
    /// Every seed gives its own sequence.
    #[must_use]
    pub fn new(seed: u64) -> Chance {
        Chance { state: seed }
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// Even between two bounds.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        let share = (self.bits() >> 11) as f64 / (1u64 << 53) as f64;
        low + (high - low) * share
    }

    /// Close to a normal deviate: the sum of twelve uniform ones. It needs no function whose last bit differs
    /// between machines.
    pub fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.between(0.0, 1.0)).sum::<f64>() - 6.0
    }

    /// True with this probability.
    pub fn happens(&mut self, probability: f64) -> bool {
        self.between(0.0, 1.0) < probability
    }
}
