//! The draft of the open exercise: an answer that is typed and not yet checked.

use super::StudentError;
use super::open_exercise::open_row;
use serde::{Deserialize, Serialize};
use surefoot_exercises::Response;
use surefoot_exercises::answer::HalfDay;
use surefoot_record::{Field, Rule};
use surefoot_store::StudentStore;
use ts_rs::TS;

/// The most bytes of a draft. The largest answer to a generated exercise takes a quarter of it.
const MOST_BYTES: usize = 4096;

/// An answer that is typed and not yet checked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Draft {
    /// Texts in boxes, some of which may be empty.
    Boxes {
        /// The text in each box.
        texts: Vec<String>,
        /// The half of the day, once it is chosen.
        half_day: Option<HalfDay>,
    },
    /// A choice, an order or a setting made by taps.
    Tapped {
        /// The response that would be checked.
        response: Response,
    },
    /// Drafts of two parts.
    Parts {
        /// Of the first part.
        first: Option<Box<Draft>>,
        /// Of the second part.
        second: Option<Box<Draft>>,
    },
}

/// Reads a draft from the store. One that cannot be read is dropped, because it was not an
/// answer yet.
pub(super) fn read(text: &str) -> Option<Draft> {
    serde_json::from_str(text).ok()
}

/// Keeps the draft of the open exercise, or removes it.
///
/// # Errors
/// [`StudentError::NoSuchExercise`] if this exercise is not open,
/// [`StudentError::Invalid`] if the draft is too long.
pub fn keep_draft(
    store: &StudentStore,
    exercise: &str,
    draft: Option<&Draft>,
) -> Result<(), StudentError> {
    let text = draft
        .map(serde_json::to_string)
        .transpose()
        .map_err(|e| StudentError::Fault(e.to_string()))?;
    if text.as_ref().is_some_and(|text| text.len() > MOST_BYTES) {
        return Err(StudentError::Invalid {
            field: Field::Draft,
            rule: Rule::TooLong,
        });
    }
    open_row(store, exercise)?;
    store.put_draft(text.as_deref())?;
    Ok(())
}
