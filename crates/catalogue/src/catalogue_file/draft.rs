//! Drafts of concepts, and the concepts made of the picked ones.

use super::{
    MOST_CODE_CHARS, MOST_I_CAN_CHARS, MOST_OWN_CONCEPTS, MOST_PARTS, MOST_TITLE_CHARS, OWN_PREFIX,
};
use crate::table::{LineFault, LineRefused, column_in, cut};
use crate::{Concept, ConceptId, Language, Strand, Text};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::TS;

/// What could become a concept.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ConceptDraft {
    /// The line, from 1; 0 in a package.
    pub line: u32,
    /// The place in a package, such as `CFItems[3]`; empty in a table.
    pub at: String,
    /// How other drafts name it: an id, a code or a package's identifier.
    pub key: String,
    /// The id it will have.
    pub id: String,
    /// A short title.
    pub title: Text,
    /// The "I can" statement.
    pub i_can: Text,
    /// Its strand, once chosen.
    pub strand: Option<Strand>,
    /// Its school grade, once chosen.
    pub grade: Option<u8>,
    /// Keys, ids or titles of what comes before it.
    pub before: Vec<String>,
    /// Codes of published standards.
    pub codes: Vec<String>,
    /// What it stands under in its package; empty in a table.
    pub under: String,
    /// Whether other items of its package stand under it.
    pub has_parts: bool,
}

/// What the class has already.
pub struct Held<'a> {
    /// Every concept of the built-in catalogue and of the class, by id.
    pub all: &'a BTreeMap<String, Concept>,
    /// How many of them are the class's own.
    pub own: usize,
}

/// Letters and figures of a text, joined by hyphens.
pub(super) fn slug(text: &str) -> String {
    let plain: String = text
        .to_lowercase()
        .chars()
        .map(|c| match c {
            'á' | 'à' | 'ä' | 'â' => 'a',
            'é' | 'è' | 'ë' | 'ê' => 'e',
            'í' | 'ì' | 'ï' | 'î' => 'i',
            'ó' | 'ò' | 'ö' | 'ô' => 'o',
            'ú' | 'ù' | 'ü' | 'û' => 'u',
            'ñ' => 'n',
            c if c.is_ascii_alphanumeric() => c,
            _ => ' ',
        })
        .collect();
    plain.split_whitespace().collect::<Vec<_>>().join("-")
}

/// The id of an own concept named so: always with our prefix, never too long.
pub(super) fn own_id(text: &str) -> String {
    let slug = slug(text);
    let body = slug.strip_prefix(OWN_PREFIX).unwrap_or(&slug);
    let room = ConceptId::LONGEST_CHARS - OWN_PREFIX.len();
    let cut: String = body.chars().take(room).collect();
    format!("{OWN_PREFIX}{}", cut.trim_matches('-'))
}

/// A text of ours: not empty, not too long, no characters that are no text.
pub(super) fn check_text(text: &str, column: &str, most_chars: usize) -> Result<(), LineFault> {
    let bad = |c: char| {
        c.is_control()
            || ('\u{e000}'..='\u{f8ff}').contains(&c)
            || ('\u{202a}'..='\u{202e}').contains(&c)
            || ('\u{2066}'..='\u{2069}').contains(&c)
    };
    if text.trim().is_empty() {
        return Err(LineFault::Empty {
            column: column.into(),
        });
    }
    if text.chars().any(bad) {
        return Err(LineFault::BadCharacter {
            column: column.into(),
        });
    }
    let chars = text.chars().count();
    if chars > most_chars {
        return Err(LineFault::TooLong {
            column: column.into(),
            chars: u32::try_from(chars).unwrap_or(u32::MAX),
            most: u32::try_from(most_chars).unwrap_or(u32::MAX),
        });
    }
    Ok(())
}

