//! Reads a response as a value.

use super::value::{Value, Written, expression_value, numbers};
use crate::algebra;
use crate::answer::{Entry, Response};
use crate::expr::Sign;
use crate::model::FormRule;
use crate::typed::{self, ResponseError};
use num_rational::Ratio;
use std::collections::BTreeSet;

/// Reads a response. Any kind of number is accepted for any other; its form is checked
/// later.
pub(super) fn read(
    entry: &Entry,
    response: &Response,
    form: FormRule,
    letters: &[char],
) -> Result<(Value, Written), ResponseError> {
    let takes_number = matches!(
        entry,
        Entry::WholeNumber { .. }
            | Entry::Decimal { .. }
            | Entry::Fraction { .. }
            | Entry::Mixed { .. }
    );
    let wrong_kind = Err(ResponseError::WrongKind);
    Ok(match (response, entry) {
        (Response::WholeNumber { text }, _) if takes_number => {
            (Value::Number(typed::whole(text)?.into()), Written::Whole)
        }
        (Response::Decimal { text }, _) if takes_number => {
            let (value, places) = typed::decimal(text)?;
            (Value::Number(value), Written::Decimal { places })
        }
        (Response::Fraction { top, bottom }, _) if takes_number => {
            let (top, bottom_read) = typed::fraction(top, bottom)?;
            let written = if bottom.trim().is_empty() {
                Written::Whole
            } else {
                Written::Fraction {
                    top,
                    bottom: bottom_read,
                }
            };
            (Value::Number(Ratio::new(top, bottom_read)), written)
        }
        (Response::Mixed { whole, top, bottom }, _) if takes_number => {
            let (value, has_whole, top, bottom) = typed::mixed(whole, top, bottom)?;
            let written = match (has_whole, top) {
                (true, 0) => Written::Whole,
                (true, _) => Written::Mixed { top, bottom },
                (false, _) => Written::Fraction { top, bottom },
            };
            (Value::Number(value), written)
        }
        (Response::Money { text }, Entry::Money) => {
            let text = text.trim().trim_start_matches(['$', '€', '£']);
            (Value::Number(typed::decimal(text)?.0), Written::Plain)
        }
        (
            Response::Time {
                hour,
                minute,
                half_day,
            },
            Entry::Time { half_day: asked },
        ) => {
            let hour = u8::try_from(typed::whole(hour)?).ok();
            let minute = u8::try_from(typed::whole(minute)?).ok();
            match (hour, minute) {
                (Some(hour @ 1..=12), Some(minute @ 0..=59)) => {
                    if *asked && half_day.is_none() {
                        return Err(ResponseError::Empty);
                    }
                    let half_day = half_day.filter(|_| *asked);
                    (Value::Clock(hour, minute, half_day), Written::Plain)
                }
                _ => return Err(ResponseError::NoSuchTime),
            }
        }
        (Response::Duration { hours, minutes }, Entry::Duration { .. }) => (
            Value::Number(typed::minutes(hours, minutes)?.into()),
            Written::Plain,
        ),
        (Response::Comparison { sign }, Entry::Comparison) => match sign {
            Sign::Less | Sign::Equal | Sign::Greater => (Value::Sign(*sign), Written::Plain),
            _ => return Err(ResponseError::NoSuchPlace),
        },
        (Response::OneChoice { index }, Entry::OneChoice { choices }) => {
            inside(*index, choices.len())?;
            (Value::Places(BTreeSet::from([*index])), Written::Plain)
        }
        (Response::SeveralChoices { indexes }, Entry::SeveralChoices { choices }) => {
            for index in indexes {
                inside(*index, choices.len())?;
            }
            (
                Value::Places(indexes.iter().copied().collect()),
                Written::Plain,
            )
        }
        (Response::Ordering { order }, Entry::Ordering { things, .. }) => {
            let all: BTreeSet<u32> = order.iter().copied().collect();
            if order.len() != things.len() || all.len() != things.len() {
                return Err(ResponseError::Empty);
            }
            for index in order {
                inside(*index, things.len())?;
            }
            (Value::Order(order.clone()), Written::Plain)
        }
        (Response::Expression { text }, Entry::Expression { .. }) => {
            let (value, tree) = expression_value(text, form, letters)?;
            (value, Written::Tree(tree))
        }
        (Response::Equation { text }, Entry::Equation { .. }) => (
            Value::Statement(algebra::statement(text, letters)?),
            Written::Plain,
        ),
        (Response::Coordinates { x, y }, Entry::Coordinates { .. }) => (
            Value::Point(typed::decimal(x)?.0, typed::decimal(y)?.0),
            Written::Plain,
        ),
        (Response::NumberLinePoint { at }, Entry::NumberLinePoint { line }) => {
            on_line(at.ratio(), line)?;
            (Value::Number(at.ratio()), Written::Plain)
        }
        (
            Response::NumberLineRay {
                from,
                open,
                rightward,
            },
            Entry::NumberLineRay { line },
        ) => {
            on_line(from.ratio(), line)?;
            (Value::Ray(from.ratio(), *open, *rightward), Written::Plain)
        }
        (Response::Angle { text }, Entry::Angle { .. }) => (
            Value::Number(typed::decimal(text.trim().trim_end_matches('°'))?.0),
            Written::Plain,
        ),
        (
            Response::ShadedFraction { parts },
            Entry::ShadedFraction {
                wholes, parts: cut, ..
            },
        ) => {
            let places: BTreeSet<u32> = parts.iter().copied().collect();
            let all = wholes.saturating_mul(*cut);
            if places.iter().any(|place| *place >= all) {
                return Err(ResponseError::NoSuchPlace);
            }
            (
                Value::Number(Ratio::from(places.len() as i64)),
                Written::Plain,
            )
        }
        (Response::Plot { heights }, Entry::Plot { columns, top, .. }) => {
            if heights.len() != columns.len() {
                return Err(ResponseError::Empty);
            }
            if heights.iter().any(|height| !(0..=*top).contains(height)) {
                return Err(ResponseError::NoSuchPlace);
            }
            (Value::Heights(heights.clone()), Written::Plain)
        }
        (Response::GridArea { cells }, Entry::GridArea { rows, columns }) => {
            if cells.is_empty() {
                return Err(ResponseError::Empty);
            }
            if cells.iter().any(|(r, c)| r >= rows || c >= columns) {
                return Err(ResponseError::NoSuchPlace);
            }
            (squares(cells.iter().copied().collect()), Written::Plain)
        }
        (
            Response::QuotientRemainder {
                quotient,
                remainder,
            },
            Entry::QuotientRemainder,
        ) => {
            let remainder = if remainder.trim().is_empty() {
                0
            } else {
                typed::whole(remainder)?
            };
            (
                Value::Division(typed::whole(quotient)?, remainder),
                Written::Plain,
            )
        }
        (Response::SeveralNumbers { texts }, Entry::SeveralNumbers { fields, .. }) => {
            if texts.len() != fields.len() {
                return Err(ResponseError::Empty);
            }
            (Value::Several(numbers(texts)?), Written::Plain)
        }
        (Response::Boxes { texts }, Entry::Boxes { boxes, .. }) => {
            if texts.len() != *boxes as usize {
                return Err(ResponseError::Empty);
            }
            (Value::Boxes(numbers(texts)?), Written::Plain)
        }
        (
            Response::TwoParts { first, second },
            Entry::TwoParts {
                first: first_entry,
                second: second_entry,
                ..
            },
        ) => {
            let has_parts = |response: &Response| matches!(response, Response::TwoParts { .. });
            if has_parts(first) || has_parts(second) {
                return wrong_kind;
            }
            let (first, first_written) = read(first_entry, first, form, letters)?;
            let (second, second_written) = read(second_entry, second, form, letters)?;
            (
                Value::Parts(Box::new(first), Box::new(second)),
                if second_entry.is_tapped() {
                    first_written
                } else {
                    second_written
                },
            )
        }
        _ => return wrong_kind,
    })
}

fn inside(index: u32, len: usize) -> Result<(), ResponseError> {
    if (index as usize) < len {
        Ok(())
    } else {
        Err(ResponseError::NoSuchPlace)
    }
}

fn on_line(at: Ratio<i64>, line: &crate::figure::NumberLine) -> Result<(), ResponseError> {
    if at < line.from.ratio() || at > line.to.ratio() {
        Err(ResponseError::NoSuchPlace)
    } else {
        Ok(())
    }
}

/// A full rectangle by its sides, or loose squares.
fn squares(cells: BTreeSet<(u32, u32)>) -> Value {
    let rows: BTreeSet<u32> = cells.iter().map(|cell| cell.0).collect();
    let columns: BTreeSet<u32> = cells.iter().map(|cell| cell.1).collect();
    let run = |places: &BTreeSet<u32>| match (places.first(), places.last()) {
        (Some(first), Some(last)) => (last - first) as usize + 1 == places.len(),
        _ => false,
    };
    let (height, width) = (rows.len() as u32, columns.len() as u32);
    if run(&rows) && run(&columns) && cells.len() == rows.len() * columns.len() {
        Value::Rectangle(height.min(width), height.max(width))
    } else {
        Value::LooseSquares(cells)
    }
}
