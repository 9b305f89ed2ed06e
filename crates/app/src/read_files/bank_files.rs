//! Reads question banks, also from a zip.

use super::zip_files::{MOST_ZIP_BYTES, extension_is, leads_out, shown};
use crate::context::file_dialogs::FileSource;
use crate::error::CallError;
use std::collections::BTreeSet;
use std::io::{Cursor, Read};
use surefoot_exchange::Refusal;
use surefoot_exercises::bank::{BankFile, MOST_FILE_BYTES, MOST_FILES};
use zip::ZipArchive;

/// The list of contents of a package, which holds no exercise.
const MANIFEST: &str = "imsmanifest.xml";

/// Reads the picked files, each up to one byte more than its cap. The reader of question banks
/// then reports a file that is too large or cannot be unpacked.
///
/// # Errors
/// Returns [`CallError::Refused`] for a file that cannot be read.
pub fn bank_files(sources: Vec<FileSource>) -> Result<Vec<BankFile>, CallError> {
    let mut files = Vec::new();
    for source in sources {
        let name = source.name().to_owned();
        if extension_is(&name, "zip") {
            let bytes = source.read(MOST_ZIP_BYTES)?;
            unzip(&name, bytes, &mut files)?;
        } else {
            let mut bytes = Vec::new();
            source
                .open()?
                .take(MOST_FILE_BYTES as u64 + 1)
                .read_to_end(&mut bytes)
                .map_err(|_| Refusal::Unreadable)?;
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

fn unzip(zip_name: &str, bytes: Vec<u8>, files: &mut Vec<BankFile>) -> Result<(), CallError> {
    let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(|_| Refusal::Damaged)?;
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
            // A damaged entry is empty here, and the reader of question banks reports it.
            let read = entry
                .take(MOST_FILE_BYTES as u64 + 1)
                .read_to_end(&mut bytes);
            if read.is_err() {
                bytes.clear();
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
    use std::io::Write as _;
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
        for name in ["a\u{1}.csv", "a\u{2}.csv", "a.csv (2).csv"] {
            zip.start_file(name, SimpleFileOptions::default()).unwrap();
        }
        let bytes = zip.finish().unwrap().into_inner();
        let files = bank_files(vec![FileSource::from_bytes("p.zip", bytes)]).unwrap();
        let names: Vec<&str> = files.iter().map(|f| f.name.as_str()).collect();
        assert_eq!(
            names,
            ["p.zip: a.csv", "p.zip: a.csv (2)", "p.zip: a.csv (2).csv"]
        );
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
}
