//! Watching a folder for hand-ins.

use super::DeskDoor;
use super::watched_folder::{WatchNote, WatchedFolder};
use crate::context::folder::write_private;
use crate::context::jobs::JobId;
use crate::context::values::Nothing;
use crate::context::wipe::wipe;
use crate::error::{CallError, files};
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The folder that is watched for hand-ins.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Watch {
    /// Where it is; nothing when none is watched.
    pub folder: Option<String>,
    /// Whether this device can watch a folder at all.
    pub possible: bool,
    /// An import that the last look started.
    pub job: Option<JobId>,
    /// Why the folder could not be looked at.
    pub trouble: Option<CallError>,
}

/// No folder is watched.
const NONE: Watch = Watch {
    folder: None,
    possible: true,
    job: None,
    trouble: None,
};

impl DeskDoor {
    /// The folder that is watched. When something in it has changed, an import is started;
    /// the screens ask every few seconds while the desk is open. What goes wrong is in the
    /// answer.
    pub fn watch(&self, _: Nothing) -> Result<Watch, CallError> {
        if self.context.own_only().is_err() {
            return Ok(NONE);
        }
        let mut watched = lock(&self.watched);
        if watched.is_none() {
            match self.read_note() {
                Ok(note) => *watched = note.map(WatchedFolder::new),
                Err(error) => {
                    return Ok(Watch {
                        trouble: Some(error),
                        ..NONE
                    });
                }
            }
        }
        let Some(folder) = watched.as_mut() else {
            return Ok(NONE);
        };
        let mut watch = Watch {
            folder: Some(folder.note.folder.display().to_string()),
            ..NONE
        };
        let sources = match folder.look(self.context.jobs.any_running()) {
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
        let started = self.start_import(sources, move |account| {
            if !account.cancelled {
                // After the import: a program that ended meanwhile imports them again.
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

    /// Forgets the watched folder without touching its note.
    pub(crate) fn stop_watching(&self) {
        *lock(&self.watched) = None;
    }

    /// Ends the watching.
    pub fn unwatch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        self.stop_watching();
        wipe(&self.context.paths.watch())?;
        Ok(NONE)
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
