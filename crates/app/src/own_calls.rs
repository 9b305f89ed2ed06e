//! Calls for the teacher's own exercises and concepts.

use crate::app::App;
use crate::bank_files::bank_files;
use crate::{
    CallError, ClassId, ConceptsPicked, FileKind, OwnExerciseId, OwnExerciseTry, OwnImportAsked,
    OwnImportId, RemovedWhat,
};
use surefoot_catalogue::catalogue_file::{CatalogueReading, MOST_CATALOGUE_BYTES};
use surefoot_desk::{OwnDesk, OwnExercisePage, OwnTried};
use surefoot_store::DeskStore;

impl App {
    fn own_after(
        &self,
        class: &str,
        work: impl FnOnce(&DeskStore) -> Result<(), CallError>,
    ) -> Result<OwnDesk, CallError> {
        let language = self.language();
        self.with_desk(|desk| {
            work(desk)?;
            Ok(surefoot_desk::own_desk(desk, class, language)?)
        })
    }

    /// Everything of the teacher's own in a class.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn own_desk(&self, id: ClassId) -> Result<OwnDesk, CallError> {
        self.own_after(&id.class, |_| Ok(()))
    }

    /// Takes in question banks that the person picks; nothing when they changed their
    /// mind. Good lines are stored, the others stand in the account with their reason.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a file that cannot be read, [`CallError::NotFound`], or the store's.
    pub fn import_own_exercises(
        &self,
        asked: OwnImportAsked,
    ) -> Result<Option<OwnDesk>, CallError> {
        let Some(sources) = self.door.pick_files(FileKind::Bank)? else {
            return Ok(None);
        };
        let files = bank_files(sources)?;
        let today = self.this_day();
        self.own_after(&asked.class, |desk| {
            Ok(surefoot_desk::import_exercises(
                desk,
                &asked.class,
                &files,
                asked.concept.as_deref(),
                today,
            )?)
        })
        .map(Some)
    }

    /// Takes an import back. For a while what it brought can be brought back from memory.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::Invalid`] when one of its concepts is in the
    /// rotation, or the store's.
    pub fn undo_own_import(&self, id: OwnImportId) -> Result<OwnDesk, CallError> {
        self.own_after(&id.class, |desk| {
            let class = surefoot_desk::open_class(desk, &id.class)?;
            let rows = surefoot_desk::undo_own_import(desk, &id.class, id.number)?;
            self.hold(&class, RemovedWhat::OwnImport, rows);
            Ok(())
        })
    }

    /// Takes one own exercise away. For a while it can be brought back from memory.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn remove_own_exercise(&self, id: OwnExerciseId) -> Result<OwnDesk, CallError> {
        self.own_after(&id.class, |desk| {
            let class = surefoot_desk::open_class(desk, &id.class)?;
            let rows = surefoot_desk::remove_own_exercise(desk, &id.class, &id.id)?;
            self.hold(&class, RemovedWhat::OwnExercise, rows);
            Ok(())
        })
    }

    /// An own exercise as the student sees it.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn own_exercise(&self, id: OwnExerciseId) -> Result<OwnExercisePage, CallError> {
        let language = self.language();
        self.with_desk(|desk| {
            Ok(surefoot_desk::own_exercise(
                desk, &id.class, &id.id, language,
            )?)
        })
    }

    /// Marks an answer to an own exercise; nothing is counted.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::Invalid`] for an answer that cannot be read, or
    /// the store's.
    pub fn try_own_exercise(&self, tried: OwnExerciseTry) -> Result<OwnTried, CallError> {
        self.with_desk(|desk| {
            Ok(surefoot_desk::try_own_exercise(
                desk,
                &tried.class,
                &tried.id,
                &tried.response,
            )?)
        })
    }

    /// Reads concepts out of a file that the person picks; nothing is stored yet.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a file that cannot be read, [`CallError::NotFound`], or the store's.
    pub fn pick_concepts(&self, id: ClassId) -> Result<Option<CatalogueReading>, CallError> {
        let Some(source) = self.door.pick_file(FileKind::Catalogue)? else {
            return Ok(None);
        };
        let name = source.name().to_owned();
        let bytes = source.read(MOST_CATALOGUE_BYTES as u64)?;
        self.with_desk(|desk| {
            Ok(surefoot_desk::read_concepts(
                desk, &id.class, &name, &bytes,
            )?)
        })
        .map(Some)
    }

    /// Makes concepts of what the person picked.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::Invalid`] without any, or the store's.
    pub fn import_concepts(&self, picked: ConceptsPicked) -> Result<OwnDesk, CallError> {
        let today = self.this_day();
        self.own_after(&picked.class, |desk| {
            Ok(surefoot_desk::import_concepts(
                desk,
                &picked.class,
                &picked.file,
                &picked.drafts,
                &picked.refused,
                today,
            )?)
        })
    }
}
