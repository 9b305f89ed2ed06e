//! The projector without names, also while the desk is locked.

use super::DeviceDoor;
use crate::context::values::Nothing;
use crate::desk::ClassId;
use crate::error::CallError;
use surefoot_desk::{ClassTitle, ProjectorDay};
use surefoot_record::Thing;
use surefoot_store::DeskStore;

impl DeviceDoor {
    /// The classes that a projector can show. Answers also while the desk is locked, because it
    /// needs no key.
    pub fn projector_classes(&self, _: Nothing) -> Result<Vec<ClassTitle>, CallError> {
        self.without_key(|desk| Ok(surefoot_desk::class_titles(desk)?))
    }

    /// The concepts and exercises of today, without a name and without what the class knows.
    /// Answers also while the desk is locked, because it needs no key.
    pub fn projector(&self, asked: ClassId) -> Result<ProjectorDay, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.without_key(|desk| {
            Ok(surefoot_desk::projector_day(
                desk,
                &asked.class,
                language,
                today,
            )?)
        })
    }

    /// Reads the store of the desk without its key.
    fn without_key<T>(
        &self,
        work: impl FnOnce(&DeskStore) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let path = self.context.data().desk();
        if !path.is_file() {
            return Err(CallError::NotFound { what: Thing::Class });
        }
        let durability = self.context.durability();
        work(&DeskStore::open_again(&path, durability)?)
    }
}
