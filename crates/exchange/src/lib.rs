//! The files that travel, the files for their owner alone, and what a join slip says.
//!
//! Takes bytes and returns bytes: nothing here opens a file, reads a clock or draws
//! random bytes (except for sealing, inside the `age` crate; see [`sealing`]). Bytes from
//! outside become *opened* (within the caps, authentic, well formed), then *checked*
//! (also fits the class and seat). Only checked content can be merged or used.
//! `docs/exchange.md` describes every byte.
//!
//! This crate must not know stores, paths or dialogs.
#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod backup_file;
mod carry;
mod class_id;
mod class_key;
mod class_pack;
mod content;
mod fingerprint;
mod frame;
mod hand_in;
mod hand_in_file;
mod head;
mod iso7064;
mod keys;
mod limits;
mod pack_file;
mod personal;
mod pin_signs;
mod refusal;
mod sealing;
mod seat_code;
mod signs;
mod strict_json;
#[cfg(test)]
pub(crate) mod tests;
mod transfer;

pub use backup_file::{BackupFile, BackupKind, open_backup, seal_backup};
pub use carry::{CARRY_FORMAT, CarriedStore, CarryFile, open_carry, seal_carry};
pub use class_id::class_id_of;
pub use class_key::{CLASS_KEY_FORMAT, ClassKeyFile, KeySeat, open_class_key, seal_class_key};
pub use class_pack::{Assignment, CLASS_PACK_FORMAT, ClassPack, PackConcept};
pub use fingerprint::fingerprint;
pub use hand_in::{HAND_IN_FORMAT, HandIn, MOST_COUNT, MOST_MISCONCEPTIONS};
pub use hand_in_file::{
    Checked, CheckedHandIn, HandInExpectations, OpenedHandIn, QuarantinedHandIn, open_hand_in,
    seal_hand_in,
};
pub use head::{FileHead, HEAD_BYTES};
pub use keys::{PublicKey, Recipient, SealingIdentity, SigningKey};
pub use limits::{
    BACKUP_CAPS, CARRY_CAPS, CLASS_KEY_CAPS, CLASS_PACK_CAPS, Caps, HAND_IN_CAPS, PERSONAL_CAPS,
    TRANSFER_CAPS,
};
pub use pack_file::{CheckedPack, OpenedPack, open_pack, sign_pack};
pub use personal::{PERSONAL_FORMAT, PersonalAssignments, open_personal, seal_personal};
pub use pin_signs::{PIN_SIGNS, PinSigns, parse_pin_signs, pin_signs_of};
pub use refusal::{Flag, Refusal, SeatCodeError};
pub use sealing::check_passphrase;
pub use seat_code::{
    ClassSigns, SEAT_CODE_SIGNS, draw_seat_token, make_seat_code, parse_seat_code,
};
pub use signs::{file_signs, folder_hand_in_name, folder_pack_name};
pub use transfer::{
    MOST_TRANSFER_DEVICES, PaperEntry, TRANSFER_FORMAT, Transfer, open_transfer, seal_transfer,
};
