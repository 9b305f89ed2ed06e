//! The two SQLite stores: a student's, and the teacher's desk.
//!
//! Only this crate knows SQLite. [`Store`] opens, checks, migrates and copies a store of
//! either kind; [`student`] and [`desk`] read and write their tables. A write is on disk
//! before it is acknowledged (write-ahead log, `synchronous = FULL`).
//!
//! This crate must not know use-cases or screens.

#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod check;
mod columns;
mod copy;
pub mod desk;
mod error;
mod migrate;
mod store;
pub mod student;
#[cfg(test)]
#[expect(clippy::disallowed_methods, reason = "compares files that it made")]
mod tests;

pub use check::nobody_has_open;
pub use copy::copy_file;
pub use desk::DeskStore;
pub use error::StoreError;
pub use store::{Durability, Store};
pub use student::StudentStore;
