//! Contents of a tag: its name, the prefixes it declares, the position of a point.

use super::number::{Number, read_number};
use crate::road::bounds;
use quick_xml::events::BytesStart;

/// The prefixes that the file declares, wherever it does so.
pub(super) struct Prefixes<'a> {
    declared: Vec<&'a str>,
}

impl<'a> Prefixes<'a> {
    pub(super) fn new() -> Prefixes<'a> {
        Prefixes { declared: vec!["xml", "xmlns"] }
    }

    /// Remembers what a tag declares. `content` is the tag between `<` and `>`.
    pub(super) fn declare(&mut self, content: &'a str) {
        for piece in content.split("xmlns:").skip(1) {
            if let Some(end) = piece.find(['=', ' ', '\n', '\r', '\t'])
                && self.declared.len() < bounds::MOST_NESTING
            {
                self.declared.push(&piece[..end]);
            }
        }
    }

    /// Whether a prefix, which may be empty, may be used.
    pub(super) fn know(&self, prefix: &str) -> bool {
        prefix.is_empty() || self.declared.contains(&prefix)
    }
}

/// Prefix (perhaps empty) and local name.
pub(super) fn split_name(name: &str) -> (&str, &str) {
    match name.bytes().position(|b| b == b':') {
        Some(at) => (&name[..at], &name[at + 1..]),
        None => ("", name),
    }
}

/// Latitude and longitude of a point as written; `Blank` where one is missing.
pub(super) fn read_position(tag: &BytesStart<'_>) -> (Number, Number) {
    let (mut lat, mut lon) = (Number::Blank, Number::Blank);
    // Bounded by the length of the tag.
    for attribute in tag.attributes().with_checks(false).flatten() {
        match attribute.key.as_ref() {
            "lat" => lat = read_number(&attribute.value),
            "lon" => lon = read_number(&attribute.value),
            _unknown => {}
        }
    }
    (lat, lon)
}
