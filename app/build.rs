//! Turns the catalogues of `words/page/` into functions: in the language of this build, and for tests in all.

use catalogue::{BEFORE, Style, script};

const STYLE: Style<'_> = Style {
    owner: "Spoken",
    visibility: "pub(crate)",
    number: "crate::format::whole",
    piece: "crate::words::Piece",
    tongue: ("tongue()", "Tongue"),
};

fn main() {
    let mut catalogues = script::read("words/page");
    let pages = catalogues.take("this-page");
    // Of the page before its program runs: the build of all pages puts them there.
    for name in BEFORE {
        catalogues.take(name);
    }
    let languages = format!(
        "/// The languages there are: tag, and the page offered in that language.\n\
        pub const LANGUAGES: [(&str, &str); {}] = {pages:?};\n",
        pages.len(),
    );
    script::write(&catalogues, &languages, STYLE);
}
