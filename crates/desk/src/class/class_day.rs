//! The day of the class: where it is in the rotation, "no school today", and who does not know.

use super::heard::heard_devices;
use super::open::{OpenClass, open_class};
use super::setup::set_closures;
use super::views::{ClassDay, DayAhead, DaysKnown, NamedSeat};
use crate::error::{DeskError, Field, Rule};
use chrono::NaiveDate;
use surefoot_store::DeskStore;

/// The day of the class on `today`.
pub fn class_day(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<ClassDay, DeskError> {
    let (year, rotation) = (&class.facts.year, &class.facts.rotation);
    let at = rotation.position(year, today);
    Ok(ClassDay {
        today,
        day: at.map(|at| at.day + 1),
        rotation_days: rotation.day_count(),
        pass: rotation.pass_on(year, today) + 1,
        pass_count: rotation.pass_count(year),
        closed: year.closures.contains(&today),
        next: year.next_school_day(today).and_then(|date| {
            let day = rotation.position(year, date)?.day + 1;
            Some(DayAhead { date, day })
        }),
        first_day: year.first_day,
        last_day: year.last_day,
        closures: year.closures.iter().copied().collect(),
        known: days_known(desk, class)?,
    })
}

/// Makes a date a day without school, or a school day again. The days of the rotation after it
/// move. Reports keep their dates and count as before.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if the date is no school day anyway,
/// [`DeskError::Calendar`] if no school day is left.
pub fn close_day(
    desk: &DeskStore,
    class: &str,
    date: NaiveDate,
    closed: bool,
) -> Result<(), DeskError> {
    let year = open_class(desk, class)?.facts.year;
    if closed && !year.is_school_day(date) {
        return Err(DeskError::invalid(Field::Dates, Rule::Missing));
    }
    let mut closures = year.closures;
    if closed {
        closures.insert(date);
    } else {
        closures.remove(&date);
    }
    set_closures(desk, class, closures)
}

/// Which seats' devices are known not to have the year and the rotation of today.
fn days_known(desk: &DeskStore, class: &OpenClass) -> Result<DaysKnown, DeskError> {
    let mut known = DaysKnown::default();
    if class.row.pack_version == 0 {
        return Ok(known);
    }
    let heard = heard_devices(desk, class)?;
    for seat in &class.seats {
        match heard.get(&seat.number).and_then(|devices| devices.first()) {
            None => known.unheard += 1,
            Some(newest) if newest.knows_days => {}
            Some(_) => known.unaware.push(NamedSeat {
                seat: seat.number,
                name: seat.name.clone(),
            }),
        }
    }
    Ok(known)
}
