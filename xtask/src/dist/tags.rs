//! As much HTML as the page written by Trunk needs: start tags and their attributes.

use crate::Outcome;

/// Replaces every start tag of an element, with the text up to `end`, by what `change` makes of its
/// attributes and that text.
///
/// `end` is `>` for an element without contents, or its closing tag.
///
/// # Errors
/// The sentence of `change`, or one that names an element that is not closed.
pub(super) fn replace(
    html: &str,
    element: &str,
    end: &str,
    mut change: impl FnMut(&str, &str) -> Outcome<String>,
) -> Outcome<String> {
    let start = format!("<{element} ");
    let mut out = String::with_capacity(html.len());
    let mut rest = html;
    while let Some((before, from_tag)) = rest.split_once(&start) {
        let unclosed = || format!("a <{element}> in dist/index.html is not closed");
        let (whole, behind) = from_tag.split_once(end).ok_or_else(unclosed)?;
        let (attributes, text) = whole.split_once('>').unwrap_or((whole, ""));
        out += before;
        out += &change(attributes.trim_end_matches('/'), text)?;
        rest = behind;
    }
    Ok(out + rest)
}

/// The value of an attribute; `None` where the tag has none.
pub(super) fn attribute<'a>(attributes: &'a str, name: &str) -> Option<&'a str> {
    let start = format!("{name}=");
    let (at, _) = attributes
        .match_indices(&start)
        .find(|(at, _)| attributes[..*at].chars().next_back().is_none_or(char::is_whitespace))?;
    let value = &attributes[at + start.len()..];
    match value.strip_prefix('"') {
        Some(quoted) => quoted.split('"').next(),
        None => value.split_whitespace().next(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tags_are_found_with_their_attributes_and_the_rest_stays() {
        let html = "a<link rel=\"x\" href=\"./y\"/>b<links><link rel=z>c";
        let told = replace(html, "link", ">", |tag, text| {
            assert_eq!(text, "");
            Ok(format!("[{:?} {:?}]", attribute(tag, "rel"), attribute(tag, "href")))
        });
        assert_eq!(told.as_deref(), Ok("a[Some(\"x\") Some(\"./y\")]b<links>[Some(\"z\") None]c"));
        let html = "<script type=\"module\">let a;</script>d";
        let told = replace(html, "script", "</script>", |tag, text| Ok(format!("{tag}|{text}|")));
        assert_eq!(told.as_deref(), Ok("type=\"module\"|let a;|d"));
        assert!(replace("<link rel=x", "link", ">", |_, _| Ok(String::new())).is_err());
    }

    #[test]
    fn an_attribute_is_not_found_within_another() {
        assert_eq!(attribute("data-href=\"a\" href=\"b\"", "href"), Some("b"));
        assert_eq!(attribute("data-href=\"a\"", "href"), None);
        assert_eq!(attribute("", "href"), None);
    }
}
