//! The page as one file, for a disk or a stick: it contains style, faces, modules, workers, roads and
//! evidence, and needs no server. `app/offline/standalone.js` takes them out.
//!
//! Modules are base64 and not packed. Only recent browsers could unpack them, and a stick has room.

use super::{LESSONS, module_address, parts, policy, put_once, read, read_text, start, tags};
use crate::Outcome;
use base64::{Engine, prelude::BASE64_STANDARD};
use std::path::Path;

/// Its English name, and the beginning of all its names.
const NAME: &str = "standalone.html";

/// Its name beside the page of a language.
pub(crate) fn name_in(tag: &str) -> String {
    if tag == "en" { NAME.to_owned() } else { format!("standalone-{tag}.html") }
}

/// Script that follows the glue of the page's module.
const START: &str = include_str!("../../../app/offline/standalone.js");
/// Media type of the roads.
const GPX: &str = "application/gpx+xml";
/// Texts that the page names by address: their `<meta>` and media type. The teaching roads are added.
const TEXTS: [(&str, &str); 4] = [
    ("worker-script", "text/javascript"),
    ("study-script", "text/javascript"),
    ("demo-file", GPX),
    ("evidence-file", "application/json"),
];
/// Tag of the served page before which the link to the one file is put.
const LINK_BEFORE: &str = r#"<meta name="evidence-file""#;

/// Makes the one file from the page whose files all have their names, but no policy yet.
///
/// # Errors
/// A sentence when something in the page is not as expected: no file is better than half a page.
pub(super) fn make(dist: &Path, html: &str) -> Outcome<String> {
    let html = tags::replace(html, "link", ">", |tag, _| inline_link(dist, tag))?;
    let mut texts = String::new();
    let mut page = html.clone();
    // Only the class view names the teaching roads.
    let lessons = LESSONS.into_iter().filter(|lesson| html.contains(lesson)).map(|lesson| (lesson, GPX));
    for (name, media_type) in TEXTS.into_iter().chain(lessons) {
        let (tag, file) = named(&html, name)?;
        let text = text_of(dist, file)?;
        texts += &data_block(&format!("data-for=\"{name}\" data-type=\"{media_type}\""), &text)?;
        page = put_once(&page, &tag, &format!("<meta name=\"{name}\" content=\"\">"))?;
    }
    // One file needs nothing kept for use without a network.
    let page = tags::replace(&page, "script", "</script>", |tag, text| {
        let named = tags::attribute(tag, "src").is_some();
        Ok(if named { String::new() } else { format!("<script {tag}>{text}</script>") })
    })?;
    let page = start::replace(&page, |trunk| start(dist, trunk, &texts))?;
    let page = policy::put(&page, policy::Place::OneFile)?;
    // Anything still named by its address would be missing on the stick.
    if page.contains("=\"./") {
        return Err(format!("{NAME} still names a file beside it"));
    }
    Ok(page)
}

/// Names the one file in the page that is served.
pub(super) fn put_link(html: &str, name: &str) -> Outcome<String> {
    let link = format!("<meta name=\"standalone-file\" content=\"./{name}\">\n");
    put_once(html, LINK_BEFORE, &(link + LINK_BEFORE))
}

/// The replacement of a link in the page's head.
fn inline_link(dist: &Path, tag: &str) -> Outcome<String> {
    let address = tags::attribute(tag, "href").unwrap_or_default();
    let file = address.strip_prefix("./").unwrap_or(address);
    match tags::attribute(tag, "rel") {
        Some("stylesheet") => {
            let style = inline_faces(dist, &read_text(&dist.join(file))?)?;
            Ok(format!("<style>{style}</style>"))
        }
        Some("icon") => {
            let icon = data_address("image/svg+xml", &read(&dist.join(file))?);
            Ok(format!("<link rel=\"icon\" type=\"image/svg+xml\" href=\"{icon}\">"))
        }
        // A page on a disk is not installed, and all of it is there at once.
        Some("manifest" | "modulepreload" | "preload") => Ok(String::new()),
        Some(_) | None => Err(format!("it is not said what becomes of <link {tag}> in {NAME}")),
    }
}

