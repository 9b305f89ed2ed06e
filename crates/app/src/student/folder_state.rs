//! What a device knows of the class folders that it was shown.

use super::folder_round::{Left, PackKnown, Round};
use crate::context::class_folder::FolderTrouble;
use crate::context::disk;
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
    /// The folder of each class: the first that was chosen here. It serves every student who chose
    /// no other.
    pub(super) folders: BTreeMap<ClassId, FolderNote>,
    /// The students who chose another one, or stopped using it.
    pub(super) own: BTreeMap<String, OwnFolder>,
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

/// The folder of one student.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct OwnFolder {
    pub(super) class: ClassId,
    pub(super) at: FolderNote,
    /// Whether the student stopped using it.
    pub(super) stopped: bool,
}

/// A class and the path of a folder that serves some of its students.
pub(super) type Place = (ClassId, PathBuf);

impl Note {
    /// The folder that serves a student of a class, also if the student stopped using it.
    fn chosen(&self, student: &str, class: &ClassId) -> Option<(&FolderNote, bool)> {
        match self.own.get(student).filter(|own| own.class == *class) {
            Some(own) => Some((&own.at, own.stopped)),
            None => Some((self.folders.get(class)?, false)),
        }
    }

    /// The folder that serves a student of a class.
    pub(super) fn folder_of(&self, student: &str, class: &ClassId) -> Option<&FolderNote> {
        let (folder, stopped) = self.chosen(student, class)?;
        (!stopped).then_some(folder)
    }

    /// The folder that a student of a class stopped using.
    pub(super) fn stopped_of(&self, student: &str, class: &ClassId) -> Option<&FolderNote> {
        let (folder, stopped) = self.chosen(student, class)?;
        stopped.then_some(folder)
    }

    /// Notes that a folder was reached.
    pub(super) fn reach(&mut self, (class, at): &Place, on: NaiveDate) {
        let shared = self.folders.get_mut(class);
        let own = (self.own.values_mut())
            .filter(|own| own.class == *class)
            .map(|own| &mut own.at);
        for folder in shared.into_iter().chain(own) {
            if folder.folder == *at {
                folder.reached_on = Some(on);
            }
        }
    }
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
    /// The version of its day, see [`super::folder_round::version_of_day`].
    pub(super) version: u32,
}

/// The class folders that this device was shown.
#[derive(Default)]
pub(super) struct ShownFolders {
    pub(super) note: Option<Note>,
    pub(super) states: BTreeMap<Place, FolderState>,
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
    /// The path of the folder.
    pub(super) folder: PathBuf,
    pub(super) held: u32,
    pub(super) sender: String,
    /// The newest event; `None` if all of it is in the folder.
    pub(super) newest: Option<u32>,
}

pub(super) fn read_note(at: &Path) -> Result<Note, CallError> {
    match disk::read(at) {
        Ok(text) => serde_json::from_slice(&text).map_err(files),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(Note::default()),
        Err(error) => Err(error.into()),
    }
}
