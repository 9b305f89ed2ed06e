//! The only clock: a school date on the calendar of this device.

use chrono::{Datelike, NaiveDate, Weekday};

/// Says what day it is.
pub trait Clock: Send + Sync {
    /// Today on this device's calendar, in its time zone.
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

/// The last Monday-to-Friday date on or before `date`.
#[must_use]
pub fn latest_weekday(date: NaiveDate) -> NaiveDate {
    let back = match date.weekday() {
        Weekday::Sat => 1,
        Weekday::Sun => 2,
        _ => 0,
    };
    date - chrono::Days::new(back)
}
