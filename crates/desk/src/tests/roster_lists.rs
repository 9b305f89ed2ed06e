//! Rosters in the shapes that exports and spreadsheets give, made up from published headings
//! (OneRoster 1.2.1) and common use. In a list, what is understood follows after "=====".

use super::lists::each;
use crate::{LineReading, Roster, RosterLine, read_roster, read_roster_files};

/// A line as the lists write it.
fn written(line: &RosterLine) -> String {
    let both = match line.last.as_str() {
        "" => line.first.clone(),
        last => format!("{} | {last}", line.first),
    };
    match line.reading {
        LineReading::Name => both,
        LineReading::Heading => format!("# {both}"),
        LineReading::TooLong => format!("> {both}"),
        LineReading::NoName => format!("? {both}"),
        LineReading::Full => format!("+ {both}"),
    }
}

fn all(roster: &Roster) -> Vec<String> {
    roster.lines.iter().map(written).collect()
}

#[test]
fn every_list_is_understood_pasted_and_from_a_file() {
    let mut count = 0;
    for (name, list, wanted) in each("roster-") {
        let wanted: Vec<&str> = wanted.lines().collect();
        assert_eq!(all(&read_roster(&list).unwrap()), wanted, "{name}, pasted");
        count += 1;
        // A mail program copies to the clipboard, and saves no such file.
        if list.contains(">;") {
            continue;
        }
        let windows = list.replace('\n', "\r\n");
        let mut utf_16 = vec![0xff, 0xfe];
        utf_16.extend(windows.encode_utf16().flat_map(u16::to_le_bytes));
        let marked = [b"\xef\xbb\xbf", windows.as_bytes()].concat();
        for bytes in [list.clone().into_bytes(), utf_16, marked] {
            let file = read_roster_files(&[("a/Room 4.csv".into(), bytes)]).unwrap();
            assert_eq!(file.classes[0].title, "Room 4");
            assert_eq!(all(&file.classes[0]), wanted, "{name}, from a file");
        }
    }
    assert_eq!(count, 27);
}

#[test]
fn a_table_of_western_windows_keeps_its_accents() {
    let bytes = b"Apellidos;Nombre\r\nGarc\xeda;Jos\xe9\r\n".to_vec();
    let file = read_roster_files(&[("a.csv".into(), bytes)]).unwrap();
    assert_eq!(
        all(&file.classes[0]),
        ["# Apellidos · Nombre", "José | García"]
    );
}

#[test]
fn an_accent_apart_becomes_one_letter_so_that_equal_names_are_equal() {
    let roster = read_roster("Jose\u{301} Ruiz\nJosé Ruiz").unwrap();
    assert_eq!(roster.lines[0].first, roster.lines[1].first);
}

#[test]
fn no_other_column_is_kept() {
    let roster = read_roster(
        "Name\tE-mail\tPassword\tPhone\nAmina Diallo\tamina@example.org\tsecret\t555 0100",
    );
    let kept = format!("{:?}", roster.unwrap());
    for other in ["example.org", "secret", "0100"] {
        assert!(!kept.contains(other), "{other}");
    }
}
