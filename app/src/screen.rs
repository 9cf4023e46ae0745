//! The screens, in the order in which a class goes through them.

/// A screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Screen {
    /// Teaching roads.
    Roads,
    /// Holding force against speed.
    Forces,
    /// One truck along the road.
    Run,
    /// Two trucks, one of which does something otherwise.
    Pair,
    /// Exercises.
    Exercises,
}

impl Screen {
    /// All of them, in order.
    pub const ALL: [Self; 5] = [Self::Roads, Self::Forces, Self::Run, Self::Pair, Self::Exercises];

    /// Its key in the page.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::Roads => "roads",
            Self::Forces => "forces",
            Self::Run => "run",
            Self::Pair => "pair",
            Self::Exercises => "exercises",
        }
    }

    /// The screen so many further on, or back where negative; the ends hold.
    #[must_use]
    pub fn moved(self, by: isize) -> Self {
        let at = Self::ALL.iter().position(|it| *it == self).unwrap_or(0);
        let last = Self::ALL.len() - 1;
        Self::ALL[at.saturating_add_signed(by).min(last)]
    }
}

#[cfg(test)]
mod tests {
    use super::Screen;

    #[test]
    fn the_ends_hold() {
        assert_eq!(Screen::Roads.moved(-1), Screen::Roads);
        assert_eq!(Screen::Roads.moved(1), Screen::Forces);
        assert_eq!(Screen::Exercises.moved(1), Screen::Exercises);
        assert_eq!(Screen::Exercises.moved(-9), Screen::Roads);
    }
}
