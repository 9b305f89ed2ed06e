//! The data folder in a browser's private storage.
//!
//! The storage is a pool of files that were opened ahead, because a browser opens none without
//! waiting. Each has a name at its head; SQLite and this module use the same names, which are the
//! paths of the data folder. The pool has no folders and no rename: a folder is what the names of
//! its files begin with, and a rename copies the file before it removes the first one.
//!
//! One program alone has the pool. A second one, in another tab, is refused.

use crate::error::{CallError, PlaceTrouble, files};
use rsqlite_vfs::VfsFilesManager as _;
use rsqlite_vfs::transfer::DbTransfer as _;
use sqlite_wasm_vfs::sahpool::{OpfsSAHError, OpfsSAHPoolCfgBuilder, OpfsSAHPoolUtil, install};
use std::cell::RefCell;
use std::collections::BTreeSet;
use std::io;
use std::path::{Path, PathBuf};
use wasm_bindgen::JsValue;

/// The folder of the pool in the storage of the page's place.
const POOL: &str = "surefoot";

/// Files that are free before each call. A call makes fewer: a store, its log, a copy, a part.
const FREE_AHEAD: usize = 8;

/// The ending of what takes the place of a file, until it has.
const NEXT: &str = ".next";

/// The ending of the log of a store that was put aside. The pool refuses a store beside the log of
/// another, so it stands under a name that SQLite does not read.
const KEPT: &str = ".kept";

thread_local! {
    static OPEN: RefCell<Option<OpfsSAHPoolUtil>> = const { RefCell::new(None) };
}

/// Opens the storage, and finishes what a program that was ended had begun to write.
///
/// # Errors
/// [`CallError::NoPlace`] if there is none, or another program has it.
pub async fn open_storage() -> Result<(), CallError> {
    let options = OpfsSAHPoolCfgBuilder::new()
        .directory(POOL)
        .initial_capacity(FREE_AHEAD)
        .build();
    let pool = install::<sqlite_wasm_rs::WasmOsCallback>(&options, true)
        .await
        .map_err(no_place)?;
    OPEN.set(Some(pool));
    finish_writing().map_err(files)
}

/// Makes room for the files of the next call.
///
/// # Errors
/// [`CallError::DiskFull`] without space, [`CallError::Files`].
pub async fn make_room() -> Result<(), CallError> {
    let pool = OPEN.with_borrow(Clone::clone);
    let Some(pool) = pool else {
        return Err(files("the storage is not open"));
    };
    let used = pool.len().map_err(fault)?;
    if pool.capacity() < used + FREE_AHEAD {
        pool.ensure_capacity(used + 2 * FREE_AHEAD)
            .await
            .map_err(fault)?;
    }
    Ok(())
}

/// Puts a file into the storage, unless there is one with this name.
///
/// # Errors
/// [`CallError::Files`] if it cannot be written.
pub fn put_file(path: &Path, bytes: &[u8]) -> Result<(), CallError> {
    if is_file(path) {
        return Ok(());
    }
    Ok(write(path, bytes)?)
}

/// Why the storage cannot be opened.
fn no_place(error: OpfsSAHError) -> CallError {
    let why = match &error {
        OpfsSAHError::NotSupported => PlaceTrouble::Missing,
        OpfsSAHError::Opfs { value, .. } => match name_of_exception(value).as_deref() {
            Some("NoModificationAllowedError") => PlaceTrouble::OtherTab,
            Some("SecurityError" | "NotAllowedError" | "InvalidStateError" | "UnknownError") => {
                PlaceTrouble::Refused
            }
            Some("QuotaExceededError") => PlaceTrouble::Full,
            _ => return files(error),
        },
        _ => return files(error),
    };
    CallError::NoPlace { why }
}

/// The name of a browser's exception, such as `QuotaExceededError`.
fn name_of_exception(value: &JsValue) -> Option<String> {
    js_sys::Reflect::get(value, &"name".into())
        .ok()?
        .as_string()
}

fn fault(error: OpfsSAHError) -> io::Error {
    let kind = match &error {
        OpfsSAHError::FileNotFound(_) => io::ErrorKind::NotFound,
        OpfsSAHError::FileExists(_) => io::ErrorKind::AlreadyExists,
        // Without room a write falls short, or fails by its name.
        OpfsSAHError::NoCapacity | OpfsSAHError::ShortIo { .. } => io::ErrorKind::StorageFull,
        OpfsSAHError::Opfs { value, .. }
            if name_of_exception(value).as_deref() == Some("QuotaExceededError") =>
        {
            io::ErrorKind::StorageFull
        }
        _ => io::ErrorKind::Other,
    };
    io::Error::new(kind, error.to_string())
}

fn name(path: &Path) -> io::Result<&str> {
    path.to_str().ok_or(io::ErrorKind::InvalidInput.into())
}

fn with<T>(work: impl FnOnce(&OpfsSAHPoolUtil) -> Result<T, OpfsSAHError>) -> io::Result<T> {
    OPEN.with_borrow(|pool| match pool {
        Some(pool) => work(pool).map_err(fault),
        None => Err(io::ErrorKind::NotConnected.into()),
    })
}

/// The names of all files.
fn names() -> io::Result<Vec<String>> {
    with(OpfsSAHPoolUtil::names)
}

