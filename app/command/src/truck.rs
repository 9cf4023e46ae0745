//! `steadygrade truck`: the trucks to begin with, and one with all its values.

use crate::arguments::TruckWords;
use crate::setup;
use solver::report::truck_file;
use solver::truck::Preset;
use std::fmt::Write;

pub(crate) fn run(words: &TruckWords) -> Result<String, String> {
    let TruckWords { preset, truck, mass_kg, retarder } = words;
    if preset.is_none() && truck.is_none() && mass_kg.is_none() && retarder.is_none() {
        return Ok(list());
    }
    Ok(truck_file::write(setup::truck(words)?.spec()))
}

fn list() -> String {
    let mut out = String::new();
    for preset in Preset::ALL {
        let spec = preset.spec();
        // Writing into a String cannot fail.
        let _ = writeln!(out, "{:<20} {:>5.1} t  {}", preset.key(), spec.gross_mass_kg / 1e3, spec.name);
    }
    out.push_str("\nOne with all its values, to begin a truck of your own with: steadygrade truck --preset NAME > TRUCK.json\n");
    out
}
