//! A `CFPackage` of 1EdTech CASE 1.1 (Competencies and Academic Standards Exchange).
//!
//! Read are `CFDocument.title` and `language`; of `CFItems` `language`, `identifier`, `fullStatement`,
//! `abbreviatedStatement`, `humanCodingScheme`, `educationLevel`, `listEnumeration`; of
//! `CFAssociations` `isChildOf` and `precedes`. All else is passed over. (Names from
//! memory of the published information model.)

use super::draft::{ConceptDraft, check_text, own_id};
use super::{
    CatalogueReading, MOST_CODE_CHARS, MOST_I_CAN_CHARS, MOST_PACKAGE_ITEMS, MOST_TITLE_CHARS,
};
use crate::table::{LineFault, LineRefused, cut, without_mark};
use crate::{Language, Text};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

fn text<'a>(value: &'a Value, name: &str) -> &'a str {
    value.get(name).and_then(Value::as_str).unwrap_or("").trim()
}

/// White space of every kind as one space: a statement may come with line ends.
fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn not_a_package(at: &str, detail: &str) -> LineRefused {
    LineRefused::at(
        at,
        LineFault::NotAPackage {
            detail: cut(detail, 120),
        },
    )
}

/// The start of a statement that fits a title.
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

/// A school grade out of `educationLevel`, such as `["04"]`; nothing for several or none.
fn grade_of(item: &Value) -> Option<u8> {
    let levels = item.get("educationLevel")?;
    let one = match levels {
        Value::Array(list) => match list.as_slice() {
            [one] => one.as_str()?,
            _ => return None,
        },
        Value::String(text) => text,
        _ => return None,
    };
    one.trim()
        .parse::<u8>()
        .ok()
        .filter(|grade| (1..=12).contains(grade))
}

/// The language of an item or a document; `else_in` if it names none.
fn language_of(value: &Value, else_in: Language) -> Result<Language, LineFault> {
    match text(value, "language") {
        "" => Ok(else_in),
        tag => Language::lookup(tag)
            .map_err(|unknown| LineFault::UnknownLanguage { text: unknown.tag }),
    }
}

/// What associations of one type say: origin and destination of each.
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

pub(super) fn read(bytes: &[u8], main: Language, reading: &mut CatalogueReading) {
    let package: Value = match serde_json::from_slice(without_mark(bytes)) {
        Ok(package) => package,
        Err(error) => {
            let line = u32::try_from(error.line()).unwrap_or(0);
            let fault = LineFault::NotAPackage {
                detail: cut(&error.to_string(), 120),
            };
            reading.refused.push(LineRefused::line(line, fault));
            return;
        }
    };
    let Some(document) = package.get("CFDocument").filter(|d| d.is_object()) else {
        reading
            .refused
            .push(not_a_package("CFDocument", "CFDocument is missing"));
        return;
    };
    reading.title = cut(text(document, "title"), 120);
    let main = match language_of(document, main) {
        Ok(language) => language,
        Err(fault) => {
            let refused = LineRefused::at("CFDocument.language", fault);
            reading.refused.push(refused);
            return;
        }
    };
    let Some(items) = package.get("CFItems").and_then(Value::as_array) else {
        reading
            .refused
            .push(not_a_package("CFItems", "CFItems is missing"));
        return;
    };
    if items.len() > MOST_PACKAGE_ITEMS {
        let fault = LineFault::TooMany {
            column: "CFItems".into(),
            found: u32::try_from(items.len()).unwrap_or(u32::MAX),
            most: u32::try_from(MOST_PACKAGE_ITEMS).unwrap_or(u32::MAX),
        };
        reading.refused.push(LineRefused::at("CFItems", fault));
        return;
    }
    let mut parents: BTreeMap<String, String> = BTreeMap::new();
    let mut with_parts: BTreeSet<String> = BTreeSet::new();
    for (child, parent) in pairs(&package, "isChildOf") {
        with_parts.insert(parent.clone());
        parents.entry(child).or_insert(parent);
    }
    let mut before: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for (first, then) in pairs(&package, "precedes") {
        before.entry(then).or_default().push(first);
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
        let identifier = text(item, "identifier");
        let statement = one_line(text(item, "fullStatement"));
        let code = one_line(text(item, "humanCodingScheme"));
        let checked = check_text(identifier, "identifier", MOST_CODE_CHARS)
            .map_err(|fault| (".identifier", fault))
            .and_then(|()| {
                if seen.insert(identifier) {
                    Ok(())
                } else {
                    let text = cut(identifier, 80);
                    Err((".identifier", LineFault::ConceptThere { text }))
                }
            })
            .and_then(|()| {
                check_text(&statement, "fullStatement", MOST_I_CAN_CHARS)
                    .map_err(|fault| (".fullStatement", fault))
            })
            .and_then(|()| match code.as_str() {
                "" => Ok(()),
                code => check_text(code, "humanCodingScheme", MOST_CODE_CHARS)
                    .map_err(|fault| (".humanCodingScheme", fault)),
            })
            .and_then(|()| language_of(item, main).map_err(|fault| (".language", fault)));
        let language = match checked {
            Ok(language) => language,
            Err((part, fault)) => {
                reading
                    .refused
                    .push(LineRefused::at(format!("{at}{part}"), fault));
                continue;
            }
        };
        let short = one_line(text(item, "abbreviatedStatement"));
        let named = if code.is_empty() {
            // A part of a UUID tells items without a code apart.
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
            before: before.remove(identifier).unwrap_or_default(),
            codes: (!code.is_empty()).then_some(code).into_iter().collect(),
            under: parents
                .get(identifier)
                .and_then(|parent| statements.get(parent.as_str()))
                .map(|statement| title_of(statement))
                .unwrap_or_default(),
            has_parts: with_parts.contains(identifier),
        });
    }
}
