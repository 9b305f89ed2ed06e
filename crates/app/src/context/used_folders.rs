//! Which class folders the notes of this device name.

use super::disk;
use serde_json::Value;
use std::collections::BTreeSet;
use std::io;
use std::path::PathBuf;

/// All folders that notes name, as `folder` at any depth. A missing note names none.
///
/// # Errors
/// Returns an error if a note cannot be read.
pub(super) fn used_folders(notes: &[PathBuf]) -> io::Result<BTreeSet<PathBuf>> {
    let mut used = BTreeSet::new();
    for note in notes {
        match disk::read(note) {
            Ok(text) => collect(&serde_json::from_slice(&text)?, &mut used),
            Err(error) if error.kind() == io::ErrorKind::NotFound => {}
            Err(error) => return Err(error),
        }
    }
    Ok(used)
}

fn collect(value: &Value, used: &mut BTreeSet<PathBuf>) {
    let Value::Object(fields) = value else {
        return;
    };
    for (name, inner) in fields {
        match inner {
            Value::String(at) if name == "folder" => {
                used.insert(at.into());
            }
            inner => collect(inner, used),
        }
    }
}
