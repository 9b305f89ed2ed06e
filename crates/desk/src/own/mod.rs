//! Own exercises and concepts.

mod concepts;
mod exercises;
mod views;

pub use concepts::{import_concepts, read_concepts};
pub(crate) use exercises::put_all;
pub use exercises::{
    Reading, check_exercises, import_exercises, own_desk, own_exercise, read_for_class,
    remove_own_exercise, try_own_exercise, undo_own_import,
};
pub use views::*;
