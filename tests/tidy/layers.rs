//! Who may import whom. Data flows one way: a room (a file or folder at the root of a crate) knows those
//! below it and nobody above.

use crate::rules::{Breach, breach};
use crate::scan::{root_paths, super_chains, without_tests};

/// Rooms, and whom each may import.
type Layers = [(&'static str, &'static [&'static str])];

const BASE: [&str; 3] = ["units", "constants", "limits"];

const SOLVER: [(&str, &[&str]); 13] = [
    ("units", &[]),
    ("atmosphere", &["units"]),
    ("constants", &["units"]),
    ("limits", &["units", "constants"]),
    ("order", &[]),
    ("day", &BASE),
    ("road", &["units", "atmosphere", "constants", "limits", "order"]),
    ("truck", &BASE),
    ("motion", &["units", "atmosphere", "constants", "limits", "day", "road", "truck"]),
    ("plan", &["units", "constants", "limits", "order", "day", "road", "truck", "motion"]),
    ("study", &["units", "constants", "limits", "day", "road", "truck", "motion", "plan"]),
    ("report", &["units", "constants", "limits", "day", "road", "truck", "motion", "plan"]),
    ("error", &["limits", "road", "truck", "report"]),
];

/// The page: the browser and what needs nobody, data and geometry, words, state, views.
const APP: [(&str, &[&str]); 18] = [
    ("browser", &[]),
    ("format", &[]),
    ("lesson", &[]),
    ("marker", &[]),
    ("outline", &[]),
    ("screen", &[]),
    ("trouble", &[]),
    ("entries", &["format"]),
    ("exercise", &["format"]),
    ("card", &["format", "marker"]),
    ("chart", &["format", "marker"]),
    ("compare", &["chart"]),
    ("many", &["chart", "compare"]),
    ("words", &["entries", "format"]),
    ("tell", &TOLD),
    (
        "state",
        &["browser", "chart", "entries", "format", "lesson", "marker", "outline", "tell", "trouble", "words"],
    ),
    ("view", &VIEWED),
    ("class", &TAUGHT),
];
const TOLD: [&str; 12] = [
    "card", "chart", "compare", "entries", "exercise", "format", "lesson", "marker", "outline", "screen",
    "trouble", "words",
];
const VIEWED: [&str; 13] = [
    "browser", "card", "chart", "compare", "entries", "format", "many", "marker", "outline", "state", "tell",
    "trouble", "words",
];
const TAUGHT: [&str; 10] =
    ["browser", "chart", "exercise", "format", "lesson", "screen", "state", "tell", "view", "words"];

const WORKERS: [(&str, &[&str]); 4] =
    [("message", &[]), ("desk", &["message"]), ("study_desk", &["message"]), ("scope", &["message"])];

/// The solver's, its tests included.
pub(crate) fn solver_layers(path: &str, text: &str) -> Vec<Breach> {
    layers("solver/src/", &SOLVER, path, text)
}

/// The page's. A test may ask whom it wants, for an example; the workers are known by their messages only.
pub(crate) fn app_layers(path: &str, text: &str) -> Vec<Breach> {
    let concerned = path.starts_with("app/src/") && path.ends_with(".rs");
    if is_of_tests(path) || !concerned {
        return Vec::new();
    }
    let code = without_tests(text);
    let mut found = layers("app/src/", &APP, path, &code);
    let asked = root_paths(&code, &["workers"]).into_iter();
    let desks = asked.filter(|it| it.path != "message" && !it.path.starts_with("message::"));
    found.extend(
        desks.map(|it| breach(it.line, format!("the page knows no `workers::{}`, only messages", it.path))),
    );
    found
}

/// The workers'.
pub(crate) fn worker_layers(path: &str, text: &str) -> Vec<Breach> {
    if is_of_tests(path) {
        return Vec::new();
    }
    layers("app/workers/src/", &WORKERS, path, &without_tests(text))
}

/// Whether a file holds tests only.
pub(crate) fn is_of_tests(path: &str) -> bool {
    path.trim_end_matches(".rs").split('/').any(|part| part == "tests")
}

fn layers(root: &str, layers: &Layers, path: &str, text: &str) -> Vec<Breach> {
    let Some(inner) = path.strip_prefix(root).and_then(|p| p.strip_suffix(".rs")) else {
        return Vec::new();
    };
    let own = inner.split('/').next().unwrap_or(inner);
    if matches!(own, "lib" | "main" | "bin") {
        // The crate's root and its programs are the places that know everybody.
        return Vec::new();
    }
    let room = |target: &str| target.split("::").next().map(String::from).unwrap_or_default();
    let Some((_, allowed)) = layers.iter().find(|(name, _)| *name == own) else {
        let sentence =
            format!("the room `{own}` has no place in the order; give it one in tests/tidy/layers.rs");
        return vec![breach(1, sentence)];
    };
    let is_room = |target: &str| layers.iter().any(|(name, _)| *name == room(target));
    let judge = |line: usize, target: &str| {
        let other = room(target);
        if other == own || allowed.contains(&other.as_str()) {
            None
        } else if is_room(target) {
            Some(breach(line, format!("`{own}` must not know `{other}`")))
        } else {
            let sentence = format!("`crate::{target}` hides which room it is from; name the room");
            Some(breach(line, sentence))
        }
    };
    let from_root = root_paths(text, &["crate"]);
    let mut found: Vec<Breach> =
        from_root.iter().filter_map(|found| judge(found.line, &found.path)).collect();
    // `super` may lead up to the root as well. `mod.rs` stands for its folder.
    let depth = inner.trim_end_matches("/mod").split('/').count();
    let upward = super_chains(text).into_iter();
    let upward = upward.filter(|(_, count, target)| *count >= depth && is_room(target));
    found.extend(upward.filter_map(|(line, _, target)| judge(line, &target)));
    found
}
