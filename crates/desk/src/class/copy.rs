//! A new class from the set-up of an earlier one.

use super::open::open_class;
use super::setup::{ClassSecrets, make_class};
use super::views::{ClassSummary, CopyClass};
use crate::error::DeskError;
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_store::DeskStore;

/// Makes a class with the rotation, the first lessons, the bounds of practice, the room for groups,
/// and the own exercises and concepts of an earlier one. Year and students are new.
///
/// First lessons keep their number of school days from the first day; those beyond the new year are
/// left out.
pub fn copy_class(
    desk: &DeskStore,
    copy: &CopyClass,
    secrets: &ClassSecrets,
    today: NaiveDate,
) -> Result<ClassSummary, DeskError> {
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
        secrets,
        today,
    )
}
