//! Seats and the devices that hand in for them.

use super::super::StoreError;
use super::super::columns::date_at;
use super::cells::{SEAT_NAME, SEAT_TOKEN};
use super::{DeskStore, DeviceState};
use chrono::NaiveDate;
use rusqlite::types::ValueRef;
use rusqlite::{OptionalExtension, Row, params};
use std::fmt::Display;
use surefoot_record::Thing;

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
    /// Its number at this desk.
    pub id: i64,
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
        let key = self.key()?;
        self.rows(
            "SELECT number, token, name FROM seat WHERE class = ?1 ORDER BY number",
            [class],
            |row| {
                let number: u32 = row.get(0)?;
                let named = row.get_ref(2)? != ValueRef::Null;
                Ok(SeatRow {
                    number,
                    token: key.text_at(row, 1, &SEAT_TOKEN, &[&class, &number])?,
                    name: named
                        .then(|| key.text_at(row, 2, &SEAT_NAME, &[&class, &number]))
                        .transpose()?,
                })
            },
        )
    }

    /// Returns the numbers of the seats of a class, also while the desk is locked.
    pub fn seat_numbers(&self, class: &str) -> Result<Vec<u32>, StoreError> {
        self.rows(
            "SELECT number FROM seat WHERE class = ?1 ORDER BY number",
            [class],
            |row| row.get(0),
        )
    }

    /// Adds a seat.
    pub fn add_seat(&self, class: &str, seat: &SeatRow) -> Result<(), StoreError> {
        let place: [&dyn Display; 2] = [&class, &seat.number];
        let token = (self.key()?).seal(&SEAT_TOKEN, &place, seat.token.as_bytes())?;
        let name = self.sealed_name(class, seat.number, seat.name.as_deref())?;
        self.connection
            .prepare_cached(
                "INSERT INTO seat (class, number, token, name) VALUES (?1, ?2, ?3, ?4)",
            )?
            .execute(params![class, seat.number, token, name])?;
        Ok(())
    }

    fn sealed_name(
        &self,
        class: &str,
        number: u32,
        name: Option<&str>,
    ) -> Result<Option<Vec<u8>>, StoreError> {
        let key = self.key()?;
        name.map(|name| key.seal(&SEAT_NAME, &[&class, &number], name.as_bytes()))
            .transpose()
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
            params![class, number, self.sealed_name(class, number, name)?],
        )?;
        if changed == 0 {
            return Err(StoreError::Missing(Thing::Seat));
        }
        Ok(())
    }

    /// Returns the devices of a class by seat, each seat's in the order they came.
    pub fn devices(&self, class: &str) -> Result<Vec<DeviceRow>, StoreError> {
        self.rows(
            "SELECT id, seat, device, signing_key, recipient, state, first_seen_on FROM device
             WHERE class = ?1 ORDER BY seat, id",
            [class],
            device_at,
        )
    }

    /// Returns the devices of one seat in the order they came.
    pub fn devices_of(&self, class: &str, seat: u32) -> Result<Vec<DeviceRow>, StoreError> {
        self.rows(
            "SELECT id, seat, device, signing_key, recipient, state, first_seen_on FROM device
             WHERE class = ?1 AND seat = ?2 ORDER BY id",
            params![class, seat],
            device_at,
        )
    }

    /// Adds a device, or updates recipient and state of the one with this device id and signing
    /// key. Returns its number; that of `device` is not used.
    pub fn put_device(&self, class: &str, device: &DeviceRow) -> Result<i64, StoreError> {
        Ok(self
            .connection
            .prepare_cached(
                "INSERT INTO device (class, seat, device, signing_key, recipient, state, first_seen_on)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
                 ON CONFLICT (class, seat, device, signing_key) DO UPDATE SET recipient = ?5, state = ?6
                 RETURNING id",
            )?
            .query_row(
                params![
                    class,
                    device.seat,
                    device.device,
                    device.signing_key,
                    device.recipient,
                    device.state.word(),
                    device.first_seen_on.to_string()
                ],
                |row| row.get(0),
            )?)
    }

    /// Removes a device with its hand-ins and what was derived from them.
    pub fn remove_device(&self, device: i64) -> Result<(), StoreError> {
        self.connection
            .execute("DELETE FROM device WHERE id = ?1", [device])?;
        Ok(())
    }

    /// Returns whether a seat ever had a device that was accepted unasked.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is no such seat.
    pub fn had_device(&self, class: &str, seat: u32) -> Result<bool, StoreError> {
        self.connection
            .prepare_cached(
                "SELECT first_device_in IS NOT NULL FROM seat WHERE class = ?1 AND number = ?2",
            )?
            .query_row(params![class, seat], |row| row.get(0))
            .optional()?
            .ok_or(StoreError::Missing(Thing::Seat))
    }

    /// Notes the import that brought a seat's first device.
    pub fn note_first_device(&self, class: &str, seat: u32, import: i64) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE seat SET first_device_in = ?3 WHERE class = ?1 AND number = ?2",
            params![class, seat, import],
        )?;
        Ok(())
    }
}

fn device_at(row: &Row<'_>) -> rusqlite::Result<DeviceRow> {
    Ok(DeviceRow {
        id: row.get(0)?,
        seat: row.get(1)?,
        device: row.get(2)?,
        signing_key: row.get(3)?,
        recipient: row.get(4)?,
        state: DeviceState::at(row, 5)?,
        first_seen_on: date_at(row, 6)?,
    })
}
