//! Marking: reads a response, compares it exactly with the key, and looks for
//! the misconception behind a wrong one.

mod form;
mod read;
mod respond;
mod signs;
mod value;

pub use respond::response_for;
pub(super) use value::{letters_of, value_of};

use super::answer::{Answer, Response};
use super::model::{FormNote, FormRule, Item, Marked, Noticed};
use super::typed::ResponseError;
use form::{check_form, same_value};
use num_rational::Ratio;
use read::read;
use value::Value;

/// Marks a response to an item.
///
/// # Errors
/// [`ResponseError`] if the response cannot be read. Ask the student again; do not count
/// it as wrong.
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
        .misconceptions
        .iter()
        .find(|misconception| {
            value_of(&misconception.answer, item.form, &letters).is_ok_and(|wrong| wrong == value)
        })
        .map(|misconception| Noticed {
            code: misconception.code.clone(),
            say: misconception.say.clone(),
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
