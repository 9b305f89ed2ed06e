//! Rows on their way out, held in memory so that a removal can be taken back
//! while the store itself keeps nothing of them.

use super::super::StoreError;
use super::DeskStore;
use rusqlite::params_from_iter;
use rusqlite::types::Value;

/// Every row that goes with a seat, a class, or something of the teacher's own.
pub struct RemovedRows {
    class: String,
    tables: Vec<HeldTable>,
    /// Assignments that stand for nobody once the seat is gone.
    taken_back: Vec<String>,
    /// The import of own things that was taken back.
    undone: Option<u32>,
}

/// Things of the teacher's own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OwnRows<'i> {
    /// One exercise, by its id.
    Exercise(&'i str),
    /// All that an import brought.
    Import(u32),
}

struct HeldTable {
    name: String,
    columns: Vec<String>,
    rows: Vec<Vec<Value>>,
}

/// Imports lose their line in the journal with their last file.
const IMPORTS: &str = "import";

impl DeskStore {
    /// Reads all that goes with a seat, or with the whole class.
    ///
    /// # Errors
    /// SQLite's.
    pub fn hold(&self, class: &str, seat: Option<u32>) -> Result<RemovedRows, StoreError> {
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
            tables.extend(self.held_table(name, columns, &which, given)?);
        }
        let taken_back = match seat {
            None => Vec::new(),
            Some(seat) => self.rows(
                "SELECT id FROM assignment a WHERE class = ?1 AND withdrawn = 0 AND whole_class = 0
                 AND NOT EXISTS (SELECT 1 FROM assignment_seat s
                   WHERE s.class = a.class AND s.assignment = a.id AND s.seat <> ?2)",
                rusqlite::params![class, seat],
                |row| row.get(0),
            )?,
        };
        Ok(RemovedRows {
            class: class.to_owned(),
            tables,
            taken_back,
            undone: None,
        })
    }

    /// Reads things of the teacher's own that are on their way out.
    ///
    /// # Errors
    /// SQLite's.
    pub fn hold_own(&self, class: &str, which: OwnRows<'_>) -> Result<RemovedRows, StoreError> {
        let (rule, given, undone) = match which {
            OwnRows::Exercise(id) => ("id", Value::Text(id.to_owned()), None),
            OwnRows::Import(number) => ("import", Value::Integer(i64::from(number)), Some(number)),
        };
        let mut tables = Vec::new();
        for name in ["own_concept", "own_exercise"] {
            if name == "own_concept" && undone.is_none() {
                continue;
            }
            tables.extend(self.held_table(
                name.to_owned(),
                self.columns(name)?,
                &format!("class = ?1 AND {rule} = ?2"),
                vec![Value::Text(class.to_owned()), given.clone()],
            )?);
        }
        Ok(RemovedRows {
            class: class.to_owned(),
            tables,
            taken_back: Vec::new(),
            undone,
        })
    }

    fn columns(&self, table: &str) -> Result<Vec<String>, StoreError> {
        self.rows(
            "SELECT name FROM pragma_table_info(?1) ORDER BY cid",
            [table],
            |row| row.get(0),
        )
    }

    /// The rows of a table that fit, if there are any.
    fn held_table(
        &self,
        name: String,
        columns: Vec<String>,
        which: &str,
        given: Vec<Value>,
    ) -> Result<Option<HeldTable>, StoreError> {
        let listed = quoted(&columns);
        let sql = format!("SELECT {listed} FROM \"{name}\" WHERE {which}");
        let width = columns.len();
        let rows = (self.connection.prepare(&sql)?)
            .query_map(params_from_iter(given), |row| {
                (0..width).map(|at| row.get(at)).collect()
            })?
            .collect::<Result<Vec<Vec<Value>>, _>>()?;
        Ok((!rows.is_empty()).then_some(HeldTable {
            name,
            columns,
            rows,
        }))
    }

    /// Writes held rows back. Nothing is written when one of them has no place
    /// any more, for instance because another seat got the number.
    ///
    /// # Errors
    /// [`StoreError::Missing`] then; SQLite's.
    pub fn put_back(&self, held: &RemovedRows) -> Result<(), StoreError> {
        let no_place = |error: StoreError| match error {
            StoreError::Sqlite(error)
                if error.sqlite_error_code() == Some(rusqlite::ErrorCode::ConstraintViolation) =>
            {
                StoreError::Missing("place")
            }
            other => other,
        };
        // What a row belongs to may be gone as well: the commit finds that.
        self.together(|| {
            // Rows refer to one another; at the commit all of them are there.
            self.connection
                .pragma_update(None, "defer_foreign_keys", true)?;
            for table in &held.tables {
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
            for id in &held.taken_back {
                self.connection.execute(
                    "UPDATE assignment SET withdrawn = 0 WHERE class = ?1 AND id = ?2",
                    [&held.class, id],
                )?;
            }
            if let Some(number) = held.undone {
                self.connection.execute(
                    "UPDATE own_import SET undone = 0 WHERE class = ?1 AND number = ?2",
                    rusqlite::params![held.class, number],
                )?;
            }
            Ok(())
        })
        .map_err(no_place)
    }
}

/// Which rows of a table go; ?1 is the class, ?2 the seat.
fn belongs(table: &str, columns: &[String], one_seat: bool) -> Option<String> {
    let has = |column: &str| columns.iter().any(|c| c == column);
    let of_seat = if one_seat { " AND seat = ?2" } else { "" };
    match table {
        "class" => (!one_seat).then(|| "id = ?1".into()),
        "seat" if one_seat => Some("class = ?1 AND number = ?2".into()),
        "seat_pair" if one_seat => Some("class = ?1 AND (seat = ?2 OR other_seat = ?2)".into()),
        IMPORTS => Some(format!(
            "id IN (SELECT import FROM import_file WHERE class = ?1{of_seat}
               UNION SELECT import FROM hand_in WHERE class = ?1{of_seat})"
        )),
        _ if !has("class") => None,
        _ if !one_seat => Some("class = ?1".into()),
        _ => has("seat").then(|| "class = ?1 AND seat = ?2".into()),
    }
}

fn quoted(columns: &[String]) -> String {
    let all: Vec<String> = columns.iter().map(|c| format!("\"{c}\"")).collect();
    all.join(", ")
}
