//! The kind of a file, told from its first bytes before any reading.

use crate::road::error::{FileError, Foreign};

/// Bytes that are searched for a mark of the kind.
const LOOK: usize = 4096;

/// Refuses what is certainly no GPX by its magic bytes. Text is judged after decoding.
pub(super) fn check_bytes(bytes: &[u8]) -> Result<(), FileError> {
    let head = &bytes[..bytes.len().min(LOOK)];
    if bytes.iter().take(LOOK).all(|b| b.is_ascii_whitespace() || *b == 0)
        && bytes.iter().all(|b| b.is_ascii_whitespace() || *b == 0)
    {
        return Err(FileError::Empty);
    }
    let foreign = if head.starts_with(&[0x1f, 0x8b]) {
        Foreign::Gzip
    } else if head.starts_with(b"PK\x03\x04") || head.starts_with(b"PK\x05\x06") {
        Foreign::Zip
    } else if head.len() >= 12 && &head[8..12] == b".FIT" {
        Foreign::Fit
    } else if head.starts_with(b"%PDF") {
        Foreign::Pdf
    } else if head.starts_with(&[0xff, 0xd8, 0xff]) || head.starts_with(b"\x89PNG") {
        Foreign::Picture
    } else {
        return Ok(());
    };
    Err(FileError::NotGpx(foreign))
}

/// Refuses text that is no GPX, and gives the number of bytes before the XML begins.
///
/// A file without an outermost `gpx` but with GPX elements in it is let through. Reading it shows whether it
/// holds points.
pub(super) fn find_start(text: &str) -> Result<usize, FileError> {
    let Some(first) = text.bytes().position(|b| !b.is_ascii_whitespace()) else {
        return Err(FileError::Empty);
    };
    let head = &text.as_bytes()[first..text.len().min(first + LOOK)];
    if matches!(head.first(), Some(b'{' | b'[')) {
        return Err(FileError::NotGpx(Foreign::Json));
    }
    if holds(head, b"<!doctype html") || holds(head, b"<html") {
        return Err(FileError::NotGpx(Foreign::Html));
    }
    if let Some(at) = position(head, b"<?xml").or_else(|| position(head, b"<gpx")) {
        return Ok(first + at);
    }
    match head.iter().position(|b| *b == b'<') {
        Some(at) => Ok(first + at),
        None => Err(FileError::NotGpx(Foreign::Unknown)),
    }
}

/// The kind of an XML file whose outermost element is not `gpx`.
pub(super) fn name_root(local: &str) -> Foreign {
    match local.to_ascii_lowercase().as_str() {
        "kml" => Foreign::Kml,
        "html" | "head" | "body" => Foreign::Html,
        _other => Foreign::OtherXml(local.chars().take(40).collect()),
    }
}

fn holds(head: &[u8], mark: &[u8]) -> bool {
    position(head, mark).is_some()
}

/// First place of `mark` (lower case) in `head`, compared without case.
fn position(head: &[u8], mark: &[u8]) -> Option<usize> {
    head.windows(mark.len()).position(|w| w.eq_ignore_ascii_case(mark))
}
