//! Answers as text: what the file's `answer` says, and how a key is stored.

use crate::expr::Sign;
use crate::{Answer, typed};
use num_traits::CheckedMul as _;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::table::{LineFault, cut};
use ts_rs::TS;

/// The kinds of answer that an own exercise can have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum OwnKind {
    /// A whole number or integer.
    WholeNumber,
    /// A decimal.
    Decimal,
    /// A fraction.
    Fraction,
    /// A mixed number.
    MixedNumber,
    /// An amount of money.
    Money,
    /// A time of day.
    Time,
    /// One of <, = and >.
    Comparison,
    /// A quotient and what is left over.
    Remainder,
    /// One of some choices.
    OneChoice,
    /// All that fit of some choices.
    SeveralChoices,
    /// Things to put in order.
    Order,
}

impl OwnKind {
    /// All kinds.
    pub const ALL: [Self; 11] = [
        Self::WholeNumber,
        Self::Decimal,
        Self::Fraction,
        Self::MixedNumber,
        Self::Money,
        Self::Time,
        Self::Comparison,
        Self::Remainder,
        Self::OneChoice,
        Self::SeveralChoices,
        Self::Order,
    ];

    /// The name in files.
    #[must_use]
    pub fn as_str(self) -> &'static str {
        match self {
            Self::WholeNumber => "whole number",
            Self::Decimal => "decimal",
            Self::Fraction => "fraction",
            Self::MixedNumber => "mixed number",
            Self::Money => "money",
            Self::Time => "time",
            Self::Comparison => "comparison",
            Self::Remainder => "remainder",
            Self::OneChoice => "one choice",
            Self::SeveralChoices => "several choices",
            Self::Order => "order",
        }
    }

    /// The kind of this name; case, hyphens and underscores do not matter.
    #[must_use]
    pub fn named(text: &str) -> Option<Self> {
        let wanted = text.trim().to_lowercase().replace(['_', '-'], " ");
        Self::ALL.into_iter().find(|kind| kind.as_str() == wanted)
    }

    /// Whether the student picks from choices or puts things in order.
    #[must_use]
    pub fn has_choices(self) -> bool {
        matches!(self, Self::OneChoice | Self::SeveralChoices | Self::Order)
    }
}

fn bad(text: &str, kind: OwnKind) -> LineFault {
    LineFault::BadAnswer {
        text: cut(text, 80),
        kind: kind.as_str().into(),
    }
}

/// The largest number an exercise works with.
const LARGEST: i64 = 1_000_000_000_000;

fn whole(text: &str) -> Option<i64> {
    typed::whole(text).ok().filter(|n| n.abs() <= LARGEST)
}

fn minus(text: &str) -> (bool, &str) {
    match text.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest.trim_start()),
        None => (false, text),
    }
}

fn sized(text: &str) -> Option<i64> {
    whole(text).filter(|n| *n >= 0 && !text.contains(['-', '−', '–']))
}

/// Exact decimal text with a point, as it is shown; a comma is read as one where it can be nothing else.
fn decimal(text: &str) -> Option<String> {
    let (value, places) = typed::decimal(text).ok()?;
    if places > 9 || value.to_integer().abs() > LARGEST {
        return None;
    }
    let units = value * num_rational::Ratio::from(10_i64.pow(places));
    units
        .is_integer()
        .then(|| crate::decimal::Dec::new(*units.numer(), places).to_string())
}

/// Reads a key that is a number, a sign or a time.
///
/// # Errors
/// [`LineFault::BadAnswer`], also for a kind with choices.
pub(super) fn number_key(kind: OwnKind, text: &str) -> Result<Answer, LineFault> {
    let text = text.trim();
    number_of(kind, text).ok_or_else(|| bad(text, kind))
}

