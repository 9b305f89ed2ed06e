//! A provider of documents over a real folder, with the habits that providers have.

use std::cell::Cell;
use std::fs::{self, File};
use std::io::{self, Read as _, Write as _};
use std::os::unix::fs::MetadataExt as _;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::SystemTime;
use surefoot_app::{ClassFolder, Document, DocumentKind, DocumentTree, Wanted, folder_of};

/// Stands between a name and a number on the disk where two documents have one name.
const AGAIN: char = '\u{1}';

/// How a provider renames.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Renames {
    Yes,
    /// It says so, and fails.
    SaysSo,
    No,
}

/// What a provider does about a second document with one name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Second {
    /// It counts: "name (1)".
    Counts,
    /// Both have the name.
    Same,
    /// It makes none.
    Refuses,
    /// A renamed document replaces the other; a new one is counted.
    Replaces,
}

/// What a provider does to what is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Writes {
    Whole,
    /// The write stores half of the bytes and reports no error.
    HalfUntold,
    /// It fails when half of it is there.
    Fails(io::ErrorKind),
    /// The whole is there a little later.
    Late,
}

/// The habits of a provider.
#[derive(Debug, Clone, Copy)]
pub struct Habits {
    pub renames: Renames,
    pub second: Second,
    pub writes: Writes,
    /// Whether it adds an ending to names.
    pub adds_ending: bool,
    /// Whether it knows when documents changed.
    pub knows_times: bool,
    /// Whether a document keeps its id under another name.
    pub keeps_ids: bool,
}

/// A provider of the tablet's own folders, as Android has it (from memory).
pub const OF_THE_TABLET: Habits = Habits {
    renames: Renames::Yes,
    second: Second::Counts,
    writes: Writes::Whole,
    adds_ending: false,
    knows_times: true,
    keeps_ids: false,
};

/// One that keeps documents elsewhere and can do little.
pub const OF_A_DRIVE: Habits = Habits {
    renames: Renames::No,
    second: Second::Same,
    writes: Writes::Whole,
    adds_ending: false,
    knows_times: false,
    keeps_ids: true,
};

thread_local! {
    /// The habits of the providers that this test uses from now on.
    pub static HABITS: Cell<Habits> = const { Cell::new(OF_THE_TABLET) };
}

/// The class folder at a path, through a provider.
pub fn provided_at(at: &Path) -> Arc<dyn ClassFolder> {
    folder_of(Arc::new(Provider::new(at, HABITS.get())))
}

pub struct Provider {
    folder: PathBuf,
    habits: Habits,
    late: AtomicU32,
    /// Requests until the program is ended.
    left: Arc<AtomicU32>,
}

impl Provider {
    pub fn new(folder: &Path, habits: Habits) -> Self {
        Self::ended_after(folder, habits, u32::MAX)
    }

    /// One whose program is ended after so many requests, in the middle of the last one.
    pub fn ended_after(folder: &Path, habits: Habits, requests: u32) -> Self {
        Self {
            folder: folder.to_owned(),
            habits,
            late: AtomicU32::new(0),
            left: Arc::new(AtomicU32::new(requests)),
        }
    }

    /// How many requests are left, to be looked at afterwards.
    pub fn left(&self) -> Arc<AtomicU32> {
        Arc::clone(&self.left)
    }

    fn step(&self) -> io::Result<()> {
        let taken = (self.left).fetch_update(Ordering::SeqCst, Ordering::SeqCst, |left| {
            left.checked_sub(1)
        });
        match taken {
            Ok(_) => Ok(()),
            Err(_) => Err(io::Error::other("the program was ended")),
        }
    }

    fn id_of(&self, on_disk: &str) -> io::Result<String> {
        if self.habits.keeps_ids {
            let about = fs::symlink_metadata(self.folder.join(on_disk))?;
            let made = about.created()?.duration_since(SystemTime::UNIX_EPOCH);
            // The disk gives the number of a removed file to the next one.
            return Ok(format!("id {} {}", about.ino(), made.unwrap().as_nanos()));
        }
        Ok(format!("root:{on_disk}"))
    }

    fn path_of(&self, id: &str) -> io::Result<PathBuf> {
        if let Some(on_disk) = id.strip_prefix("root:") {
            let path = self.folder.join(on_disk);
            fs::symlink_metadata(&path)?;
            return Ok(path);
        }
        for entry in fs::read_dir(&self.folder)? {
            let name = entry?.file_name().into_string().unwrap();
            if self.id_of(&name).is_ok_and(|found| found == id) {
                return Ok(self.folder.join(name));
            }
        }
        Err(io::ErrorKind::NotFound.into())
    }

