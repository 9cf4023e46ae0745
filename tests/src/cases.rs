//! Roads, trucks and days by chance: one number, one case.

use crate::generate::{Chance, Drive, Hill, Instrument, TrueRoad};
use crate::truth::survey_drive;
use solver::day::{Day, ServiceBrakes, Surface};
use solver::road::Road;
use solver::truck::{Preset, RetarderKind, Truck};

/// A road, the instrument that recorded it, a truck and a day.
#[derive(Debug)]
pub struct Case {
    /// Its number.
    pub number: u64,
    /// The trap in its hill.
    pub hill: Hill,
    /// What recorded it.
    pub instrument: Instrument,
    /// The truck begun with.
    pub preset: Preset,
    /// Its retarder; `None` for the preset's own.
    pub retarder: Option<RetarderKind>,
    /// The day.
    pub day: Day,
}

/// The four instruments.
pub const INSTRUMENTS: [Instrument; 4] =
    [Instrument::Exact, Instrument::Recorder, Instrument::Receiver, Instrument::Terrain];

const RETARDERS: [Option<RetarderKind>; 6] = [
    None,
    None,
    Some(RetarderKind::None),
    Some(RetarderKind::ExhaustValve),
    Some(RetarderKind::Hydrodynamic),
    Some(RetarderKind::CompressionAndHydrodynamic),
];

/// Days that each differ from the usual day in one thing.
#[must_use]
pub fn days() -> [Day; 8] {
    let usual = Day::USUAL;
    [
        usual,
        usual,
        Day { surface: Surface::Wet, ..usual },
        Day { surface: Surface::Snow, air_c: -5.0, ..usual },
        Day { service_brakes: ServiceBrakes::MaySnub, ..usual },
        Day { brakes_at_start_c: 180.0, ..usual },
        Day { headwind_kmh: 25.0, ..usual },
        Day { headwind_kmh: -15.0, ..usual },
    ]
}

fn one_of<T: Copy>(chance: &mut Chance, all: &[T]) -> T {
    all[(chance.bits() % all.len() as u64) as usize]
}

impl Case {
    /// The case with a number.
    #[must_use]
    pub fn of(number: u64) -> Self {
        let mut chance = Chance::new(number ^ 0x0b5e_55ed);
        Self {
            number,
            hill: one_of(&mut chance, &Hill::ALL),
            instrument: one_of(&mut chance, &INSTRUMENTS),
            preset: one_of(&mut chance, &Preset::ALL),
            retarder: one_of(&mut chance, &RETARDERS),
            day: one_of(&mut chance, &days()),
        }
    }

    /// The road as it was built.
    #[must_use]
    pub fn truth(&self) -> TrueRoad {
        self.hill.road(self.number)
    }

    /// The road as it was recorded.
    #[must_use]
    pub fn recorded(&self, truth: &TrueRoad) -> Road {
        survey_drive(truth, &Drive::new(self.instrument, 15.0, self.number ^ 0x5eed))
    }

    /// The truck.
    #[must_use]
    pub fn truck(&self) -> Truck {
        let mut spec = self.preset.spec();
        if let Some(kind) = self.retarder {
            spec.take_retarder(kind);
        }
        crate::trucks::truck(spec)
    }

    /// The case in words, for a message.
    #[must_use]
    pub fn words(&self) -> String {
        let Self { number, hill, instrument, preset, retarder, day } = self;
        let retarder = retarder.map_or("own", RetarderKind::key);
        let (surface, brakes) = (day.surface, day.service_brakes);
        let (start, wind) = (day.brakes_at_start_c, day.headwind_kmh);
        format!(
            "case {number}: {hill:?}, {instrument:?}, {}, retarder {retarder}, {surface:?}, {brakes:?}, {start} °C, wind {wind}",
            preset.key()
        )
    }
}
