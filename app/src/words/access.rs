//! Words of the notice before the page, and of what the pictures say to whoever does not see them.

use crate::format::{self, Units};

/// Words of the notice before the page, and of what the pictures say in words.
pub trait AccessWords {
    /// The button that acknowledges the notice: the driver's own answer.
    fn i_am_parked(&self) -> &'static str;
    /// Name of the table that says what the picture of the road shows.
    fn road_table(&self) -> &'static str;
    /// Heads of its first columns: from where to where; which part of the road.
    fn road_table_heads(&self) -> [&'static str; 2];
    /// A stretch that is no descent.
    fn between(&self) -> &'static str;
    /// Name of the table of the engine's curves.
    fn power_table(&self) -> &'static str;
    /// Heads of its first columns: engine speed, and the power that pulls.
    fn power_heads(&self) -> [&'static str; 2];
    /// Head of a column: the power that holds at this stage.
    fn holds(&self, stage: &str) -> String;
    /// Names of the handles of the part shown: its beginning and its end.
    fn window_ends(&self) -> [&'static str; 2];
    /// Where the road leads: so far from its start as the crow flies, towards north (0),
    /// north-east (1) and so on around; a length of nearly nothing is a road back to its start.
    fn leads(&self, straight_m: f64, towards: usize, units: Units) -> String {
        if straight_m < SAME_PLACE_M {
            return self.ends_where_it_began().to_owned();
        }
        let winds = self.winds();
        self.leads_away(&format::distance(straight_m, units), winds[towards % winds.len()])
    }
    /// It leads back to its start.
    fn ends_where_it_began(&self) -> &'static str;
    /// How far from its start it ends as the crow flies, and towards where.
    fn leads_away(&self, away: &str, towards: &str) -> String;
    /// Eight directions from north on around, as they stand in that sentence.
    fn winds(&self) -> [&'static str; 8];
    /// What the profile on the card is, and where its figures stand.
    fn card_profile(&self) -> &'static str;
}

/// Nearer than this to its start a road ends where it began, m.
const SAME_PLACE_M: f64 = 200.0;