fn number_of(kind: OwnKind, text: &str) -> Option<Answer> {
    Some(match kind {
        OwnKind::WholeNumber => Answer::WholeNumber {
            value: whole(text)?,
        },
        OwnKind::Decimal => Answer::Decimal {
            text: decimal(text)?,
        },
        OwnKind::Fraction => {
            let (negative, body) = minus(text);
            let (top, bottom) = body.split_once('/')?;
            let (top, bottom) = (sized(top.trim())?, sized(bottom.trim())?);
            if bottom == 0 {
                return None;
            }
            Answer::Fraction {
                top: if negative { -top } else { top },
                bottom,
            }
        }
        OwnKind::MixedNumber => {
            let (negative, body) = minus(text);
            let (whole_part, top, bottom) = match body.split_once('/') {
                None => (sized(body)?, 0, 1),
                Some((left, bottom)) => {
                    let bottom = sized(bottom.trim()).filter(|n| *n > 0)?;
                    match left.trim().split_once(' ') {
                        Some((whole_part, top)) => (sized(whole_part)?, sized(top.trim())?, bottom),
                        None => (0, sized(left.trim())?, bottom),
                    }
                }
            };
            Answer::Mixed {
                negative,
                whole: whole_part,
                top,
                bottom,
            }
        }
        OwnKind::Money => {
            let plain = text.trim_start_matches(['$', '€', '£']).trim();
            let (value, places) = typed::decimal(plain).ok()?;
            let hundredths = value.checked_mul(&num_rational::Ratio::from(100))?;
            if places > 2 || !hundredths.is_integer() || *hundredths.numer() < 0 {
                return None;
            }
            Answer::Money {
                hundredths: Some(*hundredths.numer()).filter(|n| *n <= LARGEST)?,
            }
        }
        OwnKind::Time => {
            let (hour, minute) = text.split_once(':')?;
            let hour = u8::try_from(sized(hour)?).ok()?;
            let minute = Some(minute).filter(|m| m.len() == 2).and_then(sized)?;
            let minute = u8::try_from(minute).ok()?;
            if !(1..=12).contains(&hour) || minute > 59 {
                return None;
            }
            Answer::Time {
                hour,
                minute,
                half_day: None,
            }
        }
        OwnKind::Comparison => Answer::Comparison {
            sign: match text {
                "<" => Sign::Less,
                "=" => Sign::Equal,
                ">" => Sign::Greater,
                _ => return None,
            },
        },
        OwnKind::Remainder => {
            let lower = text.to_lowercase();
            let (quotient, remainder) = lower.split_once('r').unwrap_or((&lower, "0"));
            Answer::QuotientRemainder {
                quotient: sized(quotient.trim())?,
                remainder: sized(remainder.trim())?,
            }
        }
        OwnKind::OneChoice | OwnKind::SeveralChoices | OwnKind::Order => return None,
    })
}

/// Reads a key as it is stored: choices by their places, in figures.
///
/// # Errors
/// [`LineFault::BadAnswer`].
pub(super) fn stored_key(kind: OwnKind, text: &str, choices: usize) -> Result<Answer, LineFault> {
    if !kind.has_choices() {
        return number_key(kind, text);
    }
    let fault = || bad(text, kind);
    let places: Vec<u32> = text
        .split(' ')
        .map(|part| {
            part.parse::<u32>()
                .ok()
                .filter(|place| (*place as usize) < choices)
        })
        .collect::<Option<_>>()
        .ok_or_else(fault)?;
    places_key(kind, &places, choices).ok_or_else(fault)
}

/// A key out of places.
pub(super) fn places_key(kind: OwnKind, places: &[u32], choices: usize) -> Option<Answer> {
    let mut rising = places.to_vec();
    rising.sort_unstable();
    rising.dedup();
    if rising.len() != places.len() {
        return None;
    }
    match (kind, places) {
        (OwnKind::OneChoice, [index]) => Some(Answer::OneChoice { index: *index }),
        (OwnKind::SeveralChoices, [_, ..]) => Some(Answer::SeveralChoices { indexes: rising }),
        (OwnKind::Order, order) if order.len() == choices => Some(Answer::Ordering {
            order: order.to_vec(),
        }),
        _ => None,
    }
}