/// Reads a file.
pub(crate) fn read(path: &Path) -> io::Result<Vec<u8>> {
    let name = name(path)?;
    with(|pool| pool.export_db(name))
}

/// Writes a file that is not used until it is whole. It gets its name after its content is on the
/// disk.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let name = name(path)?;
    with(|pool| {
        pool.remove(name)?;
        pool.import_db_unchecked(name, bytes)
    })
}

/// As [`write_private`]: there are no other users.
pub(crate) fn write_usual(path: &Path, bytes: &[u8]) -> io::Result<()> {
    write_private(path, bytes)
}

/// Writes a file whole or not at all.
pub(crate) fn write_private(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let next = format!("{}{NEXT}", name(path)?);
    write(Path::new(&next), bytes)?;
    // From here on, `finish_writing` would do the rest.
    write(path, bytes)?;
    with(|pool| pool.remove(&next)).map(drop)
}

/// Finishes writing what a program that was ended had under another name already.
fn finish_writing() -> io::Result<()> {
    for next in names()? {
        if let Some(name) = next.strip_suffix(NEXT) {
            let bytes = read(Path::new(&next))?;
            write(Path::new(name), &bytes)?;
            with(|pool| pool.remove(&next))?;
        }
    }
    Ok(())
}

/// Whether there is a file or a folder.
pub(crate) fn is_there(path: &Path) -> bool {
    is_file(path) || is_own_folder(path)
}

/// Whether there is a file.
pub(crate) fn is_file(path: &Path) -> bool {
    name(path).is_ok_and(|name| with(|pool| pool.contains(name)).unwrap_or(false))
}

/// Whether a folder has files.
pub(crate) fn is_own_folder(path: &Path) -> bool {
    entries(path).is_ok_and(|found| found.is_some())
}

/// Whether a file is missing or has no content.
pub(crate) fn is_empty(path: &Path) -> bool {
    let Ok(name) = name(path) else {
        return true;
    };
    let size = with(|pool| match pool.begin_export(name) {
        Ok(file) => Ok(file.size()),
        Err(error @ OpfsSAHError::FileNotFound(_)) => Err(error),
        // It is open, or has a log: there is something in it.
        Err(_) => Ok(u64::MAX),
    });
    size.unwrap_or(0) == 0
}

/// The entries of a folder; `None` if it has none.
pub(crate) fn entries(folder: &Path) -> io::Result<Option<Vec<PathBuf>>> {
    let mut found = BTreeSet::new();
    for name in names()? {
        if let Ok(inner) = Path::new(&name).strip_prefix(folder)
            && let Some(first) = inner.components().next()
        {
            found.insert(folder.join(first));
        }
    }
    Ok((!found.is_empty()).then(|| found.into_iter().collect()))
}

/// Gives a file another name by copying it: when the program is ended in between, both are there.
/// The log of a store that is put aside is kept under a name of its own.
pub(crate) fn rename(from: &Path, to: &Path) -> io::Result<()> {
    let is_log = |path: &Path| {
        let name = path.to_string_lossy();
        name.ends_with("-wal") || name.ends_with("-journal")
    };
    let bytes = read(from)?;
    if is_log(to) {
        write(&super::with_end(to, KEPT), &bytes)?;
    } else {
        write(to, &bytes)?;
    }
    let from = name(from)?;
    with(|pool| pool.remove(from)).map(drop)
}

/// Does nothing: [`write`] writes to the disk, and so does SQLite.
pub(crate) fn sync(_: &Path) -> io::Result<()> {
    Ok(())
}

/// Does nothing, because there are no folders.
pub(crate) fn sync_folder(_: &Path) -> Result<(), CallError> {
    Ok(())
}

/// Does nothing, because there are no folders.
pub(crate) fn make_folder(_: &Path) -> io::Result<()> {
    Ok(())
}

/// Does nothing, because there are no other users.
pub(crate) fn close_folder(_: &Path) {}

/// Does nothing, because there are no folders.
pub(crate) fn remove_folder(_: &Path) -> io::Result<()> {
    Ok(())
}

/// Makes an empty file, unless it exists.
pub(crate) fn make_file(path: &Path) -> io::Result<()> {
    if is_file(path) {
        return Ok(());
    }
    write(path, &[])
}

/// Does nothing: see [`wipe`].
#[cfg(feature = "desk")]
pub(crate) fn overwrite(_: &mut std::fs::File) -> io::Result<()> {
    Ok(())
}

/// A new name that begins with `start`.
pub(crate) fn make_part(folder: &Path, start: &str) -> io::Result<PathBuf> {
    let mut signs = [0; 8];
    getrandom::fill(&mut signs).map_err(|_| io::ErrorKind::Other)?;
    let signs = u64::from_le_bytes(signs);
    Ok(folder.join(format!("{start}{signs:016x}.part")))
}

/// Removes a file. A missing file is no error. The browser decides when the disk forgets it.
pub(crate) fn wipe(path: &Path) -> io::Result<()> {
    let name = name(path)?;
    let kept = format!("{name}{KEPT}");
    with(|pool| {
        pool.remove(name)?;
        pool.remove(&kept)
    })
    .map(drop)
}
