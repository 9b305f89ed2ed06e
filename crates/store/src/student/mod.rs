//! A student's store: one SQLite file a student.

mod events;
mod exercise;
mod goals;
mod identity;
mod pin;

pub use events::PracticeAnswer;
pub use exercise::OpenRow;
pub use identity::{HandInRow, Student};
pub use pin::PinRow;

use super::migrate::Migration;
use super::{Durability, StoreConnection, StoreError};
use std::path::Path;

/// "SFst": a Surefoot student's store.
const KIND: i32 = 0x5346_7374;

pub(super) const MIGRATIONS: &[Migration] = &[Migration {
    kind: KIND,
    sql: include_str!("schema_1.sql"),
}];

/// An opened student's store.
pub struct StudentStore {
    pub(super) connection: StoreConnection,
}

impl StudentStore {
    /// Opens the store at `path`, made if missing, brought up to this
    /// program's schema.
    ///
    /// # Errors
    /// [`StoreError::Newer`] for a newer program's store,
    /// [`StoreError::OtherKind`] for another file, else SQLite's.
    pub fn open(path: &Path, durability: Durability) -> Result<Self, StoreError> {
        Ok(Self {
            connection: super::open(path, durability, MIGRATIONS, super::Look::Through)?,
        })
    }

    /// Opens a copy only to look at it: nothing of it is changed, not even its schema.
    ///
    /// # Errors
    /// As [`StudentStore::check_file`].
    pub fn open_to_look(path: &Path) -> Result<Self, StoreError> {
        Self::check_file(path)?;
        Ok(Self {
            connection: StoreConnection(super::copy::read_only(path)?),
        })
    }

    /// Runs several writes as one: all of them are on disk afterwards, or none.
    ///
    /// # Errors
    /// The first error of `work`, or SQLite's at the commit.
    pub fn together<T, E: From<StoreError>>(
        &self,
        work: impl FnOnce() -> Result<T, E>,
    ) -> Result<T, E> {
        super::together(&self.connection, work)
    }

    /// Copies the store as it stands into a new file.
    ///
    /// # Errors
    /// SQLite's; then the file at `into` is not a copy.
    pub fn copy_into(&self, into: &Path) -> Result<(), StoreError> {
        super::copy::copy_into(&self.connection, into)
    }

    /// Checks that the file at `path` is a whole student's store that this program can
    /// open, without changing it.
    ///
    /// # Errors
    /// [`StoreError::Damaged`], [`StoreError::OtherKind`], [`StoreError::Newer`], or SQLite's.
    pub fn check_file(path: &Path) -> Result<(), StoreError> {
        super::copy::check_file(path, MIGRATIONS)
    }

    /// Brings everything that is in the log into the store's file.
    ///
    /// # Errors
    /// [`StoreError::Busy`] while another program uses the store, or SQLite's.
    pub fn empty_log(&self) -> Result<(), StoreError> {
        super::copy::empty_log(&self.connection)
    }
}
