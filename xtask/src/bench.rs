//! `cargo xtask bench`: starts the benchmark. It lives with the tests (`tests/src/bin/bench.rs`), because it
//! times the solver against crates that the tests also use. With `--page` it starts the one in the browser
//! (`tests/browser/bench.mjs`).

use crate::{
    Outcome, browser,
    project::{program, run as run_program},
};

/// Runs the benchmark in release with the given words.
///
/// # Errors
/// A sentence when it cannot be built or fails.
pub(crate) fn run(words: &[String]) -> Outcome {
    if words == ["--page"] {
        return browser::run_bench();
    }
    let fixed = ["run", "--release", "-p", "tests", "--bin", "bench"];
    run_program(program("cargo").args(fixed).arg("--").args(words))
}
