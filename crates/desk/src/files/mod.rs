//! Files that come and go: hand-ins, class packs, class keys.

mod class_key;
pub(crate) mod derive;
mod import;
pub(crate) mod pack;

pub use class_key::{export_class, import_class, read_class_key};
pub use import::{Import, Opener, decide_device, imports, undo_import};
pub use pack::{MadePack, join_slips, make_class_pack};
