//! A `CFPackage` of 1EdTech CASE 1.1 (Competencies and Academic Standards Exchange).
//!
//! Reads `title` and `language` of `CFDocument`; `language`, `identifier`, `fullStatement`,
//! `abbreviatedStatement`, `humanCodingScheme` and `educationLevel` of `CFItems`; the
//! `CFAssociations` of the types `isChildOf` and `precedes`. Ignores everything else. (The
//! names are from memory of the published information model.)

use super::draft::{ConceptDraft, MOST_CODE_CHARS, MOST_I_CAN_CHARS, MOST_TITLE_CHARS, own_id};
use super::reading::CatalogueReading;
use crate::table::{LineFault, LineRefused, Lines, check_count, check_string, cut, without_mark};
use crate::{GRADES, Language, Text};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// The most items of a package.
const MOST_PACKAGE_ITEMS: usize = 20_000;

fn text<'a>(value: &'a Value, name: &str) -> &'a str {
    value.get(name).and_then(Value::as_str).unwrap_or("").trim()
}

/// Returns the text with white space of every kind as one space, because a statement may
/// have several lines.
fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn missing(member: &str) -> LineRefused {
    let detail = format!("{member} is missing");
    LineRefused::at(member, LineFault::NotAPackage { detail })
}

/// Returns the statement, or as many of its first words as fit a title.
fn title_of(statement: &str) -> String {
    if statement.chars().count() <= MOST_TITLE_CHARS {
        return statement.to_owned();
    }
    let start: String = statement.chars().take(MOST_TITLE_CHARS - 1).collect();
    let whole = start
        .rsplit_once(' ')
        .map_or(start.as_str(), |(words, _)| words);
    format!("{}…", whole.trim_end_matches([',', ';', ':', '.']))
}

/// Returns the school grade of `educationLevel`, such as `["04"]`; nothing for several or
/// none.
fn grade_of(item: &Value) -> Option<u8> {
    let level = match item.get("educationLevel")? {
        Value::Array(list) => match list.as_slice() {
            [only] => only.as_str()?,
            _ => return None,
        },
        Value::String(text) => text,
        _ => return None,
    };
    level
        .trim()
        .parse()
        .ok()
        .filter(|grade| GRADES.contains(grade))
}

/// Returns the language of an item or a document; `main` if it names none.
fn language_of(value: &Value, main: Language) -> Result<Language, LineFault> {
    match text(value, "language") {
        "" => Ok(main),
        tag => Language::lookup(tag)
            .map_err(|unknown| LineFault::UnknownLanguage { text: unknown.tag }),
    }
}

/// Returns the associations of one type: origin and destination of each.
fn pairs(package: &Value, kind: &str) -> Vec<(String, String)> {
    let node = |association: &Value, name: &str| {
        association
            .get(name)
            .map(|uri| text(uri, "identifier").to_owned())
            .unwrap_or_default()
    };
    package
        .get("CFAssociations")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .filter(|association| text(association, "associationType") == kind)
        .map(|association| {
            (
                node(association, "originNodeURI"),
                node(association, "destinationNodeURI"),
            )
        })
        .filter(|(origin, destination)| !origin.is_empty() && !destination.is_empty())
        .collect()
}

