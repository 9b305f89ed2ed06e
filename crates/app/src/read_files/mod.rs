//! Reads the files that a teacher picks: hand-ins, rosters and question banks, also from a zip.
//!
//! Unpacks nothing to the disk, and checks every size first.

pub mod bank_files;
pub mod hand_in_files;
pub mod roster_files;
pub mod zip_files;
