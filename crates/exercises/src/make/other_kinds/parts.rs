//! Two parts in one exercise.

use crate::answer::{Answer, Entry};
use crate::make::Draft;
use crate::say::Say;
use serde_json::Value;

/// A part: entry, key, and misconceptions with their answers.
pub type Part = (Entry, Answer, Vec<(&'static str, Answer)>);

/// The draft with two parts. Its prompt, hints and steps stay.
#[must_use]
pub fn two_parts(
    mut draft: Draft,
    statement: Value,
    (first_entry, first_key, first_wrong): Part,
    ask: Say,
    (second_entry, second_key, second_wrong): Part,
) -> Draft {
    let both = |first: &Answer, second: &Answer| Answer::TwoParts {
        first: Box::new(first.clone()),
        second: Box::new(second.clone()),
    };
    draft.statement = statement;
    draft.misconceptions = first_wrong
        .iter()
        .map(|(code, wrong)| (*code, both(wrong, &second_key)))
        .chain(
            second_wrong
                .iter()
                .map(|(code, wrong)| (*code, both(&first_key, wrong))),
        )
        .collect();
    draft.answer = Some((
        Entry::TwoParts {
            first: Box::new(first_entry),
            ask,
            second: Box::new(second_entry),
        },
        both(&first_key, &second_key),
    ));
    draft
}
