//! Goals in the student's own words.

use super::super::StoreError;
use super::StudentStore;
use rusqlite::params;
use surefoot_record::Goal;

impl StudentStore {
    /// Returns the goals in their order.
    pub fn goals(&self) -> Result<Vec<Goal>, StoreError> {
        let mut query = self
            .connection
            .prepare_cached("SELECT words, reached FROM goal ORDER BY place")?;
        let rows = query.query_map([], |row| {
            Ok(Goal {
                words: row.get(0)?,
                reached: row.get(1)?,
            })
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// Replaces the goals.
    pub fn put_goals(&self, goals: &[Goal]) -> Result<(), StoreError> {
        self.transaction(|| {
            self.connection.execute("DELETE FROM goal", [])?;
            for (place, goal) in goals.iter().enumerate() {
                self.connection.execute(
                    "INSERT INTO goal (place, words, reached) VALUES (?1, ?2, ?3)",
                    params![place, goal.words, goal.reached],
                )?;
            }
            Ok(())
        })
    }
}
