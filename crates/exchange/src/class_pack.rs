//! The content of a class pack: what a student's device needs to know of the class.

use super::Refusal;
use super::class_id::class_id_of;
use super::content::Content;
use super::frame::Kind;
use super::keys::{PublicKey, Recipient};
use super::limits::{CLASS_PACK_CAPS, Caps};
use super::strict_json::bad;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rotation::Rotation;
use surefoot_catalogue::{ConceptId, GRADES, Strand, Text, steers};
use surefoot_exercises::bank::{MOST_BANK_BYTES, MOST_EXERCISES, OwnExercise};
use surefoot_record::wire::school_date;
use surefoot_record::{AssignmentId, ClassId, PracticeRules};

/// The format of class packs.
pub const CLASS_PACK_FORMAT: u32 = 1;
/// The most characters of a class title.
const MOST_TITLE_CHARS: usize = 60;
/// The most characters of a concept's title.
const MOST_CONCEPT_TITLE_CHARS: usize = 120;
/// The most characters of an "I can" statement.
const MOST_I_CAN_CHARS: usize = 300;
/// The most concepts of a class.
const MOST_CONCEPTS: usize = 1_000;
/// The most concepts of an assignment.
const MOST_ASSIGNED_CONCEPTS: usize = 6;
/// The most exercises of each concept in an assignment.
const MOST_ITEMS_EACH: u32 = 20;

/// The content of a class pack; see `shared/schema/class-pack.schema.json`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClassPack {
    /// [`CLASS_PACK_FORMAT`].
    pub format: u32,
    /// The class: [`class_id_of`] both keys.
    pub class_id: ClassId,
    /// The version, from 1. A device accepts only a higher one than it has.
    pub version: u32,
    /// The school date on which it was made.
    #[serde(with = "school_date")]
    pub issued_on: NaiveDate,
    /// The title of the class, 1 to 60 characters.
    pub title: String,
    /// The school year.
    pub year: SchoolYear,
    /// The days of the rotation, each with its concepts in the order of the review.
    pub rotation: Vec<Vec<ConceptId>>,
    /// The dates of first lessons. A concept without one is not taught this year.
    pub taught_from: BTreeMap<ConceptId, NaiveDate>,
    /// The concepts of the class, in the order of their ids.
    pub concepts: Vec<PackConcept>,
    /// Assignments for the whole class.
    pub assignments: Vec<Assignment>,
    /// Assignments for one seat each, sealed for each of its devices: age files in base64
    /// (RFC 4648, padded) in the order of their texts. Nothing says for whom one is.
    pub sealed: Vec<String>,
    /// The teacher's own exercises, in the order of concepts and of their ids.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub exercises: Vec<OwnExercise>,
    /// What the teacher sets for practice.
    pub practice: PracticeRules,
    /// Whether the class has a class folder: a shared folder through which packs and hand-ins
    /// travel. A person chooses it on each device.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub class_folder: bool,
    /// The recipient for which hand-ins are sealed.
    pub class_recipient: Recipient,
    /// The key that signs this pack.
    pub teacher_key: PublicKey,
}

/// A concept in a class pack.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PackConcept {
    /// Its id.
    pub id: ConceptId,
    /// Its strand.
    pub strand: Strand,
    /// Its school grade, 1 to 12.
    pub grade: u8,
    /// Its short title, 1 to 120 characters.
    pub title: Text,
    /// Its "I can" statement, 1 to 300 characters.
    pub i_can: Text,
    /// The concepts that it builds on. They need not be in the pack.
    pub prerequisites: Vec<ConceptId>,
}

/// Concepts that the teacher assigned.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Assignment {
    /// Its id, unique in the class.
    pub id: AssignmentId,
    /// The concepts, 1 to 6.
    pub concepts: Vec<ConceptId>,
    /// The number of exercises of each concept, 1 to 20.
    pub items_each: u32,
    /// The first evening.
    #[serde(with = "school_date")]
    pub from: NaiveDate,
    /// The last evening.
    #[serde(with = "school_date")]
    pub due: NaiveDate,
}

/// Whether a text has 1 to `most_chars` characters, and none that steers.
fn is_text(text: &str, most_chars: usize) -> bool {
    (1..=most_chars).contains(&text.chars().count()) && !text.chars().any(steers)
}

impl Assignment {
    fn check(&self, at: &str) -> Result<(), Refusal> {
        let unique: BTreeSet<_> = self.concepts.iter().collect();
        if !(1..=MOST_ASSIGNED_CONCEPTS).contains(&self.concepts.len())
            || unique.len() != self.concepts.len()
        {
            return Err(bad(format!("{at}.concepts")));
        }
        if !(1..=MOST_ITEMS_EACH).contains(&self.items_each) {
            return Err(bad(format!("{at}.items_each")));
        }
        if self.due < self.from {
            return Err(bad(format!("{at}.due")));
        }
        Ok(())
    }
}

