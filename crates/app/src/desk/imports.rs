//! Importing hand-ins.

use super::DeskDoor;
use crate::context::copies::{StoreName, make_copy};
use crate::context::file_dialogs::{FileKind, FileSource};
use crate::context::folder::files_in;
use crate::context::jobs::{JobId, JobResult};
use crate::context::settings::World;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::lock::lock;
use crate::read_files::hand_in_files::import_files;
use serde::{Deserialize, Serialize};
use std::path::Path;
use surefoot_desk::{FileReport, ImportReport, Journal};
use surefoot_record::Thing;
use surefoot_store::{DeskStore, Durability};
use ts_rs::TS;

/// The source of an import.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum ImportFrom {
    /// A folder that the person picks.
    Folder,
    /// Files that the person picks.
    Files,
    /// Files that another program opened with this one, or that were dropped on its window.
    Opened,
    /// The shared folder of the sample class; only in the sample class.
    SampleFolder,
}

/// An import to start.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ImportAsked {
    /// Its source.
    pub from: ImportFrom,
}

/// A page of the journal asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct JournalAsked {
    /// The imports before this one; nothing for the newest.
    #[ts(type = "number | null")]
    pub before: Option<i64>,
}

/// Further files of an import asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ImportLines {
    /// The import.
    #[ts(type = "number")]
    pub import: i64,
    /// How many of its files are known already.
    pub from: usize,
}

impl DeskDoor {
    /// Starts an import. Returns `None` if the person cancels.
    pub fn import_hand_ins(&self, asked: ImportAsked) -> Result<Option<JobId>, CallError> {
        // Opens the desk first: a damaged one is reported before any file is read, and opened files
        // go on waiting.
        self.with_desk(|_| Ok(()))?;
        let sources = match asked.from {
            ImportFrom::Folder => self.context.dialogs.pick_folder(FileKind::HandIn)?,
            ImportFrom::Files => self.context.dialogs.pick_files(FileKind::HandIn)?,
            ImportFrom::Opened => Some(std::mem::take(&mut *lock(&self.waiting))),
            ImportFrom::SampleFolder => match self.context.world() {
                World::Sample => Some(files_in(
                    &self.context.data().shared_folder(),
                    FileKind::HandIn,
                )?),
                World::Own => {
                    return Err(CallError::NotFound {
                        what: Thing::Sample,
                    });
                }
            },
        };
        let Some(sources) = sources else {
            return Ok(None);
        };
        Ok(Some(self.start_import(sources, |_, _| Ok(()))?))
    }

    /// Starts an import. Calls `after` with the desk and its report once it is over, unless it fails.
    pub(super) fn start_import(
        &self,
        sources: Vec<FileSource>,
        after: impl FnOnce(&DeskStore, &ImportReport) -> Result<(), CallError> + Send + 'static,
    ) -> Result<JobId, CallError> {
        let (path, today) = (self.context.data().desk(), self.context.today());
        let copies =
            (self.context.world() == World::Own).then(|| self.context.data().desk_copies());
        let copy_day = self.context.device_today();
        // The import finishes also if the desk is locked meanwhile.
        let key = self.key_in_memory();
        Ok(self.context.jobs.start(move |progress| {
            // With a connection of its own, the screens need not wait.
            let desk = DeskStore::open_again(&path, Durability::Full)?;
            if let Some(key) = key {
                desk.use_key(key)?;
            }
            let report = import_files(&desk, sources, today, progress)?;
            let noted = after(&desk, &report);
            let brought = report.tally.files() > report.tally.refused;
            if let Some(folder) = copies.filter(|_| brought) {
                // Today's copy should hold the import too. If it fails, the import still counts.
                let copied = |into: &Path| desk.copy_into(into);
                let _ = make_copy(&folder, copy_day, &StoreName::Desk, true, copied);
            }
            noted?;
            Ok(JobResult::Import { report })
        }))
    }

    /// A page of the journal of imports.
    pub fn imports(&self, asked: JournalAsked) -> Result<Journal, CallError> {
        self.with_desk(|desk| Ok(surefoot_desk::imports(desk, asked.before)?))
    }

    /// Further files of an import.
    pub fn import_lines(&self, asked: ImportLines) -> Result<Vec<FileReport>, CallError> {
        self.with_desk(|desk| Ok(surefoot_desk::import_lines(desk, asked.import, asked.from)?))
    }

    /// Undoes the last import.
    pub fn undo_import(&self, _: Nothing) -> Result<Journal, CallError> {
        self.with_desk(|desk| {
            surefoot_desk::undo_import(desk)?;
            Ok(surefoot_desk::imports(desk, None)?)
        })
    }
}
