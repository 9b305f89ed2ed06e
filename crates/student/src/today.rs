//! The check-in: the concepts of a date, each with its rating and its outcome.

use super::views::{Today, TodayConcept};
use super::{Joined, StudentError};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_record::{CheckIn, Counted, Said, what_counts};
use surefoot_store::StudentStore;
use ts_rs::TS;

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
    let at = joined.position(date);
    let check_ins = store.check_ins_in(date..=date)?;
    let rated = by_date(&check_ins, joined, today);
    let review = joined.review_on(date);
    let shown = |concept: &str, in_review: bool| {
        let event = rated.get(&(date, concept));
        TodayConcept {
            concept: joined.name(concept),
            phase: facts.phase(concept, date),
            confidence: event.and_then(|e| e.confidence),
            outcome: event.and_then(|e| e.outcome),
            in_review,
        }
    };
    let mut concepts: Vec<TodayConcept> =
        review.iter().map(|concept| shown(concept, true)).collect();
    // Marks of a day that another pack, or the student, has changed since.
    let others = (rated.keys()).map(|(_, concept)| *concept).filter(|id| {
        facts.concepts.contains_key(*id) && !review.iter().any(|concept| concept == id)
    });
    let others = others.map(|concept| shown(concept, false));
    concepts.extend(others.filter(|of| of.confidence.is_some() || of.outcome.is_some()));
    Ok(Today {
        date,
        today,
        pass: at.map(|at| at.pass + 1),
        day: at.map(|at| at.day + 1),
        rotation_days: facts.rotation.day_count(),
        said_on: joined.said_for(date).map(|said| said.date),
        concepts,
        next_school_day: if at.is_none() {
            facts.year.next_school_day(date)
        } else {
            None
        },
        catch_up: catch_up(store, joined, today)?,
    })
}

/// Returns recent school days before `today` that have a concept without a rating, newest
/// first. Days before the first check-in are left out, because the student may have joined
/// after them.
pub fn catch_up(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
) -> Result<Vec<NaiveDate>, StudentError> {
    let year = &joined.facts.year;
    let yesterday = today.pred_opt().unwrap_or(today);
    let last = joined.counted_dates(yesterday).last();
    let mut recent: Vec<NaiveDate> = std::iter::successors(Some(last), NaiveDate::pred_opt)
        .take_while(|date| *date >= year.first_day)
        .filter(|date| joined.position(*date).is_some())
        .take(CATCH_UP_SCHOOL_DAYS)
        .collect();
    recent.reverse();
    let Some(first_rated) = first_rated(store, joined, today)? else {
        return Ok(Vec::new());
    };
    recent.retain(|date| *date >= first_rated);
    let (Some(first), Some(last)) = (recent.first(), recent.last()) else {
        return Ok(Vec::new());
    };
    let check_ins = store.check_ins_in(*first..=*last)?;
    let rated = by_date(&check_ins, joined, today);
    let has_unrated = |date: &NaiveDate| {
        (joined.review_on(*date).iter()).any(|concept| {
            let counted = rated.get(&(*date, concept.as_str()));
            counted.is_none_or(|counted| counted.confidence.is_none())
        })
    };
    Ok((recent.iter().rev())
        .filter(|date| has_unrated(date))
        .take(CATCH_UP_OFFERED)
        .copied()
        .collect())
}

/// Returns the first date with a check-in that counts. It reads date by date, because what
/// counts on a date depends on no other date, and the first one is nearly always the answer.
fn first_rated(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
) -> Result<Option<NaiveDate>, StudentError> {
    let dates = joined.counted_dates(today);
    let mut next = Some(dates.first());
    while let Some(from) = next {
        let Some(date) = store.first_check_in_date(from..=dates.last())? else {
            break;
        };
        if !what_counts(&store.check_ins_in(date..=date)?, dates).is_empty() {
            return Ok(Some(date));
        }
        next = date.succ_opt();
    }
    Ok(None)
}

/// What the screen shows of a concept after a tap: both values, of which one has changed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Tap {
    /// The school date.
    pub date: NaiveDate,
    /// The concept.
    pub concept: String,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// The outcome.
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
/// [`StudentError::NoSuchConcept`] if the concept is not in the review of that date and was not
/// marked on it before.
pub fn check_in(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    tap: &Tap,
) -> Result<(), StudentError> {
    let date = tap.date;
    if date > today {
        return Err(StudentError::NotADayToRate);
    }
    let concept = ConceptId::new(tap.concept.as_str()).map_err(|_| StudentError::NoSuchConcept)?;
    let in_review = joined.review_on(date).contains(&tap.concept);
    store.transaction(|| {
        let before = store.check_ins_of(date, &concept)?;
        if !in_review && before.is_empty() {
            return Err(match joined.position(date) {
                None => StudentError::NotADayToRate,
                Some(_) => StudentError::NoSuchConcept,
            });
        }
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
        let rated = shown.and_then(|shown| shown.confidence) != tap.confidence;
        let marked = shown.and_then(|shown| shown.outcome) != tap.outcome;
        if rated {
            let value = tap.confidence;
            entry.confidence = Some(Said { at, value });
        }
        if marked {
            let value = tap.outcome;
            entry.outcome = Some(Said { at, value });
        }
        if rated || marked {
            store.add_check_in(&entry)?;
        }
        Ok(())
    })
}
