//! The form an answer is written in.

use super::value::Written;
use crate::algebra;
use crate::answer::Answer;
use crate::model::{FormNote, FormRule};

/// A step-by-step expression that is equal in value only.
pub(super) fn same_value(answer: &Answer, written: &Written, letters: &[char]) -> bool {
    let (Answer::Expression { text }, Written::Tree(tree)) = (answer, written) else {
        return false;
    };
    let key = algebra::expression(text, letters).and_then(|key| key.poly());
    matches!((key, tree.poly()), (Ok(key), Ok(given)) if key == given)
}

/// Whether the form rule is kept, and the note on the form.
pub(super) fn check_form(
    form: FormRule,
    key: &Answer,
    written: &Written,
) -> (bool, Option<FormNote>) {
    match (form, written) {
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
        (FormRule::Exact, written) => match other_form(key, written) {
            None => (true, None),
            some => (false, some),
        },
        (_, written) => (true, other_form(key, written)),
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
