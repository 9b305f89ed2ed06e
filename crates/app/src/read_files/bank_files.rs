//! Reads question banks, also from a zip.

use super::zip_files::{ZipRoom, extension_is, leads_out, shown};
use crate::context::file_dialogs::FileSource;
use crate::error::CallError;
use crate::escaped::escaped;
use std::collections::BTreeSet;
use std::io::{Read, Seek};
use surefoot_exchange::Refusal;
use surefoot_exercises::bank::{BankFile, MOST_FILE_BYTES, MOST_FILES};
use zip::ZipArchive;

/// The list of contents of a package, which holds no exercise.
const MANIFEST: &str = "imsmanifest.xml";

/// Bytes of all files of an import at most; a class keeps at most 1 MiB of exercises.
const MOST_BYTES: u64 = 64 * 1024 * 1024;

/// Reads the picked files, each up to one byte more than its cap. The reader of question banks
/// then reports a file that is too large or cannot be unpacked.
///
/// # Errors
/// Returns [`CallError::Refused`] for a file that cannot be read, and for files that are too large
/// together.
pub fn bank_files(sources: Vec<FileSource>) -> Result<Vec<BankFile>, CallError> {
    let mut room = ZipRoom::new(MOST_BYTES);
    let mut files = Vec::new();
    for source in sources {
        let name = escaped(source.name(), &[]).into_owned();
        if extension_is(&name, "zip") {
            unzip(&name, room.open(source)?, &mut room, &mut files)?;
        } else {
            let bytes = room.unpack(source.open()?, MOST_FILE_BYTES as u64)?;
            files.push(BankFile { name, bytes });
        }
    }
    number_repeated(&mut files);
    Ok(files)
}

/// Numbers names that are shown alike, so that the import report tells their files apart.
fn number_repeated(files: &mut [BankFile]) {
    let mut names = BTreeSet::new();
    for file in files {
        let shown = file.name.clone();
        let mut number = 2;
        while !names.insert(file.name.clone()) {
            file.name = format!("{shown} ({number})");
            number += 1;
        }
    }
}

