//! From a tree to mathematics as it is printed.

use super::{Tree, expression};
use crate::expr::{
    Expr, Sign, difference, group, negative, num, power, product, quotient, rational, relation,
    side_by_side, sum,
};

/// A typed expression as mathematics; `None` if it cannot be read.
#[must_use]
pub fn typed_expression(text: &str, letters: &[char]) -> Option<Expr> {
    Some(of(&expression(text, letters).ok()?, !letters.is_empty()))
}

/// A typed equation or inequality as mathematics; `None` if it cannot be read.
#[must_use]
pub fn typed_equation(text: &str, letters: &[char]) -> Option<Expr> {
    let signs = [
        ("<=", Sign::AtMost),
        (">=", Sign::AtLeast),
        ("<", Sign::Less),
        (">", Sign::Greater),
        ("=", Sign::Equal),
    ];
    let (left, sign, right) = signs.into_iter().find_map(|(typed, sign)| {
        let (left, right) = text.split_once(typed)?;
        Some((left, sign, right))
    })?;
    Some(relation(
        typed_expression(left, letters)?,
        sign,
        typed_expression(right, letters)?,
    ))
}

/// Factors stand side by side where there are letters.
fn of(tree: &Tree, letters: bool) -> Expr {
    let whole = |tree: &Tree| match tree {
        Tree::Sum(_) | Tree::Minus(_) => group(of(tree, letters)),
        _ => of(tree, letters),
    };
    match tree {
        Tree::Number(value) => match crate::decimal::Dec::exact(*value) {
            Some(decimal) => num(decimal),
            None => rational(*value, false),
        },
        Tree::Letter(letter) => Expr::Variable {
            name: letter.to_string().into(),
        },
        Tree::Sum(terms) => joined(terms, letters),
        Tree::Product(factors) => {
            let mut shown: Option<Expr> = None;
            for factor in factors {
                shown = Some(match (shown, factor) {
                    (None, Tree::Over(inner)) => quotient(num(1), whole(inner)),
                    (None, factor) => whole(factor),
                    (Some(left), Tree::Over(inner)) => quotient(left, whole(inner)),
                    (Some(left), factor) if letters && !matches!(factor, Tree::Number(_)) => {
                        side_by_side([left, whole(factor)])
                    }
                    (Some(left), factor) => product([left, whole(factor)]),
                });
            }
            shown.unwrap_or_else(|| num(1))
        }
        Tree::Minus(inner) => negative(whole(inner)),
        Tree::Over(inner) => quotient(num(1), whole(inner)),
        Tree::Power(base, exponent) => power(whole(base), i64::from(*exponent)),
    }
}

/// Terms from left to right, with plus and minus signs between them.
fn joined(terms: &[Tree], letters: bool) -> Expr {
    let mut shown: Option<Expr> = None;
    for term in terms {
        shown = Some(match (shown, term) {
            (None, term) => of(term, letters),
            (Some(left), Tree::Minus(inner)) => difference(left, of(inner, letters)),
            (Some(left), term) => sum([left, of(term, letters)]),
        });
    }
    shown.unwrap_or_else(|| num(0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::expr_text;
    use surefoot_catalogue::Locale;

    #[test]
    fn typed_text_is_printed_as_mathematics() {
        let text = |expr: Option<Expr>| expr_text(Locale::default(), &expr.unwrap()).unwrap();
        for (typed, printed) in [
            ("11*3+8", "11 × 3 + 8"),
            ("11*(3+8)", "11 × (3 + 8)"),
            ("(72+63)/9", "(72 + 63) ÷ 9"),
            ("90-5*4", "90 − 5 × 4"),
        ] {
            assert_eq!(text(typed_expression(typed, &[])), printed);
        }
        let letters = ['t', 'c', 'x', 'n'];
        for (typed, printed) in [
            ("9t-90", "9t − 90"),
            ("12(x+17)", "12(x + 17)"),
            ("t/9", "t ÷ 9"),
            ("-x+2.5", "−x + 2.5"),
            ("4n^2", "4n^2"),
        ] {
            assert_eq!(text(typed_expression(typed, &letters)), printed);
        }
        for (typed, printed) in [
            ("t<-25", "t < −25"),
            ("t>=-25", "t ≥ −25"),
            ("c=9t", "c = 9t"),
        ] {
            assert_eq!(text(typed_equation(typed, &letters)), printed);
        }
        assert_eq!(typed_expression("7q", &letters), None);
    }
}
