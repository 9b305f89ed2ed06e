//! The board, the page of a concept, the page of a student, and ratings beside results.

pub(crate) mod class_board;
pub(crate) mod compare;

pub use class_board::{board, board_of, concept_reports};
pub use compare::{comparison, student_page};
