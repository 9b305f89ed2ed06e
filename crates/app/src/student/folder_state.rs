//! What a device knows of the class folders that it was shown.

use super::folder_round::{Left, PackKnown, Round};
use crate::context::class_folder::FolderTrouble;
use crate::context::errand::Errand;
use crate::error::{CallError, files};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use surefoot_record::ClassId;
use surefoot_student::SealedHandIn;

/// The content of `shown-folders.json`.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Note {
    /// The folder of each class.
    pub(super) folders: BTreeMap<ClassId, FolderNote>,
    /// What was left of each student.
    pub(super) left: BTreeMap<String, Left>,
    /// Since when a student's hand-in waits.
    pub(super) waiting_since: BTreeMap<String, NaiveDate>,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct FolderNote {
    pub(super) folder: PathBuf,
    pub(super) reached_on: Option<NaiveDate>,
}

/// What is known of one folder until the program ends.
#[derive(Default)]
pub(super) struct FolderState {
    pub(super) errand: Errand<Result<Round, FolderTrouble>>,
    pub(super) packs: BTreeMap<String, PackKnown>,
    pub(super) trouble: Option<FolderTrouble>,
    pub(super) other_packs: usize,
    pub(super) visits: u32,
}

/// A hand-in that is made and not left yet.
pub(super) struct Made {
    pub(super) sealed: Arc<SealedHandIn>,
    pub(super) sender: String,
    pub(super) name: String,
}

/// The class folders that this device was shown.
#[derive(Default)]
pub(super) struct ShownFolders {
    pub(super) note: Option<Note>,
    pub(super) states: BTreeMap<ClassId, FolderState>,
    /// The newest event of each student at the last visit.
    pub(super) seen: BTreeMap<String, u32>,
    pub(super) made: BTreeMap<String, Made>,
    /// When a hand-in that somebody changed or removed was last left again.
    pub(super) repaired_on: BTreeMap<String, NaiveDate>,
    pub(super) late: Vec<String>,
}

/// A student of a class with a folder.
pub(super) struct Visitor {
    pub(super) id: String,
    pub(super) class: ClassId,
    pub(super) held: u32,
    pub(super) sender: String,
    /// The newest event; `None` if all of it is in the folder.
    pub(super) newest: Option<u32>,
}

pub(super) fn read_note(at: &Path) -> Result<Note, CallError> {
    match std::fs::read(at) {
        Ok(text) => serde_json::from_slice(&text).map_err(files),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(Note::default()),
        Err(error) => Err(error.into()),
    }
}
