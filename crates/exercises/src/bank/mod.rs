//! The teacher's own exercises: read from a file, checked line by line, and
//! shown, marked and printed as every other exercise is.
//!
//! An [`OwnExercise`] is what travels and is stored; [`OwnExercise::item`] makes
//! the [`crate::Item`] of it. `docs/question-bank.md` describes the files:
//! comma-separated text (RFC 4180), and single items of 1EdTech QTI 3.0.1, alone
//! or in a zip. What cannot be taken is refused by line, and the rest is taken.

mod cells;
mod csv;
mod key;
mod mapping;
mod math;
mod own;
mod qti;
mod qti_body;
mod read;
#[cfg(test)]
mod tests;
mod words;
mod xml;

pub use key::OwnKind;
pub use own::{OWN_VERSION, OwnExercise, OwnForm, OwnId, OwnWrong};
pub use read::{BankFile, BankReading, ConceptFound, LineTaken, read_bank};
pub use words::{plain_text, say_of};

/// Own exercises of a class at most.
pub const MOST_EXERCISES: usize = 1_000;
/// Bytes of a class's own exercises as JSON at most: they go with every class pack.
pub const MOST_BANK_BYTES: usize = 1024 * 1024;
/// Bytes of one file at most.
pub const MOST_FILE_BYTES: usize = 2 * 1024 * 1024;
/// Files of one import at most, those in a zip counted one by one.
pub const MOST_FILES: usize = 500;
/// Characters of a question.
pub const MOST_QUESTION_CHARS: usize = 600;
/// Characters of a choice, a unit, or an answer.
pub const MOST_CHOICE_CHARS: usize = 80;
/// Characters of a hint, of one step, or of what is said to a wrong answer.
pub const MOST_HINT_CHARS: usize = 300;
/// Choices of a question at most; at least two.
pub const MOST_CHOICES: usize = 8;
/// Hints of a question at most.
pub const MOST_HINTS: usize = 3;
/// Steps of a worked solution at most.
pub const MOST_STEPS: usize = 10;
/// Wrong answers with words of their own at most.
pub const MOST_WRONG: usize = 4;
