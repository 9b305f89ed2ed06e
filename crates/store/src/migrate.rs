//! Migrations: one SQL file a version, applied once, in order, each in one
//! transaction. Released files never change; a copy is made before one runs.

use super::StoreError;
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};
use std::path::Path;

/// One step: the schema version it leads to is its place in the list, from 1.
pub(super) struct Migration {
    /// Which kind of store this is, written into `application_id`.
    pub kind: i32,
    /// The statements.
    pub sql: &'static str,
}

fn version(connection: &Connection) -> Result<u32, StoreError> {
    Ok(connection.pragma_query_value(None, "user_version", |row| row.get(0))?)
}

/// Whether there is nothing to do.
pub(super) fn is_current(
    connection: &Connection,
    migrations: &[Migration],
) -> Result<bool, StoreError> {
    Ok(usize::try_from(version(connection)?).is_ok_and(|found| found == migrations.len()))
}

/// The schema version of a store that this program may change.
///
/// # Errors
/// [`StoreError::OtherKind`], [`StoreError::Newer`], or SQLite's.
pub(super) fn known_version(
    connection: &Connection,
    migrations: &[Migration],
) -> Result<u32, StoreError> {
    let known = u32::try_from(migrations.len()).unwrap_or(u32::MAX);
    let kind = migrations.first().map_or(0, |m| m.kind);
    let found = version(connection)?;
    if found > 0 || has_tables(connection)? {
        let found_kind: i32 =
            connection.pragma_query_value(None, "application_id", |row| row.get(0))?;
        if found_kind != kind {
            return Err(StoreError::OtherKind);
        }
    }
    if found > known {
        return Err(StoreError::Newer { found, known });
    }
    Ok(found)
}

pub(super) fn run(
    connection: &mut Connection,
    path: &Path,
    migrations: &[Migration],
) -> Result<(), StoreError> {
    let found = known_version(connection, migrations)?;
    if is_current(connection, migrations)? {
        return Ok(());
    }
    if found > 0 {
        copy_aside(connection, path, found)?;
    }
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    // Read again inside the transaction: another window may have been faster.
    let found: u32 = transaction.pragma_query_value(None, "user_version", |row| row.get(0))?;
    for (index, migration) in migrations.iter().enumerate().skip(found as usize) {
        transaction.execute_batch(migration.sql)?;
        transaction.pragma_update(None, "application_id", migration.kind)?;
        transaction.pragma_update(None, "user_version", index + 1)?;
    }
    transaction.commit()?;
    Ok(())
}

fn has_tables(connection: &Connection) -> Result<bool, StoreError> {
    Ok(connection
        .query_row("SELECT 1 FROM sqlite_schema LIMIT 1", [], |_| Ok(()))
        .optional()?
        .is_some())
}

/// `name.sqlite` at version 3 is copied to `name.sqlite.before-4`.
fn copy_aside(connection: &Connection, path: &Path, found: u32) -> Result<(), StoreError> {
    let mut name = path.as_os_str().to_owned();
    name.push(format!(".before-{}", found + 1));
    super::copy::copy_into(connection, Path::new(&name))
}

#[cfg(test)]
mod tests {
    use super::*;

    const ONE: &str = "CREATE TABLE line(id INTEGER PRIMARY KEY, words TEXT NOT NULL) STRICT;";
    const TWO: &str = "ALTER TABLE line ADD COLUMN lang TEXT NOT NULL DEFAULT 'en';";
    const BAD: &str =
        "CREATE TABLE half(id INTEGER PRIMARY KEY) STRICT; CREATE TABLE line(id INTEGER);";

    fn step(sql: &'static str) -> Migration {
        Migration { kind: 7, sql }
    }

    fn opened(
        path: &Path,
        migrations: &[Migration],
    ) -> Result<super::super::StoreConnection, StoreError> {
        super::super::open(
            path,
            super::super::Durability::Full,
            migrations,
            super::super::Look::Through,
        )
    }

    #[test]
    fn rows_survive_and_a_copy_is_made_before() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.sqlite");
        opened(&path, &[step(ONE)])
            .unwrap()
            .execute("INSERT INTO line(words) VALUES('kept')", [])
            .unwrap();
        let two = opened(&path, &[step(ONE), step(TWO)]).unwrap();
        let row: (String, String) = two
            .query_row("SELECT words, lang FROM line", [], |r| {
                Ok((r.get(0)?, r.get(1)?))
            })
            .unwrap();
        assert_eq!(row, ("kept".into(), "en".into()));
        let copy = Connection::open(folder.path().join("a.sqlite.before-2")).unwrap();
        assert_eq!(version(&copy).unwrap(), 1);
    }

    #[test]
    fn a_failing_step_changes_nothing() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.sqlite");
        opened(&path, &[step(ONE)]).unwrap();
        assert!(matches!(
            opened(&path, &[step(ONE), step(BAD)]),
            Err(StoreError::Sqlite(_))
        ));
        let again = opened(&path, &[step(ONE)]).unwrap();
        assert_eq!(version(&again).unwrap(), 1);
        assert!(again.prepare("SELECT 1 FROM half").is_err());
    }

    #[test]
    fn a_newer_store_and_a_store_of_another_kind_are_refused() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.sqlite");
        opened(&path, &[step(ONE), step(TWO)]).unwrap();
        assert!(matches!(
            opened(&path, &[step(ONE)]),
            Err(StoreError::Newer { found: 2, known: 1 })
        ));
        let other = Migration { kind: 8, sql: ONE };
        assert!(matches!(
            opened(&path, &[other]),
            Err(StoreError::OtherKind)
        ));
    }

    #[test]
    #[expect(clippy::disallowed_methods, reason = "looks at files it made")]
    fn a_newer_or_foreign_file_is_not_changed_by_a_byte() {
        let folder = tempfile::tempdir().unwrap();
        for (kind, version) in [(7, 2), (9, 1)] {
            let path = folder.path().join(format!("{kind}.sqlite"));
            let made = Connection::open(&path).unwrap();
            made.execute_batch(ONE).unwrap();
            made.pragma_update(None, "application_id", kind).unwrap();
            made.pragma_update(None, "user_version", version).unwrap();
            drop(made);
            let before = std::fs::read(&path).unwrap();
            assert!(opened(&path, &[step(ONE)]).is_err());
            assert!(std::fs::read(&path).unwrap() == before);
        }
        let files = std::fs::read_dir(folder.path()).unwrap().count();
        assert_eq!(files, 2, "no log was made beside them");
    }
}
