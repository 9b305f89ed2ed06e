//! Names beside a file, and renames that survive a power cut.

use crate::error::{CallError, files};
use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};

/// The path with an ending added to its name.
pub(crate) fn with_end(path: &Path, end: &str) -> PathBuf {
    let mut name: OsString = path.as_os_str().to_owned();
    name.push(end);
    PathBuf::from(name)
}

/// Makes a rename survive a power cut.
pub(crate) fn sync_folder(folder: &Path) -> Result<(), CallError> {
    #[cfg(unix)]
    fs::File::open(folder)
        .and_then(|folder| folder.sync_all())
        .map_err(files)?;
    let _ = folder;
    Ok(())
}
