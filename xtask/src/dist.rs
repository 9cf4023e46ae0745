//! Finishes the page after Trunk has built it.
//!
//! Trunk leaves the workers' files without a hash in their names. A page from a cache would then meet a newer
//! worker. So the worker's glue and the line that starts it become one script, script and module get their
//! hashes, and the page learns the name from its `<meta name="worker-script">`. Other files that are fetched
//! after the page are named likewise.
//!
//! The page's program is cut into the module that Trunk's page starts and parts that come later ([`parts`]).
//!
//! That page gives those of the other languages ([`languages`]), and each of them its one file,
//! `standalone.html` in English ([`standalone`]). The others get a start of ours ([`start`]), and each its content
//! security policy ([`policy`]). Last, the service worker gets what it answers where nothing was kept ([`absent`])
//! and its list of all files ([`cache`]).

mod absent;
mod cache;
mod class;
mod languages;
mod parts;
mod policy;
mod standalone;
mod start;
mod tags;

pub(crate) use cache::WORKER as SERVICE_WORKER;
pub(crate) use class::one_file_name as class_file_in;
pub(crate) use languages::{LANGUAGES, build as build_languages, page as page_in};
pub(crate) use standalone::name_in as standalone_in;

use crate::Outcome;
use sha2::{Digest, Sha256};
use std::{
    fs,
    path::{Path, PathBuf},
};

