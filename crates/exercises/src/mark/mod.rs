//! Marking: reads a response, compares it exactly with the key, and looks for
//! the misconception behind a wrong one.

mod form;
mod key;
mod read;
mod respond;
mod sentence;
mod signs;
mod value;

pub(super) use key::Key;
pub use respond::response_for;
pub(super) use sentence::{filled, holds, known_value};
pub(super) use value::letters_of;

use super::answer::{Answer, Entry, Response};
use super::model::{FormNote, FormRule, Item, Marked, Noticed};
use super::typed::ResponseError;
use form::{check_form, same_value};
use read::read;
use value::{Value, Written};

/// Marks a response to an item.
///
/// # Errors
/// [`ResponseError`] if the response cannot be read. Ask the student again; do not count
/// it as wrong.
pub fn mark(item: &Item, response: &Response) -> Result<Marked, ResponseError> {
    let letters = letters_of(&item.entry);
    let (value, written) = read(&item.entry, response, item.form, &letters)?;
    let key = Key::of(&item.entry, &item.answer, item.form, &letters)?;
    if key.is(&value) {
        let (form_kept, form_note) = check_form(item.form, formed(item), &written);
        return Ok(Marked {
            right: form_kept,
            form_note,
            noticed: None,
        });
    }
    let noticed = item
        .misconceptions
        .iter()
        .find(|misconception| key.leads(&misconception.answer, &value))
        .map(|misconception| Noticed {
            code: misconception.code.clone(),
            say: misconception.say.clone(),
        });
    Ok(Marked {
        right: false,
        form_note: partly_right(item, &key, &value, &written),
        noticed,
    })
}

/// The answer whose form is asked for: the key, or its part that is typed.
fn formed(item: &Item) -> &Answer {
    match (&item.entry, &item.answer) {
        (Entry::TwoParts { second: entry, .. }, Answer::TwoParts { first, second }) => {
            if entry.is_tapped() { first } else { second }
        }
        (_, key) => key,
    }
}

/// What a wrong response lacks, if it is right in part.
fn partly_right(item: &Item, key: &Key, value: &Value, written: &Written) -> Option<FormNote> {
    match (&item.answer, value) {
        (Answer::Boxes { sentence, .. }, Value::Boxes(numbers)) => {
            holds(sentence, numbers).then_some(FormNote::OtherNumbers)
        }
        (Answer::TwoParts { .. }, Value::Parts(first, _)) => {
            key.first_is(first).then_some(FormNote::FirstPartOnly)
        }
        // An expression asked for step by step may be equal in value only.
        _ => (item.form == FormRule::SameSteps && same_value(&item.answer, written, key.letters))
            .then_some(FormNote::OtherSteps),
    }
}
