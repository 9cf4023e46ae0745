//! How sure a plan is: 256 runs with every entry a little off. `cargo run --release -p solver --example sureness`.

use solver::{Day, Preset, Truck, plan_file, study};

const DEMO: &[u8] = include_bytes!("../../public/demo.gpx");

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let truck = Truck::new(Preset::FiveAxle36.spec())?;
    let day = Day::USUAL;
    let planned = plan_file(DEMO, &truck, &day)?;
    let Some((sure, _)) = study::sureness(&planned.road, &truck, &day, &planned.plan, &mut |_| true) else {
        println!("There is no descent on this road.");
        return Ok(());
    };
    for (descent, sure) in planned.plan.descents.iter().zip(&sure.descents) {
        let (low, high) = sure.after_stop_c;
        let number = descent.number;
        println!("descent {number}: held in {} of {} runs, {low:.0} to {high:.0} °C", sure.held, study::RUNS);
    }
    Ok(())
}
