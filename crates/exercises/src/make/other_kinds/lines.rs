//! Worked lines of which one is wrong: which is it, and what does it have to be?

use super::parts::two_parts;
use super::sentence::{as_text, text_of};
use crate::answer::{Choice, Entry};
use crate::dice::Dice;
use crate::expr::{Expr, difference, equal, frac, num, product, quotient, sum};
use crate::make::{Draft, choice, fraction as fraction_answer, keep, whole};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// A number of a line: a given one, or the result of an earlier line.
#[derive(Clone, Copy)]
enum Term {
    Given(Ratio<i64>),
    Result(usize),
}

/// What a line does with its numbers.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Does {
    Add,
    Subtract,
    Multiply,
    Divide,
    /// Writes a fraction with this denominator.
    Write(i64),
    /// Adds or takes away fractions with this denominator.
    AddOver(i64),
    SubtractOver(i64),
}

/// A right result, as it is written and as a number.
type Mended = (Expr, Ratio<i64>);

/// A worked line: numbers, and what is done with them.
type Line = (Vec<Term>, Does);

/// Worked lines of the draft's task with one mistake, whose line and right result are asked for.
pub(super) fn find_the_mistake(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (work, lines) = lines_of(draft)?;
    let at = dice.from(0..=lines.len() as i64 - 1) as usize;
    let (shown, right) = worked(&lines, at, dice)?;
    let (line, right_value) = right;
    let name = dice.name();
    let mut new = Draft::new(json!({
        "task": "wrong_line", "inner": draft.statement,
        "lines": shown.iter().map(as_text).collect::<Option<Vec<_>>>()?,
    }))
    .ask(Say::new("lines-ask").text("name", name).math("work", work));
    for expr in &shown {
        new = new.ask(expr.clone());
    }
    let Expr::Relation { left, .. } = shown.get(at)? else {
        return None;
    };
    new = new
        .hint(Say::new("lines-hint-check"))
        .hint(Say::new("lines-hint-first"))
        .step(Say::new("lines-step-line").count("line", at as i64 + 1))
        .step(equal(left.as_ref().clone(), line.clone()));
    let choices = (1..)
        .zip(&shown)
        .map(|(n, _)| Choice {
            shows: Say::new("lines-line").count("line", n).into(),
        })
        .collect();
    let wrong_lines = (0..shown.len() as u32)
        .filter(|place| *place as usize != at)
        .map(|place| ("right-line-taken-as-wrong", choice(place)))
        .collect();
    let (entry, key, kept) = match (&line, shown.get(at)?) {
        (Expr::Fraction { .. }, Expr::Relation { right, .. }) => {
            let (top, bottom) = super::sentence::fraction(&line)?;
            let (wrong_top, wrong_bottom) = super::sentence::fraction(right)?;
            (
                Entry::Fraction {
                    signed: false,
                    unit: None,
                },
                fraction_answer(top, bottom),
                fraction_answer(wrong_top, wrong_bottom),
            )
        }
        (_, Expr::Relation { right, .. }) => {
            let wrong = super::sentence::number(right)?;
            if right_value.is_integer() && wrong.is_integer() {
                (
                    Entry::WholeNumber {
                        signed: false,
                        unit: None,
                    },
                    whole(right_value.to_integer()),
                    whole(wrong.to_integer()),
                )
            } else {
                (
                    Entry::Decimal {
                        signed: false,
                        unit: None,
                    },
                    crate::Answer::Decimal {
                        text: text_of(right_value)?,
                    },
                    crate::Answer::Decimal {
                        text: text_of(wrong)?,
                    },
                )
            }
        }
        _ => return None,
    };
    let statement = new.statement.clone();
    Some(two_parts(
        new,
        statement,
        (Entry::OneChoice { choices }, choice(at as u32), wrong_lines),
        Say::new("lines-mend"),
        (entry, key, vec![("kept-the-mistake", kept)]),
    ))
}

/// The lines as shown, with a mistake in one; and that line's right result.
fn worked(lines: &[Line], wrong_at: usize, dice: &mut Dice) -> Option<(Vec<Expr>, Mended)> {
    let mut results: Vec<Ratio<i64>> = Vec::new();
    let mut written: Vec<Expr> = Vec::new();
    let mut shown = Vec::new();
    let mut mended = None;
    for (n, (numbers, does)) in lines.iter().enumerate() {
        let mut values = Vec::new();
        let mut exprs = Vec::new();
        for number in numbers {
            match number {
                Term::Given(value) => {
                    values.push(*value);
                    exprs.push(given(*value));
                }
                Term::Result(line) => {
                    values.push(*results.get(*line)?);
                    exprs.push(written.get(*line)?.clone());
                }
            }
        }
        let (value, left) = result(*does, &values, exprs)?;
        let right = write(*does, value)?;
        if n == wrong_at {
            let wrong = mistake(*does, &values, value, dice)?;
            mended = Some((right, value));
            results.push(wrong);
            written.push(write(*does, wrong)?);
        } else {
            results.push(value);
            written.push(right);
        }
        shown.push(equal(left, written.last()?.clone()));
    }
    Some((shown, mended?))
}