/// The tag of `app/index.html` for a worker. It names the loader until the build puts in the real name.
fn meta(worker: &str, script: &str) -> String {
    format!(r#"<meta name="{worker}-script" content="./{script}">"#)
}

/// The workers: the first answers, the second looks further.
const WORKERS: [&str; 2] = ["worker", "study"];
/// Other files that are fetched after the page, each named once in it.
const LATER: [&str; 3] = ["demo.gpx", "evidence.json", "offline.js"];
/// The teaching roads among them. Each GPX file, and the `<meta>` that names it, has this name.
const LESSONS: [&str; 5] = [
    "lesson-false-finish",
    "lesson-three-steps",
    "lesson-short-and-steep",
    "lesson-long-and-gentle",
    "lesson-hairpins",
];

/// Names the files fetched after the page by their contents, writes the page as one file, and tells page and
/// service worker about both.
///
/// # Errors
/// A sentence when a file or a tag that must exist is missing.
pub(crate) fn finish(dist: &Path) -> Outcome {
    let index = dist.join("index.html");
    let mut html = read_text(&index)?;
    for worker in WORKERS {
        let script = name_worker(dist, worker)?;
        html = put_worker(&html, worker, &script)?;
    }
    for file in LATER {
        html = name_file(dist, &html, file)?;
    }
    for lesson in LESSONS {
        html = name_file(dist, &html, &format!("{lesson}.gpx"))?;
    }
    let texts = languages::Texts::read()?;
    let translated = LANGUAGES.iter().map(|tag| languages::translated(dist, &html, tag, &texts));
    let contents = std::iter::once(Ok(html.clone())).chain(translated);
    for ((tag, module, page), html) in languages::road_pages().zip(contents) {
        let html = html?;
        let road = class::without(&html)?;
        let one_file = standalone_in(tag);
        write(&dist.join(&one_file), standalone::make(dist, &road)?.as_bytes())?;
        let road = standalone::put_link(&languages::put_pages(&road)?, &one_file)?;
        let road = class::put_link(&road, "class-page", &format!("./{}", class::page_name(tag)))?;
        let road = start::put(dist, &road)?;
        write(&dist.join(&page), policy::put(&road, policy::Place::Served)?.as_bytes())?;
        absent::write_page(dist, tag, &page, &texts)?;

        let taught = class::page(dist, &html, tag, module)?;
        let one_file = class::one_file_name(tag);
        write(&dist.join(&one_file), standalone::make(dist, &taught)?.as_bytes())?;
        let taught = standalone::put_link(&taught, &one_file)?;
        let taught = class::put_link(&taught, "road-page", &cache::address(&page))?;
        let taught = start::put(dist, &taught)?;
        write(&dist.join(class::page_name(tag)), policy::put(&taught, policy::Place::Served)?.as_bytes())?;
    }
    cache::write_worker(dist)
}

/// Tag of the language of `app/index.html`.
const ENGLISH: &str = "en";

/// Makes `worker-HASH.js` and `worker-HASH.wasm`; returns the name of the script.
fn name_worker(dist: &Path, worker: &str) -> Outcome<String> {
    let module = dist.join(format!("{worker}_bg.wasm"));
    let bytes = read(&module)?;
    let module_name = format!("{worker}-{}.wasm", short_hash(&bytes));
    let glue = read_text(&dist.join(format!("{worker}.js")))?;
    let script = worker_script(&glue, &module_address(&module_name));
    let script_name = format!("{worker}-{}.js", short_hash(script.as_bytes()));
    write(&dist.join(&module_name), &bytes)?;
    write(&dist.join(&script_name), script.as_bytes())?;
    for old in ["_bg.wasm", ".js", "_loader.js"] {
        remove(&dist.join(format!("{worker}{old}")))?;
    }
    Ok(script_name)
}

/// The glue and the line that starts it. A module that cannot be loaded throws outside the promise: only then
/// does the page's `error` listener on the worker hear of it.
fn worker_script(glue: &str, module: &str) -> String {
    format!(
        "{glue}\nwasm_bindgen({{ module_or_path: {module} }})\
         .catch((error) => setTimeout(() => {{ throw error; }}));\n"
    )
}

/// The expression by which the worker's script names its module.
fn module_address(module_name: &str) -> String {
    format!("\"./{module_name}\"")
}

fn put_worker(html: &str, worker: &str, script_name: &str) -> Outcome<String> {
    let before = meta(worker, &format!("{worker}_loader.js"));
    put_once(html, &before, &meta(worker, script_name))
}

/// Puts the hash of a file's contents into its name, in the folder and in the page.
fn name_file(dist: &Path, html: &str, name: &str) -> Outcome<String> {
    let path = dist.join(name);
    let bytes = read(&path)?;
    let (stem, end) = name.split_once('.').unwrap_or((name, ""));
    let new_name = format!("{stem}-{}.{end}", short_hash(&bytes));
    write(&dist.join(&new_name), &bytes)?;
    remove(&path)?;
    put_once(html, &format!("\"./{name}\""), &format!("\"./{new_name}\""))
}

/// Replaces a text that must stand exactly once.
fn put_once(html: &str, before: &str, after: &str) -> Outcome<String> {
    if html.matches(before).count() != 1 {
        return Err(format!("this must stand once, as is, in its file below app/: {before}"));
    }
    Ok(html.replace(before, after))
}

/// Names of all files below a folder, in order, with `/` between folders.
///
/// # Errors
/// A sentence when a folder cannot be listed.
pub(crate) fn list_files(dist: &Path) -> Outcome<Vec<String>> {
    let mut names = Vec::new();
    let mut open = vec![dist.to_path_buf()];
    // Ends: a build has finitely many folders and no links.
    while let Some(folder) = open.pop() {
        let failed = |error| format!("cannot list {}: {error}", folder.display());
        for entry in fs::read_dir(&folder).map_err(failed)? {
            let path: PathBuf = entry.map_err(failed)?.path();
            if path.is_dir() {
                open.push(path);
            } else if let Ok(name) = path.strip_prefix(dist) {
                names.push(name.to_string_lossy().replace('\\', "/"));
            }
        }
    }
    names.sort();
    Ok(names)
}

/// Sixteen hex digits: enough to distinguish any two builds.
fn short_hash(bytes: &[u8]) -> String {
    let digest = Sha256::digest(bytes);
    digest.iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}

fn read(path: &Path) -> Outcome<Vec<u8>> {
    fs::read(path).map_err(|error| format!("cannot read {}: {error}", path.display()))
}

fn read_text(path: &Path) -> Outcome<String> {
    fs::read_to_string(path).map_err(|error| format!("cannot read {}: {error}", path.display()))
}

fn write(path: &Path, bytes: &[u8]) -> Outcome {
    fs::write(path, bytes).map_err(|error| format!("cannot write {}: {error}", path.display()))
}

fn remove(path: &Path) -> Outcome {
    fs::remove_file(path).map_err(|error| format!("cannot remove {}: {error}", path.display()))
}

#[cfg(test)]
mod tests;
