//! The class folder of the desk: puts each class's pack there whenever something changed, and
//! imports hand-ins as they come.
//!
//! The screens call [`DeskDoor::class_folder`] every few seconds. It waits for no folder: a round
//! through the folder runs in its own thread, and the next call takes up what came of it.

use super::DeskDoor;
use super::folder_round::{Copies, Errands, FileRead, MOST_READ_BYTES, PackToPut, is_given_name};
use super::folder_state::{DeskFolder, Importing, Note, read_note};
use crate::context::class_folder::FolderTrouble;
use crate::context::file_dialogs::FileSource;
use crate::context::jobs::JobId;
use crate::context::values::Nothing;
use crate::context::wipe::wipe;
use crate::error::CallError;
use crate::lock::lock;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::time::Duration;
use surefoot_desk::OpenClass;
use surefoot_exchange::{OpenedHandIn, Refusal, SealingIdentity, open_hand_in};
use surefoot_record::ClassId;
use surefoot_store::DeskStore;
use ts_rs::TS;

/// How long the next import waits after one that failed or was stopped.
const PAUSE: Duration = Duration::from_secs(20);

/// The class folder of the desk, as the screens show it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassFolderState {
    /// Its path or name; `None` without a class folder.
    pub folder: Option<String>,
    /// The path of the one that the person stopped using since the program started.
    pub stopped: Option<String>,
    /// Whether this device can use one.
    pub possible: bool,
    /// The date on which the desk last reached it.
    pub reached_on: Option<NaiveDate>,
    /// Why it cannot be used now.
    pub trouble: Option<FolderTrouble>,
    /// How many classes have a change that their pack in the folder does not have yet.
    pub packs_waiting: usize,
    /// The import that this call started.
    pub job: Option<JobId>,
    /// Whether something is under way: a round, files to import, a pack to put.
    pub busy: bool,
}

impl DeskDoor {
    /// The class folder. Takes up what came of the last round through it, starts an import of what
    /// is new there, makes class packs that are due, and starts the next round. The screens call
    /// this every few seconds while the desk is open.
    pub fn class_folder(&self, _: Nothing) -> Result<ClassFolderState, CallError> {
        let possible = self.context.dialogs.has_class_folders();
        let none = ClassFolderState {
            folder: None,
            stopped: None,
            possible,
            reached_on: None,
            trouble: None,
            packs_waiting: 0,
            job: None,
            busy: false,
        };
        if !possible || self.context.own_only().is_err() {
            return Ok(none);
        }
        self.refuse_locked()?;
        let (today, now) = (self.context.today(), self.context.moment());
        let note_path = self.context.paths.class_folder();
        let mut folder = lock(&self.folder);
        if !folder.read {
            folder.note = read_note(&note_path)?;
            folder.read = true;
        }
        let before = folder.note.clone();
        // Another desk took the place of this one.
        if self.other_desk.swap(false, Ordering::Relaxed) {
            folder.read_again();
        }
        if let Some(came) = folder.errand.take() {
            folder.take_up(came, today);
        }
        let Some(place) = folder.note.as_ref().map(|note| note.folder.clone()) else {
            let stopped = folder.stopped.as_ref();
            return Ok(ClassFolderState {
                stopped: stopped.map(|at| at.display().to_string()),
                ..none
            });
        };
        if std::mem::take(&mut lock(&folder.import).failed) {
            folder.failed_at = Some(now);
        }
        let rests = (folder.failed_at).is_some_and(|at| now.since(at) < PAUSE);
        let job = if rests {
            None
        } else {
            self.import_new(&mut folder)?
        };
        let classes = self.make_packs(&mut folder, today)?;
        if folder.errand.is_silent(now) {
            folder.trouble = Some(FolderTrouble::Silent);
        }
        if folder.note != before {
            folder.save(&note_path)?;
        }
        let packs_waiting = folder.made.len();
        let imported = self.imported(&mut folder)?;
        let read_bytes = (folder.new.iter())
            .flat_map(|file| &file.content)
            .fold(0, |sum: u64, bytes| sum.saturating_add(bytes.len() as u64));
        let errands = Errands {
            folder: self.context.dialogs.class_folder(&place),
            last: folder.last.clone(),
            known: folder.known.clone(),
            imported,
            room_bytes: MOST_READ_BYTES.saturating_sub(read_bytes),
            round: folder.rounds,
            classes,
            contained: folder.contained.clone(),
        };
        let under_way = rests || folder.unsettled || folder.errand.is_out();
        if !folder.errand.is_out() {
            folder.rounds = folder.rounds.wrapping_add(1);
        }
        folder.errand.start(now, move || errands.go());
        Ok(ClassFolderState {
            folder: Some(self.context.dialogs.class_folder_name(&place)),
            reached_on: folder.note.as_ref().and_then(|note| note.reached_on),
            trouble: folder.trouble.or(folder.not_put),
            packs_waiting,
            busy: job.is_some() || under_way || packs_waiting > 0 || !folder.new.is_empty(),
            job,
            ..none
        })
    }

