//! Small groups: the room for them, who sits with whom, who is absent, and the groups that
//! the teacher kept.

use super::super::StoreError;
use super::super::columns::date_at;
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::{OptionalExtension, params};

/// The room for small groups.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct GroupRoomRow {
    /// Times at which groups meet, one after another.
    pub slots: usize,
    /// Groups at the same time.
    pub groups_at_once: usize,
    /// Fewest students of a group.
    pub size_least: usize,
    /// Most students of a group.
    pub size_most: usize,
    /// Whether each group gets a student who has the concept.
    pub with_partner: bool,
}

/// A small group that the teacher kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SmallGroupRow {
    /// The slot in which it meets, from 0.
    pub slot: usize,
    /// The concept it works on.
    pub concept: String,
    /// The seats of its students.
    pub seats: Vec<u32>,
    /// The seats of those among them who have the concept and explain it.
    pub partners: Vec<u32>,
}

/// Pairs of seats to keep apart, and pairs to keep together.
pub type SeatPairs = (Vec<(u32, u32)>, Vec<(u32, u32)>);

impl DeskStore {
    /// Returns the room for small groups, if the teacher entered it.
    pub fn group_room(&self, class: &str) -> Result<Option<GroupRoomRow>, StoreError> {
        Ok(self
            .connection
            .query_row(
                "SELECT slots, groups_at_once, size_least, size_most, with_partner FROM group_room WHERE class = ?1",
                [class],
                |row| {
                    Ok(GroupRoomRow {
                        slots: row.get(0)?,
                        groups_at_once: row.get(1)?,
                        size_least: row.get(2)?,
                        size_most: row.get(3)?,
                        with_partner: row.get(4)?,
                    })
                },
            )
            .optional()?)
    }

    /// Writes the room for small groups.
    pub fn put_group_room(&self, class: &str, room: &GroupRoomRow) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT INTO group_room (class, slots, groups_at_once, size_least, size_most, with_partner)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6)
             ON CONFLICT (class) DO UPDATE SET slots = ?2, groups_at_once = ?3, size_least = ?4,
               size_most = ?5, with_partner = ?6",
            params![
                class,
                room.slots,
                room.groups_at_once,
                room.size_least,
                room.size_most,
                room.with_partner
            ],
        )?;
        Ok(())
    }

    /// Returns the pairs of seats to keep apart and those to keep together.
    pub fn seat_pairs(&self, class: &str) -> Result<SeatPairs, StoreError> {
        let of = |kept: &str| {
            self.rows(
                "SELECT seat, other_seat FROM seat_pair WHERE class = ?1 AND kept = ?2
                 ORDER BY seat, other_seat",
                [class, kept],
                |row| Ok((row.get(0)?, row.get(1)?)),
            )
        };
        Ok((of("apart")?, of("together")?))
    }

    /// Replaces both lists of pairs.
    ///
    /// # Errors
    /// Fails if the class has no such seat.
    pub fn put_seat_pairs(
        &self,
        class: &str,
        apart: &[(u32, u32)],
        together: &[(u32, u32)],
    ) -> Result<(), StoreError> {
        self.connection
            .execute("DELETE FROM seat_pair WHERE class = ?1", [class])?;
        for (kept, pairs) in [("apart", apart), ("together", together)] {
            for (seat, other) in pairs {
                self.connection.execute(
                    "INSERT OR IGNORE INTO seat_pair (class, kept, seat, other_seat) VALUES (?1, ?2, ?3, ?4)",
                    params![class, kept, seat, other],
                )?;
            }
        }
        Ok(())
    }

    /// Returns the seats of the students who are absent on a date.
    pub fn absences(&self, class: &str, date: NaiveDate) -> Result<Vec<u32>, StoreError> {
        self.rows(
            "SELECT seat FROM absence WHERE class = ?1 AND school_date = ?2 ORDER BY seat",
            params![class, date.to_string()],
            |row| row.get(0),
        )
    }

    /// Replaces the seats of the students who are absent on a date.
    ///
    /// # Errors
    /// Fails if the class has no such seat.
    pub fn put_absences(
        &self,
        class: &str,
        date: NaiveDate,
        seats: &[u32],
    ) -> Result<(), StoreError> {
        self.connection.execute(
            "DELETE FROM absence WHERE class = ?1 AND school_date = ?2",
            params![class, date.to_string()],
        )?;
        for seat in seats {
            self.connection.execute(
                "INSERT OR IGNORE INTO absence (class, school_date, seat) VALUES (?1, ?2, ?3)",
                params![class, date.to_string(), seat],
            )?;
        }
        Ok(())
    }

    /// Returns the dates for which groups are kept, newest first.
    pub fn small_group_dates(&self, class: &str) -> Result<Vec<NaiveDate>, StoreError> {
        self.rows(
            "SELECT DISTINCT school_date FROM small_group WHERE class = ?1 ORDER BY school_date DESC",
            [class],
            |row| date_at(row, 0),
        )
    }

    /// Returns the groups kept for a date, in their order.
    pub fn small_groups(
        &self,
        class: &str,
        date: NaiveDate,
    ) -> Result<Vec<SmallGroupRow>, StoreError> {
        let date = date.to_string();
        let places: Vec<(usize, SmallGroupRow)> = self.rows(
            "SELECT place, slot, concept FROM small_group WHERE class = ?1 AND school_date = ?2
             ORDER BY place",
            params![class, date],
            |row| {
                Ok((
                    row.get(0)?,
                    SmallGroupRow {
                        slot: row.get(1)?,
                        concept: row.get(2)?,
                        seats: Vec::new(),
                        partners: Vec::new(),
                    },
                ))
            },
        )?;
        places
            .into_iter()
            .map(|(place, mut group)| {
                let seats: Vec<(u32, bool)> = self.rows(
                    "SELECT seat, is_partner FROM small_group_seat
                     WHERE class = ?1 AND school_date = ?2 AND place = ?3 ORDER BY seat",
                    params![class, date, place],
                    |row| Ok((row.get(0)?, row.get(1)?)),
                )?;
                group.seats = seats.iter().map(|(seat, _)| *seat).collect();
                let partners = seats.into_iter().filter(|(_, is_partner)| *is_partner);
                group.partners = partners.map(|(seat, _)| seat).collect();
                Ok(group)
            })
            .collect()
    }

    /// Replaces the groups of a date.
    ///
    /// # Errors
    /// Fails if the class has no such seat.
    pub fn put_small_groups(
        &self,
        class: &str,
        date: NaiveDate,
        groups: &[SmallGroupRow],
    ) -> Result<(), StoreError> {
        let date = date.to_string();
        self.connection.execute(
            "DELETE FROM small_group WHERE class = ?1 AND school_date = ?2",
            params![class, date],
        )?;
        for (place, group) in groups.iter().enumerate() {
            self.connection.execute(
                "INSERT INTO small_group (class, school_date, place, slot, concept)
                 VALUES (?1, ?2, ?3, ?4, ?5)",
                params![class, date, place, group.slot, group.concept],
            )?;
            for seat in &group.seats {
                self.connection.execute(
                    "INSERT OR IGNORE INTO small_group_seat (class, school_date, place, seat, is_partner)
                     VALUES (?1, ?2, ?3, ?4, ?5)",
                    params![class, date, place, seat, group.partners.contains(seat)],
                )?;
            }
        }
        Ok(())
    }
}
