//! Sentences with boxes: whether numbers make them true, and with the boxes filled.

use crate::answer::BoxNumbers;
use crate::expr::{Expr, Sign, num};
use num_rational::Ratio;
use num_traits::{CheckedAdd, CheckedDiv, CheckedMul, CheckedSub, One, Zero};

/// Whether these numbers, one for each box in reading order, make the sentence true. A
/// sentence without a value, such as one that divides by 0, is not true.
pub(crate) fn holds(sentence: &Expr, numbers: &[Ratio<i64>]) -> bool {
    let mut left = numbers.iter();
    let true_to = relation(sentence, &mut left);
    left.next().is_none() && true_to.is_some_and(|(holds, _)| holds)
}

/// Whether these numbers may be used.
pub(crate) fn may_be_used(allowed: &BoxNumbers, numbers: &[Ratio<i64>]) -> bool {
    match allowed {
        BoxNumbers::Cards { cards } => {
            let mut left: Vec<Ratio<i64>> = cards
                .iter()
                .filter_map(|card| crate::typed::decimal(card).ok())
                .map(|(value, _)| value)
                .collect();
            numbers.iter().all(|number| {
                let at = left.iter().position(|card| card == number);
                at.map(|at| left.swap_remove(at)).is_some()
            })
        }
        BoxNumbers::Range { least, greatest } => numbers.iter().all(|number| {
            number.is_integer() && (*least..=*greatest).contains(&number.to_integer())
        }),
    }
}

type Numbers<'a> = std::slice::Iter<'a, Ratio<i64>>;

/// Whether a relation holds, and the value of its right side. The left side may be a relation
/// itself, as in 1 < 2 < 3.
fn relation(expr: &Expr, numbers: &mut Numbers) -> Option<(bool, Ratio<i64>)> {
    let Expr::Relation { left, sign, right } = expr else {
        return None;
    };
    let (before, left) = match left.as_ref() {
        inner @ Expr::Relation { .. } => relation(inner, numbers)?,
        inner => (true, value(inner, numbers)?),
    };
    let right = value(right, numbers)?;
    let holds = match sign {
        Sign::Less => left < right,
        Sign::Equal => left == right,
        Sign::Greater => left > right,
        Sign::AtMost => left <= right,
        Sign::AtLeast => left >= right,
        Sign::NotEqual => left != right,
        Sign::About | Sign::Blank => return None,
    };
    Some((before && holds, right))
}

fn value(expr: &Expr, numbers: &mut Numbers) -> Option<Ratio<i64>> {
    let zero = Ratio::zero();
    Some(match expr {
        Expr::Blank => *numbers.next()?,
        Expr::Number { text } => crate::typed::decimal(text).ok()?.0,
        Expr::Fraction { top, bottom }
        | Expr::Quotient {
            left: top,
            right: bottom,
        }
        | Expr::Ratio {
            left: top,
            right: bottom,
        } => {
            let top = value(top, numbers)?;
            let bottom = value(bottom, numbers)?;
            top.checked_div(&bottom)?
        }
        Expr::Mixed { whole, top, bottom } => {
            let whole = value(whole, numbers)?;
            let top = value(top, numbers)?;
            let bottom = value(bottom, numbers)?;
            whole.checked_add(&top.checked_div(&bottom)?)?
        }
        Expr::Sum { terms } => {
            let mut sum = zero;
            for term in terms {
                sum = sum.checked_add(&value(term, numbers)?)?;
            }
            sum
        }
        Expr::Product { factors, .. } => {
            let mut product = Ratio::one();
            for factor in factors {
                product = product.checked_mul(&value(factor, numbers)?)?;
            }
            product
        }
        Expr::Difference { left, right } => {
            let left = value(left, numbers)?;
            left.checked_sub(&value(right, numbers)?)?
        }
        Expr::Group { inner } => value(inner, numbers)?,
        Expr::Negative { inner } => zero.checked_sub(&value(inner, numbers)?)?,
        Expr::Absolute { inner } => {
            let inner = value(inner, numbers)?;
            if inner < zero {
                zero.checked_sub(&inner)?
            } else {
                inner
            }
        }
        Expr::Percent { inner } => value(inner, numbers)?.checked_div(&Ratio::from(100))?,
        Expr::Power { .. }
        | Expr::Variable { .. }
        | Expr::Relation { .. }
        | Expr::Measure { .. }
        | Expr::Money { .. }
        | Expr::Time { .. }
        | Expr::Pair { .. }
        | Expr::Degrees { .. } => return None,
    })
}

/// The sentence with these numbers in its boxes, in reading order.
pub(crate) fn filled(sentence: &Expr, texts: &[String]) -> Expr {
    fill(sentence, &mut texts.iter())
}

