//! An answer to judge: is it right, and if not, what is? Is the answer more or less than this?

use super::parts::{speaker, two_parts, two_speakers};
use super::shown::as_shown;
use crate::answer::{Answer, Choice, Entry};
use crate::block::Block;
use crate::decimal::Dec;
use crate::dice::Dice;
use crate::expr::{Sign, relation, var};
use crate::make::{Draft, choice, compare};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// How many wordings each question has.
const WORDINGS: i64 = 2;

/// The letter for the answer in a comparison.
const LETTER: &str = "A";

/// A child gives an answer; the student judges it and gives the right one.
pub(super) fn right_or_mend(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.as_ref()?;
    if matches!(entry, Entry::Boxes { .. } | Entry::TwoParts { .. }) {
        return None;
    }
    let wrong: Vec<&Answer> = draft
        .misconceptions
        .iter()
        .map(|(_, wrong)| wrong)
        .collect();
    let is_right = dice.one_in(2);
    let said = if is_right || wrong.is_empty() {
        key
    } else {
        dice.pick(&wrong)
    };
    let is_right = said == key;
    let name = speaker(draft, dice);
    let which = dice.from(1..=WORDINGS);
    let mut new = draft
        .clone()
        .ask(Say::new(format!("mend-says-{which}")).text("name", name));
    new.prompt.extend(said_blocks(draft, entry, said)?);
    new = new.ask(Say::new("mend-ask"));
    new.hints.insert(0, vec![Say::new("who-hint").into()]);
    let words = |id: &'static str| Choice {
        shows: Say::new(id).into(),
    };
    let first = (
        Entry::OneChoice {
            choices: vec![words("common-yes"), words("common-no")],
        },
        choice(u32::from(!is_right)),
        vec![if is_right {
            ("took-right-answer-as-wrong", choice(1))
        } else {
            ("took-wrong-answer-as-right", choice(0))
        }],
    );
    let statement = json!({
        "task": "right_or_mend", "inner": draft.statement, "said": said,
    });
    Some(two_parts(
        new,
        statement,
        first,
        Say::new("mend-right-answer"),
        (entry.clone(), key.clone(), draft.misconceptions.clone()),
    ))
}

/// Two children give answers, of which one is right; then the right answer.
pub(super) fn who_then_answer(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.as_ref()?;
    let wrong: Vec<&Answer> = draft
        .misconceptions
        .iter()
        .map(|(_, wrong)| wrong)
        .collect();
    if wrong.is_empty() || matches!(entry, Entry::Boxes { .. } | Entry::TwoParts { .. }) {
        return None;
    }
    let wrong = dice.pick(&wrong);
    let (first, second) = two_speakers(draft, dice);
    let at = u32::from(dice.one_in(2));
    let said = if at == 0 { [key, wrong] } else { [wrong, key] };
    let mut new = draft.clone();
    for (name, answer) in [first, second].into_iter().zip(said) {
        new.prompt
            .push(Say::new("mend-says-1").text("name", name).into());
        new.prompt.extend(said_blocks(draft, entry, answer)?);
    }
    new = new.ask(Say::new("who-one-is-right"));
    new.hints.insert(0, vec![Say::new("who-hint").into()]);
    let choices = [first, second]
        .map(|name| Choice {
            shows: Say::new("who-name").text("name", name).into(),
        })
        .to_vec();
    let statement = json!({
        "task": "who_then_answer", "inner": draft.statement, "names": [first, second], "said": said,
    });
    Some(two_parts(
        new,
        statement,
        (
            Entry::OneChoice { choices },
            choice(at),
            vec![("took-wrong-answer-as-right", choice(1 - at))],
        ),
        Say::new("mend-right-answer"),
        (entry.clone(), key.clone(), draft.misconceptions.clone()),
    ))
}

/// An answer as it is said; `None` for a figure and for nothing.
pub(super) fn said_blocks(draft: &Draft, entry: &Entry, answer: &Answer) -> Option<Vec<Block>> {
    let blocks = crate::text::shown_answer(&draft.prompt, entry, answer);
    let drawn = |block: &Block| matches!(block, Block::Figure { .. });
    (!blocks.is_empty() && !blocks.iter().any(drawn)).then_some(blocks)
}

