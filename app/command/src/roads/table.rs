//! A table as it is written: comma-separated values, JSON by the line, or Parquet.

use super::row::Row;
use crate::file;
use std::ffi::OsString;
use std::fs::{self, File};
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};

#[cfg(feature = "parquet")]
pub(crate) use super::columns::Columns;

/// What Parquet asks of a row; built without it, nothing.
#[cfg(not(feature = "parquet"))]
pub(crate) trait Columns {}
#[cfg(not(feature = "parquet"))]
impl<R> Columns for R {}

/// Takes rows, and puts them down in one form.
pub(crate) trait Sheet<R> {
    /// Takes rows.
    fn put(&mut self, rows: Vec<R>) -> io::Result<()>;
    /// Writes what is still held back.
    fn finish(self: Box<Self>) -> io::Result<()>;
}

impl<R: Row> Sheet<R> for csv::Writer<File> {
    fn put(&mut self, rows: Vec<R>) -> io::Result<()> {
        rows.iter().try_for_each(|row| self.serialize(row)).map_err(io::Error::from)
    }

    fn finish(mut self: Box<Self>) -> io::Result<()> {
        self.flush()
    }
}

/// A line of JSON for each row.
struct Lines(BufWriter<File>);

impl<R: Row> Sheet<R> for Lines {
    fn put(&mut self, rows: Vec<R>) -> io::Result<()> {
        rows.iter().try_for_each(|row| {
            serde_json::to_writer(&mut self.0, row)?;
            self.0.write_all(b"\n")
        })
    }

    fn finish(mut self: Box<Self>) -> io::Result<()> {
        self.0.flush()
    }
}

/// A table on the way. Until it is whole its name has `.part` behind it: what was broken off cannot be
/// taken for a table of fewer roads.
pub(crate) struct Table<R> {
    sheet: Box<dyn Sheet<R>>,
    part: PathBuf,
    out: PathBuf,
}

impl<R: Row> Table<R> {
    /// Begins a table in the form that the end of its name says.
    ///
    /// # Errors
    /// A sentence when the form is not known, the name is taken or the place cannot be written to.
    pub(crate) fn create(out: &Path, overwrite: bool) -> Result<Self, String> {
        let end = out.extension().map(|end| end.to_string_lossy().to_lowercase());
        let begin: fn(File) -> io::Result<Box<dyn Sheet<R>>> = match end.as_deref() {
            Some("csv") => |file| Ok(Box::new(csv::Writer::from_writer(file))),
            Some("ndjson") => |file| Ok(Box::new(Lines(BufWriter::new(file)))),
            #[cfg(feature = "parquet")]
            Some("parquet") => |file| Ok(Box::new(super::columns::Groups::<R>::begin(file)?)),
            #[cfg(not(feature = "parquet"))]
            Some("parquet") => {
                return Err(String::from(
                    "This steadygrade was built without Parquet. Build it with --features parquet, or end the name in .csv or .ndjson.",
                ));
            }
            Some(_) | None => {
                return Err(format!(
                    "{} does not say which form is wanted. End the name in .csv, .ndjson or .parquet.",
                    out.display()
                ));
            }
        };
        if !overwrite && out.exists() {
            return Err(file::exists(out));
        }
        let mut part = OsString::from(out);
        part.push(".part");
        let part = PathBuf::from(part);
        let sheet = File::create(&part).and_then(begin).map_err(|error| file::cannot_write(&part, &error))?;
        Ok(Self { sheet, part, out: out.to_owned() })
    }

    /// Takes the rows of a file.
    ///
    /// # Errors
    /// A sentence when they cannot be written; what was written so far stays under the name with `.part`.
    pub(crate) fn put(&mut self, rows: Vec<R>) -> Result<(), String> {
        self.sheet.put(rows).map_err(|error| file::cannot_write(&self.part, &error))
    }

    /// Writes the rest, and gives the table its name.
    ///
    /// # Errors
    /// A sentence when that does not succeed.
    pub(crate) fn finish(self) -> Result<(), String> {
        self.sheet.finish().map_err(|error| file::cannot_write(&self.part, &error))?;
        fs::rename(&self.part, &self.out).map_err(|error| file::cannot_write(&self.out, &error))
    }
}
