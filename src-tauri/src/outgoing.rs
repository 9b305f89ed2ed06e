//! Files on their way to another program, which reads them itself, and perhaps much later.

use std::fs::{self, File};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime, UNIX_EPOCH};
use surefoot_app::{CallError, wipe_folder};

/// How long a shared file stays. A mail may read it only when it is sent.
const KEPT: Duration = Duration::from_secs(24 * 60 * 60);

/// Writes a file through to the disk. Behind a pipe there is none, so what the pipe took counts.
pub fn sync(file: &File) -> io::Result<()> {
    match file.sync_all() {
        Err(error)
            if matches!(
                error.kind(),
                ErrorKind::InvalidInput | ErrorKind::Unsupported
            ) =>
        {
            Ok(())
        }
        done => done,
    }
}

/// Makes the folder for a file that is shared at `now`, inside `parent`. Its name is the time, in
/// seconds.
pub fn folder_for(parent: &Path, now: SystemTime) -> Result<PathBuf, CallError> {
    let folder = parent.join(since_epoch(now).as_secs().to_string());
    fs::create_dir_all(&folder).map_err(files)?;
    Ok(folder)
}

/// Wipes what was shared more than a day before `now`, or at no time that a clock gives.
///
/// # Errors
/// [`CallError::Files`]; then some of it may be gone.
pub fn wipe_old(parent: &Path, now: SystemTime) -> Result<(), CallError> {
    let entries = match fs::read_dir(parent) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(()),
        found => found.map_err(files)?,
    };
    for entry in entries {
        let entry = entry.map_err(files)?;
        let shared_at = entry.file_name().to_str().and_then(|n| n.parse().ok());
        let age = shared_at.map(|at| since_epoch(now).abs_diff(Duration::from_secs(at)));
        if age.is_none_or(|age| age > KEPT) {
            wipe_folder(&entry.path())?;
        }
    }
    Ok(())
}

fn since_epoch(now: SystemTime) -> Duration {
    now.duration_since(UNIX_EPOCH).unwrap_or_default()
}

fn files(error: io::Error) -> CallError {
    CallError::Files {
        detail: error.to_string(),
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn a_shared_file_stays_for_a_day() {
        let parent = tempfile::tempdir().unwrap();
        let begin = UNIX_EPOCH + Duration::from_secs(1_800_000_000);
        let first = folder_for(parent.path(), begin).unwrap();
        fs::write(first.join("a.sfhandin"), b"a").unwrap();
        wipe_old(parent.path(), begin + KEPT).unwrap();
        assert!(first.join("a.sfhandin").exists());
        let second = folder_for(parent.path(), begin + KEPT).unwrap();
        wipe_old(parent.path(), begin + KEPT + Duration::from_secs(1)).unwrap();
        assert!(!first.exists());
        assert!(second.exists());
        // A clock that was set back by years keeps nothing for years.
        wipe_old(parent.path(), UNIX_EPOCH).unwrap();
        assert!(!second.exists());
        wipe_old(&parent.path().join("none"), begin).unwrap();
    }

    #[cfg(unix)]
    #[test]
    fn what_a_pipe_took_is_written() {
        use std::io::{Read as _, Write as _};
        let (mut reader, writer) = io::pipe().unwrap();
        let mut file = File::from(std::os::fd::OwnedFd::from(writer));
        file.write_all(b"all of it").unwrap();
        assert!(file.sync_all().is_err(), "a pipe cannot be synced");
        sync(&file).unwrap();
        drop(file);
        let mut read = String::new();
        reader.read_to_string(&mut read).unwrap();
        assert_eq!(read, "all of it");
    }
}
