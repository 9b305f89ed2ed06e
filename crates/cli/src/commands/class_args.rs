//! The options that name a class at a desk.

use chrono::NaiveDate;
use console::Term;
use std::io::IsTerminal as _;
use std::path::{Path, PathBuf};
use surefoot_app::{Clock, DeviceClock};
use surefoot_desk::OpenClass;
use surefoot_store::{DeskStore, Durability, StoreError};
use zeroize::Zeroizing;

/// The desk of a command.
#[derive(clap::Args)]
pub struct DeskArgs {
    /// The teacher's desk.
    #[arg(long)]
    desk: PathBuf,
    /// A file whose first line is the passphrase of a desk with a lock. Without it, the terminal
    /// asks.
    #[arg(long)]
    passphrase_file: Option<PathBuf>,
}

/// The desk, the class and the date of a command.
#[derive(clap::Args)]
pub struct ClassArgs {
    #[command(flatten)]
    desk: DeskArgs,
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
        self.open_class(self.desk.open()?)
    }

    /// Opens the desk to read, without checking all of it first.
    pub fn open_to_read(&self) -> Result<ClassAtDesk, String> {
        self.open_class(self.desk.opened(DeskStore::open_again)?)
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

impl DeskArgs {
    /// Opens a desk that exists, to read and write.
    pub fn open(&self) -> Result<DeskStore, String> {
        self.opened(DeskStore::open)
    }

    fn opened(
        &self,
        open: impl FnOnce(&Path, Durability) -> Result<DeskStore, StoreError>,
    ) -> Result<DeskStore, String> {
        let at = self.desk.display();
        if !self.desk.is_file() {
            return Err(format!("{at}: there is no desk here"));
        }
        let words = |error: StoreError| format!("{at}: {error}");
        let desk = open(&self.desk, Durability::Full).map_err(words)?;
        if desk.lock().map_err(words)?.is_some() {
            let key = desk.key_by(&self.passphrase()?).map_err(words)?;
            let key = key.ok_or_else(|| format!("{at}: the passphrase does not open the desk"))?;
            desk.use_key(key).map_err(words)?;
        }
        Ok(desk)
    }

    /// The passphrase, from the file or typed without being shown.
    fn passphrase(&self) -> Result<Zeroizing<String>, String> {
        let at = self.desk.display();
        let Some(path) = &self.passphrase_file else {
            let terminal = Term::stderr();
            if !terminal.is_term() || !std::io::stdin().is_terminal() {
                return Err(format!(
                    "{at}: the desk is locked; name a file with its passphrase by --passphrase-file"
                ));
            }
            let asked = terminal.write_str(&format!("Passphrase of {at}: "));
            return asked
                .and_then(|()| terminal.read_secure_line())
                .map(Zeroizing::new)
                .map_err(|error| error.to_string());
        };
        let text = std::fs::read_to_string(path)
            .map(Zeroizing::new)
            .map_err(|error| format!("{}: {error}", path.display()))?;
        Ok(Zeroizing::new(
            text.lines().next().unwrap_or_default().to_owned(),
        ))
    }
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
