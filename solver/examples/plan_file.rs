//! Plans a file: `cargo run -p solver --example plan_file -- [ROAD.gpx]`.

use solver::report::rows;
use solver::{Day, Error, Preset, Truck, plan_file};

const DEMO: &[u8] = include_bytes!("../../public/demo.gpx");

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let bytes = std::env::args().nth(1).map_or_else(|| Ok(DEMO.to_vec()), std::fs::read)?;
    let truck = Truck::new(Preset::FiveAxle40.spec()).map_err(Error::from)?;
    let planned = plan_file(&bytes, &truck, &Day::USUAL)?;
    println!("{}: {:.1} km", planned.road.name(), planned.road.length_m() / 1e3);
    for row in rows::descents(&planned.plan) {
        println!("{}", serde_json::to_string(&row)?);
    }
    for row in rows::legs(&planned.plan, planned.road.step_m()) {
        println!("{}", serde_json::to_string(&row)?);
    }
    Ok(())
}
