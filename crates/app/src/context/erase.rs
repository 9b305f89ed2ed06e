//! Removing what was deleted from a store, and a store's copies.

use super::Context;
use super::copies::StoreName;
use super::wipe::{wipe_folder, wipe_store};
use crate::error::CallError;
#[cfg(feature = "desk")]
use for_desk::*;
#[cfg(feature = "desk")]
mod for_desk {
    pub(super) use crate::context::copies::check_store;
    pub(super) use crate::context::disk::{overwrite, sync_folder};
    pub(super) use crate::context::wipe::{Part, wipe_beside};
    pub(super) use crate::error::files;
    pub(super) use std::fs::File;
    pub(super) use std::path::Path;
    pub(super) use surefoot_store::desk::key_facts;
    pub(super) use surefoot_store::{DeskStore, Durability, StoreError};
}

/// Writes the desk at `path` anew without what was deleted, and wipes its earlier file and log.
/// The desk must be closed.
///
/// # Errors
/// [`CallError::StoreBusy`] while another program has it open; then nothing is changed.
///
/// Deleting rows alone leaves them in pages of the log, between the rows of a page, and in
/// blocks of the disk that a file gave back.
#[cfg(feature = "desk")]
pub(crate) fn rewrite_desk(path: &Path) -> Result<(), CallError> {
    replace_desk(path, |desk, into| Ok(desk.write_anew(into)?))
}

/// Replaces the desk at `path` by the one that `write` writes, and wipes its earlier file and
/// log. The desk must be closed. A kill leaves the earlier desk or the new one.
#[cfg(feature = "desk")]
pub(crate) fn replace_desk(
    path: &Path,
    write: impl FnOnce(&DeskStore, &Path) -> Result<(), CallError>,
) -> Result<(), CallError> {
    let folder = path.parent().unwrap_or(Path::new("."));
    let part = Part::new(folder, ".rewritten-")?;
    {
        let desk = DeskStore::open_alone(path, Durability::Full)?;
        write(&desk, part.path())?;
        desk.empty_log()?;
    }
    check_store(&StoreName::Desk, part.path())?;
    // Before the new store has its name, because SQLite would read the old log as its log.
    wipe_beside(path)?;
    // The earlier file loses its name to the new one, but is still open.
    let mut earlier = File::options().write(true).open(path).map_err(files)?;
    part.put(path).map_err(files)?;
    sync_folder(folder)?;
    overwrite(&mut earlier).map_err(files)
}

impl Context {
    /// Wipes the copies of the desk that a change of its lock left behind: those with the data
    /// key before, and under a lock those that open without a passphrase and damaged ones, of
    /// which nobody can say what they show. Does nothing if no change is unfinished.
    ///
    /// A copy under another lock stays. It may be the only desk of somebody who forgot the
    /// passphrase. One that cannot be read now or is newer than this program stays too.
    ///
    /// # Errors
    /// The first error of a copy that cannot be wiped. The others are wiped, and the next call
    /// tries again.
    #[cfg(feature = "desk")]
    pub(crate) fn finish_lock(&self, desk: &DeskStore) -> Result<(), CallError> {
        let Some(before) = desk.replaced_key()? else {
            return Ok(());
        };
        let has_lock = desk.lock()?.is_some();
        let mut wiped = Ok(());
        for (path, _) in self.copy_paths(&StoreName::Desk)? {
            let goes = match key_facts(&path) {
                Ok(facts) => facts.number == before || (has_lock && facts.lock.is_none()),
                Err(StoreError::Damaged { .. }) => has_lock,
                Err(_) => false,
            };
            if goes {
                wiped = wiped.and(wipe_store(&path));
            }
        }
        wiped?;
        Ok(desk.forget_replaced_key()?)
    }

    /// Wipes the copies of a store on this device.
    pub(crate) fn wipe_copies(&self, store: &StoreName) -> Result<(), CallError> {
        for (path, _) in self.copy_paths(store)? {
            wipe_store(&path)?;
        }
        wipe_folder(&self.copies_folder(store)?)
    }
}
