//! Exercises to discuss in class, with a misconception.

use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_exercises::answer::Entry;
use surefoot_exercises::bank::OwnExercise;
use surefoot_exercises::messages::attribute;
use surefoot_exercises::text::blocks_text;
use surefoot_exercises::{Block, ItemView, Say};
use surefoot_exercises::{Item, Level, TakenNames, generate_without, has_generator};
use ts_rs::TS;

/// An exercise with its key, and a misconception to discuss.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct SampleExercise {
    /// The exercise.
    pub item: ItemView,
    /// The right answer.
    pub answer: Vec<Block>,
    /// The worked steps.
    pub steps: Vec<Vec<Block>>,
    /// A misconception, if one leads to a wrong answer here.
    pub misconception: Option<SampleMisconception>,
}

/// A misconception and the answer it leads to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct SampleMisconception {
    /// Its code.
    pub code: String,
    /// The wrong answer.
    pub answer: Vec<Block>,
    /// The feedback to that answer.
    pub say: Say,
}

/// Seeds tried at most to get an exercise with a wanted misconception.
const MOST_TRIES: u64 = 24;

/// An exercise of a concept, with the first misconception of `wished` (commonest first) that leads to
/// an answer, otherwise with any misconception of the exercise. A concept without a generator gives
/// an own exercise; without one, `None`. Its people have none of the names that are taken.
pub(super) fn sample(
    taken: TakenNames,
    own: &[OwnExercise],
    concept: &str,
    level: Level,
    seed: u64,
    wished: &[String],
) -> Option<SampleExercise> {
    if !has_generator(concept) {
        return own_sample(own, seed);
    }
    let generate = |seed| generate_without(concept, level, seed, taken);
    let mut first: Option<Item> = None;
    for code in wished {
        for at in 0..MOST_TRIES {
            let item = generate(seed.wrapping_add(at)).ok()?;
            if item.misconceptions.iter().any(|m| m.code == code.as_str()) {
                return Some(shown(&item, Some(code)));
            }
            first.get_or_insert(item);
        }
    }
    match first {
        Some(item) => Some(shown(&item, None)),
        None => generate(seed).ok().map(|item| shown(&item, None)),
    }
}

/// One of the own exercises of a concept, chosen by the seed. Its wrong answers have no named
/// misconception.
fn own_sample(own: &[OwnExercise], seed: u64) -> Option<SampleExercise> {
    let place = usize::try_from(seed).unwrap_or(0).checked_rem(own.len())?;
    let item = own.get(place)?.item().ok()?;
    Some(SampleExercise {
        misconception: None,
        ..shown(&item, None)
    })
}

/// An exercise as it is discussed, with the misconception of a code, or any.
pub(super) fn shown(item: &Item, code: Option<&str>) -> SampleExercise {
    let worked = item.worked();
    let misconception = item
        .misconceptions
        .iter()
        .filter(|m| code.is_none_or(|code| m.code == code))
        .find(|m| !names(&worked.answer, &m.code))
        .map(|misconception| {
            let as_answered = Item {
                answer: misconception.answer.clone(),
                ..item.clone()
            };
            SampleMisconception {
                code: misconception.code.clone().into_owned(),
                answer: match item.entry {
                    Entry::TwoParts { .. } => {
                        wrong_parts(as_answered.worked().answer, &worked.answer)
                    }
                    _ => as_answered.worked().answer,
                },
                say: misconception.say.clone(),
            }
        });
    SampleExercise {
        item: item.view(),
        answer: worked.answer,
        steps: worked.steps,
        misconception,
    }
}

/// Whether an answer is the name of a misconception, which then explains nothing beside it.
fn names(answer: &[Block], code: &str) -> bool {
    let locale = Language::first().into();
    let name = attribute(locale, &format!("misconception-{code}"), "name");
    let text = blocks_text(locale, answer);
    (name.ok().zip(text.ok())).is_some_and(|(name, text)| text.lines().any(|line| line == name))
}

/// The parts of a wrong answer that differ from the right one; all where they do not match.
fn wrong_parts(wrong: Vec<Block>, right: &[Block]) -> Vec<Block> {
    if wrong.len() != right.len() {
        return wrong;
    }
    let pairs = wrong.into_iter().zip(right);
    pairs
        .filter_map(|(wrong, right)| (wrong != *right).then_some(wrong))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_exercises::{concepts_with_exercises, generate};

    const NOBODY: TakenNames = TakenNames::NONE;

    #[test]
    fn every_concept_gives_an_exercise_whose_misconception_differs_from_its_answer() {
        let (mut with_misconception, mut two_parts) = (0, 0);
        for concept in concepts_with_exercises() {
            let found = sample(NOBODY, &[], concept, Level::Expected, 7, &[]).unwrap();
            assert!(!found.item.prompt.is_empty() && !found.answer.is_empty());
            if let Some(misconception) = &found.misconception {
                assert_ne!(misconception.answer, found.answer, "{concept}");
                with_misconception += 1;
            }
            // Of two parts only what is wrong is shown, and no answer explains itself.
            for seed in 0..30 {
                let item = generate(concept, Level::Stretch, seed).unwrap();
                let found = shown(&item, None);
                let Some(wrong) = found.misconception else {
                    continue;
                };
                assert!(!names(&found.answer, &wrong.code), "{concept} {seed}");
                if matches!(item.entry, Entry::TwoParts { .. }) && found.answer.len() == 2 {
                    two_parts += 1;
                    assert_eq!(wrong.answer.len(), 1, "{concept} {seed}");
                    assert!(found.answer.iter().any(|part| *part != wrong.answer[0]));
                }
            }
        }
        assert!(two_parts > 100, "{two_parts}");
        assert!(with_misconception > 60, "{with_misconception}");
    }

    #[test]
    fn the_wished_misconception_is_found_and_an_unknown_one_is_no_harm() {
        let concept = concepts_with_exercises().next().unwrap();
        let item = generate(concept, Level::Expected, 3).unwrap();
        let code = item.misconceptions[0].code.clone().into_owned();
        let wished = sample(
            NOBODY,
            &[],
            concept,
            Level::Expected,
            3,
            std::slice::from_ref(&code),
        )
        .unwrap();
        assert_eq!(wished.misconception.unwrap().code, code);
        let unknown = sample(
            NOBODY,
            &[],
            concept,
            Level::Expected,
            3,
            &["no-such-misconception".into()],
        )
        .unwrap();
        assert!(unknown.misconception.is_some());
        assert!(sample(NOBODY, &[], "no-such-concept", Level::Expected, 3, &[]).is_none());
    }
}
