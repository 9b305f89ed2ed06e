//! Typed numbers as they are shown.

use crate::answer::{Answer, Entry};
use crate::decimal::Dec;
use crate::expr::{Expr, frac, measure, mixed, negative, num};

/// A typed number as it is shown, with its unit, and as text.
pub(super) fn as_shown(entry: &Entry, answer: &Answer) -> Option<(Expr, String)> {
    let unit = match entry {
        Entry::WholeNumber { unit, .. }
        | Entry::Decimal { unit, .. }
        | Entry::Fraction { unit, .. }
        | Entry::Mixed { unit, .. } => unit.as_ref(),
        Entry::Money | Entry::Angle { turned: false } => None,
        _ => return None,
    };
    let (expr, text) = match answer {
        Answer::WholeNumber { value } => (num(value), value.to_string()),
        Answer::Decimal { text } => (num(text), text.clone()),
        Answer::Fraction { top, bottom } if *top >= 0 => {
            (frac(*top, *bottom), format!("{top}/{bottom}"))
        }
        Answer::Mixed {
            negative: minus,
            whole,
            top,
            bottom,
        } => {
            let (size, text) = match (*whole, *top) {
                (whole, 0) => (num(whole), whole.to_string()),
                (0, top) => (frac(top, *bottom), format!("{top}/{bottom}")),
                (whole, top) => (
                    mixed(whole, top, *bottom),
                    format!("{whole} {top}/{bottom}"),
                ),
            };
            if *minus {
                (negative(size), format!("-{text}"))
            } else {
                (size, text)
            }
        }
        Answer::Money { hundredths } => (
            Expr::Money {
                hundredths: *hundredths,
            },
            Dec::new(*hundredths, 2).to_string(),
        ),
        Answer::Angle { degrees, .. } => (crate::expr::degrees(num(degrees)), degrees.to_string()),
        _ => return None,
    };
    match unit {
        None => Some((expr, text)),
        Some(unit) => match &unit.id {
            std::borrow::Cow::Borrowed(id) if unit.args.is_empty() => {
                Some((measure(expr, id), text))
            }
            _ => None,
        },
    }
}
