//! Size budgets: what a first visit loads, compressed as a host would (brotli, quality 11).
//!
//! The limits are our own. A phone in a lay-by with a poor connection (about 1 Mbit/s) has the page in some
//! four seconds at 520 KB. What is loaded when the first answer stands (the parts of the page's program, the study
//! worker, the service worker) is not counted in it. `app/docs/sizes.md` has the sizes and what each feature costs.

use crate::{Outcome, dist, dist::LANGUAGES, project};
use std::{collections::BTreeSet, fs, path::Path};

/// Kilobytes here are 1000 bytes: the stricter reading.
const KB: usize = 1000;
/// The demo included, which is always part of it.
const FIRST_LOAD_KB: usize = 520;
const PAGE_MODULE_KB: usize = 324;
/// What the first screen does not need; loaded when the first answer stands.
const PARTS_KB: usize = 208;
/// The worker proves each plan by driving it, and plans each recording of a road by itself.
const WORKER_MODULE_KB: usize = 136;
/// The study worker has the exports, and reads and writes JSON.
const STUDY_MODULE_KB: usize = 202;
/// With what it answers where a page was not kept.
const SERVICE_WORKER_KB: usize = 5;
const MANIFEST_KB: usize = 1;
/// The page as one file, uncompressed as it lies on a stick, in the language that makes it largest.
/// The pieces of the page's program, all of which it contains, are together larger than the whole.
const ONE_FILE_KB: usize = 3_930;
/// The teaching roads, each of which is fetched by itself.
const LESSONS_KB: usize = 25;

/// The class view, a page of its own: its module, and all of it as one file; of every language.
const CLASS_MODULE_KB: usize = 260;
const CLASS_FILE_KB: usize = 2_985;

/// How the names of files begin that the page names but loads only when the first answer stands. The parts of its
/// program are such, too ([`is_part`]).
const LATER: [&str; 2] = ["study-", "evidence-"];
/// How the name of a page's module ends.
const MODULE_END: &str = "_bg.wasm";
/// How the names of the class view's files begin.
const CLASS: &str = "class";
/// How the names of the teaching roads' files begin.
const LESSON: &str = "lesson-";
/// Loaded by a browser that may install the page; it names the icons.
const MANIFEST: &str = "manifest.webmanifest";

/// One file of the first load.
struct Loaded {
    name: String,
    raw: usize,
    compressed: usize,
}

/// Measures `dist/` and prints a table.
///
/// # Errors
/// A sentence with the figures when a budget is exceeded or a module is missing.
pub(crate) fn run() -> Outcome {
    let dist = project::dist_folder();
    let loaded = first_load(&dist)?;
    println!("{:<36} {:>9} {:>9}", "first load", "raw", "brotli");
    for file in &loaded {
        println!("{:<36} {:>9} {:>9}", file.name, file.raw, file.compressed);
    }
    let sum = |wanted: &dyn Fn(&str) -> bool| -> usize {
        let chosen = loaded.iter().filter(|file| wanted(&file.name));
        chosen.map(|file| file.compressed).sum()
    };
    let compressed = |name: &str| compressed_size(&read(&dist, name)?);
    let first = |name: &str| !is_part(name, "app-") && !LATER.iter().any(|start| name.starts_with(start));
    let is_module = |name: &str, start: &str| name.starts_with(start) && name.ends_with(".wasm");
    let rows = [
        ("all of the first load", sum(&first), FIRST_LOAD_KB),
        ("the page's module", sum(&|name| is_module(name, "app-") && !is_part(name, "app-")), PAGE_MODULE_KB),
        ("the parts of its program, later", largest_parts(&dist)?, PARTS_KB),
        ("the worker's module", sum(&|name| is_module(name, "worker-")), WORKER_MODULE_KB),
        ("the study worker's module, later", sum(&|name| is_module(name, "study-")), STUDY_MODULE_KB),
        ("the service worker, later", compressed(dist::SERVICE_WORKER)?, SERVICE_WORKER_KB),
        ("the manifest, later", compressed(MANIFEST)?, MANIFEST_KB),
        ("the largest module of another language", largest_translated(&dist)?, PAGE_MODULE_KB),
        ("the largest page as one file", largest_file(&dist, dist::standalone_in)?, ONE_FILE_KB),
        ("the largest module of the class view", largest_class(&dist)?, CLASS_MODULE_KB),
        ("the teaching roads together", lessons(&dist)?, LESSONS_KB),
        ("the largest class view as one file", largest_file(&dist, dist::class_file_in)?, CLASS_FILE_KB),
    ];
    println!();
    let mut exceeded = Vec::new();
    for (what, bytes, limit_kb) in rows {
        println!("{what:<36} {bytes:>9} of {:>7} bytes", limit_kb * KB);
        if let Some(sentence) = judge(what, bytes, limit_kb) {
            exceeded.push(sentence);
        }
    }
    if exceeded.is_empty() { Ok(()) } else { Err(exceeded.join("; ")) }
}

