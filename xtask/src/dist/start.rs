//! How the page's module is started: `app/offline/start.js` in place of the script that Trunk writes, which
//! neither tells how much has arrived nor what went wrong.

use super::{put_once, read, tags};
use crate::Outcome;
use std::path::Path;

const SOURCE: &str = include_str!("../../../app/offline/start.js");
/// Lines that the build fills in.
const GLUE: &str = "const GLUE = \"\";";
const MODULE: &str = "const MODULE = \"\";";
const BYTES: &str = "const BYTES = 0;";

/// The script by which Trunk starts the page's module.
pub(super) struct Trunk<'a> {
    /// Name of the glue.
    pub(super) glue: &'a str,
    /// Name of the module.
    pub(super) module: &'a str,
}

impl<'a> Trunk<'a> {
    /// Reads it out of the script; `None` where the script starts nothing.
    pub(super) fn read(script: &'a str) -> Option<Self> {
        let glue = between(script, "from './", "'")?;
        let module = between(script, "module_or_path: './", "'")?;
        Some(Self { glue, module })
    }
}

/// The page with a script of ours in place of Trunk's.
///
/// # Errors
/// A sentence when the page does not start its module by one script as expected, or it was not built.
pub(super) fn put(dist: &Path, html: &str) -> Outcome<String> {
    replace(html, |trunk| {
        let bytes = read(&dist.join(trunk.module))?.len();
        let script = put_once(SOURCE, GLUE, &format!("const GLUE = \"./{}\";", trunk.glue))?;
        let script = put_once(&script, MODULE, &format!("const MODULE = \"./{}\";", trunk.module))?;
        let script = put_once(&script, BYTES, &format!("const BYTES = {bytes};"))?;
        Ok(format!("<script type=\"module\">{script}</script>"))
    })
}

/// The page with something else in place of the script by which Trunk starts the module. Scripts that only name
/// a file stay.
///
/// # Errors
/// The sentence of `change`, or one when there is not one such script.
pub(super) fn replace(html: &str, mut change: impl FnMut(&Trunk<'_>) -> Outcome<String>) -> Outcome<String> {
    let mut starts = 0;
    let html = tags::replace(html, "script", "</script>", |tag, text| {
        if tags::attribute(tag, "src").is_some() {
            return Ok(format!("<script {tag}>{text}</script>"));
        }
        starts += 1;
        let unknown = || format!("the script that starts the page's module is not as expected: {text}");
        change(&Trunk::read(text).ok_or_else(unknown)?)
    })?;
    if starts == 1 {
        Ok(html)
    } else {
        Err(format!("dist/index.html must start its module by one script, not {starts}"))
    }
}

fn between<'a>(text: &'a str, before: &str, after: &str) -> Option<&'a str> {
    let (_, from) = text.split_once(before)?;
    from.split_once(after).map(|(found, _)| found)
}
