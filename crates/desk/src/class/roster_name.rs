//! Parts of a name, and lines of a roster that name no student.

use super::views::{LineReading, RosterLine};
use icu_normalizer::ComposingNormalizerBorrowed;
use std::collections::BTreeSet;

/// Words that begin the title of a list, in lower case.
const TITLES: [&str; 44] = [
    "advisory",
    "attendance",
    "block",
    "class",
    "clase",
    "course",
    "curso",
    "date",
    "docente",
    "estudiantes",
    "fecha",
    "grade",
    "grado",
    "group",
    "grupo",
    "homeroom",
    "hour",
    "hora",
    "lista",
    "list",
    "maestra",
    "maestro",
    "page",
    "period",
    "periodo",
    "período",
    "printed",
    "profesor",
    "profesora",
    "room",
    "roster",
    "salón",
    "school",
    "escuela",
    "section",
    "sección",
    "semester",
    "students",
    "teacher",
    "term",
    "total",
    "year",
    "alumnos",
    "página",
];

/// What follows a family name and is no given name.
const SUFFIXES: [&str; 6] = ["jr", "sr", "ii", "iii", "iv", "v"];

/// The same text with letters and their accents in one, so that equal names are equal.
pub(super) fn composed(text: &str) -> String {
    (ComposingNormalizerBorrowed::new_nfc())
        .normalize(text)
        .into_owned()
}

