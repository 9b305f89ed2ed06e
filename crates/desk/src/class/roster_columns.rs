//! Which columns of a roster hold names: by their headings, or else by what is in them.
//!
//! Headings of exports: 1EdTech OneRoster 1.2.1 CSV Binding (`givenName`, `familyName`,
//! `preferredGivenName`); the others are common words of spreadsheets, from memory.

use super::roster_name::is_title;
use super::roster_table::{Table, text, too_wide};
use crate::error::DeskError;
use std::collections::BTreeSet;

/// The columns that are read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Columns {
    /// Given and family name apart.
    Split {
        first: usize,
        preferred: Option<usize>,
        last: usize,
    },
    /// Whole names, and the number of headings if there are any.
    Whole { at: usize, headings: usize },
    /// Codes instead of names.
    Code { at: usize },
}

/// What a cell looks like.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Empty,
    Name,
    /// Letters and digits.
    Code,
    /// Digits, such as an id, a date or a telephone number.
    Number,
    Address,
}

const FIRST: [&str; 17] = [
    "given name",
    "givenname",
    "first name",
    "firstname",
    "first",
    "student first name",
    "student first",
    "legal first name",
    "first given name",
    "forename",
    "nombre",
    "nombres",
    "nombre de pila",
    "primer nombre",
    "nombre del estudiante",
    "nombre s",
    "stu first",
];
const PREFERRED: [&str; 9] = [
    "preferred name",
    "preferred first name",
    "preferredgivenname",
    "preferred given name",
    "nickname",
    "goes by",
    "called",
    "apodo",
    "nombre preferido",
];
const LAST: [&str; 14] = [
    "family name",
    "familyname",
    "last name",
    "lastname",
    "last",
    "surname",
    "student last name",
    "student last",
    "legal last name",
    "apellido",
    "apellidos",
    "primer apellido",
    "apellido s",
    "stu last",
];
const WHOLE: [&str; 26] = [
    "name",
    "student name",
    "student",
    "students",
    "full name",
    "fullname",
    "display name",
    "displayname",
    "sortable name",
    "last first",
    "last name first name",
    "name last first",
    "student name last first",
    "first last",
    "pupil",
    "pupil name",
    "child",
    "estudiante",
    "alumno",
    "alumna",
    "alumnos",
    "nombre completo",
    "nombre y apellidos",
    "apellidos y nombre",
    "code",
    "código",
];
/// Headings of columns that no name is in.
const OTHER: [&str; 48] = [
    "no",
    "nr",
    "number",
    "id",
    "student id",
    "studentid",
    "local id",
    "state id",
    "sis id",
    "sourcedid",
    "identifier",
    "user id",
    "sis user id",
    "sis login id",
    "login",
    "login id",
    "username",
    "password",
    "email",
    "e mail",
    "email address",
    "student email",
    "correo",
    "correo electrónico",
    "grade",
    "grades",
    "grade level",
    "grado",
    "homeroom",
    "teacher",
    "maestra",
    "section",
    "period",
    "class",
    "gender",
    "sex",
    "sexo",
    "dob",
    "birthdate",
    "birth date",
    "date of birth",
    "fecha de nacimiento",
    "phone",
    "address",
    "status",
    "role",
    "middle",
    "middle name",
];

/// A heading in lower case, with single spaces for all other signs.
fn heading(cell: &str) -> String {
    let words = cell.split(|c: char| !c.is_alphanumeric());
    let words: Vec<String> = words
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect();
    words.join(" ")
}

/// What a cell looks like.
pub(super) fn kind(cell: &str) -> Kind {
    let any = |test: fn(char) -> bool| cell.chars().any(test);
    let letters = any(char::is_alphabetic);
    match (letters, any(|c| c.is_numeric())) {
        _ if cell.contains('@') && !cell.contains(' ') => Kind::Address,
        // A number before a name or an address behind it does not make a code.
        (true, true) if cell.split_whitespace().count() > 1 => Kind::Name,
        (true, true) => Kind::Code,
        (true, false) => Kind::Name,
        (false, true) => Kind::Number,
        (false, false) => Kind::Empty,
    }
}

