//! Overwriting and removing files: the only way by which a file leaves the data folder.

use super::disk::{self, with_end};
use crate::error::{CallError, files};
use std::io;
use std::path::{Path, PathBuf};

/// Overwrites a file and removes it, as far as the disk lets a program do that.
pub(crate) fn wipe(path: &Path) -> Result<(), CallError> {
    disk::wipe(path).map_err(files)
}

/// Overwrites and removes every file in a folder, and removes the folder, if it is there.
///
/// # Errors
/// [`CallError::Files`]; then some of the files may be gone.
pub fn wipe_folder(folder: &Path) -> Result<(), CallError> {
    let Some(entries) = disk::entries(folder).map_err(files)? else {
        return Ok(());
    };
    for path in entries {
        if disk::is_own_folder(&path) {
            wipe_folder(&path)?;
        } else {
            wipe(&path)?;
        }
    }
    disk::remove_folder(folder).map_err(files)
}

/// The endings of the files that SQLite makes beside a store.
pub(crate) const BESIDE: [&str; 3] = ["-wal", "-shm", "-journal"];

/// Wipes a store and the files beside it.
///
/// # Errors
/// The first error; what could be wiped is gone.
pub(crate) fn wipe_store(path: &Path) -> Result<(), CallError> {
    wipe_beside(path).and(wipe(path))
}

/// Wipes the files that SQLite makes beside a store.
pub(crate) fn wipe_beside(path: &Path) -> Result<(), CallError> {
    (BESIDE.iter().map(|end| wipe(&with_end(path, end)))).fold(Ok(()), Result::and)
}

/// A new file that only this user may read, until it gets its name. It is wiped if it never does.
pub(crate) struct Part(PathBuf);

impl Part {
    /// Makes an empty file in `folder`, with a name that begins with `start`.
    pub(crate) fn new(folder: &Path, start: &str) -> Result<Self, CallError> {
        let path = disk::make_part(folder, start).map_err(files)?;
        Ok(Self(path))
    }

    pub(crate) fn path(&self) -> &Path {
        &self.0
    }

    /// Writes the file to the disk and renames it to `path`.
    pub(crate) fn put(self, path: &Path) -> io::Result<()> {
        disk::sync(&self.0)?;
        disk::rename(&self.0, path)
    }
}

impl Drop for Part {
    fn drop(&mut self) {
        // After `put`, no file has this name.
        let _ = wipe_store(&self.0);
    }
}
