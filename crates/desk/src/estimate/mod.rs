//! What counts of a class's reports, and what it says about the class.

mod class_reports;
mod latest;
mod views;

pub(crate) use class_reports::{OfConcept, Reports, newest_by_seat, trends_of};
pub use views::*;

/// How often a test's thread has estimated a class.
#[cfg(test)]
pub(crate) mod fits {
    use std::cell::Cell;

    thread_local! {
        static FITS: Cell<usize> = const { Cell::new(0) };
    }

    pub(super) fn count_one() {
        FITS.set(FITS.get() + 1);
    }

    /// The estimates made while `work` runs.
    pub(crate) fn during<T>(work: impl FnOnce() -> T) -> usize {
        let before = FITS.get();
        work();
        FITS.get() - before
    }
}
