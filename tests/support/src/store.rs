//! Reads whole store files.

use rusqlite::Connection;
pub use rusqlite::types::Value;
use std::path::Path;

/// Returns every row of every table as text, in an order that depends only on the rows.
pub fn dump(path: &Path) -> String {
    let store = Connection::open(path).unwrap();
    let mut text = String::new();
    let mut names = store
        .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name <> 'sqlite_sequence' ORDER BY name")
        .unwrap();
    let names: Vec<String> = names
        .query_map([], |row| row.get(0))
        .unwrap()
        .map(Result::unwrap)
        .collect();
    for name in names {
        let mut query = store.prepare(&format!("SELECT * FROM \"{name}\"")).unwrap();
        let width = query.column_count();
        let mut rows: Vec<String> = query
            .query_map([], |row| {
                let values: Result<Vec<Value>, _> = (0..width).map(|at| row.get(at)).collect();
                values.map(|values| format!("{name} {values:?}\n"))
            })
            .unwrap()
            .map(Result::unwrap)
            .collect();
        rows.sort();
        text.extend(rows);
    }
    text
}

/// Returns the tables and columns of a store in their order.
pub fn columns(path: &Path) -> Vec<(String, String)> {
    let store = Connection::open(path).unwrap();
    let mut query = store
        .prepare(
            "SELECT t.name, c.name FROM sqlite_schema t, pragma_table_info(t.name) c
             WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite_%' ORDER BY t.rowid, c.cid",
        )
        .unwrap();
    let rows = query.query_map([], |row| Ok((row.get(0)?, row.get(1)?)));
    rows.unwrap().collect::<Result<_, _>>().unwrap()
}

/// Returns the distinct values of a column.
pub fn values(path: &Path, table: &str, column: &str) -> Vec<Value> {
    let store = Connection::open(path).unwrap();
    let mut query = store
        .prepare(&format!("SELECT DISTINCT {column} FROM {table}"))
        .unwrap();
    let rows = query.query_map([], |row| row.get(0));
    rows.unwrap().collect::<Result<_, _>>().unwrap()
}

/// Returns the bytes of the one cell that a query gives.
pub fn cell(path: &Path, sql: &str) -> Vec<u8> {
    let store = Connection::open(path).unwrap();
    store.query_row(sql, [], |row| row.get(0)).unwrap()
}

/// Runs one statement, to damage a store.
pub fn execute(path: &Path, sql: &str) {
    let store = Connection::open(path).unwrap();
    store.execute(sql, []).unwrap();
}
