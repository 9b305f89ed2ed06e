//! Reads typed numbers exactly and within bounds.

use num_rational::Ratio;
use num_traits::{CheckedAdd, CheckedMul};
use thiserror::Error;

/// Why a response cannot be read. It does not count as wrong: ask the student again.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum ResponseError {
    /// Nothing was entered.
    #[error("nothing was entered")]
    Empty,
    /// The response is of another kind than the entry.
    #[error("the response does not fit this kind of entry")]
    WrongKind,
    /// Not a number.
    #[error("{text:?} is not a number")]
    NotANumber {
        /// As typed, cut to 40 characters.
        text: String,
    },
    /// A comma that could stand for thousands or for decimals.
    #[error("{text:?} can be read in two ways")]
    TwoReadings {
        /// As typed.
        text: String,
    },
    /// A fraction over zero.
    #[error("the bottom number is zero")]
    ZeroBottom,
    /// Too many digits.
    #[error("the number is too large")]
    TooLarge,
    /// A choice, tick or square that is not there.
    #[error("there is no such place")]
    NoSuchPlace,
    /// A time of day that no clock shows.
    #[error("no clock shows this time")]
    NoSuchTime,
    /// Not an expression or equation.
    #[error("{text:?} cannot be read at character {at}")]
    NotAnExpression {
        /// As typed, cut to 80 characters.
        text: String,
        /// Place of the trouble, from 0.
        at: u32,
    },
    /// A letter that is not in the question.
    #[error("the letter {letter} is not in the question")]
    UnknownLetter {
        /// The letter.
        letter: char,
    },
}

/// Longest typed number, in characters.
const LONGEST_CHARS: usize = 20;

/// A whole number as typed: digits, an optional sign, commas or spaces between thousands.
pub fn whole(text: &str) -> Result<i64, ResponseError> {
    let (negative, body) = sign(text)?;
    let digits = ungrouped(body).ok_or_else(|| not_a_number(text))?;
    if digits.is_empty() || !digits.bytes().all(|b| b.is_ascii_digit()) {
        return Err(not_a_number(text));
    }
    let value: i64 = digits.parse().map_err(|_| ResponseError::TooLarge)?;
    Ok(if negative { -value } else { value })
}

/// A decimal as typed, with its number of digits after the point.
///
/// # Errors
/// [`ResponseError`] for anything else, also for `1,234`, which can be read in two ways.
pub fn decimal(text: &str) -> Result<(Ratio<i64>, u32), ResponseError> {
    let (negative, body) = sign(text)?;
    let commas = body.matches(',').count();
    let (whole_text, part) = match (body.split_once('.'), commas) {
        (Some((whole_text, part)), _) => (whole_text.to_string(), part),
        (None, 0) => (body.to_string(), ""),
        (None, 1) => {
            let (whole_text, part) = body.split_once(',').unwrap_or((body, ""));
            if part.len() == 3 && (1..=3).contains(&whole_text.len()) && whole_text != "0" {
                return Err(ResponseError::TwoReadings { text: text.into() });
            }
            (whole_text.to_string(), part)
        }
        (None, _) => (body.to_string(), ""),
    };
    let whole_digits = ungrouped(&whole_text).ok_or_else(|| not_a_number(text))?;
    let digits_only = |t: &str| t.bytes().all(|b| b.is_ascii_digit());
    if (whole_digits.is_empty() && part.is_empty())
        || !digits_only(&whole_digits)
        || !digits_only(part)
    {
        return Err(not_a_number(text));
    }
    let places = u32::try_from(part.len()).map_err(|_| ResponseError::TooLarge)?;
    let bottom = 10_i64.checked_pow(places).ok_or(ResponseError::TooLarge)?;
    let top: i64 = format!("{whole_digits}{part}")
        .parse()
        .map_err(|_| ResponseError::TooLarge)?;
    Ok((
        Ratio::new(if negative { -top } else { top }, bottom),
        places,
    ))
}

/// A fraction as typed. An empty bottom with a filled top is a whole number.
pub fn fraction(top: &str, bottom: &str) -> Result<(i64, i64), ResponseError> {
    let top = whole(top)?;
    if bottom.trim().is_empty() {
        return Ok((top, 1));
    }
    match whole(bottom)? {
        0 => Err(ResponseError::ZeroBottom),
        bottom if bottom < 0 => Ok((-top, -bottom)),
        bottom => Ok((top, bottom)),
    }
}

