//! The only clock. It knows dates and how much time has passed, and no time of day.

use chrono::{Datelike, NaiveDate, Weekday};
use std::time::Duration;
#[cfg(not(target_family = "wasm"))]
use std::time::{Instant, SystemTime};
#[cfg(target_family = "wasm")]
use web_time::{Instant, SystemTime};

/// A clock.
pub trait Clock: Send + Sync {
    /// Today, by the calendar and the time zone of this device.
    fn today(&self) -> NaiveDate;

    /// This moment.
    fn moment(&self) -> Moment {
        Moment::now()
    }
}

/// A moment, by two clocks of the system: one may rest while the device sleeps, and the other
/// can be set back.
#[derive(Debug, Clone, Copy)]
pub struct Moment {
    steady: Instant,
    calendar: SystemTime,
}

impl Moment {
    /// This moment.
    #[must_use]
    pub fn now() -> Self {
        Self {
            steady: Instant::now(),
            calendar: SystemTime::now(),
        }
    }

    /// The moment that comes so much later.
    #[must_use]
    pub fn later(self, by: Duration) -> Self {
        Self {
            steady: self.steady + by,
            calendar: self.calendar + by,
        }
    }

    /// The time since an earlier moment, by the clock that says more.
    #[must_use]
    pub fn since(self, earlier: Self) -> Duration {
        let calendar = self.calendar.duration_since(earlier.calendar);
        (self.surely_since(earlier)).max(calendar.unwrap_or_default())
    }

    /// The time since an earlier moment, by the clock that nobody can set.
    #[must_use]
    pub fn surely_since(self, earlier: Self) -> Duration {
        self.steady.saturating_duration_since(earlier.steady)
    }
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
