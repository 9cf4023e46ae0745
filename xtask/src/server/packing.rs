//! How the server packs what it sends, as static hosts do: brotli or gzip, whichever the browser takes. Each file
//! is packed once and then kept in memory.

use flate2::{Compression, write::GzEncoder};
use std::{
    collections::BTreeMap,
    io::Write,
    path::{Path, PathBuf},
    sync::{Mutex, PoisonError},
    time::SystemTime,
};

/// A tenth larger than at 11, the best, in a seventeenth of the time: the first visit waits for it.
const BROTLI_QUALITY: i32 = 9;
/// Names of files whose contents are worth it end so. Faces are packed already.
const PACKED: [&str; 9] = ["wasm", "js", "mjs", "css", "html", "json", "svg", "gpx", "webmanifest"];

/// A way of packing; the better first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Packing {
    /// RFC 7932.
    Brotli,
    /// RFC 1952.
    Gzip,
}

impl Packing {
    /// The best that a browser takes, by its `Accept-Encoding` (RFC 9110, section 12.5.3); `None` where it wants
    /// the file as it is.
    pub(super) fn accepted(header: &str) -> Option<Self> {
        [Self::Brotli, Self::Gzip].into_iter().find(|it| takes(header, it.name()))
    }

    /// Its name in headers.
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Brotli => "br",
            Self::Gzip => "gzip",
        }
    }

    fn pack(self, bytes: &[u8]) -> std::io::Result<Vec<u8>> {
        match self {
            Self::Brotli => {
                let quality = BROTLI_QUALITY;
                let params = brotli::enc::BrotliEncoderParams { quality, ..Default::default() };
                let mut out = Vec::new();
                brotli::BrotliCompress(&mut &bytes[..], &mut out, &params)?;
                Ok(out)
            }
            Self::Gzip => {
                let mut packer = GzEncoder::new(Vec::new(), Compression::best());
                packer.write_all(bytes)?;
                packer.finish()
            }
        }
    }
}

/// Whether the header names it, or all, with a weight above zero.
fn takes(header: &str, name: &str) -> bool {
    let weight = |wanted: &str| {
        header.split(',').find_map(|part| {
            let mut words = part.split(';').map(str::trim);
            words.next().filter(|it| it.eq_ignore_ascii_case(wanted))?;
            let weight = words.find_map(|word| word.strip_prefix("q=")).map_or(Ok(1.0), str::parse::<f32>);
            Some(weight.unwrap_or(0.0))
        })
    };
    weight(name).or_else(|| weight("*")).is_some_and(|weight| weight > 0.0)
}

/// Whether a file is worth it.
pub(super) fn is_packed(path: &Path) -> bool {
    path.extension().and_then(|end| end.to_str()).is_some_and(|end| PACKED.contains(&end))
}

/// What was packed: by file and way, and of which version of the file.
type Kept = BTreeMap<(PathBuf, Packing), (SystemTime, Vec<u8>)>;
static KEPT: Mutex<Kept> = Mutex::new(BTreeMap::new());

/// The packed bytes of a file that was changed last at this time; `None` where packing fails.
pub(super) fn packed(path: &Path, changed: SystemTime, bytes: &[u8], how: Packing) -> Option<Vec<u8>> {
    let key = (path.to_path_buf(), how);
    let kept = || KEPT.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some((of, packed)) = kept().get(&key)
        && *of == changed
    {
        return Some(packed.clone());
    }
    // Not while the others wait. Two that ask at once both pack it.
    let packed = how.pack(bytes).ok()?;
    kept().insert(key, (changed, packed.clone()));
    Some(packed)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::{io::Read, time::Duration};

    #[test]
    fn what_the_browser_takes_is_chosen_the_better_first() {
        for (header, expect) in [
            ("gzip, deflate, br, zstd", Some(Packing::Brotli)),
            ("gzip, deflate", Some(Packing::Gzip)),
            ("br;q=0, GZIP;q=0.5", Some(Packing::Gzip)),
            ("*", Some(Packing::Brotli)),
            ("br;q=0, *;q=0.1", Some(Packing::Gzip)),
            ("*;q=0", None),
            ("br;q=much", None),
            ("identity", None),
            ("", None),
        ] {
            assert_eq!(Packing::accepted(header), expect, "{header}");
        }
    }

    #[test]
    fn only_what_is_not_packed_already_is_packed() {
        for (name, expect) in [("a.wasm", true), ("a.gpx", true), ("fonts/a.woff2", false), ("a", false)] {
            assert_eq!(is_packed(Path::new(name)), expect, "{name}");
        }
    }

    #[test]
    fn packed_bytes_unpack_to_the_file_and_a_changed_file_is_packed_anew() {
        let path = Path::new("packing-test.js");
        let (text, other) = ("let a = 1;\n".repeat(100), "let b = 2;\n".repeat(100));
        let now = SystemTime::UNIX_EPOCH;
        let unpacked = |how: Packing, changed: SystemTime, text: &str| {
            let bytes = packed(path, changed, text.as_bytes(), how).expect("memory is enough");
            assert!(bytes.len() < text.len() / 5, "{how:?}: {}", bytes.len());
            let mut out = Vec::new();
            match how {
                Packing::Brotli => brotli::BrotliDecompress(&mut &bytes[..], &mut out).expect("brotli"),
                Packing::Gzip => {
                    flate2::read::GzDecoder::new(&bytes[..]).read_to_end(&mut out).expect("gzip");
                }
            }
            String::from_utf8(out).expect("a text")
        };
        for how in [Packing::Brotli, Packing::Gzip] {
            assert_eq!(unpacked(how, now, &text), text);
            assert_eq!(unpacked(how, now, &other), text, "of the same version it is kept");
            assert_eq!(unpacked(how, now + Duration::from_secs(1), &other), other);
        }
    }
}
