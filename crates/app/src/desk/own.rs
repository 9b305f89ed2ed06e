//! The teacher's own exercises and concepts.

use super::removed::RemovedWhat;
use super::{ClassId, DeskDoor};
use crate::context::file_dialogs::FileKind;
use crate::error::CallError;
use crate::read_files::bank_files::bank_files;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::catalogue_file::{CatalogueReading, ConceptDraft, MOST_CATALOGUE_BYTES};
use surefoot_catalogue::table::LineRefused;
use surefoot_desk::{OwnDesk, OwnExercisePage, OwnTried};
use surefoot_exercises::Response;
use surefoot_store::DeskStore;
use ts_rs::TS;

/// Question banks to import.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OwnImportAsked {
    /// The class.
    pub class: String,
    /// The concept for lines and items that name no concept.
    pub concept: Option<String>,
}

/// An import of own exercises or concepts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OwnImportId {
    /// The class.
    pub class: String,
    /// Its number in the class.
    pub number: u32,
}

/// An own exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OwnExerciseId {
    /// The class.
    pub class: String,
    /// Its id.
    pub id: String,
}

/// An answer to try on an own exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OwnExerciseTry {
    /// The class.
    pub class: String,
    /// Its id.
    pub id: String,
    /// The answer.
    pub response: Response,
}

/// Drafts that the teacher picked from a file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ConceptsPicked {
    /// The class.
    pub class: String,
    /// The name of the file, for the import report.
    pub file: String,
    /// The picked drafts, as the teacher edited them.
    pub drafts: Vec<ConceptDraft>,
    /// The refused lines, for the import report.
    pub refused: Vec<LineRefused>,
}

impl DeskDoor {
    fn own_after(
        &self,
        class: &str,
        work: impl FnOnce(&DeskStore) -> Result<(), CallError>,
    ) -> Result<OwnDesk, CallError> {
        let language = self.context.language();
        self.with_desk(|desk| {
            work(desk)?;
            Ok(surefoot_desk::own_desk(desk, class, language)?)
        })
    }

    /// The own exercises and concepts of a class.
    pub fn own_desk(&self, id: ClassId) -> Result<OwnDesk, CallError> {
        self.own_after(&id.class, |_| Ok(()))
    }

    /// Imports question banks that the person picks. Returns `None` if the person cancels. Stores
    /// the valid lines; the import report gives the reason for every other one.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a file that cannot be read.
    pub fn import_own_exercises(
        &self,
        asked: OwnImportAsked,
    ) -> Result<Option<OwnDesk>, CallError> {
        let Some(sources) = self.context.dialogs.pick_files(FileKind::Bank)? else {
            return Ok(None);
        };
        let files = bank_files(sources)?;
        let main = self.context.language();
        let today = self.context.today();
        self.own_after(&asked.class, |desk| {
            Ok(surefoot_desk::import_exercises(
                desk,
                &asked.class,
                &files,
                asked.concept.as_deref(),
                main,
                today,
            )?)
        })
        .map(Some)
    }

    /// Undoes an import. Its exercises or concepts can be restored for ten minutes.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] if one of its concepts is in the rotation.
    pub fn undo_own_import(&self, id: OwnImportId) -> Result<OwnDesk, CallError> {
        self.own_after(&id.class, |desk| {
            let class = surefoot_desk::open_class(desk, &id.class)?;
            let rows = surefoot_desk::undo_own_import(desk, &id.class, id.number)?;
            self.keep_removed(&class, RemovedWhat::OwnImport, rows);
            Ok(())
        })
    }

    /// Removes one own exercise. It can be restored for ten minutes.
    pub fn remove_own_exercise(&self, id: OwnExerciseId) -> Result<OwnDesk, CallError> {
        self.own_after(&id.class, |desk| {
            let class = surefoot_desk::open_class(desk, &id.class)?;
            let rows = surefoot_desk::remove_own_exercise(desk, &id.class, &id.id)?;
            self.keep_removed(&class, RemovedWhat::OwnExercise, rows);
            Ok(())
        })
    }

    /// An own exercise as the student sees it.
    pub fn own_exercise(&self, id: OwnExerciseId) -> Result<OwnExercisePage, CallError> {
        let language = self.context.language();
        self.with_desk(|desk| {
            Ok(surefoot_desk::own_exercise(
                desk, &id.class, &id.id, language,
            )?)
        })
    }

    /// Marks an answer to an own exercise and counts nothing.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] for an answer that cannot be read.
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

    /// Reads the concepts of a file that the person picks, and stores nothing.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a file that cannot be read.
    pub fn pick_concepts(&self, id: ClassId) -> Result<Option<CatalogueReading>, CallError> {
        let Some(source) = self.context.dialogs.pick_file(FileKind::Catalogue)? else {
            return Ok(None);
        };
        let name = source.name().to_owned();
        let bytes = source.read(MOST_CATALOGUE_BYTES as u64)?;
        let main = self.context.language();
        self.with_desk(|desk| {
            Ok(surefoot_desk::read_concepts(
                desk, &id.class, &name, &bytes, main,
            )?)
        })
        .map(Some)
    }

    /// Makes concepts of the picked drafts.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] without a draft.
    pub fn import_concepts(&self, picked: ConceptsPicked) -> Result<OwnDesk, CallError> {
        let (main, today) = (self.context.language(), self.context.today());
        self.own_after(&picked.class, |desk| {
            Ok(surefoot_desk::import_concepts(
                desk,
                &picked.class,
                &picked.file,
                &picked.drafts,
                &picked.refused,
                main,
                today,
            )?)
        })
    }
}
