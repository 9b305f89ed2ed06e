//! School days, closures and the school year.
//!
//! A school day is a date inside the year, on one of the class's weekdays,
//! that is not a closure. Rotation day, pass and phase count school days, never
//! calendar days, so a closure moves everything after it by one school day.

use chrono::{Datelike, NaiveDate};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use thiserror::Error;
use ts_rs::TS;

/// The longest school year, in calendar days.
pub const LONGEST_YEAR_DAYS: i64 = 400;

/// Why a school year was refused.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum CalendarError {
    /// The last day comes before the first.
    #[error("the last school day {last_day} comes before the first, {first_day}")]
    EndsBeforeStart {
        /// First day as given.
        first_day: NaiveDate,
        /// Last day as given.
        last_day: NaiveDate,
    },
    /// More calendar days than a school year can have.
    #[error("{days} calendar days are too many for one school year (at most {most})")]
    TooLong {
        /// Calendar days from first to last.
        #[ts(type = "number")]
        days: i64,
        /// [`LONGEST_YEAR_DAYS`].
        #[ts(type = "number")]
        most: i64,
    },
    /// A weekday number outside 1 (Monday) to 7 (Sunday).
    #[error("weekday {found} is not between 1 (Monday) and 7 (Sunday)")]
    NoSuchWeekday {
        /// The number as given.
        found: u8,
    },
    /// The year has no school day.
    #[error("no school day is left in this year")]
    NoSchoolDay,
}

/// A class's school year.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct SchoolYear {
    /// First calendar day of the year.
    pub first_day: NaiveDate,
    /// Last calendar day of the year.
    pub last_day: NaiveDate,
    /// Weekdays on which the class meets, ISO 8601: 1 is Monday, 7 is Sunday.
    #[ts(type = "number[]")]
    pub weekdays: BTreeSet<u8>,
    /// Dates without school: holidays, closures, pupil-free days.
    #[ts(type = "string[]")]
    pub closures: BTreeSet<NaiveDate>,
}

impl SchoolYear {
    /// Makes a year and checks it.
    pub fn new(
        first_day: NaiveDate,
        last_day: NaiveDate,
        weekdays: BTreeSet<u8>,
        closures: BTreeSet<NaiveDate>,
    ) -> Result<Self, CalendarError> {
        let year = Self {
            first_day,
            last_day,
            weekdays,
            closures,
        };
        year.check()?;
        Ok(year)
    }

    /// Checks a year that was read from a file or a store.
    pub fn check(&self) -> Result<(), CalendarError> {
        if self.last_day < self.first_day {
            return Err(CalendarError::EndsBeforeStart {
                first_day: self.first_day,
                last_day: self.last_day,
            });
        }
        let days = (self.last_day - self.first_day).num_days() + 1;
        if days > LONGEST_YEAR_DAYS {
            return Err(CalendarError::TooLong {
                days,
                most: LONGEST_YEAR_DAYS,
            });
        }
        if let Some(&found) = self.weekdays.iter().find(|d| !(1..=7).contains(*d)) {
            return Err(CalendarError::NoSuchWeekday { found });
        }
        if self.school_days().next().is_none() {
            return Err(CalendarError::NoSchoolDay);
        }
        Ok(())
    }

    /// Whether the class meets on `date`.
    #[must_use]
    pub fn is_school_day(&self, date: NaiveDate) -> bool {
        date >= self.first_day
            && date <= self.last_day
            && u8::try_from(date.weekday().number_from_monday())
                .is_ok_and(|d| self.weekdays.contains(&d))
            && !self.closures.contains(&date)
    }

    /// Whether `date` is between the first and the last day, with or without school.
    #[must_use]
    pub fn contains(&self, date: NaiveDate) -> bool {
        date >= self.first_day && date <= self.last_day
    }