    fn document(&self, on_disk: &str) -> io::Result<Document> {
        let about = fs::symlink_metadata(self.folder.join(on_disk))?;
        let time = about.modified()?.duration_since(SystemTime::UNIX_EPOCH);
        let millis = u64::try_from(time.unwrap().as_millis()).unwrap();
        Ok(Document {
            id: self.id_of(on_disk)?,
            name: on_disk.split(AGAIN).next().unwrap().to_owned(),
            kind: if about.is_dir() {
                DocumentKind::Folder
            } else if about.is_file() {
                DocumentKind::File
            } else {
                DocumentKind::Other
            },
            can_rename: self.habits.renames != Renames::No,
            size_bytes: Some(about.len()),
            changed_millis: self.habits.knows_times.then_some(millis),
        })
    }

    /// The name on the disk for a document that asks for one.
    fn free(&self, name: &str) -> io::Result<String> {
        let mut free = name.to_owned();
        if self.habits.adds_ending {
            free.push_str(".bin");
        }
        let (stem, extension) = free.rsplit_once('.').unwrap();
        let (stem, extension) = (stem.to_owned(), extension.to_owned());
        for number in 1.. {
            if fs::symlink_metadata(self.folder.join(&free)).is_err() {
                break;
            }
            free = match self.habits.second {
                Second::Counts | Second::Replaces => format!("{stem} ({number}).{extension}"),
                Second::Same => format!("{stem}.{extension}{AGAIN}{number}"),
                Second::Refuses => return Err(io::ErrorKind::AlreadyExists.into()),
            };
        }
        Ok(free)
    }
}

impl DocumentTree for Provider {
    fn children(&self, wanted: &Wanted, most: usize) -> io::Result<(Vec<Document>, bool)> {
        self.step()?;
        let mut found = Vec::new();
        let mut more = false;
        for entry in fs::read_dir(&self.folder)? {
            let on_disk = entry?.file_name().into_string().unwrap();
            let name = on_disk.split(AGAIN).next().unwrap();
            if !wanted.has(name) {
                continue;
            }
            if found.len() >= most && !wanted.names.contains(name) {
                more = true;
                continue;
            }
            // One that went meanwhile is not there.
            found.extend(self.document(&on_disk).ok());
        }
        Ok((found, more))
    }

    fn read(&self, id: &str, most_bytes: u64) -> io::Result<Vec<u8>> {
        self.step()?;
        let mut bytes = Vec::new();
        File::open(self.path_of(id)?)?
            .take(most_bytes)
            .read_to_end(&mut bytes)?;
        let late = (self.late).fetch_update(Ordering::SeqCst, Ordering::SeqCst, |late| {
            late.checked_sub(1)
        });
        if late.is_ok() {
            bytes.truncate(bytes.len() / 2);
        }
        Ok(bytes)
    }

    fn create(&self, name: &str) -> io::Result<Document> {
        self.step()?;
        let on_disk = self.free(name)?;
        File::create_new(self.folder.join(&on_disk))?;
        self.document(&on_disk)
    }

    fn write(&self, id: &str, bytes: &[u8]) -> io::Result<()> {
        let path = self.path_of(id)?;
        let mut file = File::options().write(true).open(path)?;
        let (first, second) = bytes.split_at(bytes.len() / 2);
        file.write_all(first)?;
        self.step()?;
        match self.habits.writes {
            Writes::HalfUntold => return Ok(()),
            Writes::Fails(kind) => return Err(kind.into()),
            Writes::Late => self.late.store(2, Ordering::SeqCst),
            Writes::Whole => {}
        }
        file.write_all(second)
    }

    fn rename(&self, id: &str, name: &str) -> io::Result<Document> {
        self.step()?;
        if self.habits.renames != Renames::Yes {
            return Err(io::ErrorKind::Unsupported.into());
        }
        let on_disk = match self.habits.second {
            Second::Replaces => name.to_owned(),
            _ => self.free(name)?,
        };
        fs::rename(self.path_of(id)?, self.folder.join(&on_disk))?;
        self.document(&on_disk)
    }

    fn remove(&self, id: &str) -> io::Result<()> {
        self.step()?;
        let path = self.path_of(id)?;
        fs::remove_file(&path)?;
        // Another one with the name has it alone now.
        let again = format!("{}{AGAIN}1", path.display());
        if self.habits.keeps_ids && Path::new(&again).exists() {
            fs::rename(again, path)?;
        }
        Ok(())
    }
}
