//! Overwriting and removing files.

use super::Context;
use super::copies::StoreName;
use super::folder::with_end;
use crate::error::{CallError, files};
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::Path;

/// Bytes written at a time.
static BLOCK: [u8; 64 * 1024] = [0; 64 * 1024];

/// Overwrites a file and removes it. A flash disk may keep the old content in cells that no
/// program can reach by name, until it reuses them.
pub(crate) fn wipe(path: &Path) -> Result<(), CallError> {
    let overwrite = || -> io::Result<()> {
        if fs::symlink_metadata(path)?.is_file() {
            let mut file = File::options().write(true).open(path)?;
            let mut left = file.metadata()?.len();
            while left > 0 {
                let now = left.min(BLOCK.len() as u64);
                file.write_all(BLOCK.get(..now as usize).unwrap_or(&BLOCK))?;
                left -= now;
            }
            file.sync_all()?;
        }
        fs::remove_file(path)
    };
    match overwrite() {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(files(error)),
        _ => Ok(()),
    }
}

/// Wipes every file in a folder, and the folder.
pub(crate) fn wipe_folder(folder: &Path) -> Result<(), CallError> {
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

/// The endings of the files of a store; the store itself comes last.
pub(crate) const STORE_ENDS: [&str; 3] = ["-wal", "-shm", ""];

impl Context {
    /// Wipes the copies of a store on this device.
    pub(crate) fn wipe_copies(&self, store: &StoreName) -> Result<(), CallError> {
        for (path, _) in self.copy_paths(store)? {
            for end in STORE_ENDS {
                wipe(&with_end(&path, end))?;
            }
        }
        wipe_folder(&self.copies_folder(store)?)
    }
}
