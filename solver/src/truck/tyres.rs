//! Tyres: size to rolling radius and inertia; classes of rolling resistance.

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

/// Class of rolling resistance of a heavy vehicle's tyre (LABEL: COM(2008)779, annex, printed).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LabelClass {
    /// Up to 4.0 kg/t.
    A,
    /// 4.1 to 5.0 kg/t.
    B,
    /// 5.1 to 6.0 kg/t.
    C,
    /// 6.1 to 7.0 kg/t.
    D,
    /// 7.1 to 8.0 kg/t.
    E,
    /// 8.1 kg/t and more.
    F,
}

impl LabelClass {
    /// All classes, from the one that rolls most easily.
    pub const ALL: [Self; 6] = [Self::A, Self::B, Self::C, Self::D, Self::E, Self::F];

    /// The highest coefficient of the class: kg/t over 1,000. `None` for the last one, which is
    /// open above.
    #[must_use]
    pub fn upper_bound(self) -> Option<f64> {
        match self {
            Self::A => Some(0.004),
            Self::B => Some(0.005),
            Self::C => Some(0.006),
            Self::D => Some(0.007),
            Self::E => Some(0.008),
            Self::F => None,
        }
    }

    /// The class of a rolling resistance coefficient. The table is in tenths of kg/t, so the
    /// coefficient is first rounded to them: 4.04 kg/t is A, 4.06 kg/t is B. What is no number
    /// is F.
    #[must_use]
    pub fn of(coefficient: f64) -> Self {
        let tenths = (coefficient * 1e4).round();
        let within = |class: &Self| class.upper_bound().is_some_and(|bound| tenths <= (bound * 1e4).round());
        Self::ALL.into_iter().find(within).unwrap_or(Self::F)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_class_ends_at_its_bound_and_the_next_begins_a_tenth_above() {
        for pair in LabelClass::ALL.windows(2) {
            let bound = pair[0].upper_bound().expect("only the last class is open");
            assert_eq!((LabelClass::of(bound), LabelClass::of(bound + 1e-4)), (pair[0], pair[1]));
            assert_eq!((LabelClass::of(bound + 4e-5), LabelClass::of(bound + 6e-5)), (pair[0], pair[1]));
        }
        assert_eq!(LabelClass::of(f64::NAN), LabelClass::F);
    }
}
