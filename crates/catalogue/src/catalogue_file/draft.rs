//! Drafts of own concepts, and the concepts made of the picked drafts.

use crate::table::{LineFault, LineRefused, Lines, check_count, check_string, check_text, cut};
use crate::text_id::LONGEST_CHARS;
use crate::{Concept, ConceptId, GRADES, Language, Strand, Text};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::TS;

/// The most own concepts of a class.
const MOST_OWN_CONCEPTS: usize = 300;
/// The most characters of a title; it fits a tile.
pub(super) const MOST_TITLE_CHARS: usize = 60;
/// The most characters of an "I can" statement.
pub(super) const MOST_I_CAN_CHARS: usize = 300;
/// The most characters of a published code.
pub(super) const MOST_CODE_CHARS: usize = 80;
/// The most codes, and the most prerequisites, of a concept.
const MOST_PARTS: usize = 12;

/// How the id of every own concept begins, so that it is never that of a built-in concept.
pub(super) const OWN_PREFIX: &str = "own-";

/// What could become a concept.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ConceptDraft {
    /// The line, from 1; 0 in a package.
    pub line: u32,
    /// The place in a package, such as `CFItems[3]`; empty in a table.
    pub at: String,
    /// The name by which other drafts refer to it: its id or code, or its identifier in the
    /// package.
    pub key: String,
    /// The id it will have.
    pub id: String,
    /// Its short title.
    pub title: Text,
    /// Its "I can" statement.
    pub i_can: Text,
    /// Its strand; the teacher chooses it for an item of a package.
    pub strand: Option<Strand>,
    /// Its school grade; the teacher chooses it where the package does not say it.
    pub grade: Option<u8>,
    /// Its prerequisites, by key, id, title or code.
    pub before: Vec<String>,
    /// Codes of published standards.
    pub codes: Vec<String>,
    /// The title of its parent in the package; empty in a table.
    pub under: String,
}

/// The concepts that a class already has.
pub struct Held<'a> {
    /// Every concept of the built-in catalogue and of the class, by id.
    pub all: &'a BTreeMap<String, Concept>,
    /// How many of them are own concepts.
    pub own: usize,
}

/// Returns the words of a text, their letters and digits without accents, joined by hyphens.
fn slug(text: &str) -> String {
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

/// Makes the id of an own concept from its name.
pub(super) fn own_id(text: &str) -> String {
    let slug = slug(text);
    let body = slug.strip_prefix(OWN_PREFIX).unwrap_or(&slug);
    let room = LONGEST_CHARS - OWN_PREFIX.len();
    let cut: String = body.chars().take(room).collect();
    format!("{OWN_PREFIX}{}", cut.trim_matches('-'))
}

/// Checks a text in each of its languages and returns it without the spaces around it.
fn checked(text: &Text, column: &str, most_chars: usize) -> Result<Text, LineFault> {
    check_text(text, column, most_chars, Lines::One)?;
    let trim = |text: Text, (language, one): (Language, &str)| text.with(language, one.trim());
    Ok(text.iter().fold(text.clone(), trim))
}

/// Makes the concept of a draft, without its prerequisites.
fn concept_of(draft: &ConceptDraft) -> Result<Concept, LineFault> {
    let id = ConceptId::new(draft.id.clone())
        .ok()
        .filter(|id| id.as_str().len() > OWN_PREFIX.len() && id.as_str().starts_with(OWN_PREFIX))
        .ok_or_else(|| LineFault::BadId {
            text: cut(&draft.id, 80),
        })?;
    check_count(draft.codes.len(), MOST_PARTS, "codes")?;
    check_count(draft.before.len(), MOST_PARTS, "before")?;
    for code in &draft.codes {
        check_string(code, "codes", MOST_CODE_CHARS, Lines::One)?;
    }
    let grade = draft.grade.ok_or_else(|| LineFault::empty("grade"))?;
    if !GRADES.contains(&grade) {
        return Err(LineFault::BadGrade {
            text: grade.to_string(),
        });
    }
    Ok(Concept {
        id,
        title: checked(&draft.title, "title", MOST_TITLE_CHARS)?,
        i_can: checked(&draft.i_can, "i_can", MOST_I_CAN_CHARS)?,
        strand: draft.strand.ok_or_else(|| LineFault::empty("strand"))?,
        grade,
        prerequisites: Vec::new(),
        alignments: draft.codes.clone(),
    })
}

/// A concept and its draft.
pub struct Taken {
    /// The place of the draft.
    pub place: usize,
    /// The concept.
    pub concept: Concept,
}

/// Makes concepts of the picked drafts. Prerequisites are looked up by key, id, title or
/// code, first among the picked drafts, then among the concepts of the class. In a table an
/// unknown prerequisite is a fault; in a package it was not picked, and is left out.
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
    let mut faults: BTreeMap<usize, LineFault> = BTreeMap::new();
    for one in &mut taken {
        let Some(draft) = drafts.get(one.place) else {
            continue;
        };
        for before in &draft.before {
            match find(before, &names, held) {
                Some(id) if id == one.concept.id => {
                    faults.insert(
                        one.place,
                        LineFault::Circle {
                            text: one.concept.id.as_str().to_owned(),
                        },
                    );
                }
                Some(id) if one.concept.prerequisites.contains(&id) => {}
                Some(id) => one.concept.prerequisites.push(id),
                None if draft.at.is_empty() => {
                    faults.insert(
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
    faults.extend(circles(&taken));
    drop_with_dependants(&mut taken, &mut faults, drafts);
    for (place, fault) in faults {
        refused.extend(drafts.get(place).map(|draft| refuse(draft, fault)));
    }
    refused.sort_by(|a, b| (a.line, &a.at).cmp(&(b.line, &b.at)));
    (taken, refused)
}

/// Finds the concept that a draft names as its prerequisite.
fn find(text: &str, names: &BTreeMap<String, ConceptId>, held: &Held<'_>) -> Option<ConceptId> {
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

/// Returns the faults of concepts that are prerequisites of themselves, by the place of
/// their drafts.
fn circles(taken: &[Taken]) -> BTreeMap<usize, LineFault> {
    let by_id: BTreeMap<&ConceptId, &Taken> =
        taken.iter().map(|one| (&one.concept.id, one)).collect();
    let mut faults = BTreeMap::new();
    for start in taken {
        let mut open: Vec<&ConceptId> = start.concept.prerequisites.iter().collect();
        let mut seen: BTreeSet<&ConceptId> = BTreeSet::new();
        while let Some(id) = open.pop() {
            if *id == start.concept.id {
                let text = id.to_string();
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

/// Removes the concepts with a fault and their dependants. Adds a fault for each dependant.
fn drop_with_dependants(
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
