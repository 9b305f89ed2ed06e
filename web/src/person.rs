//! The person at the page: the files that were picked, and those to save or to share.

use crate::program::Shared;
use serde_json::{Value, json};
use std::mem;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use surefoot_app::{CallError, FileDialogs, FileKind, FileSource};

/// A file that leaves the program.
pub(crate) struct Outgoing {
    pub(crate) name: String,
    pub(crate) media_type: &'static str,
    pub(crate) bytes: Vec<u8>,
}

/// What a call asks of the page.
enum Asked {
    Pick(FileKind),
    Share(String),
}

#[derive(Default)]
struct State {
    /// What the person picked for the next call: a file, or nothing.
    given: Option<Option<(String, Vec<u8>)>>,
    /// What came of sharing.
    share: Option<Shared>,
    asked: Option<Asked>,
    place: String,
    files: Vec<Outgoing>,
    opened: Vec<FileSource>,
}

/// The person, as the program knows them.
pub(crate) struct Person {
    state: Mutex<State>,
    shares: bool,
    prints: bool,
}

impl Person {
    pub(crate) fn new(shares: bool, prints: bool) -> Self {
        Self {
            state: Mutex::default(),
            shares,
            prints,
        }
    }

    fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    pub(crate) fn give(&self, file: Option<(String, Vec<u8>)>) {
        self.state().given = Some(file);
    }

    pub(crate) fn answer_share(&self, how: Shared) {
        self.state().share = Some(how);
    }

    pub(crate) fn saves_to(&self, place: String) {
        self.state().place = place;
    }

    pub(crate) fn open_file(&self, name: String, bytes: Vec<u8>) {
        self.state()
            .opened
            .push(FileSource::from_bytes(name, bytes));
    }

    pub(crate) fn take_files(&self) -> Vec<Outgoing> {
        mem::take(&mut self.state().files)
    }

    /// Returns what the last call asked of the page, and forgets what the page had given it.
    pub(crate) fn asked(&self) -> Option<Value> {
        let mut state = self.state();
        state.given = None;
        state.share = None;
        Some(match state.asked.take()? {
            Asked::Pick(kind) => json!({ "pick": kind.picked_extensions() }),
            Asked::Share(name) => json!({ "share": name }),
        })
    }
}

/// What the program is given.
pub(crate) struct Dialogs(pub(crate) Arc<Person>);

impl FileDialogs for Dialogs {
    fn pick_file(&self, kind: FileKind) -> Result<Option<FileSource>, CallError> {
        let mut state = self.0.state();
        match state.given.take() {
            Some(file) => Ok(file.map(|(name, bytes)| FileSource::from_bytes(name, bytes))),
            None => {
                state.asked = Some(Asked::Pick(kind));
                Err(CallError::Cancelled)
            }
        }
    }

    fn pick_files(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        Ok(self.pick_file(kind)?.map(|file| vec![file]))
    }

    fn pick_folder(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        self.pick_files(kind)
    }

    fn save(&self, name: &str, kind: FileKind, bytes: &[u8]) -> Result<Option<String>, CallError> {
        let mut state = self.0.state();
        state.files.push(outgoing(name, kind, bytes));
        Ok(Some(state.place.clone()))
    }

    fn shares(&self) -> bool {
        self.0.shares
    }

    fn share(&self, name: &str, kind: FileKind, bytes: &[u8]) -> Result<bool, CallError> {
        let mut state = self.0.state();
        match state.share.take() {
            Some(Shared::Went) => Ok(true),
            Some(Shared::Cannot) => Ok(false),
            Some(Shared::Cancelled) => Err(CallError::Cancelled),
            None => {
                state.files.push(outgoing(name, kind, bytes));
                state.asked = Some(Asked::Share(name.to_owned()));
                Err(CallError::Cancelled)
            }
        }
    }

    fn prints(&self) -> bool {
        self.0.prints
    }

    fn take_opened(&self) -> Vec<FileSource> {
        mem::take(&mut self.0.state().opened)
    }
}

fn outgoing(name: &str, kind: FileKind, bytes: &[u8]) -> Outgoing {
    Outgoing {
        name: name.to_owned(),
        media_type: kind.media_type(),
        bytes: bytes.to_vec(),
    }
}
