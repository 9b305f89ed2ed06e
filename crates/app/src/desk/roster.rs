//! Rosters, pasted or from files.

use super::DeskDoor;
use crate::context::file_dialogs::FileKind;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::read_files::roster_files::roster_files;
use serde::{Deserialize, Serialize};
use surefoot_desk::{Roster, RosterFile};
use ts_rs::TS;

/// A pasted roster: one student a line, or a table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterText {
    /// The text.
    pub text: String,
}

impl DeskDoor {
    /// Reads a pasted roster.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] for a line that is too long.
    pub fn read_roster(&self, roster: RosterText) -> Result<Roster, CallError> {
        Ok(surefoot_desk::read_roster(&roster.text)?)
    }

    /// Reads the roster files that the person picks, and keeps only names and titles. Returns
    /// `None` if the person cancels.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a file that is too large or cannot be read,
    /// [`CallError::Invalid`] if it holds no name.
    pub fn pick_roster(&self, _: Nothing) -> Result<Option<RosterFile>, CallError> {
        let Some(sources) = self.context.dialogs.pick_files(FileKind::Roster)? else {
            return Ok(None);
        };
        let files = roster_files(sources)?;
        Ok(Some(surefoot_desk::read_roster_files(&files)?))
    }
}
