//! The order of the house, kept by a test: every rule is run over every file of the project,
//! and over a bad sample, so that it can be seen to fail.

mod circles;
mod dependencies;
mod layers;
mod messages;
mod rules;
mod scan;

use circles::circles;
use rules::{RULES, Rule};
use std::{
    fs,
    path::{Path, PathBuf},
};

/// Folders that hold nothing of our own writing.
const NOT_OURS: [&str; 5] = [".git", ".tools", "target", "dist", "node_modules"];
/// Fewer files than this would mean that the walk went wrong.
const FEWEST_FILES: usize = 20;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// All text files of the project: path from its root, and text.
fn files() -> Vec<(String, String)> {
    let mut found = Vec::new();
    let mut open = vec![root()];
    // Ends: the folders of a file system are finite, and links are not followed.
    while let Some(folder) = open.pop() {
        let entries = fs::read_dir(&folder).expect("a folder of the project can be listed");
        for entry in entries {
            let entry = entry.expect("an entry of a folder can be read");
            let kind = entry.file_type().expect("an entry has a kind");
            let name = entry.file_name().to_string_lossy().into_owned();
            let path = entry.path();
            if kind.is_dir() && !NOT_OURS.contains(&name.as_str()) {
                open.push(path);
            } else if kind.is_file() {
                let short = path.strip_prefix(root()).unwrap_or(&path).to_string_lossy();
                // What is not text has no lines to judge.
                if let Ok(text) = fs::read_to_string(&path) {
                    found.push((short.replace('\\', "/"), text));
                }
            }
        }
    }
    found.sort();
    found
}

#[test]
fn the_project_keeps_its_rules() {
    let files = files();
    assert!(files.len() > FEWEST_FILES, "only {} files were found", files.len());
    let mut report = String::new();
    for (path, text) in &files {
        for (name, rule) in RULES {
            for breach in rule(path, text) {
                report += &format!("{path}:{}: {name}: {}\n", breach.line, breach.sentence);
            }
        }
    }
    assert!(report.is_empty(), "\n{report}");
}

#[test]
fn every_message_is_said_by_somebody() {
    let files = files();
    let catalogue = files.iter().find(|(path, _)| path == "app/words/en.ftl");
    let (_, catalogue) = catalogue.expect("the English catalogue");
    let speaks = |path: &str| path.starts_with("app/") && path.ends_with(".rs") && !path.contains("/tests");
    let sources: Vec<String> =
        files.iter().filter(|(path, _)| speaks(path)).map(|(_, text)| text.clone()).collect();
    assert_eq!(messages::unused(catalogue, &sources), Vec::<String>::new(), "said by nobody: take them out");
}

/// Crates in which no two files need each other.
const WITHOUT_CIRCLES: [&str; 2] = ["app/src/", "app/workers/src/"];

#[test]
fn no_files_of_the_app_need_each_other() {
    let files = files();
    let mut report = String::new();
    for root in WITHOUT_CIRCLES {
        let inside =
            files.iter().filter_map(|(path, text)| Some((path.strip_prefix(root)?.to_owned(), text.clone())));
        let inside: Vec<(String, String)> = inside.collect();
        assert!(inside.len() > 1, "{root} holds no files");
        for circle in circles(&inside) {
            report += &format!("{root}: these need each other: {}\n", circle.join(", "));
        }
    }
    assert!(report.is_empty(), "\n{report}");
}

/// The lines at which `rule` finds the sample wrong.
fn check(rule: Rule, path: &str, text: &str, expect: &[usize]) {
    let found: Vec<usize> = rule(path, text).iter().map(|breach| breach.line).collect();
    assert_eq!(found, expect, "{path}: {text}");
}

