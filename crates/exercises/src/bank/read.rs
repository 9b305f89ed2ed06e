//! Reads picked files into exercises, and says of every line what became of it.

use super::csv::read_csv;
use super::own::OwnId;
use super::qti::read_item;
use super::reading::{ConceptFound, FileLines, LineTaken};
use super::{MOST_BANK_BYTES, MOST_EXERCISES, MOST_FILE_BYTES, MOST_FILES};
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::table::{LineFault, LineRefused, without_mark};
use surefoot_catalogue::{ConceptId, Language};

/// A picked file, or a file in a picked zip.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BankFile {
    /// Its name.
    pub name: String,
    /// Its bytes; of a larger file [`MOST_FILE_BYTES`] and one more are enough.
    pub bytes: Vec<u8>,
}

/// What became of the lines of a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BankReading {
    /// The name of the file.
    pub file: String,
    /// The lines that are taken.
    pub taken: Vec<LineTaken>,
    /// The lines that are refused, in their order.
    pub refused: Vec<LineRefused>,
}

/// Reads question banks. `find` looks up the name of a concept. `chosen` is the concept of
/// exercises that name no concept. `held` are the exercises of the class, each with its size as
/// JSON in bytes. `main` is the language of texts for which a file names none.
#[must_use]
pub fn read_bank(
    files: &[BankFile],
    find: &dyn Fn(&str) -> ConceptFound,
    chosen: Option<&ConceptId>,
    held: &BTreeMap<OwnId, usize>,
    main: Language,
) -> Vec<BankReading> {
    let mut room = Room {
        ids: held.keys().copied().collect(),
        seen: BTreeMap::new(),
        bytes: held.values().sum(),
    };
    files
        .iter()
        .enumerate()
        .map(|(place, file)| {
            let mut lines = if place >= MOST_FILES {
                refused(LineFault::TooManyFiles {
                    most: u32::try_from(MOST_FILES).unwrap_or(u32::MAX),
                })
            } else {
                read_file(file, find, chosen, main)
            };
            let mut taken = Vec::new();
            for line in std::mem::take(&mut lines.taken) {
                match room.take(&line, &file.name) {
                    Ok(()) => taken.push(line),
                    Err(fault) => lines.refuse(line.line, fault),
                }
            }
            lines.refused.sort_by_key(|refused| refused.line);
            BankReading {
                file: file.name.clone(),
                taken,
                refused: lines.refused,
            }
        })
        .collect()
}

/// The exercises of the class and of the lines so far.
struct Room {
    ids: BTreeSet<OwnId>,
    seen: BTreeMap<OwnId, (String, u32)>,
    bytes: usize,
}

impl Room {
    fn take(&mut self, taken: &LineTaken, file: &str) -> Result<(), LineFault> {
        let id = taken.own.id();
        if let Some((file, line)) = self.seen.get(&id) {
            return Err(LineFault::SameAsLine {
                file: file.clone(),
                line: *line,
            });
        }
        if self.ids.contains(&id) {
            return Err(LineFault::AlreadyThere);
        }
        if self.ids.len() >= MOST_EXERCISES {
            return Err(LineFault::BankFull {
                most: u32::try_from(MOST_EXERCISES).unwrap_or(u32::MAX),
            });
        }
        let bytes = self.bytes.saturating_add(taken.own.json_bytes());
        if bytes > MOST_BANK_BYTES {
            return Err(LineFault::BankTooLong {
                most_bytes: u32::try_from(MOST_BANK_BYTES).unwrap_or(u32::MAX),
            });
        }
        self.bytes = bytes;
        self.ids.insert(id);
        self.seen.insert(id, (file.to_owned(), taken.line));
        Ok(())
    }
}

fn refused(fault: LineFault) -> FileLines {
    let mut lines = FileLines::default();
    lines.refuse(1, fault);
    lines
}

/// Whether the first sign after the byte-order mark and white space is `<`.
fn is_xml(bytes: &[u8]) -> bool {
    without_mark(bytes)
        .iter()
        .find(|b| !b.is_ascii_whitespace())
        .is_some_and(|b| *b == b'<')
}

fn read_file(
    file: &BankFile,
    find: &dyn Fn(&str) -> ConceptFound,
    chosen: Option<&ConceptId>,
    main: Language,
) -> FileLines {
    if file.bytes.len() > MOST_FILE_BYTES {
        return refused(LineFault::FileTooLarge {
            most_bytes: MOST_FILE_BYTES as u64,
        });
    }
    if !is_xml(&file.bytes) {
        return read_csv(&file.bytes, find, chosen, main);
    }
    // The label of an item may name something else than a concept.
    let concept = |label: &str| match find(label) {
        ConceptFound::One(id) if !label.is_empty() => Ok(id),
        _ => chosen.cloned().ok_or(LineFault::NoConceptChosen),
    };
    let mut lines = FileLines::default();
    match read_item(&file.bytes, &concept, main) {
        Ok(taken) => lines.taken.push(taken),
        Err((line, fault)) => lines.refuse(line, fault),
    }
    lines
}
