//! The day: what changes from one trip to the next with the same truck.

use crate::limits::{self, Entry, OutOfRange};
use crate::units::{Celsius, MetresPerSecond};
use serde::{Deserialize, Serialize};

/// What the tyres stand on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Surface {
    /// Dry asphalt or concrete.
    Dry,
    /// Wet; the retarder may use half of what the drive axle grips.
    Wet,
    /// Packed snow: no retarder stage is recommended.
    Snow,
    /// Ice: no retarder stage is recommended.
    Ice,
}

impl Surface {
    /// All surfaces, from the most to the least grip.
    pub const ALL: [Self; 4] = [Self::Dry, Self::Wet, Self::Snow, Self::Ice];

    /// Friction between tyre and road: the low end of the printed ranges (ADHESION: dry
    /// asphalt 0.70–0.80, wet 0.45–0.55, packed snow 0.25–0.35, ice 0.05–0.15).
    #[must_use]
    pub fn friction(self) -> f64 {
        match self {
            Self::Dry => 0.70,
            Self::Wet => 0.45,
            Self::Snow => 0.25,
            Self::Ice => 0.05,
        }
    }
}

/// How the service brakes may be used on a descent.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ServiceBrakes {
    /// The retarder holds the truck alone; the service brakes stay cool for stopping.
    InReserve,
    /// Snubs within the heat limit are allowed for a faster descent.
    MaySnub,
}

/// Which way down comes first where several are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Lead {
    /// The fastest that holds: in legs where the gearbox and the hill allow it.
    #[default]
    Usual,
    /// One gear all the way.
    OneGear,
    /// One gear in which the retarder alone holds every recorded pitch.
    Untouched,
}

impl Lead {
    /// All ways down.
    pub const ALL: [Self; 3] = [Self::Usual, Self::OneGear, Self::Untouched];
}

/// What hangs on the driven axles.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Load {
    /// Loaded.
    #[default]
    Laden,
    /// Empty: little weight on the driven axles.
    Empty,
    /// A tractor without its trailer.
    NoTrailer,
}

impl Load {
    /// All loads.
    pub const ALL: [Self; 3] = [Self::Laden, Self::Empty, Self::NoTrailer];
}

/// Why no retarder stage is recommended. Published guidance conflicts here; the cautious reading wins.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Withheld {
    /// Packed snow.
    Snow,
    /// Ice.
    Ice,
    /// Empty on a wet road.
    EmptyInTheWet,
    /// Without a trailer on a wet road.
    NoTrailerInTheWet,
}

/// The entries of the day. Build it with [`Day::checked`] after changing it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Day {
    /// Road surface.
    pub surface: Surface,
    /// Air temperature, °C. The default is that of the published temperature model, 90 °F (GSRS).
    pub air_c: f64,
    /// Brake temperature at the start of the road, °C. Default 150 °F (GSRS).
    pub brakes_at_start_c: f64,
    /// Headwind, km/h; a tailwind is negative and pushes.
    pub headwind_kmh: f64,
    /// Posted or own speed limit, km/h.
    pub speed_limit_kmh: f64,
    /// Margin of full-stage holding force over demand that every sustained grade must leave: 0.15 asks for 15
    /// % more than needed.
    pub reserve: f64,
    /// Highest brake temperature that may be reached, one hard stop included, °C.
    /// Default 500 °F (GSRS).
    pub heat_limit_c: f64,
    /// How the service brakes may be used.
    pub service_brakes: ServiceBrakes,
    /// Which way down leads.
    #[serde(default)]
    pub lead: Lead,
    /// Superelevation of the curves, rise over width; 0, flat, where it is not known.
    #[serde(default)]
    pub superelevation: f64,
    /// What hangs on the driven axles.
    #[serde(default)]
    pub load: Load,
    /// Time that the truck stands at each brake check on the road, min; 0 drives past.
    #[serde(default)]
    pub brake_check_stop_min: f64,
}

impl Day {
    /// The conditions of the published temperature model, dry, at 80 km/h.
    pub const USUAL: Self = Self {
        surface: Surface::Dry,
        air_c: 32.0,
        brakes_at_start_c: 66.0,
        headwind_kmh: 0.0,
        speed_limit_kmh: 80.0,
        reserve: 0.15,
        heat_limit_c: 260.0,
        service_brakes: ServiceBrakes::InReserve,
        lead: Lead::Usual,
        superelevation: 0.0,
        load: Load::Laden,
        brake_check_stop_min: 0.0,
    };

