//! Words of the notice before the page, and of what the pictures say to whoever does not see them.

use crate::format::{self, Units};
use crate::words::Spoken;

impl Spoken {
    /// Where the road leads: so far from its start as the crow flies, towards north (0),
    /// north-east (1) and so on around; a length of nearly nothing is a road back to its start.
    #[must_use]
    pub fn leads(&self, straight_m: f64, towards: usize, units: Units) -> String {
        if straight_m < SAME_PLACE_M {
            return self.ends_where_it_began().to_owned();
        }
        let winds = self.winds();
        self.leads_away(&format::distance(straight_m, units), winds[towards % winds.len()])
    }
}

/// Nearer than this to its start a road ends where it began, m.
const SAME_PLACE_M: f64 = 200.0;
