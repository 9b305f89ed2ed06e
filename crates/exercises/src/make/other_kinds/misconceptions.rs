//! A child's answer and the mistake in it: which one is it? Then the right answer.

use super::alike::alike;
use super::judged::said_blocks;
use super::parts::{speaker, two_parts};
use crate::answer::{Answer, Choice, Entry};
use crate::dice::Dice;
use crate::make::{Draft, choice};
use crate::messages::attribute;
use crate::say::Say;
use serde_json::json;
use surefoot_catalogue::{Language, Text};

/// A child gives an answer. The first part asks which of two mistakes leads to it, or none; the
/// second part is the right answer. Each of the three is as often right.
pub(super) fn name_the_misconception(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.as_ref()?;
    if matches!(entry, Entry::Boxes { .. } | Entry::TwoParts { .. }) {
        return None;
    }
    let mut two_of: Vec<(&'static str, &Answer)> = Vec::new();
    for (code, wrong) in &draft.misconceptions {
        if two_of.iter().all(|(known, _)| known != code) {
            two_of.push((code, wrong));
        }
    }
    dice.shuffle(&mut two_of);
    // The second must not be true of the first one's answer too.
    let (one, one_answer) = two_of.first()?;
    let (two, two_answer) = two_of
        .iter()
        .skip(1)
        .find(|(code, answer)| !alike(one, code) && answer != one_answer)?;
    let at = dice.from(0..=2) as u32;
    let said = match at {
        0 => one_answer,
        1 => two_answer,
        _ => key,
    };
    let name = speaker(draft, dice);
    let mut new = draft
        .clone()
        .ask(Say::new("mend-says-1").text("name", name));
    new.prompt.extend(said_blocks(draft, entry, said)?);
    new = new.ask(Say::new("misconception-ask").text("name", name));
    new.hints.insert(0, vec![Say::new("who-hint").into()]);
    let choices = vec![
        Choice {
            shows: Say::new("own-words").words("words", named(one)?).into(),
        },
        Choice {
            shows: Say::new("own-words").words("words", named(two)?).into(),
        },
        Choice {
            shows: Say::new("misconception-none").into(),
        },
    ];
    let wrong = (0..3)
        .filter(|place| *place != at)
        .map(|place| {
            let code = match (at, place) {
                (2, _) => "took-right-answer-as-wrong",
                (_, 2) => "took-wrong-answer-as-right",
                _ => "another-mistake-named",
            };
            (code, choice(place))
        })
        .collect();
    let statement = json!({
        "task": "name_the_misconception", "inner": draft.statement, "said": said, "misconceptions": [one, two],
    });
    Some(two_parts(
        new,
        statement,
        (Entry::OneChoice { choices }, choice(at), wrong),
        Say::new("mend-right-answer"),
        (entry.clone(), key.clone(), draft.misconceptions.clone()),
    ))
}

/// What the mistake is called, in every language.
fn named(code: &str) -> Option<Text> {
    let id = format!("misconception-{code}");
    let name = |language: Language| attribute(language.into(), &id, "name").ok();
    let first = Language::first();
    let mut text = Text::one(first, name(first)?);
    for language in Language::all() {
        if *language != first {
            text = text.with(*language, name(*language)?);
        }
    }
    Some(text)
}
