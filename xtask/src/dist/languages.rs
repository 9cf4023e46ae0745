//! The page in other languages: a page and a module each, beside the English one.
//!
//! The modules differ in their words only; workers, style and faces are shared. A person loads one
//! language, and no page grows with the number of them.

use super::{ENGLISH, class, parts, put_once, read, read_text, remove, short_hash, start, tags, write};
use crate::{
    Outcome,
    project::{self, program},
};
use catalogue::{BEFORE, Catalogues, TAGS};
use std::{
    fs,
    path::{Path, PathBuf},
};

/// The languages beside English, by the tag that names feature and page.
pub(crate) const LANGUAGES: [&str; TAGS.len() - 1] = {
    let [_, others @ ..] = TAGS;
    others
};

/// What is said before the page's program runs and by it as well: messages of the page.
const PAGE_WORDS: [&str; 1] = ["to-road-page"];
/// The same from the catalogues of what the page shares with others.
const SHARED_WORDS: [&str; 1] = ["parked"];
/// How an element of a page names the message that is its text.
const NAMED: &str = " data-words=\"";

/// What is said before the page's program runs: each message with its text in each language, by tag.
pub(super) struct Texts(Vec<(&'static str, Vec<(String, String)>)>);

impl Texts {
    /// Reads them out of the catalogues.
    ///
    /// # Errors
    /// What is wrong with the catalogues.
    pub(super) fn read() -> Outcome<Self> {
        let mut all = Vec::new();
        let of_page = [&BEFORE[..], &PAGE_WORDS].concat();
        for (folder, names) in [("app/words/page", &of_page[..]), ("app/words", &SHARED_WORDS)] {
            let folder = project::root().join(folder);
            let mut catalogues = Catalogues::of_folder(&folder).map_err(|wrong| wrong.join("\n"))?;
            all.extend(names.iter().map(|name| (*name, catalogues.take(name))));
        }
        Ok(Self(all))
    }

    fn text(&self, name: &str, tag: &str) -> Outcome<String> {
        let (_, texts) = self
            .0
            .iter()
            .find(|(it, _)| *it == name)
            .ok_or_else(|| format!("xtask/src/dist/languages.rs reads no message {name}"))?;
        let found = texts.iter().find(|(it, _)| it == tag);
        let (_, text) = found.ok_or_else(|| format!("app/words has no language {tag}"))?;
        Ok(text.replace('&', "&amp;").replace('<', "&lt;").replace('"', "&quot;"))
    }

    /// The page with its title and description in a language, and with the texts of the elements that name one.
    ///
    /// # Errors
    /// A sentence when the page has no place for the former, or names what there is not.
    pub(super) fn put(&self, html: &str, tag: &str) -> Outcome<String> {
        let html = put_text(html, "<title>", "</title>", &self.text("page-title", tag)?)?;
        let description = "<meta name=\"description\" content=\"";
        let html = put_text(&html, description, "\">", &self.text("page-description", tag)?)?;
        self.put_named(&html, tag)
    }

    /// The page with the texts of the elements that name one, in a language.
    ///
    /// # Errors
    /// A sentence when a name is unknown, or an element is not closed.
    pub(super) fn put_named(&self, html: &str, tag: &str) -> Outcome<String> {
        let mut out = String::with_capacity(html.len());
        let mut rest = html;
        while let Some((before, from_name)) = rest.split_once(NAMED) {
            let unclosed = || format!("an element with{NAMED} is not closed: {from_name:.60}");
            let (name, behind) = from_name.split_once('"').ok_or_else(unclosed)?;
            let (attributes, from_text) = behind.split_once('>').ok_or_else(unclosed)?;
            let (_, end) = from_text.split_once("</").ok_or_else(unclosed)?;
            let text = self.text(name, tag)?;
            out += &format!("{before}{NAMED}{name}\"{attributes}>{text}</");
            rest = end;
        }
        Ok(out + rest)
    }
}

/// The road page in each language: its tag, how the name of its module begins, and its file.
pub(super) fn road_pages() -> impl Iterator<Item = (&'static str, &'static str, String)> {
    let others = LANGUAGES.into_iter().map(|tag| (tag, tag, page(tag)));
    std::iter::once((ENGLISH, "app", String::from("index.html"))).chain(others)
}

const ENGLISH_TAG: &str = "<html lang=\"en\">";
/// Before it, the pages of all languages are named.
const PAGES_BEFORE: &str = r#"<meta name="worker-script""#;

/// The name of the page in a language beside English.
pub(crate) fn page(tag: &str) -> String {
    format!("{tag}.html")
}

/// Builds the modules of page and class view in all languages into `dist/`. The English page gets its module
/// and parts in place of the whole program that Trunk built.
///
/// # Errors
/// A sentence from the step that failed.
pub(crate) fn build(dist: &Path) -> Outcome {
    for (tag, road, page) in road_pages() {
        let language: &[&str] = if tag == ENGLISH { &[] } else { &["--features", tag] };
        let linked = link("class", language, &[])?;
        put_module(dist, &class::module(tag), bind(&linked, &class::module(tag), &[])?)?;
        let linked = link("app", language, &parts::LINKED)?;
        let cut = parts::Cut::make(&linked, &bound_folder().join(format!("{road}-parts")))?;
        // The parts use the table of functions.
        let (module, glue) = bind(&cut.module(), road, &["--keep-lld-exports"])?;
        let glue = cut.finish(dist, road, &glue)?;
        let stem = put_module(dist, road, (module, glue))?;
        if tag == ENGLISH {
            replace_whole(dist, &page, &stem)?;
        }
    }
    Ok(())
}

/// Compiles and links a program; `flags` are for it alone, so that page and class view share all else.
fn link(name: &str, language: &[&str], flags: &[&str]) -> Outcome<PathBuf> {
    let mut cargo = program("cargo");
    cargo.args(["rustc", "--profile", "page", "--offline", "--package", "app", "--bin", name]);
    cargo.args(["--target", "wasm32-unknown-unknown"]).args(language);
    project::run(cargo.arg("--").args(flags))?;
    Ok(project::root().join(format!("target/wasm32-unknown-unknown/page/{name}.wasm")))
}

fn bound_folder() -> PathBuf {
    project::root().join("target/wasm-bindgen/languages")
}

/// Module and glue of a linked program.
fn bind(linked: &Path, name: &str, more: &[&str]) -> Outcome<(Vec<u8>, String)> {
    let out = bound_folder();
    let mut bindgen = program("wasm-bindgen");
    bindgen.args(["--target", "web", "--no-typescript", "--out-name", name, "--out-dir"]).arg(&out);
    project::run(bindgen.args(more).arg(linked))?;
    let bound = out.join(format!("{name}_bg.wasm"));
    let small = out.join(format!("{name}_small.wasm"));
    project::run(program("wasm-opt").arg("-Oz").arg("-o").arg(&small).arg(&bound))?;
    Ok((read(&small)?, read_text(&out.join(format!("{name}.js")))?))
}

/// Puts module and glue into `dist/`; returns how both their names begin.
fn put_module(dist: &Path, name: &str, (module, glue): (Vec<u8>, String)) -> Outcome<String> {
    // One hash over both: they belong together.
    let hash = short_hash(&[module.as_slice(), glue.as_bytes()].concat());
    let stem = format!("{name}-{hash}");
    write(&dist.join(format!("{stem}.js")), glue.as_bytes())?;
    write(&dist.join(format!("{stem}_bg.wasm")), &module)?;
    Ok(stem)
}

/// The page names this module in place of the one that Trunk built, which goes.
fn replace_whole(dist: &Path, page: &str, stem: &str) -> Outcome {
    let page = dist.join(page);
    let html = read_text(&page)?;
    let mut whole = None;
    tags::replace(&html, "script", "</script>", |_, text| {
        whole = whole
            .take()
            .or_else(|| start::Trunk::read(text).map(|it| (it.glue.to_owned(), it.module.to_owned())));
        Ok(String::new())
    })?;
    let (glue, module) = whole.ok_or("Trunk's page starts no module")?;
    remove(&dist.join(&glue))?;
    remove(&dist.join(&module))?;
    let html = html.replace(&glue, &format!("{stem}.js")).replace(&module, &format!("{stem}_bg.wasm"));
    write(&page, html.as_bytes())
}

/// Names the pages of all languages in the English one.
///
/// # Errors
/// A sentence when the page has no place for them.
pub(super) fn put_pages(html: &str) -> Outcome<String> {
    let others = LANGUAGES.iter().map(|tag| format!(" {tag}=./{}", page(tag))).collect::<String>();
    let named = format!("<meta name=\"languages\" content=\"en=./{others}\">\n");
    put_once(html, PAGES_BEFORE, &(named + PAGES_BEFORE))
}

/// The English page in this language.
///
/// # Errors
/// A sentence when the English page is not as expected, or the module was not built.
pub(super) fn translated(dist: &Path, html: &str, tag: &str, texts: &Texts) -> Outcome<String> {
    let html = put_once(html, ENGLISH_TAG, &format!("<html lang=\"{tag}\">"))?;
    with_module(dist, &texts.put(&html, tag)?, "app", tag)
}

/// The page with another module in place of its own.
///
/// # Errors
/// A sentence when one of them was not built, or the page does not name its own.
pub(super) fn with_module(dist: &Path, html: &str, own: &str, other: &str) -> Outcome<String> {
    let (own, other) = (stem_of(dist, own)?, stem_of(dist, other)?);
    if !html.contains(&own) {
        return Err(format!("the page does not name its module {own}"));
    }
    Ok(html.replace(&own, &other))
}

/// `app-HASH` of `app-HASH.js`.
fn stem_of(dist: &Path, start: &str) -> Outcome<String> {
    let start = format!("{start}-");
    let names = fs::read_dir(dist).map_err(|error| format!("cannot list {}: {error}", dist.display()))?;
    let names = names.flatten().map(|entry| entry.file_name().to_string_lossy().into_owned());
    let found = names.filter_map(|name| name.strip_suffix(".js").map(String::from));
    found
        .filter(|stem| stem.starts_with(&start))
        .max()
        .ok_or_else(|| format!("dist has no module {start}….js"))
}

/// Replaces what stands between two texts, the first of which must stand once.
pub(super) fn put_text(html: &str, before: &str, after: &str, text: &str) -> Outcome<String> {
    let missing = || format!("app/index.html must hold, as is: {before}");
    let (start, rest) = html.split_once(before).ok_or_else(missing)?;
    let (_, end) = rest.split_once(after).ok_or_else(missing)?;
    Ok(format!("{start}{before}{text}{after}{end}"))
}
