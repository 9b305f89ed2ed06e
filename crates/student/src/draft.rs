//! What stands in the answer of the open exercise before it is checked.

use super::StudentError;
use super::practice::open_row;
use serde::{Deserialize, Serialize};
use surefoot_exercises::Response;
use surefoot_exercises::answer::HalfDay;
use surefoot_store::StudentStore;
use ts_rs::TS;

/// Bytes of a draft at most; the largest answer of ours takes a quarter of it.
const MOST_BYTES: usize = 4096;

/// An answer as far as it is filled in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Draft {
    /// Typed into boxes, some of them perhaps still empty.
    Boxes {
        /// What stands in each.
        texts: Vec<String>,
        /// The half of the day, once chosen.
        half_day: Option<HalfDay>,
    },
    /// Chosen, put in order or set by taps.
    Tapped {
        /// As it would be checked.
        response: Response,
    },
}

/// A draft from the store; one that cannot be read is none.
pub(super) fn read(text: &str) -> Option<Draft> {
    serde_json::from_str(text).ok()
}

/// Keeps what stands in the answer of the open exercise; nothing takes it away.
///
/// # Errors
/// [`StudentError::NoSuchExercise`] if another exercise stands open,
/// [`StudentError::Invalid`] for one that is too long, or the store's.
pub fn keep_draft(
    store: &StudentStore,
    exercise: &str,
    draft: Option<&Draft>,
) -> Result<(), StudentError> {
    let text = draft
        .map(serde_json::to_string)
        .transpose()
        .map_err(|e| StudentError::Exercise(e.to_string()))?;
    if text.as_ref().is_some_and(|text| text.len() > MOST_BYTES) {
        return Err(StudentError::Invalid {
            field: "draft",
            rule: "too_long",
        });
    }
    open_row(store, exercise)?;
    store.put_draft(text.as_deref())?;
    Ok(())
}
