//! Makes the exercise of a concept, level and seed: the registry of generators, and the
//! checks of every draft.

use super::answer::{Answer, Entry};
use super::block::Block;
use super::dice::{Dice, TakenNames};
use super::make::{Draft, Generator, Make, asked_otherwise};
use super::mark::{Key, letters_of};
use super::model::{Item, Level, Misconception};
use super::needs::{Shown, told};
use super::often::comes_too_often;
use super::strand;
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::OnceLock;
use surefoot_catalogue::ConceptId;
use thiserror::Error;

/// Most draws for one seed.
const MOST_DRAWS: u32 = 400;

/// Why there is no item.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum ItemError {
    /// The concept has no generator; it can only be rated.
    #[error("{concept} has no exercises")]
    NoGenerator {
        /// The id asked for.
        concept: String,
    },
    /// No draw suited, which is a fault of the generator.
    #[error("{concept}, level {level}, seed {seed}: no numbers suit after {MOST_DRAWS} draws")]
    NothingSuits {
        /// The concept.
        concept: String,
        /// The level.
        level: u8,
        /// The seed.
        seed: u64,
    },
}

fn registry() -> &'static BTreeMap<&'static str, &'static Generator> {
    static REGISTRY: OnceLock<BTreeMap<&'static str, &'static Generator>> = OnceLock::new();
    REGISTRY.get_or_init(|| {
        strand::all()
            .map(|generator| (generator.concept, generator))
            .collect()
    })
}

/// Concepts that have exercises, in alphabetical order.
pub fn concepts_with_exercises() -> impl Iterator<Item = &'static str> {
    registry().keys().copied()
}

/// Whether a concept has exercises.
#[must_use]
pub fn has_generator(concept: &str) -> bool {
    registry().contains_key(concept)
}

/// The present version of a concept's generator.
#[must_use]
pub fn generator_version(concept: &str) -> Option<u32> {
    registry().get(concept).map(|generator| generator.version)
}

/// Makes the exercise of a concept, level and seed. For one version of the generator, the
/// same three always make the same exercise.
///
/// # Errors
/// [`ItemError::NoGenerator`] for a concept without exercises.
pub fn generate(concept: &str, level: Level, seed: u64) -> Result<Item, ItemError> {
    generate_without(concept, level, seed, TakenNames::NONE)
}

/// The same exercise, whose people have other names than some that are taken.
///
/// # Errors
/// As [`generate`].
pub fn generate_without(
    concept: &str,
    level: Level,
    seed: u64,
    taken: TakenNames,
) -> Result<Item, ItemError> {
    let generator = registry()
        .get(concept)
        .ok_or_else(|| ItemError::NoGenerator {
            concept: concept.chars().take(80).collect(),
        })?;
    let dice = Dice::new(generator.concept, generator.version, level.into(), seed);
    let mut dice = dice.without(taken);
    let mut make = Make {
        concept: generator.concept,
        level,
        equal: dice.one_in(5),
        third: dice.from(0..=2) as usize,
        dice,
    };
    for _ in 0..MOST_DRAWS {
        let Some(draft) = (generator.make)(&mut make) else {
            continue;
        };
        let Ok(concept) = ConceptId::new(generator.concept) else {
            break;
        };
        if !sound(&draft) {
            continue;
        }
        let draft = asked_otherwise(&draft, generator.concept, level, &mut make.dice)
            .filter(sound)
            .unwrap_or(draft);
        let Some((entry, answer)) = draft.answer else {
            continue;
        };
        if comes_too_often(generator.concept, &answer, &mut make.dice) {
            continue;
        }
        let shown = Shown::of(&draft.prompt, &entry, &answer);
        let misconceptions: Option<Vec<Misconception>> = draft
            .misconceptions
            .into_iter()
            .map(|(code, answer)| {
                Some(Misconception {
                    code: Cow::Borrowed(code),
                    answer,
                    say: told(code, shown)?,
                })
            })
            .collect();
        if let Some(misconceptions) = misconceptions {
            return Ok(Item {
                concept,
                generator_version: generator.version,
                level,
                seed,
                prompt: draft.prompt,
                entry,
                answer,
                form: draft.form,
                hints: draft.hints,
                steps: draft.steps,
                misconceptions,
                statement: draft.statement,
            });
        }
    }
    Err(ItemError::NothingSuits {
        concept: concept.into(),
        level: level.into(),
        seed,
    })
}

/// Whether every misconception can be entered, is wrong, and differs from the others.
fn sound(draft: &Draft) -> bool {
    let Some((entry, answer)) = &draft.answer else {
        return false;
    };
    let letters = letters_of(entry);
    let wrong = || draft.misconceptions.iter().map(|(_, wrong)| wrong);
    can_be_entered(entry, answer)
        && wrong().all(|wrong| can_be_entered(entry, wrong))
        && Key::of(entry, answer, draft.form, &letters).is_ok_and(|key| key.is_told_from(wrong()))
        && !gives_away(draft, answer)
}