/// Size of the largest page module in a language other than English; each must exist.
fn largest_translated(dist: &Path) -> Outcome<usize> {
    largest(dist, LANGUAGES.into_iter().map(|tag| format!("{tag}-")))
}

/// Whether a file is a part of the program whose module's name begins like this.
fn is_part(name: &str, start: &str) -> bool {
    name.starts_with(start) && name.ends_with(".wasm") && !name.ends_with(MODULE_END)
}

/// Size of the parts of a page's program together, in the language that makes them largest; each must exist.
fn largest_parts(dist: &Path) -> Outcome<usize> {
    let names = dist::list_files(dist)?;
    let mut largest = 0;
    for tag in LANGUAGES.into_iter().chain(["app"]) {
        let parts = names.iter().filter(|name| is_part(name, &format!("{tag}-")));
        let sizes = parts.map(|name| compressed_size(&read(dist, name)?));
        let together: usize = sizes.sum::<Outcome<usize>>()?;
        if together == 0 {
            return Err(format!("dist has no parts {tag}-….wasm"));
        }
        largest = largest.max(together);
    }
    Ok(largest)
}

/// Size of the class view's largest module, English included; each must exist.
fn largest_class(dist: &Path) -> Outcome<usize> {
    let tags = LANGUAGES.into_iter().chain(["en"]);
    largest(dist, tags.map(|tag| format!("{CLASS}-{tag}-")))
}

/// Size of the largest one-file page of all languages, uncompressed; each must exist.
fn largest_file(dist: &Path, name_in: fn(&str) -> String) -> Outcome<usize> {
    let tags = LANGUAGES.into_iter().chain(["en"]);
    tags.map(|tag| read(dist, &name_in(tag)).map(|bytes| bytes.len()))
        .try_fold(0, |largest, size| size.map(|size| largest.max(size)))
}

/// Size of the largest module whose name begins with one of these, compressed.
fn largest(dist: &Path, starts: impl Iterator<Item = String>) -> Outcome<usize> {
    let names = dist::list_files(dist)?;
    let mut largest = 0;
    for start in starts {
        let module = names.iter().find(|name| name.starts_with(&start) && name.ends_with(MODULE_END));
        let module = module.ok_or_else(|| format!("dist has no module {start}…{MODULE_END}"))?;
        largest = largest.max(compressed_size(&read(dist, module)?)?);
    }
    Ok(largest)
}

/// Size of all teaching roads together, compressed.
fn lessons(dist: &Path) -> Outcome<usize> {
    let names = dist::list_files(dist)?;
    let sizes =
        names.iter().filter(|name| name.starts_with(LESSON)).map(|name| compressed_size(&read(dist, name)?));
    sizes.sum()
}

fn judge(what: &str, bytes: usize, limit_kb: usize) -> Option<String> {
    if bytes == 0 {
        // A renamed file must not slip through its budget.
        Some(format!("{what} was not found"))
    } else if bytes > limit_kb * KB {
        Some(format!("{what} takes {bytes} bytes, more than {limit_kb} KB"))
    } else {
        None
    }
}

