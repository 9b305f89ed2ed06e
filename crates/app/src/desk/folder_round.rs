//! One round of the desk through the class folder: puts class packs, and reads what is new.
//!
//! Runs in a thread of its own and knows no store. What it read is imported by a job later.

use crate::context::class_folder::{
    ClassFolder, FolderEntry, FolderTrouble, Listed, Mark, digest_of, has_extension, is_unfinished,
    noon,
};
use crate::context::file_dialogs::FileKind;
use crate::read_files::zip_files::MOST_ZIP_BYTES;
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use surefoot_exchange::{CLASS_PACK_CAPS, HAND_IN_CAPS, folder_pack_name, open_pack};
use surefoot_record::ClassId;

/// Bytes that are read and wait for their import at most; later rounds go on.
pub(super) const MOST_READ_BYTES: u64 = 64 * 1024 * 1024;

/// Class packs that one round reads at most, so that others cannot keep it busy.
const MOST_PACKS_READ: usize = 16;

/// Every so many rounds the desk's own packs are read again: somebody may have put a file of the same
/// size and time in the place of one.
const READ_AGAIN: u32 = 16;

/// A class pack to put into the folder.
#[derive(Clone)]
pub(super) struct PackToPut {
    pub(super) version: u32,
    pub(super) made_on: NaiveDate,
    pub(super) bytes: Arc<Vec<u8>>,
}

/// What a file of the folder is, as far as it was read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Known {
    mark: Mark,
    /// Of its content; of one that is too large, of its size.
    pub(super) digest: String,
    /// Class and version, if it is an authentic class pack.
    pack: Option<(ClassId, u32)>,
}

/// What the desk knows before a round.
pub(super) struct Errands {
    pub(super) folder: Arc<dyn ClassFolder>,
    /// The files at the end of the last round, by name.
    pub(super) last: BTreeMap<String, Mark>,
    /// What was read of them.
    pub(super) known: BTreeMap<String, Known>,
    /// Digests of files that are imported, or wait for it.
    pub(super) imported: BTreeSet<String>,
    /// Bytes that it may read of new files.
    pub(super) room_bytes: u64,
    /// The number of this round.
    pub(super) round: u32,
    /// The classes of the desk; with a pack to put, if one waits.
    pub(super) classes: BTreeMap<ClassId, Option<PackToPut>>,
    /// Copies of hand-ins whose whole content is in another file, by name and digest.
    pub(super) contained: Vec<(String, String)>,
}

/// A file that was read and not imported yet.
pub(super) struct FileRead {
    pub(super) name: String,
    pub(super) digest: String,
    /// Its content; of one that is too large, its size and the cap.
    pub(super) content: Result<Vec<u8>, (u64, u64)>,
}

/// Hand-ins of one device under several names: name, digest and content.
pub(super) type Copies = Vec<(String, String, Vec<u8>)>;

/// What came of a round.
#[derive(Default)]
pub(super) struct Round {
    pub(super) marks: BTreeMap<String, Mark>,
    pub(super) known: BTreeMap<String, Known>,
    pub(super) new: Vec<FileRead>,
    pub(super) copies: Vec<Copies>,
    /// The version of each class's pack under its name; 0 without one that can be read.
    pub(super) versions: BTreeMap<ClassId, u32>,
    /// Why a pack could not be put.
    pub(super) not_put: Option<FolderTrouble>,
    /// Whether it has more files than are looked at.
    pub(super) too_many: bool,
    /// Whether something is still being written there.
    pub(super) unsettled: bool,
}

impl Errands {
    pub(super) fn go(mut self) -> Result<Round, FolderTrouble> {
        let own: BTreeSet<String> = self.classes.keys().map(folder_pack_name).collect();
        let Listed {
            entries: listed,
            too_many,
        } = self.folder.list(&own)?;
        let marks: BTreeMap<&str, Mark> = (listed.iter())
            .map(|entry| (entry.name.as_str(), entry.mark))
            .collect();
        let read_again = self.round.is_multiple_of(READ_AGAIN);
        self.known.retain(|name, known| {
            let same = marks.get(name.as_str()) == Some(&known.mark);
            same && !(read_again && own.contains(name))
        });
        let mut round = Round {
            too_many,
            ..Round::default()
        };
        self.look_at_packs(&listed, &mut round);
        self.put_packs(&listed, &mut round);
        self.clear(&listed);
        self.read_hand_ins(&listed, &mut round);
        round.marks = (listed.into_iter())
            .map(|entry| (entry.name, entry.mark))
            .collect();
        round.known = self.known;
        Ok(round)
    }

    /// Whether two rounds in a row found a file the same.
    fn is_settled(&self, entry: &FolderEntry) -> bool {
        self.last.get(&entry.name) == Some(&entry.mark)
    }

