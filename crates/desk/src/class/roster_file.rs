//! Reads a roster from files: any table with names, or the CSV files of a OneRoster 1.1 or 1.2
//! export.
//!
//! Only names are kept. Each record is read into the same buffer, and no other column of a person,
//! such as e-mail or password, is decoded from a OneRoster file. Sources: RFC 4180; 1EdTech
//! OneRoster 1.1.1 CSV Tables and OneRoster 1.2.1 CSV Binding, both 2023.

use super::roster::{count_seats, lines_of, named};
use super::roster_table::{Table, too_wide};
use super::views::{LineReading, Roster, RosterFile, RosterLine};
use crate::error::{DeskError, Field, Rule};
use encoding_rs::{Encoding, WINDOWS_1252};
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

/// Bytes of a roster file at most.
pub const MOST_ROSTER_BYTES: u64 = 8 * 1024 * 1024;

/// A picked file: its name and its bytes.
pub type NamedBytes = (String, Vec<u8>);

/// Reads the classes in picked files. If a OneRoster `users.csv` is among them, `enrollments.csv`
/// and `classes.csv` decide who is in which class. Otherwise each file is one class.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if no file has a name, or a file is not text.
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
    let named =
        |line: &RosterLine| matches!(line.reading, LineReading::Name | LineReading::TooLong);
    if !found
        .classes
        .iter()
        .any(|class| class.lines.iter().any(named))
    {
        return Err(DeskError::invalid(Field::Roster, Rule::Empty));
    }
    Ok(found)
}

fn not_text(_: impl std::fmt::Display) -> DeskError {
    DeskError::invalid(Field::Roster, Rule::NotText)
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

/// The text of a file: Unicode, or as spreadsheets of western Windows save it.
fn decoded(bytes: &[u8]) -> Result<Cow<'_, str>, DeskError> {
    let text = match Encoding::for_bom(bytes) {
        Some((encoding, mark)) => {
            let rest = bytes.get(mark..).unwrap_or_default();
            (encoding.decode_without_bom_handling_and_without_replacement(rest))
                .ok_or_else(|| not_text("not in its encoding"))?
        }
        None => match std::str::from_utf8(bytes) {
            Ok(text) => Cow::Borrowed(text),
            Err(_) => WINDOWS_1252.decode_without_bom_handling(bytes).0,
        },
    };
    let control = |c: char| c.is_control() && !matches!(c, '\t' | '\r' | '\n');
    if text.chars().any(control) {
        return Err(not_text("control characters"));
    }
    Ok(text)
}

/// Reads a class from one table.
fn plain(file_name: &str, bytes: &[u8]) -> Result<Roster, DeskError> {
    let stem = file_name.rsplit(['/', '\\']).next().unwrap_or(file_name);
    Ok(Roster {
        title: stem
            .rsplit_once('.')
            .map_or(stem, |(stem, _)| stem)
            .to_owned(),
        lines: lines_of(decoded(bytes)?.as_bytes())?,
    })
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
    let mut people: Vec<(String, RosterLine)> = Vec::new();
    let columns = [
        "sourcedId",
        "enabledUser",
        "role",
        "givenName",
        "preferredGivenName",
        "familyName",
        "preferredFamilyName",
    ];
    let mut number = 1;
    let read = |[id, enabled, role, given, preferred, family, own_family]: [&str; 7]| {
        number += 1;
        let is_student = match (role, roles) {
            ("", Some(_)) => students.contains(id),
            ("", None) => true,
            (role, _) => role == "student",
        };
        if is_student && enabled != "false" && !id.is_empty() {
            let first = if preferred.is_empty() {
                given
            } else {
                preferred
            };
            let last = if own_family.is_empty() {
                family
            } else {
                own_family
            };
            people.push((id.to_owned(), named(number, first, last)));
        }
        Ok(())
    };
    rows(users, columns, read)?;
    let Some(enrollments) = enrollments else {
        return Ok(RosterFile {
            classes: vec![class_of(String::new(), people.iter().map(|(_, line)| line))],
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
    let mut found: Vec<Roster> = members
        .into_iter()
        .map(|(id, seats)| {
            let of_class = people.iter().filter(|(user, _)| seats.contains(user));
            let title = titles.get(&id).cloned().unwrap_or(id);
            class_of(title, of_class.map(|(_, line)| line))
        })
        .filter(|class| !class.lines.is_empty())
        .collect();
    found.sort_by(|a, b| a.title.cmp(&b.title));
    Ok(RosterFile { classes: found })
}

fn class_of<'p>(title: String, lines: impl Iterator<Item = &'p RosterLine>) -> Roster {
    let mut lines: Vec<RosterLine> = lines.cloned().collect();
    count_seats(&mut lines);
    Roster { title, lines }
}
