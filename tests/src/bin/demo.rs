//! Writes the invented roads of the page to `public/`: the demo pass and the teaching roads.

use std::path::Path;
use tests::generate::{Lesson, demo, lesson};

fn main() -> std::io::Result<()> {
    let public = Path::new(env!("CARGO_MANIFEST_DIR")).join("../public");
    for built in std::iter::once(demo()).chain(Lesson::ALL.map(lesson)) {
        let text = built.text();
        std::fs::write(public.join(built.file), &text)?;
        let length_km = built.road.length_m() / 1000.0;
        println!("public/{}: {length_km:.1} km, {} bytes", built.file, text.len());
    }
    Ok(())
}
