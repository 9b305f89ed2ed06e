//! Looking into the table.

use super::report::{Output, Report, ReportSection};
use super::table::REPORTS;
use super::values::ReportField;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::{Language, Locale};
use surefoot_report::ReportError;
use surefoot_report::words::Words;
use ts_rs::TS;

/// The entry of this name.
///
/// # Errors
/// [`CallError::NotFound`].
pub fn named(name: &str) -> Result<&'static Report, CallError> {
    (REPORTS.iter().find(|report| report.name == name)).ok_or(CallError::NotFound {
        what: "report".into(),
    })
}

/// A report as the print screen lists it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ReportInfo {
    /// Names it in `print` and `preview`.
    pub name: String,
    /// Where it is listed.
    pub section: ReportSection,
    /// Its title.
    pub title: String,
    /// What it is for.
    pub about: String,
    /// What it asks for.
    pub fields: Vec<ReportField>,
    /// Whether it can be looked at before it is printed.
    pub previewed: bool,
}

/// The table as the print screen lists it.
///
/// # Errors
/// [`CallError::Internal`] if a message is missing.
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
