//! Reads hand-ins from a zip, as upload folders of classes offer it. Each entry is a file of the
//! import report.
//!
//! Unpacks nothing to the disk. The zip and its list are read up to a cap, and each entry only
//! when it is imported, up to the cap of a hand-in. Refuses an entry that is encrypted or packed
//! in an unusual way, or whose name leads out of the zip.

use crate::context::file_dialogs::{FileKind, FileSource};
use std::io::{self, Cursor, Read};
use std::sync::Arc;
use surefoot_exchange::{HAND_IN_CAPS, Refusal};
use zip::ZipArchive;
use zip::result::ZipError;

/// Bytes of a zip at most, more than weekly hand-ins of 40 students over a year.
pub const MOST_ZIP_BYTES: u64 = 64 * 1024 * 1024;

/// Entries of a zip at most.
pub const MOST_ZIP_ENTRIES: usize = 5_000;

/// Declared unpacked bytes of all hand-ins of a zip at most.
pub const MOST_UNPACKED_BYTES: u64 = 256 * 1024 * 1024;

/// Characters of a name in the import report at most.
const LONGEST_NAME_CHARS: usize = 120;

pub(crate) fn extension_is(name: &str, wanted: &str) -> bool {
    name.rsplit_once('.')
        .is_some_and(|(_, found)| found.eq_ignore_ascii_case(wanted))
}

/// Replaces each zip by the hand-ins in it.
#[must_use]
pub fn unzipped(sources: Vec<FileSource>) -> Vec<FileSource> {
    let mut all = Vec::new();
    for source in sources {
        if !extension_is(source.name(), "zip") {
            all.push(source);
            continue;
        }
        let name = source.name().to_owned();
        match source
            .read(MOST_ZIP_BYTES)
            .and_then(|bytes| entries(&name, bytes))
        {
            Ok(found) => all.extend(found),
            Err(refusal) => all.push(FileSource::refused(name, refusal)),
        }
    }
    all
}

fn entries(zip_name: &str, bytes: Vec<u8>) -> Result<Vec<FileSource>, Refusal> {
    let bytes: Arc<[u8]> = bytes.into();
    let mut archive = ZipArchive::new(Cursor::new(Arc::clone(&bytes))).map_err(refusal_of)?;
    if archive.len() > MOST_ZIP_ENTRIES {
        return Err(Refusal::TooManyEntries {
            most: MOST_ZIP_ENTRIES as u64,
        });
    }
    let mut found = Vec::new();
    let mut unpacked_bytes: u64 = 0;
    for place in 0..archive.len() {
        let entry = match archive.by_index_raw(place) {
            Ok(entry) => entry,
            Err(error) => {
                found.push(FileSource::refused(
                    shown(zip_name, &format!("#{}", place + 1)),
                    refusal_of(error),
                ));
                continue;
            }
        };
        let name = String::from_utf8_lossy(entry.name_raw()).into_owned();
        let own_notes = name.starts_with("__MACOSX/");
        if entry.is_dir() || own_notes || !extension_is(&name, FileKind::HandIn.extension()) {
            continue;
        }
        let shown = shown(zip_name, &name);
        unpacked_bytes = unpacked_bytes.saturating_add(entry.size());
        let refusal = if leads_out(&name) {
            Some(Refusal::UnsafeName)
        } else if entry.encrypted() {
            Some(Refusal::Unreadable)
        } else if entry.size() > HAND_IN_CAPS.sealed_bytes {
            Some(Refusal::TooLarge {
                found_bytes: entry.size(),
                most_bytes: HAND_IN_CAPS.sealed_bytes,
            })
        } else if unpacked_bytes > MOST_UNPACKED_BYTES {
            Some(Refusal::UnpacksTooLarge {
                most_bytes: MOST_UNPACKED_BYTES,
            })
        } else {
            None
        };
        found.push(match refusal {
            Some(refusal) => FileSource::refused(shown, refusal),
            None => {
                let bytes = Arc::clone(&bytes);
                FileSource::new(shown, move || read_entry(bytes, place))
            }
        });
    }
    found.sort_by(|a, b| a.name().cmp(b.name()));
    Ok(found)
}

/// Whether a name would lead out of the folder of an unpacked zip, on any system.
pub(crate) fn leads_out(name: &str) -> bool {
    name.starts_with('/')
        || name.contains(['\\', ':', '\0'])
        || name.split('/').any(|part| part == "..")
}

/// The name for the import report, without control characters. Of a long name the end is kept.
pub(crate) fn shown(zip_name: &str, entry: &str) -> String {
    let plain: String = entry.chars().filter(|c| !c.is_control()).collect();
    let too_many = plain.chars().count().saturating_sub(LONGEST_NAME_CHARS);
    let end: String = plain.chars().skip(too_many).collect();
    format!("{zip_name}: {end}")
}

fn read_entry(bytes: Arc<[u8]>, place: usize) -> io::Result<Box<dyn Read + Send>> {
    let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(io::Error::from)?;
    let entry = archive.by_index(place).map_err(io::Error::from)?;
    // The declared size may be wrong, so the read is capped. The end of the entry checks its
    // checksum.
    let mut unpacked = Vec::new();
    entry
        .take(HAND_IN_CAPS.sealed_bytes + 1)
        .read_to_end(&mut unpacked)?;
    Ok(Box::new(Cursor::new(unpacked)))
}

