//! Join slips.

use crate::class::{OpenClass, class_signs, seat_code};
use crate::error::{DeskError, faulty};
use serde::{Deserialize, Serialize};
use surefoot_exchange::{SigningKey, pin_signs_of};
use surefoot_record::{ClassId, SeatToken};
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
    /// The PIN signs in two groups.
    pub pin_signs: String,
}

/// The join slips of a class, seat by seat.
pub fn join_slips(class: &OpenClass) -> Result<Vec<JoinSlip>, DeskError> {
    let id = ClassId::new(class.row.id.clone()).map_err(faulty)?;
    let teacher = SigningKey::from_seed(&class.row.signing_seed);
    let signs = class_signs(class)?;
    class
        .seats
        .iter()
        .map(|seat| {
            let token = SeatToken::new(seat.token.clone()).map_err(faulty)?;
            Ok(JoinSlip {
                class_title: class.row.title.clone(),
                seat: seat.number,
                name: seat.name.clone(),
                code: seat_code(&signs, seat)?,
                pin_signs: pin_signs_of(&teacher, &id, &token).in_groups(),
            })
        })
        .collect()
}
