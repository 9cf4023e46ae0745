//! The page in real Chromium: the tests in `tests/browser/*.test.mjs`, and pictures.

use crate::{
    Outcome, build, chromium,
    project::{self, program, run},
    server,
    tally::{Tally, run_counted},
    tools,
};
use std::{
    fs,
    path::{Path, PathBuf},
    process::Command,
};

/// Serves `dist/` and runs every browser test.
pub(crate) fn run_tests() -> (Tally, Outcome) {
    let prepared = test_files().and_then(|files| node().map(|node| (files, node)));
    match prepared {
        Ok((files, mut node)) => run_counted(
            // TAP, since its closing lines are made for programs to read. One file after the other: two
            // browsers at once would disturb each other's timing.
            node.args(["--test", "--test-reporter=tap", "--test-concurrency=1"]).args(files),
        ),
        Err(sentence) => (Tally::default(), Err(sentence)),
    }
}

/// `cargo xtask browser`: the browser tests without the other steps.
///
/// # Errors
/// A sentence when the build or a test fails.
pub(crate) fn run_alone(build: bool) -> Outcome {
    if build {
        build::run_build()?;
    }
    let (tally, outcome) = run_tests();
    println!("{} passed, {} failed", tally.passed, tally.failed);
    outcome
}

/// `cargo xtask shots`: pictures of the page into `target/shots/`.
///
/// # Errors
/// A sentence from the step that failed.
pub(crate) fn take_shots(build: bool) -> Outcome {
    if build {
        build::run_build()?;
    }
    run(node()?.arg(folder().join("shots.mjs")))?;
    println!("The pictures are in {}", shots_folder().display());
    Ok(())
}

/// `cargo xtask bench --page`: the page timed against its baseline.
///
/// # Errors
/// A sentence from the step that failed.
pub(crate) fn run_bench() -> Outcome {
    build::run_build()?;
    let lighthouse = tools::lighthouse()?;
    run(node()?.env("STEADYGRADE_LIGHTHOUSE", lighthouse).arg(folder().join("bench.mjs")))
}

fn folder() -> PathBuf {
    project::root().join("tests/browser")
}

fn shots_folder() -> PathBuf {
    project::root().join("target/shots")
}

/// Node, with everything in its environment that the scripts need.
fn node() -> Outcome<Command> {
    let browser = chromium::find_or_install()?;
    install_packages(&folder())?;
    let address = server::start_on_free_port()?;
    let mut node = program("node");
    node.env("STEADYGRADE_ADDRESS", address);
    node.env(chromium::VARIABLE, browser);
    node.env("STEADYGRADE_SHOTS", shots_folder());
    Ok(node)
}

/// Lists the test files; `node --test FOLDER` would run every script of ours as a test.
fn test_files() -> Outcome<Vec<PathBuf>> {
    let failed = |error| format!("cannot list {}: {error}", folder().display());
    let mut files = Vec::new();
    for entry in fs::read_dir(folder()).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        if path.to_string_lossy().ends_with(".test.mjs") {
            files.push(path);
        }
    }
    files.sort();
    if files.is_empty() {
        return Err(format!("there are no browser tests in {}", folder().display()));
    }
    Ok(files)
}

/// Runs `npm ci` where the installed packages differ from the lock file.
fn install_packages(folder: &Path) -> Outcome {
    let changed = |name: &str| fs::metadata(folder.join(name)).and_then(|data| data.modified()).ok();
    let installed = changed("node_modules/.package-lock.json");
    if installed.is_some() && installed >= changed("package-lock.json") {
        return Ok(());
    }
    println!("Installing the browser driver of tests/browser with npm: some seconds.");
    run(program("npm").args(["ci", "--no-audit", "--no-fund", "--prefix"]).arg(folder))
        .map_err(|error| format!("{error}; Node 20 or newer with npm is needed"))
}
