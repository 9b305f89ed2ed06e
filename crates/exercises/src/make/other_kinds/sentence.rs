//! Sentences and their numbers as text, for the statement.

use crate::decimal::Dec;
use crate::expr::{Expr, Sign};
use num_rational::Ratio;

/// The sentence as text with `+ - * / %`, parentheses around fractions, and `_` for a box.
/// `None` for what has no such text.
pub(super) fn as_text(expr: &Expr) -> Option<String> {
    let joined = |parts: &[Expr], sign: &str| -> Option<String> {
        Some(
            parts
                .iter()
                .map(as_text)
                .collect::<Option<Vec<_>>>()?
                .join(sign),
        )
    };
    Some(match expr {
        Expr::Blank => "_".into(),
        Expr::Number { text } => text.clone(),
        Expr::Variable { name } => name.to_string(),
        Expr::Fraction { top, bottom } => format!("({}/{})", as_text(top)?, as_text(bottom)?),
        Expr::Quotient { left, right } | Expr::Ratio { left, right } => {
            format!("{} / {}", as_text(left)?, as_text(right)?)
        }
        Expr::Sum { terms } => joined(terms, " + ")?,
        Expr::Product { factors, .. } => joined(factors, " * ")?,
        Expr::Difference { left, right } => format!("{} - {}", as_text(left)?, as_text(right)?),
        Expr::Group { inner } => format!("({})", as_text(inner)?),
        Expr::Percent { inner } => format!("{}%", as_text(inner)?),
        Expr::Relation { left, sign, right } => {
            let sign = match sign {
                Sign::Less => "<",
                Sign::Greater => ">",
                Sign::Equal => "=",
                _ => return None,
            };
            format!("{} {sign} {}", as_text(left)?, as_text(right)?)
        }
        _ => return None,
    })
}

/// A number of a card or box: a whole number or a decimal.
pub(super) fn text_of(value: Ratio<i64>) -> Option<String> {
    Some(Dec::exact(value)?.trimmed().to_string())
}

/// The number that this expression is, if it is a whole number or a decimal.
pub(super) fn number(expr: &Expr) -> Option<Ratio<i64>> {
    match expr {
        Expr::Number { .. } => crate::mark::known_value(expr),
        Expr::Negative { inner } => Some(-number(inner)?),
        _ => None,
    }
}

/// The whole numbers of a fraction.
pub(super) fn fraction(expr: &Expr) -> Option<(i64, i64)> {
    let Expr::Fraction { top, bottom } = expr else {
        return None;
    };
    let whole = |expr| number(expr).filter(Ratio::is_integer);
    Some((whole(top)?.to_integer(), whole(bottom)?.to_integer()))
}