/// Checks assignments, and that their ids are unique.
pub(super) fn check_assignments(assignments: &[Assignment]) -> Result<(), Refusal> {
    let mut ids = BTreeSet::new();
    for (place, assignment) in assignments.iter().enumerate() {
        let at = format!("assignments[{place}]");
        if !ids.insert(&assignment.id) {
            return Err(bad(format!("{at}.id")));
        }
        assignment.check(&at)?;
    }
    Ok(())
}

impl Content for ClassPack {
    const KIND: Kind = Kind::ClassPack;
    const FORMAT: u32 = CLASS_PACK_FORMAT;
    const CAPS: Caps = CLASS_PACK_CAPS;
    const STEP_BYTES: Option<usize> = None;

    fn check_content(&self) -> Result<(), Refusal> {
        if self.format != CLASS_PACK_FORMAT {
            return Err(bad("format"));
        }
        if self.version == 0 {
            return Err(bad("version"));
        }
        if class_id_of(&self.teacher_key, &self.class_recipient).as_ref() != Ok(&self.class_id) {
            return Err(bad("class_id"));
        }
        if !is_text(&self.title, MOST_TITLE_CHARS) {
            return Err(bad("title"));
        }
        self.year.check().map_err(|_| bad("year"))?;
        self.check_concepts()?;
        self.check_exercises()?;
        check_assignments(&self.assignments)?;
        let sorted = |pair: &[String]| matches!(pair, [one, next] if one < next);
        if let Some(place) = self.sealed.windows(2).position(|pair| !sorted(pair)) {
            return Err(bad(format!("sealed[{}]", place + 1)));
        }
        match self.practice.fault(&self.year) {
            None => Ok(()),
            Some(part) => Err(bad(format!("practice.{part}"))),
        }
    }
}

impl ClassPack {
    fn check_exercises(&self) -> Result<(), Refusal> {
        if self.exercises.len() > MOST_EXERCISES {
            return Err(Refusal::TooManyEntries {
                most: MOST_EXERCISES as u64,
            });
        }
        let known: BTreeSet<_> = self.concepts.iter().map(|concept| &concept.id).collect();
        let mut ids = BTreeSet::new();
        let mut bytes = 0;
        for (place, own) in self.exercises.iter().enumerate() {
            let at = |part: &str| bad(format!("exercises[{place}]{part}"));
            if !known.contains(&own.concept) {
                return Err(at(".concept"));
            }
            own.check().map_err(|_| at(""))?;
            if !ids.insert(own.id()) {
                return Err(at(" given twice"));
            }
            bytes += own.json_bytes();
        }
        if bytes > MOST_BANK_BYTES {
            return Err(bad("exercises"));
        }
        Ok(())
    }

    fn check_concepts(&self) -> Result<(), Refusal> {
        if self.concepts.len() > MOST_CONCEPTS {
            return Err(Refusal::TooManyEntries {
                most: MOST_CONCEPTS as u64,
            });
        }
        let mut known = BTreeSet::new();
        for (place, concept) in self.concepts.iter().enumerate() {
            if !known.insert(&concept.id) {
                return Err(bad(format!("concepts[{place}].id")));
            }
            if !GRADES.contains(&concept.grade) {
                return Err(bad(format!("concepts[{place}].grade")));
            }
            for (field, text, most_chars) in [
                ("title", &concept.title, MOST_CONCEPT_TITLE_CHARS),
                ("i_can", &concept.i_can, MOST_I_CAN_CHARS),
            ] {
                if let Some((language, _)) = text.iter().find(|(_, t)| !is_text(t, most_chars)) {
                    return Err(bad(format!("concepts[{place}].{field}.{language}")));
                }
            }
        }
        Rotation::new(self.rotation.clone()).map_err(|_| bad("rotation"))?;
        if let Some(concept) = self.rotation.iter().flatten().find(|c| !known.contains(c)) {
            return Err(bad(format!("rotation: {concept}")));
        }
        if let Some(concept) = self.taught_from.keys().find(|c| !known.contains(c)) {
            return Err(bad(format!("taught_from: {concept}")));
        }
        let assigned = self.assignments.iter().flat_map(|a| &a.concepts);
        if let Some(concept) = { assigned }.find(|c| !known.contains(c)) {
            return Err(bad(format!("assignments: {concept}")));
        }
        Ok(())
    }
}
