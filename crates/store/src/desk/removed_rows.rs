//! The rows of a removal, kept in memory so that it can be undone although the store keeps
//! nothing of them.

use super::super::StoreError;
use super::DeskStore;
use super::reports::{DERIVED, OF_SEAT};
use rusqlite::params_from_iter;
use rusqlite::types::Value;

/// Every row that is removed with a seat, a class, or own concepts and exercises.
pub struct RemovedRows {
    class: String,
    tables: Vec<RemovedTable>,
    /// Assignments that are withdrawn because they were for the removed seat alone.
    withdrawn: Vec<String>,
    /// The import of own concepts or exercises that is undone.
    undone: Option<u32>,
    /// The mark that replaces that of the seat in the log of share-safe tables.
    replaced_mark: Option<String>,
    /// The seat whose work was moved, and where it is now.
    moved: Option<Moved>,
    /// The kept groups of the removed seat.
    groups: Vec<KeptPlace>,
}

struct KeptPlace {
    school_date: String,
    place: i64,
    seat: i64,
    concept: String,
}

struct Moved {
    from_seat: u32,
    to_class: String,
    to_seat: u32,
}

/// Which own concepts and exercises.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OwnRows<'i> {
    /// The exercise with this id.
    Exercise(&'i str),
    /// All of the import with this number.
    Import(u32),
}

struct RemovedTable {
    name: String,
    columns: Vec<String>,
    rows: Vec<Vec<Value>>,
}

/// Removes the places of a seat in something that is no longer there.
const DANGLING: [&str; 4] = [
    "DELETE FROM assignment_seat AS s WHERE class = ?1 AND NOT EXISTS
       (SELECT 1 FROM assignment o WHERE o.class = s.class AND o.id = s.assignment)",
    "DELETE FROM small_group_seat AS s WHERE class = ?1 AND NOT EXISTS
       (SELECT 1 FROM small_group o WHERE o.class = s.class AND o.school_date = s.school_date
          AND o.place = s.place)",
    "DELETE FROM taught_again_seat AS s WHERE class = ?1 AND NOT EXISTS
       (SELECT 1 FROM taught_again o WHERE o.id = s.entry)",
    "DELETE FROM seat_pair AS s WHERE class = ?1 AND 2 >
       (SELECT count(*) FROM seat o WHERE o.class = s.class AND o.number IN (s.seat, s.other_seat))",
];

/// The table of imports. An import is removed together with its last file.
const IMPORTS: &str = "import";

impl DeskStore {
    /// Returns the rows that are removed with a seat, or with the whole class.
    pub fn rows_to_remove(
        &self,
        class: &str,
        seat: Option<u32>,
    ) -> Result<RemovedRows, StoreError> {
        let mut tables = Vec::new();
        for name in self.rows(
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY rowid",
            [],
            |row| row.get::<_, String>(0),
        )? {
            let columns = self.columns(&name)?;
            let Some(which) = belongs(&name, &columns, seat.is_some()) else {
                continue;
            };
            let mut given = vec![Value::Text(class.to_owned())];
            given.extend(seat.map(|seat| Value::Integer(i64::from(seat))));
            tables.extend(self.removed_table(name, columns, &which, given)?);
        }
        let withdrawn = match seat {
            None => Vec::new(),
            Some(seat) => self.rows(
                "SELECT id FROM assignment a WHERE class = ?1 AND withdrawn = 0 AND whole_class = 0
                 AND NOT EXISTS (SELECT 1 FROM assignment_seat s
                   WHERE s.class = a.class AND s.assignment = a.id AND s.seat <> ?2)",
                rusqlite::params![class, seat],
                |row| row.get(0),
            )?,
        };
        let groups = self.rows(
            "SELECT g.school_date, g.place, s.seat, g.concept
             FROM small_group g JOIN small_group_seat s USING (class, school_date, place)
             WHERE g.class = ?1 AND s.seat = ?2",
            rusqlite::params![class, seat],
            |row| {
                Ok(KeptPlace {
                    school_date: row.get(0)?,
                    place: row.get(1)?,
                    seat: row.get(2)?,
                    concept: row.get(3)?,
                })
            },
        )?;
        Ok(RemovedRows {
            class: class.to_owned(),
            tables,
            withdrawn,
            undone: None,
            replaced_mark: None,
            moved: None,
            groups,
        })
    }

