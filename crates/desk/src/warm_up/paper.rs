//! The warm-up of a day for paper.

use super::day::{chosen, pass_of};
use crate::class::OpenClass;
use crate::error::DeskError;
use chrono::NaiveDate;
use surefoot_catalogue::Language;
use surefoot_exercises::Item;
use surefoot_record::ConceptName;
use surefoot_store::DeskStore;

/// The warm-up of a day for paper.
#[derive(Debug, Clone, PartialEq)]
pub struct WarmUpPaper {
    /// The title of the class.
    pub class_title: String,
    /// The school day it is for.
    pub date: NaiveDate,
    /// Day of the rotation, from 1.
    pub day: usize,
    /// The exercises in the order of the review, without those left out.
    pub exercises: Vec<WarmUpExercise>,
}

/// An exercise of a warm-up.
#[derive(Debug, Clone, PartialEq)]
pub struct WarmUpExercise {
    /// Its concept.
    pub concept: ConceptName,
    /// The exercise.
    pub item: Item,
}

/// The warm-up of a date for paper; of today or the next school day without a date.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for a date without school.
pub fn warm_up_paper(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    date: Option<NaiveDate>,
) -> Result<Option<WarmUpPaper>, DeskError> {
    let Some((date, at)) = pass_of(class, today, date)? else {
        return Ok(None);
    };
    let exercises = chosen(desk, class, date, at)?
        .into_iter()
        .filter(|one| !one.choice.left_out)
        .filter_map(|one| {
            Some(WarmUpExercise {
                concept: class.facts.name(one.concept, language),
                item: one.item?,
            })
        })
        .collect();
    Ok(Some(WarmUpPaper {
        class_title: class.row.title.clone(),
        date,
        day: at.day + 1,
        exercises,
    }))
}
