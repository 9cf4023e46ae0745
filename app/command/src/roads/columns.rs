//! The table as Parquet.

use super::row::Row;
use super::table::Sheet;
use crate::sentences;
use parquet::errors::ParquetError;
use parquet::file::metadata::KeyValue;
use parquet::file::properties::WriterProperties;
use parquet::file::writer::SerializedFileWriter;
use parquet::record::RecordWriter;
use std::fs::File;
use std::io;
use std::sync::Arc;

/// Rows that are held back and written together, column after column: some megabytes.
const GROUP: usize = 16_384;

/// What Parquet asks of a row: its columns, derived from its fields.
pub(crate) trait Columns: Sized {
    /// Begins a file of such rows.
    fn begin(file: File) -> Result<SerializedFileWriter<File>, ParquetError>;
    /// Writes rows as one group.
    fn write(rows: &[Self], writer: &mut SerializedFileWriter<File>) -> Result<(), ParquetError>;
}

impl<R> Columns for R
where
    for<'a> &'a [R]: RecordWriter<R>,
{
    fn begin(file: File) -> Result<SerializedFileWriter<File>, ParquetError> {
        let none: &[R] = &[];
        let caution = KeyValue::new(String::from("caution"), sentences::caution().replace('\n', " "));
        let properties = WriterProperties::builder().set_key_value_metadata(Some(vec![caution])).build();
        SerializedFileWriter::new(file, none.schema()?, Arc::new(properties))
    }

    fn write(rows: &[R], writer: &mut SerializedFileWriter<File>) -> Result<(), ParquetError> {
        let mut group = writer.next_row_group()?;
        rows.write_to_row_group(&mut group)?;
        group.close().map(|_| ())
    }
}

/// Rows in groups.
pub(crate) struct Groups<R> {
    writer: SerializedFileWriter<File>,
    held: Vec<R>,
}

impl<R: Row> Groups<R> {
    /// Begins a file.
    pub(crate) fn begin(file: File) -> io::Result<Self> {
        Ok(Self { writer: R::begin(file)?, held: Vec::new() })
    }

    fn write(&mut self) -> io::Result<()> {
        R::write(&self.held, &mut self.writer)?;
        self.held.clear();
        Ok(())
    }
}

impl<R: Row> Sheet<R> for Groups<R> {
    fn put(&mut self, mut rows: Vec<R>) -> io::Result<()> {
        self.held.append(&mut rows);
        if self.held.len() >= GROUP { self.write() } else { Ok(()) }
    }

    fn finish(mut self: Box<Self>) -> io::Result<()> {
        if !self.held.is_empty() {
            self.write()?;
        }
        self.writer.close()?;
        Ok(())
    }
}
