//! Spanish sentences that are not yet in its catalogue, whose head has the terms.

mod form;
mod telling;

/// Spanish words of findings and errors.
pub(super) struct Spanish;
