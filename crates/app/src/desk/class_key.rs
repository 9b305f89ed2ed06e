//! The class key: a class for the teacher's second computer.

use super::DeskDoor;
use crate::context::copies::StoreName;
use crate::context::file_dialogs::FileKind;
use crate::context::picked::{OpenSealed, PickedSealed};
use crate::context::values::{FileMade, Nothing};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::ClassSetup;
use surefoot_exchange::CLASS_KEY_CAPS;
use ts_rs::TS;

/// A class key to make.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassKeyAsked {
    /// The class.
    pub class: String,
    /// The passphrase, at least 8 characters.
    pub passphrase: String,
    /// Whether the computer that opens it saves the class packs from then on, and this one does not.
    pub hand_over: bool,
}

/// Whether this computer saves the packs of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SavesPacks {
    /// The class.
    pub class: String,
    /// Whether it does.
    pub saves: bool,
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
                surefoot_desk::export_class(&class, &asked.passphrase, asked.hand_over)?,
            ))
        })?;
        let file_name = format!("{stem}-key-{}.sfkey", self.context.device_today());
        let made = self
            .context
            .hand_over(file_name, FileKind::ClassKey, &bytes)?;
        if asked.hand_over && made.place.is_some() {
            self.with_desk(|desk| Ok(surefoot_desk::set_saves_packs(desk, &asked.class, false)?))?;
        }
        Ok(made)
    }

    /// Notes whether this computer saves the packs of a class, or another one does.
    pub fn set_saves_packs(&self, new: SavesPacks) -> Result<ClassSetup, CallError> {
        self.setup_after(&new.class, |desk| {
            Ok(surefoot_desk::set_saves_packs(desk, &new.class, new.saves)?)
        })
    }

    /// Lets the person pick a class key file.
    pub fn pick_class_key(&self, _: Nothing) -> Result<Option<PickedSealed>, CallError> {
        self.context.own_only()?;
        self.context
            .pick_sealed(FileKind::ClassKey, &CLASS_KEY_CAPS)
    }

    /// Adds the class of the picked class key file to this desk, or brings it up to date if another
    /// computer saves its packs. The desk is copied before, so that this can be undone.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for the wrong passphrase or a damaged file,
    /// [`CallError::Invalid`] if this computer saves the packs of the class already.
    pub fn import_class(&self, asked: OpenSealed) -> Result<Nothing, CallError> {
        self.context.own_only()?;
        let file = self
            .context
            .open_sealed(&asked, surefoot_desk::read_class_key)?;
        self.with_desk(|desk| {
            self.context
                .keep_copy(&StoreName::Desk, true, |into| desk.copy_into(into));
            Ok(surefoot_desk::import_class(desk, &file)?)
        })?;
        Ok(Nothing {})
    }
}