    fn look_at_packs(&mut self, listed: &[FolderEntry], round: &mut Round) {
        let own: BTreeSet<String> = self.classes.keys().map(folder_pack_name).collect();
        let mut packs: Vec<&FolderEntry> = (listed.iter())
            .filter(|entry| has_extension(&entry.name, FileKind::ClassPack.extension()))
            .filter(|entry| !is_unfinished(&entry.name) && !self.known.contains_key(&entry.name))
            .filter(|entry| entry.mark.size_bytes <= CLASS_PACK_CAPS.sealed_bytes)
            .collect();
        packs.sort_by_key(|entry| !own.contains(&entry.name));
        for entry in packs.into_iter().take(MOST_PACKS_READ) {
            // A pack that is being written is read in the next round.
            if !self.is_settled(entry) {
                round.unsettled = true;
                continue;
            }
            // One that cannot be read is none; the desk puts its own in the place.
            let bytes = (self.folder)
                .read(&entry.name, CLASS_PACK_CAPS.sealed_bytes)
                .unwrap_or_default();
            let pack = open_pack(bytes.as_slice()).ok();
            let known = Known {
                mark: entry.mark,
                digest: digest_of(&[&bytes]),
                pack: pack.map(|pack| {
                    let content = pack.content();
                    (content.class_id.clone(), content.version)
                }),
            };
            self.known.insert(entry.name.clone(), known);
        }
    }

    /// The version of the class's pack under its name.
    fn version_under_name(&self, class: &ClassId) -> Option<u32> {
        let known = self.known.get(&folder_pack_name(class))?;
        let (of, version) = known.pack.as_ref()?;
        (of == class).then_some(*version)
    }

    fn put_packs(&mut self, listed: &[FolderEntry], round: &mut Round) {
        let mut put = Vec::new();
        for (class, to_put) in &self.classes {
            let name = folder_pack_name(class);
            let entry = listed.iter().find(|entry| entry.name == name);
            // What is too large is no pack.
            let read = entry.is_none_or(|entry| {
                self.known.contains_key(&entry.name)
                    || entry.mark.size_bytes > CLASS_PACK_CAPS.sealed_bytes
            });
            let mut version = self.version_under_name(class).unwrap_or(0);
            if let Some(pack) = to_put
                && read
                && version < pack.version
            {
                let changed = noon(pack.made_on, pack.version);
                match self.folder.write(&name, &pack.bytes, changed) {
                    Ok(()) => {
                        version = pack.version;
                        put.push(name);
                    }
                    Err(error) => round.not_put = Some(error.into()),
                }
            }
            // One that is still being written counts as there.
            let version = if read { version } else { u32::MAX };
            round.versions.insert(class.clone(), version);
        }
        // What had a name before may have had the size and time of the pack.
        for name in put {
            self.known.remove(&name);
        }
    }

    /// Removes packs of our classes that a higher version under the usual name replaces, and copies
    /// of hand-ins that are wholly in another file. Everything else stays.
    fn clear(&self, listed: &[FolderEntry]) {
        let contained: BTreeSet<(&str, &str)> = (self.contained.iter())
            .map(|(name, digest)| (name.as_str(), digest.as_str()))
            .collect();
        for entry in listed {
            let Some(known) = self.known.get(&entry.name) else {
                continue;
            };
            let older_pack = known.pack.as_ref().is_some_and(|(class, version)| {
                entry.name != folder_pack_name(class)
                    && (self.version_under_name(class)).is_some_and(|newest| {
                        *version < newest
                            || (self.known.get(&folder_pack_name(class)))
                                .is_some_and(|newest| newest.digest == known.digest)
                    })
                    && self.classes.contains_key(class)
            });
            if older_pack || contained.contains(&(entry.name.as_str(), known.digest.as_str())) {
                // One that cannot be removed does no harm.
                let _ = self.folder.remove(&entry.name);
            }
        }
    }

