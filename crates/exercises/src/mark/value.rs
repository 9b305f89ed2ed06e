//! The value of an answer, and the form it is written in.

use crate::algebra::{self, Poly, Statement, Tree};
use crate::answer::{Answer, Entry, HalfDay};
use crate::expr::Sign;
use crate::model::FormRule;
use crate::typed::{self, ResponseError};
use num_rational::Ratio;
use std::collections::BTreeSet;

/// The value of an answer or response, whatever its form.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Value {
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
    Boxes(Vec<Ratio<i64>>),
    Parts(Box<Value>, Box<Value>),
}

/// The form that a number is written in.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Written {
    Whole,
    Decimal { places: u32 },
    Fraction { top: i64, bottom: i64 },
    Mixed { top: i64, bottom: i64 },
    Tree(Tree),
    Plain,
}

/// The letters an entry offers.
pub(crate) fn letters_of(entry: &Entry) -> Vec<char> {
    match entry {
        Entry::Expression { letters } | Entry::Equation { letters, .. } => {
            letters.iter().flat_map(|name| name.chars()).collect()
        }
        Entry::TwoParts { first, second, .. } => {
            let mut letters = letters_of(first);
            letters.extend(letters_of(second));
            letters
        }
        _ => Vec::new(),
    }
}

/// The value of a key or of a misconception's answer.
///
/// # Errors
/// [`ResponseError`] if a generator made an answer that cannot be read.
pub(crate) fn value_of(
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
        Answer::SeveralNumbers { texts } => Value::Several(numbers(texts)?),
        Answer::Boxes { texts, .. } => Value::Boxes(numbers(texts)?),
        Answer::TwoParts { first, second } => Value::Parts(
            Box::new(value_of(first, form, letters)?),
            Box::new(value_of(second, form, letters)?),
        ),
    })
}

/// Typed numbers, one for each text.
pub(super) fn numbers(texts: &[String]) -> Result<Vec<Ratio<i64>>, ResponseError> {
    texts
        .iter()
        .map(|text| Ok(typed::decimal(text)?.0))
        .collect()
}

fn ratio(top: i64, bottom: i64) -> Result<Ratio<i64>, ResponseError> {
    if bottom == 0 {
        Err(ResponseError::ZeroBottom)
    } else {
        Ok(Ratio::new(top, bottom))
    }
}

pub(super) fn expression_value(
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
