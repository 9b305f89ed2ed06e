//! The teacher's use-cases, one function each.

mod assign;
mod board;
mod class;
mod entry;
mod error;
mod estimate;
mod files;
mod groups;
mod own;
mod print;
mod sample;
mod share;
mod talk;
mod teaching_views;
#[cfg(test)]
mod tests;
mod views;

pub use assign::*;
pub use board::*;
pub use class::*;
pub use entry::*;
pub use error::TeacherError;
pub use files::*;
pub use groups::*;
pub use own::*;
pub use print::*;
pub use share::*;
pub use talk::*;
pub use teaching_views::*;
pub use views::*;

use own::concepts::own_concepts;
use own::exercises as own_stored;
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
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn open_class(desk: &DeskStore, class: &str) -> Result<OpenClass, TeacherError> {
    let row = desk.class(class).map_err(|error| match error {
        surefoot_store::StoreError::Missing(what) => TeacherError::NotFound(what),
        other => TeacherError::Store(other),
    })?;
    let own_concepts = own_concepts(desk, class)?;
    let all = own_stored::with_built_in(&own_concepts)?;
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
            own_exercises: own_stored::by_concept(desk, class)?,
        },
        own_concepts,
        row,
    })
}
