//! The options that name a class at a desk.

use chrono::NaiveDate;
use std::path::{Path, PathBuf};
use surefoot_app::{Clock, DeviceClock};
use surefoot_desk::OpenClass;
use surefoot_store::{DeskStore, Durability, StoreError};

/// The desk, the class and the date of a command.
#[derive(clap::Args)]
pub struct ClassArgs {
    /// The teacher's desk.
    #[arg(long)]
    desk: PathBuf,
    /// The class by its id or title; needed if the desk has several.
    #[arg(long)]
    class: Option<String>,
    /// The date to compute for; today if left out.
    #[arg(long)]
    today: Option<NaiveDate>,
}

/// What the options name, opened.
pub struct ClassAtDesk {
    pub desk: DeskStore,
    pub class: OpenClass,
    pub today: NaiveDate,
}

impl ClassArgs {
    /// Opens the desk to read and write.
    pub fn open(&self) -> Result<ClassAtDesk, String> {
        self.open_class(existing_desk(&self.desk)?)
    }

    /// Opens the desk to read, without checking all of it first.
    pub fn open_to_read(&self) -> Result<ClassAtDesk, String> {
        self.open_class(opened(&self.desk, DeskStore::open_again)?)
    }

    fn open_class(&self, desk: DeskStore) -> Result<ClassAtDesk, String> {
        let class = class_of(&desk, self.class.as_deref())?;
        Ok(ClassAtDesk {
            desk,
            class,
            today: or_today(self.today),
        })
    }
}

/// The date given, or today.
pub fn or_today(date: Option<NaiveDate>) -> NaiveDate {
    date.unwrap_or_else(|| DeviceClock.today())
}

/// Opens a desk that exists.
pub fn existing_desk(path: &Path) -> Result<DeskStore, String> {
    opened(path, DeskStore::open)
}

fn opened(
    path: &Path,
    open: impl FnOnce(&Path, Durability) -> Result<DeskStore, StoreError>,
) -> Result<DeskStore, String> {
    if !path.is_file() {
        return Err(format!("{}: there is no desk here", path.display()));
    }
    open(path, Durability::Full).map_err(|error| format!("{}: {error}", path.display()))
}

/// The class asked for by id or title, or the only one.
fn class_of(desk: &DeskStore, asked: Option<&str>) -> Result<OpenClass, String> {
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
