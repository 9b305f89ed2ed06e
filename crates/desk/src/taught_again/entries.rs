//! Notes what was taught again.

use super::views::{NewTaughtAgain, TaughtFromWhere};
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule, Thing};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use surefoot_catalogue::without_turns;
use surefoot_store::DeskStore;
use surefoot_store::desk::{CameFrom, TaughtAgainRow};

/// Letters of a note at most.
pub const MOST_NOTE_LETTERS: usize = 200;

impl From<TaughtFromWhere> for CameFrom {
    fn from(from: TaughtFromWhere) -> Self {
        match from {
            TaughtFromWhere::Talk => Self::Talk,
            TaughtFromWhere::Group => Self::Group,
            TaughtFromWhere::Assignment => Self::Assignment,
            TaughtFromWhere::Hand => Self::Hand,
        }
    }
}

impl From<CameFrom> for TaughtFromWhere {
    fn from(from: CameFrom) -> Self {
        match from {
            CameFrom::Talk => Self::Talk,
            CameFrom::Group => Self::Group,
            CameFrom::Assignment => Self::Assignment,
            CameFrom::Hand => Self::Hand,
        }
    }
}

/// Notes that a concept was taught again. The same concept, date and students are noted once.
///
/// # Errors
/// Returns [`DeskError::NotFound`] for an unknown seat, concept or entry, and [`DeskError::Invalid`]
/// for a date that is no school day or in the future, and for a note that is too long.
pub fn note_taught_again(
    desk: &DeskStore,
    class: &OpenClass,
    new: &NewTaughtAgain,
    today: NaiveDate,
) -> Result<(), DeskError> {
    if new.date > today || !class.facts.year.is_school_day(new.date) {
        return Err(DeskError::invalid(Field::Dates, Rule::Range));
    }
    class.check_concept(&new.concept)?;
    for seat in &new.seats {
        class.check_seat(*seat)?;
    }
    let note = (new.note.as_deref())
        .map(|note| without_turns(note).trim().to_owned())
        .filter(|note| !note.is_empty());
    if (note.as_deref()).is_some_and(|note| note.chars().count() > MOST_NOTE_LETTERS) {
        return Err(DeskError::invalid(Field::Note, Rule::TooLong));
    }
    let id = class.row.id.as_str();
    desk.transaction(|| {
        let there = desk.taught_again(id)?;
        if let Some(replaces) = new.replaces
            && !there.iter().any(|entry| entry.id == replaces)
        {
            return Err(DeskError::NotFound(Thing::Entry));
        }
        let whole_class = new.seats.is_empty();
        let chosen: BTreeSet<u32> = if whole_class {
            let absent = desk.absences(id, new.date)?;
            let seats = class.seats.iter().map(|seat| seat.number);
            seats.filter(|seat| !absent.contains(seat)).collect()
        } else {
            new.seats.iter().copied().collect()
        };
        let seats: Vec<u32> = chosen.into_iter().collect();
        let same = there.iter().find(|entry| {
            entry.date == new.date
                && entry.concept == new.concept
                && entry.whole_class == whole_class
                && (whole_class || entry.seats == seats)
        });
        desk.put_taught_again(
            id,
            &TaughtAgainRow {
                id: new.replaces.or(same.map(|entry| entry.id)).unwrap_or(0),
                date: new.date,
                concept: new.concept.clone(),
                came_from: new.came_from.into(),
                whole_class,
                seats,
                note: note.or(same
                    .and_then(|entry| entry.note.clone())
                    .filter(|_| new.replaces.is_none())),
            },
        )?;
        Ok(())
    })
}

/// Removes an entry, if there is one. The reports stay.
pub fn drop_taught_again(desk: &DeskStore, class: &OpenClass, id: i64) -> Result<(), DeskError> {
    Ok(desk.drop_taught_again(&class.row.id, id)?)
}

/// Notes that the kept groups of a date in which a student worked on a concept took place, once
/// something is recorded of them. Partners and those who were absent were not taught.
pub(crate) fn note_group(
    desk: &DeskStore,
    class: &OpenClass,
    date: NaiveDate,
    seat: u32,
    concept: &str,
) -> Result<(), DeskError> {
    let id = class.row.id.as_str();
    let absent = desk.absences(id, date)?;
    let there = desk.taught_again(id)?;
    for group in desk.small_groups(id, date)? {
        if group.concept != concept || !group.seats.contains(&seat) {
            continue;
        }
        let seats: Vec<u32> = (group.seats.into_iter())
            .filter(|of| !group.partners.contains(of) && (*of == seat || !absent.contains(of)))
            .collect();
        let noted = there.iter().any(|entry| {
            entry.date == date
                && entry.concept == concept
                && entry.came_from == CameFrom::Group
                && seats.iter().any(|of| entry.seats.contains(of))
        });
        if !noted && !seats.is_empty() {
            desk.put_taught_again(
                id,
                &TaughtAgainRow {
                    id: 0,
                    date,
                    concept: concept.to_owned(),
                    came_from: CameFrom::Group,
                    whole_class: false,
                    seats,
                    note: None,
                },
            )?;
        }
    }
    Ok(())
}