#[test]
fn solver_layers_can_fail() {
    let rule = layers::solver_layers;
    check(rule, "solver/src/road/gpx.rs", "use crate::units::Mass;\nuse crate::truck::Truck;", &[2]);
    check(rule, "solver/src/road/gpx.rs", "use crate::{\n  road::A,\n  plan::{B, C},\n};", &[3, 3]);
    check(rule, "solver/src/units.rs", "use crate::limits::MASS;", &[1]);
    check(rule, "solver/src/motion/heat.rs", "fn a() {\n  crate::plan::b()\n}", &[2]);
    check(rule, "solver/src/plan/choose.rs", "use crate::{motion::run, road::Road};", &[]);
    check(rule, "solver/src/plan/choose.rs", "use crate::report::Card;", &[1]);
    check(rule, "solver/src/report/card.rs", "use crate::plan::Plan;", &[]);
    // What the root re-exports would hide the room; an unknown room has no place.
    check(rule, "solver/src/truck/spec.rs", "use crate::Road;", &[1]);
    check(rule, "solver/src/extras.rs", "", &[1]);
    // Upward by `super`.
    check(rule, "solver/src/road/gpx.rs", "use super::super::truck::Truck;", &[1]);
    check(rule, "solver/src/road/mod.rs", "use super::truck::Truck;", &[1]);
    check(rule, "solver/src/road/gpx.rs", "use super::track::Track;\nuse super::*;", &[]);
    check(rule, "solver/src/lib.rs", "pub use crate::plan::Plan;", &[]);
    check(rule, "app/src/state.rs", "use crate::plan;", &[]);
}

#[test]
fn app_layers_can_fail() {
    let rule = layers::app_layers;
    check(rule, "app/src/chart/axis.rs", "use crate::format;\nuse crate::words::words;", &[2]);
    check(rule, "app/src/chart/axis.rs", "use super::super::tell;", &[1]);
    check(rule, "app/src/tell/class.rs", "\nuse crate::class::Screen;", &[2]);
    check(rule, "app/src/state/work.rs", "use crate::{browser::timer, view::part};", &[1]);
    check(rule, "app/src/state/work.rs", "use crate::{browser::timer, words::words};", &[]);
    check(rule, "app/src/extras.rs", "", &[1]);
    check(rule, "app/src/view/road.rs", "use workers::message::RoadFacts;\nuse workers::desk::Desk;", &[2]);
    check(rule, "app/src/lib.rs", "use view::page;", &[]);
    // Examples for tests come from anywhere.
    check(rule, "app/src/compare.rs", "#[cfg(test)]\nmod tests {\n  use workers::desk::Desk;\n}", &[]);
    check(rule, "app/src/words/tests/way.rs", "use crate::tell::captions;", &[]);
}

#[test]
fn worker_layers_can_fail() {
    let rule = layers::worker_layers;
    check(rule, "app/workers/src/message/study.rs", "use crate::desk::Desk;", &[1]);
    check(rule, "app/workers/src/desk.rs", "use crate::scope::post;", &[1]);
    check(rule, "app/workers/src/desk.rs", "use crate::message::Reply;", &[]);
    check(rule, "app/workers/src/bin/worker.rs", "use workers::desk::Desk;", &[]);
}

#[test]
fn views_can_fail() {
    let rule = rules::views;
    check(rule, "app/src/chart/axis.rs", "\nuse leptos::prelude::*;", &[2]);
    check(rule, "app/src/tell/road.rs", "fn a() { leptos::mount() }", &[1]);
    check(rule, "app/src/view/road.rs", "use leptos::prelude::*;", &[]);
    check(rule, "app/src/lib.rs", "leptos::mount::mount_to_body(a);", &[]);
    check(rule, "app/src/chart/axis.rs", "// not for leptos", &[]);
}

#[test]
fn browser_bindings_can_fail() {
    let rule = rules::browser_bindings;
    check(rule, "app/src/view/road.rs", "\nuse web_sys::Event;", &[2]);
    check(rule, "app/src/view/road.rs", "fn a(e: leptos::web_sys::Event) {}", &[1]);
    check(rule, "solver/src/road/gpx.rs", "let now = js_sys::Date::now();", &[1]);
    check(rule, "app/src/browser/files.rs", "use web_sys::File;", &[]);
    check(rule, "app/src/bin/class.rs", "use js_sys::Array;", &[1]);
    check(rule, "app/workers/src/desk.rs", "use js_sys::Array;", &[1]);
    check(rule, "app/workers/src/scope.rs", "use js_sys::Array;", &[]);
    check(rule, "app/workers/src/bin/worker.rs", "use js_sys::Array;", &[]);
    check(rule, "app/src/view/road.rs", "// web_sys is not for here", &[]);
}

