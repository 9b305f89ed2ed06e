//! Paper entries and observations of a day.

use super::views::{EntryCell, EntryDay, EntryMade, EntryRow, EntryValue};
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Confidence;
use surefoot_record::{CheckInSource, CountedDates, Counting};
use surefoot_store::DeskStore;
use surefoot_store::desk::{ObservationRow, PaperCheckIn};

/// The entries of a day: from paper, from devices and from the teacher.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for a date outside the year or in the future.
pub fn entry_day(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    date: NaiveDate,
    today: NaiveDate,
) -> Result<EntryDay, DeskError> {
    let facts = &class.facts;
    check_date(class, date, today)?;
    let ids: Vec<&String> = facts
        .rotation
        .concepts_on(&facts.year, date)
        .iter()
        .collect();
    let place: BTreeMap<&str, usize> = ids
        .iter()
        .enumerate()
        .map(|(at, id)| (id.as_str(), at))
        .collect();
    let mut rows: Vec<EntryRow> = class
        .seats
        .iter()
        .map(|seat| EntryRow {
            seat: seat.number,
            name: seat.name.clone(),
            cells: vec![EntryCell::default(); ids.len()],
        })
        .collect();
    let at_seat: BTreeMap<u32, usize> = rows
        .iter()
        .enumerate()
        .map(|(at, row)| (row.seat, at))
        .collect();
    let mut with = |seat: u32, concept: &str, fill: &dyn Fn(&mut EntryCell)| {
        if let (Some(row), Some(cell)) = (at_seat.get(&seat), place.get(concept))
            && let Some(cell) = rows.get_mut(*row).and_then(|row| row.cells.get_mut(*cell))
        {
            fill(cell);
        }
    };
    // The screen shows devices and paper side by side, so neither overrides the other here.
    let dates = CountedDates::of(&facts.year, today);
    let mut devices: BTreeMap<u32, Counting<String, u32>> = BTreeMap::new();
    desk.each_check_in(&class.row.id, Some(date), |row, said| match said {
        CheckInSource::Device(..) => {
            let of_seat = devices
                .entry(row.seat)
                .or_insert_with(|| Counting::new(row.seat, dates));
            of_seat.add(row.concept.to_owned(), row.date, said);
        }
        CheckInSource::Paper(confidence, outcome) => with(row.seat, row.concept, &|cell| {
            cell.rating = confidence;
            cell.outcome = outcome;
        }),
    })?;
    for counted in devices.into_values().flat_map(Counting::finish) {
        with(counted.seat, &counted.concept, &|cell| {
            cell.device_rating = counted.confidence;
            cell.device_outcome = counted.outcome;
        });
    }
    for seen in desk.observations(&class.row.id)? {
        if seen.date == date {
            with(seen.seat, &seen.concept, &|cell| match seen.confidence {
                Some(confidence) => cell.seen = Some(confidence),
                None => cell.group_result = Some(seen.has_it),
            });
        }
    }
    let year = &facts.year;
    let earlier = year.school_days().take_while(|d| *d < date).last();
    let later = year.next_school_day(date).filter(|d| *d <= today);
    Ok(EntryDay {
        date,
        day: facts.rotation.position(year, date).map(|at| at.day + 1),
        earlier,
        later,
        concepts: ids.iter().map(|id| facts.name(id, language)).collect(),
        rows,
    })
}

fn check_date(class: &OpenClass, date: NaiveDate, today: NaiveDate) -> Result<(), DeskError> {
    if date > today || !class.facts.year.contains(date) {
        return Err(DeskError::invalid(Field::Dates, Rule::Range));
    }
    Ok(())
}

/// Fills in one cell, and leaves the entries of devices unchanged.
///
/// # Errors
/// Returns [`DeskError::NotFound`] for an unknown seat or concept, [`DeskError::Invalid`] for a date
/// outside the year or in the future.
pub fn make_entry(
    desk: &DeskStore,
    class: &OpenClass,
    date: NaiveDate,
    made: &EntryMade,
    today: NaiveDate,
) -> Result<(), DeskError> {
    check_date(class, date, today)?;
    class.check_seat(made.seat)?;
    class.check_concept(&made.concept)?;
    let id = class.row.id.as_str();
    desk.transaction(|| {
        let mut paper = desk
            .paper(id, date)?
            .into_iter()
            .find(|p| p.seat == made.seat && p.concept == made.concept)
            .unwrap_or(PaperCheckIn {
                seat: made.seat,
                date,
                concept: made.concept.clone(),
                confidence: None,
                outcome: None,
            });
        match made.value {
            EntryValue::Rating { rating } => {
                paper.confidence = rating;
                desk.put_paper(id, &paper)?;
            }
            EntryValue::Outcome { outcome } => {
                paper.outcome = outcome;
                desk.put_paper(id, &paper)?;
            }
            EntryValue::Seen {
                rating: Some(rating),
            } => desk.put_observation(
                id,
                &ObservationRow {
                    seat: made.seat,
                    date,
                    concept: made.concept.clone(),
                    confidence: Some(rating),
                    has_it: rating >= Confidence::OnMyOwn,
                },
            )?,
            EntryValue::GroupResult { has_it } => desk.put_observation(
                id,
                &ObservationRow {
                    seat: made.seat,
                    date,
                    concept: made.concept.clone(),
                    confidence: None,
                    has_it,
                },
            )?,
            EntryValue::Seen { rating: None } => {
                desk.drop_observation(id, made.seat, date, &made.concept)?;
            }
        }
        Ok(())
    })
}
