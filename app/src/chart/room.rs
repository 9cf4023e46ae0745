//! Room for what is written into the profile: no text lies on another.

/// A rectangle, px: left, top, right, bottom.
pub(crate) type Area = [f64; 4];

/// What is taken.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Room {
    taken: Vec<Area>,
}

/// Least space between two texts, px.
const GAP: f64 = 3.0;

impl Room {
    /// Takes an area, free or not.
    pub(crate) fn take(&mut self, area: Area) {
        self.taken.push(area);
    }

    /// Takes an area if all of it is free; tells whether it was.
    pub(crate) fn claim(&mut self, area: Area) -> bool {
        let meets = |it: &Area| {
            it[0] < area[2] + GAP && area[0] < it[2] + GAP && it[1] < area[3] + GAP && area[1] < it[3] + GAP
        };
        let free = !self.taken.iter().any(meets);
        if free {
            self.taken.push(area);
        }
        free
    }
}

#[cfg(test)]
mod tests {
    use super::Room;

    #[test]
    fn what_is_taken_is_not_taken_again() {
        let mut room = Room::default();
        room.take([0.0, 0.0, 100.0, 20.0]);
        assert!(!room.claim([50.0, 10.0, 150.0, 30.0]));
        assert!(!room.claim([102.0, 0.0, 150.0, 20.0]), "too near");
        assert!(room.claim([104.0, 0.0, 150.0, 20.0]));
        assert!(!room.claim([120.0, 5.0, 130.0, 9.0]), "inside");
    }
}