fn unzip(
    zip_name: &str,
    mut archive: ZipArchive<impl Read + Seek>,
    room: &mut ZipRoom,
    files: &mut Vec<BankFile>,
) -> Result<(), CallError> {
    let mut found = Vec::new();
    for place in 0..archive.len() {
        let Ok(entry) = archive.by_index_raw(place) else {
            continue;
        };
        let name = String::from_utf8_lossy(entry.name_raw()).into_owned();
        let of_bank = extension_is(&name, "xml") || extension_is(&name, "csv");
        let own_file = name.rsplit('/').next().unwrap_or(&name);
        if entry.is_dir()
            || !of_bank
            || own_file.eq_ignore_ascii_case(MANIFEST)
            || name.starts_with("__MACOSX/")
        {
            continue;
        }
        drop(entry);
        // With one file more than allowed, the reader reports too many.
        if found.len() > MOST_FILES {
            break;
        }
        let mut bytes = Vec::new();
        if !leads_out(&name)
            && let Ok(entry) = archive.by_index(place)
        {
            match room.unpack(entry, MOST_FILE_BYTES as u64) {
                Ok(unpacked) => bytes = unpacked,
                // A damaged entry is empty here, and the reader of question banks reports it.
                Err(Refusal::Unreadable) => {}
                Err(refusal) => return Err(refusal.into()),
            }
        }
        found.push(BankFile {
            name: shown(zip_name, &name),
            bytes,
        });
    }
    found.sort_by(|a, b| a.name.cmp(&b.name));
    files.extend(found);
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::{Cursor, Write as _};
    use zip::ZipWriter;
    use zip::write::SimpleFileOptions;

    #[test]
    fn a_zip_gives_its_items_and_not_its_list() {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        for (name, text) in [
            ("imsmanifest.xml", "<manifest/>"),
            ("items/b.xml", "<b/>"),
            ("items/a.XML", "<a/>"),
            ("picture.png", "no"),
        ] {
            zip.start_file(name, SimpleFileOptions::default()).unwrap();
            zip.write_all(text.as_bytes()).unwrap();
        }
        let bytes = zip.finish().unwrap().into_inner();
        let files = bank_files(vec![
            FileSource::from_bytes("p.zip", bytes),
            FileSource::from_bytes("c.csv", b"kind".to_vec()),
        ])
        .unwrap();
        let names: Vec<&str> = files.iter().map(|f| f.name.as_str()).collect();
        assert_eq!(names, ["p.zip: items/a.XML", "p.zip: items/b.xml", "c.csv"]);
        assert_eq!(files[0].bytes, b"<a/>");
        assert!(matches!(
            bank_files(vec![FileSource::from_bytes("x.zip", b"no zip".to_vec())]),
            Err(CallError::Refused {
                refusal: Refusal::Damaged
            })
        ));
    }

    #[test]
    fn names_that_are_shown_alike_are_numbered() {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        for name in ["a\u{1}.csv", "a\u{2}.csv", "a\\u0001.csv"] {
            zip.start_file(name, SimpleFileOptions::default()).unwrap();
        }
        let bytes = zip.finish().unwrap().into_inner();
        let files = bank_files(vec![FileSource::from_bytes("p.zip", bytes)]).unwrap();
        let names: BTreeSet<&str> = files.iter().map(|f| f.name.as_str()).collect();
        assert_eq!(names.len(), 3, "{names:?}");
    }

    #[test]
    fn what_unpacks_without_end_is_read_to_its_cap_and_refused_by_name() {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        zip.start_file("bomb.csv", SimpleFileOptions::default())
            .unwrap();
        let zeros = vec![b'x'; 1024 * 1024];
        for _ in 0..8 {
            zip.write_all(&zeros).unwrap();
        }
        let bytes = zip.finish().unwrap().into_inner();
        let files = bank_files(vec![FileSource::from_bytes("p.zip", bytes)]).unwrap();
        assert_eq!(files[0].bytes.len(), MOST_FILE_BYTES + 1);
    }

    #[test]
    fn what_is_too_large_together_is_refused_whole() {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        let text = vec![b'x'; MOST_FILE_BYTES];
        for number in 0..MOST_BYTES as usize / MOST_FILE_BYTES {
            zip.start_file(format!("{number}.csv"), SimpleFileOptions::default())
                .unwrap();
            zip.write_all(&text).unwrap();
        }
        let bytes = zip.finish().unwrap().into_inner();
        let read = |sources| bank_files(sources).map(|files| files.len());
        let zip = || FileSource::from_bytes("p.zip", bytes.clone());
        assert_eq!(read(vec![zip()]), Ok(MOST_BYTES as usize / MOST_FILE_BYTES));
        let refused = Err(CallError::Refused {
            refusal: Refusal::TooMuchAtOnce,
        });
        assert_eq!(read(vec![zip(), zip()]), refused);
        let one = FileSource::from_bytes("c.csv", b"kind".to_vec());
        assert_eq!(read(vec![zip(), one]), refused);
    }

    proptest::proptest! {
        #![proptest_config(surefoot_test_support::long())]

        /// What is unpacked stays within its caps, and the reader of question banks answers.
        #[test]
        fn changed_bank_zips(changes in surefoot_test_support::any_changes()) {
            let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
            for (name, text) in [
                ("items/a.xml", "<qti-assessment-item/>"),
                ("b.csv", "concept,kind,question,answer\ng4-round,number,Round 12 to tens,10\n"),
            ] {
                zip.start_file(name, SimpleFileOptions::default()).unwrap();
                zip.write_all(text.as_bytes()).unwrap();
            }
            let bytes = zip.finish().unwrap().into_inner();
            let bytes = surefoot_test_support::changed(&bytes, &changes);
            if let Ok(files) = bank_files(vec![FileSource::from_bytes("bank.zip", bytes)]) {
                let all: usize = files.iter().map(|file| file.bytes.len()).sum();
                proptest::prop_assert!(all as u64 <= MOST_BYTES);
                for file in &files {
                    proptest::prop_assert!(file.bytes.len() <= MOST_FILE_BYTES + 1);
                }
            }
        }
    }
}
