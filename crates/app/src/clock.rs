//! The only clock: a school date on this device's own calendar.

use chrono::NaiveDate;

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

/// A clock that stands still, so that every result can be repeated.
#[derive(Debug, Clone, Copy)]
pub struct StandingClock(pub NaiveDate);

impl Clock for StandingClock {
    fn today(&self) -> NaiveDate {
        self.0
    }
}