/// Removes spaces, quotes and signs of a list around a name.
pub(super) fn bare(text: &str) -> String {
    let around =
        |c: char| c.is_whitespace() || matches!(c, '"' | '“' | '”' | '•' | '*' | '·' | '–');
    let text = text.trim_matches(around).trim_start_matches("- ");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Whether a line is the title of a list or a remark below it, such as "Period 2" or "Total: 28".
pub(super) fn is_title(line: &str) -> bool {
    let line = bare(line).to_lowercase();
    let words: Vec<&str> = line
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .collect();
    let Some(first) = words.first() else {
        return true;
    };
    let titled = TITLES.contains(first);
    let marked = line.contains(':') || line.contains(" - ") || line.contains(" – ");
    let counted = line.chars().any(|c| c.is_ascii_digit());
    let all = words.iter().all(|word| {
        TITLES.contains(word) || matches!(*word, "of" | "the" | "de" | "la" | "names" | "student")
    });
    titled && (all || marked || counted && words.len() > 1)
        || words.len() > 1 && TITLES.contains(words.last().unwrap_or(first)) && counted
        || marked && words.iter().any(|word| TITLES.contains(word))
        || all
        || line.ends_with(':')
}

/// Splits a whole name into given name and family name. A code is all given name.
///
/// "Last, First" is split at the comma; else the first word is the given name. A nickname in
/// brackets replaces the given name; numbers before a name, addresses, remarks in brackets and
/// middle initials are dropped.
pub(super) fn split(whole: &str) -> (String, String) {
    let whole = without_address(whole);
    let (whole, nickname) = without_brackets(&without_number(
        whole.trim_start_matches(['•', '*', '-', ' ']),
    ));
    let (before, after) = match whole.split_once(',') {
        Some((before, after)) => (before, Some(after)),
        None => (whole.as_str(), None),
    };
    let (given, family) = match after.map(bare) {
        Some(after) if !is_suffix(&after) && !after.is_empty() => {
            let given = after.split(',').next().unwrap_or_default();
            (without_initials(given), bare(before))
        }
        _ => two_words(before),
    };
    let given = if given.is_empty() && nickname.is_none() {
        return (family, String::new());
    } else {
        given
    };
    (nickname.unwrap_or(given), family)
}

fn is_suffix(text: &str) -> bool {
    SUFFIXES.contains(&text.trim_end_matches('.').to_lowercase().as_str())
}

/// The first word, and the rest.
fn two_words(text: &str) -> (String, String) {
    let text = bare(text);
    let alphabetic = !text.chars().any(char::is_numeric);
    match text.split_once(' ') {
        Some((first, rest)) if alphabetic => {
            let family = rest.split(' ').skip_while(|word| is_initial(word));
            let family = family.collect::<Vec<_>>().join(" ");
            (
                first.to_owned(),
                if family.is_empty() {
                    rest.to_owned()
                } else {
                    family
                },
            )
        }
        _ => (text, String::new()),
    }
}

fn is_initial(word: &str) -> bool {
    let letters: Vec<char> = word.trim_end_matches('.').chars().collect();
    matches!(letters.as_slice(), [one] if one.is_uppercase())
}

fn without_initials(given: &str) -> String {
    let mut words: Vec<&str> = given.split_whitespace().collect();
    while words.len() > 1 && words.last().is_some_and(|word| is_initial(word)) {
        words.pop();
    }
    words.join(" ")
}

/// Drops a number before a name: "1.", "12)", "03 -", "#4".
fn without_number(text: &str) -> String {
    let rest = text
        .trim_start_matches('#')
        .trim_start_matches(|c: char| c.is_ascii_digit());
    if rest.len() == text.len() || text.len() - rest.len() > 4 {
        return text.to_owned();
    }
    let name = rest.trim_start_matches(['.', ')', ':', '-', ' ', '\t']);
    let parted = name.len() < rest.len();
    if parted && name.chars().next().is_some_and(char::is_alphabetic) {
        name.to_owned()
    } else {
        text.to_owned()
    }
}

/// Drops an e-mail address, also between angle brackets.
fn without_address(text: &str) -> String {
    let words = text.split_whitespace().filter(|word| !word.contains('@'));
    words.collect::<Vec<_>>().join(" ")
}

/// Drops what is between brackets or inner quotes, and returns it if it is a nickname.
fn without_brackets(text: &str) -> (String, Option<String>) {
    for (open, close) in [('(', ')'), ('[', ']'), ('"', '"'), ('“', '”')] {
        let Some((before, rest)) = text.split_once(open) else {
            continue;
        };
        let Some((inside, after)) = rest.split_once(close) else {
            continue;
        };
        // Quotes around a whole name are no nickname.
        if before.trim().is_empty() {
            continue;
        }
        let outer = bare(&format!("{before} {after}")).replace(" ,", ",");
        let mut letters = inside.chars();
        let one_word = inside
            .chars()
            .all(|c| c.is_alphabetic() || matches!(c, '-' | '\'' | '’'));
        let named = one_word
            && letters.next().is_some_and(char::is_uppercase)
            && letters.any(char::is_lowercase);
        return (outer, named.then(|| inside.to_owned()));
    }
    (text.to_owned(), None)
}

/// Whether at least three names all begin with the same word and end differently.
pub(super) fn same_start(lines: &[RosterLine]) -> bool {
    let mut names = lines
        .iter()
        .filter(|line| line.reading == LineReading::Name);
    let Some(first) = names.next() else {
        return false;
    };
    let mut ends = BTreeSet::from([first.last.as_str()]);
    for line in names {
        if line.first != first.first || line.last.is_empty() || !ends.insert(&line.last) {
            return false;
        }
    }
    ends.len() > 2
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whole_names_are_split_by_comma_or_by_the_first_word() {
        for (whole, given, family) in [
            ("Patel, Anika", "Anika", "Patel"),
            ("Anika Patel", "Anika", "Patel"),
            ("García López, María José", "María José", "García López"),
            ("Smith, Alexander (Alex)", "Alex", "Smith"),
            ("Smith, Alexander (she/her)", "Alexander", "Smith"),
            ("Smith (IEP), Lea", "Lea", "Smith"),
            ("Alexander “Alex” Smith", "Alex", "Smith"),
            ("O'Brien, Mary-Kate R.", "Mary-Kate", "O'Brien"),
            ("John Q. Public", "John", "Public"),
            ("John Smith, Jr.", "John", "Smith"),
            ("12) Ana Ruiz", "Ana", "Ruiz"),
            ("#4 Ana Ruiz", "Ana", "Ruiz"),
            ("Ana Ruiz <ana@example.org>", "Ana", "Ruiz"),
            ("Ana", "Ana", ""),
            ("Room 4 Fox", "Room 4 Fox", ""),
            ("2B", "2B", ""),
            ("7", "7", ""),
            ("李明", "李明", ""),
            ("Patel,", "Patel", ""),
        ] {
            assert_eq!(split(whole), (given.into(), family.into()), "{whole}");
        }
    }

    #[test]
    fn titles_are_known_and_names_are_no_titles() {
        for title in [
            "Period 2",
            "Class list",
            "Roster",
            "Teacher: Ms. Fox",
            "Total: 28",
            "Students (28)",
            "Grade 4 - Room 12",
            "4th period",
            "Lista de clase",
            "Periodo 3",
            "Page 1 of 2",
            "Math:",
        ] {
            assert!(is_title(title), "{title}");
        }
        for name in [
            "Paige",
            "Page Turner",
            "Grady",
            "Ana",
            "Class",
            "2B",
            "Rosita",
            "Room",
            "Ann-Marie",
        ] {
            let short = matches!(name, "Class" | "Room");
            assert_eq!(is_title(name), short, "{name}");
        }
    }
}
