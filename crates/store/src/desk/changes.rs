//! Changes to a class, and the removal of a seat or a class.

use super::super::StoreError;
use super::DeskStore;
use super::cells::FILE_NAME;
use super::reports::OF_SEAT;
use rusqlite::params;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_record::Thing;

/// How much the desk holds of a seat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SeatHoldings {
    /// Hand-ins.
    pub hand_ins: u32,
    /// Check-ins, from devices or from paper.
    pub reports: u32,
    /// Practice answers.
    pub answers: u32,
    /// Observations.
    pub observations: u32,
}

impl DeskStore {
    /// Renames a class.
    pub fn rename_class(&self, class: &str, title: &str) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE class SET title = ?2 WHERE id = ?1",
            params![class, title],
        )?;
        Ok(())
    }

    /// Replaces first day, last day, weekdays and closures of a class.
    pub fn put_year(&self, class: &str, year: &SchoolYear) -> Result<(), StoreError> {
        let weekdays: String = year.weekdays.iter().map(u8::to_string).collect();
        self.connection.execute(
            "UPDATE class SET first_day = ?2, last_day = ?3, weekdays = ?4 WHERE id = ?1",
            params![
                class,
                year.first_day.to_string(),
                year.last_day.to_string(),
                weekdays
            ],
        )?;
        self.put_closures(class, year.closures.iter().copied())
    }

    /// Returns how much the desk holds of a seat.
    pub fn seat_holdings(&self, class: &str, seat: u32) -> Result<SeatHoldings, StoreError> {
        Ok(self.connection.query_row(
            &format!(
                "SELECT (SELECT count(*) FROM hand_in WHERE class = ?1 AND seat = ?2),
                   (SELECT count(*) FROM check_in WHERE {OF_SEAT})
                     + (SELECT count(*) FROM paper_check_in WHERE class = ?1 AND seat = ?2),
                   (SELECT min(coalesce(sum(alone + with_help + wrong), 0), 4294967295)
                     FROM practice_count WHERE {OF_SEAT}),
                   (SELECT count(*) FROM observation WHERE class = ?1 AND seat = ?2)"
            ),
            params![class, seat],
            |row| {
                Ok(SeatHoldings {
                    hand_ins: row.get(0)?,
                    reports: row.get(1)?,
                    answers: row.get(2)?,
                    observations: row.get(3)?,
                })
            },
        )?)
    }

    /// Gives the report lines of files without a seat, whose names `shows` the seat, to that
    /// seat, so that they are removed and restored with it.
    pub fn claim_import_files(
        &self,
        class: &str,
        seat: u32,
        shows: impl Fn(&str) -> bool,
    ) -> Result<(), StoreError> {
        let key = self.key()?;
        let lines: Vec<(i64, i64, String)> = self.rows(
            "SELECT import, place, file_name FROM import_file WHERE seat IS NULL",
            [],
            |row| {
                let (import, place) = (row.get(0)?, row.get(1)?);
                let name = key.text_at(row, 2, &FILE_NAME, &[&import, &place])?;
                Ok((import, place, name))
            },
        )?;
        for (import, place, _) in lines.into_iter().filter(|(_, _, name)| shows(name)) {
            self.connection.execute(
                "UPDATE import_file SET class = ?3, seat = ?4 WHERE import = ?1 AND place = ?2",
                params![import, place, class, seat],
            )?;
        }
        Ok(())
    }

    /// Removes a seat and everything of it, and also its lines in import reports, because a
    /// later seat may get its number.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is no such seat.
    pub fn remove_seat(&self, class: &str, seat: u32) -> Result<(), StoreError> {
        for sql in [
            "DELETE FROM taught_again WHERE class = ?1 AND whole_class = 0
             AND EXISTS (SELECT 1 FROM taught_again_seat s
               WHERE s.entry = taught_again.id AND s.seat = ?2)
             AND NOT EXISTS (SELECT 1 FROM taught_again_seat s
               WHERE s.entry = taught_again.id AND s.seat <> ?2)",
            "DELETE FROM import_file WHERE class = ?1 AND seat = ?2",
            "DELETE FROM assignment_seat WHERE class = ?1 AND seat = ?2",
        ] {
            self.connection.execute(sql, params![class, seat])?;
        }
        // An assignment that was for this seat alone is now for nobody.
        self.connection.execute(
            "UPDATE assignment SET withdrawn = 1 WHERE class = ?1 AND whole_class = 0
             AND NOT EXISTS (SELECT 1 FROM assignment_seat s
               WHERE s.class = assignment.class AND s.assignment = assignment.id)",
            [class],
        )?;
        let removed = self.connection.execute(
            "DELETE FROM seat WHERE class = ?1 AND number = ?2",
            params![class, seat],
        )?;
        if removed == 0 {
            return Err(StoreError::Missing(Thing::Seat));
        }
        Ok(())
    }

    /// Removes a class and everything of it.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is no such class.
    pub fn remove_class(&self, class: &str) -> Result<(), StoreError> {
        self.connection
            .execute("DELETE FROM import_file WHERE class = ?1", [class])?;
        let removed = self
            .connection
            .execute("DELETE FROM class WHERE id = ?1", [class])?;
        if removed == 0 {
            return Err(StoreError::Missing(Thing::Class));
        }
        Ok(())
    }
}
