//! Two parts in one exercise.

use crate::answer::{Answer, Entry};
use crate::block::Block;
use crate::dice::Dice;
use crate::make::Draft;
use crate::say::{Arg, Say};
use serde_json::Value;

/// The names that the prompt has already.
fn names_in(draft: &Draft) -> Vec<&str> {
    let says = draft.prompt.iter().filter_map(|block| match block {
        Block::Say { say } => Some(say),
        _ => None,
    });
    says.flat_map(|say| say.args.values())
        .filter_map(|arg| match arg {
            Arg::Text { text } => Some(text.as_ref()),
            _ => None,
        })
        .collect()
}

/// The name of somebody who is not in the story.
pub(super) fn speaker(draft: &Draft, dice: &mut Dice) -> &'static str {
    dice.name_beside(&names_in(draft))
}

/// Two names of people who are not in the story.
pub(super) fn two_speakers(draft: &Draft, dice: &mut Dice) -> (&'static str, &'static str) {
    let mut used = names_in(draft);
    let first = dice.name_beside(&used);
    used.push(first);
    (first, dice.name_beside(&used))
}

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
