//! The answer is given, and a number before it is missing.

use super::boxes::sentence_of;
use super::sentence::{as_text, number, text_of};
use crate::answer::{Answer, Entry};
use crate::dice::Dice;
use crate::expr::{Expr, Sign, difference, equal, num, product, quotient, sum};
use crate::make::{Draft, keep};
use crate::mark::known_value;
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// What undoes the operation: how the missing number is worked out, and the codes and answers
/// of two mistakes.
struct Undone {
    work: Expr,
    value: Ratio<i64>,
    wrong: [(&'static str, Ratio<i64>); 2],
}

/// The sentence of the draft with its answer, and a box for one of its two numbers.
pub(super) fn missing_number(draft: &Draft, grade: u8, dice: &mut Dice) -> Option<Draft> {
    let (left, Sign::Equal, Expr::Blank) = sentence_of(draft)? else {
        return None;
    };
    // Two plain numbers: a product inside would vanish into the box.
    let two: Vec<&Expr> = match left {
        Expr::Sum { terms: parts } | Expr::Product { factors: parts, .. } => parts.iter().collect(),
        Expr::Difference { left, right } | Expr::Quotient { left, right } => {
            vec![left.as_ref(), right.as_ref()]
        }
        _ => return None,
    };
    keep(two.iter().all(|part| number(part).is_some()))?;
    let result = known_value(left)?;
    let first_is_missing = dice.one_in(2);
    let (sentence, undone) = match left {
        Expr::Sum { terms } => {
            let [a, b] = terms.as_slice() else {
                return None;
            };
            let known = number(if first_is_missing { b } else { a })?;
            let shown = num(text_of(known)?);
            (
                in_order(first_is_missing, shown.clone(), |a, b| sum([a, b])),
                Undone {
                    work: difference(num(text_of(result)?), shown),
                    value: result - known,
                    wrong: [
                        ("added-all-numbers", result + known),
                        ("answer-given-again", result),
                    ],
                },
            )
        }
        Expr::Difference { left, right } => {
            let known = number(if first_is_missing { right } else { left })?;
            let shown = num(text_of(known)?);
            let sentence = in_order(first_is_missing, shown.clone(), difference);
            let undone = if first_is_missing {
                Undone {
                    work: sum([num(text_of(result)?), shown]),
                    value: result + known,
                    wrong: [
                        ("operation-not-undone", size(result - known)),
                        ("answer-given-again", result),
                    ],
                }
            } else {
                Undone {
                    work: difference(shown, num(text_of(result)?)),
                    value: known - result,
                    wrong: [
                        ("added-all-numbers", known + result),
                        ("answer-given-again", result),
                    ],
                }
            };
            (sentence, undone)
        }
        Expr::Product { factors, .. } => {
            let [a, b] = factors.as_slice() else {
                return None;
            };
            let known = number(if first_is_missing { b } else { a })?;
            keep(can_divide_by(known, grade))?;
            let shown = num(text_of(known)?);
            (
                in_order(first_is_missing, shown.clone(), |a, b| product([a, b])),
                Undone {
                    work: quotient(num(text_of(result)?), shown),
                    value: result / known,
                    wrong: [
                        ("subtracted-instead-of-divided", size(result - known)),
                        ("answer-given-again", result),
                    ],
                },
            )
        }
        Expr::Quotient { left, right } => {
            let known = number(if first_is_missing { right } else { left })?;
            let shown = num(text_of(known)?);
            let sentence = in_order(first_is_missing, shown.clone(), quotient);
            keep(result > Ratio::from(1))?;
            let undone = if first_is_missing {
                keep(can_divide_by(known, grade))?;
                Undone {
                    work: product([num(text_of(result)?), shown]),
                    value: result * known,
                    wrong: [
                        ("added-instead-of-multiplied", result + known),
                        ("answer-given-again", result),
                    ],
                }
            } else {
                keep(can_divide_by(result, grade))?;
                Undone {
                    work: quotient(shown, num(text_of(result)?)),
                    value: known / result,
                    wrong: [
                        ("subtracted-instead-of-divided", size(known - result)),
                        ("answer-given-again", result),
                    ],
                }
            };
            (sentence, undone)
        }
        _ => return None,
    };
    keep(undone.value > Ratio::from(1))?;
    made(sentence, undone, result)
}

/// The operation with a box as its first or its second number.
fn in_order(first: bool, known: Expr, of: impl Fn(Expr, Expr) -> Expr) -> Expr {
    if first {
        of(Expr::Blank, known)
    } else {
        of(known, Expr::Blank)
    }
}

fn size(value: Ratio<i64>) -> Ratio<i64> {
    if value < Ratio::from(0) {
        -value
    } else {
        value
    }
}

/// Whether the grade divides by this number: up to 10 in grade 3 and 4, two digits in grade 5.
fn can_divide_by(value: Ratio<i64>, grade: u8) -> bool {
    let most = match grade {
        ..=4 => 10,
        5 => 99,
        _ => return value > Ratio::from(1),
    };
    value.is_integer() && (2..=most).contains(&value.to_integer())
}

fn made(sentence: Expr, undone: Undone, result: Ratio<i64>) -> Option<Draft> {
    let result = num(text_of(result)?);
    let shown = equal(sentence.clone(), result);
    let all_whole =
        undone.value.is_integer() && undone.wrong.iter().all(|(_, value)| value.is_integer());
    let answer = |value: Ratio<i64>| -> Option<Answer> {
        Some(if all_whole {
            Answer::WholeNumber {
                value: value.to_integer(),
            }
        } else {
            Answer::Decimal {
                text: text_of(value)?,
            }
        })
    };
    let entry = if all_whole {
        Entry::WholeNumber {
            signed: false,
            unit: None,
        }
    } else {
        Entry::Decimal {
            signed: false,
            unit: None,
        }
    };
    let mut draft = Draft::new(json!({"task": "missing_number", "sentence": as_text(&shown)?}))
        .ask(Say::new("common-box"))
        .ask(shown.clone())
        .answer(entry, answer(undone.value)?)
        .hint(Say::new("missing-hint-undo"))
        .hint(Say::new("missing-hint-try"))
        .step(equal(undone.work, num(text_of(undone.value)?)))
        .step_with(
            Say::new("missing-step-check"),
            crate::mark::filled(&shown, &[text_of(undone.value)?]),
        );
    for (code, value) in undone.wrong {
        draft = draft.misconception_unless_same(code, answer(value)?);
    }
    Some(draft)
}
