//! The teacher's desk: one SQLite file with all classes.

mod assignments;
mod changes;
mod classes;
mod groups;
mod imports;
mod own;
mod releases;
mod removal;
mod removed_rows;
mod report_writer;
mod reports;
mod seats;
mod teaching;

pub use assignments::AssignmentRow;
pub use changes::SeatHoldings;
pub use classes::ClassRow;
pub use groups::{GroupRoomRow, SeatPairs, SmallGroupRow};
pub use imports::{DeviceState, HandInKept, ImportFileRow, ImportRow};
pub use own::{OwnConceptRow, OwnExerciseRow, OwnImportRow, OwnKindOfImport};
pub use releases::ReleasedRating;
pub use removed_rows::{OwnRows, RemovedRows};
pub use report_writer::ReportWriter;
pub use reports::{MisconceptionReport, PracticeReport, ReportRow};
pub use seats::{DeviceRow, SeatRow};
pub use teaching::{ObservationRow, PaperCheckIn};

use crate::check::StoreKind;
use crate::error::StoreError;
use crate::store::Store;
use rusqlite::Row;

/// The kind of the teacher's store.
pub enum DeskKind {}

impl StoreKind for DeskKind {
    /// "SFdk": a Surefoot desk.
    const ID: i32 = 0x5346_646b;
    const MIGRATIONS: &'static [&'static str] = &[include_str!("schema_1.sql")];
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
