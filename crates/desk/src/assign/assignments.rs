//! Assigns practice, and counts what is done of it.

use super::views::{AssignedAmount, AssignmentReport, NewAssignment, SeatProgress};
use crate::class::OpenClass;
use crate::class::pack_stamp::stamp;
use crate::error::{DeskError, Field, Rule, Thing, faulty};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_record::{AssignmentId, CountedDates};
use surefoot_store::DeskStore;
use surefoot_store::desk::{AssignmentRow, DeviceState, PracticeReport};

/// Concepts of an assignment at most.
pub const MOST_ASSIGNED_CONCEPTS: usize = 6;

/// Exercises of each concept at most.
pub const MOST_ITEMS_EACH: u32 = 20;

/// Assigns practice, which goes into the next class pack. The shell draws `id`.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for concepts, amount, dates or seats.
pub fn assign(
    desk: &DeskStore,
    class: &OpenClass,
    new: &NewAssignment,
    id: &str,
    today: NaiveDate,
) -> Result<(), DeskError> {
    let concepts: BTreeSet<&String> = new.concepts.iter().collect();
    if concepts.is_empty() {
        return Err(DeskError::invalid(Field::Concepts, Rule::TooFew));
    }
    if concepts.len() > MOST_ASSIGNED_CONCEPTS || concepts.len() < new.concepts.len() {
        return Err(DeskError::invalid(Field::Concepts, Rule::TooMany));
    }
    for concept in concepts {
        if class.facts.rotation.day_of(concept).is_none() {
            return Err(DeskError::NotFound(Thing::Concept));
        }
        if !class.facts.has_exercises(concept) {
            return Err(DeskError::invalid(Field::Concepts, Rule::NoExercises));
        }
    }
    if new.items_each == 0 || new.items_each > MOST_ITEMS_EACH {
        return Err(DeskError::invalid(Field::Amount, Rule::Range));
    }
    if new.due < new.from || new.due < today {
        return Err(DeskError::invalid(Field::Dates, Rule::Order));
    }
    let seats: BTreeSet<u32> = new.seats.iter().copied().collect();
    if seats
        .iter()
        .any(|seat| !class.seats.iter().any(|s| s.number == *seat))
    {
        return Err(DeskError::NotFound(Thing::Seat));
    }
    let id = AssignmentId::new(id).map_err(faulty)?;
    desk.add_assignment(
        &class.row.id,
        &AssignmentRow {
            id: id.as_str().to_owned(),
            concepts: new.concepts.clone(),
            items_each: new.items_each,
            from: new.from,
            due: new.due,
            whole_class: seats.is_empty(),
            seats: seats.into_iter().collect(),
            withdrawn: false,
        },
    )?;
    Ok(())
}

/// Withdraws an assignment; devices learn of it with the next class pack.
pub fn withdraw_assignment(desk: &DeskStore, class: &OpenClass, id: &str) -> Result<(), DeskError> {
    withdrawn(desk, class, id, true)
}

/// Restores a withdrawn assignment.
pub fn restore_assignment(desk: &DeskStore, class: &OpenClass, id: &str) -> Result<(), DeskError> {
    withdrawn(desk, class, id, false)
}

fn withdrawn(
    desk: &DeskStore,
    class: &OpenClass,
    id: &str,
    withdrawn: bool,
) -> Result<(), DeskError> {
    Ok(desk.withdraw_assignment(&class.row.id, id, withdrawn)?)
}

/// The exercises of a seat that count for an assignment: those between its dates, up to the amount
/// of each concept.
fn done(practice: &[PracticeReport], row: &AssignmentRow, seat: u32) -> u32 {
    row.concepts
        .iter()
        .map(|concept| {
            practice
                .iter()
                .filter(|r| {
                    r.seat == seat
                        && &r.concept == concept
                        && r.date >= row.from
                        && r.date <= row.due
                })
                .flat_map(|r| [r.alone, r.with_help, r.wrong])
                .fold(0, u32::saturating_add)
                .min(row.items_each)
        })
        .sum()
}

/// Returns the assignments with each student's progress, withdrawn ones last.
pub fn assignments(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<Vec<AssignmentReport>, DeskError> {
    let dates = CountedDates::of(&class.facts.year, today);
    let mut practice = desk.practice(&class.row.id)?;
    practice.retain(|report| dates.contains(report.date));
    let with_device: BTreeSet<u32> = desk
        .devices(&class.row.id)?
        .into_iter()
        .filter(|d| d.state == DeviceState::Accepted)
        .map(|d| d.seat)
        .collect();
    let in_pack = class.row.pack_stamp == stamp(desk, class)?;
    Ok(desk
        .all_assignments(&class.row.id)?
        .into_iter()
        .map(|row| {
            let of = row.items_each * u32::try_from(row.concepts.len()).unwrap_or(u32::MAX);
            AssignmentReport {
                concepts: row
                    .concepts
                    .iter()
                    .map(|c| class.facts.name(c, language))
                    .collect(),
                items_each: row.items_each,
                from: row.from,
                due: row.due,
                whole_class: row.whole_class,
                in_pack,
                withdrawn: row.withdrawn,
                waiting: row
                    .seats
                    .iter()
                    .copied()
                    .filter(|s| !with_device.contains(s))
                    .collect(),
                progress: class
                    .seats
                    .iter()
                    .filter(|s| row.whole_class || row.seats.contains(&s.number))
                    .map(|s| SeatProgress {
                        seat: s.number,
                        name: s.name.clone(),
                        amount: AssignedAmount {
                            done: done(&practice, &row, s.number),
                            of,
                        },
                    })
                    .collect(),
                id: row.id,
            }
        })
        .collect())
}

/// The assigned amount of one concept for each seat, over all current assignments.
pub(crate) fn amounts(
    desk: &DeskStore,
    class: &OpenClass,
    practice: &[PracticeReport],
    concept: &str,
    today: NaiveDate,
) -> Result<BTreeMap<u32, AssignedAmount>, DeskError> {
    let mut found = BTreeMap::new();
    for row in desk.assignments(&class.row.id)? {
        if row.due < today || !row.concepts.iter().any(|c| c == concept) {
            continue;
        }
        let only = AssignmentRow {
            concepts: vec![concept.to_owned()],
            ..row.clone()
        };
        for seat in &class.seats {
            if row.whole_class || row.seats.contains(&seat.number) {
                found.insert(
                    seat.number,
                    AssignedAmount {
                        done: done(practice, &only, seat.number),
                        of: row.items_each,
                    },
                );
            }
        }
    }
    Ok(found)
}
