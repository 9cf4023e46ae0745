//! Turns the catalogues beside it into functions: in the language of this build, and for tests in all.

use catalogue::{Style, script};

const STYLE: Style<'_> = Style {
    owner: "Spoken",
    visibility: "pub",
    number: "crate::format::whole",
    piece: "crate::Piece",
    tongue: ("tongue", "Tongue"),
};

fn main() {
    script::write(&script::read("."), "", STYLE);
}
