//! The board, the page of a concept, the page of a student, and ratings compared with results.

mod class_board;
mod compare;
mod misconceptions;
mod views;

pub(crate) use class_board::board_from;
pub use class_board::{board, concept_reports};
pub use compare::{comparison, student_page, student_pages};
pub(crate) use compare::{contradictions, student_page_from};
pub use views::*;