#[test]
fn worker_client_can_fail() {
    let rule = rules::worker_client;
    check(rule, "app/src/view/road.rs", "use crate::browser::worker::Client;", &[1]);
    check(rule, "app/src/main.rs", "use app::browser::{files, worker};", &[1]);
    check(rule, "app/src/view/road.rs", "use crate::browser::files;", &[]);
    check(rule, "app/src/state.rs", "use crate::browser::worker::Client;", &[]);
    check(rule, "app/src/state/ask.rs", "use crate::browser::worker::Client;", &[]);
}

#[test]
fn file_length_can_fail() {
    let rule = rules::file_length;
    check(rule, "solver/src/a.rs", &"x\n".repeat(400), &[]);
    check(rule, "solver/src/a.rs", &"x\n".repeat(401), &[401]);
    check(rule, "tests/browser/a.mjs", &"x\n".repeat(500), &[401]);
    check(rule, "app/style/main.css", &"x\n".repeat(500), &[]);
    check(rule, "tests/data/a.gpx", &"x\n".repeat(500), &[]);
}

#[test]
fn unfinished_work_can_fail() {
    let rule = rules::unfinished_work;
    let word = concat!("to", "do!");
    check(rule, "solver/src/a.rs", &format!("fn a() {{\n  {word}()\n}}"), &[2]);
    check(rule, "xtask/src/a.rs", concat!("// TO", "DO later"), &[1]);
    check(rule, "xtask/src/a.rs", concat!("// FIX", "ME"), &[1]);
    check(rule, "xtask/src/a.rs", concat!("db", "g!(x); unimpl", "emented!()"), &[1, 1]);
    check(rule, "solver/src/a.rs", "let not_a_todo = 1;", &[]);
}

#[test]
fn outside_paths_can_fail() {
    let rule = rules::outside_paths;
    check(rule, "README.md", concat!("see ../", "shared/model.md"), &[1]);
    check(rule, "xtask/src/a.rs", concat!("\nlet a = \"/wo", "rk/main\";"), &[2]);
    check(rule, "README.md", "see tests/README.md, and work on", &[]);
}

#[test]
fn published_sources_can_fail() {
    let rule = rules::published_sources;
    let path = "tests/published/a.rs";
    check(rule, path, "\n#[test]\nfn a() {}", &[2]);
    check(rule, path, "/// As printed.\n#[test]\nfn a() {}", &[2]);
    check(rule, path, "//! All.\n/// AXLE: x\n#[test]\n\n#[test]", &[5]);
    check(rule, path, "//! UN Regulation 13\n#[test]\nfn a() {}", &[]);
    check(rule, path, "/// Of (SAE J1489, rev.).\n#[test]\nfn a() {}", &[]);
    check(rule, path, "//! Common practice, no source.\n#[test]\nfn a() {}", &[]);
    check(rule, "tests/published/rows.rs", "const A: f64 = 1.0;", &[]);
    check(rule, "tests/analytic/a.rs", "#[test]\nfn a() {}", &[]);
}

#[test]
fn reasons_can_fail() {
    let rule = rules::reasons;
    check(rule, "Cargo.toml", "[package]\nname = \"a\"\n[workspace.dependencies]\na = \"1\"", &[4]);
    check(rule, "a/Cargo.toml", "[dependencies]\n# Why.\na = \"1\"\nb.workspace = true", &[4]);
    check(rule, "a/Cargo.toml", "[target.'cfg(x)'.dev-dependencies]\na = \"1\" # Why.\n\nb = \"2\"", &[4]);
    check(rule, "a/Cargo.toml", "[build-dependencies.a]\nversion = \"1\"", &[1]);
    check(rule, "a/Cargo.toml", "# Why.\n[dependencies.a]\nversion = \"1\"\n[lints]\nworkspace = true", &[]);
    check(rule, "a/other.toml", "[dependencies]\na = \"1\"", &[]);
}
