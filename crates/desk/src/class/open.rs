//! Opens a class for the use-cases.

use super::concepts;
use crate::error::DeskError;
use surefoot_catalogue::Concept;
use surefoot_catalogue::rotation::Rotation;
use surefoot_record::Class;
use surefoot_store::DeskStore;
use surefoot_store::desk::{ClassRow, SeatRow};

/// A class with its seats and the frame of its year.
pub struct OpenClass {
    /// As stored.
    pub row: ClassRow,
    /// Seats by number.
    pub seats: Vec<SeatRow>,
    /// Year, rotation, first lessons, concepts.
    pub facts: Class,
    /// The teacher's own concepts, in the rotation or not, by id.
    pub own_concepts: Vec<Concept>,
}

/// Opens a class of the desk.
pub fn open_class(desk: &DeskStore, class: &str) -> Result<OpenClass, DeskError> {
    let row = desk.class(class).map_err(|error| match error {
        surefoot_store::StoreError::Missing(what) => DeskError::NotFound(what),
        other => DeskError::Store(other),
    })?;
    let own_concepts = concepts::own_concepts(desk, class)?;
    let all = concepts::with_built_in(&own_concepts)?;
    let rotation = Rotation::new(desk.rotation(class)?)?;
    let concepts = rotation
        .days()
        .iter()
        .flatten()
        .filter_map(|id| all.get(id).map(|concept| (id.clone(), concept.clone())))
        .collect();
    Ok(OpenClass {
        seats: desk.seats(class)?,
        facts: Class {
            title: row.title.clone(),
            year: row.year.clone(),
            rotation,
            taught_from: desk.taught_from(class)?,
            concepts,
            own_exercises: concepts::own_exercises(desk, class)?,
        },
        own_concepts,
        row,
    })
}