/// Checks a text in each of its languages, and takes the spaces around it away.
fn checked(text: &Text, column: &str, most_chars: usize) -> Result<Text, LineFault> {
    let mut texts: BTreeMap<Language, String> = BTreeMap::new();
    let alone = text.iter().count() == 1;
    for (language, one) in text.iter() {
        if alone {
            check_text(one, column, most_chars)?;
        } else {
            check_text(one, &column_in(column, language), most_chars)?;
        }
        texts.insert(language, one.trim().to_owned());
    }
    Text::try_from(texts).map_err(|_| LineFault::Empty {
        column: column.into(),
    })
}

fn few(found: usize, column: &str) -> Result<(), LineFault> {
    if found > MOST_PARTS {
        return Err(LineFault::TooMany {
            column: column.into(),
            found: u32::try_from(found).unwrap_or(u32::MAX),
            most: u32::try_from(MOST_PARTS).unwrap_or(u32::MAX),
        });
    }
    Ok(())
}

/// The concept of a draft, without what comes before it.
fn concept_of(draft: &ConceptDraft) -> Result<Concept, LineFault> {
    let id = ConceptId::new(draft.id.clone())
        .ok()
        .filter(|id| id.as_str().len() > OWN_PREFIX.len() && id.as_str().starts_with(OWN_PREFIX))
        .ok_or_else(|| LineFault::BadId {
            text: cut(&draft.id, 80),
        })?;
    few(draft.codes.len(), "codes")?;
    few(draft.before.len(), "before")?;
    for code in &draft.codes {
        check_text(code, "codes", MOST_CODE_CHARS)?;
    }
    Ok(Concept {
        id,
        title: checked(&draft.title, "title", MOST_TITLE_CHARS)?,
        i_can: checked(&draft.i_can, "i_can", MOST_I_CAN_CHARS)?,
        strand: draft.strand.ok_or_else(|| LineFault::Empty {
            column: "strand".into(),
        })?,
        grade: match draft.grade {
            Some(grade @ 1..=12) => grade,
            Some(other) => {
                return Err(LineFault::BadGrade {
                    text: other.to_string(),
                });
            }
            None => {
                return Err(LineFault::Empty {
                    column: "grade".into(),
                });
            }
        },
        prerequisites: Vec::new(),
        alignments: draft.codes.clone(),
    })
}

/// A draft that was taken, with its concept.
pub struct Taken {
    /// Its place among the drafts.
    pub place: usize,
    /// The concept.
    pub concept: Concept,
}

/// Makes concepts of the picked drafts. What comes before a concept is looked up among
/// the picked drafts (by key, id, title or code) and in what the class has; in a table an
/// unknown one is a fault, in a package it was not picked and is left out.
#[must_use]
pub fn concepts_of(drafts: &[ConceptDraft], held: &Held<'_>) -> (Vec<Taken>, Vec<LineRefused>) {
    let mut taken: Vec<Taken> = Vec::new();
    let mut refused = Vec::new();
    let mut names: BTreeMap<String, ConceptId> = BTreeMap::new();
    let refuse = |draft: &ConceptDraft, fault| LineRefused {
        line: draft.line,
        at: draft.at.clone(),
        fault,
    };
    for (place, draft) in drafts.iter().enumerate() {
        let concept = match concept_of(draft) {
            Ok(concept) => concept,
            Err(fault) => {
                refused.push(refuse(draft, fault));
                continue;
            }
        };
        let there = held.all.contains_key(concept.id.as_str())
            || taken.iter().any(|other| other.concept.id == concept.id);
        if there {
            let text = concept.id.as_str().to_owned();
            refused.push(refuse(draft, LineFault::ConceptThere { text }));
            continue;
        }
        if held.own + taken.len() >= MOST_OWN_CONCEPTS {
            let most = u32::try_from(MOST_OWN_CONCEPTS).unwrap_or(u32::MAX);
            refused.push(refuse(draft, LineFault::ConceptsFull { most }));
            continue;
        }
        for name in [draft.key.to_lowercase(), concept.id.as_str().to_owned()]
            .into_iter()
            .chain(concept.title.iter().map(|(_, title)| title.to_lowercase()))
            .chain(concept.alignments.iter().map(|code| code.to_lowercase()))
        {
            names.entry(name).or_insert_with(|| concept.id.clone());
        }
        taken.push(Taken { place, concept });
    }
    let mut unknown: BTreeMap<usize, LineFault> = BTreeMap::new();
    for one in &mut taken {
        let Some(draft) = drafts.get(one.place) else {
            continue;
        };
        for before in &draft.before {
            match found(before, &names, held) {
                Some(id) if id == one.concept.id => {
                    unknown.insert(
                        one.place,
                        LineFault::Circle {
                            text: one.concept.id.as_str().to_owned(),
                        },
                    );
                }
                Some(id) if one.concept.prerequisites.contains(&id) => {}
                Some(id) => one.concept.prerequisites.push(id),
                None if draft.at.is_empty() => {
                    unknown.insert(
                        one.place,
                        LineFault::UnknownConcept {
                            text: cut(before, 80),
                        },
                    );
                }
                None => {}
            }
        }
    }
    unknown.extend(circles(&taken));
    drop_with_followers(&mut taken, &mut unknown, drafts);
    for (place, fault) in unknown {
        refused.extend(drafts.get(place).map(|draft| refuse(draft, fault)));
    }
    refused.sort_by(|a, b| (a.line, &a.at).cmp(&(b.line, &b.at)));
    (taken, refused)
}

