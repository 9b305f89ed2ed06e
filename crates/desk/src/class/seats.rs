//! Names, adds and removes the seats of a class.

use super::marks::{Marks, replaced_mark, replaced_rating};
use super::open::{OpenClass, open_class};
use super::roster::{LONGEST_NAME_CHARACTERS, MOST_SEATS};
use super::roster_name::composed;
use super::views::SeatHoldings;
use crate::error::{DeskError, Field, Rule, Thing, faulty};
use std::collections::BTreeSet;
use surefoot_catalogue::without_turns;
use surefoot_exchange::{ClassSigns, draw_seat_token, make_seat_code};
use surefoot_record::SeatToken;
use surefoot_store::DeskStore;
use surefoot_store::desk::{RemovedRows, SeatRow};

/// A name as it is stored, without signs that turn the direction of writing; `None` if nothing is left.
pub(crate) fn checked_name(name: &str) -> Result<Option<String>, DeskError> {
    let name = composed(without_turns(name).trim());
    if name.chars().count() > LONGEST_NAME_CHARACTERS || name.chars().any(char::is_control) {
        return Err(DeskError::invalid(Field::Names, Rule::TooLong));
    }
    Ok((!name.is_empty()).then_some(name))
}

pub(super) fn checked_names(names: &[String]) -> Result<Vec<Option<String>>, DeskError> {
    names.iter().map(|name| checked_name(name)).collect()
}

/// Adds seats with the next numbers, each with its own token.
pub(super) fn seat_students(
    desk: &DeskStore,
    class: &str,
    signs: &ClassSigns,
    names: &[Option<String>],
    seed: &[u8; 32],
) -> Result<(), DeskError> {
    let there = desk.seats(class)?;
    let mut taken: BTreeSet<String> = there.iter().map(|s| s.token.clone()).collect();
    let last = there.iter().map(|s| s.number).max().unwrap_or(0);
    let mut draw = last;
    for (number, name) in (last + 1..).zip(names) {
        let token = loop {
            draw += 1;
            let token = draw_seat_token(signs, seed, draw);
            if taken.insert(token.as_str().to_owned()) {
                break token;
            }
        };
        desk.add_seat(
            class,
            &SeatRow {
                number,
                token: token.as_str().to_owned(),
                name: name.clone(),
            },
        )?;
    }
    Ok(())
}

/// The signs of a class in the seat codes of its slips.
pub(crate) fn class_signs(class: &OpenClass) -> Result<ClassSigns, DeskError> {
    ClassSigns::new(class.row.class_signs.clone()).map_err(faulty)
}

/// The code on the join slip of a seat.
pub(crate) fn seat_code(class: &ClassSigns, seat: &SeatRow) -> Result<String, DeskError> {
    let token = SeatToken::new(seat.token.clone()).map_err(faulty)?;
    make_seat_code(class, &token).ok_or_else(|| DeskError::Faulty("seat token".into()))
}

/// Names a seat, or removes its name.
pub fn name_seat(
    desk: &DeskStore,
    class: &str,
    seat: u32,
    name: Option<&str>,
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    class.check_seat(seat)?;
    let name = checked_name(name.unwrap_or_default())?;
    desk.name_seat(&class.row.id, seat, name.as_deref())?;
    Ok(())
}

/// Adds seats. The shell draws `seed`.
///
/// # Errors
/// Returns [`DeskError::Invalid`] above [`MOST_SEATS`] or for a name.
pub fn add_seats(
    desk: &DeskStore,
    class: &str,
    names: &[String],
    seed: &[u8; 32],
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    let names = checked_names(names)?;
    if class.seats.len() + names.len() > MOST_SEATS {
        return Err(DeskError::invalid(Field::Names, Rule::TooMany));
    }
    let signs = class_signs(&class)?;
    desk.transaction(|| seat_students(desk, &class.row.id, &signs, &names, seed))
}

/// Counts what the desk has of a seat. The screen shows it before a removal.
pub fn seat_holdings(desk: &DeskStore, class: &str, seat: u32) -> Result<SeatHoldings, DeskError> {
    let class = open_class(desk, class)?;
    class.check_seat(seat)?;
    let held = desk.seat_holdings(&class.row.id, seat)?;
    Ok(SeatHoldings {
        hand_ins: held.hand_ins,
        reports: held.reports,
        answers: held.answers,
        observations: held.observations,
    })
}

/// Returns whether a file name shows whose seat the file is for: by the seat's token, or by the
/// student's name as words of its own.
fn shows(file: &str, seat: &SeatRow) -> bool {
    let words = |text: &str| -> Vec<String> {
        (text.split(|c: char| !c.is_alphanumeric()))
            .filter(|word| !word.is_empty())
            .map(str::to_lowercase)
            .collect()
    };
    let (file, name) = (words(file), words(seat.name.as_deref().unwrap_or_default()));
    let token = seat.token.to_lowercase();
    let has_name = !name.is_empty() && file.windows(name.len()).any(|some| some == name);
    has_name || file.contains(&token)
}

