//! Writes the demo pass to `public/demo.gpx`: invented, in the open ocean, its truth known.

use std::path::Path;

fn main() -> std::io::Result<()> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../public/demo.gpx");
    let (road, text) = tests::generate::demo();
    std::fs::write(&path, &text)?;
    println!("public/demo.gpx: {:.1} km, {} bytes", road.length_m() / 1000.0, text.len());
    Ok(())
}
