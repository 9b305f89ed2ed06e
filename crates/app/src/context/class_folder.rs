//! The class folder: a folder that a school shares, through which class packs and hand-ins travel.
//!
//! It may be away, slow, full or read-only, and whoever can write into it may put anything there.

use crate::context::file_kind::FileKind;
use crate::context::random;
use chrono::{NaiveDate, NaiveTime};
use serde::{Deserialize, Serialize};
use sha2::{Digest as _, Sha256};
use std::collections::BTreeSet;
use std::fmt;
use std::fs::{self, File};
use std::io::{self, Read as _, Write as _};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::{Duration, SystemTime};
use ts_rs::TS;

/// Files of a class folder that are looked at; a class leaves about a hundred. Files with other
/// names than ours do not count.
const MOST_LISTED: usize = 20_000;

/// A file of a class folder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FolderEntry {
    /// Its name.
    pub name: String,
    /// What changes with its content.
    pub mark: Mark,
}

/// What changes when a file's content does, as far as a folder tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Mark {
    /// Its size.
    pub size_bytes: u64,
    /// Its time of change, in milliseconds since 1970.
    pub changed_millis: u64,
}

/// The files of a class folder that have names like ours.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Listed {
    /// The files, by name.
    pub entries: Vec<FolderEntry>,
    /// Whether there are more than are looked at.
    pub too_many: bool,
}

/// What a class folder can do. Every function may wait for a network, so none is called while the
/// screens wait.
pub trait ClassFolder: Send + Sync {
    /// Lists the regular files that [`is_named_like_ours`]; no links, no folders. If there are too
    /// many, those named `first` are among the listed, then those with a name that a program gave.
    ///
    /// # Errors
    /// Returns the system's error if the folder is away.
    fn list(&self, first: &BTreeSet<String>) -> io::Result<Listed>;

    /// Reads a file, at most `most_bytes` of it.
    ///
    /// # Errors
    /// Returns the system's error if there is no such regular file.
    fn read(&self, name: &str, most_bytes: u64) -> io::Result<Vec<u8>>;

    /// Writes a file whole or not at all, in place of one with this name, and sets its time of
    /// change.
    ///
    /// # Errors
    /// Returns the system's error, [`io::ErrorKind::IsADirectory`] if a folder has the name; the
    /// earlier file is unchanged then.
    fn write(&self, name: &str, bytes: &[u8], changed: SystemTime) -> io::Result<()>;

    /// Removes a file.
    ///
    /// # Errors
    /// Returns the system's error; the file is still there then.
    fn remove(&self, name: &str) -> io::Result<()>;
}

/// The class folder at a path.
#[must_use]
pub fn folder_at(path: &Path) -> Arc<dyn ClassFolder> {
    Arc::new(PathFolder(path.to_owned()))
}

/// A class folder with a path.
struct PathFolder(PathBuf);

impl PathFolder {
    /// The path of a file. A name cannot lead out of the folder.
    fn path(&self, name: &str) -> io::Result<PathBuf> {
        if Path::new(name).file_name() != Some(name.as_ref()) {
            return Err(io::ErrorKind::InvalidInput.into());
        }
        Ok(self.0.join(name))
    }
}

impl ClassFolder for PathFolder {
    fn list(&self, first: &BTreeSet<String>) -> io::Result<Listed> {
        let mut names = Vec::new();
        for entry in fs::read_dir(&self.0)? {
            names.extend((entry?.file_name().into_string().ok()).filter(|n| is_named_like_ours(n)));
        }
        let too_many = keep_most(&mut names, first);
        let mut entries = Vec::new();
        for name in names {
            // A file that went meanwhile is not there.
            let Ok(about) = fs::symlink_metadata(self.0.join(&name)) else {
                continue;
            };
            if about.is_file() {
                entries.push(FolderEntry {
                    name,
                    mark: Mark {
                        size_bytes: about.len(),
                        changed_millis: millis(about.modified().ok()),
                    },
                });
            }
        }
        Ok(Listed { entries, too_many })
    }

    fn read(&self, name: &str, most_bytes: u64) -> io::Result<Vec<u8>> {
        let path = self.path(name)?;
        if !fs::symlink_metadata(&path)?.is_file() {
            return Err(io::ErrorKind::InvalidInput.into());
        }
        let mut bytes = Vec::new();
        (open_regular(&path)?.take(most_bytes)).read_to_end(&mut bytes)?;
        Ok(bytes)
    }

