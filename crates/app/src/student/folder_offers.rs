//! The class packs of a picked folder, to join with.
//!
//! Whoever can write into the folder may have put packs of classes of their own there, also with the
//! title of the right one. So with packs of several classes the seat code finds the right one.

use super::StudentDoor;
use super::join::PackOffer;
use crate::context::class_folder::{ClassFolder, FolderEntry, FolderTrouble, has_extension};
use crate::context::errand::Errand;
use crate::context::file_dialogs::FileKind;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use surefoot_exchange::{CLASS_PACK_CAPS, SeatCodeError, open_pack};
use surefoot_record::{ClassId, Thing};
use surefoot_student::StudentError;
use surefoot_student::views::Profile;
use ts_rs::TS;

/// Classes of a folder that are tried at most. Each costs a tenth of a second, see
/// [`surefoot_exchange::ClassSigns::of`].
const MOST_CLASSES: usize = 64;

/// Bytes of packs that are read for that.
const MOST_READ_BYTES: u64 = 64 * 1024 * 1024;

/// The class packs of a picked folder, to join with.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FolderShown {
    /// The newest pack of each class, two at most. With several, [`StudentDoor::pack_for_code`] finds
    /// the right one.
    pub packs: Vec<PackOffer>,
    /// Why the folder cannot be used now.
    pub trouble: Option<FolderTrouble>,
}

/// A seat code for the packs of the picked folder.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FolderCode {
    /// The typed code.
    pub seat_code: String,
}

/// The pack that a seat code is of.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PackFound {
    /// The pack.
    pub offer: PackOffer,
    /// The students of this device who have that seat already.
    pub joined: Vec<Profile>,
}

impl StudentDoor {
    /// Lets the person pick a class folder to join from.
    pub fn pick_shown_folder(&self, _: Nothing) -> Result<Option<FolderShown>, CallError> {
        const MOST_OFFERED: usize = 2;
        self.context.own_only()?;
        let Some(at) = self.context.dialogs.pick_class_folder()? else {
            return Ok(None);
        };
        *lock(&self.picked_folder) = Some(at.clone());
        let mut packs = Vec::new();
        let (found, trouble) = match self.newest_packs(&at) {
            Ok(found) => (found, None),
            Err(trouble) => (Vec::new(), Some(trouble)),
        };
        for bytes in found.into_iter().take(MOST_OFFERED) {
            let pack = surefoot_student::read_first_pack(bytes.as_slice())?;
            packs.push(self.offer_of(pack, Some(at.clone())));
        }
        Ok(Some(FolderShown { packs, trouble }))
    }

    /// Finds the pack of a seat code in the picked folder.
    ///
    /// # Errors
    /// Returns [`CallError::SeatCode`] for a mistyped code, or if no pack in the folder is of its
    /// class.
    pub fn pack_for_code(&self, code: FolderCode) -> Result<PackFound, CallError> {
        let at = lock(&self.picked_folder).clone();
        let at = at.ok_or(CallError::NotFound { what: Thing::Pack })?;
        // With a folder that cannot be used now, the pack is chosen again.
        let found = self
            .newest_packs(&at)
            .map_err(|_| CallError::NotFound { what: Thing::Pack })?;
        for bytes in found {
            let pack = surefoot_student::read_first_pack(bytes.as_slice())?;
            match surefoot_student::check_seat_code(&pack, &code.seat_code) {
                Ok(_) => {
                    let joined = self.joined_at(&pack, &code.seat_code)?;
                    let offer = self.offer_of(pack, Some(at));
                    return Ok(PackFound { offer, joined });
                }
                Err(StudentError::SeatCode(SeatCodeError::OtherClass)) => {}
                Err(error) => return Err(error.into()),
            }
        }
        Err(StudentError::SeatCode(SeatCodeError::OtherClass).into())
    }

    /// The newest pack of each class in a folder.
    fn newest_packs(&self, at: &Path) -> Result<Vec<Vec<u8>>, FolderTrouble> {
        let folder = self.context.dialogs.class_folder(at);
        let now = || self.context.moment();
        let found = Errand::wait_for(now, move || newest_packs(folder.as_ref()));
        found.unwrap_or(Err(FolderTrouble::Silent))
    }
}

fn newest_packs(folder: &dyn ClassFolder) -> Result<Vec<Vec<u8>>, FolderTrouble> {
    let cap = CLASS_PACK_CAPS.sealed_bytes;
    let listed = folder.list(&BTreeSet::new())?.entries;
    let mut packs: Vec<&FolderEntry> = (listed.iter())
        .filter(|entry| has_extension(&entry.name, FileKind::ClassPack.extension()))
        .filter(|entry| entry.mark.size_bytes <= cap)
        .collect();
    // Names that the program gives first.
    packs.sort_by_key(|entry| !entry.name.starts_with("class-pack-"));
    let mut left_bytes = MOST_READ_BYTES;
    let mut newest: BTreeMap<ClassId, (u32, Vec<u8>)> = BTreeMap::new();
    let mut order: Vec<ClassId> = Vec::new();
    for entry in packs {
        if left_bytes == 0 || entry.mark.size_bytes > left_bytes {
            break;
        }
        let Ok(bytes) = folder.read(&entry.name, cap) else {
            continue;
        };
        // Counts what came, because some folders do not say a size before.
        left_bytes = left_bytes.saturating_sub(bytes.len() as u64);
        let Ok(pack) = open_pack(bytes.as_slice()) else {
            continue;
        };
        let (class, version) = (pack.content().class_id.clone(), pack.content().version);
        match newest.get_mut(&class) {
            Some(found) if found.0 < version => *found = (version, bytes),
            Some(_) => {}
            None if order.len() < MOST_CLASSES => {
                newest.insert(class.clone(), (version, bytes));
                order.push(class);
            }
            None => {}
        }
    }
    Ok((order.iter())
        .filter_map(|class| newest.remove(class))
        .map(|(_, bytes)| bytes)
        .collect())
}
