//! Changes the title, the year and the rotation of a class, and removes it.

use super::open::open_class;
use super::setup::checked_title;
use super::views::PlacedConcept;
use crate::error::{DeskError, Field, Rule, faulty};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rotation::{Phase, Rotation};
use surefoot_catalogue::{Catalogue, Language};
use surefoot_store::DeskStore;
use surefoot_store::desk::RemovedRows;

/// Gives a class another title.
pub fn rename_class(desk: &DeskStore, class: &str, title: &str) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    desk.rename_class(&class.row.id, &checked_title(title)?)?;
    Ok(())
}

/// Changes the first day, the last day and the weekdays of a class.
///
/// Closures, first lessons and reports keep their dates. Reports outside the new year are kept and
/// count again if the year includes them later. Days of the rotation and passes count from the new
/// first day.
pub fn move_year(
    desk: &DeskStore,
    class: &str,
    first_day: NaiveDate,
    last_day: NaiveDate,
    weekdays: BTreeSet<u8>,
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    let year = SchoolYear::new(
        first_day,
        last_day,
        weekdays,
        class.facts.year.closures.clone(),
    )?;
    desk.transaction(|| desk.put_year(&class.row.id, &year))?;
    Ok(())
}

/// Removes a class with its keys, and returns the removed rows. Without these, hand-ins for the
/// class can never be opened again.
pub fn delete_class(desk: &DeskStore, class: &str) -> Result<RemovedRows, DeskError> {
    let class = open_class(desk, class)?;
    let held = desk.transaction(|| {
        let held = desk.rows_to_remove(&class.row.id, None)?;
        desk.remove_class(&class.row.id)?;
        Ok::<_, surefoot_store::StoreError>(held)
    })?;
    Ok(held)
}

/// Restores removed rows.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if their number or id is in use.
pub fn restore(desk: &DeskStore, held: &RemovedRows) -> Result<(), DeskError> {
    desk.restore(held).map_err(|error| match error {
        surefoot_store::StoreError::PlaceTaken => DeskError::invalid(Field::Removed, Rule::Taken),
        other => other.into(),
    })
}

/// The concepts that are not in the rotation: own ones first, then those of the catalogue in
/// teaching order.
pub fn unscheduled_concepts(
    desk: &DeskStore,
    class: &str,
    language: Language,
) -> Result<Vec<PlacedConcept>, DeskError> {
    let class = open_class(desk, class)?;
    let catalogue = Catalogue::built_in().map_err(faulty)?;
    let all = class.facts_with_all()?;
    Ok(class
        .own_concepts
        .iter()
        .chain(catalogue.in_teaching_order())
        .filter(|c| !class.facts.concepts.contains_key(c.id.as_str()))
        .map(|c| PlacedConcept {
            concept: all.name(c.id.as_str(), language),
            grade: c.grade,
            taught_from: class.facts.taught_from.get(c.id.as_str()).copied(),
            phase: Phase::Preview,
        })
        .collect())
}

/// Suggests a rotation of the concepts on a number of days, and stores nothing. The numbers of
/// concepts of two days differ by one at most, and so do those of each strand.
///
/// # Errors
/// Returns [`DeskError::Rotation`] for a number of days out of range.
pub fn balanced_rotation(
    desk: &DeskStore,
    class: &str,
    days: usize,
) -> Result<Vec<Vec<String>>, DeskError> {
    let class = open_class(desk, class)?;
    let facts = &class.facts;
    let mut ids: Vec<&String> = facts.rotation.days().iter().flatten().collect();
    // In teaching order, as a new class has it.
    ids.sort_by_key(|id| {
        let known = facts.concepts.get(*id);
        (
            known.map(|c| c.grade),
            facts.taught_from.get(*id).copied(),
            *id,
        )
    });
    let by_strand: Vec<_> = ids
        .into_iter()
        .map(|id| (id.clone(), facts.concepts.get(id).map(|c| c.strand)))
        .collect();
    Ok(Rotation::suggest(&by_strand, days)?.into_days())
}
