//! The teacher's desk: one SQLite file with all classes.

mod assignments;
mod cells;
mod changes;
mod classes;
mod groups;
mod imports;
mod kept_key;
mod lock;
#[cfg(test)]
#[expect(clippy::disallowed_methods, reason = "reads files that it made")]
mod lock_tests;
mod moves;
mod own;
mod releases;
mod removal;
mod removed_rows;
mod report_writer;
mod reports;
mod seats;
mod taught_again;
mod teaching;
mod warm_up;

pub use assignments::AssignmentRow;
pub use cells::DataKey;
pub use changes::SeatHoldings;
pub use classes::{ClassRow, PacksMade};
pub use groups::{GroupRoomRow, SeatPairs, SmallGroupRow};
pub use imports::{DeviceState, HandInKept, ImportFileRow, ImportRow, LineOfFile, NewestHandIn};
pub use kept_key::{KeptKey, LockRow};
pub use lock::{KeyFacts, key_facts};
pub use moves::MovedDevice;
pub use own::{OwnConceptRow, OwnExerciseRow, OwnImportRow, OwnKindOfImport};
pub use releases::ReleasedRating;
pub use removed_rows::{OwnRows, RemovedRows};
pub use report_writer::ReportWriter;
pub use reports::{MisconceptionReport, PracticeReport, ReportRow};
pub use seats::{DeviceRow, SeatRow};
pub use taught_again::{CameFrom, TaughtAgainRow};
pub use teaching::{ObservationRow, PaperCheckIn};
pub use warm_up::WarmUpRow;

use crate::check::StoreKind;
use crate::error::StoreError;
use crate::store::Store;
use rusqlite::{Connection, Row};
use std::cell::OnceCell;

/// The kind of the teacher's store.
pub enum DeskKind {}

impl StoreKind for DeskKind {
    /// "SFdk": a Surefoot desk.
    const ID: i32 = 0x5346_646b;
    const MIGRATIONS: &'static [&'static str] = &[include_str!("schema_1.sql")];

    /// The data key, once it is known.
    type State = OnceCell<DataKey>;

    fn fill(new: &Connection) -> Result<(), StoreError> {
        kept_key::first_key(new)
    }
}

/// The teacher's opened store.
pub type DeskStore = Store<DeskKind>;

impl DeskStore {
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
