//! A folder that is watched for hand-ins, for instance a class's upload folder.
//!
//! The system's own notes about changes only say that it is time to look;
//! folders on a network may give none, so every tenth look is taken all the
//! same. A file is taken in once it looks the same at two looks in a row, so
//! that one still being copied is left alone. What was taken in is noted by
//! name, size and time of change, so that nothing is read twice for nothing.

use crate::app::{App, files, lock};
use crate::{CallError, FileKind, FileSource, Nothing, Watch, files_in, write_atomic};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::AtomicBool;
use std::sync::atomic::Ordering;

/// Looks between two that are taken without a note of the system's.
const LOOK_ANYWAY: u32 = 10;

/// Size in bytes and time of change in milliseconds since 1970.
type Mark = (u64, u64);

/// What stands in `watch.json`.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
struct Kept {
    folder: PathBuf,
    taken: BTreeMap<String, Mark>,
}

/// A folder being watched.
pub(crate) struct Watching {
    kept: Kept,
    /// Files as they looked the last time.
    last: BTreeMap<String, Mark>,
    /// Told by the system.
    changed: Arc<AtomicBool>,
    looks: u32,
    _watcher: Option<notify::RecommendedWatcher>,
}

impl App {
    /// The folder that is watched. When something in it has changed, an import
    /// is started; ask every few seconds while the desk is open.
    ///
    /// # Errors
    /// None; what goes wrong stands in the answer.
    pub fn watch(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(self.look())
    }

    pub(crate) fn stop_watching(&self) {
        lock(&self.state).watching = None;
    }

    /// Watches no folder any more.
    ///
    /// # Errors
    /// [`CallError::Files`].
    pub fn unwatch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        self.stop_watching();
        match std::fs::remove_file(self.places.watch()) {
            Err(error) if error.kind() != std::io::ErrorKind::NotFound => return Err(error.into()),
            _ => {}
        }
        Ok(Watch {
            folder: None,
            possible: true,
            job: None,
            trouble: None,
        })
    }

    /// Lets the person pick the folder to watch.
    ///
    /// # Errors
    /// [`CallError::Files`]; [`CallError::Invalid`] in the sample class.
    pub fn watch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        self.own_only()?;
        if let Some(folder) = self.door.pick_folder_path()? {
            let kept = Kept {
                folder,
                taken: BTreeMap::new(),
            };
            self.write_kept(&kept)?;
            lock(&self.state).watching = Some(watching(kept));
        }
        self.watch(Nothing {})
    }
}

fn watching(kept: Kept) -> Watching {
    use notify::Watcher as _;
    let changed = Arc::new(AtomicBool::new(true));
    let tell = Arc::clone(&changed);
    let watcher = notify::recommended_watcher(move |_| tell.store(true, Ordering::Relaxed))
        .and_then(|mut watcher| {
            watcher.watch(&kept.folder, notify::RecursiveMode::NonRecursive)?;
            Ok(watcher)
        });
    Watching {
        kept,
        last: BTreeMap::new(),
        changed,
        looks: 0,
        // Without the system's notes the folder is still looked at now and then.
        _watcher: watcher.ok(),
    }
}

fn marks(folder: &std::path::Path) -> Result<BTreeMap<String, Mark>, CallError> {
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

impl App {
    fn write_kept(&self, kept: &Kept) -> Result<(), CallError> {
        let text = serde_json::to_vec(kept).map_err(files)?;
        Ok(write_atomic(&self.places.watch(), &text)?)
    }

    fn look(&self) -> Watch {
        let none = Watch {
            folder: None,
            possible: true,
            job: None,
            trouble: None,
        };
        if self.own_only().is_err() {
            return none;
        }
        let mut state = lock(&self.state);
        if state.watching.is_none() {
            state.watching = std::fs::read(self.places.watch())
                .ok()
                .and_then(|text| serde_json::from_slice(&text).ok())
                .map(watching);
        }
        let Some(watched) = state.watching.as_mut() else {
            return none;
        };
        let mut watch = Watch {
            folder: Some(watched.kept.folder.display().to_string()),
            ..none
        };
        watched.looks = watched.looks.wrapping_add(1);
        let told = watched.changed.swap(false, Ordering::Relaxed);
        if !told && !watched.looks.is_multiple_of(LOOK_ANYWAY) {
            return watch;
        }
        let now = match marks(&watched.kept.folder) {
            Ok(now) => now,
            Err(error) => {
                watched.changed.store(true, Ordering::Relaxed);
                watch.trouble = Some(error);
                return watch;
            }
        };
        let new: BTreeMap<String, Mark> = now
            .iter()
            .filter(|(name, mark)| watched.kept.taken.get(*name) != Some(*mark))
            .map(|(name, mark)| (name.clone(), *mark))
            .collect();
        let settled: BTreeMap<String, Mark> = new
            .iter()
            .filter(|(name, mark)| watched.last.get(*name) == Some(*mark))
            .map(|(name, mark)| (name.clone(), *mark))
            .collect();
        if settled.len() < new.len() || self.jobs.any_running() {
            // Looked at again the next time, whether or not the system says so.
            watched.changed.store(true, Ordering::Relaxed);
        }
        watched.last = now;
        if settled.is_empty() || self.jobs.any_running() {
            return watch;
        }
        let folder = watched.kept.folder.clone();
        let sources: Vec<FileSource> = match files_in(&folder, FileKind::HandIn) {
            Ok(all) => all
                .into_iter()
                .filter(|source| settled.contains_key(source.name()))
                .collect(),
            Err(error) => {
                watch.trouble = Some(error.into());
                return watch;
            }
        };
        watched.kept.taken.extend(settled);
        let kept = watched.kept.clone();
        drop(state);
        let note = self.places.watch();
        let started = self.start_import(sources, move |account| {
            if !account.cancelled {
                // After the import: a program ended meanwhile takes them in again.
                write_atomic(&note, &serde_json::to_vec(&kept).map_err(files)?)?;
            }
            Ok(())
        });
        match started {
            Ok(job) => watch.job = Some(job),
            Err(error) => watch.trouble = Some(error),
        }
        watch
    }
}
