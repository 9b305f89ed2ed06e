//! What the desk knows of its class folder.

use super::folder_round::{Copies, FileRead, Known, PackToPut, Round};
use crate::context::class_folder::{FolderTrouble, Mark};
use crate::context::clock::Moment;
use crate::context::errand::Errand;
use crate::context::folder::write_private;
use crate::error::{CallError, files};
use crate::lock::lock;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use surefoot_record::ClassId;

/// The content of `class-folder.json`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Note {
    pub(super) folder: PathBuf,
    /// The version of each class's pack in the folder.
    pub(super) put: BTreeMap<ClassId, u32>,
    pub(super) reached_on: Option<NaiveDate>,
}

impl Note {
    pub(super) fn new(folder: PathBuf) -> Self {
        Self {
            folder,
            put: BTreeMap::new(),
            reached_on: None,
        }
    }
}

/// The import of files of the class folder.
#[derive(Default)]
pub(super) struct FolderImport {
    /// Digests of the files that it has.
    pub(super) digests: BTreeSet<String>,
    /// Whether the last one failed or was stopped.
    pub(super) failed: bool,
}

/// A part of an import that knows when it ends, whatever the end is.
pub(super) struct Importing {
    import: Arc<Mutex<FolderImport>>,
    is_done: bool,
}

impl Importing {
    pub(super) fn begin(import: &Arc<Mutex<FolderImport>>, digests: BTreeSet<String>) -> Self {
        lock(import).digests = digests;
        Self {
            import: Arc::clone(import),
            is_done: false,
        }
    }

    pub(super) fn done(mut self) {
        self.is_done = true;
    }
}

impl Drop for Importing {
    fn drop(&mut self) {
        let mut import = lock(&self.import);
        import.digests.clear();
        import.failed = !self.is_done;
    }
}

/// The class folder of the desk.
#[derive(Default)]
pub(super) struct DeskFolder {
    /// Whether the note was read.
    pub(super) read: bool,
    pub(super) note: Option<Note>,
    pub(super) errand: Errand<Result<Round, FolderTrouble>>,
    pub(super) last: BTreeMap<String, Mark>,
    pub(super) known: BTreeMap<String, Known>,
    /// Read, and not given to an import yet.
    pub(super) new: Vec<FileRead>,
    pub(super) import: Arc<Mutex<FolderImport>>,
    /// When the last import failed or was stopped. The next waits a little.
    pub(super) failed_at: Option<Moment>,
    /// Digests of the files that the last round found; `None` unless it looked at all.
    pub(super) there: Option<BTreeSet<String>>,
    pub(super) copies: Vec<Copies>,
    pub(super) contained: Vec<(String, String)>,
    /// Packs that are made and not put yet, each with the stamp of its content.
    pub(super) made: BTreeMap<ClassId, (String, PackToPut)>,
    /// Packs that were put, so that one that somebody removes is the same again.
    pub(super) kept: BTreeMap<ClassId, (String, PackToPut)>,
    /// The stamp of each class at the last call: a pack is made once two calls find it the same.
    pub(super) stamps: BTreeMap<ClassId, String>,
    /// The versions that the last round found.
    pub(super) versions: BTreeMap<ClassId, u32>,
    pub(super) trouble: Option<FolderTrouble>,
    /// Why not everything could be put or looked at.
    pub(super) not_put: Option<FolderTrouble>,
    pub(super) unsettled: bool,
    /// Rounds since the folder was named or the program started.
    pub(super) rounds: u32,
    /// The folder that the person stopped using, until another is named or the program ends.
    pub(super) stopped: Option<PathBuf>,
}

impl DeskFolder {
    /// Forgets everything but the folder, so that all its files are read again.
    pub(super) fn read_again(&mut self) {
        let note = self.note.take().map(|note| Note::new(note.folder));
        // A round under way knows what does not hold any more.
        *self = Self {
            read: self.read,
            note,
            stopped: self.stopped.take(),
            ..Self::default()
        };
    }

    /// Takes up what came of a round.
    pub(super) fn take_up(&mut self, came: Result<Round, FolderTrouble>, today: NaiveDate) {
        let Some(note) = &mut self.note else {
            return;
        };
        let round = match came {
            Ok(round) => round,
            Err(trouble) => {
                self.trouble = Some(trouble);
                return;
            }
        };
        self.trouble = None;
        self.not_put = (round.not_put).or(round.too_many.then_some(FolderTrouble::TooMany));
        note.reached_on = Some(today);
        for (class, version) in &round.versions {
            if (self.made.get(class)).is_some_and(|(_, pack)| pack.version <= *version) {
                let put = self.made.remove(class);
                self.kept.extend(put.map(|put| (class.clone(), put)));
            }
            if *version != u32::MAX {
                note.put.insert(class.clone(), *version);
            }
        }
        // Files that only part of which could be looked at must not be forgotten.
        self.there = (!round.unsettled && !round.too_many).then(|| {
            (round.known.values())
                .map(|file| file.digest.clone())
                .collect()
        });
        self.contained.clear();
        self.last = round.marks;
        self.known = round.known;
        self.new.extend(round.new);
        self.copies.extend(round.copies);
        self.versions = round.versions;
        self.unsettled = round.unsettled;
    }

    pub(super) fn save(&self, at: &Path) -> Result<(), CallError> {
        if let Some(note) = &self.note {
            write_private(at, &serde_json::to_vec(note).map_err(files)?)?;
        }
        Ok(())
    }
}

pub(super) fn read_note(at: &Path) -> Result<Option<Note>, CallError> {
    match std::fs::read(at) {
        Ok(text) => Ok(Some(serde_json::from_slice(&text).map_err(files)?)),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(error.into()),
    }
}