    fn write(&self, name: &str, bytes: &[u8], changed: SystemTime) -> io::Result<()> {
        let path = self.path(name)?;
        // One name for the part, so that a program that is killed leaves one file at most.
        let mut part = self.path(&format!(".{name}.part"))?;
        if let Err(error) = fs::remove_file(&part)
            && error.kind() != io::ErrorKind::NotFound
        {
            // Somebody put a folder in the way.
            let signs = random::hex::<4>().map_err(|_| io::ErrorKind::Other)?;
            part = self.path(&format!(".{name}.{signs}.part"))?;
        }
        let write = || {
            // A link that somebody put here is not followed.
            let mut file = File::options().write(true).create_new(true).open(&part)?;
            file.write_all(bytes)?;
            // Some folders on a network keep their own times.
            let _ = file.set_modified(changed);
            file.sync_all()?;
            fs::rename(&part, &path).map_err(|error| {
                if path.is_dir() {
                    return io::ErrorKind::IsADirectory.into();
                }
                error
            })
        };
        let written = write();
        if written.is_err() {
            let _ = fs::remove_file(&part);
        }
        written
    }

    fn remove(&self, name: &str) -> io::Result<()> {
        fs::remove_file(self.path(name)?)
    }
}

/// Sorts names, and keeps only as many as are looked at. Returns whether there were more.
pub(crate) fn keep_most(names: &mut Vec<String>, first: &BTreeSet<String>) -> bool {
    let too_many = names.len() > MOST_LISTED;
    if too_many {
        // Always the same ones, so that a file is not new in every round.
        names.sort_by_cached_key(|name| {
            let given = name.starts_with("class-pack-") || name.starts_with("hand-in-");
            (!first.contains(name), !given, name.clone())
        });
        names.truncate(MOST_LISTED);
    }
    names.sort();
    too_many
}

/// Opens a regular file. Somebody may put something else in its place after any look at it: a link
/// leads out of the folder, and opening a pipe would never return.
fn open_regular(path: &Path) -> io::Result<File> {
    let mut options = File::options();
    options.read(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::custom_flags(
        &mut options,
        libc::O_NOFOLLOW | libc::O_NONBLOCK,
    );
    let file = options.open(path)?;
    if !file.metadata()?.is_file() {
        return Err(io::ErrorKind::InvalidInput.into());
    }
    Ok(file)
}

fn millis(time: Option<SystemTime>) -> u64 {
    time.and_then(|at| at.duration_since(SystemTime::UNIX_EPOCH).ok())
        .map_or(0, |since| {
            u64::try_from(since.as_millis()).unwrap_or(u64::MAX)
        })
}

/// Why a folder without a path cannot be used, where an [`io::ErrorKind`] does not say it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TreeFault {
    /// The right to use the tree is gone: it was withdrawn, or never kept.
    NotAllowed,
    /// The provider gives documents other names than those asked for.
    ChangesNames,
}

impl fmt::Display for TreeFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotAllowed => "the right to use the folder is gone",
            Self::ChangesNames => "the folder changes the names of files",
        })
    }
}

impl std::error::Error for TreeFault {}

impl From<TreeFault> for io::Error {
    fn from(fault: TreeFault) -> Self {
        Self::other(fault)
    }
}

/// Why a class folder cannot be used now.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum FolderTrouble {
    /// It is not there.
    Away,
    /// It has no room.
    Full,
    /// Nobody may write into it from this device.
    ReadOnly,
    /// It does not answer.
    Silent,
    /// It is there, and has no class pack of this class.
    NoPack,
    /// It has so many files that not all are looked at.
    TooMany,
    /// A folder has the name of a file that goes there.
    InTheWay,
    /// The system does not let this device use it any more, until it is shown again.
    NotAllowed,
    /// It gives files other names.
    ChangesNames,
    /// The system gives another reason.
    Other,
}

impl From<io::Error> for FolderTrouble {
    fn from(error: io::Error) -> Self {
        use io::ErrorKind as Kind;
        if let Some(fault) = error
            .get_ref()
            .and_then(|fault| fault.downcast_ref::<TreeFault>())
        {
            return match fault {
                TreeFault::NotAllowed => Self::NotAllowed,
                TreeFault::ChangesNames => Self::ChangesNames,
            };
        }
        match error.kind() {
            Kind::NotFound
            | Kind::NotADirectory
            | Kind::StaleNetworkFileHandle
            | Kind::HostUnreachable
            | Kind::NetworkUnreachable
            | Kind::NetworkDown
            | Kind::NotConnected => Self::Away,
            Kind::StorageFull | Kind::QuotaExceeded | Kind::FileTooLarge => Self::Full,
            Kind::PermissionDenied | Kind::ReadOnlyFilesystem => Self::ReadOnly,
            Kind::TimedOut => Self::Silent,
            Kind::IsADirectory => Self::InTheWay,
            _ => Self::Other,
        }
    }
}

