//! What the project depends on, held against `deny.toml` by cargo-deny where that is installed.
//!
//! It is not installed by `cargo xtask test`: building it took nine minutes on two busy cores, a tenth of
//! all the time that the whole run may take, and no registry has it built. Licences and origins are
//! held by `tests/tidy` in any case. What only cargo-deny knows, known weaknesses of a release,
//! needs a network, too: it fetches their list.

use crate::{
    Outcome,
    project::{output, program, run},
};

/// What is said where it is not installed.
const NOT_INSTALLED: &str =
    "cargo-deny is not installed; `cargo install cargo-deny --locked` builds it in some ten minutes";

/// Whether there was anything to run.
pub(crate) enum Ran {
    /// It ran, and this came out.
    Yes(Outcome),
    /// It could not run, and why.
    No(String),
}

/// Licences, bans and origins: without a network, once all packages are here.
pub(crate) fn rules() -> Ran {
    if !is_installed() {
        return Ran::No(format!("{NOT_INSTALLED}. Licences and origins were held by tests/tidy alone"));
    }
    Ran::Yes(run(program("cargo").args(["deny", "--locked", "check", "licenses", "bans", "sources"])))
}

/// Known weaknesses of the releases in the lock file.
pub(crate) fn advisories() -> Ran {
    if !is_installed() {
        return Ran::No(format!("{NOT_INSTALLED}. Nothing is known of weaknesses in dependencies"));
    }
    if let Err(error) = run(program("cargo").args(["deny", "fetch", "db"])) {
        return Ran::No(format!(
            "the list of known weaknesses could not be fetched ({error}). Run `cargo deny check advisories` where there is a network"
        ));
    }
    Ran::Yes(run(program("cargo").args(["deny", "--frozen", "check", "advisories"])))
}

fn is_installed() -> bool {
    output(program("cargo").args(["deny", "--version"])).is_some()
}
