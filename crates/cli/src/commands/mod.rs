//! One file per command.

pub mod bank;
pub mod board;
pub mod catalogue;
pub mod demo;
pub mod exercises;
pub mod groups;
pub mod import;
pub mod insight;
pub mod memory;
pub mod rehearse;
pub mod report;
pub mod share_table;
pub mod sheet;
pub mod simulate;
mod table;
pub mod talk;

use crate::out::put_line;
use surefoot_store::{DeskStore, Durability, StoreError};

/// Prints a value as JSON.
pub fn print_json(value: &impl serde::Serialize) -> crate::Outcome {
    let text = serde_json::to_string_pretty(value).map_err(|error| error.to_string())?;
    put_line!("{text}");
    Ok(())
}

/// Opens a desk that exists.
fn existing_desk(path: &std::path::Path) -> Result<DeskStore, String> {
    opened(path, DeskStore::open)
}

/// Opens a desk for reading, without checking all of it first.
fn desk_to_read(path: &std::path::Path) -> Result<DeskStore, String> {
    opened(path, DeskStore::open_again)
}

fn opened(
    path: &std::path::Path,
    open: impl FnOnce(&std::path::Path, Durability) -> Result<DeskStore, StoreError>,
) -> Result<DeskStore, String> {
    if !path.is_file() {
        return Err(format!("{}: there is no desk here", path.display()));
    }
    open(path, Durability::Full).map_err(|error| format!("{}: {error}", path.display()))
}

/// The class asked for by id or title, or the only one.
fn class_of(desk: &DeskStore, asked: Option<&str>) -> Result<surefoot_desk::OpenClass, String> {
    let classes = desk.classes().map_err(|error| error.to_string())?;
    let chosen = match (asked, classes.as_slice()) {
        (Some(asked), all) => all
            .iter()
            .find(|class| class.id == asked || class.title == asked),
        (None, [only]) => Some(only),
        (None, _) => None,
    };
    let Some(class) = chosen else {
        let there: Vec<String> = classes
            .iter()
            .map(|class| format!("{} ({})", class.title, class.id))
            .collect();
        return Err(format!(
            "name a class with --class; there are: {}",
            there.join(", ")
        ));
    };
    surefoot_desk::open_class(desk, &class.id).map_err(|error| error.to_string())
}
