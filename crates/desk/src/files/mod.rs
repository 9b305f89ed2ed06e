//! Imports hand-ins, decides on devices, and makes class packs and class keys.

mod bounds;
mod class_key;
pub(crate) mod derive;
mod import;
mod last_hand_ins;
mod pack;
mod views;

pub use bounds::{MOST_ACCEPTED_DEVICES, MOST_QUARANTINED_DEVICES};
pub use class_key::{export_class, import_class, read_class_key};
pub use import::{Import, decide_device, discard_device, import_lines, imports, undo_import};
pub use last_hand_ins::{SeatHandIn, last_hand_ins};
pub use pack::{ClassPackFile, file_stem, make_class_pack, make_class_pack_above, pack_stamp};
pub use views::*;
