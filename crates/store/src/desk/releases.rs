//! The log of the share-safe tables that were handed out.

use super::super::StoreError;
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::params;

/// A rating that a row of a share-safe table counted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ReleasedRating {
    /// Concept or strand of the row, or empty for the class.
    pub row: String,
    /// A keyed digest of the seat's token.
    pub seat_mark: String,
    /// A keyed digest of its concept and school date.
    pub day_mark: String,
    /// A keyed digest of the rating with its sequence.
    pub mark: String,
    /// Whether it counted as low.
    pub low: bool,
}

impl DeskStore {
    /// Returns the ratings that the tables of a class counted: the number of each table, earliest
    /// first, and a rating.
    pub fn released_ratings(&self, class: &str) -> Result<Vec<(i64, ReleasedRating)>, StoreError> {
        self.rows(
            "SELECT place, row, seat_mark, day_mark, mark, low FROM share_release_rating
             WHERE class = ?1 ORDER BY place, row, seat_mark, day_mark",
            [class],
            |row| {
                Ok((
                    row.get(0)?,
                    ReleasedRating {
                        row: row.get(1)?,
                        seat_mark: row.get(2)?,
                        day_mark: row.get(3)?,
                        mark: row.get(4)?,
                        low: row.get(5)?,
                    },
                ))
            },
        )
    }

    /// Returns how many tables of a class were handed out.
    pub fn release_count(&self, class: &str) -> Result<usize, StoreError> {
        Ok(self.connection.query_row(
            "SELECT count(*) FROM share_release WHERE class = ?1",
            [class],
            |row| row.get(0),
        )?)
    }

    /// Notes a table that is handed out.
    pub fn add_release(
        &self,
        class: &str,
        made_on: NaiveDate,
        ratings: &[ReleasedRating],
    ) -> Result<(), StoreError> {
        let place: i64 = self.connection.query_row(
            "SELECT coalesce(max(place), -1) + 1 FROM share_release WHERE class = ?1",
            [class],
            |row| row.get(0),
        )?;
        self.connection.execute(
            "INSERT INTO share_release (class, place, made_on) VALUES (?1, ?2, ?3)",
            params![class, place, made_on.to_string()],
        )?;
        for rating in ratings {
            self.put_released(class, place, rating)?;
        }
        Ok(())
    }

    fn put_released(
        &self,
        class: &str,
        place: i64,
        rating: &ReleasedRating,
    ) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO share_release_rating (class, place, row, seat_mark, day_mark, mark, low)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
            )?
            .execute(params![
                class,
                place,
                rating.row,
                rating.seat_mark,
                rating.day_mark,
                rating.mark,
                rating.low
            ])?;
        Ok(())
    }

    /// Replaces the released ratings of a seat, each given with the number of its table.
    pub fn replace_released(
        &self,
        class: &str,
        seat_mark: &str,
        replaced: &[(i64, ReleasedRating)],
    ) -> Result<(), StoreError> {
        self.connection.execute(
            "DELETE FROM share_release_rating WHERE class = ?1 AND seat_mark = ?2",
            params![class, seat_mark],
        )?;
        for (place, rating) in replaced {
            self.put_released(class, *place, rating)?;
        }
        Ok(())
    }
}
