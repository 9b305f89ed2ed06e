//! Watching a folder for hand-ins.

use super::DeskDoor;
use super::watch_view::Watch;
use super::watched_folder::{WatchNote, WatchedFolder};
use crate::context::folder::write_private;
use crate::context::values::Nothing;
use crate::context::wipe::wipe;
use crate::error::{CallError, files};
use crate::lock::lock;

impl DeskDoor {
    /// The watched folder. Starts an import if new hand-ins are in it. The screens call this every
    /// few seconds while the desk is open; the answer holds what went wrong.
    pub fn watch(&self, _: Nothing) -> Result<Watch, CallError> {
        if self.context.own_only().is_err() {
            return Ok(Watch::NONE);
        }
        let mut watched = lock(&self.watched);
        if watched.is_none() {
            match self.read_note() {
                Ok(note) => *watched = note.map(WatchedFolder::new),
                Err(error) => {
                    return Ok(Watch {
                        trouble: Some(error),
                        ..Watch::NONE
                    });
                }
            }
        }
        let Some(folder) = watched.as_mut() else {
            return Ok(Watch::NONE);
        };
        let mut watch = Watch {
            folder: Some(folder.note.folder.display().to_string()),
            ..Watch::NONE
        };
        let sources = match folder.check(self.context.jobs.any_running()) {
            Ok(sources) if sources.is_empty() => return Ok(watch),
            Ok(sources) => sources,
            Err(error) => {
                watch.trouble = Some(error);
                return Ok(watch);
            }
        };
        let note = folder.note.clone();
        drop(watched);
        let path = self.context.paths.watch();
        let started = self.start_import(sources, move |report| {
            if !report.cancelled {
                // Noted after the import: if the program is killed before, it imports them again.
                write_private(&path, &serde_json::to_vec(&note).map_err(files)?)?;
            }
            Ok(())
        });
        match started {
            Ok(job) => watch.job = Some(job),
            Err(error) => watch.trouble = Some(error),
        }
        Ok(watch)
    }

    /// The note of the watched folder, if there is one.
    fn read_note(&self) -> Result<Option<WatchNote>, CallError> {
        match std::fs::read(self.context.paths.watch()) {
            Ok(text) => Ok(Some(serde_json::from_slice(&text).map_err(files)?)),
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error.into()),
        }
    }

    /// Stops watching until the program starts again.
    pub(crate) fn stop_watching(&self) {
        *lock(&self.watched) = None;
    }

    /// Stops watching the folder.
    pub fn unwatch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        self.stop_watching();
        wipe(&self.context.paths.watch())?;
        Ok(Watch::NONE)
    }

    /// Lets the person pick the folder to watch.
    pub fn watch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        self.context.own_only()?;
        if let Some(folder) = self.context.dialogs.pick_folder_path()? {
            let note = WatchNote::new(folder);
            let text = serde_json::to_vec(&note).map_err(files)?;
            write_private(&self.context.paths.watch(), &text)?;
            *lock(&self.watched) = Some(WatchedFolder::new(note));
        }
        self.watch(Nothing {})
    }
}
