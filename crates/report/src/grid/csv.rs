//! CSV by RFC 4180.
//!
//! A text that a spreadsheet would read as a formula gets an apostrophe before it (OWASP, "CSV
//! Injection"). The file begins with a byte order mark, because spreadsheets need it to read
//! UTF-8; RFC 4180 does not mention it.

use super::{Grid, GridCell};
use crate::error::ReportError;
use csv_core::{Terminator, WriteResult, Writer, WriterBuilder};

/// Characters with which a formula can begin in a spreadsheet.
const FORMULA_STARTS: [char; 6] = ['=', '+', '-', '@', '\t', '\r'];

/// The grid as a CSV file.
pub fn to_csv(grid: &Grid) -> Result<Vec<u8>, ReportError> {
    let mut out = Out {
        writer: WriterBuilder::new().terminator(Terminator::CRLF).build(),
        bytes: "\u{feff}".as_bytes().to_vec(),
    };
    let head: Vec<String> = grid.head.iter().map(|name| guarded(name)).collect();
    out.record(&head)?;
    for row in &grid.rows {
        let fields: Vec<String> = row.iter().map(written).collect();
        out.record(&fields)?;
    }
    Ok(out.bytes)
}

fn written(cell: &GridCell) -> String {
    match cell {
        GridCell::Text(text) => guarded(text),
        GridCell::Number(number) | GridCell::Share(number) => number.to_string(),
        GridCell::Empty => String::new(),
    }
}

fn guarded(text: &str) -> String {
    if text.starts_with(FORMULA_STARTS) {
        format!("'{text}")
    } else {
        text.to_string()
    }
}

struct Out {
    writer: Writer,
    bytes: Vec<u8>,
}

impl Out {
    fn record(&mut self, fields: &[String]) -> Result<(), ReportError> {
        for (place, field) in fields.iter().enumerate() {
            if place > 0 {
                self.sign(Writer::delimiter)?;
            }
            let mut rest = field.as_bytes();
            loop {
                let mut room = [0_u8; 256];
                let (result, read, written) = self.writer.field(rest, &mut room);
                self.bytes.extend(room.iter().take(written));
                rest = rest.get(read..).unwrap_or_default();
                if result == WriteResult::InputEmpty {
                    break;
                }
            }
        }
        self.sign(Writer::terminator)
    }

    /// Writes a delimiter or the end of a record.
    fn sign(
        &mut self,
        write: impl FnOnce(&mut Writer, &mut [u8]) -> (WriteResult, usize),
    ) -> Result<(), ReportError> {
        let mut room = [0_u8; 8];
        let (result, written) = write(&mut self.writer, &mut room);
        self.bytes.extend(room.iter().take(written));
        if result == WriteResult::InputEmpty {
            Ok(())
        } else {
            Err(ReportError::Writer("CSV".into()))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn csv(cells: &[&str]) -> String {
        let grid = Grid {
            title: "t".into(),
            head: vec!["a".into(); cells.len()],
            rows: vec![cells.iter().map(|c| GridCell::Text((*c).into())).collect()],
        };
        let text = String::from_utf8(to_csv(&grid).unwrap()).unwrap();
        text.split_once("\r\n").unwrap().1.to_string()
    }

    #[test]
    fn quotes_commas_and_lines_are_kept_by_quoting() {
        let long = "x".repeat(1000);
        assert_eq!(
            csv(&["a,b", "say \"so\"", "one\r\ntwo", "", &long]),
            format!("\"a,b\",\"say \"\"so\"\"\",\"one\r\ntwo\",,{long}\r\n")
        );
    }

    #[test]
    fn no_text_begins_like_a_formula() {
        for text in ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"] {
            let line = csv(&[text]);
            assert!(line.trim_start_matches('"').starts_with('\''), "{line:?}");
        }
        assert_eq!(csv(&["3/4 = 0.75"]), "3/4 = 0.75\r\n");
    }

    #[test]
    fn numbers_stay_numbers() {
        let grid = Grid {
            title: "t".into(),
            head: vec!["n".into(), "s".into(), "e".into()],
            rows: vec![vec![
                GridCell::Number(-3.0),
                GridCell::Share(0.625),
                GridCell::Empty,
            ]],
        };
        assert_eq!(
            to_csv(&grid).unwrap(),
            "\u{feff}n,s,e\r\n-3,0.625,\r\n".as_bytes()
        );
    }
}
