//! The data folder in a folder of the system.

use crate::error::{CallError, files};
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

/// Rights of a file in the data folder: only its user reads and writes it.
const PRIVATE_FILE: u32 = 0o600;

/// Rights of a file for others: the usual ones within the person's umask.
const USUAL_FILE: u32 = 0o666;

/// Rights of a folder in the data folder.
const PRIVATE_FOLDER: u32 = 0o700;

/// Bytes written at a time.
static BLOCK: [u8; 64 * 1024] = [0; 64 * 1024];

/// Reads a file.
pub(crate) fn read(path: &Path) -> io::Result<Vec<u8>> {
    fs::read(path)
}

/// Writes a file that is not used until it is whole.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> io::Result<()> {
    fs::write(path, bytes)
}

/// Writes a file whole or not at all, for everybody who may read its folder.
pub(crate) fn write_usual(path: &Path, bytes: &[u8]) -> io::Result<()> {
    write_whole(path, bytes, USUAL_FILE)
}

/// Writes a file whole or not at all. Only this user may read it.
pub(crate) fn write_private(path: &Path, bytes: &[u8]) -> io::Result<()> {
    write_whole(path, bytes, PRIVATE_FILE)
}

fn write_whole(path: &Path, bytes: &[u8], mode: u32) -> io::Result<()> {
    let folder = match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        _ => Path::new("."),
    };
    let mut builder = tempfile::Builder::new();
    builder.prefix(".surefoot-").suffix(".part");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        builder.permissions(fs::Permissions::from_mode(mode));
    }
    #[cfg(not(unix))]
    let _ = mode;
    let mut part = builder.tempfile_in(folder)?;
    part.write_all(bytes)?;
    part.as_file().sync_all()?;
    part.persist(path).map_err(|failed| failed.error)?;
    #[cfg(unix)]
    File::open(folder)?.sync_all()?;
    Ok(())
}

/// Whether there is a file or a folder.
pub(crate) fn is_there(path: &Path) -> bool {
    path.exists()
}

/// Whether there is a file.
pub(crate) fn is_file(path: &Path) -> bool {
    path.is_file()
}

/// Whether there is a folder, and no link to one.
pub(crate) fn is_own_folder(path: &Path) -> bool {
    fs::symlink_metadata(path).is_ok_and(|about| about.is_dir())
}

/// Whether a file is missing or has no content.
pub(crate) fn is_empty(path: &Path) -> bool {
    fs::metadata(path).map_or(true, |found| found.len() == 0)
}

/// The entries of a folder; `None` if it is missing.
pub(crate) fn entries(folder: &Path) -> io::Result<Option<Vec<PathBuf>>> {
    match fs::read_dir(folder) {
        Ok(found) => Ok(Some(
            found.filter_map(Result::ok).map(|e| e.path()).collect(),
        )),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(error),
    }
}

/// Gives a file another name. A file with that name is replaced in the same step.
pub(crate) fn rename(from: &Path, to: &Path) -> io::Result<()> {
    fs::rename(from, to)
}

/// Writes the content of a file to the disk.
pub(crate) fn sync(path: &Path) -> io::Result<()> {
    File::options().write(true).open(path)?.sync_all()
}

/// Makes a rename survive a power cut.
pub(crate) fn sync_folder(folder: &Path) -> Result<(), CallError> {
    #[cfg(unix)]
    File::open(folder)
        .and_then(|folder| folder.sync_all())
        .map_err(files)?;
    let _ = folder;
    Ok(())
}

/// Makes a folder that only this user may read, and the folders above it.
pub(crate) fn make_folder(path: &Path) -> io::Result<()> {
    let mut builder = fs::DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, PRIVATE_FOLDER);
    builder.create(path)
}

/// Lets only this user read an existing folder, if the file system knows users.
pub(crate) fn close_folder(path: &Path) {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        let _ = fs::set_permissions(path, fs::Permissions::from_mode(PRIVATE_FOLDER));
    }
    #[cfg(not(unix))]
    let _ = path;
}

/// Removes an empty folder.
pub(crate) fn remove_folder(path: &Path) -> io::Result<()> {
    fs::remove_dir(path)
}

/// Makes an empty file that only this user may read, unless it exists. SQLite gives a store's
/// log the rights of the store.
pub(crate) fn make_file(path: &Path) -> io::Result<()> {
    let mut options = File::options();
    options.create(true).append(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, PRIVATE_FILE);
    options.open(path).map(drop)
}

/// Makes an empty file that only this user may read, with a new name that begins with `start`.
pub(crate) fn make_part(folder: &Path, start: &str) -> io::Result<PathBuf> {
    let file = tempfile::Builder::new()
        .prefix(start)
        .suffix(".part")
        .tempfile_in(folder)?;
    Ok(file.into_temp_path().keep()?)
}

/// Overwrites a file and removes it. A missing file is no error. A flash disk may keep the old
/// content in cells that no program can reach by name, until it reuses them.
pub(crate) fn wipe(path: &Path) -> io::Result<()> {
    let remove = || {
        if fs::symlink_metadata(path)?.is_file() {
            overwrite(&mut File::options().write(true).open(path)?)?;
        }
        fs::remove_file(path)
    };
    match remove() {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

/// Overwrites the content of an open file.
pub(crate) fn overwrite(file: &mut File) -> io::Result<()> {
    let mut left = file.metadata()?.len();
    while left > 0 {
        let now = left.min(BLOCK.len() as u64);
        file.write_all(BLOCK.get(..now as usize).unwrap_or(&BLOCK))?;
        left -= now;
    }
    file.sync_all()
}
