//! Files that a person picks, saves or hands over: what a shell must offer.
//!
//! A picked file need not have a path (on Android it is an address that only
//! the system can open), so everything here is a name and a way to read.

use crate::error::CallError;
use std::fmt;
use std::io::{self, Read};
use surefoot_exchange::Refusal;

/// What a file is for: decides what a picker shows and what a saved file is called.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FileKind {
    /// From the teacher to the students.
    ClassPack,
    /// From a student to the teacher.
    HandIn,
    /// A student's own sealed copy for a second device.
    CarryFile,
    /// A whole store, sealed for the person it belongs to.
    Backup,
    /// A class with its keys and names, sealed for the teacher's second computer.
    ClassKey,
    /// A printable sheet.
    Pdf,
    /// A table as comma-separated text.
    Csv,
    /// A class list.
    Roster,
    /// A workbook (Office Open XML).
    Xlsx,
    /// Exercises of the teacher's own.
    Bank,
    /// Concepts of the teacher's or a publisher's own.
    Catalogue,
}

impl FileKind {
    /// All kinds.
    pub const ALL: [Self; 11] = [
        Self::ClassPack,
        Self::HandIn,
        Self::CarryFile,
        Self::Backup,
        Self::ClassKey,
        Self::Pdf,
        Self::Csv,
        Self::Roster,
        Self::Xlsx,
        Self::Bank,
        Self::Catalogue,
    ];

    /// The file name's extension, without the dot.
    #[must_use]
    pub fn extension(self) -> &'static str {
        match self {
            Self::ClassPack => "sfclass",
            Self::HandIn => "sfhandin",
            Self::CarryFile => "sfcarry",
            Self::Backup => "sfbackup",
            Self::ClassKey => "sfkey",
            Self::Pdf => "pdf",
            Self::Xlsx => "xlsx",
            Self::Csv | Self::Roster | Self::Bank | Self::Catalogue => "csv",
        }
    }

    /// The extensions of files that a person may pick for this kind: hand-ins
    /// also come many in a zip.
    #[must_use]
    pub fn picked_extensions(self) -> &'static [&'static str] {
        match self {
            Self::ClassPack => &["sfclass"],
            Self::HandIn => &["sfhandin", "zip"],
            Self::CarryFile => &["sfcarry"],
            Self::Backup => &["sfbackup"],
            Self::ClassKey => &["sfkey"],
            Self::Pdf => &["pdf"],
            Self::Csv => &["csv"],
            Self::Roster => &["csv", "txt", "tsv", "zip"],
            Self::Xlsx => &["xlsx"],
            Self::Bank => &["csv", "xml", "zip"],
            Self::Catalogue => &["csv", "json"],
        }
    }

    /// The media type; our own are in the unregistered tree.
    #[must_use]
    pub fn media_type(self) -> &'static str {
        match self {
            Self::ClassPack => "application/x-surefoot-class",
            Self::HandIn => "application/x-surefoot-handin",
            Self::CarryFile => "application/x-surefoot-carry",
            Self::Backup => "application/x-surefoot-backup",
            Self::ClassKey => "application/x-surefoot-key",
            Self::Pdf => "application/pdf",
            Self::Xlsx => "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            Self::Csv | Self::Roster | Self::Bank | Self::Catalogue => "text/csv",
        }
    }
}

type Opener = Box<dyn FnOnce() -> Result<Box<dyn Read + Send>, Refusal> + Send>;

/// A file not opened yet: its name, and a way to read it once.
pub struct FileSource {
    name: String,
    open: Opener,
}

impl fmt::Debug for FileSource {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("FileSource")
            .field("name", &self.name)
            .finish_non_exhaustive()
    }
}

impl FileSource {
    /// A source that `open` opens when asked.
    pub fn new(
        name: impl Into<String>,
        open: impl FnOnce() -> io::Result<Box<dyn Read + Send>> + Send + 'static,
    ) -> Self {
        Self {
            name: name.into(),
            open: Box::new(|| open().map_err(|_| Refusal::Unreadable)),
        }
    }

