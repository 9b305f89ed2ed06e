//! Changes to a class that stands: its title, its year, its seats, its end.

use super::setup::checked_title;
use crate::own::exercises as own;
use crate::views::{PlacedConcept, SeatHoldings};
use crate::{TeacherError, open_class};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rotation::{Phase, Rotation};
use surefoot_catalogue::{Catalogue, Language};
use surefoot_store::DeskStore;
use surefoot_store::desk::HeldRows;

/// Gives a class another title.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Invalid`], or the store's.
pub fn rename_class(desk: &DeskStore, class: &str, title: &str) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    desk.rename_class(&class.row.id, &checked_title(title)?)?;
    Ok(())
}

/// Changes the first day, the last day and the weekdays of a class.
///
/// Nothing else moves: closures, first lessons and reports keep their dates.
/// Reports outside the new year are kept and count again once the year holds
/// them; days of the rotation and passes are counted anew from the first day.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Calendar`], or the store's.
pub fn move_year(
    desk: &DeskStore,
    class: &str,
    first_day: NaiveDate,
    last_day: NaiveDate,
    weekdays: BTreeSet<u8>,
) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    let year = SchoolYear::new(
        first_day,
        last_day,
        weekdays,
        class.facts.year.closures.clone(),
    )?;
    desk.together(|| desk.put_year(&class.row.id, &year))?;
    Ok(())
}

/// What the desk holds of a seat, so that one knows what goes with it.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn seat_holdings(
    desk: &DeskStore,
    class: &str,
    seat: u32,
) -> Result<SeatHoldings, TeacherError> {
    let class = open_class(desk, class)?;
    if !class.seats.iter().any(|s| s.number == seat) {
        return Err(TeacherError::NotFound("seat"));
    }
    let held = desk.seat_holdings(&class.row.id, seat)?;
    Ok(SeatHoldings {
        hand_ins: held.hand_ins,
        reports: held.reports,
        answers: held.answers,
        observations: held.observations,
    })
}

/// Takes a seat away, with all that came from it, and gives the rows that went,
/// which from then on stand nowhere else. The last seat of a class stays; the
/// slip no longer joins, and its files are refused.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Invalid`] for the last seat, or the store's.
pub fn remove_seat(desk: &DeskStore, class: &str, seat: u32) -> Result<HeldRows, TeacherError> {
    let class = open_class(desk, class)?;
    if !class.seats.iter().any(|s| s.number == seat) {
        return Err(TeacherError::NotFound("seat"));
    }
    if class.seats.len() == 1 {
        return Err(TeacherError::invalid("seats", "too_few"));
    }
    let held = desk.together(|| {
        let held = desk.hold(&class.row.id, Some(seat))?;
        desk.remove_seat(&class.row.id, seat)?;
        Ok::<_, surefoot_store::StoreError>(held)
    })?;
    Ok(held)
}

/// Takes a class away with its keys, and gives the rows that went: without
/// them, hand-ins for it can never be opened again.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn delete_class(desk: &DeskStore, class: &str) -> Result<HeldRows, TeacherError> {
    let class = open_class(desk, class)?;
    let held = desk.together(|| {
        let held = desk.hold(&class.row.id, None)?;
        desk.remove_class(&class.row.id)?;
        Ok::<_, surefoot_store::StoreError>(held)
    })?;
    Ok(held)
}

/// Brings a removed seat or class back, as it was.
///
/// # Errors
/// [`TeacherError::Invalid`] at `removed` when its place is taken, or the
/// store's; nothing is changed then.
pub fn bring_back(desk: &DeskStore, held: &HeldRows) -> Result<(), TeacherError> {
    desk.put_back(held).map_err(|error| match error {
        surefoot_store::StoreError::Missing(_) => TeacherError::invalid("removed", "taken"),
        other => other.into(),
    })
}

/// The catalogue's concepts that are not in the rotation, grade by grade in
/// teaching order.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn spare_concepts(
    desk: &DeskStore,
    class: &str,
    language: Language,
) -> Result<Vec<PlacedConcept>, TeacherError> {
    let class = open_class(desk, class)?;
    let catalogue = Catalogue::built_in().map_err(|e| TeacherError::Faulty(e.to_string()))?;
    // The catalogue names a concept in the same words as the class would.
    let all = own::facts_with_all(&class)?;
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

/// The class's concepts spread evenly anew over a number of days: every concept
/// once, days and the strands on them within one of each other. Nothing is changed.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Rotation`] for a length, or the store's.
pub fn balanced_rotation(
    desk: &DeskStore,
    class: &str,
    days: usize,
) -> Result<Vec<Vec<String>>, TeacherError> {
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
