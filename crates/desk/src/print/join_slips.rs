//! Join slips.

use crate::class::{OpenClass, seat_code};
use crate::error::{DeskError, faulty};
use serde::{Deserialize, Serialize};
use surefoot_record::ClassId;
use ts_rs::TS;

/// A join slip.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct JoinSlip {
    /// The class.
    pub class_title: String,
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// The seat code.
    pub code: String,
}

/// The join slips of a class, seat by seat.
pub fn join_slips(class: &OpenClass) -> Result<Vec<JoinSlip>, DeskError> {
    let id = ClassId::new(class.row.id.clone()).map_err(faulty)?;
    class
        .seats
        .iter()
        .map(|seat| {
            Ok(JoinSlip {
                class_title: class.row.title.clone(),
                seat: seat.number,
                name: seat.name.clone(),
                code: seat_code(&id, seat)?,
            })
        })
        .collect()
}
