//! What leaves the program.

pub mod csv;
pub mod gpx;
pub mod truck_file;
