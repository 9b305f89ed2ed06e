//! The teacher's use-cases, one function each.

mod assign;
mod board;
mod changes;
mod class_key;
mod classes;
mod compare;
mod copy;
mod derive;
mod entry;
mod error;
mod group_days;
pub mod group_views;
mod groups;
mod import;
mod latest;
mod own;
mod own_catalogue;
pub mod own_views;
mod pacing;
mod pacing_list;
mod pack;
mod picture;
mod removal;
mod roster;
mod roster_file;
mod sample;
mod seat_practice;
mod share;
pub mod share_views;
mod table;
mod talk;
pub mod teaching_views;
#[cfg(test)]
mod tests;
pub mod views;

pub use assign::{
    MOST_ASSIGNED_CONCEPTS, MOST_ITEMS_EACH, assign, assignments, restore_assignment,
    withdraw_assignment,
};
pub use board::{board, board_of, concept_reports};
pub use changes::{
    balanced_rotation, bring_back, delete_class, move_year, remove_seat, rename_class,
    seat_holdings, spare_concepts,
};
pub use class_key::{export_class, import_class, read_class_key};
pub use classes::{
    Chance, LONGEST_TITLE_CHARACTERS, add_seats, class_setup, classes, create_class, name_seat,
    set_closures, set_practice, set_rotation, set_taught_from,
};
pub use compare::{comparison, student_page};
pub use copy::copy_class;
pub use entry::{entry_day, make_entry};
pub use error::TeacherError;
pub use group_days::{group_page, groups_desk, keep_group_wishes, keep_groups, record_group};
pub use group_views::GroupWishes;
pub use groups::{GroupEffort, plan as plan_groups, suggest_groups, weigh_groups};
pub use import::{Import, Opener, decide_device, imports, undo_import};
pub use own::{
    Reading, check_exercises, import_exercises, own_desk, own_exercise, read_for_class,
    remove_own_exercise, try_own_exercise, undo_own_import,
};
pub use own_catalogue::{import_concepts, read_concepts};
use own_catalogue::{own_concept_lines, own_concepts};
pub use pacing::{choose_concepts, spread_first_lessons};
pub use pacing_list::{read_pacing, set_first_lessons};
pub use pack::{MadePack, join_slips, make_class_pack};
pub use removal::{classes_over, skip_pack_versions};
pub use roster::{LONGEST_NAME_CHARACTERS, MOST_SEATS, read_roster};
pub use roster_file::{MOST_ROSTER_BYTES, read_roster_files};
pub use seat_practice::{SeatPractice, seat_practice};
pub use share::{check_share_table, release_share_table, share_table};
pub use talk::{MOST_TALK_MINUTES, note_talk, talk};

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
    let all = own::with_built_in(&own_concepts)?;
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
            own_exercises: own::by_concept(desk, class)?,
        },
        own_concepts,
        row,
    })
}
