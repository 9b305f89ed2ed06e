//! Files and folders with paths.

use super::disk;
use super::file_dialogs::{FileKind, FileSource};
use super::wipe::wipe;
use crate::error::{CallError, files};
use std::fs::{self, File};
use std::io::{self, Read};
use std::path::{Path, PathBuf};

/// A file at a path that a person chose. Follows a link; refuses to read a pipe, a device or a
/// folder.
#[must_use]
pub fn file_at(path: &Path) -> FileSource {
    let at = path.to_owned();
    FileSource::new(name_of(path), move || open_regular(&at))
}

/// The files of one kind in a folder, in the order of their names. Folders inside are left out.
///
/// An entry with the right extension that is a link, a pipe or a folder is listed, so that the
/// import report shows it, and cannot be opened: an entry of a shared folder must not lead out of
/// the folder.
pub fn files_in(folder: &Path, kind: FileKind) -> io::Result<Vec<FileSource>> {
    let mut paths: Vec<PathBuf> = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let fits = path.extension().is_some_and(|found| {
            let extensions = kind.picked_extensions();
            extensions.iter().any(|e| found.eq_ignore_ascii_case(e))
        });
        if fits {
            paths.push(path);
        }
    }
    paths.sort();
    Ok(paths
        .into_iter()
        .map(|path| {
            FileSource::new(name_of(&path), move || {
                if !fs::symlink_metadata(&path)?.is_file() {
                    return Err(not_a_file());
                }
                open_regular(&path)
            })
        })
        .collect())
}

/// Writes a file whole or not at all: under another name in the same folder, then renames it.
/// Both steps are synced to the disk. If a step fails, the earlier file is unchanged.
pub fn write_atomic(path: &Path, bytes: &[u8]) -> io::Result<()> {
    // Others read a class pack, so the file gets the usual rights within the person's umask.
    disk::write_usual(path, bytes)
}

/// Writes a file as [`write_atomic`] does. Only this user may read it.
pub(crate) fn write_private(path: &Path, bytes: &[u8]) -> io::Result<()> {
    disk::write_private(path, bytes)
}

pub(crate) use super::disk::{close_folder, make_file, make_folder};

fn open_regular(path: &Path) -> io::Result<Box<dyn Read + Send>> {
    // Opening a pipe would never return.
    if !fs::metadata(path)?.is_file() {
        return Err(not_a_file());
    }
    Ok(Box::new(File::open(path)?))
}

fn not_a_file() -> io::Error {
    io::Error::new(io::ErrorKind::InvalidInput, "not a regular file")
}

/// The name of a file.
pub(crate) fn name_of(path: &Path) -> String {
    path.file_name()
        .unwrap_or(path.as_os_str())
        .to_string_lossy()
        .into_owned()
}

/// The entries of a folder; none if it is missing.
pub(crate) fn entries(folder: &Path) -> Result<Vec<PathBuf>, CallError> {
    Ok(disk::entries(folder).map_err(files)?.unwrap_or_default())
}

/// Removes half-made copies, backups and stores that a killed program left.
pub(crate) fn clear_parts(folder: &Path) -> Result<(), CallError> {
    for path in entries(folder)? {
        if disk::is_own_folder(&path) {
            clear_parts(&path)?;
            continue;
        }
        let name = name_of(&path);
        let ours = [".copy-", ".restore-", ".backup-", ".rewritten-"]
            .iter()
            .any(|start| name.starts_with(start));
        if ours && name.contains(".part") {
            wipe(&path)?;
        }
    }
    Ok(())
}