    /// Returns the rows that are removed with own concepts or exercises.
    pub fn own_rows_to_remove(
        &self,
        class: &str,
        which: OwnRows<'_>,
    ) -> Result<RemovedRows, StoreError> {
        let (rule, given, undone) = match which {
            OwnRows::Exercise(id) => ("id", Value::Text(id.to_owned()), None),
            OwnRows::Import(number) => ("import", Value::Integer(i64::from(number)), Some(number)),
        };
        let mut tables = Vec::new();
        for name in ["own_concept", "own_exercise"] {
            if name == "own_concept" && undone.is_none() {
                continue;
            }
            tables.extend(self.removed_table(
                name.to_owned(),
                self.columns(name)?,
                &format!("class = ?1 AND {rule} = ?2"),
                vec![Value::Text(class.to_owned()), given.clone()],
            )?);
        }
        Ok(RemovedRows {
            class: class.to_owned(),
            tables,
            withdrawn: Vec::new(),
            undone,
            replaced_mark: None,
            moved: None,
            groups: Vec::new(),
        })
    }

    /// Adds a seat's ratings in the log of share-safe tables to the rows that are removed.
    /// `replaced_by` is the mark that they get there.
    pub fn remove_released(
        &self,
        removed: &mut RemovedRows,
        seat_mark: &str,
        replaced_by: &str,
    ) -> Result<(), StoreError> {
        const RATINGS: &str = "share_release_rating";
        let table = self.removed_table(
            RATINGS.to_owned(),
            self.columns(RATINGS)?,
            "class = ?1 AND seat_mark = ?2",
            vec![
                Value::Text(removed.class.clone()),
                Value::Text(seat_mark.to_owned()),
            ],
        )?;
        removed.tables.extend(table);
        removed.replaced_mark = Some(replaced_by.to_owned());
        Ok(())
    }

    fn columns(&self, table: &str) -> Result<Vec<String>, StoreError> {
        self.rows(
            "SELECT name FROM pragma_table_info(?1) ORDER BY cid",
            [table],
            |row| row.get(0),
        )
    }

    /// Returns the rows of a table for which `which` is true; `None` if there are none.
    fn removed_table(
        &self,
        name: String,
        columns: Vec<String>,
        which: &str,
        given: Vec<Value>,
    ) -> Result<Option<RemovedTable>, StoreError> {
        let listed = quoted(&columns);
        let sql = format!("SELECT {listed} FROM \"{name}\" WHERE {which}");
        let width = columns.len();
        let rows = (self.connection.prepare(&sql)?)
            .query_map(params_from_iter(given), |row| {
                (0..width).map(|at| row.get(at)).collect()
            })?
            .collect::<Result<Vec<Vec<Value>>, _>>()?;
        Ok((!rows.is_empty()).then_some(RemovedTable {
            name,
            columns,
            rows,
        }))
    }

