//! Prints of a student's own.

use super::StudentDoor;
use crate::context::file_dialogs::FileKind;
use crate::context::values::FileMade;
use crate::error::CallError;
use crate::reports::options::{PrintOptions, PrintPaper};
use crate::reports::sheets::{CONCEPTS_OF_ONE, fresh_seed, part};
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Locale;
use surefoot_report::Look;
use surefoot_report::path::path_pages;
use surefoot_report::sheet::{SheetWish, practice_sheet};
use ts_rs::TS;

/// Exercises of each concept on a sheet that the student prints.
const EXERCISES_OF_EACH: u32 = 2;

/// A print of a student's own, in the student's language.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentPrint {
    /// The student's id.
    pub student: String,
    /// The paper.
    pub paper: PrintPaper,
}

/// A print of a student's path.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PathPrint {
    /// The student's id.
    pub student: String,
    /// The paper.
    pub paper: PrintPaper,
    /// Whether the student's own goals go on it.
    pub with_goals: bool,
}

/// A student's print has space to work.
fn own_look(locale: Locale, paper: PrintPaper) -> Look {
    let options = PrintOptions {
        language: locale.language,
        paper,
        roomy: true,
    };
    Look {
        locale,
        ..options.into()
    }
}

impl StudentDoor {
    /// Prints tonight's practice of a student, with its key on a page apart.
    ///
    /// # Errors
    /// [`CallError::Invalid`] when nothing can be practised yet,
    /// [`CallError::Locked`], [`CallError::Files`].
    pub fn print_practice(&self, asked: StudentPrint) -> Result<FileMade, CallError> {
        let today = self.context.today();
        let seed = fresh_seed()?;
        let bytes = self.as_student(&asked.student, |store, joined| {
            let queue = surefoot_student::queue(store, joined, today, CONCEPTS_OF_ONE)?;
            let parts = queue
                .into_iter()
                .map(|entry| {
                    let (concept, level) = (&entry.concept, entry.level);
                    part(&joined.facts, concept, level, EXERCISES_OF_EACH, seed)
                })
                .collect::<Result<_, _>>()?;
            let wish = SheetWish {
                parts,
                ..SheetWish::default()
            };
            let look = own_look(joined.locale(), asked.paper);
            Ok(practice_sheet(&wish, &look)?)
        })?;
        self.context
            .hand_over(format!("practice-{seed}.pdf"), FileKind::Pdf, &bytes)
    }

    /// Prints a student's path, for the folder; the goals only where the student says so.
    pub fn print_path(&self, asked: PathPrint) -> Result<FileMade, CallError> {
        let today = self.context.today();
        let bytes = self.as_student(&asked.student, |store, joined| {
            let mut path = surefoot_student::my_path(store, joined, today)?;
            if !asked.with_goals {
                path.goals.clear();
            }
            let look = own_look(joined.locale(), asked.paper);
            Ok(path_pages(&path, &joined.facts.title, &look)?)
        })?;
        self.context
            .hand_over("my-path.pdf".into(), FileKind::Pdf, &bytes)
    }
}
