//! What a build script does with a folder of catalogues. What is wrong with them ends the build, a line each,
//! without the trace of a panic.

use crate::{Catalogues, Style, TAGS};
use std::{env, fs, path::Path, process::exit};

/// Reads the catalogues of a folder, and has Cargo build anew where one of them changes.
#[must_use]
pub fn read(folder: &str) -> Catalogues {
    for tag in TAGS {
        println!("cargo::rerun-if-changed={folder}/{tag}.ftl");
    }
    Catalogues::of_folder(Path::new(folder)).unwrap_or_else(|wrong| stop(&wrong))
}

/// Writes `words.rs`, in the language whose feature is on (without one the first), and `words_of_all.rs`; other
/// code stands `before` both.
pub fn write(catalogues: &Catalogues, before: &str, style: Style<'_>) {
    let feature = |tag: &&str| env::var_os(format!("CARGO_FEATURE_{}", tag.to_uppercase())).is_some();
    let tag = TAGS.into_iter().find(feature).unwrap_or(TAGS[0]);
    put("words.rs", &(before.to_owned() + &catalogues.one(tag, style)));
    put("words_of_all.rs", &(before.to_owned() + &catalogues.all(style)));
}

fn put(name: &str, code: &str) {
    let folder = env::var("OUT_DIR").unwrap_or_default();
    let path = Path::new(&folder).join(name);
    if let Err(error) = fs::write(&path, code) {
        stop(&[format!("{}: {error}", path.display())]);
    }
}

fn stop(wrong: &[String]) -> ! {
    for line in wrong {
        println!("cargo::error={line}");
    }
    exit(1)
}
