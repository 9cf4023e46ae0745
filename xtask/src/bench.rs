//! `cargo xtask bench`: hands over to the benchmark, which lives with the tests
//! (`tests/src/bin/bench.rs`) because it times the solver against what the tests also use; with
//! `--page` to the one in the browser (`tests/browser/bench.mjs`).

use crate::{
    Outcome, browser,
    project::{program, run as run_program},
};

/// Runs the benchmark in release with the words it was given.
///
/// # Errors
/// A sentence when it cannot be built or does not end well.
pub(crate) fn run(words: &[String]) -> Outcome {
    if words == ["--page"] {
        return browser::run_bench();
    }
    let fixed = ["run", "--release", "-p", "tests", "--bin", "bench"];
    run_program(program("cargo").args(fixed).arg("--").args(words))
}
