//! Reads a roster from files: any CSV with a column of names, or the CSV files of a OneRoster 1.1
//! or 1.2 export.
//!
//! Only given names (or codes) are kept. Each record is read into the same buffer, and no other
//! column of a person, such as e-mail or password, is decoded. Sources: RFC 4180; 1EdTech OneRoster
//! 1.1.1 CSV Tables and OneRoster 1.2.1 CSV Binding, both 2023.

use super::roster::{LONGEST_NAME_CHARACTERS, MOST_SEATS};
use super::roster_table::{Record, Table, TooWide};
use super::views::{RosterClass, RosterFile};
use crate::error::{DeskError, Field, Rule};
use std::collections::{BTreeMap, BTreeSet};

/// Bytes of a roster file at most.
pub const MOST_ROSTER_BYTES: u64 = 8 * 1024 * 1024;

/// Headings of a column of names, in lower case, best first.
const NAME_HEADINGS: [&str; 16] = [
    "given name",
    "givenname",
    "preferred name",
    "first name",
    "firstname",
    "first",
    "name",
    "student",
    "student name",
    "code",
    "nombre",
    "nombre de pila",
    "primer nombre",
    "estudiante",
    "alumno",
    "código",
];

/// A picked file: its name and its bytes.
pub type NamedBytes = (String, Vec<u8>);

/// Reads the classes in picked files. If a OneRoster `users.csv` is among them, `enrollments.csv`
/// and `classes.csv` decide who is in which class. Otherwise each file is one class.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if no file has a name, or a file is not text in UTF-8.
pub fn read_roster_files(files: &[NamedBytes]) -> Result<RosterFile, DeskError> {
    let named = |wanted: &str| {
        files.iter().find(|(name, _)| {
            let own = name.rsplit(['/', '\\']).next().unwrap_or(name);
            own.eq_ignore_ascii_case(wanted)
        })
    };
    let found = match named("users.csv").filter(|(_, bytes)| is_one_roster(bytes)) {
        Some((_, users)) => one_roster(
            users,
            named("enrollments.csv").map(|f| f.1.as_slice()),
            named("classes.csv").map(|f| f.1.as_slice()),
            named("roles.csv").map(|f| f.1.as_slice()),
        )?,
        None => RosterFile {
            classes: files
                .iter()
                .map(|(name, bytes)| plain(name, bytes))
                .collect::<Result<_, _>>()?,
        },
    };
    if found.classes.iter().all(|class| class.names.is_empty()) {
        return Err(DeskError::invalid(Field::Roster, Rule::Empty));
    }
    Ok(found)
}

fn not_text(_: impl std::fmt::Display) -> DeskError {
    DeskError::invalid(Field::Roster, Rule::NotText)
}

fn too_wide(_: TooWide) -> DeskError {
    DeskError::invalid(Field::Roster, Rule::TooLong)
}

/// Removes the byte order mark that spreadsheets add.
fn without_mark(bytes: &[u8]) -> &[u8] {
    bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes)
}

fn text(field: Option<&[u8]>) -> Result<&str, DeskError> {
    std::str::from_utf8(field.unwrap_or_default())
        .map(str::trim)
        .map_err(not_text)
}

fn is_one_roster(bytes: &[u8]) -> bool {
    let first = without_mark(bytes).split(|b| *b == b'\n').next();
    let heading = String::from_utf8_lossy(first.unwrap_or_default()).into_owned();
    heading.contains("sourcedId") && heading.contains("givenName")
}

/// The name, if it is valid.
fn name(text: &str) -> Option<String> {
    let text = text.trim();
    let fits = !text.is_empty()
        && text.chars().count() <= LONGEST_NAME_CHARACTERS
        && !text.chars().any(char::is_control);
    fits.then(|| text.to_owned())
}

/// Adds a name to a class, or counts a line without one.
fn put(class: &mut RosterClass, found: Option<String>) {
    match found {
        Some(name) if class.names.len() < MOST_SEATS => class.names.push(name),
        _ => class.left_out += 1,
    }
}

/// Reads a class from one table. The heading decides the column; without a heading it is the first.
fn plain(file_name: &str, bytes: &[u8]) -> Result<RosterClass, DeskError> {
    let bytes = without_mark(bytes);
    let stem = file_name.rsplit(['/', '\\']).next().unwrap_or(file_name);
    let mut class = RosterClass {
        title: stem
            .rsplit_once('.')
            .map_or(stem, |(stem, _)| stem)
            .to_owned(),
        names: Vec::new(),
        left_out: 0,
    };
    let mut table = Table::new(bytes, delimiter(bytes));
    let mut column = None;
    while let Some(record) = table.next().map_err(too_wide)? {
        let Some(at) = column else {
            let heading = heading_of(&record);
            column = Some(heading.unwrap_or(0));
            if heading.is_none() {
                put(&mut class, name(text(record.get(0))?));
            }
            continue;
        };
        if record.fields().all(<[u8]>::is_empty) {
            continue;
        }
        put(&mut class, name(text(record.get(at))?));
    }
    Ok(class)
}