    /// Every school day in order.
    pub fn school_days(&self) -> impl Iterator<Item = NaiveDate> + '_ {
        self.first_day
            .iter_days()
            .take_while(|d| *d <= self.last_day)
            .filter(|d| self.is_school_day(*d))
    }

    /// Returns how many school days come before `date`. For a school day this is its
    /// number, from 0.
    #[must_use]
    pub fn school_days_before(&self, date: NaiveDate) -> usize {
        self.school_days().take_while(|d| *d < date).count()
    }

    /// The number of `date` among the school days, from 0.
    #[must_use]
    pub fn school_day_number(&self, date: NaiveDate) -> Option<usize> {
        self.is_school_day(date)
            .then(|| self.school_days_before(date))
    }

    /// The first school day after `date`.
    #[must_use]
    pub fn next_school_day(&self, date: NaiveDate) -> Option<NaiveDate> {
        self.school_days().find(|d| *d > date)
    }

    /// The last school day on or before `date`.
    #[must_use]
    pub fn latest_school_day(&self, date: NaiveDate) -> Option<NaiveDate> {
        self.school_days().take_while(|d| *d <= date).last()
    }
}

/// Monday to Friday.
#[must_use]
pub fn monday_to_friday() -> BTreeSet<u8> {
    (1..=5).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn date(text: &str) -> NaiveDate {
        text.parse().unwrap()
    }

    fn year(closures: &[&str]) -> SchoolYear {
        SchoolYear::new(
            date("2026-08-31"),
            date("2027-05-07"),
            monday_to_friday(),
            closures.iter().map(|d| date(d)).collect(),
        )
        .unwrap()
    }

    /// 36 weeks of five days are 180 school days (common practice).
    #[test]
    fn thirty_six_weeks_are_180_school_days() {
        assert_eq!(year(&[]).school_days().count(), 180);
    }

    #[test]
    fn a_closure_is_no_school_day_and_moves_the_count() {
        let plain = year(&[]);
        let closed = year(&["2026-09-07"]);
        assert!(plain.is_school_day(date("2026-09-07")));
        assert!(!closed.is_school_day(date("2026-09-07")));
        assert_eq!(plain.school_day_number(date("2026-09-08")), Some(6));
        assert_eq!(closed.school_day_number(date("2026-09-08")), Some(5));
        assert_eq!(closed.school_day_number(date("2026-09-07")), None);
        assert_eq!(
            closed.next_school_day(date("2026-09-04")),
            Some(date("2026-09-08"))
        );
        assert_eq!(
            closed.latest_school_day(date("2026-09-07")),
            Some(date("2026-09-04"))
        );
    }

    #[test]
    fn bad_years_are_refused_by_reason() {
        let none = BTreeSet::new();
        assert!(matches!(
            SchoolYear::new(
                date("2027-01-02"),
                date("2027-01-01"),
                monday_to_friday(),
                none.clone()
            ),
            Err(CalendarError::EndsBeforeStart { .. })
        ));
        assert!(matches!(
            SchoolYear::new(
                date("2026-01-01"),
                date("2028-01-01"),
                monday_to_friday(),
                none.clone()
            ),
            Err(CalendarError::TooLong { days: 731, .. })
        ));
        assert_eq!(
            SchoolYear::new(
                date("2026-01-01"),
                date("2026-02-01"),
                [0].into(),
                none.clone()
            ),
            Err(CalendarError::NoSuchWeekday { found: 0 })
        );
        assert_eq!(
            SchoolYear::new(
                date("2026-01-03"),
                date("2026-01-04"),
                monday_to_friday(),
                none
            ),
            Err(CalendarError::NoSchoolDay)
        );
    }

    proptest! {
        #[test]
        fn counting_and_listing_agree(offset in 0_i64..300, closed in proptest::collection::btree_set(0_i64..250, 0..30)) {
            let first = date("2026-08-31");
            let year = SchoolYear::new(
                first, first + chrono::Days::new(249), monday_to_friday(),
                closed.iter().map(|d| first + chrono::Duration::days(*d)).collect(),
            ).unwrap();
            let asked = first + chrono::Duration::days(offset);
            let listed: Vec<_> = year.school_days().collect();
            prop_assert_eq!(year.school_day_number(asked), listed.iter().position(|d| *d == asked));
            prop_assert_eq!(year.next_school_day(asked), listed.iter().copied().find(|d| *d > asked));
        }
    }
}
