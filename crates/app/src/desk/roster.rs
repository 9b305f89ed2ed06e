//! Rosters, pasted or from files.

use super::DeskDoor;
use crate::context::file_dialogs::FileKind;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::read_files::roster_files::roster_files;
use serde::{Deserialize, Serialize};
use surefoot_desk::RosterFile;
use ts_rs::TS;

/// Roster text as pasted: a name a line, or a column of a table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterText {
    /// The text.
    pub text: String,
}

/// The names found in a roster text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterNames {
    /// One a seat.
    pub names: Vec<String>,
    /// Lines left out, each with its number from 1: empty, too long, or twice.
    pub left_out: Vec<usize>,
}

impl DeskDoor {
    /// The names in a pasted roster.
    pub fn read_roster(&self, roster: RosterText) -> Result<RosterNames, CallError> {
        let (names, left_out) = surefoot_desk::read_roster(&roster.text);
        Ok(RosterNames { names, left_out })
    }

    /// Reads a roster out of files that the person picks; nothing if they
    /// decide against it. Only names and titles leave the files.
    ///
    /// # Errors
    /// [`CallError::Files`], [`CallError::Refused`] for a file too large or
    /// unreadable, [`CallError::Invalid`] when no name is in it.
    pub fn pick_roster(&self, _: Nothing) -> Result<Option<RosterFile>, CallError> {
        let Some(sources) = self.context.dialogs.pick_files(FileKind::Roster)? else {
            return Ok(None);
        };
        let files = roster_files(sources)?;
        Ok(Some(surefoot_desk::read_roster_files(&files)?))
    }
}