fn refusal_of(error: ZipError) -> Refusal {
    match error {
        ZipError::Io(_) | ZipError::UnsupportedArchive(_) => Refusal::Unreadable,
        _ => Refusal::Damaged,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Write as _;
    use zip::ZipWriter;
    use zip::write::SimpleFileOptions;

    fn zip_of(files: &[(&str, &[u8])]) -> Vec<u8> {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        for (name, bytes) in files {
            zip.start_file(*name, SimpleFileOptions::default()).unwrap();
            zip.write_all(bytes).unwrap();
        }
        zip.finish().unwrap().into_inner()
    }

    fn read_all(sources: Vec<FileSource>) -> Vec<(String, Result<Vec<u8>, Refusal>)> {
        unzipped(sources)
            .into_iter()
            .map(|s| (s.name().to_owned(), s.read(HAND_IN_CAPS.sealed_bytes)))
            .collect()
    }

    fn of_zip(bytes: Vec<u8>) -> Vec<(String, Result<Vec<u8>, Refusal>)> {
        read_all(vec![FileSource::from_bytes("week.ZIP", bytes)])
    }

    #[test]
    fn the_hand_ins_of_a_zip_stand_in_the_order_of_their_names() {
        let zip = zip_of(&[
            ("b.sfhandin", b"second"),
            ("folder/a.SFHANDIN", b"third"),
            ("notes.txt", b"not looked at"),
            ("__MACOSX/._b.sfhandin", b"not looked at"),
            ("a.sfhandin", b"first"),
        ]);
        let found = of_zip(zip);
        let wanted = [
            ("week.ZIP: a.sfhandin", "first"),
            ("week.ZIP: b.sfhandin", "second"),
            ("week.ZIP: folder/a.SFHANDIN", "third"),
        ]
        .map(|(name, words)| (name.to_owned(), Ok(words.as_bytes().to_vec())));
        assert_eq!(found, wanted);
    }

    #[test]
    fn names_that_lead_out_are_refused_by_name() {
        // The writer refuses some of these names, so they are patched in.
        for bad in [
            "../x.sfhandin",
            "/xx.sfhandin",
            "a\\x.sfhandin",
            "C:x.sfhandin",
            "a/../../.sfhandin",
        ] {
            let plain = "q".repeat(bad.len() - 9) + ".sfhandin";
            let mut zip = zip_of(&[(&plain, b"x"), ("good.sfhandin", b"kept")]);
            let places: Vec<usize> = zip
                .windows(plain.len())
                .enumerate()
                .filter(|(_, found)| *found == plain.as_bytes())
                .map(|(at, _)| at)
                .collect();
            assert_eq!(places.len(), 2, "local and central");
            for at in places {
                zip[at..at + bad.len()].copy_from_slice(bad.as_bytes());
            }
            let found: std::collections::BTreeMap<_, _> = of_zip(zip).into_iter().collect();
            assert_eq!(
                found[&format!("week.ZIP: {bad}")],
                Err(Refusal::UnsafeName),
                "{bad}"
            );
            assert_eq!(found["week.ZIP: good.sfhandin"], Ok(b"kept".to_vec()));
        }
    }

    #[test]
    fn a_zip_bomb_is_stopped_by_what_it_says_and_by_what_it_does() {
        let zeros = vec![0; 6 << 20];
        let honest = zip_of(&[("bomb.sfhandin", &zeros)]);
        assert!(honest.len() < 20_000);
        assert!(matches!(
            of_zip(honest.clone())[0].1,
            Err(Refusal::TooLarge { .. })
        ));
        // Both headers now declare one byte.
        let mut lying = honest;
        let size = u32::try_from(zeros.len()).unwrap().to_le_bytes();
        let places: Vec<usize> = lying
            .windows(4)
            .enumerate()
            .filter(|(_, four)| *four == size)
            .map(|(at, _)| at)
            .collect();
        assert!(!places.is_empty());
        for at in places {
            lying[at..at + 4].copy_from_slice(&1_u32.to_le_bytes());
        }
        assert!(of_zip(lying)[0].1.is_err());
    }

    #[test]
    fn damage_and_too_many_entries_are_told() {
        let zip = zip_of(&[("a.sfhandin", &[7; 5_000])]);
        for cut in [0, 3, 30, zip.len() / 2, zip.len() - 1] {
            let found = of_zip(zip[..cut].to_vec());
            assert!(
                found.iter().all(|(_, read)| read.is_err()) && found.len() == 1,
                "{cut}"
            );
        }
        let mut flipped = zip;
        flipped[45] ^= 0x10;
        assert!(of_zip(flipped)[0].1.is_err());
        let names: Vec<String> = (0..=MOST_ZIP_ENTRIES)
            .map(|n| format!("{n}.sfhandin"))
            .collect();
        let many: Vec<(&str, &[u8])> = names.iter().map(|n| (n.as_str(), &b""[..])).collect();
        assert_eq!(
            of_zip(zip_of(&many)),
            [(
                "week.ZIP".to_owned(),
                Err(Refusal::TooManyEntries {
                    most: MOST_ZIP_ENTRIES as u64
                })
            )]
        );
    }

    proptest::proptest! {
        #![proptest_config(proptest::prelude::ProptestConfig { failure_persistence: None, ..proptest::prelude::ProptestConfig::with_cases(500) })]

        #[test]
        fn changed_zips_never_panic(changes in proptest::collection::vec((0..400_usize, proptest::prelude::any::<u8>()), 1..6), cut in 0..500_usize) {
            let mut zip = zip_of(&[("a.sfhandin", &[7; 90]), ("b/c.sfhandin", b"words")]);
            for (at, byte) in changes {
                if let Some(place) = zip.get_mut(at) {
                    *place = byte;
                }
            }
            zip.truncate(cut.max(1));
            for (_, read) in of_zip(zip) {
                proptest::prop_assert!(read.is_err() || read.is_ok_and(|bytes| bytes.len() as u64 <= HAND_IN_CAPS.sealed_bytes));
            }
        }
    }
}
