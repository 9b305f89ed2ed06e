//! The only clock. It knows dates and no time of day.

use chrono::{Datelike, NaiveDate, Weekday};

/// A clock.
pub trait Clock: Send + Sync {
    /// Today, by the calendar and the time zone of this device.
    fn today(&self) -> NaiveDate;
}

/// The device's own clock.
#[derive(Debug, Clone, Copy, Default)]
pub struct DeviceClock;

impl Clock for DeviceClock {
    fn today(&self) -> NaiveDate {
        chrono::Local::now().date_naive()
    }
}

/// A clock for tests, always at one date.
#[derive(Debug, Clone, Copy)]
pub struct FixedClock(pub NaiveDate);

impl Clock for FixedClock {
    fn today(&self) -> NaiveDate {
        self.0
    }
}

/// The latest date from Monday to Friday, up to `date`.
#[must_use]
pub fn latest_weekday(date: NaiveDate) -> NaiveDate {
    let back = match date.weekday() {
        Weekday::Sat => 1,
        Weekday::Sun => 2,
        _ => 0,
    };
    date - chrono::Days::new(back)
}
