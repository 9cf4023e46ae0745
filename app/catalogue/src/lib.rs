//! Turns catalogues of texts (Project Fluent, a file for each language) into Rust functions, while
//! building: a function for each message, with a typed parameter for each argument.
//!
//! The first language is the one that all others are held against: it says which messages there are,
//! which arguments they have, in which order and of which type. What a language lacks, says too much or
//! asks for in vain is an error of the build ([`Error`]); that a message is used by nobody, and that
//! an argument is of another type, is said by the compiler.
//!
//! What the files may hold, of all that Fluent has:
//!
//! - texts, `{ $argument }`, `{ NUMBER($argument) }` (as the language writes numbers), `{ "text" }`,
//!   `{ -term }` and `{ message }`, selections on an argument, also within a variant;
//! - messages of attributes only: a function that gives all of them, in order;
//! - `<strong>…</strong>`: the function gives pieces of text, of which some are read first;
//! - in the first language `### $name type` for an argument of that name anywhere, and in a message's
//!   comment `# Arguments: $one, $other type` where the order or a type is another. Types are `text`
//!   (if nothing is said), integers (`usize` …: plural forms), `bool` and paths of enums, whose
//!   variants are selected on by name (`GrossMass` as `gross-mass`; `other` stands for all the rest).

mod check;
mod model;
mod plural;
mod read;
pub mod script;
mod write;

pub use model::Error;

use std::{fs, path::Path};

/// The languages, the one first that the others are held against. Features are named like them.
pub const TAGS: [&str; 4] = ["en", "es", "fr", "de"];

/// Messages of the page that are said before its program runs: the build of all pages puts them into the HTML
/// (`xtask/src/dist/languages.rs`), so they are no functions.
pub const BEFORE: [&str; 11] = [
    "page-title",
    "page-description",
    "i-am-parked",
    "needs-script",
    "loading-page",
    "opens-then",
    "loading-failed",
    "loading-stands",
    "cannot-run",
    "load-again",
    "not-kept",
];

/// A language: its tag, and the text of its catalogue.
pub type Source<'a> = (&'a str, &'a str);

/// How the code is to be written.
#[derive(Debug, Clone, Copy)]
pub struct Style<'a> {
    /// The type that has the functions as methods.
    pub owner: &'a str,
    /// Who may call them: `pub`, or `pub(crate)`, where the compiler refuses one that nobody calls.
    pub visibility: &'a str,
    /// Path of the function that writes a number (`f64`) as the language does.
    pub number: &'a str,
    /// Path of the enum of pieces, with `Plain` and `Strong`.
    pub piece: &'a str,
    /// Where all languages are asked (by tests): the field of the owner that says which, and the path of
    /// its enum, with a variant for each tag.
    pub tongue: (&'a str, &'a str),
}

/// The functions of several catalogues, checked against each other.
#[derive(Debug)]
pub struct Catalogues(Vec<model::Catalogue>);

impl Catalogues {
    /// Reads and checks them; the first is the one the others are held against.
    ///
    /// # Errors
    /// All that is wrong with any of them.
    pub fn read(sources: &[Source<'_>]) -> Result<Self, Vec<Error>> {
        let mut errors = Vec::new();
        let mut all: Vec<_> = sources.iter().map(|source| read::catalogue(*source, &mut errors)).collect();
        if errors.is_empty() {
            check::all(&mut all, &mut errors);
        }
        if errors.is_empty() { Ok(Self(all)) } else { Err(errors) }
    }

    /// Reads a folder, which has a file for each of [`TAGS`].
    ///
    /// # Errors
    /// A line for each thing that is wrong, with the file.
    pub fn of_folder(folder: &Path) -> Result<Self, Vec<String>> {
        let text = |tag: &'static str| {
            let file = folder.join(format!("{tag}.ftl"));
            let text = fs::read_to_string(&file);
            text.map(|text| (tag, text)).map_err(|error| vec![format!("{}: {error}", file.display())])
        };
        let texts = TAGS.into_iter().map(text).collect::<Result<Vec<_>, _>>()?;
        let sources: Vec<Source<'_>> = texts.iter().map(|(tag, text)| (*tag, text.as_str())).collect();
        let at = |error: &Error| format!("{}/{error}", folder.display());
        Self::read(&sources).map_err(|errors| errors.iter().map(at).collect())
    }

    /// Takes a message out of all languages that is no function: its text in each, by tag.
    ///
    /// # Panics
    /// Where there is no such message, or something is to be placed in it.
    pub fn take(&mut self, name: &str) -> Vec<(String, String)> {
        let taken = self.0.iter_mut().map(|it| {
            let index = it.messages.iter().position(|it| it.name == name).expect("the message was read");
            let text = it.messages.remove(index).fixed().expect("the message is a text");
            (it.tag.clone(), text)
        });
        taken.collect()
    }

    /// The functions in one language, that of this tag.
    ///
    /// # Panics
    /// Where no such language was read.
    #[must_use]
    pub fn one(&self, tag: &str, style: Style<'_>) -> String {
        let chosen = self.0.iter().find(|it| it.tag == tag).expect("the language was read");
        write::one(chosen, &self.0[0], style)
    }

    /// The functions in all languages, to be asked for one by one.
    #[must_use]
    pub fn all(&self, style: Style<'_>) -> String {
        write::all(&self.0, style)
    }
}
