//! What the service worker answers in place of a page that it has not kept, while there is no network:
//! `app/offline/absent.html`, in each language.

use super::{ENGLISH, cache, languages, policy, put_once, write};
use crate::Outcome;
use std::path::Path;

const SOURCE: &str = include_str!("../../../app/offline/absent.html");
const STYLE: &str = include_str!("../../../app/style/first.css");

/// Its name in a language.
pub(super) fn name_in(tag: &str) -> String {
    if tag == ENGLISH { String::from("absent.html") } else { format!("absent-{tag}.html") }
}

/// Writes it for a language whose road page has this name.
///
/// # Errors
/// A sentence when it is not as expected or cannot be written.
pub(super) fn write_page(dist: &Path, tag: &str, road: &str, texts: &languages::Texts) -> Outcome {
    let html = put_once(SOURCE, "<html lang=\"en\">", &format!("<html lang=\"{tag}\">"))?;
    let html = put_once(&html, "<style></style>", &format!("<style>{STYLE}</style>"))?;
    let html = put_once(&html, "href=\"./\"", &format!("href=\"{}\"", cache::address(road)))?;
    let html = policy::put(&texts.put_named(&html, tag)?, policy::Place::Served)?;
    write(&dist.join(name_in(tag)), html.as_bytes())
}
