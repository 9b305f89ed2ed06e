//! An entry of the table, and the file made from it.

use super::values::{ReportField, ReportValues};
use crate::context::file_dialogs::FileKind;
use crate::error::CallError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::{Language, Locale};
use surefoot_desk::OpenClass;
use surefoot_report::PrintOptions;
use surefoot_report::page::{self, ReportPage};
use surefoot_store::DeskStore;
use ts_rs::TS;

/// A section in the list of the Print screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum ReportSection {
    /// Practice sheets with fresh numbers.
    Sheet,
    /// Practice sheets for one student.
    SeatSheet,
    /// The warm-up of a day.
    WarmUp,
    /// Charts for self-ratings on paper.
    Chart,
    /// Reports on a student, a group or the class.
    Report,
    /// Tables for other programs, without names.
    Table,
    /// Join slips.
    Slips,
}

/// Makes the preview of a report.
pub type Preview = fn(&ReportSource<'_>) -> Result<ReportPage, CallError>;

/// An entry of the table.
pub struct Report {
    /// Its name in calls, in the command and in messages.
    pub name: &'static str,
    /// Its section in the list.
    pub section: ReportSection,
    /// The fields it asks for.
    pub fields: &'static [ReportField],
    /// The name of its file after the class's, without the extension; `{seat}`, `{seed}`,
    /// `{date}` (today) and `{day}` (the day asked for) are replaced, and `{one}` if it is for one
    /// of all seats.
    pub file_name: &'static str,
    /// The kind of its file.
    pub kind: FileKind,
    pub(super) output: Output,
}

/// The builder of a report.
pub(super) enum Output {
    /// Builds a page, which is the preview and is printed as PDF.
    Page {
        fits_one_sheet: bool,
        build: fn(&ReportSource<'_>) -> Result<ReportPage, CallError>,
    },
    /// Builds the file, and the preview if there is one.
    File {
        preview: Option<Preview>,
        make: fn(&ReportSource<'_>) -> Result<Made, CallError>,
    },
}

/// The input of a report.
pub struct ReportSource<'a> {
    /// The desk.
    pub desk: &'a DeskStore,
    /// The class.
    pub class: &'a OpenClass,
    /// The values of the fields.
    pub values: &'a ReportValues,
    /// The options of the print.
    pub options: PrintOptions,
    /// The date of the report.
    pub today: NaiveDate,
    /// Whether names of students may be in it.
    pub with_names: bool,
    /// The seed of fresh numbers.
    pub seed: u64,
}

impl ReportSource<'_> {
    pub(super) fn language(&self) -> Language {
        self.options.locale.language
    }

    /// The day asked for: today or the next school day if left out; `None` after the year.
    pub(super) fn day(&self) -> Option<NaiveDate> {
        let year = &self.class.facts.year;
        surefoot_desk::day_to_show(year, self.values.date.unwrap_or(self.today))
    }

    pub(super) fn locale(&self) -> Locale {
        self.options.locale
    }
}

/// What to do after the file is saved.
pub(super) type AfterSaving = Box<dyn FnOnce(&DeskStore, &OpenClass) -> Result<(), CallError>>;

/// A file that is made and not saved yet.
pub struct Made {
    /// The content of the file.
    pub bytes: Vec<u8>,
    pub(super) after_saving: Option<AfterSaving>,
}

impl Made {
    pub(super) fn new(bytes: Vec<u8>) -> Self {
        Self {
            bytes,
            after_saving: None,
        }
    }

    /// Records at the desk that the file was saved, for reports that need it.
    pub fn saved(self, desk: &DeskStore, class: &OpenClass) -> Result<(), CallError> {
        match self.after_saving {
            Some(note) => note(desk, class),
            None => Ok(()),
        }
    }
}

impl Report {
    /// The name of its file.
    #[must_use]
    pub fn file_name(&self, source: &ReportSource<'_>) -> String {
        let seat = source.values.seat.map(|seat| seat.to_string());
        let one = self.fields.contains(&ReportField::SeatOrAll) && seat.is_some();
        let name = (self.file_name)
            .replace("{one}", if one { "-seat-{seat}" } else { "" })
            .replace("{seat}", &seat.unwrap_or_default())
            .replace("{seed}", &source.seed.to_string())
            .replace("{date}", &source.today.to_string())
            .replace("{day}", &source.day().unwrap_or(source.today).to_string());
        let class = surefoot_desk::file_stem(&source.class.row.title);
        format!("{class}-{name}.{}", self.kind.extension())
    }

    /// Makes the file.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] for a value that is missing, not asked for or out of range,
    /// and for a report without content; [`CallError::NotFound`] for an unknown seat or concept.
    pub fn make(&self, source: &ReportSource<'_>) -> Result<Made, CallError> {
        source.values.check(self.fields)?;
        match &self.output {
            Output::Page {
                fits_one_sheet,
                build,
            } => {
                let page = build(source)?;
                Ok(Made::new(page::print(
                    &page,
                    &source.options,
                    *fits_one_sheet,
                )?))
            }
            Output::File { make, .. } => make(source),
        }
    }

    /// Makes the preview.
    ///
    /// # Errors
    /// As [`Report::make`]; also [`CallError::BadArguments`] for a report without a preview.
    pub fn preview(&self, source: &ReportSource<'_>) -> Result<ReportPage, CallError> {
        source.values.check(self.fields)?;
        match &self.output {
            Output::Page { build, .. } => build(source),
            Output::File {
                preview: Some(preview),
                ..
            } => preview(source),
            Output::File { preview: None, .. } => Err(CallError::BadArguments {
                detail: "the report has no preview".into(),
            }),
        }
    }
}
