//! Writes every published check to `public/evidence.json`, as text that a page can show.

/// Natively only: the module has no files to write to.
#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(not(target_arch = "wasm32"))]
fn main() -> std::io::Result<()> {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../public/evidence.json");
    let text = tests::evidence::json();
    std::fs::write(&path, &text)?;
    println!("public/evidence.json: {} rows, {} bytes", text.lines().count() - 2, text.len());
    Ok(())
}
