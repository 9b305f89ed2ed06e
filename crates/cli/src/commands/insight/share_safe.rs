//! The method share-safe: tables of counts, and bands.
#![expect(
    clippy::indexing_slicing,
    reason = "a name that a JSON object lacks is added by its index, and never out of bounds"
)]

use super::instances::{each, parse};
use serde::Deserialize;
use serde_json::{Value, json};
use surefoot_insight::disclosure::{
    CompletionLimits, SMALLEST_GROUP, audit, band, complete, primary_cells, protection_width,
};

#[derive(Deserialize)]
struct TableCase {
    n: Option<u32>,
    width: Option<u32>,
    table: Vec<Vec<u32>>,
}

#[derive(Deserialize)]
struct BandCase {
    students: u32,
    low: u32,
}

/// Answers the tables under `cases` and the shares under `bands`; one of the lists may be missing.
pub fn answer(file: &Value) -> Result<Value, String> {
    let has = |list: &str| file.get(list).is_some();
    if !has("cases") && !has("bands") {
        return Err("no list \"cases\" or \"bands\"".into());
    }
    let mut answers = json!({});
    if has("cases") {
        answers["cases"] = each(file, "cases", table)?["cases"].take();
    }
    if has("bands") {
        answers["bands"] = each(file, "bands", share)?["bands"].take();
    }
    Ok(answers)
}

fn table(case: &Value) -> Result<Value, String> {
    let case: TableCase = parse(case)?;
    let table = case.table;
    let columns = table.first().map_or(0, Vec::len);
    if table.iter().any(|row| row.len() != columns) {
        return Err("rows of the table differ in length".into());
    }
    let smallest = case.n.unwrap_or(SMALLEST_GROUP);
    let width = case.width.unwrap_or_else(|| protection_width(smallest));
    let bounds = audit(&table, &primary_cells(&table, smallest));
    let recoverable: Vec<[usize; 2]> = bounds
        .iter()
        .filter(|b| b.width() == 0)
        .map(|b| [b.row, b.column])
        .collect();
    let bounds: Vec<Value> = bounds
        .iter()
        .map(|b| json!([b.row, b.column, b.least, b.most]))
        .collect();
    let done = complete(&table, smallest, width, &CompletionLimits::default());
    let withheld: Vec<Vec<u8>> = done
        .withheld
        .iter()
        .map(|row| row.iter().map(|mark| u8::from(*mark)).collect())
        .collect();
    Ok(json!({
        "bounds_primary_only": bounds,
        "recoverable": recoverable,
        "withheld": withheld,
        "extra": done.extra,
        "safe": done.safe,
        "proved_fewest": done.proved_fewest,
    }))
}

/// The band, or null for a share that may not be published.
fn share(case: &Value) -> Result<Value, String> {
    let case: BandCase = parse(case)?;
    if case.low > case.students {
        return Err(format!("{} of {} students", case.low, case.students));
    }
    let found = band(case.low, case.students);
    Ok(json!({
        "band": found.map(|b| b.number),
        "from_": found.map(|b| b.from_count),
        "to": found.map(|b| b.to_count),
    }))
}
