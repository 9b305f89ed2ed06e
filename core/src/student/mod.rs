//! The student's use-cases, one function each.

mod error;
mod path;
mod practice;
pub mod practice_views;
mod today;
pub mod views;

pub use error::StudentError;
pub use path::{MOST_FOCUS, my_path, set_focus};
pub use practice::{answer, hint, practice, practice_summary, show_steps, sure};
pub use today::{check_in, today};

use crate::class::ClassFacts;
use crate::practice::Assigned;
use crate::store::student::Student;

/// A student who has joined, with the class as the newest class pack describes it.
pub struct Joined {
    /// The student.
    pub student: Student,
    /// The class.
    pub facts: ClassFacts,
    /// Assignments for the class and for this student.
    pub assignments: Vec<Assigned>,
}