/// The columns of a heading row; `None` if the cells are no headings.
fn by_headings(cells: &[String]) -> Option<Columns> {
    let headings: Vec<String> = cells.iter().map(|cell| heading(cell)).collect();
    let of = |words: &[&str]| headings.iter().position(|h| words.contains(&h.as_str()));
    let filled = headings.iter().filter(|h| !h.is_empty()).count();
    let known = headings.iter().filter(|h| {
        let h = h.as_str();
        [&FIRST[..], &PREFERRED, &LAST, &WHOLE, &OTHER]
            .iter()
            .any(|words| words.contains(&h))
    });
    let known = known.count();
    // A student may be called as a column is, and an export may have columns of its own.
    if known * 2 <= filled && known < 3 {
        return None;
    }
    let preferred = of(&PREFERRED);
    match (of(&FIRST), of(&LAST), of(&WHOLE)) {
        (Some(first), Some(last), _) => Some(Columns::Split {
            first,
            preferred,
            last,
        }),
        (Some(at), None, _) | (None, _, Some(at)) => Some(Columns::Whole {
            at,
            headings: cells.len(),
        }),
        (None, None, None) => preferred.map(|at| Columns::Whole {
            at,
            headings: cells.len(),
        }),
        (None, Some(_), None) => None,
    }
}

impl Columns {
    /// Whether a row repeats the headings.
    pub fn is_heading(&self, cells: &[String]) -> bool {
        by_headings(cells).is_some()
    }
}

/// What a column looks like.
#[derive(Default)]
struct Column {
    names: usize,
    codes: usize,
    numbers: usize,
    filled: usize,
    /// Digests would be smaller, but these live only while the columns are chosen.
    different: BTreeSet<String>,
    /// Cells that begin with a space, as after the comma of "Last, First".
    spaced: usize,
}

impl Column {
    fn holds_names(&self) -> bool {
        let mostly = self.names * 2 > self.filled;
        // A homeroom, a teacher or a gender is the same for many.
        let varied = self.filled < 4 || self.different.len() * 2 > self.filled;
        mostly && varied
    }
}

/// Finds the columns of a table.
pub(super) fn columns(table: &mut Table<'_>, delimiter: Option<u8>) -> Result<Columns, DeskError> {
    let mut found: Vec<Column> = Vec::new();
    while let Some(record) = table.next().map_err(too_wide)? {
        let cells: Vec<String> = record.fields().map(|field| text(Some(field))).collect();
        if let Some(columns) = by_headings(&cells) {
            return Ok(columns);
        }
        let filled = cells.iter().filter(|cell| !cell.is_empty()).count();
        if filled == 1 && cells.iter().any(|cell| is_title(cell)) {
            continue;
        }
        found.resize_with(found.len().max(cells.len()), Column::default);
        for (nth, (column, cell)) in found.iter_mut().zip(&cells).enumerate() {
            let kind = kind(cell);
            column.filled += usize::from(kind != Kind::Empty);
            column.names += usize::from(kind == Kind::Name);
            column.codes += usize::from(kind == Kind::Code);
            column.numbers += usize::from(kind == Kind::Number);
            column.spaced += usize::from(record.get(nth).is_some_and(|f| f.first() == Some(&b' ')));
            if kind == Kind::Name {
                column.different.insert(cell.to_lowercase());
            }
        }
    }
    let names: Vec<usize> = (found.iter().enumerate())
        .filter(|(_, column)| column.holds_names())
        .map(|(at, _)| at)
        .collect();
    Ok(match *names.as_slice() {
        [one] => Columns::Whole {
            at: one,
            headings: 0,
        },
        [one, two, ..] => {
            let spaced = found
                .get(two)
                .is_some_and(|column| column.spaced * 2 > column.filled);
            let (first, last) = if delimiter == Some(b',') && spaced {
                (two, one)
            } else {
                (one, two)
            };
            Columns::Split {
                first,
                preferred: None,
                last,
            }
        }
        [] => {
            let most = |count: fn(&Column) -> usize| {
                (found.iter()).position(|column| count(column) * 2 > column.filled)
            };
            let at = most(|column| column.codes).or_else(|| most(|column| column.numbers));
            Columns::Code {
                at: at.unwrap_or(0),
            }
        }
    })
}
