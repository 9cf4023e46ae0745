//! What leaves the program.

pub mod csv;
pub mod entries;
pub mod gpx;
pub mod project;
pub mod rows;
pub mod truck_file;