    /// Starts an import of the files that were read.
    fn import_new(&self, folder: &mut DeskFolder) -> Result<Option<JobId>, CallError> {
        if (folder.new.is_empty() && folder.copies.is_empty()) || self.context.jobs.any_running() {
            return Ok(None);
        }
        let identities = self.with_desk_unused(identities)?;
        for copies in std::mem::take(&mut folder.copies) {
            folder.contained.extend(contained(copies, &identities));
        }
        if folder.new.is_empty() {
            return Ok(None);
        }
        let new = std::mem::take(&mut folder.new);
        let digests: BTreeSet<String> = waiting(&new).collect();
        let sources = new.into_iter().map(|file| match file.content {
            Ok(bytes) => FileSource::from_bytes(file.name, bytes),
            Err((found_bytes, most_bytes)) => FileSource::refused(
                file.name,
                Refusal::TooLarge {
                    found_bytes,
                    most_bytes,
                },
            ),
        });
        let importing = Importing::begin(&folder.import, digests.clone());
        let job = self.start_import(sources.collect(), move |desk, report| {
            // Noted after the import: if it fails or is stopped, or the program is killed before,
            // they are imported again.
            if !report.cancelled {
                desk.add_folder_files(&digests)?;
                surefoot_desk::join_refused(desk, report.import)?;
                importing.done();
            }
            Ok(())
        })?;
        folder.failed_at = None;
        Ok(Some(job))
    }

    /// The digests of files that are imported, or wait for it. Forgets those that are gone.
    fn imported(&self, folder: &mut DeskFolder) -> Result<BTreeSet<String>, CallError> {
        let there = folder.there.take();
        let (under_way, mut imported) = self.with_desk_unused(|desk| {
            // Before the desk is asked, so that one that ends in between is in either.
            let under_way = lock(&folder.import).digests.clone();
            let mut imported = desk.folder_files()?;
            if let Some(there) = there {
                let gone = imported.difference(&there).cloned().collect();
                desk.remove_folder_files(&gone)?;
                imported.retain(|digest| there.contains(digest));
            }
            Ok((under_way, imported))
        })?;
        imported.extend(under_way);
        imported.extend(waiting(&folder.new));
        Ok(imported)
    }

    /// Makes the packs of classes that changed since theirs was put. Returns all classes, each with
    /// the pack that waits.
    fn make_packs(
        &self,
        folder: &mut DeskFolder,
        today: NaiveDate,
    ) -> Result<BTreeMap<ClassId, Option<PackToPut>>, CallError> {
        self.with_desk_unused(|desk| {
            let ids = surefoot_desk::class_ids(desk)?;
            for id in &ids {
                // A new class, or the first call since the folder was named.
                if !desk.class_folder(id)? {
                    desk.set_class_folder(true)?;
                }
            }
            let mut found = BTreeMap::new();
            for summary in ids {
                let class = surefoot_desk::open_class(desk, &summary)?;
                let id = ClassId::new(summary).map_err(|error| CallError::Internal {
                    detail: error.to_string(),
                })?;
                let pack = make_pack(desk, &class, &id, folder, today)?;
                found.insert(id, pack);
            }
            folder.made.retain(|class, _| found.contains_key(class));
            Ok(found)
        })
    }

    /// Lets the person name the class folder.
    pub fn name_class_folder(&self, _: Nothing) -> Result<ClassFolderState, CallError> {
        self.context.own_only()?;
        if let Some(at) = self.context.dialogs.pick_class_folder()? {
            self.use_folder(at)?;
            self.context.release_folders();
        }
        self.class_folder(Nothing {})
    }

    /// Uses the class folder again that the person stopped using.
    pub fn use_class_folder(&self, _: Nothing) -> Result<ClassFolderState, CallError> {
        self.context.own_only()?;
        let stopped = lock(&self.folder).stopped.clone();
        if let Some(at) = stopped {
            self.use_folder(at)?;
        }
        self.class_folder(Nothing {})
    }

