//! A road kept beside the one shown, and the list that both may come from.

use super::asked::{Leg, Origin};
use super::{Signals, rank, work};
use crate::browser::storage;
use leptos::prelude::*;

/// The rates entered, as typed.
const RATES: &str = "steadygrade.rates.1";

/// Rates kept on this machine: fuel, hour; as they were typed.
pub(super) fn recall_rates() -> [String; 2] {
    let kept = storage::recall(RATES).and_then(|bytes| postcard::from_bytes(&bytes).ok());
    kept.unwrap_or_default()
}

impl Signals {
    /// Keeps what is shown beside what comes next.
    pub(crate) fn keep_beside(&self) {
        self.other.set(self.worked.get_untracked());
    }

    /// Keeps a road of the list beside the one shown.
    pub(crate) fn keep_ranked_beside(&self, row: usize) {
        let worked = self.ranked.with_untracked(|rows| rows.get(row)?.outcome.clone()?.ok());
        if worked.is_some() {
            self.other.set(worked);
        }
    }

    /// Opens a road of the list.
    pub(crate) fn open_ranked(&'static self, row: usize) {
        let leg = self.ranked.with_untracked(|rows| rows.get(row).map(|it| it.leg.clone()));
        if let Some(leg) = leg {
            work::open(self, vec![leg], Origin::Given);
        }
    }

    /// Compares the files given instead of joining them.
    pub(crate) fn rank(&'static self) {
        let legs = self.legs.get_untracked();
        self.legs.set(Vec::new());
        rank::start(self, legs);
    }

    /// Works the list out for the truck and the day as they are now.
    pub(crate) fn rank_again(&'static self) {
        let legs: Vec<Leg> =
            self.ranked.with_untracked(|rows| rows.iter().map(|it| it.leg.clone()).collect());
        rank::start(self, legs);
    }

    /// Puts the list away.
    pub(crate) fn end_ranking(&'static self) {
        rank::end(self);
    }

    /// Takes a rate as typed.
    pub(crate) fn set_rate(&self, index: usize, text: String) {
        self.rates.update(|rates| rates[index] = text);
        if let Ok(bytes) = postcard::to_allocvec(&self.rates.get_untracked()) {
            storage::keep(RATES, &bytes);
        }
    }
}
