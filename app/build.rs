//! Turns the catalogues of `words/` into functions: in the language of this build, and for tests in all.

use catalogue::{Catalogues, Style};
use std::{env, fs, path::Path, process::exit};

/// The languages, the one first that the others are held against.
const TAGS: [&str; 4] = ["en", "es", "fr", "de"];

const STYLE: Style<'_> = Style {
    owner: "Spoken",
    number: "crate::format::whole",
    piece: "crate::words::Piece",
    tongue: ("tongue", "Tongue"),
};

fn main() {
    println!("cargo:rerun-if-changed=words");
    println!("cargo:rerun-if-changed=build.rs");
    let texts = TAGS.map(|tag| {
        let file = format!("words/{tag}.ftl");
        fs::read_to_string(&file).unwrap_or_else(|error| stop(&[format!("{file}: {error}")]))
    });
    let sources: Vec<(&str, &str)> = TAGS.into_iter().zip(texts.iter().map(String::as_str)).collect();
    let mut catalogues = Catalogues::read(&sources)
        .unwrap_or_else(|errors| stop(&errors.iter().map(ToString::to_string).collect::<Vec<_>>()));
    // By feature, as `Cargo.toml` names them; without one it is English.
    let feature = |tag: &&str| env::var_os(format!("CARGO_FEATURE_{}", tag.to_uppercase())).is_some();
    let tag = TAGS.into_iter().find(feature).unwrap_or(TAGS[0]);
    let languages = format!(
        "/// The languages there are: tag, and the page offered in that language.\n\
        pub const LANGUAGES: [(&str, &str); {}] = {:?};\n",
        TAGS.len(),
        catalogues.take("this-page")
    );
    put("words.rs", &(languages.clone() + &catalogues.one(tag, STYLE)));
    put("words_of_all.rs", &(languages + &catalogues.all(STYLE)));
}

fn put(name: &str, code: &str) {
    let folder = env::var("OUT_DIR").unwrap_or_default();
    let path = Path::new(&folder).join(name);
    if let Err(error) = fs::write(&path, code) {
        stop(&[format!("{}: {error}", path.display())]);
    }
}

/// What is wrong, a line each, without the trace of a panic.
fn stop(wrong: &[String]) -> ! {
    for line in wrong {
        println!("cargo::error={line}");
    }
    exit(1)
}
