//! From picked files to exercises, with an account of every line.

use super::csv::read_csv;
use super::own::{OwnExercise, OwnId};
use super::qti::read_item;
use super::{MOST_BANK_BYTES, MOST_EXERCISES, MOST_FILE_BYTES, MOST_FILES};
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::table::without_mark;
use surefoot_catalogue::table::{LineFault, LineRefused};
use surefoot_catalogue::{ConceptId, Language};

/// A picked file; those in a zip come one by one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BankFile {
    /// Its name.
    pub name: String,
    /// Its bytes, at most one more than [`MOST_FILE_BYTES`] need be read.
    pub bytes: Vec<u8>,
}

/// What a class says to a concept's name in a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ConceptFound {
    /// This one.
    One(ConceptId),
    /// None.
    None,
    /// More than one.
    Several,
}

/// A line that is taken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LineTaken {
    /// From 1.
    pub line: u32,
    /// The exercise.
    pub own: OwnExercise,
    /// Parts of the file that were left out.
    pub left_out: Vec<String>,
}

/// The account of a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BankReading {
    /// The file.
    pub file: String,
    /// What is taken.
    pub taken: Vec<LineTaken>,
    /// What is not, in the order of lines.
    pub refused: Vec<LineRefused>,
}

pub(super) type Draft = LineTaken;

/// What a reader of one file found.
#[derive(Default)]
pub(super) struct Drafts {
    pub taken: Vec<Draft>,
    pub refused: Vec<LineRefused>,
}

impl Drafts {
    pub fn refuse(&mut self, line: u32, fault: LineFault) {
        self.refused.push(LineRefused::line(line, fault));
    }
}

/// Reads question banks. `find` looks a concept's name up; `chosen` is the concept of
/// exercises that name none; `held` is what the class has, with its size as JSON; `main`
/// is the language of texts for which a file names none.
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
            let mut drafts = if place >= MOST_FILES {
                refused(LineFault::TooManyFiles {
                    most: u32::try_from(MOST_FILES).unwrap_or(u32::MAX),
                })
            } else {
                read_file(file, find, chosen, main)
            };
            let mut taken = Vec::new();
            for draft in std::mem::take(&mut drafts.taken) {
                match room.take(&draft, &file.name) {
                    Ok(()) => taken.push(draft),
                    Err(fault) => drafts.refuse(draft.line, fault),
                }
            }
            drafts.refused.sort_by_key(|refused| refused.line);
            BankReading {
                file: file.name.clone(),
                taken,
                refused: drafts.refused,
            }
        })
        .collect()
}

/// What the class holds while lines come in.
struct Room {
    ids: BTreeSet<OwnId>,
    seen: BTreeMap<OwnId, (String, u32)>,
    bytes: usize,
}

impl Room {
    fn take(&mut self, draft: &Draft, file: &str) -> Result<(), LineFault> {
        let id = draft.own.id();
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
        let bytes = self.bytes.saturating_add(draft.own.json_bytes());
        if bytes > MOST_BANK_BYTES {
            return Err(LineFault::BankTooLong {
                most_bytes: u32::try_from(MOST_BANK_BYTES).unwrap_or(u32::MAX),
            });
        }
        self.bytes = bytes;
        self.ids.insert(id);
        self.seen.insert(id, (file.to_owned(), draft.line));
        Ok(())
    }
}

fn refused(fault: LineFault) -> Drafts {
    let mut drafts = Drafts::default();
    drafts.refuse(1, fault);
    drafts
}

/// XML starts with `<`, after a mark and white space.
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
) -> Drafts {
    if file.bytes.len() > MOST_FILE_BYTES {
        return refused(LineFault::FileTooLarge {
            most_bytes: MOST_FILE_BYTES as u64,
        });
    }
    if !is_xml(&file.bytes) {
        return read_csv(&file.bytes, find, chosen, main);
    }
    // A label that names no concept is a label for something else.
    let concept = |label: &str| match find(label) {
        ConceptFound::One(id) if !label.is_empty() => Ok(id),
        _ => chosen.cloned().ok_or(LineFault::NoConceptChosen),
    };
    let mut drafts = Drafts::default();
    match read_item(&file.bytes, &concept, main) {
        Ok(item) => drafts.taken.push(Draft {
            line: item.line,
            own: item.own,
            left_out: item.left_out,
        }),
        Err((line, fault)) => drafts.refuse(line, fault),
    }
    drafts
}
