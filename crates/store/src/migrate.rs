//! Migrations: one SQL file for each schema version, run once, in order, each in one
//! transaction. A released file never changes. The store is copied before one runs.

use crate::check::{StoreKind, schema};
use crate::copy::copy_into;
use crate::error::StoreError;
use rusqlite::{Connection, TransactionBehavior};
use std::path::Path;

/// Brings a store of schema version `found`, 0 for an empty file, to the newest version.
pub(crate) fn run<K: StoreKind>(
    connection: &mut Connection,
    path: &Path,
    found: u32,
) -> Result<(), StoreError> {
    if found == K::newest_schema() {
        return Ok(());
    }
    if found > 0 {
        copy_beside(connection, path, found)?;
    }
    apply::<K>(connection)
}

/// Runs the migrations that a store lacks.
pub(crate) fn apply<K: StoreKind>(connection: &mut Connection) -> Result<(), StoreError> {
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    // Read again inside the transaction, because another window may have migrated it.
    let found = schema::<K>(&transaction)?;
    for (version, sql) in (1_u32..).zip(K::MIGRATIONS) {
        if version > found {
            transaction.execute_batch(sql)?;
            transaction.pragma_update(None, "application_id", K::ID)?;
            transaction.pragma_update(None, "user_version", version)?;
        }
    }
    if found == 0 {
        K::fill(&transaction)?;
    }
    transaction.commit()?;
    Ok(())
}

/// Copies `name.sqlite` of version 3 to `name.sqlite.before-4`.
fn copy_beside(connection: &Connection, path: &Path, found: u32) -> Result<(), StoreError> {
    let mut name = path.as_os_str().to_owned();
    name.push(format!(".before-{}", found + 1));
    copy_into(connection, Path::new(&name))
}
