//! Files of a crate that need each other. Of two such files neither can be read, tested or moved by itself.

use crate::layers::is_of_tests;
use crate::scan::{re_exports, root_paths, super_chains, without_tests};
use std::collections::{BTreeMap, BTreeSet};

/// A module by the names that lead to it from the crate's root.
type Module = Vec<String>;

/// A crate: each file's module with its code, and under which names it passes things on.
struct Sources {
    code: BTreeMap<Module, String>,
    passed_on: BTreeMap<Module, Vec<Module>>,
}

/// Groups of files that lead back to themselves, by their modules. Files are given by their path below `src`.
///
/// A name that a folder's own file only passes on counts as one of the file that it is from. Roots of
/// programs and of the crate know everybody, and tests may; they are left out.
pub(crate) fn circles(files: &[(String, String)]) -> Vec<Vec<String>> {
    let sources = Sources::of(files);
    let edges: BTreeMap<&Module, BTreeSet<Module>> =
        sources.code.keys().map(|module| (module, sources.needed_by(module))).collect();
    let reached: BTreeMap<&Module, BTreeSet<&Module>> =
        edges.keys().map(|module| (*module, reach(module, &edges))).collect();
    let mut groups = BTreeSet::new();
    for (module, known) in &reached {
        let group: Vec<String> = known
            .iter()
            .filter(|other| reached.get(**other).is_some_and(|back| back.contains(module)))
            .map(|other| other.join("::"))
            .collect();
        if group.len() > 1 {
            groups.insert(group);
        }
    }
    groups.into_iter().collect()
}

/// All that a module needs, and what that needs, and so on.
fn reach<'a>(from: &'a Module, edges: &'a BTreeMap<&'a Module, BTreeSet<Module>>) -> BTreeSet<&'a Module> {
    let mut reached = BTreeSet::new();
    let mut open = vec![from];
    // Ends: each module enters `reached` once.
    while let Some(module) = open.pop() {
        for next in edges.get(module).into_iter().flatten() {
            if reached.insert(next) {
                open.push(next);
            }
        }
    }
    reached
}

impl Sources {
    fn of(files: &[(String, String)]) -> Self {
        let mut sources = Self { code: BTreeMap::new(), passed_on: BTreeMap::new() };
        for (path, text) in files {
            if let Some(module) = module_of(path) {
                sources.code.insert(module, without_tests(text));
            }
        }
        for (module, code) in &sources.code {
            let passed = re_exports(code).into_iter().map(|path| absolute(module, &path)).collect();
            sources.passed_on.insert(module.clone(), passed);
        }
        sources
    }

    /// The modules whose names stand in the code of one.
    fn needed_by(&self, module: &Module) -> BTreeSet<Module> {
        let code = &self.code[module];
        let mut named: Vec<Module> = Vec::new();
        for root in ["crate", "self"] {
            let paths = root_paths(code, &[root]).into_iter();
            named.extend(paths.map(|it| absolute(module, &format!("{root}::{}", it.path))));
        }
        for (_, count, path) in super_chains(code) {
            named.push(absolute(module, &("super::".repeat(count) + &path)));
        }
        let children =
            self.code.keys().filter(|it| it.split_last().is_some_and(|(_, above)| above == module));
        for child in children.filter_map(|it| it.last()) {
            let paths = root_paths(code, &[child]).into_iter();
            named.extend(paths.map(|it| absolute(module, &format!("{child}::{}", it.path))));
        }
        let homes = named.iter().filter_map(|path| self.home(path));
        homes.filter(|home| home != module).collect()
    }

    /// The module that a path leads to, through all that pass it on.
    fn home(&self, path: &Module) -> Option<Module> {
        /// More hands than a name may go through.
        const MOST_HANDS: usize = 8;
        let mut path = path.clone();
        for _ in 0..MOST_HANDS {
            let depth = (1..=path.len()).rev().find(|depth| self.code.contains_key(&path[..*depth]))?;
            let (module, rest) = path.split_at(depth);
            let passed = self.passed_on.get(module).into_iter().flatten();
            let by_name = rest.first().and_then(|name| passed.clone().find(|it| it.last() == Some(name)));
            match by_name {
                Some(from) if *from != path => path = [from, &rest[1..]].concat(),
                Some(_) | None => return Some(module.to_vec()),
            }
        }
        None
    }
}

