//! What a shell offers to pick, save and share files.
//!
//! A picked file may have no path: on Android it is an address that only the system can open.
//! So a file is a name and a way to read it.

use super::class_folder::{ClassFolder, folder_at};
pub use super::file_kind::FileKind;
use crate::error::CallError;
use std::collections::BTreeSet;
use std::fmt;
use std::io::{self, Read};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use surefoot_exchange::Refusal;

type Opener = Box<dyn FnOnce() -> Result<Box<dyn Read + Send>, Refusal> + Send>;

/// A file that is not open yet: its name, and a way to read it once.
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
    /// A file that `open` opens later.
    pub fn new(
        name: impl Into<String>,
        open: impl FnOnce() -> io::Result<Box<dyn Read + Send>> + Send + 'static,
    ) -> Self {
        Self {
            name: name.into(),
            open: Box::new(|| open().map_err(|_| Refusal::Unreadable)),
        }
    }

    /// A file that is refused already; the import report shows it.
    pub fn refused(name: impl Into<String>, refusal: Refusal) -> Self {
        Self {
            name: name.into(),
            open: Box::new(|| Err(refusal)),
        }
    }

    /// A file in memory.
    pub fn from_bytes(name: impl Into<String>, bytes: Vec<u8>) -> Self {
        Self::new(name, move || Ok(Box::new(io::Cursor::new(bytes))))
    }

    /// The file's name without its folder, for the import report.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Opens it.
    ///
    /// # Errors
    /// Returns [`Refusal::Unreadable`] if it is missing, no file, or may not be read.
    pub fn open(self) -> Result<Box<dyn Read + Send>, Refusal> {
        (self.open)()
    }

    /// Reads its first bytes, at most `most_bytes`. Returns them and the file, which still has
    /// them. A file that cannot be opened has none, and says so when it is opened again.
    #[must_use]
    pub fn peek(self, most_bytes: u64) -> (Vec<u8>, Self) {
        let mut head = Vec::new();
        let opened = (self.open)().and_then(|mut reader| {
            match (&mut reader).take(most_bytes).read_to_end(&mut head) {
                Ok(_) => Ok(reader),
                Err(_) => Err(Refusal::Unreadable),
            }
        });
        let again = io::Cursor::new(head.clone());
        let open: Opener = Box::new(move || Ok(Box::new(again.chain(opened?))));
        (
            head,
            Self {
                name: self.name,
                open,
            },
        )
    }

    /// Reads all of it, but no more than `most_bytes`.
    ///
    /// # Errors
    /// Returns [`Refusal::TooLarge`] if it has more bytes, [`Refusal::Unreadable`] if it cannot be
    /// read.
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

/// What a shell offers to pick, save and share files. Calls wait for the person, so they run
/// outside the window's thread. `None` means that the person cancelled.
pub trait FileDialogs: Send + Sync {
    /// Lets the person pick one file.
    ///
    /// # Errors
    /// Returns [`CallError::Files`] if no picker can be shown.
    fn pick_file(&self, kind: FileKind) -> Result<Option<FileSource>, CallError>;

    /// Lets the person pick files. Returns them in the order of their names.
    ///
    /// # Errors
    /// Returns [`CallError::Files`] if no picker can be shown.
    fn pick_files(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError>;

    /// Lets the person pick a folder. Returns its files of one kind in the order of their names.
    ///
    /// # Errors
    /// Returns [`CallError::Files`] if no picker can be shown or the folder cannot be read.
    fn pick_folder(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError>;

    /// Whether [`FileDialogs::pick_class_folder`] works here.
    fn has_class_folders(&self) -> bool {
        false
    }

    /// Lets the person pick a class folder. Returns its path, or what this shell knows it by.
    ///
    /// # Errors
    /// Returns [`CallError::Files`] if no picker can be shown.
    fn pick_class_folder(&self) -> Result<Option<PathBuf>, CallError> {
        Ok(None)
    }

    /// The class folder that was picked so.
    fn class_folder(&self, at: &Path) -> Arc<dyn ClassFolder> {
        folder_at(at)
    }

    /// The name of a class folder for people.
    fn class_folder_name(&self, at: &Path) -> String {
        at.display().to_string()
    }

    /// Gives back the rights to class folders that were picked, except to those that are used.
    fn release_class_folders(&self, _used: &BTreeSet<PathBuf>) {}

    /// Lets the person choose a place for a file and writes it there, whole or not at all. Returns
    /// the place in words.
    ///
    /// # Errors
    /// Returns [`CallError::Files`] if the file could not be written.
    fn save(
        &self,
        suggested_name: &str,
        kind: FileKind,
        bytes: &[u8],
    ) -> Result<Option<String>, CallError>;

    /// Whether [`FileDialogs::share`] works here.
    fn shares(&self) -> bool {
        false
    }

    /// Gives a file to another program by the system's share sheet. Returns false without a share
    /// sheet; the caller then uses [`FileDialogs::save`].
    ///
    /// # Errors
    /// Returns [`CallError::Files`] if the file could not be written for sharing.
    fn share(&self, _name: &str, _kind: FileKind, _bytes: &[u8]) -> Result<bool, CallError> {
        Ok(false)
    }

    /// Whether a student can print here.
    fn prints(&self) -> bool {
        cfg!(feature = "desk")
    }

    /// Returns the files that another program opened with this one since the last call. They may
    /// come before the screens are ready.
    fn take_opened(&self) -> Vec<FileSource> {
        Vec::new()
    }
}

/// A sealed file until its passphrase is typed.
pub(super) enum Sealed {
    /// Not read yet, with the largest size that is read.
    Waiting(FileSource, u64),
    /// Read.
    Read(Vec<u8>),
}
