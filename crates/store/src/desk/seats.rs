//! Seats and the devices that hand in for them.

use super::super::StoreError;
use super::super::columns::date_at;
use super::{DeskStore, DeviceState};
use chrono::NaiveDate;
use rusqlite::{Row, params};

/// A seat.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SeatRow {
    /// Its number, from 1.
    pub number: u32,
    /// The random part of its code.
    pub token: String,
    /// The student's name, or what the teacher typed for it.
    pub name: Option<String>,
}

/// A device that handed in for a seat.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DeviceRow {
    /// The seat.
    pub seat: u32,
    /// The device's id.
    pub device: String,
    /// Its Ed25519 key, base64.
    pub signing_key: String,
    /// Its age X25519 recipient.
    pub recipient: String,
    /// Whether its hand-ins count.
    pub state: DeviceState,
    /// The date of the import that brought its first hand-in.
    pub first_seen_on: NaiveDate,
}

impl DeskStore {
    /// Returns the seats of a class by number.
    pub fn seats(&self, class: &str) -> Result<Vec<SeatRow>, StoreError> {
        self.rows(
            "SELECT number, token, name FROM seat WHERE class = ?1 ORDER BY number",
            [class],
            |row| {
                Ok(SeatRow {
                    number: row.get(0)?,
                    token: row.get(1)?,
                    name: row.get(2)?,
                })
            },
        )
    }

    /// Adds a seat.
    pub fn add_seat(&self, class: &str, seat: &SeatRow) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO seat (class, number, token, name) VALUES (?1, ?2, ?3, ?4)",
            )?
            .execute(params![class, seat.number, seat.token, seat.name])?;
        Ok(())
    }

    /// Writes or removes the name of a seat.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is no such seat.
    pub fn name_seat(
        &self,
        class: &str,
        number: u32,
        name: Option<&str>,
    ) -> Result<(), StoreError> {
        let changed = self.connection.execute(
            "UPDATE seat SET name = ?3 WHERE class = ?1 AND number = ?2",
            params![class, number, name],
        )?;
        if changed == 0 {
            return Err(StoreError::Missing("seat"));
        }
        Ok(())
    }

    /// Returns the devices of a class by seat, each seat's in the order they came.
    pub fn devices(&self, class: &str) -> Result<Vec<DeviceRow>, StoreError> {
        self.rows(
            "SELECT seat, device, signing_key, recipient, state, first_seen_on FROM device
             WHERE class = ?1 ORDER BY seat, first_seen_on, rowid",
            [class],
            device_at,
        )
    }

    /// Returns the devices of one seat, in no fixed order.
    pub fn devices_of(&self, class: &str, seat: u32) -> Result<Vec<DeviceRow>, StoreError> {
        self.rows(
            "SELECT seat, device, signing_key, recipient, state, first_seen_on FROM device
             WHERE class = ?1 AND seat = ?2",
            params![class, seat],
            device_at,
        )
    }

    /// Adds a device, or updates its recipient and state.
    pub fn put_device(&self, class: &str, device: &DeviceRow) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO device (class, seat, device, signing_key, recipient, state, first_seen_on)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
                 ON CONFLICT (class, seat, device, signing_key) DO UPDATE SET recipient = ?5, state = ?6",
            )?
            .execute(params![
                class,
                device.seat,
                device.device,
                device.signing_key,
                device.recipient,
                device.state.word(),
                device.first_seen_on.to_string()
            ])?;
        Ok(())
    }
}

fn device_at(row: &Row<'_>) -> rusqlite::Result<DeviceRow> {
    Ok(DeviceRow {
        seat: row.get(0)?,
        device: row.get(1)?,
        signing_key: row.get(2)?,
        recipient: row.get(3)?,
        state: DeviceState::at(row, 4)?,
        first_seen_on: date_at(row, 5)?,
    })
}