/// The style sheet with its faces in it.
fn inline_faces(dist: &Path, style: &str) -> Outcome<String> {
    let mut out = String::with_capacity(style.len());
    let mut rest = style;
    while let Some((before, from_address)) = rest.split_once("url(\"") {
        let (address, behind) = from_address.split_once('"').ok_or("an address in a style is not closed")?;
        out += before;
        out += "url(\"";
        if address.ends_with(".woff2") {
            out += &data_address("font/woff2", &read(&dist.join(address))?);
        } else {
            return Err(format!("a style names {address}, which {NAME} cannot hold"));
        }
        out += "\"";
        rest = behind;
    }
    Ok(out + rest)
}

fn data_address(media_type: &str, bytes: &[u8]) -> String {
    format!("data:{media_type};base64,{}", BASE64_STANDARD.encode(bytes))
}

/// The tag by which the page names a file, and the file.
fn named<'a>(html: &'a str, name: &str) -> Outcome<(String, &'a str)> {
    let start = format!("<meta name=\"{name}\" content=\"./");
    let missing = || format!("dist/index.html does not hold {start}");
    let (_, behind) = html.split_once(&start).ok_or_else(missing)?;
    let (file, _) = behind.split_once('"').ok_or_else(missing)?;
    Ok((format!("{start}{file}\">"), file))
}

/// A file's text; in a worker's script the address of its module becomes the module itself.
fn text_of(dist: &Path, file: &str) -> Outcome<String> {
    let text = read_text(&dist.join(file))?;
    let Some(module) = between(&text, "module_or_path: \"./", "\"") else { return Ok(text) };
    let base64 = BASE64_STANDARD.encode(read(&dist.join(module))?);
    let bytes = format!("Uint8Array.from(atob(\"{base64}\"), (letter) => letter.charCodeAt(0))");
    put_once(&text, &module_address(module), &bytes)
}

/// What takes the place of the script by which Trunk starts the page's module: the texts, the module, and glue
/// and start in one script.
fn start(dist: &Path, trunk: &start::Trunk<'_>, texts: &str) -> Outcome<String> {
    let glue = read_text(&dist.join(trunk.glue))?;
    if glue.lines().any(|line| line.starts_with("import ")) {
        return Err(format!("the glue of the page's module imports another file; {NAME} cannot hold that"));
    }
    let mut later = String::new();
    for name in parts::named_in(dist, &glue)? {
        let base64 = BASE64_STANDARD.encode(read(&dist.join(&name))?);
        later += &data_block(&format!("data-part=\"{name}\""), &base64)?;
    }
    let module = data_block("data-module", &BASE64_STANDARD.encode(read(&dist.join(trunk.module))?))?;
    let script = format!("{glue}\n{START}");
    refuse_scripts_in(&script)?;
    Ok(format!("{texts}{later}{module}<script type=\"module\">{script}</script>"))
}

/// Text in the page that is no script.
fn data_block(attributes: &str, text: &str) -> Outcome<String> {
    refuse_scripts_in(text)?;
    Ok(format!("<script {} {attributes}>{text}</script>\n", policy::TEXT_TYPE))
}

/// A text within `<script>` may hold neither its end nor another beginning.
fn refuse_scripts_in(text: &str) -> Outcome {
    let lower = text.to_ascii_lowercase();
    if lower.contains("<script") || lower.contains("</script") {
        return Err(format!("a text with a script tag in it cannot stand in {NAME}"));
    }
    Ok(())
}

fn between<'a>(text: &'a str, before: &str, after: &str) -> Option<&'a str> {
    let (_, from) = text.split_once(before)?;
    from.split_once(after).map(|(found, _)| found)
}
