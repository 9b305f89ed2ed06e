//! The exercises of practice sheets, for teachers and for students.

use crate::context::random;
use crate::error::CallError;
use surefoot_catalogue::Catalogue;
use surefoot_exercises::{Level, TakenNames};
use surefoot_record::Class;
use surefoot_report::ReportError;
use surefoot_report::sheet::SheetPart;

/// Concepts on a sheet for one student at most.
pub(crate) const CONCEPTS_OF_ONE: usize = 6;

/// A random seed that is short enough to be typed.
pub(crate) fn fresh_seed() -> Result<u64, CallError> {
    Ok(random::number()? % 1_000_000)
}

/// Exercises of a concept, own exercises among them. The people in them have no name that is taken.
pub(crate) fn part(
    facts: &Class,
    concept: &str,
    level: Level,
    count: u32,
    seed: u64,
    taken: TakenNames,
) -> Result<SheetPart, ReportError> {
    let no_concept = || ReportError::NoConcept {
        id: concept.chars().take(80).collect(),
    };
    // A concept of another grade can be printed too.
    let known = match facts.concepts.get(concept) {
        Some(known) => known.clone(),
        None => Catalogue::built_in()
            .map_err(|error| ReportError::Writer(error.to_string()))?
            .get(concept)
            .cloned()
            .ok_or_else(no_concept)?,
    };
    Ok(SheetPart {
        concept: known,
        level,
        count: count as usize,
        seed,
        own: facts.own_of(concept).to_vec(),
        taken,
    })
}
