//! Locks that a panic elsewhere does not poison.

use std::sync::{Mutex, MutexGuard, PoisonError};

/// Locks a value. A panic elsewhere leaves the value as it was before the
/// panicking write; stores have SQLite's own transactions.
pub(crate) fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}
