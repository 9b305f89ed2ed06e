//! The teacher's desk: one SQLite file with all classes.

mod assignments;
mod changes;
mod classes;
mod groups;
mod held;
mod imports;
mod own;
mod releases;
mod removal;
mod report_writer;
mod reports;
mod seats;
mod teaching;

pub use assignments::AssignmentRow;
pub use changes::SeatHoldings;
pub use classes::ClassRow;
pub use groups::{GroupRoomRow, SeatPairs, SmallGroupRow};
pub use held::{OwnRows, RemovedRows};
pub use imports::{DeviceState, HandInKept, ImportFileRow, ImportRow};
pub use own::{OwnConceptRow, OwnExerciseRow, OwnImportRow, OwnKindOfImport};
pub use releases::ReleaseRow;
pub use report_writer::ReportWriter;
pub use reports::{CheckInSource, MisconceptionReport, PracticeReport, ReportRow};
pub use seats::{DeviceRow, SeatRow};
pub use teaching::{ObservationRow, PaperCheckIn};

use super::migrate::Migration;
use super::{Durability, StoreConnection, StoreError};
use rusqlite::Row;
use std::path::Path;

/// "SFdk": a Surefoot desk.
const KIND: i32 = 0x5346_646b;

pub(super) const MIGRATIONS: &[Migration] = &[Migration {
    kind: KIND,
    sql: include_str!("schema_1.sql"),
}];

/// An opened desk.
pub struct DeskStore {
    pub(super) connection: StoreConnection,
}

impl DeskStore {
    /// Opens the desk at `path`, made if missing, brought up to this program's schema.
    ///
    /// # Errors
    /// [`StoreError::Newer`] for a newer program's desk,
    /// [`StoreError::OtherKind`] for another file, else SQLite's.
    pub fn open(path: &Path, durability: Durability) -> Result<Self, StoreError> {
        Ok(Self {
            connection: super::open(path, durability, MIGRATIONS, super::Look::Through)?,
        })
    }

    /// [`DeskStore::open`] of a desk that was looked through just before, or that
    /// is only read: its pages are not looked through again.
    ///
    /// # Errors
    /// As [`DeskStore::open`].
    pub fn open_again(path: &Path, durability: Durability) -> Result<Self, StoreError> {
        Ok(Self {
            connection: super::open(path, durability, MIGRATIONS, super::Look::Past)?,
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

    /// Checks that the file at `path` is a whole desk that this program can
    /// open, without changing it.
    ///
    /// # Errors
    /// [`StoreError::Damaged`], [`StoreError::OtherKind`], [`StoreError::Newer`], or SQLite's.
    pub fn check_file(path: &Path) -> Result<(), StoreError> {
        super::copy::check_file(path, MIGRATIONS)
    }

    /// Writes the desk into the empty file `into`, without anything of what was deleted.
    ///
    /// # Errors
    /// SQLite's; then the file at `into` is not whole.
    pub fn write_anew(&self, into: &Path) -> Result<(), StoreError> {
        super::copy::write_anew(&self.connection, into)
    }

    /// Brings everything that is in the log into the store's file.
    ///
    /// # Errors
    /// [`StoreError::Busy`] while another program uses the store, or SQLite's.
    pub fn empty_log(&self) -> Result<(), StoreError> {
        super::copy::empty_log(&self.connection)
    }

    fn rows<T>(
        &self,
        sql: &str,
        args: impl rusqlite::Params,
        read: impl FnMut(&Row<'_>) -> rusqlite::Result<T>,
    ) -> Result<Vec<T>, StoreError> {
        let mut query = self.connection.prepare_cached(sql)?;
        let rows = query.query_map(args, read)?;
        Ok(rows.collect::<Result<_, _>>()?)
    }
}