    /// Why no retarder stage is recommended; `None` where stages may be used.
    #[must_use]
    pub fn withheld(&self) -> Option<Withheld> {
        match (self.surface, self.load) {
            (Surface::Dry, _) | (Surface::Wet, Load::Laden) => None,
            (Surface::Wet, Load::Empty) => Some(Withheld::EmptyInTheWet),
            (Surface::Wet, Load::NoTrailer) => Some(Withheld::NoTrailerInTheWet),
            (Surface::Snow, _) => Some(Withheld::Snow),
            (Surface::Ice, _) => Some(Withheld::Ice),
        }
    }

    /// Share of the surface's friction that the driven axles may spend on retarding. Assumed: half in the
    /// wet; none where a driven axle that locks cannot be made to roll again.
    #[must_use]
    pub fn retarding_share(&self) -> f64 {
        match (self.withheld(), self.surface) {
            (Some(_), _) => 0.0,
            (None, Surface::Dry) => 1.0,
            (None, Surface::Wet | Surface::Snow | Surface::Ice) => 0.5,
        }
    }

    /// The value of an entry of the day, in its own unit; `None` for an entry of the truck.
    #[must_use]
    pub fn get(&self, entry: Entry) -> Option<f64> {
        self.clone().place(entry).copied()
    }

    /// Sets an entry of the day, in its own unit; an entry of the truck is left alone.
    pub fn set(&mut self, entry: Entry, value: f64) {
        if let Some(place) = self.place(entry) {
            *place = value;
        }
    }

    fn place(&mut self, entry: Entry) -> Option<&mut f64> {
        match entry {
            Entry::AirTemperature => Some(&mut self.air_c),
            Entry::BrakesAtStart => Some(&mut self.brakes_at_start_c),
            Entry::Headwind => Some(&mut self.headwind_kmh),
            Entry::SpeedLimit => Some(&mut self.speed_limit_kmh),
            Entry::Reserve => Some(&mut self.reserve),
            Entry::HeatLimit => Some(&mut self.heat_limit_c),
            Entry::Superelevation => Some(&mut self.superelevation),
            Entry::BrakeCheckStop => Some(&mut self.brake_check_stop_min),
            Entry::GrossMass
            | Entry::DriveAxleMass
            | Entry::RollingRadius
            | Entry::WheelInertia
            | Entry::RollingResistance
            | Entry::DragArea
            | Entry::Displacement
            | Entry::LowestEngineSpeed
            | Entry::HighestEngineSpeed
            | Entry::AxleRatio
            | Entry::AxleEfficiency
            | Entry::RetarderPeakPower
            | Entry::RetarderPeakSpeed
            | Entry::RetarderExponent
            | Entry::RetarderCutOut
            | Entry::RolloverThreshold
            | Entry::RetarderDelay
            | Entry::RetardingScale
            | Entry::ShaftTorque
            | Entry::ShaftSpeed
            | Entry::ShortPower
            | Entry::ShortTime
            | Entry::SustainedPower
            | Entry::SustainedSpeed
            | Entry::HotShare
            | Entry::WarmUpTime
            | Entry::LockUpGear
            | Entry::LockUpSpeed
            | Entry::ShiftsUpSpeed
            | Entry::RatedPower
            | Entry::GovernedSpeed
            | Entry::TopGearSpeed => None,
        }
    }

    /// Returns the day, or the first entry that is outside its range.
    ///
    /// # Errors
    /// [`OutOfRange`] names the entry, its value and its range.
    pub fn checked(self) -> Result<Self, OutOfRange> {
        for limit in limits::ALL {
            if let Some(value) = self.get(limit.entry) {
                limit.check(value)?;
            }
        }
        Ok(self)
    }

    /// Air temperature.
    #[must_use]
    pub fn air(&self) -> Celsius {
        Celsius(self.air_c)
    }

    /// Headwind.
    #[must_use]
    pub fn headwind(&self) -> MetresPerSecond {
        MetresPerSecond::from_kmh(self.headwind_kmh)
    }

    /// Speed limit.
    #[must_use]
    pub fn speed_limit(&self) -> MetresPerSecond {
        MetresPerSecond::from_kmh(self.speed_limit_kmh)
    }
}
