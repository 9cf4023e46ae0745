//! The parts of the page's program: what `app/src/main.rs` marks is cut out of the module that the compiler
//! linked, into files that the page loads later (`app/offline/parts.js`).
//!
//! The cut is made before wasm-bindgen writes the glue, by functions: what only one part reaches goes into its
//! file, what several reach into one that they share, all else stays in the module. It goes by the relocations
//! that the linker leaves ([`LINKED`]).

use super::{list_files, policy, put_once, read, short_hash, write};
use crate::{
    Outcome,
    project::{self, program},
};
use std::{
    fs,
    path::{Path, PathBuf},
};

/// The source of the loader.
const SOURCE: &str = include_str!("../../../app/offline/parts.js");
/// Line that the build fills in.
const PARTS: &str = "const PARTS = {};";
/// What the compiler is told for a program that is to be cut.
pub(super) const LINKED: [&str; 4] = ["--cfg", "split", "-C", "link-arg=--emit-relocs"];
/// How the names of a part's file, of a shared one, and of the function that loads a part begin.
const OWN: &str = "split_";
const SHARED: &str = "chunk_";
const LOADER: &str = "__wasm_split_load_";
/// What is left: the page's module.
const MODULE: &str = "main";
/// By this the module imports what loads the parts.
const IMPORT: &str = "./__wasm_split.js";

/// A program in pieces.
pub(super) struct Cut {
    folder: PathBuf,
    /// Names of the pieces beside the module, without `.wasm`, in order.
    pieces: Vec<String>,
}

impl Cut {
    /// Cuts a linked program, into a folder that is emptied before.
    ///
    /// # Errors
    /// A sentence when the tool fails or cuts nothing out.
    pub(super) fn make(linked: &Path, folder: &Path) -> Outcome<Self> {
        crate::build::clear(folder)?;
        fs::create_dir_all(folder).map_err(|error| format!("cannot make {}: {error}", folder.display()))?;
        let mut tool = program("wasm-split-cli");
        project::run(tool.arg(linked).arg(folder).args(["--out-name", MODULE]))?;
        let mut pieces = Vec::new();
        for name in list_files(folder)? {
            let piece = name.strip_suffix(".wasm").filter(|piece| *piece != MODULE);
            pieces.extend(piece.map(String::from));
        }
        if pieces.iter().any(|piece| piece.starts_with(OWN)) {
            Ok(Self { folder: folder.to_owned(), pieces })
        } else {
            Err(format!("nothing was cut out of {}", linked.display()))
        }
    }

    /// The module that is left, for wasm-bindgen.
    pub(super) fn module(&self) -> PathBuf {
        self.folder.join(format!("{MODULE}.wasm"))
    }

    /// Puts the pieces into `dist/`, each named by program, part and hash, and the loader before the glue.
    ///
    /// # Errors
    /// A sentence when a piece cannot be made small, or the glue does not ask for the parts as expected.
    pub(super) fn finish(&self, dist: &Path, program_name: &str, glue: &str) -> Outcome<String> {
        let (mut own, mut shared) = (Vec::new(), Vec::new());
        for piece in &self.pieces {
            let small = self.folder.join(format!("{piece}.small"));
            let whole = self.folder.join(format!("{piece}.wasm"));
            project::run(program("wasm-opt").arg("-Oz").arg("-o").arg(&small).arg(&whole))?;
            let bytes = read(&small)?;
            let part = piece.strip_prefix(OWN);
            if part.is_none() && !piece.starts_with(SHARED) {
                return Err(format!("it is not known what {piece}.wasm is for"));
            }
            let name = format!("{program_name}-{}-{}.wasm", part.unwrap_or("shared"), short_hash(&bytes));
            write(&dist.join(&name), &bytes)?;
            let entry = format!("[{name:?}, {:?}]", policy::hash(&bytes));
            match part {
                Some(part) => own.push((part, entry)),
                None => shared.push(entry),
            }
        }
        with_loader(glue, &own, &shared)
    }
}

/// The glue behind the loader, which knows the files of each part: its own, and those that are shared. (With two
/// parts whatever is shared belongs to both.)
fn with_loader(glue: &str, own: &[(&str, String)], shared: &[String]) -> Outcome<String> {
    let mut parts = String::new();
    let mut loaders = String::new();
    for (name, entry) in own {
        let files = std::iter::once(entry).chain(shared).cloned().collect::<Vec<_>>().join(", ");
        parts += &format!("\n  {name}: [{files}],");
        loaders += &format!(" {LOADER}{name}: part({name:?}),");
    }
    let loader = put_once(SOURCE, PARTS, &format!("const PARTS = {{{parts}\n}};"))?;
    // The glue imports each loader by itself.
    let mut code = String::with_capacity(glue.len());
    let mut imports = 0;
    for line in glue.lines() {
        if !line.starts_with("import ") {
            code += &format!("{line}\n");
            continue;
        }
        let name = line.strip_prefix("import * as ").and_then(|rest| rest.split_once(" from "));
        match name {
            Some((name, from)) if from.trim_end_matches(';') == format!("\"{IMPORT}\"") => {
                code += &format!("const {name} = {{{loaders} }};\n");
                imports += 1;
            }
            Some(_) | None => {
                return Err(format!("the glue of the page's module imports another file: {line}"));
            }
        }
    }
    if imports == 0 {
        return Err(format!("the glue of the page's module does not import {IMPORT}"));
    }
    Ok(format!("{loader}\n{code}"))
}

/// Names of the files of the parts that a page's glue loads.
///
/// # Errors
/// A sentence when the folder cannot be listed.
pub(super) fn named_in(dist: &Path, glue: &str) -> Outcome<Vec<String>> {
    let mut names = list_files(dist)?;
    names.retain(|name| name.ends_with(".wasm") && glue.contains(&format!("[\"{name}\", ")));
    Ok(names)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_loader_stands_before_the_glue_in_place_of_what_that_imports() {
        let own = [("one", String::from("[\"a\"]")), ("two", String::from("[\"b\"]"))];
        let glue = "import * as import1 from \"./__wasm_split.js\"\n\
            import * as import2 from \"./__wasm_split.js\";\nlet wasm;\n";
        let whole = with_loader(glue, &own, &[String::from("[\"c\"]")]).expect("the glue is as expected");
        assert!(
            whole.contains("const PARTS = {\n  one: [[\"a\"], [\"c\"]],\n  two: [[\"b\"], [\"c\"]],\n};"),
            "{whole}"
        );
        let loaders = "= { __wasm_split_load_one: part(\"one\"), __wasm_split_load_two: part(\"two\"), };";
        for name in ["import1", "import2"] {
            assert_eq!(whole.matches(&format!("const {name} {loaders}")).count(), 1, "{whole}");
        }
        assert!(!whole.lines().any(|line| line.starts_with("import ")), "{whole}");
        assert!(whole.find("const PARTS") < whole.find("const import1"));
    }

    #[test]
    fn glue_that_imports_something_else_or_nothing_is_refused() {
        for glue in ["let wasm;", "import { a } from \"./b.js\";", "import * as a from \"./b.js\";"] {
            assert!(with_loader(glue, &[], &[]).is_err(), "{glue}");
        }
    }
}
