//! Which day of the rotation the class is on, as far as this device can know.
//!
//! The class pack says it. A device without the newest pack may be wrong, after a closure for
//! instance; then the student says the day, and the days after it follow from there. A pack
//! that was made on that date or later settles what was said. A mark is kept under its date
//! and its concept, so none of this moves a mark.

use super::{Joined, StudentError};
use chrono::NaiveDate;
use surefoot_catalogue::rotation::Position;
use surefoot_exchange::ClassPack;
use surefoot_record::{Field, Rule};
use surefoot_store::StudentStore;
use surefoot_store::student::SaidDay;

/// Returns what the student said and no pack has settled, by date.
pub(super) fn unsettled(
    store: &StudentStore,
    pack: &ClassPack,
) -> Result<Vec<SaidDay>, StudentError> {
    let mut said = store.said_days()?;
    said.retain(|said| {
        let settled = pack.version > said.pack_version && pack.issued_on >= said.date;
        !settled && (1..=pack.rotation.len()).contains(&said.day)
    });
    Ok(said)
}

impl Joined {
    /// Pass and day of `date`; `None` on a day without school.
    pub(super) fn position(&self, date: NaiveDate) -> Option<Position> {
        let at = self.said.partition_point(|said| said.date < date);
        let (earlier, later) = self.said.split_at_checked(at)?;
        let number = match later.first().filter(|said| said.date == date) {
            Some(said) => self.number_said(*said, earlier),
            None if self.facts.year.is_school_day(date) => self.days_before(date, earlier),
            None => return None,
        };
        Some(self.facts.rotation.position_of_number(number))
    }

    /// The concepts of `date` in the order of the review; none on a day without school.
    pub(super) fn review_on(&self, date: NaiveDate) -> &[String] {
        self.position(date)
            .and_then(|at| self.facts.rotation.days().get(at.day))
            .map_or(&[], Vec::as_slice)
    }

    /// What the student said that decides the day of `date`; `None` if the pack does.
    pub(super) fn said_for(&self, date: NaiveDate) -> Option<SaidDay> {
        let said = self.said.iter().rev();
        { said }.find(|said| said.date <= date).copied()
    }

    /// How many school days of the class come before `date`, where `said` is what was said for
    /// dates before it.
    fn days_before(&self, date: NaiveDate, said: &[SaidDay]) -> usize {
        let year = &self.facts.year;
        match said.split_last() {
            None => year.school_days_before(date),
            Some((last, earlier)) => {
                let through = last.date.succ_opt().unwrap_or(last.date);
                let since = year.school_days_before(date) - year.school_days_before(through);
                self.number_said(*last, earlier) + 1 + since
            }
        }
    }

    /// The number of a school day whose day of the rotation the student said, from 0: the one
    /// with that day which is nearest to what is known otherwise. Of two as near, the earlier
    /// one, because a class is rather behind its calendar than ahead.
    fn number_said(&self, said: SaidDay, earlier: &[SaidDay]) -> usize {
        let (known, days) = (
            self.days_before(said.date, earlier),
            self.facts.rotation.day_count(),
        );
        let ahead = (said.day - 1 + days - known % days) % days;
        let behind = (days - ahead) % days;
        if behind <= ahead && behind <= known {
            known - behind
        } else {
            known + ahead
        }
    }
}

/// Writes which day of the rotation, from 1, the class is on. Without a day, the days are those
/// of the class pack again.
///
/// # Errors
/// [`StudentError::NotADayToRate`] for a date after today or before the school year,
/// [`StudentError::Invalid`] for a day that the rotation does not have.
pub fn say_day(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    date: NaiveDate,
    day: Option<usize>,
) -> Result<(), StudentError> {
    if date > today || date < joined.facts.year.first_day {
        return Err(StudentError::NotADayToRate);
    }
    let Some(day) = day else {
        return Ok(store.remove_said_days()?);
    };
    if !(1..=joined.facts.rotation.day_count()).contains(&day) {
        return Err(StudentError::Invalid {
            field: Field::Dates,
            rule: Rule::Range,
        });
    }
    store.put_said_day(SaidDay {
        date,
        day,
        pack_version: joined.pack.version,
    })?;
    Ok(())
}