/// The column with the best heading, if the record holds headings.
fn heading_of(record: &Record<'_>) -> Option<usize> {
    let headings: Vec<String> = record
        .fields()
        .map(|field| String::from_utf8_lossy(field).trim().to_lowercase())
        .collect();
    NAME_HEADINGS
        .iter()
        .find_map(|wanted| headings.iter().position(|h| h == wanted))
}

/// The delimiter of the first line.
fn delimiter(bytes: &[u8]) -> u8 {
    let first = bytes.split(|b| *b == b'\n').next().unwrap_or_default();
    let count = |sign: u8| first.iter().filter(|b| **b == sign).count();
    [b'\t', b';', b',']
        .into_iter()
        .max_by_key(|sign| count(*sign))
        .filter(|sign| count(*sign) > 0)
        .unwrap_or(b',')
}

/// Reads the rows of a OneRoster file. `read` gets the values of the wanted columns; a missing column
/// gives an empty value. Rows marked as deleted are left out.
fn rows<const N: usize>(
    bytes: &[u8],
    columns: [&str; N],
    mut read: impl FnMut([&str; N]) -> Result<(), DeskError>,
) -> Result<(), DeskError> {
    let mut table = Table::new(without_mark(bytes), b',');
    let Some(header) = table.next().map_err(too_wide)? else {
        return Ok(());
    };
    // Names of columns are case-sensitive.
    let at = |wanted: &str| header.fields().position(|h| h == wanted.as_bytes());
    let places = columns.map(at);
    let status = at("status");
    while let Some(record) = table.next().map_err(too_wide)? {
        if status.is_some_and(|at| record.get(at) == Some(b"tobedeleted")) {
            continue;
        }
        let mut wished = [""; N];
        for (field, place) in wished.iter_mut().zip(places) {
            if let Some(place) = place {
                *field = text(record.get(place))?;
            }
        }
        read(wished)?;
    }
    Ok(())
}

fn one_roster(
    users: &[u8],
    enrollments: Option<&[u8]>,
    classes: Option<&[u8]>,
    roles: Option<&[u8]>,
) -> Result<RosterFile, DeskError> {
    // In version 1.2, roles.csv has the students.
    let mut students: BTreeSet<String> = BTreeSet::new();
    if let Some(roles) = roles {
        rows(roles, ["userSourcedId", "role"], |[user, role]| {
            if role == "student" {
                students.insert(user.to_owned());
            }
            Ok(())
        })?;
    }
    // The order of the file becomes the order of the seats.
    let mut people: Vec<(String, Option<String>)> = Vec::new();
    let columns = [
        "sourcedId",
        "enabledUser",
        "role",
        "givenName",
        "preferredGivenName",
    ];
    rows(users, columns, |[id, enabled, role, given, preferred]| {
        let is_student = match (role, roles) {
            ("", Some(_)) => students.contains(id),
            ("", None) => true,
            (role, _) => role == "student",
        };
        if is_student && enabled != "false" && !id.is_empty() {
            let called = if preferred.is_empty() {
                given
            } else {
                preferred
            };
            people.push((id.to_owned(), name(called)));
        }
        Ok(())
    })?;
    let Some(enrollments) = enrollments else {
        let mut class = RosterClass {
            title: String::new(),
            names: Vec::new(),
            left_out: 0,
        };
        for (_, called) in people {
            put(&mut class, called);
        }
        return Ok(RosterFile {
            classes: vec![class],
        });
    };
    let mut titles: BTreeMap<String, String> = BTreeMap::new();
    if let Some(classes) = classes {
        rows(classes, ["sourcedId", "title"], |[id, title]| {
            titles.insert(id.to_owned(), title.to_owned());
            Ok(())
        })?;
    }
    let mut members: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let columns = ["classSourcedId", "userSourcedId", "role"];
    rows(enrollments, columns, |[class, user, role]| {
        if role == "student" && !class.is_empty() {
            members
                .entry(class.to_owned())
                .or_default()
                .insert(user.to_owned());
        }
        Ok(())
    })?;
    let mut found: Vec<RosterClass> = members
        .into_iter()
        .map(|(id, seats)| {
            let mut class = RosterClass {
                title: titles.get(&id).cloned().unwrap_or(id),
                names: Vec::new(),
                left_out: 0,
            };
            for (user, called) in &people {
                if seats.contains(user) {
                    put(&mut class, called.clone());
                }
            }
            class
        })
        .filter(|class| !class.names.is_empty())
        .collect();
    found.sort_by(|a, b| a.title.cmp(&b.title));
    Ok(RosterFile { classes: found })
}
