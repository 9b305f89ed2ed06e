//! What both sides know of a class: its year, rotation, first lessons and concepts.
//!
//! The student's side reads it from the class pack, the desk from its store.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rotation::{Phase, Rotation};
use surefoot_catalogue::{Concept, Language};
use surefoot_exercises::bank::OwnExercise;
use ts_rs::TS;

/// A concept as a screen shows it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ConceptName {
    /// Its id.
    pub id: String,
    /// Its strand; the message `strand-<strand>` is the name.
    pub strand: String,
    /// Its short title in the language asked for.
    pub title: String,
    /// Its "I can" statement in the language asked for.
    pub i_can: String,
    /// The language of the title, if the title is missing in the language asked for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub shown_in: Option<Language>,
    /// Whether it has exercises; if not, students only rate it.
    pub has_exercises: bool,
}

/// What both sides know of a class.
#[derive(Debug, Clone)]
pub struct Class {
    /// The teacher's name for the class.
    pub title: String,
    /// The school year.
    pub year: SchoolYear,
    /// The rotation, of concept ids.
    pub rotation: Rotation<String>,
    /// The dates of first lessons, by concept id.
    pub taught_from: BTreeMap<String, NaiveDate>,
    /// The concepts, by id.
    pub concepts: BTreeMap<String, Concept>,
    /// The teacher's own exercises by concept id; those of a concept in the order of their
    /// ids.
    pub own_exercises: BTreeMap<String, Vec<OwnExercise>>,
}

impl Class {
    /// The teacher's own exercises of a concept.
    #[must_use]
    pub fn own_of(&self, concept: &str) -> &[OwnExercise] {
        self.own_exercises.get(concept).map_or(&[], Vec::as_slice)
    }

    /// Whether a concept has a generator or own exercises.
    #[must_use]
    pub fn has_exercises(&self, concept: &str) -> bool {
        surefoot_exercises::has_generator(concept) || !self.own_of(concept).is_empty()
    }

    /// Returns a concept as a screen shows it. The title of an unknown concept is its id.
    #[must_use]
    pub fn name(&self, concept: &str, language: Language) -> ConceptName {
        let has_exercises = self.has_exercises(concept);
        match self.concepts.get(concept) {
            Some(known) => ConceptName {
                id: concept.to_owned(),
                strand: known.strand.as_str().to_owned(),
                title: known.title.get(language).to_owned(),
                shown_in: known.title.substitute(language),
                i_can: known.i_can.get(language).to_owned(),
                has_exercises,
            },
            None => ConceptName {
                id: concept.to_owned(),
                strand: String::new(),
                title: concept.to_owned(),
                i_can: String::new(),
                shown_in: None,
                has_exercises,
            },
        }
    }

    /// The phase of a concept on a date.
    #[must_use]
    pub fn phase(&self, concept: &str, date: NaiveDate) -> Phase {
        self.rotation
            .phase(&self.year, self.taught_from.get(concept).copied(), date)
    }

    /// Returns the concept ids of the rotation by strand, grade and first lesson.
    #[must_use]
    pub fn by_strand(&self) -> Vec<&str> {
        let mut ids: Vec<&str> = self
            .rotation
            .days()
            .iter()
            .flatten()
            .map(String::as_str)
            .collect();
        ids.sort_by_key(|id| {
            let known = self.concepts.get(*id);
            (
                known.map(|c| c.strand),
                known.map(|c| c.grade),
                self.taught_from.get(*id).copied(),
                *id,
            )
        });
        ids
    }
}