    fn use_folder(&self, at: PathBuf) -> Result<(), CallError> {
        self.forget_imported()?;
        let mut folder = lock(&self.folder);
        *folder = DeskFolder {
            read: true,
            note: Some(Note::new(at)),
            ..DeskFolder::default()
        };
        folder.save(&self.context.paths.class_folder())
    }

    /// Stops using the class folder. What is in it stays.
    pub fn stop_class_folder(&self, _: Nothing) -> Result<ClassFolderState, CallError> {
        self.context.own_only()?;
        self.with_desk(|desk| Ok(desk.set_class_folder(false)?))?;
        self.forget_imported()?;
        let stopped = (lock(&self.folder).note.take()).map(|note| note.folder);
        self.forget_folder();
        wipe(&self.context.paths.class_folder())?;
        lock(&self.folder).stopped = stopped;
        self.class_folder(Nothing {})
    }

    /// Forgets which files were imported: those of another folder are read from the beginning.
    fn forget_imported(&self) -> Result<(), CallError> {
        self.with_desk(|desk| {
            desk.remove_folder_files(&desk.folder_files()?)?;
            Ok(())
        })
    }

    /// Forgets the class folder until its note is read again.
    pub(crate) fn forget_folder(&self) {
        *lock(&self.folder) = DeskFolder::default();
    }
}

/// The pack of a class that waits to be put. Makes it if the class changed, or if the folder has
/// none or an older one and the newest is not kept.
fn make_pack(
    desk: &DeskStore,
    class: &OpenClass,
    id: &ClassId,
    folder: &mut DeskFolder,
    today: NaiveDate,
) -> Result<Option<PackToPut>, CallError> {
    if !class.row.saves_packs {
        return Ok(None);
    }
    let stamp = surefoot_desk::pack_stamp(desk, class)?;
    let settled = folder.stamps.insert(id.clone(), stamp.clone()) == Some(stamp.clone());
    if let Some((of, pack)) = folder.made.get(id)
        && *of == stamp
    {
        return Ok(Some(pack.clone()));
    }
    // Nothing is made before the folder was looked at, so that no version is given out in vain.
    let (Some(found), None, true) = (folder.versions.get(id).copied(), folder.trouble, settled)
    else {
        return Ok(None);
    };
    if let Some((of, pack)) = folder.kept.get(id)
        && *of == stamp
        && pack.version == class.row.pack_version
        && found < pack.version
    {
        let pack = pack.clone();
        folder.made.insert(id.clone(), (stamp, pack.clone()));
        return Ok(Some(pack));
    }
    let put = (folder.note.as_ref()).and_then(|note| note.put.get(id).copied());
    let changed = class.row.pack_stamp != stamp || found == 0;
    // A higher version in the folder is another desk's with the keys of this class.
    let stale = found < class.row.pack_version || put.is_none();
    if found == u32::MAX || !(changed || stale) {
        return Ok(None);
    }
    let made = surefoot_desk::make_class_pack_above(desk, class, today, found)?;
    let pack = PackToPut {
        version: made.version,
        made_on: today,
        bytes: Arc::new(made.bytes),
    };
    folder.made.insert(id.clone(), (stamp, pack.clone()));
    Ok(Some(pack))
}

fn identities(desk: &DeskStore) -> Result<Vec<SealingIdentity>, CallError> {
    Ok(surefoot_desk::identities(desk)?)
}

fn waiting(new: &[FileRead]) -> impl Iterator<Item = String> {
    new.iter().map(|file| file.digest.clone())
}

/// The copies of one hand-in whose whole content is in the file that has its device's name for it.
fn contained(copies: Copies, identities: &[SealingIdentity]) -> Vec<(String, String)> {
    let opened: Vec<(String, String, OpenedHandIn)> = (copies.into_iter())
        .filter_map(|(name, digest, bytes)| {
            let opened = open_hand_in(bytes.as_slice(), identities).ok()?;
            Some((name, digest, opened))
        })
        .collect();
    let Some((_, _, whole)) = opened.iter().find(|(name, ..)| is_given_name(name)) else {
        return Vec::new();
    };
    (opened.iter())
        .filter(|(name, _, copy)| !is_given_name(name) && whole.contains(copy))
        .map(|(name, digest, _)| (name.clone(), digest.clone()))
        .collect()
}
