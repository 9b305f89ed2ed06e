//! The concepts of a day with what the teacher chose and their exercises: for screen and paper.

use super::exercise::{Wanted, level_of};
use super::views::WarmUpChoice;
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule, faulty};
use crate::talk::day_to_show;
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::rotation::{Phase, Position};
use surefoot_exercises::{Item, Level};
use surefoot_store::DeskStore;
use surefoot_store::desk::WarmUpRow;

/// A concept of the day, what was chosen for it, and its exercise.
pub(super) struct Chosen<'c> {
    pub concept: &'c str,
    pub phase: Phase,
    pub level: Level,
    pub choice: WarmUpChoice,
    pub item: Option<Item>,
}

/// The date of a warm-up with its place in the rotation. Without a date it is today or the next
/// school day; `None` after the year.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for a date without school.
pub(super) fn pass_of(
    class: &OpenClass,
    today: NaiveDate,
    date: Option<NaiveDate>,
) -> Result<Option<(NaiveDate, Position)>, DeskError> {
    let facts = &class.facts;
    let Some(on) = date.or_else(|| day_to_show(&facts.year, today)) else {
        return Ok(None);
    };
    match facts.rotation.position(&facts.year, on) {
        Some(at) => Ok(Some((on, at))),
        None => Err(DeskError::invalid(Field::Dates, Rule::Missing)),
    }
}

/// The concepts of a date with their exercises.
pub(super) fn chosen<'c>(
    desk: &DeskStore,
    class: &'c OpenClass,
    date: NaiveDate,
    at: Position,
) -> Result<Vec<Chosen<'c>>, DeskError> {
    let facts = &class.facts;
    let mut rows: BTreeMap<String, WarmUpRow> = desk
        .warm_up(&class.row.id, row_pass(at)?)?
        .into_iter()
        .map(|row| (row.concept.clone(), row))
        .collect();
    let concepts = facts.rotation.concepts_on(&facts.year, date);
    let taken = class.taken_names();
    concepts
        .iter()
        .map(|concept| {
            let choice = rows
                .remove(concept)
                .map(choice_of)
                .transpose()?
                .unwrap_or_default();
            let phase = facts.phase(concept, date);
            let wanted = Wanted {
                class: &class.row.id,
                concept,
                own: facts.own_of(concept),
                level: choice.level.unwrap_or(level_of(phase)),
                pass: at.pass,
                taken,
            };
            Ok(Chosen {
                concept,
                phase,
                level: wanted.level,
                item: wanted.exercise(&choice),
                choice,
            })
        })
        .collect()
}

pub(super) fn row_pass(at: Position) -> Result<u32, DeskError> {
    u32::try_from(at.pass).map_err(faulty)
}

fn choice_of(row: WarmUpRow) -> Result<WarmUpChoice, DeskError> {
    Ok(WarmUpChoice {
        swaps: row.swaps,
        level: row.level.map(Level::try_from).transpose().map_err(faulty)?,
        own: row.own_exercise,
        left_out: row.left_out,
    })
}
