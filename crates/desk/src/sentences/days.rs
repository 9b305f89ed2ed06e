//! The next two school days: their concepts, and what to prepare.

use super::kinds::is_weak;
use super::picture::Picture;
use crate::class::OpenClass;
use crate::talk::{TalkView, TalkWay};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// School days within which a first lesson counts as near.
const NEAR_SCHOOL_DAYS: usize = 10;

/// A school day and its concepts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct DayPlan {
    /// Its date.
    pub date: NaiveDate,
    /// Whether it is today.
    pub is_today: bool,
    /// Its day of the rotation, from 1.
    pub day: usize,
    /// Its concepts, in the order of the review.
    pub concepts: Vec<DayPlanConcept>,
}

/// A concept of a school day, and what to prepare for it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct DayPlanConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Its phase on that day.
    pub phase: Phase,
    /// Whether its first lesson is on that day.
    pub first_lesson: bool,
    /// How to discuss it, if the talk plan chooses it.
    pub talk: Option<TalkWay>,
    /// Its weak prerequisites, if its first lesson is within ten school days.
    pub weak_before: Vec<ConceptName>,
}

/// The two days of the picture's talk plans; fewer at the end of the year.
pub(super) fn day_plans(class: &OpenClass, picture: &Picture, language: Language) -> Vec<DayPlan> {
    [&picture.talk, &picture.talk_after]
        .into_iter()
        .filter_map(|talk| day_plan(class, picture, talk, language))
        .collect()
}

fn day_plan(
    class: &OpenClass,
    picture: &Picture,
    talk: &TalkView,
    language: Language,
) -> Option<DayPlan> {
    let facts = &class.facts;
    let concepts = facts.rotation.concepts_on(&facts.year, talk.date).iter();
    Some(DayPlan {
        date: talk.date,
        is_today: talk.is_today,
        day: talk.day?,
        concepts: concepts
            .map(|id| {
                let planned = talk.concepts.iter().find(|one| one.concept.id == *id);
                DayPlanConcept {
                    concept: facts.name(id, language),
                    phase: facts.phase(id, talk.date),
                    first_lesson: facts.taught_from.get(id) == Some(&talk.date),
                    talk: planned.filter(|one| one.chosen).and_then(|one| one.way),
                    weak_before: weak_before(class, picture, id, talk.date),
                }
            })
            .collect(),
    })
}

/// The weak prerequisites of a concept whose first lesson is near.
fn weak_before(
    class: &OpenClass,
    picture: &Picture,
    concept: &str,
    date: NaiveDate,
) -> Vec<ConceptName> {
    let facts = &class.facts;
    let now = facts.year.school_days_before(date);
    let near = facts.taught_from.get(concept).is_some_and(|first| {
        *first >= date && facts.year.school_days_before(*first) <= now + NEAR_SCHOOL_DAYS
    });
    let known = facts.concepts.get(concept).filter(|_| near);
    let prerequisites = known.into_iter().flat_map(|one| &one.prerequisites);
    prerequisites
        .filter_map(|id| picture.row(id.as_str()))
        .filter(|row| is_weak(row))
        .map(|row| row.concept.clone())
        .collect()
}
