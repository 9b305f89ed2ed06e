//! Prints for a student.

use super::StudentDoor;
use crate::context::file_dialogs::FileKind;
use crate::context::values::FileMade;
use crate::error::CallError;
use crate::reports::options::PrintPaper;
use crate::reports::sheets::{CONCEPTS_OF_ONE, fresh_seed, part};
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Locale;
use surefoot_exercises::TakenNames;
use surefoot_report::path::path_pages;
use surefoot_report::sheet::{SheetWish, practice_sheet};
use surefoot_report::{Density, PrintOptions};
use ts_rs::TS;

/// Exercises of each concept on a student's sheet.
const EXERCISES_OF_EACH: u32 = 2;

/// A student's sheet, in the student's language.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentPrint {
    /// The student's id.
    pub student: String,
    /// The paper.
    pub paper: PrintPaper,
}

/// A print of My path.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PathPrint {
    /// The student's id.
    pub student: String,
    /// The paper.
    pub paper: PrintPaper,
    /// Whether it shows the student's goals.
    pub with_goals: bool,
}

/// The options of a student's print, which always has space to work in.
fn own_options(locale: Locale, paper: PrintPaper) -> PrintOptions {
    PrintOptions {
        locale,
        paper: paper.into(),
        density: Density::Roomy,
    }
}

impl StudentDoor {
    /// Prints the practice of this evening, with the answer key on a page of its own.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] if nothing can be practised yet.
    pub fn print_practice(&self, asked: StudentPrint) -> Result<FileMade, CallError> {
        let today = self.context.today();
        let seed = fresh_seed()?;
        let bytes = self.as_student(&asked.student, |store, joined| {
            let queue = surefoot_student::queue(store, joined, today, CONCEPTS_OF_ONE)?;
            let parts = queue
                .into_iter()
                .map(|entry| {
                    let (concept, level) = (&entry.concept, entry.level);
                    let (count, taken) = (EXERCISES_OF_EACH, TakenNames::NONE);
                    part(&joined.facts, concept, level, count, seed, taken)
                })
                .collect::<Result<_, _>>()?;
            let wish = SheetWish {
                parts,
                ..SheetWish::default()
            };
            let options = own_options(joined.locale(), asked.paper);
            Ok(practice_sheet(&wish, &options)?)
        })?;
        self.context
            .hand_over(format!("practice-{seed}.pdf"), FileKind::Pdf, &bytes)
    }

    /// Prints My path, with the goals only if the student wants them.
    pub fn print_path(&self, asked: PathPrint) -> Result<FileMade, CallError> {
        let today = self.context.today();
        let bytes = self.as_student(&asked.student, |store, joined| {
            let mut path = surefoot_student::my_path(store, joined, today)?;
            if !asked.with_goals {
                path.goals.clear();
            }
            let options = own_options(joined.locale(), asked.paper);
            Ok(path_pages(&path, &joined.facts.title, &options)?)
        })?;
        self.context
            .hand_over("my-path.pdf".into(), FileKind::Pdf, &bytes)
    }
}