fn fill(expr: &Expr, texts: &mut std::slice::Iter<String>) -> Expr {
    let mut one = |inner: &Expr| Box::new(fill(inner, texts));
    match expr {
        Expr::Blank => texts.next().map_or(Expr::Blank, num),
        Expr::Fraction { top, bottom } => Expr::Fraction {
            top: one(top),
            bottom: one(bottom),
        },
        Expr::Quotient { left, right } => Expr::Quotient {
            left: one(left),
            right: one(right),
        },
        Expr::Ratio { left, right } => Expr::Ratio {
            left: one(left),
            right: one(right),
        },
        Expr::Difference { left, right } => Expr::Difference {
            left: one(left),
            right: one(right),
        },
        Expr::Relation { left, sign, right } => Expr::Relation {
            left: one(left),
            sign: *sign,
            right: one(right),
        },
        Expr::Group { inner } => Expr::Group { inner: one(inner) },
        Expr::Percent { inner } => Expr::Percent { inner: one(inner) },
        Expr::Sum { terms } => Expr::Sum {
            terms: terms.iter().map(|term| fill(term, texts)).collect(),
        },
        Expr::Product {
            factors,
            side_by_side,
        } => Expr::Product {
            factors: factors.iter().map(|factor| fill(factor, texts)).collect(),
            side_by_side: *side_by_side,
        },
        other => other.clone(),
    }
}

/// The value of an expression without boxes; `None` where it has none.
pub(crate) fn known_value(expr: &Expr) -> Option<Ratio<i64>> {
    value(expr, &mut [].iter())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::expr::{equal, frac, product, quotient, relation, sum};

    fn numbers(all: &[i64]) -> Vec<Ratio<i64>> {
        all.iter().copied().map(Ratio::from).collect()
    }

    #[test]
    fn a_sentence_is_true_for_each_of_its_solutions_and_for_no_other() {
        let eighths = equal(
            sum([frac(Expr::Blank, num(4)), frac(Expr::Blank, num(8))]),
            frac(7, 8),
        );
        let found: Vec<(i64, i64)> = (1..=9)
            .flat_map(|a| (1..=9).map(move |b| (a, b)))
            .filter(|(a, b)| holds(&eighths, &numbers(&[*a, *b])))
            .collect();
        assert_eq!(found, [(1, 5), (2, 3), (3, 1)]);

        let between = relation(
            relation(num("0.4"), Sign::Less, Expr::Blank),
            Sign::Less,
            Expr::Blank,
        );
        assert!(holds(&between, &[Ratio::new(1, 2), Ratio::new(3, 4)]));
        assert!(!holds(&between, &[Ratio::new(3, 4), Ratio::new(1, 2)]));
        assert!(!holds(&between, &[Ratio::new(1, 5), Ratio::new(1, 2)]));
    }

    #[test]
    fn what_has_no_value_is_not_true() {
        let by_zero = equal(quotient(num(3), Expr::Blank), Expr::Blank);
        assert!(!holds(&by_zero, &numbers(&[0, 0])));
        assert!(!holds(&by_zero, &numbers(&[3])), "a box is empty");
        assert!(!holds(&by_zero, &numbers(&[3, 1, 1])), "a number is left");
        let large = equal(product([Expr::Blank, Expr::Blank]), num(1));
        assert!(!holds(&large, &numbers(&[i64::MAX, i64::MAX])));
        assert!(!holds(&Expr::Blank, &numbers(&[1])), "no sentence");
    }

    #[test]
    fn a_card_is_used_once_and_a_range_takes_whole_numbers() {
        let cards = BoxNumbers::Cards {
            cards: vec!["0.5".into(), "3".into(), "3".into()],
        };
        assert!(may_be_used(&cards, &numbers(&[3, 3])));
        assert!(!may_be_used(&cards, &numbers(&[3, 3, 3])));
        assert!(may_be_used(&cards, &[Ratio::new(1, 2)]));
        let range = BoxNumbers::Range {
            least: 2,
            greatest: 9,
        };
        assert!(may_be_used(&range, &numbers(&[2, 9])));
        assert!(!may_be_used(&range, &numbers(&[1])));
        assert!(!may_be_used(&range, &[Ratio::new(5, 2)]));
    }

    /// Sentences of the Common Core State Standards for Mathematics (2010), quoted from memory:
    /// 3.OA.A.4, 3.OA.B.5, 4.NF.B.3.b, 5.NF.A.1, 6.NS.B.4, and the wrong result of 5.NF.A.2.
    #[test]
    fn sentences_of_the_standards_hold_and_the_wrong_one_does_not() {
        let boxed = || Expr::Blank;
        let times = |a: Expr, b: Expr| product([a, b]);
        let true_ones: [(Expr, &[i64]); 6] = [
            (equal(times(num(8), boxed()), num(48)), &[6]),
            (equal(num(5), quotient(boxed(), num(3))), &[15]),
            (
                equal(
                    times(boxed(), crate::expr::group(sum([num(5), num(2)]))),
                    sum([times(num(8), num(5)), times(num(8), boxed())]),
                ),
                &[8, 2],
            ),
            (
                equal(
                    frac(3, 8),
                    sum([frac(boxed(), num(8)), frac(boxed(), num(8))]),
                ),
                &[1, 2],
            ),
            (
                equal(
                    sum([frac(2, 3), frac(5, 4)]),
                    sum([frac(boxed(), num(12)), frac(boxed(), num(12))]),
                ),
                &[8, 15],
            ),
            (
                equal(
                    sum([num(36), num(8)]),
                    times(num(4), crate::expr::group(sum([boxed(), boxed()]))),
                ),
                &[9, 2],
            ),
        ];
        for (sentence, solution) in true_ones {
            assert!(holds(&sentence, &numbers(solution)), "{sentence:?}");
        }
        let wrong = equal(sum([frac(2, 5), frac(1, 2)]), frac(boxed(), num(7)));
        assert!(!holds(&wrong, &numbers(&[3])));
    }
}
