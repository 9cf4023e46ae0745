//! Files, with sentences for what goes wrong.

use std::fs::{self, OpenOptions};
use std::io::{Error, ErrorKind, Write};
use std::path::Path;

/// The bytes of a file.
pub(crate) fn read(path: &Path) -> Result<Vec<u8>, String> {
    fs::read(path).map_err(|error| cannot_open(path, &error))
}

/// The text of a file.
pub(crate) fn read_text(path: &Path) -> Result<String, String> {
    fs::read_to_string(path).map_err(|error| cannot_open(path, &error))
}

/// Whether something of this name is there.
pub(crate) fn check(path: &Path) -> Result<(), String> {
    fs::metadata(path).map(|_| ()).map_err(|error| cannot_open(path, &error))
}

/// Writes a file; one that is there stays, if it is not to be replaced.
pub(crate) fn write(path: &Path, bytes: &[u8], overwrite: bool) -> Result<(), String> {
    let mut open = OpenOptions::new();
    open.write(true).truncate(overwrite).create(overwrite).create_new(!overwrite);
    let written = open.open(path).and_then(|mut file| file.write_all(bytes));
    written.map_err(|error| match error.kind() {
        ErrorKind::AlreadyExists => exists(path),
        _ => cannot_write(path, &error),
    })
}

/// A file is there and stays.
pub(crate) fn exists(path: &Path) -> String {
    format!("{} is there already. Choose another name, or say --overwrite.", path.display())
}

/// Why a file cannot be written, and what to look at.
pub(crate) fn cannot_write(path: &Path, error: &Error) -> String {
    format!(
        "{} could not be written: {error}. Check that its folder is there, that you may write to it, and that the disk is not full.",
        path.display()
    )
}

fn cannot_open(path: &Path, error: &Error) -> String {
    format!("{} could not be opened: {error}. Check its name, and whether you may read it.", path.display())
}