    /// Writes removed rows again: all of them, or none.
    ///
    /// # Errors
    /// [`StoreError::PlaceTaken`] if one of them does not fit any more, for instance because
    /// another seat has got the number.
    pub fn restore(&self, removed: &RemovedRows) -> Result<(), StoreError> {
        let no_place = |error: StoreError| match error {
            StoreError::Sqlite(error)
                if error.sqlite_error_code() == Some(rusqlite::ErrorCode::ConstraintViolation) =>
            {
                StoreError::PlaceTaken
            }
            other => other,
        };
        // The row that another one refers to may be missing, which the commit finds.
        self.transaction(|| {
            // The rows refer to one another, so they are checked when all are written.
            self.connection
                .pragma_update(None, "defer_foreign_keys", true)?;
            if let Some(mark) = &removed.replaced_mark {
                self.connection.execute(
                    "DELETE FROM share_release_rating WHERE class = ?1 AND seat_mark = ?2",
                    [&removed.class, mark],
                )?;
            }
            for table in &removed.tables {
                let places: Vec<String> =
                    (1..=table.columns.len()).map(|n| format!("?{n}")).collect();
                let sql = format!(
                    "INSERT {} INTO \"{}\" ({}) VALUES ({})",
                    if table.name == IMPORTS {
                        "OR IGNORE"
                    } else {
                        ""
                    },
                    table.name,
                    quoted(&table.columns),
                    places.join(", ")
                );
                let mut insert = self.connection.prepare(&sql)?;
                for row in &table.rows {
                    insert.execute(params_from_iter(row))?;
                }
            }
            // What the teacher removed or made anew meanwhile stays as it is: also a group that has
            // another concept now.
            for of in &removed.groups {
                self.connection.execute(
                    "DELETE FROM small_group_seat AS s
                     WHERE class = ?1 AND school_date = ?2 AND place = ?3 AND seat = ?4
                     AND EXISTS (SELECT 1 FROM small_group o WHERE o.class = s.class
                       AND o.school_date = s.school_date AND o.place = s.place
                       AND o.concept <> ?5)",
                    rusqlite::params![removed.class, of.school_date, of.place, of.seat, of.concept],
                )?;
            }
            for dangling in DANGLING {
                self.connection.execute(dangling, [&removed.class])?;
            }
            for id in &removed.withdrawn {
                self.connection.execute(
                    "UPDATE assignment SET withdrawn = 0 WHERE class = ?1 AND id = ?2",
                    [&removed.class, id],
                )?;
            }
            if let Some(moved) = &removed.moved {
                let to = (moved.to_class.as_str(), moved.to_seat);
                self.move_work(to, (&removed.class, moved.from_seat))?;
                // Fails if the seat was removed or moved again.
                self.remove_seat(to.0, to.1)?;
            }
            if let Some(number) = removed.undone {
                self.connection.execute(
                    "UPDATE own_import SET undone = 0 WHERE class = ?1 AND number = ?2",
                    rusqlite::params![removed.class, number],
                )?;
            }
            Ok(())
        })
        .map_err(no_place)
    }
}

impl RemovedRows {
    /// Notes that the work of the removed seat was moved to another one.
    pub(super) fn note_move(&mut self, from_seat: u32, to: (&str, u32)) {
        self.moved = Some(Moved {
            from_seat,
            to_class: to.0.to_owned(),
            to_seat: to.1,
        });
    }
}

/// Returns the condition for the rows of a table that are removed, in which ?1 is the class
/// and ?2 the seat; `None` if no row is.
fn belongs(table: &str, columns: &[String], one_seat: bool) -> Option<String> {
    let has = |column: &str| columns.iter().any(|c| c == column);
    let of_seat = if one_seat { " AND seat = ?2" } else { "" };
    match table {
        "class" => (!one_seat).then(|| "id = ?1".into()),
        "seat" if one_seat => Some("class = ?1 AND number = ?2".into()),
        // What was taught to this student alone.
        "taught_again" if one_seat => Some(
            "class = ?1 AND whole_class = 0 AND EXISTS (SELECT 1 FROM taught_again_seat s
               WHERE s.entry = taught_again.id AND s.seat = ?2)
             AND NOT EXISTS (SELECT 1 FROM taught_again_seat s
               WHERE s.entry = taught_again.id AND s.seat <> ?2)"
                .into(),
        ),
        "seat_pair" if one_seat => Some("class = ?1 AND (seat = ?2 OR other_seat = ?2)".into()),
        IMPORTS => Some(format!(
            "id IN (SELECT import FROM import_file WHERE class = ?1{of_seat}
               UNION SELECT import FROM hand_in WHERE class = ?1{of_seat})"
        )),
        _ if DERIVED.contains(&table) => Some(match one_seat {
            true => OF_SEAT.into(),
            false => "brought_by IN (SELECT id FROM device WHERE class = ?1)".into(),
        }),
        _ if !has("class") => None,
        _ if !one_seat => Some("class = ?1".into()),
        _ => has("seat").then(|| "class = ?1 AND seat = ?2".into()),
    }
}

fn quoted(columns: &[String]) -> String {
    let all: Vec<String> = columns.iter().map(|c| format!("\"{c}\"")).collect();
    all.join(", ")
}
