//! Joins a class, and takes newer class packs.

use super::{Picked, StudentDoor, StudentId};
use crate::context::file_dialogs::{FileKind, FileSource};
use crate::context::folder::{make_file, make_folder};
use crate::context::random;
use crate::context::settings::World;
use crate::context::values::Nothing;
use crate::context::wipe::wipe_store;
#[cfg(feature = "desk")]
use crate::demo::newest_class_pack;
use crate::error::CallError;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use std::path::PathBuf;
use std::sync::Arc;
use surefoot_catalogue::Language;
use surefoot_record::{Field, Rule, Thing};
use surefoot_store::{Durability, StudentStore};
use surefoot_student::views::Profile;
use surefoot_student::{FirstPack, NewSlip, NewStudent};
use ts_rs::TS;

/// Picked class packs that are kept at most.
const PACKS_KEPT: usize = 4;

/// A picked class pack, before a student joins with it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PackOffer {
    /// Its number in [`Join`].
    pub pack: u32,
    /// The class's title.
    pub class_title: String,
    /// Concepts in its rotation.
    pub concepts: usize,
    /// First day of its school year.
    pub first_day: chrono::NaiveDate,
    /// Last day of its school year.
    pub last_day: chrono::NaiveDate,
}

/// The check of a seat code while it is typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatCodeTyped {
    /// The picked pack.
    pub pack: u32,
    /// The typed code.
    pub seat_code: String,
}

/// What a seat code says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatCodeRead {
    /// The students of this device who have that seat already.
    pub joined: Vec<Profile>,
}

/// Another slip for a student.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SlipChange {
    /// The profile's id.
    pub student: String,
    /// The picked pack.
    pub pack: u32,
    /// The code of the new slip, as typed.
    pub seat_code: String,
    /// Of the slip that the student has now, as typed: the PIN signs if the device keeps a hash of
    /// them, otherwise the seat code.
    pub earlier: String,
}

/// Joining a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Join {
    /// The picked pack.
    pub pack: u32,
    /// The code of the join slip, as typed.
    pub seat_code: String,
    /// The nickname, 1 to 24 characters; it stays on this device.
    pub nickname: String,
    /// The id of the avatar; it stays on this device.
    pub avatar: String,
    /// The student's language.
    pub language: Language,
    /// Whether the person said that somebody else joined here with this slip.
    #[serde(default)]
    pub beside: bool,
}

/// The result of taking a class pack.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PackTaken {
    /// The version that the device has now.
    pub version: u32,
    /// Assignments in it that are still open.
    pub open_assignments: usize,
}

impl StudentDoor {
    /// Lets the person pick a class pack.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a file that is no valid class pack.
    pub fn pick_class_pack(&self, _: Nothing) -> Result<Option<PackOffer>, CallError> {
        let picked = self.context.dialogs.pick_file(FileKind::ClassPack)?;
        picked.map(|source| self.offer(source)).transpose()
    }

    /// Reads a class pack and keeps it for [`StudentDoor::join`].
    pub(crate) fn offer(&self, source: FileSource) -> Result<PackOffer, CallError> {
        let pack = surefoot_student::read_first_pack(source.open()?)?;
        Ok(self.offer_of(pack, None))
    }

    /// Keeps a class pack for [`StudentDoor::join`]; `folder` is the class folder that it is from.
    pub(super) fn offer_of(&self, pack: FirstPack, folder: Option<PathBuf>) -> PackOffer {
        let content = pack.content();
        let offer = PackOffer {
            pack: 0,
            class_title: content.title.clone(),
            concepts: content.rotation.iter().map(Vec::len).sum(),
            first_day: content.year.first_day,
            last_day: content.year.last_day,
        };
        PackOffer {
            pack: self.keep_pack(pack, folder),
            ..offer
        }
    }

    /// Keeps a picked class pack under a number.
    fn keep_pack(&self, pack: FirstPack, folder: Option<PathBuf>) -> u32 {
        let mut packs = lock(&self.packs);
        let number = packs.keys().last().map_or(1, |last| last + 1);
        let pack = Arc::new(pack);
        packs.insert(number, Picked { pack, folder });
        while packs.len() > PACKS_KEPT {
            packs.pop_first();
        }
        number
    }

    /// A picked class pack.
    fn kept_pack(&self, number: u32) -> Result<Picked, CallError> {
        lock(&self.packs)
            .get(&number)
            .cloned()
            .ok_or(CallError::NotFound { what: Thing::Pack })
    }

    /// Checks a seat code while it is typed, and names who has that seat on this device.
    pub fn check_seat_code(&self, typed: SeatCodeTyped) -> Result<SeatCodeRead, CallError> {
        let pack = self.kept_pack(typed.pack)?.pack;
        let joined = self.joined_at(&pack, &typed.seat_code)?;
        Ok(SeatCodeRead { joined })
    }

