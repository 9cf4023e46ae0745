//! Bytes to text. The declared encoding is believed only where the bytes agree with it.

use crate::road::finding::{Encoding, Finding, FindingKind};
use std::borrow::Cow;

/// Text of a file, and what had to be repaired to get it.
pub(super) struct Decoded<'a> {
    pub(super) text: Cow<'a, str>,
    pub(super) repair: Option<Finding>,
}

/// Decodes UTF-8 and UTF-16 (with or without a byte order mark), Latin-1 and windows-1252.
///
/// Bytes that are valid UTF-8 are read as UTF-8, whatever is declared: text in another encoding is hardly
/// ever valid UTF-8 by chance. Decoding never fails, since windows-1252 gives every byte a meaning.
pub(super) fn decode(bytes: &[u8]) -> Decoded<'_> {
    if let Some((high_first, rest)) = utf16_order(bytes) {
        return decode_utf16(rest, high_first);
    }
    let body = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    let declared = declared_encoding(body);
    match std::str::from_utf8(body) {
        Ok(text) => Decoded {
            repair: contradicts_utf8(declared.as_deref(), text).then(|| repaired(declared, Encoding::Utf8)),
            text: Cow::Borrowed(text),
        },
        // A last character cut in two means a cut-off file, not another encoding.
        Err(e) if e.error_len().is_none() => {
            Decoded { text: String::from_utf8_lossy(&body[..e.valid_up_to()]), repair: None }
        }
        Err(_) => {
            let named = declared.as_deref().is_some_and(is_windows1252);
            Decoded {
                text: Cow::Owned(body.iter().map(|b| windows1252(*b)).collect()),
                repair: (!named).then(|| repaired(declared, Encoding::Windows1252)),
            }
        }
    }
}

fn repaired(declared: Option<String>, read_as: Encoding) -> Finding {
    Finding { kind: FindingKind::EncodingRepaired { declared, read_as }, count: 1, from_m: None, to_m: None }
}

/// Whether the bytes are UTF-16, with the high byte first or last, and the bytes after the mark.
fn utf16_order(bytes: &[u8]) -> Option<(bool, &[u8])> {
    match bytes {
        [0xff, 0xfe, rest @ ..] => Some((false, rest)),
        [0xfe, 0xff, rest @ ..] => Some((true, rest)),
        [b'<', 0, ..] => Some((false, bytes)),
        [0, b'<', ..] => Some((true, bytes)),
        _neither => None,
    }
}

fn decode_utf16(bytes: &[u8], high_first: bool) -> Decoded<'_> {
    let units = bytes.chunks_exact(2).map(|pair| {
        if high_first {
            u16::from_be_bytes([pair[0], pair[1]])
        } else {
            u16::from_le_bytes([pair[0], pair[1]])
        }
    });
    let text: String = char::decode_utf16(units).map(|c| c.unwrap_or(char::REPLACEMENT_CHARACTER)).collect();
    let declared = declared_encoding(text.as_bytes());
    let read_as = if high_first { Encoding::Utf16HighFirst } else { Encoding::Utf16LowFirst };
    let agrees = declared.as_deref().is_none_or(|name| name.to_ascii_lowercase().starts_with("utf-16"));
    Decoded { text: Cow::Owned(text), repair: (!agrees).then(|| repaired(declared, read_as)) }
}

/// The name in `encoding="…"` of the XML declaration, if one stands near the start.
fn declared_encoding(bytes: &[u8]) -> Option<String> {
    let head = &bytes[..bytes.len().min(512)];
    let from = head.windows(5).position(|w| w == b"<?xml")?;
    let to = from + head[from..].windows(2).position(|w| w == b"?>")?;
    let declaration = &head[from..to];
    let at = declaration.windows(8).position(|w| w == b"encoding")? + 8;
    let rest = &declaration[at..];
    let open = rest.iter().position(|b| *b == b'"' || *b == b'\'')?;
    let close = rest[open + 1..].iter().position(|b| *b == rest[open])?;
    Some(String::from_utf8_lossy(&rest[open + 1..open + 1 + close]).chars().take(40).collect())
}

/// A declared encoding other than UTF-8 matters only where some byte is not plain ASCII.
fn contradicts_utf8(declared: Option<&str>, text: &str) -> bool {
    match declared {
        None => false,
        Some(name) => {
            let name = name.to_ascii_lowercase();
            name != "utf-8" && name != "utf8" && !text.is_ascii()
        }
    }
}

fn is_windows1252(name: &str) -> bool {
    matches!(
        name.to_ascii_lowercase().as_str(),
        "iso-8859-1"
            | "iso8859-1"
            | "iso_8859-1"
            | "latin1"
            | "latin-1"
            | "windows-1252"
            | "cp1252"
            | "us-ascii"
            | "ascii"
    )
}

/// Source: the Encoding Standard's index for windows-1252 (value from memory). The five bytes without a
/// character stand for the control character with that number.
fn windows1252(byte: u8) -> char {
    const HIGH: [char; 32] = [
        '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8d}', 'Ž', '\u{8f}',
        '\u{90}', '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9d}', 'ž', 'Ÿ',
    ];
    match byte {
        0x80..=0x9f => HIGH[usize::from(byte - 0x80)],
        0..=0x7f | 0xa0..=0xff => char::from(byte),
    }
}
