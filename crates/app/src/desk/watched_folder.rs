//! A folder that is watched for hand-ins, such as the upload folder of a class.
//!
//! A notification of the system only marks the folder as changed. Folders on a network may send
//! none, so every tenth check reads the folder anyway. A file is imported once two checks in a
//! row find it unchanged, so that a file still being copied is left alone. Size and
//! time of change of imported files are noted, so that no file is read twice, but not their names,
//! which could be students'.

use crate::context::file_dialogs::{FileKind, FileSource};
use crate::context::folder::files_in;
use crate::error::CallError;
use notify::Watcher as _;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

/// One check in so many reads the folder without a notification.
const READ_ANYWAY: u32 = 10;

/// Size in bytes and time of change in milliseconds since 1970.
type Mark = (u64, u64);

/// The content of `watch.json`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct WatchNote {
    pub(super) folder: PathBuf,
    /// Each mark as often as files with it were imported.
    imported: Vec<Mark>,
}

impl WatchNote {
    pub(super) fn new(folder: PathBuf) -> Self {
        Self {
            folder,
            imported: Vec::new(),
        }
    }
}

/// A watched folder.
pub(super) struct WatchedFolder {
    pub(super) note: WatchNote,
    /// The files at the last check.
    last: BTreeMap<String, Mark>,
    /// Set by notifications of the system.
    changed: Arc<AtomicBool>,
    looks: u32,
    _watcher: Option<notify::RecommendedWatcher>,
}

impl WatchedFolder {
    pub(super) fn new(note: WatchNote) -> Self {
        let changed = Arc::new(AtomicBool::new(true));
        let notified = Arc::clone(&changed);
        let watcher = notify::recommended_watcher(move |_| notified.store(true, Ordering::Relaxed))
            .and_then(|mut watcher| {
                watcher.watch(&note.folder, notify::RecursiveMode::NonRecursive)?;
                Ok(watcher)
            });
        Self {
            note,
            last: BTreeMap::new(),
            changed,
            looks: 0,
            // Without notifications every tenth check still reads the folder.
            _watcher: watcher.ok(),
        }
    }

    /// Returns the files to import now, and notes them as imported; none while `busy`.
    pub(super) fn check(&mut self, busy: bool) -> Result<Vec<FileSource>, CallError> {
        self.looks = self.looks.wrapping_add(1);
        let notified = self.changed.swap(false, Ordering::Relaxed);
        if !notified && !self.looks.is_multiple_of(READ_ANYWAY) {
            return Ok(Vec::new());
        }
        let sources = self.files_to_import(busy);
        if sources.is_err() {
            self.changed.store(true, Ordering::Relaxed);
        }
        sources
    }

    fn files_to_import(&mut self, busy: bool) -> Result<Vec<FileSource>, CallError> {
        let now = marks(&self.note.folder)?;
        let (found, imported) = (counts(now.values()), counts(&self.note.imported));
        // If more files have a mark than were imported with it, all of them are read: those
        // that were imported bring nothing new.
        let new = now
            .iter()
            .filter(|(_, mark)| found.get(mark) > imported.get(mark));
        let (settled, moving): (BTreeMap<_, _>, BTreeMap<_, _>) = new
            .map(|(name, mark)| (name.clone(), *mark))
            .partition(|(name, mark)| self.last.get(name) == Some(mark));
        if !moving.is_empty() || busy {
            // The next check reads the folder again, also without a notification.
            self.changed.store(true, Ordering::Relaxed);
        }
        self.last = now;
        if settled.is_empty() || busy {
            return Ok(Vec::new());
        }
        let mut sources = files_in(&self.note.folder, FileKind::HandIn)?;
        sources.retain(|source| settled.contains_key(source.name()));
        let anew = counts(settled.values());
        (self.note.imported).retain(|mark| !anew.contains_key(mark));
        self.note.imported.extend(settled.into_values());
        Ok(sources)
    }
}

/// How often each mark is there.
fn counts<'m>(marks: impl IntoIterator<Item = &'m Mark>) -> BTreeMap<Mark, usize> {
    let mut counts = BTreeMap::new();
    for mark in marks {
        *counts.entry(*mark).or_default() += 1;
    }
    counts
}

fn marks(folder: &Path) -> Result<BTreeMap<String, Mark>, CallError> {
    let mut found = BTreeMap::new();
    for source in files_in(folder, FileKind::HandIn)? {
        let path = folder.join(source.name());
        if let Ok(about) = std::fs::metadata(&path)
            && about.is_file()
        {
            let millis = about
                .modified()
                .ok()
                .and_then(|at| at.duration_since(std::time::UNIX_EPOCH).ok())
                .map_or(0, |since| {
                    u64::try_from(since.as_millis()).unwrap_or(u64::MAX)
                });
            found.insert(source.name().to_owned(), (about.len(), millis));
        }
    }
    Ok(found)
}