/// Removes a seat with its reports, and returns the removed rows. Its hand-ins are refused from then
/// on. The log of share-safe tables keeps which of its ratings were equal; with the random `seed`,
/// which nobody keeps, nothing there leads back to it.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for the last seat of a class.
pub fn remove_seat(
    desk: &DeskStore,
    class: &str,
    seat: u32,
    seed: &[u8; 32],
) -> Result<RemovedRows, DeskError> {
    let class = open_class(desk, class)?;
    let id = class.row.id.as_str();
    let row = (class.seats.iter())
        .find(|row| row.number == seat)
        .ok_or(DeskError::NotFound(Thing::Seat))?;
    if class.seats.len() == 1 {
        return Err(DeskError::invalid(Field::Seats, Rule::TooFew));
    }
    desk.transaction(|| {
        desk.claim_import_files(id, seat, |file| shows(file, row))?;
        let mut held = desk.rows_to_remove(id, Some(seat))?;
        replace_marks(desk, &class, row, &mut held, seed)?;
        desk.remove_seat(id, seat)?;
        Ok(held)
    })
}

/// Replaces the marks of a seat that leaves its class in the log of share-safe tables, and adds
/// those before to the removed rows.
fn replace_marks(
    desk: &DeskStore,
    class: &OpenClass,
    row: &SeatRow,
    held: &mut RemovedRows,
    seed: &[u8; 32],
) -> Result<(), DeskError> {
    let id = class.row.id.as_str();
    let mark = Marks::of(class)?.seat(&row.token)?;
    desk.remove_released(held, &mark, &replaced_mark(seed, &mark)?)?;
    let replaced = desk
        .released_ratings(id)?
        .into_iter()
        .filter(|(_, rating)| rating.seat_mark == mark)
        .map(|(place, rating)| Ok((place, replaced_rating(seed, rating)?)))
        .collect::<Result<Vec<_>, DeskError>>()?;
    Ok(desk.replace_released(id, &mark, &replaced)?)
}

/// Moves a student with everything that the desk has of them to a new seat of another class, and
/// returns the number of that seat and the other rows of the earlier one. Restoring these moves the
/// student back. Pairs, groups, absences and assignments stay in the earlier class; an assignment
/// for this student alone is withdrawn. The shell draws the seeds, of the new token and of the marks
/// that replace those of the seat in the log of share-safe tables.
///
/// Hand-ins that still name the earlier seat count at the new one (see [`crate::Import`]).
///
/// # Errors
/// Returns [`DeskError::Invalid`] for the last seat of a class, for the same class, and above
/// [`MOST_SEATS`].
pub fn move_seat(
    desk: &DeskStore,
    class: &str,
    seat: u32,
    to: &str,
    seeds: [&[u8; 32]; 2],
) -> Result<(u32, RemovedRows), DeskError> {
    let [token_seed, marks_seed] = seeds;
    let (from, to) = (open_class(desk, class)?, open_class(desk, to)?);
    let (from_id, to_id) = (from.row.id.as_str(), to.row.id.as_str());
    let row = (from.seats.iter())
        .find(|row| row.number == seat)
        .ok_or(DeskError::NotFound(Thing::Seat))?;
    if from_id == to_id {
        return Err(DeskError::invalid(Field::Class, Rule::AlreadyHere));
    }
    if from.seats.len() == 1 {
        return Err(DeskError::invalid(Field::Seats, Rule::TooFew));
    }
    desk.transaction(|| {
        let number = seat_student(desk, &to, row.name.clone(), token_seed)?;
        desk.move_work((from_id, seat), (to_id, number))?;
        let mut left = desk.leave_seat(from_id, seat, (to_id, number))?;
        replace_marks(desk, &from, row, &mut left, marks_seed)?;
        desk.remove_seat(from_id, seat)?;
        Ok((number, left))
    })
}

/// Adds one seat to a class and returns its number.
///
/// # Errors
/// Returns [`DeskError::Invalid`] above [`MOST_SEATS`].
pub(crate) fn seat_student(
    desk: &DeskStore,
    class: &OpenClass,
    name: Option<String>,
    seed: &[u8; 32],
) -> Result<u32, DeskError> {
    if class.seats.len() >= MOST_SEATS {
        return Err(DeskError::invalid(Field::Names, Rule::TooMany));
    }
    let id = class.row.id.as_str();
    seat_students(desk, id, &class_signs(class)?, &[name], seed)?;
    let seats = desk.seats(id)?;
    let added = seats.last().ok_or(DeskError::NotFound(Thing::Seat))?;
    Ok(added.number)
}
