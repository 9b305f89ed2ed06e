//! Marking: reads a response, compares it exactly with the key, and looks for
//! the misconception behind a wrong one.

mod form;
mod read;
mod respond;
mod signs;

pub use respond::response_for;

use super::algebra::{self, Poly, Statement, Tree};
use super::answer::{Answer, Entry, HalfDay, Response};
use super::expr::Sign;
use super::model::{FormNote, FormRule, Item, Marked, Noticed};
use super::typed::{self, ResponseError};
use form::{check_form, same_value};
use num_rational::Ratio;
use read::read;
use std::collections::BTreeSet;

/// What an answer or response comes to, whatever its form.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Value {
    Number(Ratio<i64>),
    Clock(u8, u8, Option<HalfDay>),
    Sign(Sign),
    Places(BTreeSet<u32>),
    Order(Vec<u32>),
    Poly(Poly),
    Steps(Tree),
    Statement(Statement),
    Point(Ratio<i64>, Ratio<i64>),
    Ray(Ratio<i64>, bool, bool),
    Heights(Vec<i64>),
    /// Sides, the shorter first.
    Rectangle(u32, u32),
    /// Squares that make no full rectangle.
    LooseSquares(BTreeSet<(u32, u32)>),
    Division(i64, i64),
    Several(Vec<Ratio<i64>>),
}

/// How a number was written, for the kind word about its form.
#[derive(Clone, Debug, PartialEq)]
enum Written {
    Whole,
    Decimal { places: u32 },
    Fraction { top: i64, bottom: i64 },
    Mixed { top: i64, bottom: i64 },
    Tree(Tree),
    Plain,
}

/// Marks a response to an item.
///
/// # Errors
/// [`ResponseError`] when the response cannot be read; it is then not counted as wrong.
pub fn mark(item: &Item, response: &Response) -> Result<Marked, ResponseError> {
    let letters = letters_of(&item.entry);
    let (value, written) = read(&item.entry, response, item.form, &letters)?;
    let key = value_of(&item.answer, item.form, &letters)?;
    let hits = match (&item.answer, &value) {
        (
            Answer::Angle {
                degrees, within, ..
            },
            Value::Number(given),
        ) => {
            (*given - Ratio::from(*degrees)) <= Ratio::from(*within)
                && (Ratio::from(*degrees) - *given) <= Ratio::from(*within)
        }
        _ => value == key,
    };
    if hits {
        let (form_kept, form_note) = check_form(item, &written);
        return Ok(Marked {
            right: form_kept,
            form_note,
            noticed: None,
        });
    }
    let noticed = item
        .misconceptions
        .iter()
        .find(|misconception| {
            value_of(&misconception.answer, item.form, &letters).is_ok_and(|wrong| wrong == value)
        })
        .map(|misconception| Noticed {
            code: misconception.code.clone(),
            say: misconception.say.clone(),
        });
    // An expression asked for step by step may be equal in value only.
    let form_note = (item.form == FormRule::SameSteps
        && same_value(&item.answer, &written, &letters))
    .then_some(FormNote::OtherSteps);
    Ok(Marked {
        right: false,
        form_note,
        noticed,
    })
}

/// The letters an entry offers.
pub(super) fn letters_of(entry: &Entry) -> Vec<char> {
    match entry {
        Entry::Expression { letters } | Entry::Equation { letters, .. } => {
            letters.iter().flat_map(|name| name.chars()).collect()
        }
        _ => Vec::new(),
    }
}

/// What a key or a mistaken answer comes to.
///
/// # Errors
/// When a generator has made an answer that cannot be read; a test rules this out.
pub(super) fn value_of(
    answer: &Answer,
    form: FormRule,
    letters: &[char],
) -> Result<Value, ResponseError> {
    Ok(match answer {
        Answer::WholeNumber { value } => Value::Number(Ratio::from(*value)),
        Answer::Decimal { text } => Value::Number(typed::decimal(text)?.0),
        Answer::Fraction { top, bottom } => Value::Number(ratio(*top, *bottom)?),
        Answer::Mixed {
            negative,
            whole,
            top,
            bottom,
        } => {
            let size = typed::plus(Ratio::from(*whole), ratio(*top, *bottom)?)?;
            Value::Number(if *negative { -size } else { size })
        }
        Answer::Money { hundredths } => Value::Number(Ratio::new(*hundredths, 100)),
        Answer::Time {
            hour,
            minute,
            half_day,
        } => Value::Clock(*hour, *minute, *half_day),
        Answer::Duration { minutes } => Value::Number(Ratio::from(*minutes)),
        Answer::Comparison { sign } => Value::Sign(*sign),
        Answer::OneChoice { index } => Value::Places(BTreeSet::from([*index])),
        Answer::SeveralChoices { indexes } => Value::Places(indexes.iter().copied().collect()),
        Answer::Ordering { order } => Value::Order(order.clone()),
        Answer::Expression { text } => expression_value(text, form, letters)?.0,
        Answer::Equation { text } => Value::Statement(algebra::statement(text, letters)?),
        Answer::Coordinates { x, y } => Value::Point(x.ratio(), y.ratio()),
        Answer::NumberLinePoint { at } => Value::Number(at.ratio()),
        Answer::NumberLineRay {
            from,
            open,
            rightward,
        } => Value::Ray(from.ratio(), *open, *rightward),
        Answer::Angle { degrees, .. } => Value::Number(Ratio::from(*degrees)),
        Answer::ShadedFraction { count } => Value::Number(Ratio::from(i64::from(*count))),
        Answer::Plot { heights } => Value::Heights(heights.clone()),
        Answer::GridArea { rows, columns } => {
            Value::Rectangle(*rows.min(columns), *rows.max(columns))
        }
        Answer::QuotientRemainder {
            quotient,
            remainder,
        } => Value::Division(*quotient, *remainder),
        Answer::SeveralNumbers { texts } => Value::Several(
            texts
                .iter()
                .map(|text| Ok(typed::decimal(text)?.0))
                .collect::<Result<_, ResponseError>>()?,
        ),
    })
}

fn ratio(top: i64, bottom: i64) -> Result<Ratio<i64>, ResponseError> {
    if bottom == 0 {
        Err(ResponseError::ZeroBottom)
    } else {
        Ok(Ratio::new(top, bottom))
    }
}

fn expression_value(
    text: &str,
    form: FormRule,
    letters: &[char],
) -> Result<(Value, Tree), ResponseError> {
    let tree = algebra::expression(text, letters)?;
    let value = if form == FormRule::SameSteps {
        Value::Steps(tree.canonical())
    } else {
        Value::Poly(tree.poly()?)
    };
    Ok((value, tree))
}
