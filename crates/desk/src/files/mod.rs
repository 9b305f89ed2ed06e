//! Imports hand-ins, decides on devices, and makes class packs and class keys.

mod bounds;
mod class_key;
pub(crate) mod derive;
mod import;
mod moves;
mod pack;
mod transfer;
mod views;
mod who_has_not;

pub use bounds::{MOST_ACCEPTED_DEVICES, MOST_QUARANTINED_DEVICES};
pub use class_key::{export_class, import_class, read_class_key};
pub use import::{
    Import, decide_device, discard_device, import_lines, imports, join_refused, undo_import,
};
pub use moves::move_device;
pub use pack::{ClassPackFile, file_stem, make_class_pack, make_class_pack_above, pack_stamp};
pub use transfer::{make_transfer, take_transfer, transfer_holdings};
pub use views::*;
pub use who_has_not::{MOST_LATE_SCHOOL_DAYS, USUAL_LATE_SCHOOL_DAYS, who_has_not};
