//! The rules. Each takes a file's path from the project's root and its text, and gives what is
//! wrong with it.

use crate::layers::{app_layers, solver_layers, worker_layers};
use crate::scan::{blank_out, root_paths};

/// A file longer than this has more than one subject.
const MOST_LINES: usize = 400;

/// A place where a rule is broken.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Breach {
    /// Line in the file, from 1.
    pub(crate) line: usize,
    /// What is wrong, and the remedy.
    pub(crate) sentence: String,
}

pub(crate) fn breach(line: usize, sentence: impl Into<String>) -> Breach {
    Breach { line, sentence: sentence.into() }
}

/// A rule: path and text in, breaches out.
pub(crate) type Rule = fn(&str, &str) -> Vec<Breach>;

/// All rules, with the names they are reported by.
pub(crate) const RULES: [(&str, Rule); 11] = [
    ("solver layers", solver_layers),
    ("app layers", app_layers),
    ("worker layers", worker_layers),
    ("views", views),
    ("browser bindings", browser_bindings),
    ("worker client", worker_client),
    ("file length", file_length),
    ("unfinished work", unfinished_work),
    ("outside paths", outside_paths),
    ("published sources", published_sources),
    ("reasons for dependencies", reasons),
];

/// The browser's raw bindings stay in one folder of the page, and in the workers' own end and programs.
pub(crate) fn browser_bindings(path: &str, text: &str) -> Vec<Breach> {
    let in_app = ["app/src/", "app/workers/src/"].iter().any(|start| path.starts_with(start));
    let in_app = in_app && path.ends_with(".rs");
    let in_solver = path.starts_with("solver/src/") && path.ends_with(".rs");
    let allowed = path.starts_with("app/src/browser/")
        || path == "app/src/browser.rs"
        || path.starts_with("app/workers/src/bin/")
        || path == "app/workers/src/scope.rs";
    if allowed || !(in_app || in_solver) {
        return Vec::new();
    }
    lines_with(&blank_out(text), &["web_sys", "js_sys"], |word| {
        format!("`{word}` belongs into app/src/browser, of a worker into its scope")
    })
}

/// Views are made where views are: nothing below them knows the library that makes them.
pub(crate) fn views(path: &str, text: &str) -> Vec<Breach> {
    let rooms = ["browser", "class", "state", "view", "lib"];
    let Some(inner) = path.strip_prefix("app/src/").filter(|_| path.ends_with(".rs")) else {
        return Vec::new();
    };
    if inner.split('/').next().is_some_and(|room| rooms.contains(&room.trim_end_matches(".rs"))) {
        return Vec::new();
    }
    lines_with(&blank_out(text), &["leptos"], |_| String::from("views belong into app/src/view"))
}

/// Only the state asks the worker.
pub(crate) fn worker_client(path: &str, text: &str) -> Vec<Breach> {
    let concerned = path.starts_with("app/src/") && path.ends_with(".rs");
    let allowed = path.starts_with("app/src/browser")
        || path == "app/src/state.rs"
        || path.starts_with("app/src/state/");
    if allowed || !concerned {
        return Vec::new();
    }
    let asks = |target: &str| target == "browser::worker" || target.starts_with("browser::worker::");
    root_paths(text, &["crate", "app"])
        .iter()
        .filter(|found| asks(&found.path))
        .map(|found| breach(found.line, "only app/src/state asks the worker"))
        .collect()
}

/// No source above 400 lines. Style sheets, pages, prose, data and lock files are no sources.
pub(crate) fn file_length(path: &str, text: &str) -> Vec<Breach> {
    let lines = text.lines().count();
    if is_source(path) && lines > MOST_LINES {
        let sentence = format!("{lines} lines; above {MOST_LINES} a file has several subjects");
        vec![breach(MOST_LINES + 1, sentence)]
    } else {
        Vec::new()
    }
}

/// Nothing half done.
pub(crate) fn unfinished_work(path: &str, text: &str) -> Vec<Breach> {
    // Put together here, or this file would be the first to break the rule.
    let words = [
        concat!("TO", "DO"),
        concat!("FIX", "ME"),
        concat!("unimpl", "emented!"),
        concat!("to", "do!"),
        concat!("db", "g!"),
    ];
    if !is_source(path) {
        return Vec::new();
    }
    lines_with(text, &words, |word| format!("`{word}`: finish it or file it as an issue"))
}

