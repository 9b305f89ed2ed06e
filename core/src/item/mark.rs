//! Marking: reads a response, compares it exactly with the key, and looks for
//! the misconception behind a wrong one.

use super::algebra::{self, Poly, Statement, Tree};
use super::answer::{Answer, Entry, HalfDay, Response};
use super::expr::Sign;
use super::model::{FormNote, FormRule, Item, Marked, Noticed};
use super::typed::{self, ResponseError};
use num_rational::Ratio;
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
        .mistakes
        .iter()
        .find(|mistake| {
            value_of(&mistake.answer, item.form, &letters).is_ok_and(|wrong| wrong == value)
        })
        .map(|mistake| Noticed {
            code: mistake.code.clone(),
            say: mistake.say.clone(),
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

/// Reads a response. Number kinds may stand for each other: the form is told apart later.
fn read(
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
            let numbers = texts
                .iter()
                .map(|text| Ok(typed::decimal(text)?.0))
                .collect::<Result<_, ResponseError>>()?;
            (Value::Several(numbers), Written::Plain)
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

fn on_line(at: Ratio<i64>, line: &super::figure::NumberLine) -> Result<(), ResponseError> {
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

/// A step-by-step expression that is equal in value only.
fn same_value(answer: &Answer, written: &Written, letters: &[char]) -> bool {
    let (Answer::Expression { text }, Written::Tree(tree)) = (answer, written) else {
        return false;
    };
    let key = algebra::expression(text, letters).and_then(|key| key.poly());
    matches!((key, tree.poly()), (Ok(key), Ok(given)) if key == given)
}

/// Whether the form rule is kept, and what to say of the form.
fn check_form(item: &Item, written: &Written) -> (bool, Option<FormNote>) {
    match (item.form, written) {
        (
            FormRule::Simplest,
            Written::Fraction { top, bottom } | Written::Mixed { top, bottom },
        ) => {
            let lowest = num_integer::gcd(*top, *bottom) == 1;
            (lowest, (!lowest).then_some(FormNote::NotSimplest))
        }
        (FormRule::MixedNumber, Written::Fraction { top, bottom }) if top.abs() >= *bottom => {
            (false, Some(FormNote::NotMixed))
        }
        (FormRule::MixedNumber, Written::Mixed { top, bottom }) if top >= bottom => {
            (false, Some(FormNote::NotMixed))
        }
        (FormRule::SingleFraction, Written::Mixed { .. } | Written::Whole) => {
            (false, Some(FormNote::NotSingleFraction))
        }
        (FormRule::Bottom { bottom: asked }, Written::Fraction { bottom, .. }) => {
            let kept = asked == *bottom;
            (kept, (!kept).then_some(FormNote::OtherBottom))
        }
        (FormRule::Bottom { .. }, Written::Whole | Written::Mixed { .. }) => {
            (false, Some(FormNote::OtherBottom))
        }
        (FormRule::Expanded, Written::Tree(tree)) => {
            let kept = tree.is_expanded();
            (kept, (!kept).then_some(FormNote::NotExpanded))
        }
        (FormRule::Factored, Written::Tree(tree)) => {
            let kept = tree.is_factored();
            (kept, (!kept).then_some(FormNote::NotFactored))
        }
        (FormRule::Exact, written) => match other_form(&item.answer, written) {
            None => (true, None),
            some => (false, some),
        },
        (_, written) => (true, other_form(&item.answer, written)),
    }
}

/// How a right number differs in form from the key.
fn other_form(answer: &Answer, written: &Written) -> Option<FormNote> {
    match (answer, written) {
        (Answer::Decimal { text }, Written::Decimal { places }) => {
            let shown = text.split_once('.').map_or(0, |(_, part)| part.len());
            (*places as usize > shown).then_some(FormNote::ExtraZeros)
        }
        (Answer::WholeNumber { .. }, Written::Decimal { .. }) => Some(FormNote::ExtraZeros),
        (Answer::WholeNumber { .. }, Written::Fraction { .. } | Written::Mixed { .. }) => {
            Some(FormNote::NotWhole)
        }
        (
            Answer::Fraction { top, bottom },
            Written::Fraction {
                top: given,
                bottom: given_bottom,
            },
        ) => {
            if (top, bottom) == (given, given_bottom) {
                None
            } else if num_integer::gcd(*given, *given_bottom) > 1 {
                Some(FormNote::NotSimplest)
            } else {
                Some(FormNote::OtherForm)
            }
        }
        (Answer::Fraction { .. }, Written::Mixed { .. } | Written::Whole) => {
            Some(FormNote::NotSingleFraction)
        }
        (
            Answer::Mixed {
                whole, top, bottom, ..
            },
            Written::Fraction {
                top: given,
                bottom: given_bottom,
            },
        ) => {
            if *whole > 0 || *top == 0 {
                Some(FormNote::NotMixed)
            } else if (top, bottom) != (given, given_bottom)
                && num_integer::gcd(*given, *given_bottom) > 1
            {
                Some(FormNote::NotSimplest)
            } else {
                None
            }
        }
        (
            Answer::Mixed { .. },
            Written::Mixed {
                top: given,
                bottom: given_bottom,
            },
        ) => {
            if given >= given_bottom {
                Some(FormNote::NotMixed)
            } else {
                (num_integer::gcd(*given, *given_bottom) > 1).then_some(FormNote::NotSimplest)
            }
        }
        (Answer::Fraction { .. } | Answer::Mixed { .. }, Written::Decimal { .. }) => {
            Some(FormNote::OtherForm)
        }
        _ => None,
    }
}

/// The response a student gives who enters this answer as it stands; for tests
/// of marking and for simulated students.
#[must_use]
pub fn response_for(answer: &Answer) -> Response {
    let text = |n: i64| n.to_string();
    match answer {
        Answer::WholeNumber { value } => Response::WholeNumber { text: text(*value) },
        Answer::Decimal { text } => Response::Decimal { text: text.clone() },
        Answer::Fraction { top, bottom } => Response::Fraction {
            top: text(*top),
            bottom: text(*bottom),
        },
        Answer::Mixed {
            negative,
            whole,
            top,
            bottom,
        } => {
            let minus = |n: i64, here: bool| {
                if *negative && here {
                    format!("-{n}")
                } else {
                    text(n)
                }
            };
            Response::Mixed {
                whole: if *whole == 0 && *top != 0 {
                    String::new()
                } else {
                    minus(*whole, true)
                },
                top: if *top == 0 {
                    String::new()
                } else {
                    minus(*top, *whole == 0)
                },
                bottom: if *top == 0 {
                    String::new()
                } else {
                    text(*bottom)
                },
            }
        }
        Answer::Money { hundredths } => Response::Money {
            text: super::decimal::Dec::new(*hundredths, 2).to_string(),
        },
        Answer::Time {
            hour,
            minute,
            half_day,
        } => Response::Time {
            hour: hour.to_string(),
            minute: format!("{minute:02}"),
            half_day: *half_day,
        },
        Answer::Duration { minutes } => Response::Duration {
            hours: String::new(),
            minutes: text(*minutes),
        },
        Answer::Comparison { sign } => Response::Comparison { sign: *sign },
        Answer::OneChoice { index } => Response::OneChoice { index: *index },
        Answer::SeveralChoices { indexes } => Response::SeveralChoices {
            indexes: indexes.clone(),
        },
        Answer::Ordering { order } => Response::Ordering {
            order: order.clone(),
        },
        Answer::Expression { text } => Response::Expression { text: text.clone() },
        Answer::Equation { text } => Response::Equation { text: text.clone() },
        Answer::Coordinates { x, y } => Response::Coordinates {
            x: decimal_text(x.ratio()),
            y: decimal_text(y.ratio()),
        },
        Answer::NumberLinePoint { at } => Response::NumberLinePoint { at: *at },
        Answer::NumberLineRay {
            from,
            open,
            rightward,
        } => Response::NumberLineRay {
            from: *from,
            open: *open,
            rightward: *rightward,
        },
        Answer::Angle { degrees, .. } => Response::Angle {
            text: text(*degrees),
        },
        Answer::ShadedFraction { count } => Response::ShadedFraction {
            parts: (0..*count).collect(),
        },
        Answer::Plot { heights } => Response::Plot {
            heights: heights.clone(),
        },
        Answer::GridArea { rows, columns } => Response::GridArea {
            cells: (0..*rows)
                .flat_map(|row| (0..*columns).map(move |column| (row, column)))
                .collect(),
        },
        Answer::QuotientRemainder {
            quotient,
            remainder,
        } => Response::QuotientRemainder {
            quotient: text(*quotient),
            remainder: text(*remainder),
        },
        Answer::SeveralNumbers { texts } => Response::SeveralNumbers {
            texts: texts.clone(),
        },
    }
}

fn decimal_text(value: Ratio<i64>) -> String {
    super::decimal::Dec::exact(value).map_or_else(String::new, |dec| dec.to_string())
}
