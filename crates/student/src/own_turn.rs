//! When an own exercise comes instead of a generated one.
//!
//! If a concept has both, they take turns, by the number of the concept's exercises finished
//! so far. An own exercise comes first, and each one at most once an evening. Of several own
//! exercises the one answered least often comes first, then the one nearest to the level asked
//! for, then the one answered longest ago. If a concept has only own exercises, every exercise
//! is an own one.

use chrono::NaiveDate;
use surefoot_exercises::bank::{OWN_VERSION, OwnExercise, OwnId};
use surefoot_exercises::{Item, Level};
use surefoot_record::Class;
use surefoot_store::student::{OpenRow, PracticeAnswer};

/// Part of the name of an open exercise that is an own one.
const OWN_MARK: &str = "-own-";

/// Returns the name of an open own exercise.
pub(super) fn exercise_name(sequence: u32, id: OwnId) -> String {
    format!("{sequence}{OWN_MARK}{id}")
}

/// Returns the id of a row's own exercise; `None` if it is a generated one.
pub(super) fn own_id(row: &OpenRow) -> Option<OwnId> {
    row.exercise
        .split_once(OWN_MARK)
        .and_then(|(_, id)| id.parse().ok())
}

/// Returns an own exercise by its id.
pub(super) fn own_item(facts: &Class, concept: &str, id: OwnId) -> Option<Item> {
    facts
        .own_of(concept)
        .iter()
        .find(|own| own.id() == id)
        .and_then(|own| own.item().ok())
}

/// Returns the own exercise whose turn it is; `None` if a generated one comes.
pub(super) fn turn<'a>(
    facts: &'a Class,
    concept: &str,
    level: Level,
    answers: &[PracticeAnswer],
    today: NaiveDate,
) -> Option<&'a OwnExercise> {
    let of_concept: Vec<&PracticeAnswer> = answers
        .iter()
        .filter(|a| a.concept.as_str() == concept)
        .collect();
    let generated = surefoot_exercises::has_generator(concept);
    if generated && of_concept.len() % 2 == 1 {
        return None;
    }
    let level: u8 = level.into();
    facts
        .own_of(concept)
        .iter()
        .map(|own| {
            let id = own.id();
            let of_own = of_concept
                .iter()
                .filter(|a| a.generator_version == OWN_VERSION && a.seed == id.seed());
            let (count, last) = of_own.fold((0_usize, None), |(count, last), answer| {
                (count + 1, last.max(Some((answer.date, answer.sequence))))
            });
            let own_level: u8 = own.level.into();
            ((count, own_level.abs_diff(level), last, id), own)
        })
        .filter(|((_, _, last, _), _)| {
            // A generated exercise comes rather than the same own one twice in an evening.
            !generated || last.is_none_or(|(date, _)| date < today)
        })
        .min_by_key(|(place, _)| *place)
        .map(|(_, own)| own)
}
