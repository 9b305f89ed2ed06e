//! What the screens are given and give about copies, backups and removal.

use crate::{CallError, Start};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A store of this device.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum StoreName {
    /// The teacher's desk.
    Desk,
    /// A student's store.
    Student {
        /// The profile's id.
        student: String,
    },
}

/// Why a copy is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum CopyKind {
    /// Made by itself on a day the store was used.
    Daily,
    /// Made before a newer program changed the store's schema.
    BeforeChange,
    /// The store itself, moved aside when another took its place.
    Replaced,
}

/// A copy of a store on this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StoredCopy {
    /// Names it in [`RestoreCopy`].
    pub name: String,
    /// Why it is there.
    pub kind: CopyKind,
    /// The day it was made, where that is known.
    pub made_on: Option<NaiveDate>,
    /// Its size.
    #[ts(type = "number")]
    pub bytes: u64,
}

/// The copies of a store, newest first.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Copies {
    /// Newest first.
    pub copies: Vec<StoredCopy>,
    /// Why the last daily copy could not be made, if it could not.
    pub trouble: Option<CallError>,
}

/// A store that cannot be opened.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DamagedStore {
    /// Which.
    pub store: StoreName,
    /// The student's nickname as the newest good copy has it.
    pub nickname: Option<String>,
    /// Why it cannot be opened.
    pub why: CallError,
    /// The newest copy that is whole.
    pub last_good: Option<StoredCopy>,
}

/// A backup asked for.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct BackUp {
    /// Of which store.
    pub store: StoreName,
    /// At least 8 characters.
    pub passphrase: String,
}

/// A sealed file that a person picked, before its passphrase is typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PickedSealed {
    /// Names it in the call that opens it.
    pub picked: u32,
    /// Its name.
    pub file_name: String,
}

/// The opening of a picked sealed file.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OpenSealed {
    /// The picked file.
    pub picked: u32,
    /// Its passphrase.
    pub passphrase: String,
}

/// A store that was brought back.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Restored {
    /// Which.
    pub store: StoreName,
    /// Whether another one stood in its place and was put aside.
    pub put_aside: bool,
    /// Where the program stands now.
    pub start: Start,
}

/// Going back to a copy.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RestoreCopy {
    /// Of which store.
    pub store: StoreName,
    /// The copy's name.
    pub name: String,
}

/// A PIN typed, to set it or to open with it.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PinTyped {
    /// The profile's id.
    pub student: String,
    /// 4 to 8 digits.
    pub pin: String,
}

/// What came of a PIN typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Unlocked {
    /// It fits, or there is none.
    Open,
    /// It does not fit; the next try counts after this many seconds.
    Wrong {
        /// Seconds.
        wait_seconds: u32,
    },
    /// Not looked at: the wait after earlier tries is not over.
    Wait {
        /// Seconds left.
        wait_seconds: u32,
    },
}

/// A forgotten PIN taken away by the code on the seat's slip.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PinReset {
    /// The profile's id.
    pub student: String,
    /// The code on the slip, as typed.
    pub seat_code: String,
}

/// A carry file asked for.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CarryAsked {
    /// The profile's id.
    pub student: String,
    /// At least 8 characters.
    pub passphrase: String,
}

/// What a carry file brought.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CarryDone {
    /// The student of this device who has it now.
    pub student: String,
    /// Whether the student is new on this device.
    pub new_here: bool,
    /// Check-ins that were new here.
    pub check_ins: usize,
    /// Finished exercises that were new here.
    pub answers: usize,
    /// Where the program stands now.
    pub start: Start,
}

/// A class key file asked for.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassKeyAsked {
    /// The class.
    pub class: String,
    /// At least 8 characters.
    pub passphrase: String,
}

/// A student whose data is to be removed from this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RemoveStudent {
    /// The profile's id.
    pub student: String,
}

/// A school year that is over while its data is still here.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum YearOver {
    /// A class of the desk.
    Class {
        /// The class.
        class: String,
        /// Its title.
        title: String,
        /// Its last school day.
        last_day: NaiveDate,
    },
    /// A student of this device.
    Student {
        /// The profile's id.
        student: String,
        /// The nickname.
        nickname: String,
        /// The class's last school day.
        last_day: NaiveDate,
    },
}

/// Something that was removed from the desk and can still be brought back.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Removed {
    /// Its number, by which it is brought back or let go of.
    pub number: u32,
    /// The class.
    pub class: String,
    /// Its title.
    pub title: String,
    /// What it was.
    pub what: RemovedWhat,
}

/// What was removed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum RemovedWhat {
    /// The whole class.
    Class,
    /// A seat.
    Seat {
        /// Its number.
        seat: u32,
        /// Its name.
        name: Option<String>,
    },
    /// An exercise of the teacher's own.
    OwnExercise,
    /// All that an import of own exercises or concepts brought.
    OwnImport,
}

/// Something removed, by its number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RemovedId {
    /// Its number.
    pub number: u32,
}

/// The folder that is watched for hand-ins.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Watch {
    /// Where it is; nothing when none is watched.
    pub folder: Option<String>,
    /// Whether this device can watch a folder at all.
    pub possible: bool,
    /// An import that the last look started.
    pub job: Option<crate::JobId>,
    /// Why the folder could not be looked at.
    pub trouble: Option<CallError>,
}

/// Files that another program handed over, or that were dropped on the window.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OpenedFiles {
    /// The last class pack among them.
    pub pack: Option<crate::PackOffer>,
    /// Hand-ins and zips among them; they wait for an import from `opened`.
    pub hand_ins: usize,
    /// A carry file among them, waiting for its passphrase.
    pub carry: Option<PickedSealed>,
    /// A backup among them, waiting for its passphrase.
    pub backup: Option<PickedSealed>,
}