/// A given number as it is shown. Only the tasks of fractions give numbers that are not whole.
fn given(value: Ratio<i64>) -> Expr {
    if value.is_integer() {
        num(value.to_integer())
    } else {
        frac(*value.numer(), *value.denom())
    }
}

fn result(does: Does, values: &[Ratio<i64>], exprs: Vec<Expr>) -> Option<(Ratio<i64>, Expr)> {
    let two = |values: &[Ratio<i64>]| match values {
        [a, b] => Some((*a, *b)),
        _ => None,
    };
    let mut exprs = exprs.into_iter();
    let mut pair = || Some((exprs.next()?, exprs.next()?));
    Some(match does {
        Does::Add | Does::AddOver(_) => {
            let value = values.iter().sum();
            (value, sum(exprs.collect::<Vec<_>>()))
        }
        Does::Subtract | Does::SubtractOver(_) => {
            let (a, b) = two(values)?;
            let (left, right) = pair()?;
            (a - b, difference(left, right))
        }
        Does::Multiply => {
            let value = values.iter().product();
            (value, product(exprs.collect::<Vec<_>>()))
        }
        Does::Divide => {
            let (a, b) = two(values)?;
            keep(b != Ratio::from(0))?;
            let (left, right) = pair()?;
            (a / b, quotient(left, right))
        }
        Does::Write(_) => (*values.first()?, exprs.next()?),
    })
}

/// A result as its line writes it.
fn write(does: Does, value: Ratio<i64>) -> Option<Expr> {
    match does {
        Does::Write(bottom) | Does::AddOver(bottom) | Does::SubtractOver(bottom) => {
            let top = value * bottom;
            top.is_integer().then(|| frac(top.to_integer(), bottom))
        }
        _ => Some(num(text_of(value)?)),
    }
}

/// What a child writes who makes a mistake in this line.
fn mistake(
    does: Does,
    values: &[Ratio<i64>],
    value: Ratio<i64>,
    dice: &mut Dice,
) -> Option<Ratio<i64>> {
    let least = values.iter().min().copied()?;
    let wrong = match does {
        // A ten that is not carried, or one too many.
        Does::Add => {
            let ten = if value >= Ratio::from(100) { 10 } else { 1 };
            value
                + Ratio::from(if dice.one_in(2) && value > Ratio::from(ten) {
                    -ten
                } else {
                    ten
                })
        }
        Does::Subtract => {
            let ten = if value >= Ratio::from(100) { 10 } else { 1 };
            value + Ratio::from(ten)
        }
        // A fact that is one group off, or a zero too few.
        Does::Multiply => {
            if value.is_integer() && value.to_integer() % 100 == 0 && dice.one_in(2) {
                value / 10
            } else if dice.one_in(2) {
                value + least
            } else {
                value - least
            }
        }
        Does::Divide => {
            if value.is_integer() {
                value
                    + if dice.one_in(2) && value > Ratio::from(2) {
                        -1
                    } else {
                        1
                    }
            } else {
                return None;
            }
        }
        // Only the denominator is changed.
        Does::Write(bottom) => Ratio::new(*value.numer(), bottom),
        Does::AddOver(bottom) => value + Ratio::new(1, bottom),
        Does::SubtractOver(bottom) => value + Ratio::new(1, bottom),
    };
    (wrong != value && wrong > Ratio::from(0)).then_some(wrong)
}