/// The time of change of a file that is made on a date: noon UTC, so that it shows no time of day.
/// `number` counts the versions of the file of that date, from any number on. Two seconds are added
/// for each, because some programs that copy folders look only at size and time, and some disks keep
/// two seconds apart.
pub(crate) fn noon(date: NaiveDate, number: u32) -> SystemTime {
    const VERSIONS: u32 = 1_800;
    let noon = date.and_time(NaiveTime::MIN).and_utc().timestamp() + 12 * 60 * 60;
    let after = Duration::from_secs(u64::from(number % VERSIONS) * 2);
    SystemTime::UNIX_EPOCH + Duration::from_secs(u64::try_from(noon).unwrap_or(0)) + after
}

/// Whether a name may be that of a class pack, a hand-in, or several hand-ins.
#[must_use]
pub fn is_named_like_ours(name: &str) -> bool {
    let ours = [
        FileKind::ClassPack.extension(),
        FileKind::HandIn.extension(),
        "zip",
    ];
    !is_unfinished(name) && ours.iter().any(|extension| has_extension(name, extension))
}

/// Whether a name is one under which programs that copy folders keep unfinished files.
pub(crate) fn is_unfinished(name: &str) -> bool {
    name.starts_with(['.', '~'])
}

/// Whether a name has an extension, in any case.
pub(crate) fn has_extension(name: &str, extension: &str) -> bool {
    Path::new(name)
        .extension()
        .is_some_and(|found| found.eq_ignore_ascii_case(extension))
}

/// Tells files apart by their content, and says nothing of their names.
pub(crate) fn digest_of(parts: &[&[u8]]) -> String {
    let mut digest = Sha256::new();
    for part in parts {
        digest.update(part);
    }
    let all = digest.finalize();
    all.iter()
        .take(16)
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_gets_noon_of_its_date_and_no_two_versions_of_a_day_have_one_time() {
        let date: NaiveDate = "2026-11-30".parse().unwrap();
        let folder = tempfile::tempdir().unwrap();
        let shared = PathFolder(folder.path().to_owned());
        let mut marks = Vec::new();
        for number in 0..3 {
            let changed = noon(date, number);
            shared.write("a.zip", b"same size", changed).unwrap();
            let listed = shared.list(&BTreeSet::new()).unwrap();
            marks.push(listed.entries[0].mark.changed_millis);
        }
        // 2026-11-30T12:00:00Z, by `date -u -d @1796040000`.
        assert_eq!(
            marks,
            [1_796_040_000_000, 1_796_040_002_000, 1_796_040_004_000]
        );
    }

    #[cfg(unix)]
    #[test]
    fn a_pipe_or_a_link_that_takes_the_place_of_a_file_is_not_opened() {
        let folder = tempfile::tempdir().unwrap();
        let at = |name| folder.path().join(name);
        fs::write(at("file"), "mine").unwrap();
        std::os::unix::fs::symlink(at("file"), at("link")).unwrap();
        let made = std::process::Command::new("mkfifo")
            .arg(at("pipe"))
            .status();
        assert!(made.unwrap().success());
        assert!(open_regular(&at("file")).is_ok());
        for name in ["pipe", "link"] {
            assert!(open_regular(&at(name)).is_err(), "{name}");
        }
        assert!(open_regular(folder.path()).is_err());
    }

    #[cfg(unix)]
    #[test]
    fn links_in_the_way_of_a_file_are_replaced_and_lead_nowhere() {
        let outside = tempfile::tempdir().unwrap();
        let mine = outside.path().join("mine");
        fs::write(&mine, "kept").unwrap();
        let folder = tempfile::tempdir().unwrap();
        for name in ["a.zip", ".a.zip.part"] {
            std::os::unix::fs::symlink(&mine, folder.path().join(name)).unwrap();
        }
        let shared = PathFolder(folder.path().to_owned());
        assert!(shared.read("a.zip", 9).is_err());
        assert_eq!(shared.list(&BTreeSet::new()).unwrap(), Listed::default());
        shared.write("a.zip", b"new", SystemTime::now()).unwrap();
        assert_eq!(fs::read(&mine).unwrap(), b"kept");
        assert_eq!(shared.read("a.zip", 9).unwrap(), b"new");
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
        for name in ["../a", "", "..", "b/a"] {
            assert!(
                shared.write(name, b"", SystemTime::now()).is_err(),
                "{name}"
            );
        }
    }
}
