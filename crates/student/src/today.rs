//! The check-in: the concepts of a date, each with its rating and its outcome.

use super::views::{Today, TodayConcept};
use super::{Joined, StudentError};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_record::{CheckIn, Counted, Said, what_counts};
use surefoot_store::StudentStore;

/// How many school days back can be offered for catching up.
const CATCH_UP_SCHOOL_DAYS: usize = 10;

/// The most dates offered for catching up.
const CATCH_UP_OFFERED: usize = 5;

/// What counts of the student's check-ins, by date and concept.
type Rated<'r> = BTreeMap<(NaiveDate, &'r str), Counted<&'r ConceptId>>;

fn by_date<'r>(check_ins: &'r [CheckIn], joined: &Joined, today: NaiveDate) -> Rated<'r> {
    let counted = what_counts(check_ins, joined.counted_dates(today));
    let keyed = counted.into_iter();
    keyed
        .map(|counted| ((counted.date, counted.concept.as_str()), counted))
        .collect()
}

/// Returns the review of `date`, or of `today` if that is `None`.
pub fn today(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    date: Option<NaiveDate>,
) -> Result<Today, StudentError> {
    let facts = &joined.facts;
    let date = date.unwrap_or(today);
    let at = facts.rotation.position(&facts.year, date);
    let check_ins = store.check_ins()?;
    let rated = by_date(&check_ins, joined, today);
    let concepts = facts
        .rotation
        .concepts_on(&facts.year, date)
        .iter()
        .map(|concept| {
            let event = rated.get(&(date, concept.as_str()));
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
        catch_up: unrated(joined, &rated, today),
    })
}

/// Returns recent school days before `today` that have a concept without a rating, newest
/// first.
pub fn catch_up(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
) -> Result<Vec<NaiveDate>, StudentError> {
    let check_ins = store.check_ins()?;
    Ok(unrated(joined, &by_date(&check_ins, joined, today), today))
}

/// As [`catch_up`]. Days before the first check-in are left out, because the student may have
/// joined after them.
fn unrated(joined: &Joined, rated: &Rated<'_>, today: NaiveDate) -> Vec<NaiveDate> {
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
                        .get(&(*date, c.as_str()))
                        .is_none_or(|e| e.confidence.is_none())
                })
        })
        .take(CATCH_UP_OFFERED)
        .collect()
}

/// Both values that the screen shows after a tap.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tapped {
    /// The rating shown.
    pub confidence: Option<Confidence>,
    /// The outcome shown.
    pub outcome: Option<Outcome>,
}

/// Writes what a tap changed. It is on disk when this returns.
///
/// A value gets a new place in the order of events only if it differs from the one that
/// counts. So an outcome marked here does not override a rating that another device gave in
/// the meantime.
///
/// # Errors
/// [`StudentError::NotADayToRate`] if the date is in the future or no school day,
/// [`StudentError::NoSuchConcept`] if the concept is not in the review of that date.
pub fn check_in(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    date: NaiveDate,
    concept: &str,
    tapped: Tapped,
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
    let concept = ConceptId::new(concept).map_err(|_| StudentError::NoSuchConcept)?;
    store.transaction(|| {
        let before = store.check_ins_of(date, &concept)?;
        let counted = what_counts(&before, joined.counted_dates(today));
        let shown = counted.first();
        let mut entry = before
            .iter()
            .find(|entry| entry.device == joined.student.device)
            .cloned()
            .unwrap_or(CheckIn {
                device: joined.student.device.clone(),
                date,
                concept: concept.clone(),
                confidence: None,
                outcome: None,
            });
        let at = store.next_sequence()?;
        let rated = shown.and_then(|shown| shown.confidence) != tapped.confidence;
        let marked = shown.and_then(|shown| shown.outcome) != tapped.outcome;
        if rated {
            let value = tapped.confidence;
            entry.confidence = Some(Said { at, value });
        }
        if marked {
            let value = tapped.outcome;
            entry.outcome = Some(Said { at, value });
        }
        if rated || marked {
            store.add_check_in(&entry)?;
        }
        Ok(())
    })
}
