//! What leaves the program.

pub mod gpx;
