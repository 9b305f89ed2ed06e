//! Columns that both stores read and write alike.

use chrono::NaiveDate;
use rusqlite::Row;
use rusqlite::types::Type;
use surefoot_catalogue::plain_date::plain_date;
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};

pub(super) fn date_at(row: &Row<'_>, index: usize) -> rusqlite::Result<NaiveDate> {
    let text = row.get_ref(index)?.as_str()?;
    if let Some(date) = plain_date(text) {
        return Ok(date);
    }
    text.parse()
        .map_err(|e| rusqlite::Error::FromSqlConversionFailure(index, Type::Text, Box::new(e)))
}

pub(super) fn confidence_at(row: &Row<'_>, index: usize) -> rusqlite::Result<Option<Confidence>> {
    row.get::<_, Option<u8>>(index)?
        .map(|number| {
            Confidence::try_from(number).map_err(|e| {
                rusqlite::Error::FromSqlConversionFailure(index, Type::Integer, e.into())
            })
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
    Ok(row
        .get_ref(index)?
        .as_str_or_null()?
        .map(|word| match word {
            "right" => Outcome::Right,
            "wrong" => Outcome::Wrong,
            _ => Outcome::NotDone,
        }))
}

pub(super) fn result_word(result: AnswerResult) -> &'static str {
    match result {
        AnswerResult::Alone => "alone",
        AnswerResult::WithHelp => "with_help",
        AnswerResult::Wrong => "wrong",
    }
}

pub(super) fn result_at(row: &Row<'_>, index: usize) -> rusqlite::Result<AnswerResult> {
    Ok(match row.get_ref(index)?.as_str()? {
        "alone" => AnswerResult::Alone,
        "with_help" => AnswerResult::WithHelp,
        _ => AnswerResult::Wrong,
    })
}
