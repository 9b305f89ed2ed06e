//! The class key: a class for the teacher's second computer.

use super::DeskDoor;
use crate::context::file_dialogs::FileKind;
use crate::context::picked::{OpenSealed, PickedSealed};
use crate::context::values::{FileMade, Nothing};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_exchange::CLASS_KEY_CAPS;
use ts_rs::TS;

/// A class key to make.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassKeyAsked {
    /// The class.
    pub class: String,
    /// The passphrase, at least 8 characters.
    pub passphrase: String,
}

impl DeskDoor {
    /// Seals a class with its keys and names for the teacher's second computer.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a passphrase that is too short.
    pub fn export_class(&self, asked: ClassKeyAsked) -> Result<FileMade, CallError> {
        self.context.own_only()?;
        let (stem, bytes) = self.with_desk(|desk| {
            let class = surefoot_desk::open_class(desk, &asked.class)?;
            let stem = surefoot_desk::file_stem(&class.row.title);
            Ok((
                stem,
                surefoot_desk::export_class(&class, &asked.passphrase)?,
            ))
        })?;
        let file_name = format!("{stem}-key-{}.sfkey", self.context.device_today());
        self.context
            .hand_over(file_name, FileKind::ClassKey, &bytes)
    }

    /// Lets the person pick a class key file.
    pub fn pick_class_key(&self, _: Nothing) -> Result<Option<PickedSealed>, CallError> {
        self.context.own_only()?;
        self.context
            .pick_sealed(FileKind::ClassKey, &CLASS_KEY_CAPS)
    }

    /// Adds the class of the picked class key file to this desk.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for the wrong passphrase or a damaged file,
    /// [`CallError::Invalid`] if the class is at this desk already.
    pub fn import_class(&self, asked: OpenSealed) -> Result<Nothing, CallError> {
        self.context.own_only()?;
        let file = self
            .context
            .open_sealed(&asked, surefoot_desk::read_class_key)?;
        self.with_desk(|desk| Ok(surefoot_desk::import_class(desk, &file)?))?;
        Ok(Nothing {})
    }
}
