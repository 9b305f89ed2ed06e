//! The check-in: a day's concepts, each with a rating and how it went.

use super::views::{Today, TodayConcept};
use super::{Joined, StudentError};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_store::StudentStore;
use surefoot_store::student::CheckInEvent;

/// School days back that are offered for catching up.
const CATCH_UP_SCHOOL_DAYS: usize = 10;

/// Dates offered for catching up at most.
const CATCH_UP_OFFERED: usize = 5;

/// The check-in that counts of each (date, concept), over all devices of the
/// student: the latest in the student's own order of events.
pub(crate) fn latest(check_ins: Vec<CheckInEvent>) -> BTreeMap<(NaiveDate, String), CheckInEvent> {
    let mut found: BTreeMap<(NaiveDate, String), CheckInEvent> = BTreeMap::new();
    for event in check_ins {
        let key = (event.date, event.concept.clone());
        match found.get(&key) {
            Some(held) if (held.sequence, &held.device) > (event.sequence, &event.device) => {}
            _ => {
                found.insert(key, event);
            }
        }
    }
    found
}

/// A day of the review; `date` is `today` unless another day is asked for.
///
/// # Errors
/// The store's.
pub fn today(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    date: Option<NaiveDate>,
) -> Result<Today, StudentError> {
    let facts = &joined.facts;
    let date = date.unwrap_or(today);
    let at = facts.rotation.position(&facts.year, date);
    let rated = latest(store.check_ins()?);
    let concepts = facts
        .rotation
        .concepts_on(&facts.year, date)
        .iter()
        .map(|concept| {
            let event = rated.get(&(date, concept.clone()));
            TodayConcept {
                concept: joined.name(concept),
                phase: facts.phase(concept, date),
                confidence: event.and_then(|e| e.confidence),
                outcome: event.and_then(|e| e.outcome),
            }
        })
        .collect();
    Ok(Today {
        date,
        today,
        pass: at.map(|at| at.pass + 1),
        day: at.map(|at| at.day + 1),
        rotation_days: facts.rotation.day_count(),
        concepts,
        next_school_day: if at.is_none() {
            facts.year.next_school_day(date)
        } else {
            None
        },
        catch_up: catch_up(joined, &rated, today),
    })
}

/// Recent school days before `today` with a concept that has no rating. A new
/// student is not asked for days before the first check-in.
fn catch_up(
    joined: &Joined,
    rated: &BTreeMap<(NaiveDate, String), CheckInEvent>,
    today: NaiveDate,
) -> Vec<NaiveDate> {
    let Some(((first_rated, _), _)) = rated.first_key_value() else {
        return Vec::new();
    };
    let facts = &joined.facts;
    let before: Vec<NaiveDate> = facts
        .year
        .school_days()
        .take_while(|d| *d < today)
        .collect();
    before
        .into_iter()
        .rev()
        .take(CATCH_UP_SCHOOL_DAYS)
        .filter(|date| date >= first_rated)
        .filter(|date| {
            facts
                .rotation
                .concepts_on(&facts.year, *date)
                .iter()
                .any(|c| {
                    rated
                        .get(&(*date, c.clone()))
                        .is_none_or(|e| e.confidence.is_none())
                })
        })
        .take(CATCH_UP_OFFERED)
        .collect()
}

/// Writes both values of a concept as they stand after a tap. On disk when it returns.
///
/// # Errors
/// [`StudentError::NotADayToRate`] for a date in the future or without school,
/// [`StudentError::NoSuchConcept`] for a concept that does not stand on that day, or the store's.
pub fn check_in(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    date: NaiveDate,
    concept: &str,
    confidence: Option<Confidence>,
    outcome: Option<Outcome>,
) -> Result<(), StudentError> {
    let facts = &joined.facts;
    if date > today || !facts.year.is_school_day(date) {
        return Err(StudentError::NotADayToRate);
    }
    if !facts
        .rotation
        .concepts_on(&facts.year, date)
        .iter()
        .any(|c| c == concept)
    {
        return Err(StudentError::NoSuchConcept);
    }
    store.together(|| {
        store.add_check_in(&CheckInEvent {
            device: joined.student.device.clone(),
            sequence: store.next_sequence()?,
            date,
            concept: concept.to_owned(),
            confidence,
            outcome,
        })
    })?;
    Ok(())
}
