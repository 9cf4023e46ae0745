//! The service worker: `app/offline/sw.js` with the list of this build's files.
//!
//! Each file stands in the list with its hash, which the browser checks while it keeps the files. The version
//! is the hash over list and worker, so a change of any file makes another version.

use super::{absent, class, languages, list_files, policy, put_once, read, short_hash, write};
use crate::Outcome;
use std::path::Path;

/// Its name beside the page.
pub(crate) const WORKER: &str = "sw.js";
const SOURCE: &str = include_str!("../../../app/offline/sw.js");
/// Line that the build fills in.
const VERSION: &str = "const VERSION = \"\";";
const FILES: &str = "const FILES = [];";

/// Writes the service worker for all files of the folder.
///
/// # Errors
/// A sentence when a file cannot be read or the worker has no place for the list.
pub(super) fn write_worker(dist: &Path) -> Outcome {
    let mut list = String::new();
    for name in list_files(dist)?.iter().filter(|name| is_kept(name)) {
        let hash = policy::hash(&read(&dist.join(name))?);
        list += &match belongs_to(name) {
            Some(tag) => format!("  [{:?}, {hash:?}, {tag:?}],\n", address(name)),
            None => format!("  [{:?}, {hash:?}],\n", address(name)),
        };
    }
    let version = short_hash(format!("{list}{SOURCE}").as_bytes());
    let worker = put_once(SOURCE, VERSION, &format!("const VERSION = \"{version}\";"))?;
    let worker = put_once(&worker, FILES, &format!("const FILES = [\n{list}];"))?;
    write(&dist.join(WORKER), worker.as_bytes())
}

/// The page as one file needs no service worker, and would double what a phone has to fetch.
fn is_kept(name: &str) -> bool {
    name != WORKER && !name.starts_with("standalone")
}

/// Tag of what a file belongs to alone: a language of the road page, or of the class view. The browser keeps
/// only those that were opened.
fn belongs_to(name: &str) -> Option<String> {
    for (tag, road, page) in languages::road_pages() {
        if name == page || name == absent::name_in(tag) || name.starts_with(&format!("{road}-")) {
            return Some(tag.to_owned());
        }
        let taught = class::module(tag);
        if name == class::page_name(tag) || name.starts_with(&format!("{taught}-")) {
            return Some(taught);
        }
    }
    None
}

/// The page is addressed by its folder. Some hosts redirect `index.html` there, and a redirected answer must
/// not be given to a browser that opens a page.
pub(super) fn address(name: &str) -> String {
    if name == "index.html" { String::from("./") } else { format!("./{name}") }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;

    #[test]
    fn the_worker_lists_every_file_with_its_hash_and_any_change_is_another_version() {
        let dist = std::env::temp_dir().join(format!("steadygrade-cache-{}", std::process::id()));
        fs::create_dir_all(dist.join("fonts")).expect("a temporary folder");
        let worker_for = |face: &str| {
            for (name, text) in [
                ("index.html", "page"),
                ("de.html", "Seite"),
                ("fonts/a.woff2", face),
                ("standalone.html", "all"),
            ] {
                fs::write(dist.join(name), text).expect("a file in it");
            }
            write_worker(&dist).expect("the folder is sound");
            fs::read_to_string(dist.join(WORKER)).expect("the worker")
        };
        let first = worker_for("face");
        // SHA-256 of `page`, from `printf page | openssl dgst -sha256 -binary | base64`.
        assert!(
            first.contains("[\"./\", \"sha256-NmAxWprz3yVdjxmrB35Hl4IrQUiKDioEvGr3EhPCMnQ=\", \"en\"]"),
            "{first}"
        );
        assert!(first.contains("\"./fonts/a.woff2\"") && first.contains("\"de\"]"));
        assert_eq!(first.matches("sha256-").count(), 3, "neither itself nor the one file");
        let version = |worker: &str| {
            let (_, from) = worker.split_once("const VERSION = \"").expect("the line");
            from.split_once('"').map(|(version, _)| String::from(version)).expect("its end")
        };
        assert_eq!(version(&first).len(), 16);
        assert_eq!(first, worker_for("face"));
        assert_ne!(version(&first), version(&worker_for("another face")));
        fs::remove_dir_all(&dist).expect("the folder was ours");
    }
}
