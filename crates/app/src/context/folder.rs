//! Plain folders and paths: the part of a file door that is the same in every
//! shell that has them.

use super::file_dialogs::{FileKind, FileSource};
use std::fs::{self, File};
use std::io::{self, Read, Write as _};
use std::path::{Path, PathBuf};

/// A file at a path that a person named. A link is followed, as the person
/// chose it; a pipe, a device or a folder is not read.
#[must_use]
pub fn file_at(path: &Path) -> FileSource {
    let at = path.to_owned();
    FileSource::new(name_of(path), move || open_regular(&at))
}

/// The files of one kind in a folder, in the order of their names.
///
/// Only the folder itself is looked at, not the folders in it. An entry that
/// has the kind's name but is a link, a pipe or a folder is listed all the
/// same, so that it shows up in an account, and fails when opened: what lies
/// in a shared folder must not lead out of it.
///
/// # Errors
/// When the folder cannot be read.
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

/// Writes a file whole or not at all: beside it under another name, synced,
/// renamed over it, and the folder synced. The earlier file stays until
/// the rename.
///
/// # Errors
/// Fails if any step fails; then the folder has nothing new.
pub fn write_atomic(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let folder = match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        _ => Path::new("."),
    };
    let mut builder = tempfile::Builder::new();
    builder.prefix(".surefoot-").suffix(".part");
    #[cfg(unix)]
    {
        // A class pack is read by others, so the usual rights, not the private
        // ones of a temporary file; the person's umask still counts.
        use std::os::unix::fs::PermissionsExt as _;
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    let mut part = builder.tempfile_in(folder)?;
    part.write_all(bytes)?;
    part.as_file().sync_all()?;
    part.persist(path).map_err(|failed| failed.error)?;
    #[cfg(unix)]
    File::open(folder)?.sync_all()?;
    Ok(())
}

fn open_regular(path: &Path) -> io::Result<Box<dyn Read + Send>> {
    // Opening a pipe would wait for ever, so the look comes first.
    if !fs::metadata(path)?.is_file() {
        return Err(not_a_file());
    }
    Ok(Box::new(File::open(path)?))
}

fn not_a_file() -> io::Error {
    io::Error::new(io::ErrorKind::InvalidInput, "not a regular file")
}

fn name_of(path: &Path) -> String {
    path.file_name()
        .unwrap_or(path.as_os_str())
        .to_string_lossy()
        .into_owned()
}
