//! The day for a projector, without names, keys and reports: also while the desk is locked.

use super::plan::{day_to_show, exercise};
use crate::class::{OpenClass, without_keys};
use crate::error::DeskError;
use crate::estimate::misconceptions;
use crate::sample::SampleExercise;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use surefoot_catalogue::Language;
use surefoot_exercises::TakenNames;
use surefoot_record::ConceptName;
use surefoot_store::DeskStore;
use ts_rs::TS;

/// A class as a locked desk names it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassTitle {
    /// The class's id.
    pub id: String,
    /// Its title.
    pub title: String,
}

/// The classes of a desk by title. Needs no key.
pub fn class_titles(desk: &DeskStore) -> Result<Vec<ClassTitle>, DeskError> {
    let classes = desk.classes_without_keys()?.into_iter();
    Ok(classes
        .map(|row| ClassTitle {
            id: row.id,
            title: row.title,
        })
        .collect())
}

/// The day as a locked desk shows it on a projector. Nothing in it depends on what the class does.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ProjectorDay {
    /// Day of the rotation, from 1; none after the year.
    pub day: Option<usize>,
    /// Every concept of the day, in the order of the review.
    pub concepts: Vec<ProjectorConcept>,
}

/// A concept of the day on a projector.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ProjectorConcept {
    /// The concept.
    pub concept: ConceptName,
    /// An exercise to discuss.
    pub exercise: Option<SampleExercise>,
}

/// The concepts of today, or of the next school day, each with an exercise that is chosen by the
/// date alone. Reads no report and needs no key.
pub fn projector_day(
    desk: &DeskStore,
    class: &str,
    language: Language,
    today: NaiveDate,
) -> Result<ProjectorDay, DeskError> {
    let facts = without_keys(desk, class)?.facts;
    let Some(date) = day_to_show(&facts.year, today) else {
        return Ok(ProjectorDay {
            day: None,
            concepts: Vec::new(),
        });
    };
    let concepts = (facts.rotation.concepts_on(&facts.year, date).iter())
        .map(|id| ProjectorConcept {
            concept: facts.name(id, language),
            // Without keys nobody knows which names are taken.
            exercise: exercise(TakenNames::NONE, facts.own_of(id), id, date, &[]),
        })
        .collect();
    Ok(ProjectorDay {
        day: (facts.rotation.position(&facts.year, date)).map(|at| at.day + 1),
        concepts,
    })
}

/// A concept of the class with an exercise to discuss, with the commonest misconception that the
/// exercise can show.
pub fn concept_to_show(
    desk: &DeskStore,
    class: &OpenClass,
    concept: &str,
    language: Language,
    today: NaiveDate,
) -> Result<ProjectorConcept, DeskError> {
    class.check_concept(concept)?;
    let mut times: BTreeMap<String, u32> = BTreeMap::new();
    for found in misconceptions(desk, class, today)? {
        if found.concept == concept {
            let sum = times.entry(found.code).or_default();
            *sum = sum.saturating_add(found.times);
        }
    }
    let mut wished: Vec<(u32, String)> = times.into_iter().map(|(code, n)| (n, code)).collect();
    wished.sort_by(|(a, a_code), (b, b_code)| b.cmp(a).then(a_code.cmp(b_code)));
    let wished: Vec<String> = wished.into_iter().map(|(_, code)| code).collect();
    Ok(ProjectorConcept {
        concept: class.facts.name(concept, language),
        exercise: exercise(
            class.taken_names(),
            class.facts.own_of(concept),
            concept,
            today,
            &wished,
        ),
    })
}
