//! A teacher's question bank: own exercises, read from a file and checked line by
//! line, then shown, marked and printed like every other exercise.
//!
//! An [`OwnExercise`] is stored and travels; [`OwnExercise::item`] makes a
//! [`crate::Item`] of it. `docs/question-bank.md` describes the files:
//! comma-separated text (RFC 4180), and single items of 1EdTech QTI 3.0.1, alone
//! or in a zip. A line with a fault is refused, and the other lines are taken.

mod cells;
mod csv;
mod key;
mod mapping;
mod math;
mod own;
mod qti;
mod qti_body;
mod read;
mod reading;
#[cfg(test)]
mod tests;
mod words;
mod xml;

pub use key::OwnKind;
pub use own::{OWN_VERSION, OwnExercise, OwnForm, OwnId, OwnWrong};
pub use read::{BankFile, BankReading, read_bank};
pub use reading::{ConceptFound, LineTaken};
pub use words::{plain_text, say_of};

/// The most own exercises of a class.
pub const MOST_EXERCISES: usize = 1_000;
/// The most bytes of a class's own exercises as JSON: every class pack has them.
pub const MOST_BANK_BYTES: usize = 1024 * 1024;
/// The most bytes of a file.
pub const MOST_FILE_BYTES: usize = 2 * 1024 * 1024;
/// The most files of an import; a zip counts as the files in it.
pub const MOST_FILES: usize = 500;
/// The most characters of a question.
pub const MOST_QUESTION_CHARS: usize = 600;
/// The most characters of a choice, a unit or an answer.
pub const MOST_CHOICE_CHARS: usize = 80;
/// The most characters of a hint, a step or a feedback.
pub const MOST_HINT_CHARS: usize = 300;
/// The most choices of a question; it has at least two.
pub const MOST_CHOICES: usize = 8;
/// The most hints of a question.
pub const MOST_HINTS: usize = 3;
/// The most worked steps.
pub const MOST_STEPS: usize = 10;
/// The most wrong answers with feedback.
pub const MOST_WRONG: usize = 4;
