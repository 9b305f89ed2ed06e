//! The stores of one kind that are open, by path.

use crate::error::CallError;
use crate::lock::lock;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use std::time::Duration;

/// Time between two attempts to close a store that a call still uses.
const RETRY: Duration = Duration::from_millis(5);

/// Attempts before a store is reported as busy, five seconds in all.
const MOST_ATTEMPTS: u32 = 1_000;

/// The open stores. A call locks its store, and the list only to find it.
pub(crate) struct OpenStores<S>(Mutex<BTreeMap<PathBuf, Arc<Mutex<S>>>>);

impl<S> Default for OpenStores<S> {
    fn default() -> Self {
        Self(Mutex::default())
    }
}

fn close<S>(mut store: Arc<Mutex<S>>) -> Result<(), CallError> {
    for _ in 0..MOST_ATTEMPTS {
        match Arc::try_unwrap(store) {
            Ok(last) => {
                drop(last);
                return Ok(());
            }
            // A call still uses it.
            Err(shared) => store = shared,
        }
        std::thread::sleep(RETRY);
    }
    Err(CallError::StoreBusy)
}

impl<S> OpenStores<S> {
    /// Uses the store at `path`, which `open` opens if it is not open yet.
    pub(crate) fn with<T>(
        &self,
        path: &Path,
        open: impl FnOnce() -> Result<S, CallError>,
        work: impl FnOnce(&mut S) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let store = {
            let mut stores = lock(&self.0);
            match stores.get(path) {
                Some(store) => Arc::clone(store),
                None => {
                    let store = Arc::new(Mutex::new(open()?));
                    stores.insert(path.to_owned(), Arc::clone(&store));
                    store
                }
            }
        };
        let mut store = lock(&store);
        work(&mut store)
    }

    /// Closes the store at `path` and does `work` before any call can open it again.
    pub(crate) fn while_closed<T>(
        &self,
        path: &Path,
        work: impl FnOnce() -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let mut stores = lock(&self.0);
        if let Some(store) = stores.remove(path) {
            close(store)?;
        }
        work()
    }

    /// Closes every store and does `work` before any call can open one again.
    pub(crate) fn while_all_closed<T>(
        &self,
        work: impl FnOnce() -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let mut stores = lock(&self.0);
        while let Some((_, store)) = stores.pop_first() {
            close(store)?;
        }
        work()
    }
}