/// What is worked out, and the lines of the method that the grade uses.
fn lines_of(draft: &Draft) -> Option<(Expr, Vec<Line>)> {
    use Does::*;
    use Term::*;
    let field = |name: &str| draft.statement.get(name);
    let read = |value: &serde_json::Value| -> Option<Ratio<i64>> {
        match value {
            serde_json::Value::Number(n) => n.as_i64().map(Ratio::from),
            serde_json::Value::String(text) if !text.contains(' ') => match text.split_once('/') {
                Some((top, bottom)) => {
                    let bottom: i64 = bottom.parse().ok()?;
                    keep(bottom != 0)?;
                    Some(Ratio::new(top.parse().ok()?, bottom))
                }
                None => crate::typed::decimal(text).ok().map(|read| read.0),
            },
            _ => None,
        }
    };
    let number = |name: &str| field(name).and_then(read);
    let list = |name: &str| -> Option<Vec<Ratio<i64>>> {
        field(name)?.as_array()?.iter().map(read).collect()
    };
    let integer = |value: Ratio<i64>| value.is_integer().then(|| value.to_integer());
    let g = |value: i64| Given(Ratio::from(value));
    match field("task")?.as_str()? {
        "multiply" | "rectangle_area" => {
            let numbers =
                list("numbers").or_else(|| Some(vec![number("width")?, number("height")?]))?;
            let [a, b] = numbers.as_slice() else {
                return None;
            };
            let (a, b) = if a > b {
                (integer(*a)?, integer(*b)?)
            } else {
                (integer(*b)?, integer(*a)?)
            };
            // The larger factor is taken apart by its tens, or a one-digit factor by 5.
            let (one, two) = if a > 10 && a < 1000 && a % 10 != 0 {
                (a / 10 * 10, a % 10)
            } else if (6..=9).contains(&a) {
                (5, a - 5)
            } else {
                return None;
            };
            keep(b > 2)?;
            Some((
                product([num(a), num(b)]),
                vec![
                    (vec![g(one), g(b)], Multiply),
                    (vec![g(two), g(b)], Multiply),
                    (vec![Result(0), Result(1)], Add),
                ],
            ))
        }
        "add" => {
            let numbers = list("numbers")?;
            let [a, b] = numbers.as_slice() else {
                return None;
            };
            let (a, b) = (integer(*a)?, integer(*b)?);
            keep((100..10_000).contains(&a) && (100..10_000).contains(&b))?;
            keep(a % 100 > 0 && b % 100 > 0)?;
            Some((
                sum([num(a), num(b)]),
                vec![
                    (vec![g(a / 100 * 100), g(b / 100 * 100)], Add),
                    (vec![g(a % 100), g(b % 100)], Add),
                    (vec![Result(0), Result(1)], Add),
                ],
            ))
        }
        "subtract" => {
            let (a, b) = (integer(number("from")?)?, integer(number("take")?)?);
            keep((100..10_000).contains(&a) && b > 100 && b % 100 / 10 > 0 && b % 10 > 0)?;
            Some((
                difference(num(a), num(b)),
                vec![
                    (vec![g(a), g(b / 100 * 100)], Subtract),
                    (vec![Result(0), g(b % 100 / 10 * 10)], Subtract),
                    (vec![Result(1), g(b % 10)], Subtract),
                ],
            ))
        }
        "divide" => {
            let (a, b) = (integer(number("total")?)?, integer(number("by")?)?);
            keep(b > 1 && a % b == 0 && a / b > 10 && a / b < 1000 && a / b % 10 > 0)?;
            let tens = a / b / 10 * 10 * b;
            Some((
                quotient(num(a), num(b)),
                vec![
                    (vec![g(tens), g(b)], Divide),
                    (vec![g(a - tens), g(b)], Divide),
                    (vec![Result(0), Result(1)], Add),
                ],
            ))
        }
        task @ ("add_fractions" | "subtract_fractions") => {
            let (a, b) = (number("left")?, number("right")?);
            let bottom = num_integer::lcm(*a.denom(), *b.denom());
            keep(a.denom() != b.denom() && *a.denom() > 1 && *b.denom() > 1)?;
            keep(task == "add_fractions" || a > b)?;
            // In lowest terms, so that they are shown as the exercise shows them.
            let written = |name: &str, value: Ratio<i64>| {
                let text = format!("{}/{}", value.numer(), value.denom());
                field(name).and_then(serde_json::Value::as_str) == Some(text.as_str())
            };
            keep(written("left", a) && written("right", b))?;
            let mut lines = Vec::new();
            let mut refer = |value: Ratio<i64>| {
                if *value.denom() == bottom {
                    Given(value)
                } else {
                    lines.push((vec![Given(value)], Write(bottom)));
                    Result(lines.len() - 1)
                }
            };
            let both = vec![refer(a), refer(b)];
            let exprs = [frac(*a.numer(), *a.denom()), frac(*b.numer(), *b.denom())];
            let [one, two] = exprs;
            if task == "add_fractions" {
                lines.push((both, AddOver(bottom)));
                Some((sum([one, two]), lines))
            } else {
                lines.push((both, SubtractOver(bottom)));
                Some((difference(one, two), lines))
            }
        }
        "box_volume" => {
            let edges = list("edges")?;
            let [w, d, h] = edges.as_slice() else {
                return None;
            };
            let (w, d, h) = (integer(*w)?, integer(*d)?, integer(*h)?);
            Some((
                product([num(w), num(d), num(h)]),
                vec![
                    (vec![g(w), g(d)], Multiply),
                    (vec![Result(0), g(h)], Multiply),
                ],
            ))
        }
        "percent_of" => {
            let (p, amount) = (integer(number("percent")?)?, integer(number("amount")?)?);
            keep(amount % 10 == 0 && p > 10 && p < 100 && p % 10 == 0)?;
            Some((
                product([crate::expr::percent(num(p)), num(amount)]),
                vec![
                    (vec![g(amount), g(10)], Divide),
                    (vec![Result(0), g(p / 10)], Multiply),
                ],
            ))
        }
        _ => None,
    }
}
