//! Reads zips of hand-ins, as upload folders of classes offer them, of exercises and of rosters.
//! Each hand-in of a zip is a file of the import report.
//!
//! Unpacks nothing to the disk. One zip is open at a time, its list is read once, and each entry
//! only when it is imported, up to the cap of its kind. [`ZipRoom`] counts what all zips of one
//! import bring together. Refuses an entry that is encrypted or packed in an unusual way, or
//! whose name leads out of the zip.

use crate::context::file_dialogs::{FileKind, FileSource};
use crate::escaped::escaped;
use std::io::{Cursor, Read, Seek};
use std::ops::ControlFlow;
use surefoot_exchange::{FileHead, HAND_IN_CAPS, HEAD_BYTES, Refusal};
use zip::ZipArchive;
use zip::result::ZipError;

/// Bytes of a zip at most, more than weekly hand-ins of 40 students over a year.
pub const MOST_ZIP_BYTES: u64 = 64 * 1024 * 1024;

/// Bytes of all zips of an import at most.
pub const MOST_ZIPS_BYTES: u64 = 256 * 1024 * 1024;

/// Entries of all zips of an import at most, of every kind.
pub const MOST_ZIP_ENTRIES: usize = 5_000;

/// Unpacked bytes of all entries of an import's zips at most.
pub const MOST_UNPACKED_BYTES: u64 = 256 * 1024 * 1024;

/// Characters of a name in the import report at most.
const LONGEST_NAME_CHARS: usize = 120;

/// The first bytes of every line of a zip's list.
const LIST_SIGNATURE: &[u8] = b"PK\x01\x02";

pub(crate) fn extension_is(name: &str, wanted: &str) -> bool {
    name.rsplit_once('.')
        .is_some_and(|(_, found)| found.eq_ignore_ascii_case(wanted))
}

/// What is still allowed to the zips of one import.
pub(crate) struct ZipRoom {
    zip_bytes: u64,
    entries: usize,
    unpacked_bytes: u64,
}

impl ZipRoom {
    /// Makes room for zips that unpack to at most `unpacked_bytes` together.
    pub(crate) fn new(unpacked_bytes: u64) -> Self {
        Self {
            zip_bytes: MOST_ZIPS_BYTES,
            entries: MOST_ZIP_ENTRIES,
            unpacked_bytes,
        }
    }

    /// Reads a zip and its list into memory.
    ///
    /// # Errors
    /// Returns [`Refusal::TooMuchAtOnce`] if the zips before it left too little room.
    pub(crate) fn open(
        &mut self,
        source: FileSource,
    ) -> Result<ZipArchive<Cursor<Vec<u8>>>, Refusal> {
        let bytes = source.read(MOST_ZIP_BYTES)?;
        let size = bytes.len() as u64;
        // Counted before the list is read, because a list in memory is far larger than in the file.
        let lines = bytes
            .windows(LIST_SIGNATURE.len())
            .filter(|found| *found == LIST_SIGNATURE)
            .count();
        if lines > MOST_ZIP_ENTRIES {
            return Err(Refusal::TooManyEntries {
                most: MOST_ZIP_ENTRIES as u64,
            });
        }
        if size > self.zip_bytes || lines > self.entries {
            return Err(Refusal::TooMuchAtOnce);
        }
        self.zip_bytes -= size;
        self.entries -= lines;
        ZipArchive::new(Cursor::new(bytes)).map_err(refusal_of)
    }

    /// Reads an entry, or a file beside the zips, up to one byte beyond `most_bytes`.
    ///
    /// # Errors
    /// Returns [`Refusal::TooMuchAtOnce`] if what came before left too little room, and
    /// [`Refusal::Unreadable`] for a damaged entry.
    pub(crate) fn unpack(&mut self, entry: impl Read, most_bytes: u64) -> Result<Vec<u8>, Refusal> {
        let most = most_bytes.min(self.unpacked_bytes);
        let mut bytes = Vec::new();
        let read = entry.take(most + 1).read_to_end(&mut bytes);
        let size = bytes.len() as u64;
        if size > self.unpacked_bytes {
            self.unpacked_bytes = 0;
            return Err(Refusal::TooMuchAtOnce);
        }
        // Also if its end could not be read, because the rest was unpacked.
        self.unpacked_bytes -= size;
        read.map_err(|_| Refusal::Unreadable)?;
        Ok(bytes)
    }
}

/// A file of an import, opened.
pub(crate) type Opened = Result<Box<dyn Read + Send>, Refusal>;

