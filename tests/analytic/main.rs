//! Closed forms: results that must agree to the last digits for any truck.

mod control_speed;
mod energy;
mod heat;
mod steady;
