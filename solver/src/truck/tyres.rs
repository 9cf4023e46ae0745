//! Tyres: size to rolling radius and inertia.

/// One tyre size of the printed table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TyreSize {
    /// Size as moulded on the sidewall.
    pub size: &'static str,
    /// Diameter d, mm.
    pub diameter_mm: f64,
    /// Factor F of r = F·d/(2π).
    pub factor: f64,
    /// Inertia of tyre and wheel, kg·m².
    pub inertia_kg_m2: f64,
}

impl TyreSize {
    /// Rolling radius r = F·d/(2π), m.
    #[must_use]
    pub fn rolling_radius_m(&self) -> f64 {
        self.factor * self.diameter_mm * 1e-3 / (2.0 * std::f64::consts::PI)
    }
}

macro_rules! tyre {
    ($size:expr, $diameter:expr, $factor:expr, $inertia:expr) => {
        TyreSize { size: $size, diameter_mm: $diameter, factor: $factor, inertia_kg_m2: $inertia }
    };
}

/// Common heavy-vehicle sizes (EU heavy-vehicle CO2 regulation, generic data).
pub const SIZES: [TyreSize; 8] = [
    tyre!("275/80R22.5", 1012.0, 3.05, 12.8),
    tyre!("295/75R22.5", 1014.0, 3.05, 14.0),
    tyre!("11R22.5", 1050.0, 3.05, 14.4),
    tyre!("295/80R22.5", 1044.0, 3.05, 15.5),
    tyre!("315/70R22.5", 1014.0, 3.05, 14.9),
    tyre!("315/80R22.5", 1076.0, 3.05, 17.6),
    tyre!("305/75R24.5", 1080.0, 3.05, 21.2),
    tyre!("385/65R22.5", 1072.0, 3.03, 19.2),
];
