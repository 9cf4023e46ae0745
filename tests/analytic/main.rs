//! Closed forms: what must come out to the last digits whatever the truck.

mod control_speed;
mod energy;
mod heat;
mod steady;
