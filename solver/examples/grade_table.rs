//! What every gear and stage does on one grade: `cargo run -p solver --example grade_table -- [-0.06]`.

use solver::units::{Grade, Metres};
use solver::{Answer, Day, Preset, Trip, Truck};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let grade = std::env::args().nth(1).map_or(Ok(-0.06), |text| text.parse())?;
    let truck = Truck::new(Preset::FiveAxle40Both.spec())?;
    let day = Day::USUAL;
    let table = solver::plan::table(Trip { truck: &truck, day: &day }, Grade(grade), Metres(0.0));
    for row in table.rows {
        print!("gear {:>2}, up to {:>5.1} km/h:", row.gear.number(), row.ceiling.kmh());
        for answer in row.answers {
            match answer {
                Answer::Settles { speed, .. } => print!("  {:.0} km/h", speed.kmh()),
                Answer::MoreThanNeeded => print!("  too much"),
                Answer::Overruns { .. } => print!("  overruns"),
                Answer::NotUsable(why) => print!("  {why:?}"),
            }
        }
        println!();
    }
    Ok(())
}