/// The module of a file; `None` for roots and tests.
fn module_of(path: &str) -> Option<Module> {
    let inner = path.strip_suffix(".rs")?;
    let module: Module = inner.trim_end_matches("/mod").split('/').map(String::from).collect();
    let is_root = matches!(module[0].as_str(), "lib" | "main" | "bin");
    (!is_root && !is_of_tests(path)).then_some(module)
}

/// A path as it stands in a module, from the root.
fn absolute(module: &Module, path: &str) -> Module {
    let mut parts = path.split("::").filter(|part| !part.is_empty() && *part != "*").peekable();
    let mut from = module.clone();
    if parts.next_if_eq(&"crate").is_some() {
        from.clear();
    }
    while parts.next_if_eq(&"super").is_some() {
        from.pop();
    }
    from.extend(parts.filter(|part| *part != "self").map(String::from));
    from
}

#[cfg(test)]
mod tests {
    use super::circles;

    fn check(files: &[(&str, &str)], expect: &[&[&str]]) {
        let files: Vec<_> =
            files.iter().map(|(path, text)| ((*path).to_owned(), (*text).to_owned())).collect();
        assert_eq!(circles(&files), expect, "{files:?}");
    }

    #[test]
    fn one_way_is_no_circle() {
        check(&[("a.rs", "use crate::b::B;"), ("b.rs", "use crate::c::C;"), ("c.rs", "")], &[]);
        check(&[("lib.rs", "pub mod a;\nuse a::A;"), ("a.rs", "use crate::mount;")], &[]);
        // A folder passes on what is in it.
        check(
            &[("a/mod.rs", "mod b;\nmod c;\npub use c::C;"), ("a/b.rs", "use super::C;"), ("a/c.rs", "")],
            &[],
        );
    }

    #[test]
    fn a_way_back_is_found() {
        check(&[("a.rs", "use crate::b::B;"), ("b.rs", "fn f() { crate::a::g() }")], &[&["a", "b"]]);
        check(
            &[
                ("a/mod.rs", "mod b;\nmod c;\nmod d;\nuse b::f;"),
                ("a/b.rs", "use super::c;"),
                ("a/c.rs", "use super::d::{D, E};"),
                ("a/d.rs", "use super::{b, c::C};"),
            ],
            &[&["a::b", "a::c", "a::d"]],
        );
        // Of the folder's own file, whose part needs what stands in it.
        check(&[("a/mod.rs", "mod b;\nuse b::f;"), ("a/b.rs", "use super::SIZE;")], &[&["a", "a::b"]]);
        // Behind a name that is passed on.
        check(
            &[
                ("a/mod.rs", "mod b;\nmod c;\npub(crate) use c::C;"),
                ("a/b.rs", "use super::C;"),
                ("a/c.rs", "use super::b::B;"),
            ],
            &[&["a::b", "a::c"]],
        );
    }

    #[test]
    fn tests_may_ask_whom_they_want() {
        let tested = "use crate::b::B;\n#[cfg(test)]\nmod tests {\n  use crate::c::C;\n}\n";
        check(&[("a.rs", tested), ("b.rs", ""), ("c.rs", "use crate::a::A;")], &[]);
        check(&[("a.rs", ""), ("a/tests.rs", "use crate::c::C;"), ("c.rs", "use crate::a::A;")], &[]);
        let marked = "struct A {\n  #[cfg(test)]\n  a: u8,\n}\nuse crate::c::C;";
        check(&[("a.rs", marked), ("c.rs", "use crate::a::A;")], &[&["a", "c"]]);
    }
}