/// The key as it is stored.
pub(super) fn key_text(answer: &Answer) -> String {
    let signed = |negative: bool, text: String| if negative { format!("-{text}") } else { text };
    let places = |list: &[u32]| {
        list.iter()
            .map(u32::to_string)
            .collect::<Vec<_>>()
            .join(" ")
    };
    match answer {
        Answer::WholeNumber { value } => value.to_string(),
        Answer::Decimal { text } => text.clone(),
        Answer::Fraction { top, bottom } => signed(*top < 0, format!("{}/{bottom}", top.abs())),
        Answer::Mixed {
            negative,
            whole,
            top,
            bottom,
        } => signed(
            *negative,
            match (whole, top) {
                (whole, 0) => whole.to_string(),
                (0, top) => format!("{top}/{bottom}"),
                (whole, top) => format!("{whole} {top}/{bottom}"),
            },
        ),
        Answer::Money { hundredths } => crate::decimal::Dec::new(*hundredths, 2).to_string(),
        Answer::Time { hour, minute, .. } => format!("{hour}:{minute:02}"),
        Answer::Comparison { sign } => match sign {
            Sign::Less => "<",
            Sign::Greater => ">",
            _ => "=",
        }
        .into(),
        Answer::QuotientRemainder {
            quotient,
            remainder,
        } => format!("{quotient} r {remainder}"),
        Answer::OneChoice { index } => index.to_string(),
        Answer::SeveralChoices { indexes } => places(indexes),
        Answer::Ordering { order } => places(order),
        // No own exercise has another kind.
        _ => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn answers_are_read_as_teachers_write_them_and_kept_in_one_form() {
        use OwnKind::*;
        for (kind, text, kept) in [
            (WholeNumber, "1,204", "1204"),
            (WholeNumber, "−7", "-7"),
            (Decimal, "0.50", "0.50"),
            (Decimal, "3,5", "3.5"),
            (Fraction, "6 / 8", "6/8"),
            (Fraction, "-1/3", "-1/3"),
            (MixedNumber, "2 3/4", "2 3/4"),
            (MixedNumber, "3/4", "3/4"),
            (MixedNumber, "5", "5"),
            (Money, "$2.5", "2.50"),
            (Time, "3:05", "3:05"),
            (Comparison, "<", "<"),
            (Remainder, "7 R 2", "7 r 2"),
            (Remainder, "7", "7 r 0"),
        ] {
            let answer = number_key(kind, text).unwrap_or_else(|e| panic!("{text}: {e}"));
            assert_eq!(key_text(&answer), kept);
            assert_eq!(stored_key(kind, kept, 0).unwrap(), answer, "{text}");
        }
    }

    #[test]
    fn what_is_no_answer_of_its_kind_is_refused() {
        use OwnKind::*;
        for (kind, text) in [
            (WholeNumber, "1.5"),
            (WholeNumber, "twelve"),
            (WholeNumber, "99999999999999"),
            (Decimal, "1/2"),
            (Decimal, "1,234"),
            (Fraction, "3"),
            (Fraction, "3/0"),
            (Fraction, "3/-4"),
            (MixedNumber, "2 3/0"),
            (Money, "2.505"),
            (Money, "-2"),
            (Time, "13:00"),
            (Time, "3:5"),
            (Time, "3:60"),
            (Comparison, "≤"),
            (Remainder, "7 r"),
            (OneChoice, "0"),
        ] {
            assert!(number_key(kind, text).is_err(), "{kind:?} {text}");
        }
    }

    #[test]
    fn choices_are_stored_by_place() {
        assert!(stored_key(OwnKind::OneChoice, "2", 3).is_ok());
        for (kind, text) in [
            (OwnKind::OneChoice, "3"),
            (OwnKind::OneChoice, "0 1"),
            (OwnKind::SeveralChoices, "1 1"),
            (OwnKind::SeveralChoices, ""),
            (OwnKind::Order, "0 1"),
            (OwnKind::Order, "0 1 1"),
        ] {
            assert!(stored_key(kind, text, 3).is_err(), "{kind:?} {text}");
        }
    }
}
