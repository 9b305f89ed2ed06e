//! Printing and saving the reports of a class.

use super::{ClassId, DeskDoor};
use crate::context::values::{FileMade, Nothing};
use crate::error::CallError;
use crate::reports::list::{self, ReportInfo};
use crate::reports::options::PrintOptions;
use crate::reports::report::ReportSource;
use crate::reports::sheets::fresh_seed;
use crate::reports::values::ReportValues;
use serde::{Deserialize, Serialize};
use surefoot_report::font::missing_signs;
use surefoot_report::page::ReportPage;
use ts_rs::TS;

/// A report to make.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ReportAsked {
    /// The class's id.
    pub class: String,
    /// The name of the report in the table.
    pub report: String,
    /// The values of its fields.
    pub values: ReportValues,
    /// The options of the print.
    pub options: PrintOptions,
}

/// Words of a print with signs that no font on this computer has.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WithoutFont {
    /// The seat whose name it is; `None` for the title of the class.
    pub seat: Option<u32>,
    /// The words.
    pub words: String,
    /// The signs, which are printed as question marks.
    pub signs: String,
}

impl DeskDoor {
    /// The title of a class and the names in it that a print would show with question marks.
    pub fn without_font(&self, id: ClassId) -> Result<Vec<WithoutFont>, CallError> {
        self.with_class(&id.class, |_, class| {
            let title = (None, &class.row.title);
            let names =
                (class.seats.iter()).filter_map(|row| Some((Some(row.number), row.name.as_ref()?)));
            Ok([title]
                .into_iter()
                .chain(names)
                .map(|(seat, words)| WithoutFont {
                    seat,
                    words: words.clone(),
                    signs: missing_signs(words).into_iter().collect(),
                })
                .filter(|one| !one.signs.is_empty())
                .collect())
        })
    }

    /// The reports that can be printed or saved, and what each asks for.
    pub fn reports(&self, _: Nothing) -> Result<Vec<ReportInfo>, CallError> {
        list::list(self.context.language())
    }

    /// Makes a report and saves it where the person chooses.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] for a missing value and for too little or too much to print,
    /// [`CallError::NotFound`] for an unknown concept or seat.
    pub fn print(&self, asked: ReportAsked) -> Result<FileMade, CallError> {
        let report = list::named(&asked.report)?;
        let with_names = asked.values.with_names.unwrap_or(true);
        let (file_name, made) = self.with_source(&asked, with_names, |source| {
            Ok((report.file_name(source), report.make(source)?))
        })?;
        // The desk is not locked while the person chooses a place.
        let file = self
            .context
            .hand_over(file_name, report.kind, &made.bytes)?;
        if file.place.is_some() {
            self.with_class(&asked.class, |desk, class| made.saved(desk, class))?;
        }
        Ok(file)
    }

    /// The preview of a report. With a seed, a sheet shows the exercises that the print will have.
    /// While names are covered, or if the report is to have none, seats are shown instead.
    ///
    /// # Errors
    /// As [`DeskDoor::print`]; also [`CallError::Invalid`] for a report without a preview.
    pub fn preview(&self, asked: ReportAsked) -> Result<ReportPage, CallError> {
        let report = list::named(&asked.report)?;
        let covered = self.context.settings().names_covered;
        let with_names = !covered && asked.values.with_names.unwrap_or(true);
        self.with_source(&asked, with_names, |source| report.preview(source))
    }

    fn with_source<T>(
        &self,
        asked: &ReportAsked,
        with_names: bool,
        work: impl FnOnce(&ReportSource<'_>) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let today = self.context.today();
        let seed = match asked.values.seed {
            Some(seed) => u64::from(seed),
            None => fresh_seed()?,
        };
        self.with_class(&asked.class, |desk, class| {
            work(&ReportSource {
                desk,
                class,
                values: &asked.values,
                options: asked.options.into(),
                today,
                with_names,
                seed,
            })
        })
    }
}
