//! The concepts and exercises that a class can have: those of the catalogue and its own.

use crate::error::{DeskError, faulty};
use std::collections::BTreeMap;
use surefoot_catalogue::{Catalogue, Concept};
use surefoot_exercises::bank::OwnExercise;
use surefoot_store::DeskStore;
use surefoot_store::desk::OwnExerciseRow;

/// Every concept that a class can have, by id: those of the catalogue and its own.
pub(crate) fn with_built_in(own: &[Concept]) -> Result<BTreeMap<String, Concept>, DeskError> {
    let catalogue = Catalogue::built_in().map_err(faulty)?;
    Ok(catalogue
        .concepts()
        .iter()
        .chain(own)
        .cloned()
        .map(|concept| (concept.id.as_str().to_owned(), concept))
        .collect())
}

/// The own concepts of a class, by id.
pub(crate) fn own_concepts(desk: &DeskStore, class: &str) -> Result<Vec<Concept>, DeskError> {
    desk.own_concepts(class)?
        .iter()
        .map(|row| serde_json::from_str(&row.content).map_err(faulty))
        .collect()
}

fn stored(row: &OwnExerciseRow) -> Result<OwnExercise, DeskError> {
    serde_json::from_str(&row.content).map_err(faulty)
}

/// The own exercises of a class by concept.
pub(crate) fn own_exercises(
    desk: &DeskStore,
    class: &str,
) -> Result<BTreeMap<String, Vec<OwnExercise>>, DeskError> {
    let mut all: BTreeMap<String, Vec<OwnExercise>> = BTreeMap::new();
    for row in desk.own_exercises(class)? {
        all.entry(row.concept.clone())
            .or_default()
            .push(stored(&row)?);
    }
    Ok(all)
}
