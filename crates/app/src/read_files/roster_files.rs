//! Reads roster files, also from the zip of a OneRoster export.

use super::zip_files::{ZipRoom, extension_is, leads_out};
use crate::context::file_dialogs::FileSource;
use crate::error::CallError;
use std::io::{Read, Seek};
use surefoot_desk::MOST_ROSTER_BYTES;
use surefoot_exchange::Refusal;
use zip::ZipArchive;

/// Tables of a zip at most. The standard has about twenty.
const MOST_TABLES: usize = 64;

/// Bytes of all picked files at most.
const MOST_BYTES: u64 = 64 * 1024 * 1024;

/// Reads the picked files; returns names and bytes.
///
/// # Errors
/// Returns [`CallError::Refused`] for a file that cannot be read or is too large.
pub(crate) fn roster_files(sources: Vec<FileSource>) -> Result<Vec<(String, Vec<u8>)>, CallError> {
    let mut room = ZipRoom::new(MOST_BYTES);
    let mut files = Vec::new();
    for source in sources {
        let name = source.name().to_owned();
        if extension_is(&name, "zip") {
            unzip(room.open(source)?, &mut room, &mut files)?;
        } else {
            let bytes = source.read(MOST_ROSTER_BYTES)?;
            files.push((name, room.unpack(&*bytes, MOST_ROSTER_BYTES)?));
        }
    }
    Ok(files)
}

fn unzip(
    mut archive: ZipArchive<impl Read + Seek>,
    room: &mut ZipRoom,
    files: &mut Vec<(String, Vec<u8>)>,
) -> Result<(), Refusal> {
    let mut taken = 0;
    for place in 0..archive.len() {
        let entry = archive.by_index(place).map_err(|_| Refusal::Unreadable)?;
        let name = String::from_utf8_lossy(entry.name_raw()).into_owned();
        if entry.is_dir()
            || !extension_is(&name, "csv")
            || leads_out(&name)
            || name.starts_with("__MACOSX/")
        {
            continue;
        }
        taken += 1;
        if taken > MOST_TABLES {
            return Err(Refusal::TooManyEntries {
                most: MOST_TABLES as u64,
            });
        }
        let table = room.unpack(entry, MOST_ROSTER_BYTES)?;
        if table.len() as u64 > MOST_ROSTER_BYTES {
            return Err(Refusal::UnpacksTooLarge {
                most_bytes: MOST_ROSTER_BYTES,
            });
        }
        // The reader finds tables by their names without folders.
        let own_name = name.rsplit('/').next().unwrap_or(&name);
        files.push((own_name.to_owned(), table));
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::{Cursor, Write as _};
    use zip::ZipWriter;
    use zip::write::SimpleFileOptions;

    fn zipped(entries: &[(&str, Vec<u8>)]) -> FileSource {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        for (name, bytes) in entries {
            zip.start_file(*name, SimpleFileOptions::default()).unwrap();
            zip.write_all(bytes).unwrap();
        }
        FileSource::from_bytes("export.zip", zip.finish().unwrap().into_inner())
    }

    #[test]
    fn a_zip_gives_its_tables_under_their_own_names() {
        let files = roster_files(vec![
            zipped(&[
                ("export/users.csv", b"a".to_vec()),
                ("classes.csv", b"b".to_vec()),
                ("readme.txt", b"c".to_vec()),
                ("../out.csv", b"d".to_vec()),
            ]),
            FileSource::from_bytes("names.txt", b"Ilse".to_vec()),
        ])
        .unwrap();
        let names: Vec<&str> = files.iter().map(|(name, _)| name.as_str()).collect();
        assert_eq!(names, ["users.csv", "classes.csv", "names.txt"]);
    }

    #[test]
    fn a_damaged_zip_and_one_without_end_are_refused() {
        let no_zip = FileSource::from_bytes("x.zip", b"no zip".to_vec());
        let refused = |source| match roster_files(vec![source]) {
            Err(CallError::Refused { refusal }) => refusal,
            other => panic!("{other:?}"),
        };
        assert_eq!(refused(no_zip), Refusal::Damaged);
        let long = vec![b'x'; MOST_ROSTER_BYTES as usize + 1];
        assert_eq!(
            refused(zipped(&[("users.csv", long)])),
            Refusal::UnpacksTooLarge {
                most_bytes: MOST_ROSTER_BYTES
            }
        );
        let many: Vec<(String, Vec<u8>)> = (0..=MOST_TABLES)
            .map(|n| (format!("{n}.csv"), Vec::new()))
            .collect();
        let many: Vec<(&str, Vec<u8>)> = many
            .iter()
            .map(|(name, bytes)| (name.as_str(), bytes.clone()))
            .collect();
        assert!(matches!(
            refused(zipped(&many)),
            Refusal::TooManyEntries { .. }
        ));
    }

    #[test]
    fn what_is_too_large_together_is_refused() {
        let table = vec![b'x'; MOST_ROSTER_BYTES as usize];
        let some = MOST_BYTES / MOST_ROSTER_BYTES;
        let zip = || zipped(&[("users.csv", table.clone())]);
        let picked = |number| roster_files((0..number).map(|_| zip()).collect());
        assert_eq!(picked(some).unwrap().len() as u64, some);
        let refusal = Refusal::TooMuchAtOnce;
        assert_eq!(picked(some + 1), Err(CallError::Refused { refusal }));
    }
}
