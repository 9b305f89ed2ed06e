//! Reading what a teacher picks: hand-ins, class lists and question banks, also from a zip.
//!
//! Nothing is unpacked to the disk, and every size is checked first.

pub mod bank_files;
pub mod hand_in_files;
pub mod roster_files;
pub mod zip_files;
