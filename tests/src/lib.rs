//! What the test packages share: holding a value against a source, trucks, days and roads.

pub mod cases;
pub mod evidence;
pub mod free_run;
pub mod generate;
pub mod held_grade;
pub mod plain_roads;
pub mod trucks;
pub mod true_heat;
pub mod truth;