/// Whether a hint says the key in numbers that the prompt does not show.
fn gives_away(draft: &Draft, key: &Answer) -> bool {
    let key = match key {
        Answer::TwoParts { first, second } => {
            return gives_away(draft, first) || gives_away(draft, second);
        }
        Answer::WholeNumber { value } => value.unsigned_abs().to_string(),
        Answer::Decimal { text } => text.trim_start_matches('-').to_owned(),
        _ => return false,
    };
    if matches!(key.as_str(), "0" | "1") {
        return false;
    }
    let says = |block: &Block| match block {
        Block::Say { say } => say.says_number(&key),
        Block::Math { expr } => expr.says_number(&key),
        Block::Figure { .. } => false,
    };
    let shown = |block: &Block| match block {
        Block::Figure { figure } => figure.alt.says_number(&key),
        other => says(other),
    };
    draft.hints.iter().flatten().any(says) && !draft.prompt.iter().any(shown)
}

fn can_be_entered(entry: &Entry, answer: &Answer) -> bool {
    match (entry, answer) {
        (Entry::WholeNumber { signed, .. }, Answer::WholeNumber { value }) => {
            *signed || *value >= 0
        }
        (Entry::Decimal { signed, .. }, Answer::Decimal { text }) => {
            *signed || !text.starts_with('-')
        }
        (Entry::Fraction { signed, .. }, Answer::Fraction { top, bottom }) => {
            *bottom > 0 && (*signed || *top >= 0)
        }
        (Entry::Mixed { signed, .. }, Answer::Mixed { negative, .. }) => *signed || !negative,
        (Entry::Money, Answer::Money { hundredths }) => *hundredths >= 0,
        (
            Entry::Time { half_day },
            Answer::Time {
                hour,
                minute,
                half_day: given,
            },
        ) => (1..=12).contains(hour) && *minute <= 59 && *half_day == given.is_some(),
        (Entry::Duration { .. }, Answer::Duration { minutes }) => *minutes >= 0,
        (Entry::Comparison, Answer::Comparison { .. })
        | (Entry::Expression { .. }, Answer::Expression { .. })
        | (Entry::Equation { .. }, Answer::Equation { .. })
        | (Entry::Coordinates { .. }, Answer::Coordinates { .. })
        | (Entry::NumberLineRay { .. }, Answer::NumberLineRay { .. }) => true,
        (Entry::OneChoice { choices }, Answer::OneChoice { index }) => {
            (*index as usize) < choices.len() && all_differ(choices)
        }
        (Entry::SeveralChoices { choices }, Answer::SeveralChoices { indexes }) => {
            all_differ(choices) && indexes.iter().all(|i| (*i as usize) < choices.len())
        }
        (Entry::Ordering { things, .. }, Answer::Ordering { order }) => things.len() == order.len(),
        (Entry::NumberLinePoint { line }, Answer::NumberLinePoint { at }) => {
            let steps = (at.ratio() - line.from.ratio()) / line.step.ratio();
            at.ratio() >= line.from.ratio() && at.ratio() <= line.to.ratio() && steps.is_integer()
        }
        (Entry::Angle { .. }, Answer::Angle { degrees, .. }) => (0..=360).contains(degrees),
        (Entry::ShadedFraction { wholes, parts, .. }, Answer::ShadedFraction { count }) => {
            count <= &(wholes * parts)
        }
        (
            Entry::Plot {
                columns, top, step, ..
            },
            Answer::Plot { heights },
        ) => {
            heights.len() == columns.len()
                && heights
                    .iter()
                    .all(|h| (0..=*top).contains(h) && h % step == 0)
        }
        (
            Entry::GridArea { rows, columns },
            Answer::GridArea {
                rows: r,
                columns: c,
            },
        ) => *r > 0 && *c > 0 && r <= rows && c <= columns,
        (
            Entry::QuotientRemainder,
            Answer::QuotientRemainder {
                quotient,
                remainder,
            },
        ) => *quotient >= 0 && *remainder >= 0,
        (Entry::SeveralNumbers { fields, signed, .. }, Answer::SeveralNumbers { texts }) => {
            fields.len() == texts.len() && (*signed || !texts.iter().any(|t| t.starts_with('-')))
        }
        (Entry::Boxes { boxes, .. }, Answer::Boxes { texts, .. }) => *boxes as usize == texts.len(),
        (
            Entry::TwoParts { first, second, .. },
            Answer::TwoParts {
                first: first_answer,
                second: second_answer,
            },
        ) => {
            let has_parts = |entry: &Entry| matches!(entry, Entry::TwoParts { .. });
            !has_parts(first)
                && !has_parts(second)
                && can_be_entered(first, first_answer)
                && can_be_entered(second, second_answer)
        }
        _ => false,
    }
}

fn all_differ(choices: &[super::answer::Choice]) -> bool {
    let mut before = Vec::new();
    choices.iter().all(|choice| {
        let differs = !before.contains(&choice);
        before.push(choice);
        differs
    })
}
