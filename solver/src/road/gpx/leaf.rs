//! A shortcut for the commonest pattern: `<name>plain text</name>`, without attributes and references.
//! Heights and times have it, and they are two thirds of all events; the shortcut halves the time of a large
//! file (measured). Anything else goes through the XML reader.

use crate::road::bounds;

/// An element that holds nothing but plain text.
pub(super) struct Leaf<'a> {
    /// Name with its prefix.
    pub(super) name: &'a str,
    /// The text as written.
    pub(super) text: &'a str,
    /// Byte where the element begins.
    pub(super) at: usize,
    /// Byte behind the element and the blanks after it, where a `<` stands.
    pub(super) end: usize,
}

/// Longest name of a leaf, bytes.
const LONGEST_NAME: usize = 64;

/// The leaf that begins at byte `from` or behind the blanks there, if there is one.
pub(super) fn leaf_at(text: &str, from: usize) -> Option<Leaf<'_>> {
    let bytes = text.as_bytes();
    let at = skip_blanks(bytes, from);
    if bytes.get(at) != Some(&b'<') {
        return None;
    }
    let name_end = run(bytes, at + 1, LONGEST_NAME, is_name)?;
    if name_end == at + 1 || bytes[name_end] != b'>' {
        return None;
    }
    let text_end = run(bytes, name_end + 1, bounds::LONGEST_TEXT, |b| b != b'<' && b != b'&')?;
    let name = &bytes[at + 1..name_end];
    let tail = bytes[text_end..].strip_prefix(b"</")?.strip_prefix(name)?.strip_prefix(b">")?;
    let end = skip_blanks(bytes, bytes.len() - tail.len());
    if bytes.get(end) != Some(&b'<') {
        return None;
    }
    // All cuts lie beside ASCII bytes, so they do not split a character.
    Some(Leaf { name: text.get(at + 1..name_end)?, text: text.get(name_end + 1..text_end)?, at, end })
}

fn skip_blanks(bytes: &[u8], from: usize) -> usize {
    let mut at = from;
    while matches!(bytes.get(at), Some(b' ' | b'\n' | b'\r' | b'\t')) {
        at += 1;
    }
    at
}

/// First byte from `from` on that does not satisfy `inside`; `None` if the text ends or more than `most`
/// bytes do satisfy it.
fn run(bytes: &[u8], from: usize, most: usize, inside: impl Fn(u8) -> bool) -> Option<usize> {
    let end = bytes.len().min(from + most + 1);
    bytes.get(from..end)?.iter().position(|b| !inside(*b)).map(|n| from + n)
}

fn is_name(b: u8) -> bool {
    b.is_ascii_alphanumeric() || matches!(b, b'_' | b'-' | b'.' | b':')
}

#[cfg(test)]
mod tests {
    use super::leaf_at;

    #[test]
    fn takes_plain_text_only() {
        let leaf = leaf_at(" \n<ele>12.5</ele>\n <x>", 0).expect("a leaf");
        assert_eq!((leaf.name, leaf.text, leaf.at, leaf.end), ("ele", "12.5", 2, 19));
        for long_way in [
            "<ele a='1'>2</ele><",
            "<ele>1&amp;</ele><",
            "<ele><!-- --></ele><",
            "<ele>1</elf><",
            "<ele>1</ele>",
            "<e",
            "x",
        ] {
            assert!(leaf_at(long_way, 0).is_none(), "{long_way}");
        }
    }
}
