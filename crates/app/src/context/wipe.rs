//! Overwriting and removing files: the only way by which a file leaves the data folder.

use super::disk::with_end;
use crate::error::{CallError, files};
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

/// Bytes written at a time.
static BLOCK: [u8; 64 * 1024] = [0; 64 * 1024];

/// Overwrites a file and removes it. A flash disk may keep the old content in cells that no
/// program can reach by name, until it reuses them.
pub(crate) fn wipe(path: &Path) -> Result<(), CallError> {
    let remove = || -> io::Result<()> {
        if fs::symlink_metadata(path)?.is_file() {
            overwrite(&mut File::options().write(true).open(path)?)?;
        }
        fs::remove_file(path)
    };
    match remove() {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(files(error)),
        _ => Ok(()),
    }
}

pub(super) fn overwrite(file: &mut File) -> io::Result<()> {
    let mut left = file.metadata()?.len();
    while left > 0 {
        let now = left.min(BLOCK.len() as u64);
        file.write_all(BLOCK.get(..now as usize).unwrap_or(&BLOCK))?;
        left -= now;
    }
    file.sync_all()
}

/// Overwrites and removes every file in a folder, and removes the folder, if it is there.
///
/// # Errors
/// [`CallError::Files`]; then some of the files may be gone.
pub fn wipe_folder(folder: &Path) -> Result<(), CallError> {
    let entries = match fs::read_dir(folder) {
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(()),
        found => found.map_err(files)?,
    };
    for entry in entries {
        let path = entry.map_err(files)?.path();
        if fs::symlink_metadata(&path).is_ok_and(|m| m.is_dir()) {
            wipe_folder(&path)?;
        } else {
            wipe(&path)?;
        }
    }
    fs::remove_dir(folder).map_err(files)
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
        let file = tempfile::Builder::new()
            .prefix(start)
            .suffix(".part")
            .tempfile_in(folder)
            .map_err(files)?;
        let path = file.into_temp_path().keep().map_err(files)?;
        Ok(Self(path))
    }

    pub(crate) fn path(&self) -> &Path {
        &self.0
    }

    /// Writes the file to the disk and renames it to `path`.
    pub(crate) fn put(self, path: &Path) -> io::Result<()> {
        File::options().write(true).open(&self.0)?.sync_all()?;
        fs::rename(&self.0, path)
    }
}

impl Drop for Part {
    fn drop(&mut self) {
        // After `put`, no file has this name.
        let _ = wipe_store(&self.0);
    }
}
