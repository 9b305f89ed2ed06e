//! Columns that both stores read and write alike.

use crate::rating::{AnswerResult, Confidence, Outcome};
use chrono::NaiveDate;
use rusqlite::Row;
use rusqlite::types::Type;

pub(super) fn date_at(row: &Row<'_>, index: usize) -> rusqlite::Result<NaiveDate> {
    let text = row.get_ref(index)?.as_str()?;
    if let Some(date) = plain_date(text) {
        return Ok(date);
    }
    text.parse()
        .map_err(|e| rusqlite::Error::FromSqlConversionFailure(index, Type::Text, Box::new(e)))
}

/// The date of a plain `YYYY-MM-DD`, as it is written here; far quicker than
/// reading every form that a date can have.
fn plain_date(text: &str) -> Option<NaiveDate> {
    let [y1, y2, y3, y4, b'-', m1, m2, b'-', d1, d2] = *text.as_bytes() else {
        return None;
    };
    let number = |digits: &[u8]| {
        digits.iter().try_fold(0_u32, |sum, digit| {
            digit
                .is_ascii_digit()
                .then(|| sum * 10 + u32::from(digit - b'0'))
        })
    };
    NaiveDate::from_ymd_opt(
        i32::try_from(number(&[y1, y2, y3, y4])?).ok()?,
        number(&[m1, m2])?,
        number(&[d1, d2])?,
    )
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
