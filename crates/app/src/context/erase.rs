//! Removing what was deleted from a store, and a store's copies.

use super::Context;
use super::copies::{StoreName, check_store};
use super::disk::sync_folder;
use super::wipe::{Part, overwrite, wipe_beside, wipe_folder, wipe_store};
use crate::error::{CallError, files};
use std::fs::File;
use std::path::Path;
use surefoot_store::{DeskStore, Durability};

/// Writes the desk at `path` anew without what was deleted, and wipes its earlier file and log.
/// The desk must be closed.
///
/// # Errors
/// [`CallError::StoreBusy`] while another program has it open; then nothing is changed.
///
/// Deleting rows alone leaves them in pages of the log, between the rows of a page, and in
/// blocks of the disk that a file gave back.
pub(crate) fn rewrite_desk(path: &Path) -> Result<(), CallError> {
    let folder = path.parent().unwrap_or(Path::new("."));
    let part = Part::new(folder, ".rewritten-")?;
    {
        let desk = DeskStore::open_alone(path, Durability::Full)?;
        desk.write_anew(part.path())?;
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
    /// Wipes the copies of a store on this device.
    pub(crate) fn wipe_copies(&self, store: &StoreName) -> Result<(), CallError> {
        for (path, _) in self.copy_paths(store)? {
            wipe_store(&path)?;
        }
        wipe_folder(&self.copies_folder(store)?)
    }
}
