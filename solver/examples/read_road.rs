//! Reads a road only, with what was found in the file: `cargo run -p solver --example read_road -- [ROAD.gpx]`.

use solver::road;

const DEMO: &[u8] = include_bytes!("../../public/demo.gpx");

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let bytes = std::env::args().nth(1).map_or_else(|| Ok(DEMO.to_vec()), std::fs::read)?;
    let document = road::read(&bytes, &mut |_| true)?;
    let road = road::survey(&document, document.suggested(), &mut |_| true)?;
    println!("{}: {:.1} km, heights {:?}", road.name(), road.length_m() / 1e3, road.quality().class);
    for finding in road.findings() {
        println!("  {finding}");
    }
    for segment in road.segments() {
        let (from, to) = (segment.from as f64 * road.step_m(), segment.to as f64 * road.step_m());
        println!("  km {:.2} to {:.2}: {:+.1} %", from / 1e3, to / 1e3, segment.grade * 100.0);
    }
    Ok(())
}