    fn read_hand_ins(&mut self, listed: &[FolderEntry], round: &mut Round) {
        let mut left_bytes = self.room_bytes;
        let mut touched = BTreeSet::new();
        for entry in listed {
            let Some(cap) = cap_of(&entry.name).filter(|_| entry.mark.size_bytes > 0) else {
                continue;
            };
            // One whose import failed or was stopped is read again.
            let known = self.known.get(&entry.name);
            if known.is_some_and(|known| self.imported.contains(&known.digest)) {
                continue;
            }
            if !self.is_settled(entry) || entry.mark.size_bytes.min(cap) > left_bytes {
                round.unsettled = true;
                continue;
            }
            let content = if entry.mark.size_bytes > cap {
                Err((entry.mark.size_bytes, cap))
            } else {
                // One that cannot be read now is tried again in the next round.
                let Ok(bytes) = self.folder.read(&entry.name, cap) else {
                    round.unsettled = true;
                    continue;
                };
                // It was written meanwhile.
                if bytes.len() as u64 != entry.mark.size_bytes {
                    round.unsettled = true;
                    continue;
                }
                left_bytes = left_bytes.saturating_sub(bytes.len() as u64);
                Ok(bytes)
            };
            let digest = match &content {
                Ok(bytes) => digest_of(&[bytes]),
                Err((found, _)) => digest_of(&[b"too large", &found.to_be_bytes()]),
            };
            let known = Known {
                mark: entry.mark,
                digest: digest.clone(),
                pack: None,
            };
            self.known.insert(entry.name.clone(), known);
            touched.extend(stem_of(&entry.name));
            if !self.imported.contains(&digest) {
                round.new.push(FileRead {
                    name: entry.name.clone(),
                    digest,
                    content,
                });
            }
        }
        let mut by_stem: BTreeMap<String, Vec<&FolderEntry>> = BTreeMap::new();
        for entry in listed {
            if let Some(stem) = stem_of(&entry.name).filter(|stem| touched.contains(stem)) {
                by_stem.entry(stem).or_default().push(entry);
            }
        }
        round.copies = (by_stem.values())
            .filter_map(|same| self.copies_of(same))
            .collect();
    }

    /// The hand-ins among files with one stem, if there are several.
    fn copies_of(&self, same: &[&FolderEntry]) -> Option<Copies> {
        const MOST: usize = 16;
        let cap = HAND_IN_CAPS.sealed_bytes;
        let same: Vec<&&FolderEntry> = (same.iter())
            .filter(|entry| self.known.contains_key(&entry.name) && entry.mark.size_bytes <= cap)
            .take(MOST)
            .collect();
        let copies: Copies = (same.len() > 1)
            .then(|| same.iter())?
            .filter_map(|entry| {
                let bytes = self.folder.read(&entry.name, cap).ok()?;
                Some((entry.name.clone(), digest_of(&[&bytes]), bytes))
            })
            .collect();
        (copies.len() > 1).then_some(copies)
    }
}

/// The most bytes that are read of a file that may hold hand-ins.
fn cap_of(name: &str) -> Option<u64> {
    if is_unfinished(name) {
        return None;
    }
    if has_extension(name, FileKind::HandIn.extension()) {
        return Some(HAND_IN_CAPS.sealed_bytes);
    }
    has_extension(name, "zip").then_some(MOST_ZIP_BYTES)
}

/// The part that all copies of a student's hand-in have in their names, whatever a program that
/// copies folders adds to them.
fn stem_of(name: &str) -> Option<String> {
    const SIGNS: usize = 12;
    let at = name.find("hand-in-")? + "hand-in-".len();
    let signs = name.get(at..at + SIGNS)?;
    (signs.bytes().all(|sign| sign.is_ascii_alphanumeric())).then(|| signs.to_ascii_lowercase())
}

/// The name that a device gave to a hand-in with this stem.
pub(super) fn is_given_name(name: &str) -> bool {
    stem_of(name).is_some_and(|stem| name == format!("hand-in-{stem}.sfhandin"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io;
    use std::time::{Duration, Instant, SystemTime};

    /// A folder with many small files.
    struct Crowded(usize);

    impl ClassFolder for Crowded {
        fn list(&self, _: &BTreeSet<String>) -> io::Result<Listed> {
            let entry = |number| FolderEntry {
                name: format!("hand-in-{number:012} (1).sfhandin"),
                mark: Mark {
                    size_bytes: 5,
                    changed_millis: 0,
                },
            };
            Ok(Listed {
                entries: (0..self.0).map(entry).collect(),
                too_many: false,
            })
        }

        fn read(&self, name: &str, _: u64) -> io::Result<Vec<u8>> {
            Ok(name.as_bytes()[12..17].to_vec())
        }

        fn write(&self, _: &str, _: &[u8], _: SystemTime) -> io::Result<()> {
            Ok(())
        }

        fn remove(&self, _: &str) -> io::Result<()> {
            Ok(())
        }
    }

    #[test]
    fn the_work_of_a_round_grows_as_the_number_of_files_does() {
        let round = |files, last: &Round| {
            let errands = Errands {
                folder: Arc::new(Crowded(files)),
                last: last.marks.clone(),
                known: last.known.clone(),
                imported: BTreeSet::new(),
                room_bytes: MOST_READ_BYTES,
                round: 1,
                classes: BTreeMap::new(),
                contained: Vec::new(),
            };
            errands.go().unwrap()
        };
        // Each of 40,000 compared with each would be 1.6 thousand million: minutes in a build for
        // tests.
        const FILES: usize = 40_000;
        let begun = Instant::now();
        let first = round(FILES, &Round::default());
        let second = round(FILES, &first);
        assert_eq!(second.new.len(), FILES);
        round(FILES, &second);
        assert!(
            begun.elapsed() < Duration::from_secs(15),
            "{:?}",
            begun.elapsed()
        );
    }
}
