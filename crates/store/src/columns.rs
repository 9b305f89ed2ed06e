//! Columns that both stores read and write in the same way. A value that this program
//! does not know is an error that names it, never a default.

use chrono::NaiveDate;
use rusqlite::Row;
use rusqlite::types::Type;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::plain_date::plain_date;
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};
use surefoot_record::{DeviceId, MisconceptionCode, Said};

/// A value that this program does not know.
#[derive(Debug, thiserror::Error)]
#[error("{kind} {found:?} is not known")]
struct Unknown {
    kind: &'static str,
    found: String,
}

/// Returns the error for a value that this program does not write into the column.
pub(super) fn unknown(index: usize, kind: &'static str, found: &str) -> rusqlite::Error {
    let found = found.to_owned();
    rusqlite::Error::FromSqlConversionFailure(index, Type::Text, Box::new(Unknown { kind, found }))
}

/// Returns a value with its place among the student's events; `None` if the student never
/// gave one.
pub(super) fn said<T>(at: Option<u32>, value: Option<T>) -> Option<Said<T>> {
    at.map(|at| Said { at, value })
}

pub(super) fn device_at(row: &Row<'_>, index: usize) -> rusqlite::Result<DeviceId> {
    let text: String = row.get(index)?;
    DeviceId::new(text).map_err(|error| unknown(index, "device", &error.to_string()))
}

pub(super) fn concept_at(row: &Row<'_>, index: usize) -> rusqlite::Result<ConceptId> {
    let text: String = row.get(index)?;
    ConceptId::new(text).map_err(|error| unknown(index, "concept", &error.to_string()))
}

pub(super) fn misconception_at(
    row: &Row<'_>,
    index: usize,
) -> rusqlite::Result<Option<MisconceptionCode>> {
    row.get::<_, Option<String>>(index)?
        .map(MisconceptionCode::new)
        .transpose()
        .map_err(|error| unknown(index, "misconception", &error.to_string()))
}

pub(super) fn date_at(row: &Row<'_>, index: usize) -> rusqlite::Result<NaiveDate> {
    let text = row.get_ref(index)?.as_str()?;
    plain_date(text).ok_or_else(|| unknown(index, "date", text))
}

pub(super) fn confidence_at(row: &Row<'_>, index: usize) -> rusqlite::Result<Option<Confidence>> {
    row.get::<_, Option<u8>>(index)?
        .map(|number| {
            Confidence::try_from(number)
                .map_err(|_| unknown(index, "confidence", &number.to_string()))
        })
        .transpose()
}

pub(super) fn outcome_word(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Right => "right",
        Outcome::Wrong => "wrong",
        Outcome::NotDone => "not_done",
    }
}

pub(super) fn outcome_at(row: &Row<'_>, index: usize) -> rusqlite::Result<Option<Outcome>> {
    row.get_ref(index)?
        .as_str_or_null()?
        .map(|word| match word {
            "right" => Ok(Outcome::Right),
            "wrong" => Ok(Outcome::Wrong),
            "not_done" => Ok(Outcome::NotDone),
            other => Err(unknown(index, "outcome", other)),
        })
        .transpose()
}

pub(super) fn result_word(result: AnswerResult) -> &'static str {
    match result {
        AnswerResult::Alone => "alone",
        AnswerResult::WithHelp => "with_help",
        AnswerResult::Wrong => "wrong",
    }
}

pub(super) fn result_at(row: &Row<'_>, index: usize) -> rusqlite::Result<AnswerResult> {
    match row.get_ref(index)?.as_str()? {
        "alone" => Ok(AnswerResult::Alone),
        "with_help" => Ok(AnswerResult::WithHelp),
        "wrong" => Ok(AnswerResult::Wrong),
        other => Err(unknown(index, "result", other)),
    }
}
