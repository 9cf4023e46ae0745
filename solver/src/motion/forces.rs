//! What pulls, what resists and what holds, for a truck on a day.

use crate::atmosphere::{density, density_ratio};
use crate::constants::GRAVITY;
use crate::day::Day;
use crate::road::Road;
use crate::truck::{Ambient, Gear, Stage, Truck, Warmth};
use crate::units::{Grade, Metres, MetresPerSecond, Newtons};

/// The air at a place on a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// Density, kg/m³: what the truck drives against.
    pub density: f64,
    /// Factors of this air on engine and radiator.
    pub ambient: Ambient,
}

/// A truck on a day: what every force depends on.
#[derive(Debug, Clone, Copy)]
pub struct Trip<'a> {
    /// The truck.
    pub truck: &'a Truck,
    /// The day.
    pub day: &'a Day,
}

impl Trip<'_> {
    /// The air at a height.
    #[must_use]
    pub fn air(self, height: Metres) -> Air {
        self.air_of(density_ratio(height), height)
    }

    /// The air on a cell of a road.
    #[must_use]
    pub fn air_on(self, road: &Road, cell: usize) -> Air {
        let mean = |ends: &[f64]| 0.5 * (ends[cell] + ends[cell + 1]);
        self.air_of(mean(road.density_ratios()), Metres(mean(road.heights_m())))
    }

    fn air_of(self, ratio: f64, height: Metres) -> Air {
        let air = self.day.air();
        Air { density: density(ratio, height, air), ambient: Ambient::of(ratio.min(1.0), air) }
    }

    /// Weight, m·g.
    #[must_use]
    pub fn weight(self) -> Newtons {
        Newtons(self.truck.mass().0 * GRAVITY)
    }

    /// Gravity along the road, positive downhill: −m·g·sin θ.
    #[must_use]
    pub fn gravity(self, grade: Grade) -> Newtons {
        Newtons(-self.weight().0 * grade.sin_cos().0)
    }

    /// Rolling resistance: C_rr·m·g·cos θ.
    #[must_use]
    pub fn rolling(self, grade: Grade) -> Newtons {
        Newtons(self.truck.spec().rolling_resistance * self.weight().0 * grade.sin_cos().1)
    }

    /// Air drag: ½·ρ·C_dA·(v + w)·|v + w|, w the headwind. Negative in a tailwind faster than the truck.
    #[must_use]
    pub fn air_drag(self, speed: MetresPerSecond, air: Air) -> Newtons {
        let against = speed.0 + self.day.headwind().0;
        Newtons(0.5 * air.density * self.truck.spec().drag_area_m2 * against * against.abs())
    }

    /// Force left to hold: gravity less rolling less air. Positive: the truck must be held back. Negative: it
    /// must be pulled.
    #[must_use]
    pub fn demand(self, speed: MetresPerSecond, grade: Grade, air: Air) -> Newtons {
        self.gravity(grade) - self.rolling(grade) - self.air_drag(speed, air)
    }

    /// Sustained holding force of gear and stage. The engine's part is scaled by the density of the air at
    /// that height. Assumed, cautious: no printed law was found.
    #[must_use]
    pub fn holding(self, gear: Gear, stage: Stage, speed: MetresPerSecond, air: Air) -> Newtons {
        self.truck.holding_force(gear, stage, speed, air.ambient, Warmth::SUSTAINED)
    }

    /// Force that the driven axles may spend on retarding: μ·k·m_drive·g·cos θ.
    #[must_use]
    pub fn grip_for_retarding(self, grade: Grade) -> Newtons {
        self.grip_for_motoring(grade) * self.day.retarding_share()
    }

    /// Force at which the motoring engine makes the driven axles slip: μ·m_drive·g·cos θ. Motoring cannot be
    /// turned down, so all the grip counts.
    #[must_use]
    pub fn grip_for_motoring(self, grade: Grade) -> Newtons {
        let load = self.truck.spec().drive_axle_mass_kg * GRAVITY * grade.sin_cos().1;
        Newtons(self.day.surface.friction() * load)
    }

    /// Sustained holding force of a gear with the strongest stage that the driven axles grip. Zero where
    /// motoring alone would make them slip.
    #[must_use]
    pub fn retarding(self, gear: Gear, speed: MetresPerSecond, grade: Grade, air: Air) -> Newtons {
        self.retarding_as_warm(gear, speed, grade, air, Warmth::SUSTAINED)
    }

    /// As [`Trip::retarding`], with the retarder at its present warmth.
    #[must_use]
    pub fn retarding_as_warm(
        self,
        gear: Gear,
        speed: MetresPerSecond,
        grade: Grade,
        air: Air,
        warmth: Warmth,
    ) -> Newtons {
        let held = |stage| self.truck.holding_force(gear, stage, speed, air.ambient, warmth).0;
        let (grip, motoring) = (self.grip_for_retarding(grade).0, self.grip_for_motoring(grade).0);
        let strongest = self.strongest_stage();
        // Nearly always the strongest; on a slippery road the strongest that does not make the axles slip.
        let gripping = self.truck.stages().rev().filter(|stage| *stage <= strongest).find_map(|stage| {
            let force = held(stage);
            (force <= if stage.is_off() { motoring } else { grip }).then_some(force)
        });
        Newtons(gripping.unwrap_or(0.0))
    }

    /// The weakest stage that holds `need`, or the strongest that the driven axles grip on this grade.
    #[must_use]
    pub fn weakest_stage(
        self,
        gear: Gear,
        speed: MetresPerSecond,
        grade: Grade,
        air: Air,
        need: Newtons,
    ) -> Stage {
        if need.0 <= 0.0 {
            return Stage::OFF;
        }
        let (strongest, grip) = (self.strongest_stage(), self.grip_for_retarding(grade));
        let mut found = Stage::OFF;
        for stage in self.truck.stages().filter(|stage| *stage <= strongest) {
            let force = self.holding(gear, stage, speed, air);
            if !stage.is_off() && force > grip {
                break;
            }
            found = stage;
            if force >= need {
                break;
            }
        }
        found
    }

    /// The strongest stage that may be recommended on this surface.
    #[must_use]
    pub fn strongest_stage(self) -> Stage {
        if self.day.retarding_share() > 0.0 { self.truck.full_stage() } else { Stage::OFF }
    }

    /// The fastest that the truck may go: the day's limit, or the speed at the highest allowed engine speed
    /// in the highest gear where that is slower.
    #[must_use]
    pub fn top_speed(self) -> MetresPerSecond {
        let limit = self.day.speed_limit();
        match self.truck.gears().next_back() {
            Some(gear) => {
                MetresPerSecond(limit.0.min(self.truck.road_speed(gear, self.truck.highest_engine_speed()).0))
            }
            None => limit,
        }
    }

    /// The lowest gear that keeps the engine at or below `share` of its highest allowed speed, and so the
    /// gear that holds most. `None` where even the highest gear overspeeds.
    #[must_use]
    pub fn lowest_gear_within(self, speed: MetresPerSecond, share: f64) -> Option<Gear> {
        let ceiling = self.truck.highest_engine_speed() * share;
        self.truck.gears().find(|gear| self.truck.engine_speed(*gear, speed) <= ceiling)
    }
}