/// The answer compared with a number near it.
pub(super) fn compare_answer(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.as_ref()?;
    let value = value_of(key)?;
    let signed = matches!(
        entry,
        Entry::WholeNumber { signed: true, .. }
            | Entry::Decimal { signed: true, .. }
            | Entry::Mixed { signed: true, .. }
    );
    // "=" in a fifth, and the other signs as often as each other.
    let sign = match dice.from(0..=4) {
        0 => Sign::Equal,
        1 | 2 => Sign::Less,
        _ => Sign::Greater,
    };
    let fits = |other: Ratio<i64>| match sign {
        Sign::Equal => other == value,
        Sign::Less => value < other,
        _ => value > other,
    };
    let mut answers: Vec<Answer> = draft
        .misconceptions
        .iter()
        .map(|(_, wrong)| wrong.clone())
        .filter(|wrong| value_of(wrong).is_some_and(fits))
        .collect();
    if sign == Sign::Equal {
        answers = vec![key.clone()];
    } else if answers.is_empty() || dice.one_in(2) {
        let steps = dice.from(1..=3);
        answers = vec![beside(
            key,
            if sign == Sign::Less { steps } else { -steps },
        )?];
    }
    let other = answers.get(dice.from(0..=answers.len() as i64 - 1) as usize)?;
    let other_value = value_of(other)?;
    if !fits(other_value) || (!signed && other_value < Ratio::from(0)) {
        return None;
    }
    let (shown, text) = as_shown(entry, other)?;
    let which = dice.from(1..=WORDINGS);
    let mut new = draft
        .clone()
        .ask(Say::new(format!("answer-sign-ask-{which}")))
        .ask(relation(var(LETTER), Sign::Blank, shown.clone()));
    new.prompt
        .retain(|block| !matches!(block, Block::Say { say } if say.id == "common-work-out"));
    new.statement = json!({
        "task": "compare_answer", "inner": draft.statement, "with": text,
    });
    new.form = crate::FormRule::AnyEqual;
    new.misconceptions = [Sign::Less, Sign::Equal, Sign::Greater]
        .into_iter()
        .filter(|wrong| *wrong != sign)
        .map(|wrong| {
            let code = match wrong {
                Sign::Less => "answer-judged-too-small",
                Sign::Greater => "answer-judged-too-large",
                _ => "answer-taken-as-equal",
            };
            (code, compare(wrong))
        })
        .collect();
    let (right, _) = as_shown(entry, key)?;
    new.steps.push(vec![
        Say::new("answer-sign-step").into(),
        relation(right, sign, shown).into(),
    ]);
    new.answer = Some((Entry::Comparison, compare(sign)));
    Some(new)
}

pub(super) fn value_of(answer: &Answer) -> Option<Ratio<i64>> {
    Some(match answer {
        Answer::WholeNumber { value } => Ratio::from(*value),
        Answer::Decimal { text } => crate::typed::decimal(text).ok()?.0,
        Answer::Fraction { top, bottom } if *bottom != 0 => Ratio::new(*top, *bottom),
        Answer::Mixed {
            negative,
            whole,
            top,
            bottom,
        } if *bottom != 0 => {
            let size = Ratio::from(*whole) + Ratio::new(*top, *bottom);
            if *negative { -size } else { size }
        }
        Answer::Money { hundredths } => Ratio::new(*hundredths, 100),
        Answer::Angle { degrees, .. } => Ratio::from(*degrees),
        _ => return None,
    })
}

/// A number some steps of its last place, or of its parts, away.
fn beside(answer: &Answer, steps: i64) -> Option<Answer> {
    let value = value_of(answer)?;
    Some(match answer {
        Answer::WholeNumber { value } => Answer::WholeNumber {
            value: value + steps,
        },
        Answer::Decimal { text } => {
            let places = text
                .split_once('.')
                .map_or(0, |(_, part)| part.len() as u32);
            let step = Ratio::new(steps, 10_i64.checked_pow(places)?);
            Answer::Decimal {
                text: Dec::exact(value + step)?.trimmed().to_string(),
            }
        }
        Answer::Fraction { top, bottom } => Answer::Fraction {
            top: top + steps,
            bottom: *bottom,
        },
        Answer::Mixed { bottom, .. } => crate::make::mixed(value + Ratio::new(steps, *bottom)),
        Answer::Money { hundredths } => Answer::Money {
            hundredths: hundredths + steps * 10,
        },
        Answer::Angle { degrees, within } => Answer::Angle {
            degrees: degrees + steps * 10,
            within: *within,
        },
        _ => return None,
    })
}
