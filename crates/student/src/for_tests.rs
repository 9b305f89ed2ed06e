//! Counts for tests. A release build does not have them.

use std::cell::Cell;

thread_local! {
    pub(crate) static PACKS_READ: Cell<u64> = const { Cell::new(0) };
}

/// Returns how many class packs this thread has verified.
#[must_use]
pub fn packs_read() -> u64 {
    PACKS_READ.get()
}
