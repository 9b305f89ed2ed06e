//! The warm-up of a day, and what the teacher chooses for it.

use super::day::{chosen, pass_of, row_pass};
use super::views::{WarmUp, WarmUpChoice, WarmUpConcept, WarmUpDay, WarmUpOwn};
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule, Thing};
use crate::sample::{SampleExercise, shown};
use crate::talk::day_to_show;
use chrono::NaiveDate;
use surefoot_catalogue::Language;
use surefoot_exercises::bank::plain_text;
use surefoot_store::DeskStore;
use surefoot_store::desk::WarmUpRow;

/// Swaps of one exercise in a pass at most.
pub const MOST_SWAPS: u32 = 200;

/// The warm-up of a date; of today or the next school day without a date. The same exercises come
/// on every opening; the next pass has others.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for a date without school.
pub fn warm_up(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    date: Option<NaiveDate>,
) -> Result<WarmUp, DeskError> {
    let facts = &class.facts;
    let year = &facts.year;
    let is_today = |date| date == today;
    let first = day_to_show(year, today);
    let second = first.and_then(|first| year.next_school_day(first));
    let mut view = WarmUp {
        date: None,
        day: None,
        days: [first, second]
            .into_iter()
            .flatten()
            .map(|date| WarmUpDay {
                date,
                is_today: is_today(date),
            })
            .collect(),
        concepts: Vec::new(),
    };
    let Some((date, at)) = pass_of(class, today, date)? else {
        return Ok(view);
    };
    view.date = Some(date);
    view.day = Some(at.day + 1);
    view.concepts = chosen(desk, class, date, at)?
        .into_iter()
        .map(|one| WarmUpConcept {
            concept: facts.name(one.concept, language),
            phase: one.phase,
            level: one.level,
            choice: one.choice,
            own: facts
                .own_of(one.concept)
                .iter()
                .map(|own| WarmUpOwn {
                    id: own.id().to_string(),
                    question: plain_text(own.question.get(language)),
                    shown_in: own.question.substitute(language),
                })
                .collect(),
            exercise: one.item.map(|item| SampleExercise {
                misconception: None,
                ..shown(&item, None)
            }),
        })
        .collect();
    Ok(view)
}

/// Stores what the teacher chose for a concept in the pass of a date.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for a date without school and for more than [`MOST_SWAPS`],
/// [`DeskError::NotFound`] for a concept that is not on that day and for an own exercise of
/// another concept.
pub fn choose_warm_up(
    desk: &DeskStore,
    class: &OpenClass,
    date: NaiveDate,
    concept: &str,
    choice: &WarmUpChoice,
) -> Result<(), DeskError> {
    let facts = &class.facts;
    let at = (facts.rotation.position(&facts.year, date))
        .ok_or_else(|| DeskError::invalid(Field::Dates, Rule::Missing))?;
    let of_day = facts.rotation.concepts_on(&facts.year, date);
    if !of_day.iter().any(|one| one == concept) {
        return Err(DeskError::NotFound(Thing::Concept));
    }
    if choice.swaps > MOST_SWAPS {
        return Err(DeskError::invalid(Field::Amount, Rule::Range));
    }
    if let Some(id) = &choice.own
        && !(facts.own_of(concept).iter()).any(|own| own.id().to_string() == *id)
    {
        return Err(DeskError::NotFound(Thing::Exercise));
    }
    desk.put_warm_up(
        &class.row.id,
        &WarmUpRow {
            pass: row_pass(at)?,
            concept: concept.to_owned(),
            swaps: choice.swaps,
            level: choice.level.map(u8::from),
            own_exercise: choice.own.clone(),
            left_out: choice.left_out,
        },
    )?;
    Ok(())
}
