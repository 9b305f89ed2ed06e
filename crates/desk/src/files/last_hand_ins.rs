//! When each seat's last hand-in came, and which class pack its devices have.

use crate::class::OpenClass;
use crate::error::DeskError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_store::DeskStore;
use ts_rs::TS;

/// The last hand-in of an accepted device of a seat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatHandIn {
    /// The seat.
    pub seat: u32,
    /// The device's number at this desk.
    #[ts(type = "number")]
    pub device: i64,
    /// The date on which its last new hand-in came.
    pub came_on: NaiveDate,
    /// The school date of its newest hand-in, on the device's clock.
    pub made_on: NaiveDate,
    /// The version of the class pack that the device had. The class's own is
    /// [`OpenClass::row`]'s `pack_version`.
    pub pack_version: u32,
}

/// Returns the last hand-in of each accepted device, in the order of seats and devices. A seat
/// without an accepted device has no line.
pub fn last_hand_ins(desk: &DeskStore, class: &OpenClass) -> Result<Vec<SeatHandIn>, DeskError> {
    let rows = desk.last_hand_ins(&class.row.id)?;
    Ok(rows
        .into_iter()
        .map(|row| SeatHandIn {
            seat: row.seat,
            device: row.device,
            came_on: row.came_on,
            made_on: row.made_on,
            pack_version: row.pack_version,
        })
        .collect())
}