    /// The students of this device who have the seat of a seat code.
    pub(super) fn joined_at(
        &self,
        pack: &FirstPack,
        seat_code: &str,
    ) -> Result<Vec<Profile>, CallError> {
        let seat = surefoot_student::check_seat_code(pack, seat_code)?;
        let mut there = Vec::new();
        for id in self.ids()? {
            let same = self.as_locked_student(&id, |_, joined| {
                Ok(surefoot_student::is_at_seat(joined, pack, &seat))
            });
            // Another student's damaged store does not matter here; the first screen reports it.
            if same.unwrap_or(false) {
                there.push(self.profile(&id)?);
            }
        }
        Ok(there)
    }

    /// Gives a student another slip: of another class, or because the first was somebody else's.
    /// The record stays. A PIN is removed, because it belongs to the earlier slip.
    ///
    /// # Errors
    /// Returns [`CallError::SeatCode`] for a mistyped code, [`CallError::Invalid`] if somebody on
    /// this device has that seat already, or if the earlier slip is mistyped or not the student's.
    pub fn change_slip(&self, change: SlipChange) -> Result<Profile, CallError> {
        self.context.own_only()?;
        let Picked { pack, folder } = self.kept_pack(change.pack)?;
        let id = change.student;
        let there = self.joined_at(&pack, &change.seat_code)?;
        if there.iter().any(|other| other.id != id) {
            return Err(CallError::Invalid {
                field: Field::Seats,
                rule: Rule::Taken,
            });
        }
        let today = self.context.today();
        let slip = NewSlip {
            seat_code: &change.seat_code,
            earlier: &change.earlier,
        };
        let earlier = self.as_student(&id, |store, joined| {
            surefoot_student::change_slip(store, joined, &pack, slip, today)?;
            Ok(joined.pack.class_id.clone())
        })?;
        // Unless it is the slip of the seat that the student has.
        if there.is_empty() {
            self.as_student(&id, |store, _| {
                Ok(surefoot_student::forget_handed_in(store)?)
            })?;
            self.change_folder(&id, &earlier, &pack.content().class_id, folder)?;
        }
        self.profile(&id)
    }

    /// Joins a class.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] if somebody has that seat on this device, unless the person
    /// said that it is somebody else.
    pub fn join(&self, join: Join) -> Result<Profile, CallError> {
        let Picked { pack, folder } = self.kept_pack(join.pack)?;
        // Checked before the store is made, so that a wrong code leaves no file.
        if !self.joined_at(&pack, &join.seat_code)?.is_empty() && !join.beside {
            return Err(CallError::Invalid {
                field: Field::Seats,
                rule: Rule::Taken,
            });
        }
        let id = random::hex::<8>()?;
        let path = self.context.data().student(&id);
        make_folder(&self.context.data().students())?;
        make_file(&path)?;
        let joined = {
            let store = StudentStore::open(&path, Durability::Full)?;
            surefoot_student::join(
                &store,
                &pack,
                self.context.today(),
                &NewStudent {
                    device: random::bytes()?,
                    signing_seed: random::bytes()?,
                    sealing_seed: random::bytes()?,
                    seat_code: &join.seat_code,
                    nickname: &join.nickname,
                    avatar: &join.avatar,
                    language: join.language,
                },
            )
        };
        if let Err(error) = joined {
            // The store is still empty.
            let _ = wipe_store(&path);
            return Err(error.into());
        }
        if let Some(folder) = folder {
            self.choose_folder(&id, &pack.content().class_id, folder)?;
        }
        self.profile(&id)
    }

    /// Lets the person pick a newer class pack, and takes it.
    pub fn take_class_pack(&self, id: StudentId) -> Result<Option<PackTaken>, CallError> {
        let today = self.context.today();
        let source = match self.context.world() {
            World::Own => self.context.dialogs.pick_file(FileKind::ClassPack)?,
            World::Sample => newest_class_pack(&self.context.data())?,
        };
        let Some(source) = source else {
            return Ok(None);
        };
        let bytes = source.open()?;
        let version = self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::take_class_pack(
                store, joined, today, bytes,
            )?)
        })?;
        let open_assignments = self.as_student(&id.student, |_, joined| {
            Ok(joined.assignments.iter().filter(|a| a.due >= today).count())
        })?;
        Ok(Some(PackTaken {
            version,
            open_assignments,
        }))
    }
}

/// Without the sample class there is no pack of it.
#[cfg(not(feature = "desk"))]
fn newest_class_pack(_: &crate::WorldPaths) -> Result<Option<FileSource>, CallError> {
    Ok(None)
}
