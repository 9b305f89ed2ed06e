//! Tables of comma-separated text with a heading. A line with a fault is refused by its
//! number, and the other lines are read.

use crate::{Language, Text};
use std::collections::BTreeMap;

mod fault;
mod limits;
mod rows;

pub use fault::{LineFault, LineRefused, cut};
pub use limits::{Lines, check_count, check_string, check_text};
pub use rows::without_mark;

use rows::{Row, RowFault, Rows};

/// A table whose heading was read.
pub struct Table<'a> {
    names: Vec<String>,
    rows: Rows<'a>,
}

/// A line of a table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    /// From 1.
    pub line: u32,
    /// The cells by the names of their columns.
    cells: BTreeMap<String, String>,
    /// The language of the columns without a tag.
    main: Language,
}

impl<'a> Table<'a> {
    /// Reads the heading. `columns` are the names that it may have, `translated` those of
    /// them that it may also have with the tag of a language behind the name, such as
    /// `title_es`; `needed` are those that it must have.
    ///
    /// # Errors
    /// Returns every fault of the heading.
    pub fn read(
        bytes: &'a [u8],
        columns: &[&str],
        translated: &[&str],
        needed: &[&str],
    ) -> Result<Self, Vec<LineRefused>> {
        let mut rows = Rows::new(bytes);
        let row = match rows.next_row() {
            None => return Err(vec![LineRefused::line(1, LineFault::NotKnown)]),
            Some(Err((line, fault))) => return Err(vec![LineRefused::line(line, fault.into())]),
            Some(Ok(row)) => row,
        };
        let in_languages = translated
            .iter()
            .flat_map(|name| Language::all().iter().map(|tag| column_in(name, *tag)));
        let known = columns.iter().map(|name| (*name).to_owned());
        let known: Vec<String> = known.chain(in_languages).collect();
        let names = heading(&row, &known, needed)?;
        Ok(Self { names, rows })
    }

    /// Whether the heading has this column.
    #[must_use]
    pub fn has(&self, column: &str) -> bool {
        self.names.iter().any(|name| name == column)
    }

    /// Returns the next line that is not empty. `main` is the language of the columns
    /// without a tag.
    pub fn next_line(&mut self, main: Language) -> Option<Result<Line, LineRefused>> {
        let row = match self.rows.next_row()? {
            Ok(row) => row,
            Err((line, fault)) => return Some(Err(LineRefused::line(line, fault.into()))),
        };
        let Row { line, mut cells } = row;
        // Spreadsheets leave empty cells behind the last one.
        while cells.len() > self.names.len() && cells.last().is_some_and(String::is_empty) {
            cells.pop();
        }
        if cells.len() != self.names.len() {
            let fault = LineFault::WrongCells {
                found: u32::try_from(cells.len()).unwrap_or(u32::MAX),
                wanted: u32::try_from(self.names.len()).unwrap_or(u32::MAX),
            };
            return Some(Err(LineRefused::line(line, fault)));
        }
        let cells = self.names.iter().cloned().zip(cells).collect();
        Some(Ok(Line { line, cells, main }))
    }
}

impl Line {
    /// The cell of a column; empty if there is no such column.
    #[must_use]
    pub fn get(&self, column: &str) -> &str {
        self.cells.get(column).map_or("", String::as_str)
    }

    /// The language of the columns without a tag.
    #[must_use]
    pub fn main(&self) -> Language {
        self.main
    }

    /// The cell of a text in one language: from the column with the language's tag or, for
    /// the main language, from the column without a tag if that is filled in.
    #[must_use]
    pub fn get_in(&self, column: &str, language: Language) -> &str {
        match self.get(column) {
            plain if language == self.main && !plain.is_empty() => plain,
            _ => self.get(&column_in(column, language)),
        }
    }

    /// The text of a column in the languages in which it is filled in; nothing if there
    /// are none.
    #[must_use]
    pub fn text(&self, column: &str) -> Option<Text> {
        let texts: BTreeMap<Language, String> = Language::all()
            .iter()
            .map(|language| (*language, self.get_in(column, *language).to_owned()))
            .filter(|(_, text)| !text.is_empty())
            .collect();
        Text::try_from(texts).ok()
    }
}

/// The column of a text in one language.
#[must_use]
pub fn column_in(name: &str, language: Language) -> String {
    format!("{name}_{}", column_name(language.as_str()))
}

/// Makes the name of a column from the text of the heading: ignores case, and reads spaces
/// and hyphens as underscores.
fn column_name(text: &str) -> String {
    text.trim().to_lowercase().replace([' ', '-'], "_")
}

/// Returns the names of the columns, if all are known, each is there once, and none that is
/// needed is missing.
fn heading(row: &Row, known: &[String], needed: &[&str]) -> Result<Vec<String>, Vec<LineRefused>> {
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

impl From<RowFault> for LineFault {
    fn from(fault: RowFault) -> Self {
        match fault {
            RowFault::TooLong => Self::LineTooLong,
            RowFault::NotUtf8 => Self::NotUtf8,
            RowFault::LooseQuote => Self::LooseQuote,
        }
    }
}