/// Opens the files of an import one after the other, the hand-ins of a zip in the order of their
/// names, and gives each to `take` until that breaks. Gives `expect` the known number of files,
/// first and after each opened zip.
pub(crate) fn each_hand_in(
    sources: Vec<FileSource>,
    mut room: ZipRoom,
    mut expect: impl FnMut(usize),
    mut take: impl FnMut(String, Opened) -> ControlFlow<()>,
) -> ControlFlow<()> {
    let mut known = sources.len();
    expect(known);
    for source in sources {
        let name = escaped(source.name(), &[]).into_owned();
        let (is_zip, source) = is_zip(source);
        if !is_zip {
            take(name, source.open())?;
            continue;
        }
        match room.open(source) {
            Ok(mut archive) => {
                let list = hand_ins_of(&mut archive, &name);
                known = known + list.len() - 1;
                expect(known);
                for entry in list {
                    let opened = read_entry(&mut archive, &entry, &mut room);
                    take(entry.shown, opened)?;
                }
            }
            Err(refusal) => take(name, Err(refusal))?,
        }
    }
    ControlFlow::Continue(())
}

/// Whether a file is a zip: by its name, or by its first bytes if the name has no extension of
/// ours. Android often gives another name.
fn is_zip(source: FileSource) -> (bool, FileSource) {
    if extension_is(source.name(), "zip") {
        return (true, source);
    }
    if extension_is(source.name(), FileKind::HandIn.extension()) {
        return (false, source);
    }
    let (head, source) = source.peek(HEAD_BYTES as u64);
    (FileHead::of(&head) == FileHead::Zip, source)
}

/// A hand-in in a zip.
struct Entry {
    place: usize,
    shown: String,
    refusal: Option<Refusal>,
}

fn hand_ins_of<R: Read + Seek>(archive: &mut ZipArchive<R>, zip_name: &str) -> Vec<Entry> {
    let mut found = Vec::new();
    for place in 0..archive.len() {
        let entry = match archive.by_index_raw(place) {
            Ok(entry) => entry,
            Err(error) => {
                found.push(Entry {
                    place,
                    shown: shown(zip_name, &format!("#{}", place + 1)),
                    refusal: Some(refusal_of(error)),
                });
                continue;
            }
        };
        let name = String::from_utf8_lossy(entry.name_raw()).into_owned();
        let own_notes = name.starts_with("__MACOSX/");
        if entry.is_dir() || own_notes || !extension_is(&name, FileKind::HandIn.extension()) {
            continue;
        }
        let refusal = if leads_out(&name) {
            Some(Refusal::UnsafeName)
        } else if entry.encrypted() {
            Some(Refusal::Unreadable)
        } else if entry.size() > HAND_IN_CAPS.sealed_bytes {
            Some(Refusal::TooLarge {
                found_bytes: entry.size(),
                most_bytes: HAND_IN_CAPS.sealed_bytes,
            })
        } else {
            None
        };
        found.push(Entry {
            place,
            shown: shown(zip_name, &name),
            refusal,
        });
    }
    found.sort_by(|a, b| a.shown.cmp(&b.shown));
    found
}

/// Whether a name would lead out of the folder of an unpacked zip, on any system.
pub(crate) fn leads_out(name: &str) -> bool {
    name.starts_with('/')
        || name.contains(['\\', ':', '\0'])
        || name.split('/').any(|part| part == "..")
}

/// The name for the import report. Of a long name the end is kept.
pub(crate) fn shown(zip_name: &str, entry: &str) -> String {
    let plain = escaped(entry, &[]);
    let too_many = plain.chars().count().saturating_sub(LONGEST_NAME_CHARS);
    let end: String = plain.chars().skip(too_many).collect();
    format!("{zip_name}: {end}")
}

