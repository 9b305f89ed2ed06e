//! Finds and lists the reports of the table.

use super::report::{Output, Report, ReportSection};
use super::table::REPORTS;
use super::values::ReportField;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::{Language, Locale};
use surefoot_record::Thing;
use surefoot_report::ReportError;
use surefoot_report::words::Words;
use ts_rs::TS;

/// Finds the report of a name.
pub fn named(name: &str) -> Result<&'static Report, CallError> {
    (REPORTS.iter().find(|report| report.name == name)).ok_or(CallError::NotFound {
        what: Thing::Report,
    })
}

/// A report in the list of the Print screen.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ReportInfo {
    /// Its name in `print` and `preview`.
    pub name: String,
    /// Its section in the list.
    pub section: ReportSection,
    /// Its title.
    pub title: String,
    /// What it is for.
    pub about: String,
    /// The fields it asks for.
    pub fields: Vec<ReportField>,
    /// Whether it has a preview.
    pub previewed: bool,
}

/// The list of the Print screen.
pub fn list(language: Language) -> Result<Vec<ReportInfo>, CallError> {
    let words = Words::new(Locale::from(language));
    let word = |part: &str, id: &str| {
        let found = words.get(&format!("report-{part}-{id}"));
        found.map_err(ReportError::from)
    };
    let info = |report: &Report| -> Result<ReportInfo, CallError> {
        let id = report.name.replace('_', "-");
        Ok(ReportInfo {
            name: report.name.to_owned(),
            section: report.section,
            title: word("name", &id)?,
            about: word("about", &id)?,
            fields: report.fields.to_vec(),
            previewed: !matches!(report.output, Output::File { preview: None, .. }),
        })
    };
    REPORTS.iter().map(info).collect()
}
