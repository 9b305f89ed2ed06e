//! Reads tables of comma-separated text (RFC 4180), one record at a time.

use crate::error::{DeskError, Field, Rule};
use csv_core::{ReadRecordResult, Reader, ReaderBuilder};

/// Bytes of a record at most; a longer one is in no table of names.
const MOST_RECORD_BYTES: usize = 64 * 1024;

/// Columns of a table at most.
const MOST_COLUMNS: usize = 256;

/// Reads each record into the same buffer, so that no earlier one stays in memory.
pub(crate) struct Table<'a> {
    reader: Reader,
    rest: &'a [u8],
    bytes: Vec<u8>,
    ends: Vec<usize>,
}

/// A record that is longer or wider than any table of names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct TooWide;

/// The error of a roster for such a record.
pub(super) fn too_wide(_: TooWide) -> DeskError {
    DeskError::invalid(Field::Roster, Rule::TooLong)
}

/// The text of a field without spaces around it.
pub(super) fn text(field: Option<&[u8]>) -> String {
    String::from_utf8_lossy(field.unwrap_or_default())
        .trim()
        .to_owned()
}

/// A record: its fields in order.
#[derive(Clone, Copy)]
pub(crate) struct Record<'t> {
    bytes: &'t [u8],
    ends: &'t [usize],
}

impl<'t> Record<'t> {
    /// A field by its index.
    pub fn get(&self, at: usize) -> Option<&'t [u8]> {
        let end = *self.ends.get(at)?;
        let start = match at.checked_sub(1) {
            Some(before) => *self.ends.get(before)?,
            None => 0,
        };
        self.bytes.get(start..end)
    }

    /// All fields.
    pub fn fields(&self) -> impl Iterator<Item = &'t [u8]> + '_ {
        (0..self.ends.len()).filter_map(|at| self.get(at))
    }
}

impl<'a> Table<'a> {
    /// The table in `bytes`.
    pub fn new(bytes: &'a [u8], delimiter: u8) -> Self {
        Self {
            reader: ReaderBuilder::new().delimiter(delimiter).build(),
            rest: bytes,
            bytes: vec![0; MOST_RECORD_BYTES],
            ends: vec![0; MOST_COLUMNS],
        }
    }

    /// The next record, if there is one.
    pub fn next(&mut self) -> Result<Option<Record<'_>>, TooWide> {
        let (mut filled, mut fields) = (0, 0);
        loop {
            let (result, used, wrote, ended) = self.reader.read_record(
                self.rest,
                self.bytes.get_mut(filled..).unwrap_or_default(),
                self.ends.get_mut(fields..).unwrap_or_default(),
            );
            self.rest = self.rest.get(used..).unwrap_or_default();
            filled += wrote;
            fields += ended;
            match result {
                // An empty input marks the end of the text.
                ReadRecordResult::InputEmpty => {}
                ReadRecordResult::OutputFull | ReadRecordResult::OutputEndsFull => {
                    return Err(TooWide);
                }
                ReadRecordResult::Record => {
                    return Ok(Some(Record {
                        bytes: self.bytes.get(..filled).unwrap_or_default(),
                        ends: self.ends.get(..fields).unwrap_or_default(),
                    }));
                }
                ReadRecordResult::End => return Ok(None),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Vec<Vec<String>> {
        let mut table = Table::new(text.as_bytes(), b',');
        let mut rows = Vec::new();
        while let Some(record) = table.next().unwrap() {
            rows.push(
                record
                    .fields()
                    .map(|f| String::from_utf8_lossy(f).into_owned())
                    .collect(),
            );
        }
        rows
    }

    /// RFC 4180, section 2: line breaks, quotes and commas inside quotes.
    #[test]
    fn the_rules_of_the_standard_hold() {
        assert_eq!(
            read("aaa,\"b\r\nbb\",ccc\r\n\"b\"\"bb\",,\"z,z\""),
            [["aaa", "b\r\nbb", "ccc"], ["b\"bb", "", "z,z"]]
        );
        assert_eq!(read("a\n\nb\n"), [["a"], ["b"]]);
        assert!(read("").is_empty());
    }

    #[test]
    fn a_record_wider_than_any_roster_is_refused() {
        let wide = ",".repeat(MOST_COLUMNS + 1);
        assert!(Table::new(wide.as_bytes(), b',').next().is_err());
        let long = "x".repeat(MOST_RECORD_BYTES + 1);
        assert!(Table::new(long.as_bytes(), b',').next().is_err());
    }
}
