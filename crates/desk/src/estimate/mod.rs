//! What counts of a class's reports, and the class estimate from it.

mod class_reports;
pub(crate) mod counted;
mod misconceptions;
mod views;

pub(crate) use class_reports::{CountedReports, OfConcept, Reports, Taken, trends_of};
pub(crate) use counted::SeatCheckIn;
pub use misconceptions::OTHER_MISCONCEPTION;
pub(crate) use misconceptions::misconceptions;
pub use views::*;

/// Counts how often the thread of a test estimates a class.
#[cfg(test)]
pub(crate) mod fits {
    use std::cell::Cell;

    thread_local! {
        static FITS: Cell<usize> = const { Cell::new(0) };
    }

    pub(super) fn count_one() {
        FITS.set(FITS.get() + 1);
    }

    /// Counts the estimates that `work` makes.
    pub(crate) fn during<T>(work: impl FnOnce() -> T) -> usize {
        let before = FITS.get();
        work();
        FITS.get() - before
    }
}