fn read_entry<R: Read + Seek>(
    archive: &mut ZipArchive<R>,
    entry: &Entry,
    room: &mut ZipRoom,
) -> Opened {
    if let Some(refusal) = &entry.refusal {
        return Err(refusal.clone());
    }
    // The declared size may be wrong, so the read is capped. The end of the entry checks its
    // checksum.
    let unpacked = archive.by_index(entry.place).map_err(refusal_of)?;
    let bytes = room.unpack(unpacked, HAND_IN_CAPS.sealed_bytes)?;
    Ok(Box::new(Cursor::new(bytes)))
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
    use std::cell::Cell;
    use std::io::{self, SeekFrom, Write as _};
    use std::rc::Rc;
    use zip::ZipWriter;
    use zip::write::{FullFileOptions, SimpleFileOptions};

    fn zip_of(files: &[(&str, &[u8])]) -> Vec<u8> {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        for (name, bytes) in files {
            zip.start_file(*name, SimpleFileOptions::default()).unwrap();
            zip.write_all(bytes).unwrap();
        }
        zip.finish().unwrap().into_inner()
    }

    type Found = (String, Result<Vec<u8>, Refusal>);

    fn read_all(sources: Vec<FileSource>, room: ZipRoom) -> Vec<Found> {
        let mut found = Vec::new();
        let all = each_hand_in(
            sources,
            room,
            |_| (),
            |name, opened| {
                let bytes = opened.map(|mut file| {
                    let mut bytes = Vec::new();
                    file.read_to_end(&mut bytes).unwrap();
                    bytes
                });
                found.push((name, bytes));
                ControlFlow::Continue(())
            },
        );
        assert!(all.is_continue());
        found
    }

    fn of_zip(bytes: Vec<u8>) -> Vec<Found> {
        let sources = vec![FileSource::from_bytes("week.ZIP", bytes)];
        read_all(sources, ZipRoom::new(MOST_UNPACKED_BYTES))
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

    /// Counts the bytes that are read.
    struct Counting {
        inner: Cursor<Vec<u8>>,
        read: Rc<Cell<u64>>,
    }

    impl Read for Counting {
        fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
            let read = self.inner.read(into)?;
            self.read.set(self.read.get() + read as u64);
            Ok(read)
        }
    }

    impl Seek for Counting {
        fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
            self.inner.seek(to)
        }
    }

    #[test]
    fn the_list_of_a_zip_is_read_once_and_not_anew_for_each_entry() {
        let entries = 1_000;
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        for number in 0..entries {
            let mut options = FullFileOptions::default();
            options.add_extra_field(0x7777, [7; 8_000], true).unwrap();
            zip.start_file(format!("{number}.sfhandin"), options)
                .unwrap();
            zip.write_all(b"some words").unwrap();
        }
        let bytes = zip.finish().unwrap().into_inner();
        let size = bytes.len() as u64;
        assert!(size > 8_000 * entries);
        let read = Rc::new(Cell::new(0));
        let counting = Counting {
            inner: Cursor::new(bytes),
            read: Rc::clone(&read),
        };
        let mut archive = ZipArchive::new(counting).unwrap();
        let list = hand_ins_of(&mut archive, "fat.zip");
        assert_eq!(list.len() as u64, entries);
        let mut room = ZipRoom::new(MOST_UNPACKED_BYTES);
        for entry in &list {
            assert!(read_entry(&mut archive, entry, &mut room).is_ok());
        }
        let read = read.get();
        assert!(read < 3 * size, "{read} bytes read of a zip of {size}");
    }

    #[test]
    fn zips_share_their_room() {
        let zip = |names: &[&str]| {
            let files: Vec<(&str, &[u8])> = names.iter().map(|n| (*n, &b"12345"[..])).collect();
            FileSource::from_bytes("z.zip", zip_of(&files))
        };
        let three = || zip(&["a.sfhandin", "b.sfhandin", "c.sfhandin"]);
        let size = three().read(MOST_ZIP_BYTES).unwrap().len() as u64;
        let plain = || FileSource::from_bytes("p.sfhandin", b"1234567890".to_vec());
        let told = |room: ZipRoom| -> Vec<String> {
            let found = read_all(vec![three(), three(), plain()], room);
            let shown = found.into_iter().map(|(name, read)| match read {
                Ok(_) => name,
                Err(Refusal::TooMuchAtOnce) => format!("{name} too much"),
                Err(other) => panic!("{other:?}"),
            });
            shown.collect()
        };
        let room = || ZipRoom::new(MOST_UNPACKED_BYTES);
        let first = [
            "z.zip: a.sfhandin",
            "z.zip: b.sfhandin",
            "z.zip: c.sfhandin",
        ];
        let all = |second: &[&'static str]| [&first[..], second, &["p.sfhandin"]].concat();
        assert_eq!(told(room()), all(&first));
        let zip_bytes = 2 * size - 1;
        assert_eq!(
            told(ZipRoom {
                zip_bytes,
                ..room()
            }),
            all(&["z.zip too much"])
        );
        let entries = 5;
        assert_eq!(
            told(ZipRoom { entries, ..room() }),
            all(&["z.zip too much"])
        );
        let second = [
            "z.zip: a.sfhandin",
            "z.zip: b.sfhandin too much",
            "z.zip: c.sfhandin too much",
        ];
        assert_eq!(told(ZipRoom::new(24)), all(&second));
    }

    proptest::proptest! {
        #![proptest_config(surefoot_test_support::long())]

        #[test]
        fn changed_zips(changes in surefoot_test_support::any_changes()) {
            let zip = zip_of(&[("a.sfhandin", &[7; 90]), ("b/c.sfhandin", b"words")]);
            for (_, read) in of_zip(surefoot_test_support::changed(&zip, &changes)) {
                proptest::prop_assert!(read.is_err() || read.is_ok_and(|bytes| bytes.len() as u64 <= HAND_IN_CAPS.sealed_bytes));
            }
        }
    }
}