/// The page, and every file whose name is written in a file of the first load.
///
/// Files that hold or name everything a second time are left out: the one file, the service worker, the
/// manifest.
fn first_load(dist: &Path) -> Outcome<Vec<Loaded>> {
    let mut names = dist::list_files(dist)?;
    let is_page = |name: &str| LANGUAGES.into_iter().any(|tag| dist::page_in(tag) == name);
    names.retain(|name| !name.starts_with("standalone") && !name.starts_with(CLASS) && !is_page(name));
    names.retain(|name| ![dist::SERVICE_WORKER, MANIFEST].contains(&name.as_str()));
    let mut open = vec![String::from("index.html")];
    let mut known: BTreeSet<String> = open.iter().cloned().collect();
    let mut loaded = Vec::new();
    // Ends: each file enters `open` once.
    while let Some(name) = open.pop() {
        let bytes = read(dist, &name)?;
        if let Ok(text) = std::str::from_utf8(&bytes) {
            for other in &names {
                if text.contains(last_part(other)) && known.insert(other.clone()) {
                    open.push(other.clone());
                }
            }
        }
        loaded.push(Loaded { name, raw: bytes.len(), compressed: compressed_size(&bytes)? });
    }
    loaded.sort_by(|a, b| a.name.cmp(&b.name));
    Ok(loaded)
}

fn last_part(name: &str) -> &str {
    name.rsplit('/').next().unwrap_or(name)
}

fn read(dist: &Path, name: &str) -> Outcome<Vec<u8>> {
    let path = dist.join(name);
    fs::read(&path).map_err(|error| format!("cannot read {}: {error}", path.display()))
}

fn compressed_size(bytes: &[u8]) -> Outcome<usize> {
    let params = brotli::enc::BrotliEncoderParams { quality: 11, lgwin: 22, ..Default::default() };
    let mut out = Vec::new();
    brotli::BrotliCompress(&mut &bytes[..], &mut out, &params)
        .map_err(|error| format!("brotli failed: {error}"))?;
    Ok(out.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_the_page_leads_to_is_counted() {
        let dist = std::env::temp_dir().join(format!("steadygrade-budget-{}", std::process::id()));
        fs::create_dir_all(dist.join("snippets")).expect("a temporary folder");
        for (name, text) in [
            (
                "index.html",
                "./app-1.js, ./worker-2.js, ./standalone.html, ./class.html, ./de.html and ./sw.js",
            ),
            ("app-1.js", "import './snippets/inline0.js'"),
            ("snippets/inline0.js", "nothing"),
            ("worker-2.js", "index.html worker-2.wasm"),
            ("worker-2.wasm", "module"),
            ("standalone.html", "everything in one: unlinked-4.js"),
            ("sw.js", "unlinked-4.js"),
            ("de.html", "another language: unlinked-4.js"),
            ("class.html", "the class view: unlinked-4.js"),
            ("unlinked-4.js", "only there"),
        ] {
            fs::write(dist.join(name), text).expect("a file in it");
        }
        let loaded = first_load(&dist).expect("the folder is sound");
        let names: Vec<&str> = loaded.iter().map(|file| file.name.as_str()).collect();
        let expected = ["app-1.js", "index.html", "snippets/inline0.js", "worker-2.js", "worker-2.wasm"];
        assert_eq!(names, expected);
        fs::remove_dir_all(&dist).expect("the folder was ours");
    }

    #[test]
    fn of_one_file_in_each_language_the_largest_counts() {
        let dist = std::env::temp_dir().join(format!("steadygrade-one-file-{}", std::process::id()));
        fs::create_dir_all(&dist).expect("a temporary folder");
        for (k, tag) in LANGUAGES.into_iter().chain(["en"]).enumerate() {
            fs::write(dist.join(dist::standalone_in(tag)), vec![b' '; 10 * (4 - k)]).expect("a file in it");
        }
        assert_eq!(largest_file(&dist, dist::standalone_in), Ok(40));
        // A missing file is not a small file.
        fs::remove_file(dist.join("standalone-fr.html")).expect("it is there");
        assert!(largest_file(&dist, dist::standalone_in).is_err());
        fs::remove_dir_all(&dist).expect("the folder was ours");
    }

    #[test]
    fn a_budget_can_be_exceeded_or_missed() {
        assert_eq!(judge("a", 350_000, 350), None);
        assert!(judge("a", 350_001, 350).is_some());
        assert!(judge("a", 0, 350).is_some());
    }

    #[test]
    fn compression_is_real() {
        let size = compressed_size(&[7; 10_000]).expect("memory is enough");
        assert!(size > 0 && size < 100, "{size}");
    }
}
