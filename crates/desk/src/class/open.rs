//! An opened class.

use super::concepts;
use crate::error::{DeskError, Thing};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::Concept;
use surefoot_catalogue::rotation::Rotation;
use surefoot_exercises::TakenNames;
use surefoot_record::{Class, CountedDates};
use surefoot_store::DeskStore;
use surefoot_store::desk::{ClassRow, SeatRow};

/// A class with its seats and set-up.
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

impl OpenClass {
    /// The facts with every concept that the class can have, in the rotation or not.
    pub(crate) fn facts_with_all(&self) -> Result<Class, DeskError> {
        Ok(Class {
            concepts: concepts::with_built_in(&self.own_concepts)?,
            ..self.facts.clone()
        })
    }

    /// The names of invented people that a student has: no exercise shown or printed here names them.
    #[must_use]
    pub fn taken_names(&self) -> TakenNames {
        TakenNames::among(self.seats.iter().filter_map(|seat| seat.name.as_deref()))
    }

    /// Fails if the class does not have the seat.
    pub(crate) fn check_seat(&self, seat: u32) -> Result<(), DeskError> {
        let known = self.seats.iter().any(|row| row.number == seat);
        known.then_some(()).ok_or(DeskError::NotFound(Thing::Seat))
    }

    /// Fails if the rotation does not have the concept.
    pub(crate) fn check_concept(&self, concept: &str) -> Result<(), DeskError> {
        let known = self.facts.concepts.contains_key(concept);
        known
            .then_some(())
            .ok_or(DeskError::NotFound(Thing::Concept))
    }

    /// The dates that count on the date `today`.
    pub(crate) fn counted_dates(&self, today: NaiveDate) -> CountedDates {
        CountedDates::of(&self.facts.year, today)
    }

    /// The newest report of each seat that has one, up to `today`.
    pub(crate) fn newest_reports(
        &self,
        desk: &DeskStore,
        today: NaiveDate,
    ) -> Result<BTreeMap<u32, NaiveDate>, DeskError> {
        Ok(desk.newest_reports(&self.row.id, self.counted_dates(today))?)
    }
}

/// Opens a class of the desk by its id.
pub fn open_class(desk: &DeskStore, class: &str) -> Result<OpenClass, DeskError> {
    let row = desk.class(class)?;
    let seats = desk.seats(class)?;
    opened(desk, row, seats)
}

/// Opens a class without its keys, and its seats without tokens and names: for what is shown while
/// the desk is locked.
pub(crate) fn without_keys(desk: &DeskStore, class: &str) -> Result<OpenClass, DeskError> {
    let row = (desk.classes_without_keys()?.into_iter())
        .find(|row| row.id == class)
        .ok_or(DeskError::NotFound(Thing::Class))?;
    let seats = (desk.seat_numbers(class)?.into_iter())
        .map(|number| SeatRow {
            number,
            token: String::new(),
            name: None,
        })
        .collect();
    opened(desk, row, seats)
}

fn opened(desk: &DeskStore, row: ClassRow, seats: Vec<SeatRow>) -> Result<OpenClass, DeskError> {
    let class = row.id.as_str();
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
        seats,
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
