//! Tables of comma-separated text with a heading. A line that cannot be read is refused
//! by its number, and the other lines are taken.
#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

use crate::{Language, Text};
use std::collections::BTreeMap;

mod fault;
mod rows;

pub use fault::{LineFault, LineRefused, cut};
pub use rows::{Row, RowFault, Rows, without_mark};

/// A heading's name: case, spaces and hyphens do not matter.
pub fn column_name(text: &str) -> String {
    text.trim().to_lowercase().replace([' ', '-'], "_")
}

/// Returns why a line is refused whose record cannot be read.
pub fn row_fault(fault: RowFault) -> LineFault {
    match fault {
        RowFault::TooLong => LineFault::LineTooLong,
        RowFault::NotUtf8 => LineFault::NotUtf8,
        RowFault::LooseQuote => LineFault::LooseQuote,
    }
}

/// The columns `names`, and for each of `translated` one more for every language, with the
/// language's tag behind the name, such as `title_es`.
#[must_use]
pub fn columns(names: &[&str], translated: &[&str]) -> Vec<String> {
    let in_languages = translated
        .iter()
        .flat_map(|name| Language::all().iter().map(|tag| column_in(name, *tag)));
    let names = names.iter().map(|name| (*name).to_owned());
    names.chain(in_languages).collect()
}

/// The column of a text in one language.
#[must_use]
pub fn column_in(name: &str, language: Language) -> String {
    format!("{name}_{}", column_name(language.as_str()))
}

/// The cell of a text in one language: the column with the language's tag or, for the main
/// language, the column of the plain name if that is filled in.
pub fn cell_in<'a>(
    cell: &dyn Fn(&str) -> &'a str,
    name: &str,
    language: Language,
    main: Language,
) -> &'a str {
    match cell(name) {
        plain if language == main && !plain.is_empty() => plain,
        _ => cell(&column_in(name, language)),
    }
}

/// The text of a column in every language that a line has it in.
pub fn text_in<'a>(cell: &dyn Fn(&str) -> &'a str, name: &str, main: Language) -> Option<Text> {
    let texts: BTreeMap<Language, String> = Language::all()
        .iter()
        .map(|language| (*language, cell_in(cell, name, *language, main).to_owned()))
        .filter(|(_, text)| !text.is_empty())
        .collect();
    Text::try_from(texts).ok()
}

/// Checks that a heading has only known columns, each once, and all that are needed.
pub fn heading(
    row: &Row,
    known: &[String],
    needed: &[&str],
) -> Result<Vec<String>, Vec<LineRefused>> {
    let refused = |fault| LineRefused::line(row.line, fault);
    let mut names: Vec<String> = row.cells.iter().map(|cell| column_name(cell)).collect();
    // Spreadsheets leave empty columns behind the last one.
    while names.last().is_some_and(String::is_empty) {
        names.pop();
    }
    let mut faults = Vec::new();
    for (place, name) in names.iter().enumerate() {
        if !known.contains(name) {
            faults.push(refused(LineFault::UnknownColumn {
                column: cut(name, 40),
            }));
        } else if names.iter().take(place).any(|other| other == name) {
            faults.push(refused(LineFault::ColumnTwice {
                column: name.clone(),
            }));
        }
    }
    for column in needed {
        if !names.iter().any(|name| name == column) {
            faults.push(refused(LineFault::MissingColumn {
                column: (*column).to_owned(),
            }));
        }
    }
    if faults.is_empty() {
        Ok(names)
    } else {
        Err(faults)
    }
}

/// Checks that a row has as many cells as the heading; drops empty ones at the end.
pub fn fitted(row: &mut Row, columns: usize) -> Result<(), LineFault> {
    while row.cells.len() > columns && row.cells.last().is_some_and(String::is_empty) {
        row.cells.pop();
    }
    if row.cells.len() == columns {
        return Ok(());
    }
    Err(LineFault::WrongCells {
        found: u32::try_from(row.cells.len()).unwrap_or(u32::MAX),
        wanted: u32::try_from(columns).unwrap_or(u32::MAX),
    })
}
