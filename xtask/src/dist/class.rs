//! The class view: a page and a module of its own in each language, beside the road page.
//!
//! It is made from the road page of that language, with another module and one more style sheet. So a driver
//! loads nothing of it.

use super::{ENGLISH, LESSONS, languages, put_once, tags};
use crate::Outcome;
use std::path::Path;

/// How the address of its style sheet begins.
const STYLE: &str = "./class-";
/// How the notice begins that the page is not for use while driving.
const NOTICE: &str = r#"<div class="parked-notice""#;
/// Tag before which road page and class view name each other.
const LINK_BEFORE: &str = r#"<meta name="worker-script""#;

/// The name of its page in a language.
pub(super) fn page_name(tag: &str) -> String {
    if tag == ENGLISH { String::from("class.html") } else { format!("class-{tag}.html") }
}

/// The name of its page as one file.
pub(crate) fn one_file_name(tag: &str) -> String {
    format!("standalone-{}", page_name(tag))
}

/// How the name of its module begins.
pub(super) fn module(tag: &str) -> String {
    format!("class-{tag}")
}

/// A page without the parts that only the class view needs: its style sheet, and the teaching roads.
///
/// # Errors
/// A sentence when a tag of the page is not closed, or a road is not named in it.
pub(super) fn without(html: &str) -> Outcome<String> {
    let html = tags::replace(html, "link", ">", |tag, _| {
        let own = tags::attribute(tag, "href").is_some_and(|href| href.starts_with(STYLE));
        Ok(if own { String::new() } else { format!("<link {tag}>") })
    })?;
    tags::replace(&html, "meta", ">", |tag, _| {
        let lesson = tags::attribute(tag, "name").is_some_and(|name| LESSONS.contains(&name));
        Ok(if lesson { String::new() } else { format!("<meta {tag}>") })
    })
}

/// The class view made from the road page of a language, whose module begins with `road`.
///
/// # Errors
/// A sentence when the page is not as expected or the module was not built.
pub(super) fn page(dist: &Path, html: &str, tag: &str, road: &str) -> Outcome<String> {
    let html = languages::with_module(dist, html, road, &module(tag))?;
    // A room is no cab: the notice is of the road page.
    let (before, from_notice) =
        html.split_once(NOTICE).ok_or_else(|| format!("app/index.html must hold, as is: {NOTICE}"))?;
    let (_, behind) =
        from_notice.split_once("</div>\n").ok_or("the notice in app/index.html is not closed")?;
    Ok(format!("{before}{behind}"))
}

/// Names a page in another: the class view in the road page, or the road page in the class view.
///
/// # Errors
/// A sentence when the page has no place for it.
pub(super) fn put_link(html: &str, name: &str, page: &str) -> Outcome<String> {
    let link = format!("<meta name=\"{name}\" content=\"{page}\">\n");
    put_once(html, LINK_BEFORE, &(link + LINK_BEFORE))
}
