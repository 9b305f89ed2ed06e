//! Reads comma-separated text (RFC 4180) record by record, with the line of each.

use csv_core::{ReadRecordResult, Reader, ReaderBuilder};

/// The most bytes of a record.
const MOST_RECORD_BYTES: usize = 32 * 1024;
/// The most cells of a record.
const MOST_CELLS: usize = 64;

/// A record and the line it starts on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// From 1.
    pub line: u32,
    /// The cells, without spaces around them.
    pub cells: Vec<String>,
}

/// Why a record cannot be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RowFault {
    /// Too many bytes or cells.
    TooLong,
    /// Not UTF-8.
    NotUtf8,
    /// A quotation mark is not closed, or is inside a cell without quotes.
    LooseQuote,
}

/// The records of a table.
pub struct Rows<'a> {
    reader: Reader,
    rest: &'a [u8],
    line: u32,
    bytes: Vec<u8>,
    ends: Vec<usize>,
}

/// Returns the bytes without the byte-order mark that spreadsheets write first.
#[must_use]
pub fn without_mark(bytes: &[u8]) -> &[u8] {
    bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes)
}

/// Returns the sign that separates the cells: that of tab, semicolon and comma which the
/// first line has most often.
fn delimiter(bytes: &[u8]) -> u8 {
    let first = bytes.split(|b| *b == b'\n').next().unwrap_or_default();
    let count = |sign: u8| first.iter().filter(|b| **b == sign).count();
    [b'\t', b';', b',']
        .into_iter()
        .max_by_key(|sign| count(*sign))
        .filter(|sign| count(*sign) > 0)
        .unwrap_or(b',')
}

/// Counts the ends of lines: LF, CR LF, or CR alone.
fn line_ends(bytes: &[u8]) -> u32 {
    let mut count: u32 = 0;
    for (place, byte) in bytes.iter().enumerate() {
        let alone = *byte == b'\r' && bytes.get(place + 1) != Some(&b'\n');
        if *byte == b'\n' || alone {
            count = count.saturating_add(1);
        }
    }
    count
}

impl<'a> Rows<'a> {
    /// Starts at the first record of `bytes`.
    #[must_use]
    pub fn new(bytes: &'a [u8]) -> Self {
        let bytes = without_mark(bytes);
        Self {
            reader: ReaderBuilder::new().delimiter(delimiter(bytes)).build(),
            rest: bytes,
            line: 1,
            bytes: vec![0; MOST_RECORD_BYTES],
            ends: vec![0; MOST_CELLS],
        }
    }

    /// Returns the next record that is not empty. A fault comes with its line.
    pub fn next_row(&mut self) -> Option<Result<Row, (u32, RowFault)>> {
        loop {
            self.skip_line_ends();
            let line = self.line;
            if self.rest.is_empty() {
                return None;
            }
            match self.record() {
                Ok(cells) if cells.iter().all(String::is_empty) => {}
                Ok(cells) => return Some(Ok(Row { line, cells })),
                Err(fault) => return Some(Err((line, fault))),
            }
        }
    }

    /// Skips empty lines, because the reader does not count them.
    fn skip_line_ends(&mut self) {
        let blank = self
            .rest
            .iter()
            .take_while(|b| matches!(b, b'\n' | b'\r'))
            .count();
        let (skipped, rest) = self.rest.split_at(blank);
        self.line = self.line.saturating_add(line_ends(skipped));
        self.rest = rest;
    }

    fn record(&mut self) -> Result<Vec<String>, RowFault> {
        let from = self.rest;
        let (mut filled, mut cells, mut too_long) = (0, 0, false);
        loop {
            if too_long {
                (filled, cells) = (0, 0);
            }
            let (result, used, wrote, ended) = self.reader.read_record(
                self.rest,
                self.bytes.get_mut(filled..).unwrap_or_default(),
                self.ends.get_mut(cells..).unwrap_or_default(),
            );
            self.rest = self.rest.get(used..).unwrap_or_default();
            filled += wrote;
            cells += ended;
            match result {
                ReadRecordResult::InputEmpty => {}
                // The rest of the record is skipped, so that the next one is read.
                ReadRecordResult::OutputFull | ReadRecordResult::OutputEndsFull => too_long = true,
                ReadRecordResult::Record | ReadRecordResult::End => break,
            }
        }
        let raw = from.get(..from.len() - self.rest.len()).unwrap_or_default();
        self.line = self.line.saturating_add(line_ends(raw));
        // If the record ends between CR and LF, the LF is skipped with the blank lines.
        if raw.last() == Some(&b'\r') && self.rest.first() == Some(&b'\n') {
            self.line = self.line.saturating_sub(1);
        }
        if too_long {
            return Err(RowFault::TooLong);
        }
        if raw.iter().filter(|b| **b == b'"').count() % 2 == 1 {
            return Err(RowFault::LooseQuote);
        }
        let mut start = 0;
        let mut found = Vec::with_capacity(cells);
        for end in self.ends.iter().take(cells) {
            let cell = self.bytes.get(start..*end).unwrap_or_default();
            let text = std::str::from_utf8(cell).map_err(|_| RowFault::NotUtf8)?;
            found.push(text.trim().to_owned());
            start = *end;
        }
        Ok(found)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    type ReadRow = Result<(u32, Vec<String>), (u32, RowFault)>;

    fn read(text: &[u8]) -> Vec<ReadRow> {
        let mut rows = Rows::new(text);
        let mut all = Vec::new();
        while let Some(row) = rows.next_row() {
            all.push(row.map(|row| (row.line, row.cells)));
        }
        all
    }

    fn row(line: u32, cells: &[&str]) -> Result<(u32, Vec<String>), (u32, RowFault)> {
        Ok((line, cells.iter().map(|c| (*c).to_owned()).collect()))
    }

    #[test]
    fn lines_are_counted_through_blanks_and_breaks_inside_cells() {
        for end in ["\n", "\r\n", "\r"] {
            let text = "a,b\n\n1,\"two\nlines\"\n\n\n3,4\n".replace('\n', end);
            let found = read(text.as_bytes());
            assert_eq!(found[0], row(1, &["a", "b"]), "{end:?}");
            assert_eq!(found[1].as_ref().unwrap().0, 3, "{end:?}");
            assert_eq!(found[2], row(7, &["3", "4"]), "{end:?}");
        }
    }

    #[test]
    fn a_mark_in_front_and_semicolons_are_read() {
        assert_eq!(
            read("\u{feff}a;b\n\"x, y\";2".as_bytes()),
            [row(1, &["a", "b"]), row(2, &["x, y", "2"])]
        );
    }

    #[test]
    fn faults_keep_their_line_and_the_next_record_is_read() {
        let long = "y".repeat(MOST_RECORD_BYTES + 10);
        let text = format!("a,b\n{long},1\n5,6\n");
        assert_eq!(
            read(text.as_bytes()),
            [
                row(1, &["a", "b"]),
                Err((2, RowFault::TooLong)),
                row(3, &["5", "6"])
            ]
        );
        let mut bytes = b"a,b\n1,".to_vec();
        bytes.extend_from_slice(b"\xff\n7,8\n");
        assert_eq!(
            read(&bytes),
            [
                row(1, &["a", "b"]),
                Err((2, RowFault::NotUtf8)),
                row(3, &["7", "8"])
            ]
        );
        assert_eq!(
            read(b"a,b\n1,\"open\n2,3\n")[1],
            Err((2, RowFault::LooseQuote))
        );
    }
}
