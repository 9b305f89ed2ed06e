//! Gives a device with everything that it brought to the right seat.

use super::bounds::{MOST_ACCEPTED_DEVICES, MOST_ENTRIES};
use super::derive::{content_of, derive};
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule, Thing};
use surefoot_exchange::OpenedHandIn;
use surefoot_store::DeskStore;
use surefoot_store::desk::{DeviceState, MovedDevice, SeatRow};

/// Returns the row of a seat of the class.
pub(super) fn check_seat(class: &OpenClass, seat: u32) -> Result<&SeatRow, DeskError> {
    let found = class.seats.iter().find(|row| row.number == seat);
    found.ok_or(DeskError::NotFound(Thing::Seat))
}

/// Moves a device with its hand-ins to another seat of its class, for a student who joined with
/// another's slip. It counts there if `accept` is true, and is as [`super::decide_device`] says
/// otherwise. What it hands in later counts there too, also while it names the earlier seat.
///
/// Moving it back, with the earlier decision, undoes this.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if the device hands in for that seat already, or the seat has as
/// many accepted devices or entries as it may have.
pub fn move_device(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    device: i64,
    to: u32,
    accept: Option<bool>,
) -> Result<(), DeskError> {
    let id = class.row.id.as_str();
    check_seat(class, to)?;
    desk.transaction(|| {
        let row = (desk.devices_of(id, seat)?.into_iter())
            .find(|row| row.id == device)
            .ok_or(DeskError::NotFound(Thing::Device))?;
        let there = desk.devices_of(id, to)?;
        let is_same = |other: &_| same_device(other, &row);
        if seat == to || there.iter().any(is_same) {
            return Err(DeskError::invalid(Field::Device, Rule::AlreadyHere));
        }
        let others = (there.iter())
            .filter(|row| row.state == DeviceState::Accepted)
            .count();
        desk.move_device(id, device, to, DeviceState::of_decision(accept))?;
        if row.state == DeviceState::Accepted {
            desk.forget_first_device(id, seat, device)?;
        }
        if accept == Some(true) {
            desk.note_first_of_moved(id, to)?;
        }
        derive(desk, id, seat)?;
        let entries = derive(desk, id, to)?;
        if accept == Some(true) && (others >= MOST_ACCEPTED_DEVICES || entries > MOST_ENTRIES) {
            return Err(DeskError::invalid(Field::Device, Rule::TooMany));
        }
        Ok(())
    })
}

fn same_device(
    one: &surefoot_store::desk::DeviceRow,
    other: &surefoot_store::desk::DeviceRow,
) -> bool {
    one.device == other.device && one.signing_key == other.signing_key
}

/// Returns where a hand-in counts whose device the teacher moved: a hand-in by the same slip as one
/// that moved along. `None` for all others, also for a moved device that names another slip now.
pub(super) fn moved_to(
    desk: &DeskStore,
    opened: &OpenedHandIn,
) -> Result<Option<MovedDevice>, DeskError> {
    let found = desk.moved_device(opened.device().as_str(), opened.device_key().as_str())?;
    let Some(moved) = found else {
        return Ok(None);
    };
    for kept in desk.hand_ins(&moved.class, moved.seat)?.iter().rev() {
        if kept.device == moved.id {
            let content = content_of(&kept.content)?;
            if content.class_id == *opened.class_id() && content.seat == *opened.seat() {
                return Ok(Some(moved));
            }
        }
    }
    Ok(None)
}
