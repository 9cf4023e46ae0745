//! The command as a person runs it: what it prints, what it says of bad input, its exit status.

mod one_road;
mod table;

use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

const ROOT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../..");
const DEMO: &str = "public/demo.gpx";
const GOOD: &str = "tests/data/good.gpx";
const BAD: &str = "tests/data/web-page.gpx";

/// Runs the command in the project's folder.
fn run(words: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_steadygrade"));
    command.current_dir(ROOT).args(words).output().expect("the command starts")
}

fn out(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("UTF-8")
}

/// Standard error, after the exit status was looked at.
fn fails(words: &[&str], status: i32) -> String {
    let output = run(words);
    assert_eq!(output.status.code(), Some(status), "{words:?}: {output:?}");
    String::from_utf8(output.stderr).expect("UTF-8")
}

/// Standard output of a run that succeeds.
fn succeeds(words: &[&str]) -> String {
    let output = run(words);
    assert!(output.status.success(), "{words:?}: {output:?}");
    out(&output)
}

fn json(words: &[&str]) -> Value {
    serde_json::from_str(&succeeds(words)).expect("JSON")
}

/// An empty folder of this test's own.
fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder can be made");
    folder
}

fn text(path: &Path) -> &str {
    path.to_str().expect("UTF-8")
}
