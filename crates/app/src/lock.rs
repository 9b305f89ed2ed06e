//! Locks without poisoning.

use std::sync::{Mutex, MutexGuard, PoisonError};

/// Locks a value, also after a panic in another thread: the locked values are replaced whole, and
/// stores have transactions.
pub(crate) fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}
