//! When one of the teacher's own exercises comes instead of a generated one.
//!
//! The rule: where a concept has both, they take turns, an own exercise first;
//! counted are the concept's exercises finished so far. An own exercise comes at
//! most once an evening then, and of all own ones the one answered least often
//! comes first, then one of the level asked for, then the one longest ago.
//! Where a concept has own exercises alone, they are its practice.

use chrono::NaiveDate;
use surefoot_exercises::bank::{OWN_VERSION, OwnExercise, OwnId};
use surefoot_exercises::{Item, Level};
use surefoot_record::Class;
use surefoot_store::student::{OpenRow, PracticeAnswer};

/// Stands in the name of an open exercise that is an own one.
const OWN_MARK: &str = "-own-";

/// The name of an open own exercise.
pub(super) fn exercise_name(sequence: u32, id: OwnId) -> String {
    format!("{sequence}{OWN_MARK}{id}")
}

/// The own exercise that a row is of, if it is of one.
pub(super) fn own_id(row: &OpenRow) -> Option<OwnId> {
    row.exercise
        .split_once(OWN_MARK)
        .and_then(|(_, id)| id.parse().ok())
}

/// An own exercise by its id.
pub(super) fn own_item(facts: &Class, concept: &str, id: OwnId) -> Option<Item> {
    facts
        .own_of(concept)
        .iter()
        .find(|own| own.id() == id)
        .and_then(|own| own.item().ok())
}

/// The own exercise whose turn it is; nothing when a generated one comes.
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
            // With others to come there is no need for the same one tonight.
            !generated || last.is_none_or(|(date, _)| date < today)
        })
        .min_by_key(|(place, _)| *place)
        .map(|(_, own)| own)
}
