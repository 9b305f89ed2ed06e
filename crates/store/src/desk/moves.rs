//! Moves a student's work to another seat of the same desk.

use super::super::StoreError;
use super::{DeskStore, DeviceState, RemovedRows};
use rusqlite::params;
use surefoot_record::Thing;

/// The tables whose rows are a student's work and go along with the student. The lines of import
/// reports go along too, because a later seat may get the number. What is derived belongs to a device.
const WORK: [&str; 5] = [
    "device",
    "hand_in",
    "paper_check_in",
    "observation",
    "import_file",
];

/// A device that the teacher moved, where it is now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MovedDevice {
    /// Its number at this desk.
    pub id: i64,
    /// The class.
    pub class: String,
    /// The seat.
    pub seat: u32,
}

impl DeskStore {
    /// Moves everything that a student did to another seat, which has none. The seats themselves
    /// stay, and so do pairs, groups, absences and assignments.
    pub fn move_work(&self, from: (&str, u32), to: (&str, u32)) -> Result<(), StoreError> {
        // A device and its hand-ins refer to one another's seat only by the device's number.
        for table in WORK {
            self.connection.execute(
                &format!("UPDATE {table} SET class = ?3, seat = ?4 WHERE class = ?1 AND seat = ?2"),
                params![from.0, from.1, to.0, to.1],
            )?;
        }
        // Their devices had the pack of the other class.
        self.connection.execute(
            "UPDATE hand_in SET pack_version = 0 WHERE class = ?1 AND seat = ?2",
            params![to.0, to.1],
        )?;
        self.connection.execute(
            "UPDATE device SET moved = 1 WHERE class = ?1 AND seat = ?2",
            params![to.0, to.1],
        )?;
        self.connection.execute(
            "UPDATE seat SET first_device_in = (SELECT first_device_in FROM seat
               WHERE class = ?1 AND number = ?2) WHERE class = ?3 AND number = ?4",
            params![from.0, from.1, to.0, to.1],
        )?;
        Ok(())
    }

    /// Removes a seat whose work was moved to `to`, and returns its other rows. Restoring them moves
    /// the work back and removes the seat `to`.
    pub fn leave_seat(
        &self,
        class: &str,
        seat: u32,
        to: (&str, u32),
    ) -> Result<RemovedRows, StoreError> {
        let mut rows = self.rows_to_remove(class, Some(seat))?;
        rows.note_move(seat, to);
        Ok(rows)
    }

    /// Moves a device with its hand-ins to another seat of its class, in a state. What was derived
    /// from them must be derived anew.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is no such device.
    pub fn move_device(
        &self,
        class: &str,
        device: i64,
        to: u32,
        state: DeviceState,
    ) -> Result<(), StoreError> {
        let moved = self.connection.execute(
            "UPDATE device SET seat = ?3, state = ?4, moved = 1 WHERE class = ?1 AND id = ?2",
            params![class, device, to, state.word()],
        )?;
        if moved == 0 {
            return Err(StoreError::Missing(Thing::Device));
        }
        self.connection.execute(
            "UPDATE hand_in SET seat = ?2 WHERE device = ?1",
            params![device, to],
        )?;
        Ok(())
    }

    /// Whether a device with this signing key is accepted at a seat of any class.
    pub fn is_accepted(&self, device: &str, signing_key: &str) -> Result<bool, StoreError> {
        Ok(self.connection.query_row(
            "SELECT EXISTS (SELECT 1 FROM device
               WHERE device = ?1 AND signing_key = ?2 AND state = ?3)",
            [device, signing_key, DeviceState::Accepted.word()],
            |row| row.get(0),
        )?)
    }

    /// Notes the import that brought the first hand-in of a seat, after a device came.
    pub fn note_first_of_moved(&self, class: &str, seat: u32) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE seat SET first_device_in = coalesce(first_device_in,
               (SELECT min(import) FROM hand_in WHERE class = ?1 AND seat = ?2))
             WHERE class = ?1 AND number = ?2",
            params![class, seat],
        )?;
        Ok(())
    }

    /// Makes a seat as before its first device, if that device left and no other is there. `device`
    /// is the one that left.
    pub fn forget_first_device(
        &self,
        class: &str,
        seat: u32,
        device: i64,
    ) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE seat SET first_device_in = NULL WHERE class = ?1 AND number = ?2
               AND first_device_in IN (SELECT import FROM hand_in WHERE device = ?3)
               AND NOT EXISTS (SELECT 1 FROM device WHERE class = ?1 AND seat = ?2)",
            params![class, seat, device],
        )?;
        Ok(())
    }

    /// Returns where a device is that the teacher moved; `None` if it was not moved.
    pub fn moved_device(
        &self,
        device: &str,
        signing_key: &str,
    ) -> Result<Option<MovedDevice>, StoreError> {
        let found = self.rows(
            "SELECT id, class, seat FROM device WHERE device = ?1 AND signing_key = ?2 AND moved = 1
             ORDER BY id DESC LIMIT 1",
            [device, signing_key],
            |row| {
                Ok(MovedDevice {
                    id: row.get(0)?,
                    class: row.get(1)?,
                    seat: row.get(2)?,
                })
            },
        )?;
        Ok(found.into_iter().next())
    }
}