/// Adds the title and the drafts of a package to `reading`, and the items that are refused.
///
/// # Errors
/// Fails if the file is not a package.
pub(super) fn read(
    bytes: &[u8],
    main: Language,
    reading: &mut CatalogueReading,
) -> Result<(), LineRefused> {
    let package: Value = serde_json::from_slice(without_mark(bytes)).map_err(|error| {
        let detail = cut(&error.to_string(), 120);
        let line = u32::try_from(error.line()).unwrap_or(0);
        LineRefused::line(line, LineFault::NotAPackage { detail })
    })?;
    let document = package
        .get("CFDocument")
        .filter(|document| document.is_object())
        .ok_or_else(|| missing("CFDocument"))?;
    reading.title = cut(text(document, "title"), 120);
    let main = language_of(document, main)
        .map_err(|fault| LineRefused::at("CFDocument.language", fault))?;
    let items = package
        .get("CFItems")
        .and_then(Value::as_array)
        .ok_or_else(|| missing("CFItems"))?;
    check_count(items.len(), MOST_PACKAGE_ITEMS, "CFItems")
        .map_err(|fault| LineRefused::at("CFItems", fault))?;
    let mut parents: BTreeMap<String, String> = BTreeMap::new();
    for (child, parent) in pairs(&package, "isChildOf") {
        parents.entry(child).or_insert(parent);
    }
    let mut prerequisites: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for (first, then) in pairs(&package, "precedes") {
        prerequisites.entry(then).or_default().push(first);
    }
    let statements: BTreeMap<&str, String> = items
        .iter()
        .map(|item| {
            (
                text(item, "identifier"),
                one_line(text(item, "fullStatement")),
            )
        })
        .collect();
    let mut seen: BTreeSet<&str> = BTreeSet::new();
    for (place, item) in items.iter().enumerate() {
        let at = format!("CFItems[{place}]");
        let checked = CheckedItem::of(item, main, &mut seen);
        let CheckedItem {
            identifier,
            statement,
            code,
            language,
        } = match checked {
            Ok(checked) => checked,
            Err((member, fault)) => {
                let refused = LineRefused::at(format!("{at}.{member}"), fault);
                reading.refused.push(refused);
                continue;
            }
        };
        let short = one_line(text(item, "abbreviatedStatement"));
        let named = if code.is_empty() {
            // A part of the UUID, because items without a code may have the same title.
            format!(
                "{} {}",
                title_of(&statement),
                identifier.get(..8).unwrap_or(identifier)
            )
        } else {
            code.clone()
        };
        reading.drafts.push(ConceptDraft {
            line: 0,
            at,
            key: identifier.to_owned(),
            id: own_id(&named),
            title: Text::one(
                language,
                title_of(if short.is_empty() { &statement } else { &short }),
            ),
            i_can: Text::one(language, statement.clone()),
            strand: None,
            grade: grade_of(item),
            before: prerequisites.remove(identifier).unwrap_or_default(),
            codes: (!code.is_empty()).then_some(code).into_iter().collect(),
            under: parents
                .get(identifier)
                .and_then(|parent| statements.get(parent.as_str()))
                .map(|statement| title_of(statement))
                .unwrap_or_default(),
        });
    }
    Ok(())
}

/// The members of an item that are checked.
struct CheckedItem<'a> {
    identifier: &'a str,
    statement: String,
    code: String,
    language: Language,
}

impl<'a> CheckedItem<'a> {
    /// Checks an item. `seen` are the identifiers so far. A fault comes with the name of
    /// its member.
    fn of(
        item: &'a Value,
        main: Language,
        seen: &mut BTreeSet<&'a str>,
    ) -> Result<Self, (&'static str, LineFault)> {
        let check = |text: &str, member: &'static str, most_chars| {
            check_string(text, member, most_chars, Lines::One).map_err(|fault| (member, fault))
        };
        let identifier = text(item, "identifier");
        check(identifier, "identifier", MOST_CODE_CHARS)?;
        if !seen.insert(identifier) {
            let text = cut(identifier, 80);
            return Err(("identifier", LineFault::ConceptThere { text }));
        }
        let statement = one_line(text(item, "fullStatement"));
        check(&statement, "fullStatement", MOST_I_CAN_CHARS)?;
        let code = one_line(text(item, "humanCodingScheme"));
        if !code.is_empty() {
            check(&code, "humanCodingScheme", MOST_CODE_CHARS)?;
        }
        let language = language_of(item, main).map_err(|fault| ("language", fault))?;
        Ok(Self {
            identifier,
            statement,
            code,
            language,
        })
    }
}
