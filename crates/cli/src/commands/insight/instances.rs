//! Reads instance files, and answers their cases.

use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use std::path::Path;

/// The largest instance file read.
const MOST_BYTES: u64 = 256 * 1024 * 1024;

/// Reads an instance file.
pub fn read(path: &Path) -> Result<Value, String> {
    let at = |e: &dyn std::fmt::Display| format!("{}: {e}", path.display());
    let size = std::fs::metadata(path).map_err(|e| at(&e))?.len();
    if size > MOST_BYTES {
        return Err(at(&format!(
            "{size} bytes are too many (at most {MOST_BYTES})"
        )));
    }
    let bytes = std::fs::read(path).map_err(|e| at(&e))?;
    let file = serde_json::from_slice(&bytes).map_err(|e| at(&format!("not JSON: {e}")))?;
    match too_large(&file) {
        None => Ok(file),
        Some(number) => Err(at(&format!(
            "{number} is too large (at most {MOST_NUMBER})"
        ))),
    }
}

/// The largest whole number in an instance file, so that sums of counts do not overflow.
const MOST_NUMBER: u64 = u32::MAX as u64;

/// The first whole number that is too large.
fn too_large(value: &Value) -> Option<u64> {
    match value {
        Value::Number(number) => number.as_u64().filter(|number| *number > MOST_NUMBER),
        Value::Array(values) => values.iter().find_map(too_large),
        Value::Object(fields) => fields.values().find_map(too_large),
        _ => None,
    }
}

/// The list of cases under a name.
pub fn cases<'f>(file: &'f Value, list: &str) -> Result<&'f [Value], String> {
    let cases = file.get(list).and_then(Value::as_array);
    cases
        .map(Vec::as_slice)
        .ok_or_else(|| format!("no list \"{list}\""))
}

/// Answers every case of a list. The index of a case without an id serves as its id.
pub fn each(
    file: &Value,
    list: &str,
    answer: impl Fn(&Value) -> Result<Value, String>,
) -> Result<Value, String> {
    let mut answers = Vec::new();
    for (index, case) in cases(file, list)?.iter().enumerate() {
        let id = case.get("id").cloned().unwrap_or_else(|| json!(index));
        let answer = answer(case).map_err(|words| format!("{list} {id}: {words}"))?;
        answers.push(json!({ "id": id, "answer": answer }));
    }
    Ok(json!({ list: answers }))
}

/// Reads a case, or the settings beside the cases.
pub fn parse<T: DeserializeOwned>(value: &Value) -> Result<T, String> {
    T::deserialize(value).map_err(|e| e.to_string())
}

/// Reads an optional object of settings. A missing key or null gives the defaults.
pub fn settings<T: DeserializeOwned + Default>(file: &Value, key: &str) -> Result<T, String> {
    match file.get(key) {
        None | Some(Value::Null) => Ok(T::default()),
        Some(value) => parse(value).map_err(|words| format!("{key}: {words}")),
    }
}