fn found(text: &str, names: &BTreeMap<String, ConceptId>, held: &Held<'_>) -> Option<ConceptId> {
    let wanted = text.trim().to_lowercase();
    names
        .get(&wanted)
        .or_else(|| names.get(&own_id(&wanted)))
        .cloned()
        .or_else(|| held.all.get(&wanted).map(|c| c.id.clone()))
        .or_else(|| held.all.get(&own_id(&wanted)).map(|c| c.id.clone()))
        .or_else(|| {
            held.all
                .values()
                .find(|c| c.is_titled(&wanted))
                .map(|c| c.id.clone())
        })
}

/// The concepts that come before themselves, each with its circle.
fn circles(taken: &[Taken]) -> BTreeMap<usize, LineFault> {
    let by_id: BTreeMap<&ConceptId, &Taken> =
        taken.iter().map(|one| (&one.concept.id, one)).collect();
    let mut faults = BTreeMap::new();
    for start in taken {
        // What can be reached from here going back; a circle is there when that is itself.
        let mut open: Vec<&ConceptId> = start.concept.prerequisites.iter().collect();
        let mut seen: BTreeSet<&ConceptId> = BTreeSet::new();
        while let Some(id) = open.pop() {
            if *id == start.concept.id {
                let text = format!("{id}");
                faults.insert(start.place, LineFault::Circle { text });
                break;
            }
            if seen.insert(id) {
                open.extend(
                    by_id
                        .get(id)
                        .into_iter()
                        .flat_map(|t| &t.concept.prerequisites),
                );
            }
        }
    }
    faults
}

/// Takes the faulty ones out, and with them those that need them.
fn drop_with_followers(
    taken: &mut Vec<Taken>,
    faults: &mut BTreeMap<usize, LineFault>,
    drafts: &[ConceptDraft],
) {
    loop {
        let gone: BTreeSet<ConceptId> = taken
            .iter()
            .filter(|one| faults.contains_key(&one.place))
            .map(|one| one.concept.id.clone())
            .collect();
        taken.retain(|one| !faults.contains_key(&one.place));
        let mut more = false;
        for one in taken.iter() {
            let Some(lost) = one
                .concept
                .prerequisites
                .iter()
                .find(|id| gone.contains(*id))
            else {
                continue;
            };
            let name = drafts
                .iter()
                .find(|draft| draft.id == lost.as_str())
                .map_or(lost.as_str(), |draft| draft.title.get(Language::first()));
            faults.insert(
                one.place,
                LineFault::UnknownConcept {
                    text: cut(name, 80),
                },
            );
            more = true;
        }
        if !more {
            return;
        }
    }
}
