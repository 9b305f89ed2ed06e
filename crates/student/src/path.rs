//! My path: the student's own year.

use super::evening::answers_on;
use super::views::{MyPath, PathConcept};
use super::{Joined, StudentError};
use chrono::NaiveDate;
use surefoot_catalogue::rating::AnswerResult;
use surefoot_record::{Field, Rule, what_counts};
use surefoot_store::StudentStore;

/// The most focus concepts.
pub const MOST_FOCUS: usize = 3;

/// Returns the student's year: every concept with its rating in each pass and its practice.
pub fn my_path(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
) -> Result<MyPath, StudentError> {
    let facts = &joined.facts;
    let check_ins = store.check_ins()?;
    let dates = joined.counted_dates(today);
    let rated = what_counts(&check_ins, dates);
    let answers = answers_on(store, dates)?;
    let pass = facts.rotation.pass_on(&facts.year, today);
    let concepts = facts
        .by_strand()
        .into_iter()
        .map(|concept| {
            let mut path = PathConcept {
                concept: joined.name(concept),
                phase: facts.phase(concept, today),
                ratings: vec![None; pass + 1],
                answered: 0,
                alone: 0,
                with_help: 0,
            };
            for event in rated
                .iter()
                .filter(|event| event.concept.as_str() == concept)
            {
                let of_pass = facts.rotation.pass_on(&facts.year, event.date);
                if let (Some(slot), Some(confidence)) =
                    (path.ratings.get_mut(of_pass), event.confidence)
                {
                    *slot = Some(confidence);
                }
            }
            for answer in answers.iter().filter(|a| a.concept.as_str() == concept) {
                path.answered += 1;
                match answer.result {
                    AnswerResult::Alone => path.alone += 1,
                    AnswerResult::WithHelp => path.with_help += 1,
                    AnswerResult::Wrong => {}
                }
            }
            path
        })
        .collect();
    Ok(MyPath {
        year: facts.year.clone(),
        pass,
        pass_count: facts.rotation.pass_count(&facts.year),
        concepts,
        focus: store.focus()?,
        goals: store.goals()?,
        rated: rated.iter().filter(|e| e.confidence.is_some()).count(),
        practised: answers.len(),
    })
}

/// Replaces the student's focus.
///
/// # Errors
/// [`StudentError::Invalid`] if there are more than [`MOST_FOCUS`] concepts,
/// [`StudentError::NoSuchConcept`] if one is not in the rotation.
pub fn set_focus(
    store: &StudentStore,
    joined: &Joined,
    concepts: &[String],
) -> Result<(), StudentError> {
    let mut chosen: Vec<String> = Vec::new();
    for concept in concepts {
        if joined.facts.rotation.day_of(concept).is_none() {
            return Err(StudentError::NoSuchConcept);
        }
        if !chosen.contains(concept) {
            chosen.push(concept.clone());
        }
    }
    if chosen.len() > MOST_FOCUS {
        return Err(StudentError::Invalid {
            field: Field::Focus,
            rule: Rule::TooMany,
        });
    }
    store.put_focus(&chosen)?;
    Ok(())
}