/// A mixed number as typed: (value, has a whole part, top, bottom); any of the
/// boxes may be empty where that makes sense.
pub fn mixed(
    whole_text: &str,
    top: &str,
    bottom: &str,
) -> Result<(Ratio<i64>, bool, i64, i64), ResponseError> {
    let has_whole = !whole_text.trim().is_empty();
    if top.trim().is_empty() && bottom.trim().is_empty() {
        return Ok((Ratio::from(whole(whole_text)?), has_whole, 0, 1));
    }
    let (top, bottom) = fraction(top, bottom)?;
    if !has_whole {
        return Ok((Ratio::new(top, bottom), false, top, bottom));
    }
    let negative = sign(whole_text)?.0;
    let whole_part = whole(whole_text)?;
    let part = Ratio::new(if negative { -top } else { top }, bottom);
    let value = Ratio::from(whole_part)
        .checked_add(&part)
        .ok_or(ResponseError::TooLarge)?;
    Ok((value, true, top, bottom))
}

/// Hours and minutes as minutes. One of the two may be empty.
pub fn minutes(hours: &str, minutes: &str) -> Result<i64, ResponseError> {
    let part = |text: &str| {
        if text.trim().is_empty() {
            Ok(0)
        } else {
            whole(text)
        }
    };
    if hours.trim().is_empty() && minutes.trim().is_empty() {
        return Err(ResponseError::Empty);
    }
    part(hours)?
        .checked_mul(60)
        .and_then(|m| m.checked_add(part(minutes).ok()?))
        .ok_or(ResponseError::TooLarge)
        .and_then(|total| part(minutes).map(|_| total))
}

fn sign(text: &str) -> Result<(bool, &str), ResponseError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(ResponseError::Empty);
    }
    if text.chars().count() > LONGEST_CHARS {
        return Err(ResponseError::TooLarge);
    }
    for minus in ['-', '−', '–'] {
        if let Some(rest) = text.strip_prefix(minus) {
            return Ok((true, rest.trim_start()));
        }
    }
    Ok((false, text))
}

/// The digits without marks between thousands; `None` if a mark is elsewhere.
fn ungrouped(text: &str) -> Option<String> {
    let is_mark = |c: char| matches!(c, ',' | ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}');
    if !text.contains(is_mark) {
        return Some(text.to_string());
    }
    let groups: Vec<&str> = text.split(is_mark).collect();
    let good = groups
        .iter()
        .enumerate()
        .all(|(i, group)| group.len() == 3 || (i == 0 && (1..=3).contains(&group.len())));
    good.then(|| groups.concat())
}

fn not_a_number(text: &str) -> ResponseError {
    ResponseError::NotANumber {
        text: text.chars().take(40).collect(),
    }
}

/// a × b, or an error when it does not fit.
pub(super) fn times(a: Ratio<i64>, b: Ratio<i64>) -> Result<Ratio<i64>, ResponseError> {
    a.checked_mul(&b).ok_or(ResponseError::TooLarge)
}

/// a + b, or an error when it does not fit.
pub(super) fn plus(a: Ratio<i64>, b: Ratio<i64>) -> Result<Ratio<i64>, ResponseError> {
    a.checked_add(&b).ok_or(ResponseError::TooLarge)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_numbers_as_children_type_them() {
        assert_eq!(whole(" 1,234 "), Ok(1234));
        assert_eq!(whole("007"), Ok(7));
        assert_eq!(whole("−5"), Ok(-5));
        assert_eq!(whole("12 345"), Ok(12345));
        assert!(matches!(
            whole("1,23"),
            Err(ResponseError::NotANumber { .. })
        ));
        assert!(matches!(
            whole("3.5"),
            Err(ResponseError::NotANumber { .. })
        ));
        assert_eq!(whole("  "), Err(ResponseError::Empty));
        assert_eq!(decimal("0.50"), Ok((Ratio::new(1, 2), 2)));
        assert_eq!(decimal(".5"), Ok((Ratio::new(1, 2), 1)));
        assert_eq!(decimal("3,5"), Ok((Ratio::new(7, 2), 1)));
        assert_eq!(decimal("1,234.5"), Ok((Ratio::new(2469, 2), 1)));
        assert!(matches!(
            decimal("1,234"),
            Err(ResponseError::TwoReadings { .. })
        ));
        assert_eq!(decimal("0,125"), Ok((Ratio::new(1, 8), 3)));
        assert_eq!(fraction("3", "0"), Err(ResponseError::ZeroBottom));
        assert_eq!(fraction("3", ""), Ok((3, 1)));
        assert_eq!(mixed("2", "1", "2").map(|m| m.0), Ok(Ratio::new(5, 2)));
        assert_eq!(mixed("-2", "1", "2").map(|m| m.0), Ok(Ratio::new(-5, 2)));
        assert_eq!(mixed("", "5", "2").map(|m| m.0), Ok(Ratio::new(5, 2)));
        assert_eq!(minutes("1", "20"), Ok(80));
        assert_eq!(minutes("", "45"), Ok(45));
        assert!(minutes("1", "x").is_err());
        assert!(whole("99999999999999999999999").is_err());
    }
}
