//! Reads a roster from a table or from pasted lines, and shows how each line was understood.
//!
//! Of a table, only the columns of names are kept: no e-mail, number or password gets in.

use super::roster_columns::{Columns, columns};
use super::roster_name::{bare, composed, is_title, same_start, split};
use super::roster_table::{Record, Table, text, too_wide};
use super::views::{LineReading, Roster, RosterLine};
use crate::error::DeskError;
use surefoot_catalogue::steers;

/// Characters of a name at most.
pub const LONGEST_NAME_CHARACTERS: usize = 40;

/// Seats of a class at most.
pub const MOST_SEATS: usize = 60;

/// Lines of a roster that are read at most.
const MOST_LINES: usize = 500;

/// Characters of a line that the screen shows at most.
const LONGEST_SHOWN_CHARACTERS: usize = 200;

/// Reads a pasted roster: one student a line, or a table.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if a line is longer than any line of a roster.
pub fn read_roster(text: &str) -> Result<Roster, DeskError> {
    // A mail program puts all addresses on one line.
    let text = text.replace(">;", ">\n").replace(">,", ">\n");
    let lines = lines_of(text.as_bytes())?;
    Ok(Roster {
        title: String::new(),
        lines,
    })
}

/// Reads the lines of a roster in UTF-8.
pub(super) fn lines_of(bytes: &[u8]) -> Result<Vec<RosterLine>, DeskError> {
    let delimiter = delimiter(bytes);
    let columns = columns(&mut table(bytes, delimiter), delimiter)?;
    let mut lines = Vec::new();
    let mut table = table(bytes, delimiter);
    let mut number = 0;
    while let Some(record) = table.next().map_err(too_wide)? {
        number += 1;
        if record.fields().all(|field| text(Some(field)).is_empty()) {
            continue;
        }
        if lines.len() == MOST_LINES {
            break;
        }
        lines.push(line(number, &record, &columns, delimiter));
    }
    keep_codes(&mut lines);
    count_seats(&mut lines);
    Ok(lines)
}

fn table(bytes: &[u8], delimiter: Option<u8>) -> Table<'_> {
    // Without a delimiter, quotes mean nothing either, but no text has this sign.
    Table::new(bytes, delimiter.unwrap_or(0x1f))
}

/// The sign between columns: in most lines, or in none.
fn delimiter(bytes: &[u8]) -> Option<u8> {
    let lines = || bytes.split(|b| *b == b'\n' || *b == b'\r');
    let filled = lines().filter(|line| !line.trim_ascii().is_empty()).count();
    let with = |sign: u8| lines().filter(|line| line.contains(&sign)).count();
    [b'\t', b';', b'|', b',']
        .into_iter()
        .find(|sign| with(*sign) > 0 && with(*sign) * 2 >= filled)
}

/// A line of names as it was read.
pub(super) fn named(number: usize, first: &str, last: &str) -> RosterLine {
    let shown = |text: &str| -> String {
        let clean: String = text.chars().filter(|c| !steers(*c)).collect();
        composed(&bare(&clean))
            .chars()
            .take(LONGEST_SHOWN_CHARACTERS)
            .collect()
    };
    let (first, last) = (shown(first), shown(last));
    let reading = if first.is_empty() && last.is_empty() {
        LineReading::NoName
    } else {
        LineReading::Name
    };
    RosterLine {
        line: number,
        first,
        last,
        reading,
    }
}

fn line(
    number: usize,
    record: &Record<'_>,
    columns: &Columns,
    delimiter: Option<u8>,
) -> RosterLine {
    let all: Vec<String> = record.fields().map(|field| text(Some(field))).collect();
    let cell = |at: usize| all.get(at).map_or("", String::as_str);
    let filled: Vec<&str> = (all.iter().map(String::as_str))
        .filter(|cell| !cell.is_empty())
        .collect();
    let heading = |words: &str| RosterLine {
        reading: LineReading::Heading,
        ..named(number, words, "")
    };
    if columns.is_heading(&all) {
        let names = filled.iter().take(2).copied().collect::<Vec<_>>();
        return heading(&names.join(" · "));
    }
    if let [only] = *filled.as_slice()
        && is_title(only)
    {
        return heading(only);
    }
    match *columns {
        Columns::Split {
            first,
            preferred,
            last,
        } => {
            let called = preferred.map_or("", cell);
            let given = if called.is_empty() {
                cell(first)
            } else {
                called
            };
            if given.is_empty() && !cell(last).is_empty()
                || cell(last).is_empty() && filled.len() == 1
            {
                let (given, family) = split(filled.first().copied().unwrap_or_default());
                return named(number, &given, &family);
            }
            named(number, &given_only(given), cell(last))
        }
        Columns::Whole { at, headings } => {
            // "Last, First" without quotes makes one column too many.
            let whole = if delimiter == Some(b',') && all.len() == headings + 1 && headings > 0 {
                format!("{}, {}", cell(at), cell(at + 1))
            } else {
                cell(at).to_owned()
            };
            let (first, last) = split(&whole);
            named(number, &first, &last)
        }
        Columns::Code { at } => named(number, cell(at), ""),
    }
}

/// A given name from a column of given names, without a middle initial or a remark.
fn given_only(cell: &str) -> String {
    // The comma keeps a double given name together.
    split(&format!(", {cell}")).0
}

/// Keeps "Student 1", "Student 2" whole: lines that all begin with the same word are codes.
fn keep_codes(lines: &mut [RosterLine]) {
    if !same_start(lines) {
        return;
    }
    for line in lines
        .iter_mut()
        .filter(|line| line.reading == LineReading::Name)
    {
        line.first = format!("{} {}", line.first, line.last).trim().to_owned();
        line.last.clear();
    }
}

/// Names the lines that are too long, and those beyond the seats of a class.
pub(super) fn count_seats(lines: &mut [RosterLine]) {
    let mut seats = 0;
    for line in lines
        .iter_mut()
        .filter(|line| line.reading == LineReading::Name)
    {
        if seats == MOST_SEATS {
            line.reading = LineReading::Full;
            continue;
        }
        seats += 1;
        if line.first.chars().count() > LONGEST_NAME_CHARACTERS {
            line.reading = LineReading::TooLong;
        }
    }
}
