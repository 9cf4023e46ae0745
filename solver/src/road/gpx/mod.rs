//! GPX 1.0 and 1.1, read tolerantly.
//!
//! One loop over the events of the XML keeps everything before the first error that cannot be repaired. Names
//! are compared without their prefix, at the right depth. Times are never needed and never read. By design no
//! entity is expanded, no schema is fetched, no unit is guessed, and nothing is allocated per point but the
//! point itself.

mod collect;
mod decimal;
mod decode;
mod element;
mod leaf;
mod number;
mod scan;
mod sniff;
mod tag;
mod tally;

use super::bounds;
use super::document::Document;
use super::error::{Bound, FileError};
use super::finding::{Finding, FindingKind};

/// Reads the bytes of a file into a document.
///
/// `progress` receives the share done, from 0 to 1, and answers false to stop.
///
/// # Errors
/// A reason why the file is unusable as a whole: see [`FileError`]. Anything that can be repaired is a
/// finding of the document instead.
pub fn read(bytes: &[u8], progress: &mut dyn FnMut(f32) -> bool) -> Result<Document, FileError> {
    if bytes.len() > bounds::MOST_BYTES {
        return Err(FileError::TooLarge(Bound::Bytes(bytes.len())));
    }
    sniff::check_bytes(bytes)?;
    if !progress(0.0) {
        return Err(FileError::Cancelled);
    }
    let decoded = decode::decode(bytes);
    let start = sniff::find_start(&decoded.text)?;
    let mut findings: Vec<Finding> = decoded.repair.into_iter().collect();
    let junk = decoded.text[..start].trim().len();
    if junk > 0 {
        findings.push(Finding { kind: FindingKind::JunkBeforeStart, count: junk, from_m: None, to_m: None });
    }
    let collected = scan::scan(&decoded.text, start, progress)?;
    let document = collected.into_document(&decoded.text, findings)?;
    // The last report; it too may ask to stop.
    if progress(1.0) { Ok(document) } else { Err(FileError::Cancelled) }
}