    /// A source that is known not to be taken, so that it shows up in an account.
    pub fn refused(name: impl Into<String>, refusal: Refusal) -> Self {
        Self {
            name: name.into(),
            open: Box::new(|| Err(refusal)),
        }
    }

    /// A source that is already in memory.
    pub fn from_bytes(name: impl Into<String>, bytes: Vec<u8>) -> Self {
        Self::new(name, move || Ok(Box::new(io::Cursor::new(bytes))))
    }

    /// The file's name without its folder, for the account that a person reads.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Opens it for reading from the start.
    ///
    /// # Errors
    /// [`Refusal::Unreadable`] when it is gone, not a file, or not for us to read.
    pub fn open(self) -> Result<Box<dyn Read + Send>, Refusal> {
        (self.open)()
    }

    /// Reads the whole of it, but never more than `most_bytes`.
    ///
    /// # Errors
    /// [`Refusal::TooLarge`] as soon as one byte more than that has come,
    /// [`Refusal::Unreadable`] when it cannot be read.
    pub fn read(self, most_bytes: u64) -> Result<Vec<u8>, Refusal> {
        let mut bytes = Vec::new();
        self.open()?
            .take(most_bytes.saturating_add(1))
            .read_to_end(&mut bytes)
            .map_err(|_| Refusal::Unreadable)?;
        let found_bytes = bytes.len() as u64;
        if found_bytes > most_bytes {
            return Err(Refusal::TooLarge {
                found_bytes,
                most_bytes,
            });
        }
        Ok(bytes)
    }
}

/// What a shell offers for files. Calls may wait for the person, so they are
/// made off the screen's thread; `None` always means that the person decided
/// against it.
pub trait FileDialogs: Send + Sync {
    /// Lets the person pick one file.
    ///
    /// # Errors
    /// [`CallError::Files`] when no picker can be shown.
    fn pick_file(&self, kind: FileKind) -> Result<Option<FileSource>, CallError>;

    /// Lets the person pick files, in the order of their names.
    ///
    /// # Errors
    /// [`CallError::Files`] when no picker can be shown.
    fn pick_files(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError>;

    /// Lets the person pick a folder and gives its files of that kind, in the
    /// order of their names.
    ///
    /// # Errors
    /// [`CallError::Files`] when no picker can be shown or the folder cannot be read.
    fn pick_folder(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError>;

    /// Lets the person pick a folder that stays where it is; `None` also where
    /// folders have no path.
    ///
    /// # Errors
    /// [`CallError::Files`] when no picker can be shown.
    fn pick_folder_path(&self) -> Result<Option<std::path::PathBuf>, CallError> {
        Ok(None)
    }

    /// Lets the person say where a file goes, and puts it there whole or not
    /// at all. Gives the place in words.
    ///
    /// # Errors
    /// [`CallError::Files`] when it could not be written; nothing half-written stays.
    fn save(
        &self,
        suggested_name: &str,
        kind: FileKind,
        bytes: &[u8],
    ) -> Result<Option<String>, CallError>;

    /// Whether [`FileDialogs::share`] is there.
    fn shares(&self) -> bool {
        false
    }

    /// Hands a file to another program by the system's share sheet; `false`
    /// where there is none, so that [`FileDialogs::save`] is the way.
    ///
    /// # Errors
    /// [`CallError::Files`] when the file could not be put where it is shared from.
    fn share(&self, _name: &str, _kind: FileKind, _bytes: &[u8]) -> Result<bool, CallError> {
        Ok(false)
    }

    /// Files that another program handed over ("open with") since the last
    /// time this was asked. They may come before the screens are there.
    fn take_opened(&self) -> Vec<FileSource> {
        Vec::new()
    }
}
