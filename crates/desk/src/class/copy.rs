//! A new class from the set-up of an earlier one.

use super::setup::{Chance, make_class};
use crate::views::{ClassSummary, CopyClass};
use crate::{TeacherError, open_class};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_store::DeskStore;

/// Makes a class with the rotation, the pace, the bounds of practice, the room for
/// groups and the own exercises and concepts of another one.
///
/// First lessons keep their number of school days from the first day, as far
/// as the new year reaches; year and students are the new class's own.
///
/// # Errors
/// [`TeacherError::NotFound`] for the class copied, [`TeacherError::Invalid`],
/// [`TeacherError::Calendar`], or the store's.
pub fn copy_class(
    desk: &DeskStore,
    copy: &CopyClass,
    chance: &Chance,
    today: NaiveDate,
) -> Result<ClassSummary, TeacherError> {
    let from = open_class(desk, &copy.from)?;
    let year = &copy.year;
    year.check()?;
    let days: Vec<NaiveDate> = year.school_days().collect();
    let first_lessons: BTreeMap<String, NaiveDate> = from
        .facts
        .taught_from
        .iter()
        .filter(|(concept, _)| from.facts.concepts.contains_key(*concept))
        .filter_map(|(concept, date)| {
            let number = from.facts.year.school_days_before(*date);
            Some((concept.clone(), *days.get(number)?))
        })
        .collect();
    make_class(
        desk,
        &copy.title,
        &copy.names,
        year,
        from.facts.rotation.days(),
        &first_lessons,
        Some(&from.row.id),
        chance,
        today,
    )
}
