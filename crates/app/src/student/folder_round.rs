//! One round of a student's device through a class folder: reads newer class packs, and leaves
//! hand-ins.
//!
//! Runs in a thread of its own and knows no store.

use crate::context::class_folder::{
    ClassFolder, FolderEntry, FolderTrouble, Mark, digest_of, has_extension, is_unfinished,
};
use crate::context::file_dialogs::FileKind;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::io::ErrorKind;
use std::sync::Arc;
use std::time::SystemTime;
use surefoot_exchange::{CLASS_PACK_CAPS, HAND_IN_CAPS, folder_pack_name, open_pack};
use surefoot_record::ClassId;
use surefoot_student::{Joined, SealedHandIn};

/// Class packs that one round reads at most, so that others cannot keep it busy.
const MOST_PACKS_READ: usize = 16;

/// Every so many rounds, packs that could not be read and the device's own hand-ins are read again:
/// a program that copies folders may give an unfinished file the size and time of the finished one,
/// and somebody may have put another file of the same size and time in the place of one.
const TRY_AGAIN: u32 = 16;

/// A hand-in that is in the folder.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Left {
    pub(super) student: String,
    /// For which class and seat, from which device; see [`sender`].
    pub(super) sender: String,
    name: String,
    /// The sequence of the newest event in it.
    newest: u32,
    pub(super) made_on: NaiveDate,
    digest: String,
    /// How it was last seen in the folder.
    #[serde(skip)]
    pub(super) mark: Option<Mark>,
}

impl Left {
    /// Whether it has everything up to an event of a sender.
    pub(super) fn holds(&self, newest: u32, sender: &str) -> bool {
        self.newest == newest && self.sender == sender
    }
}

/// Tells apart the devices, classes, seats and class packs that a student's hand-ins are made for: a
/// device with a newer pack hands in again, so that the desk knows. Without the seed of the signing
/// key it says nothing of them.
pub(super) fn sender(joined: &Joined) -> String {
    let student = &joined.student;
    digest_of(&[
        &student.signing_seed,
        joined.pack.class_id.as_str().as_bytes(),
        student.seat.as_bytes(),
        student.device.as_str().as_bytes(),
        &joined.pack.version.to_be_bytes(),
    ])
}

/// A number for the time of change of a hand-in, so that the versions of a day differ and nobody
/// without the seed of the signing key can tell how many there were before: see
/// [`crate::context::class_folder::noon`].
pub(super) fn version_of_day(seed: &[u8], made_on: NaiveDate, revision: u32) -> u32 {
    let digest = digest_of(&[b"version of day", seed, made_on.to_string().as_bytes()]);
    let first = (digest.get(..8)).and_then(|signs| u32::from_str_radix(signs, 16).ok());
    (first.unwrap_or(0) >> 1).saturating_add(revision)
}

/// A hand-in to leave.
pub(super) struct ToLeave {
    pub(super) student: String,
    pub(super) sender: String,
    pub(super) name: String,
    pub(super) sealed: Arc<SealedHandIn>,
    pub(super) changed: SystemTime,
}

/// A class pack of the folder, as far as it was read.
#[derive(Debug, Clone)]
pub(super) struct PackKnown {
    mark: Mark,
    /// Its version, if it is an authentic pack of the class.
    pub(super) version: Option<u32>,
}

/// What a device knows before a round.
pub(super) struct Errands {
    pub(super) folder: Arc<dyn ClassFolder>,
    pub(super) class: ClassId,
    /// The lowest pack version that a student of the class has here.
    pub(super) held: u32,
    pub(super) packs: BTreeMap<String, PackKnown>,
    pub(super) visit: u32,
    pub(super) to_leave: Vec<ToLeave>,
    /// What is in the folder already.
    pub(super) left: Vec<Left>,
}

/// What came of a round.
#[derive(Default)]
pub(super) struct Round {
    pub(super) packs: BTreeMap<String, PackKnown>,
    /// The newest pack, if it is newer than what a student has.
    pub(super) newest: Option<(u32, Vec<u8>)>,
    pub(super) left: Vec<(Left, Arc<SealedHandIn>)>,
    /// Students whose hand-in is in the folder unchanged, with how it is seen there.
    pub(super) seen_again: Vec<(String, Mark)>,
    /// Students whose hand-in is not in the folder any more, or is another file.
    pub(super) changed: Vec<String>,
    pub(super) trouble: Option<FolderTrouble>,
}