/// The project stands for itself: nothing in it points at a folder beside it.
pub(crate) fn outside_paths(_path: &str, text: &str) -> Vec<Breach> {
    let words = [concat!("../", "shared"), concat!("/wo", "rk/"), concat!("/tmp", "/brief")];
    lines_with(text, &words, |word| format!("`{word}` is nothing that a reader has"))
}

/// A check against a published value says where it is published: in its own comment, or in
/// the one at the head of its file.
pub(crate) fn published_sources(path: &str, text: &str) -> Vec<Breach> {
    if !(path.starts_with("tests/published/") && path.ends_with(".rs")) {
        return Vec::new();
    }
    let head: Vec<&str> = text.lines().map_while(|line| line.strip_prefix("//!")).collect();
    if names_source(&head.join(" ")) {
        return Vec::new();
    }
    let lines: Vec<&str> = text.lines().collect();
    let tests = (0..lines.len()).filter(|&at| lines[at].trim() == "#[test]");
    let nameless = tests.filter(|&at| {
        let above = lines[..at].iter().rev().map_while(|line| line.trim().strip_prefix("///"));
        let mut comment: Vec<&str> = above.collect();
        comment.reverse();
        !names_source(&comment.join(" "))
    });
    let sentence = "name the source of the published value, or say that there is none";
    nameless.map(|at| breach(at + 1, sentence)).collect()
}

/// Beside each dependency stands why it is there: a comment in the line above it, or at its end.
pub(crate) fn reasons(path: &str, text: &str) -> Vec<Breach> {
    if path != "Cargo.toml" && !path.ends_with("/Cargo.toml") {
        return Vec::new();
    }
    let (mut found, mut inside, mut before) = (Vec::new(), false, "");
    for (index, line) in text.lines().map(str::trim).enumerate() {
        let told = before.starts_with('#') || line.contains(" # ");
        let table = line.strip_prefix('[').and_then(|rest| rest.strip_suffix(']'));
        // A table of dependencies, or one of a single dependency.
        let is_one = table.is_some_and(|table| table.rsplit_once('.').is_some_and(|(of, _)| lists(of)));
        let is_entry = inside && table.is_none() && line.contains('=') && !line.starts_with('#');
        if (is_one || is_entry) && !told {
            found.push(breach(index + 1, "say in a comment why this dependency is there"));
        }
        inside = table.map_or(inside, lists);
        before = line;
    }
    found
}

/// Whether a table of a manifest lists dependencies.
fn lists(table: &str) -> bool {
    table.rsplit('.').next().is_some_and(|last| last.ends_with("dependencies"))
}

/// Whether a comment speaks of its source, begins with the key of one (`AXLE: …`) or holds a
/// designation: a capitalised word before one with a digit (`Regulation 13`, `SAE J1489`).
fn names_source(comment: &str) -> bool {
    let words: Vec<&str> = comment.split_whitespace().collect();
    let key = words.first().and_then(|word| word.strip_suffix(':'));
    let is_key = key.is_some_and(|key| {
        key.len() > 1 && key.chars().all(|c| c.is_ascii_uppercase() || c.is_ascii_digit() || c == '-')
    });
    let is_designation = words.windows(2).any(|pair| {
        let name = pair[0].trim_matches('(');
        name.len() > 1
            && name.starts_with(|c: char| c.is_ascii_uppercase())
            && name.chars().all(|c| c.is_ascii_alphabetic())
            && pair[1].contains(|c: char| c.is_ascii_digit())
    });
    is_key || is_designation || comment.to_lowercase().contains("source")
}

fn is_source(path: &str) -> bool {
    let name = path.rsplit('/').next().unwrap_or(path);
    [".rs", ".mjs", ".js"].iter().any(|end| name.ends_with(end))
}

/// A breach for each line that holds one of the words as a whole.
fn lines_with(text: &str, words: &[&str], sentence: impl Fn(&str) -> String) -> Vec<Breach> {
    let mut found = Vec::new();
    for (index, line) in text.lines().enumerate() {
        for word in words.iter().filter(|word| holds(line, word)) {
            found.push(breach(index + 1, sentence(word)));
        }
    }
    found
}

fn holds(line: &str, word: &str) -> bool {
    let is_letter = |c: char| c.is_alphanumeric() || c == '_';
    line.match_indices(word).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        let first = word.chars().next();
        !(first.is_some_and(is_letter) && before.is_some_and(is_letter))
    })
}
