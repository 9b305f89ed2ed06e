//! Exercises to discuss in class, with a misconception.

use serde::{Deserialize, Serialize};
use surefoot_exercises::bank::OwnExercise;
use surefoot_exercises::{Block, ItemView, Say};
use surefoot_exercises::{Item, Level, generate, has_generator};
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
/// an own exercise; without one, `None`.
pub(super) fn sample(
    own: &[OwnExercise],
    concept: &str,
    level: Level,
    seed: u64,
    wished: &[String],
) -> Option<SampleExercise> {
    if !has_generator(concept) {
        return own_sample(own, seed);
    }
    let mut first: Option<Item> = None;
    for code in wished {
        for at in 0..MOST_TRIES {
            let item = generate(concept, level, seed.wrapping_add(at)).ok()?;
            if item.misconceptions.iter().any(|m| m.code == code.as_str()) {
                return Some(shown(&item, Some(code)));
            }
            first.get_or_insert(item);
        }
    }
    match first {
        Some(item) => Some(shown(&item, None)),
        None => generate(concept, level, seed)
            .ok()
            .map(|item| shown(&item, None)),
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
        .find(|m| code.is_none_or(|code| m.code == code))
        .map(|misconception| {
            let as_answered = Item {
                answer: misconception.answer.clone(),
                ..item.clone()
            };
            SampleMisconception {
                code: misconception.code.clone().into_owned(),
                answer: as_answered.worked().answer,
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

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_exercises::concepts_with_exercises;

    #[test]
    fn every_concept_gives_an_exercise_whose_misconception_differs_from_its_answer() {
        let mut with_misconception = 0;
        for concept in concepts_with_exercises() {
            let found = sample(&[], concept, Level::Expected, 7, &[]).unwrap();
            assert!(!found.item.prompt.is_empty() && !found.answer.is_empty());
            if let Some(misconception) = &found.misconception {
                assert_ne!(misconception.answer, found.answer, "{concept}");
                with_misconception += 1;
            }
        }
        assert!(with_misconception > 60, "{with_misconception}");
    }

    #[test]
    fn the_wished_misconception_is_found_and_an_unknown_one_is_no_harm() {
        let concept = concepts_with_exercises().next().unwrap();
        let item = generate(concept, Level::Expected, 3).unwrap();
        let code = item.misconceptions[0].code.clone().into_owned();
        let wished = sample(
            &[],
            concept,
            Level::Expected,
            3,
            std::slice::from_ref(&code),
        )
        .unwrap();
        assert_eq!(wished.misconception.unwrap().code, code);
        let unknown = sample(
            &[],
            concept,
            Level::Expected,
            3,
            &["no-such-misconception".into()],
        )
        .unwrap();
        assert!(unknown.misconception.is_some());
        assert!(sample(&[], "no-such-concept", Level::Expected, 3, &[]).is_none());
    }
}