impl Errands {
    pub(super) fn go(mut self) -> Result<Round, FolderTrouble> {
        let left = self.left.iter().map(|left| left.name.clone());
        let own = left.chain([folder_pack_name(&self.class)]).collect();
        // What is needed is looked at also among too many files.
        let listed = self.folder.list(&own)?.entries;
        let mut round = Round::default();
        let marks: BTreeMap<&str, Mark> = (listed.iter())
            .map(|entry| (entry.name.as_str(), entry.mark))
            .collect();
        let again = self.tries_again();
        self.packs.retain(|name, known| {
            let there = marks.get(name.as_str()) == Some(&known.mark);
            there && (known.version.is_some() || !again)
        });
        self.read_packs(&listed, &mut round);
        if self.packs.values().any(|pack| pack.version.is_some()) {
            self.look_at_left(&listed, &mut round);
            self.leave(&mut round);
        } else {
            // An empty folder may be the place of a drive that is away.
            round.trouble = Some(FolderTrouble::NoPack);
        }
        round.packs = self.packs;
        Ok(round)
    }

    fn tries_again(&self) -> bool {
        self.visit.is_multiple_of(TRY_AGAIN)
    }

    fn read_packs(&mut self, listed: &[FolderEntry], round: &mut Round) {
        let cap = CLASS_PACK_CAPS.sealed_bytes;
        let own = folder_pack_name(&self.class);
        let mut packs: Vec<&FolderEntry> = (listed.iter())
            .filter(|entry| has_extension(&entry.name, FileKind::ClassPack.extension()))
            .filter(|entry| !is_unfinished(&entry.name) && entry.mark.size_bytes <= cap)
            .filter(|entry| match self.packs.get(&entry.name) {
                None => true,
                // A newer one that was read before a student could take it.
                Some(known) => known.version.is_some_and(|version| version > self.held),
            })
            .collect();
        packs.sort_by_key(|entry| entry.name != own);
        for entry in packs.into_iter().take(MOST_PACKS_READ) {
            let Ok(bytes) = self.folder.read(&entry.name, cap) else {
                continue;
            };
            let version = (open_pack(bytes.as_slice()).ok())
                .filter(|pack| pack.content().class_id == self.class)
                .map(|pack| pack.content().version);
            let known = PackKnown {
                mark: entry.mark,
                version,
            };
            self.packs.insert(entry.name.clone(), known);
            if let Some(version) = version
                && version > self.held
                && (round.newest.as_ref()).is_none_or(|(newest, _)| version > *newest)
            {
                round.newest = Some((version, bytes));
            }
        }
    }

    fn look_at_left(&self, listed: &[FolderEntry], round: &mut Round) {
        for left in &self.left {
            let Some(entry) = listed.iter().find(|entry| entry.name == left.name) else {
                round.changed.push(left.student.clone());
                continue;
            };
            if left.mark == Some(entry.mark) && !self.tries_again() {
                continue;
            }
            // Programs that copy folders may change a file's time, so only its content tells.
            match (self.folder).read(&left.name, HAND_IN_CAPS.sealed_bytes) {
                Ok(bytes) if digest_of(&[&bytes]) == left.digest => {
                    round.seen_again.push((left.student.clone(), entry.mark));
                }
                Ok(_) => round.changed.push(left.student.clone()),
                // It may be readable again at the next visit.
                Err(_) if !self.tries_again() => {}
                Err(_) => round.changed.push(left.student.clone()),
            }
        }
    }

    fn leave(&self, round: &mut Round) {
        for of in &self.to_leave {
            let bytes = &of.sealed.bytes;
            let mut name = of.name.clone();
            let mut written = self.folder.write(&name, bytes, of.changed);
            // The desk reads it under any name.
            if (written.as_ref()).is_err_and(|error| error.kind() == ErrorKind::IsADirectory) {
                name = name.replace(".sfhandin", "-2.sfhandin");
                written = self.folder.write(&name, bytes, of.changed);
            }
            match written {
                Ok(()) => {
                    let left = Left {
                        student: of.student.clone(),
                        sender: of.sender.clone(),
                        name,
                        newest: of.sealed.last_sequence(),
                        made_on: of.sealed.made_on(),
                        digest: digest_of(&[bytes]),
                        mark: None,
                    };
                    round.left.push((left, Arc::clone(&of.sealed)));
                }
                Err(error) => round.trouble = Some(error.into()),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn versions_of_a_day_differ_and_do_not_tell_how_many_there_were_before() {
        let days: Vec<NaiveDate> = (1..=28)
            .map(|day| NaiveDate::from_ymd_opt(2026, 9, day).unwrap())
            .collect();
        for seed in [[1; 32], [2; 32]] {
            let at = |day, revision| version_of_day(&seed, day, revision) % 1_800;
            for day in &days {
                assert_ne!(at(*day, 1), at(*day, 2));
            }
            // The first hand-in of a day and its fortieth are spread over the same hour.
            for revision in [1, 40] {
                let seen: std::collections::BTreeSet<u32> =
                    days.iter().map(|day| at(*day, revision) / 450).collect();
                assert_eq!(seen.len(), 4, "{seen:?}");
            }
        }
        let first = version_of_day(&[1; 32], days[0], 1);
        assert_ne!(first, version_of_day(&[2; 32], days[0], 1));
    }
}
