//! Changes to a class that stands: its title, its year, its seats, its end.

use super::classes::checked_title;
use super::views::{PlacedConcept, SeatHoldings};
use super::{TeacherError, open_class, own};
use crate::calendar::SchoolYear;
use crate::catalogue::{Catalogue, Language};
use crate::rotation::Phase;
use crate::store::DeskStore;
use chrono::NaiveDate;
use std::collections::BTreeSet;

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

/// Takes a seat away for good, with all that came from it. The last seat of a
/// class stays; its slip no longer joins, and its files are refused.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Invalid`] for the last seat, or the store's.
pub fn remove_seat(desk: &DeskStore, class: &str, seat: u32) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    if !class.seats.iter().any(|s| s.number == seat) {
        return Err(TeacherError::NotFound("seat"));
    }
    if class.seats.len() == 1 {
        return Err(TeacherError::invalid("seats", "too_few"));
    }
    desk.together(|| desk.remove_seat(&class.row.id, seat))?;
    Ok(())
}

/// Takes a class away for good, with its keys: hand-ins for it can never be
/// opened again.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn delete_class(desk: &DeskStore, class: &str) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    desk.together(|| desk.remove_class(&class.row.id))?;
    Ok(())
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
