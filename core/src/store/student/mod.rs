//! A student's store: one SQLite file a student.

mod events;
mod exercise;
mod identity;

pub use events::{CheckInEvent, PracticeAnswer};
pub use exercise::OpenRow;
pub use identity::{HandInRow, Student};

use super::migrate::Migration;
use super::{Durability, StoreError};
use rusqlite::Connection;
use std::path::Path;

/// "SFst": a Surefoot student's store.
const KIND: i32 = 0x5346_7374;

const MIGRATIONS: &[Migration] = &[
    Migration {
        kind: KIND,
        sql: include_str!("schema_1.sql"),
    },
    Migration {
        kind: KIND,
        sql: include_str!("schema_2.sql"),
    },
];

/// An opened student's store.
pub struct StudentStore {
    connection: Connection,
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
            connection: super::open(path, durability, MIGRATIONS)?,
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
}
