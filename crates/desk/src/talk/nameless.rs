//! The talk for a projector, without names, keys and numbers: also while the desk is locked.

use super::plan::talk;
use super::views::TalkView;
use crate::class::OpenClass;
use crate::class::without_keys;
use crate::error::DeskError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_store::DeskStore;
use ts_rs::TS;

/// A class as a locked desk names it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassTitle {
    /// The class's id.
    pub id: String,
    /// Its title.
    pub title: String,
}

/// The classes of a desk by title. Needs no key.
pub fn class_titles(desk: &DeskStore) -> Result<Vec<ClassTitle>, DeskError> {
    let classes = desk.classes_without_keys()?.into_iter();
    Ok(classes
        .map(|row| ClassTitle {
            id: row.id,
            title: row.title,
        })
        .collect())
}

/// The talk of a day for a projector: its concepts with their exercises, and nothing of how the
/// class or a student does. Needs no key.
///
/// # Errors
/// As [`talk`].
pub fn talk_without_names(
    desk: &DeskStore,
    class: &str,
    language: Language,
    today: NaiveDate,
    minutes: u32,
) -> Result<TalkView, DeskError> {
    let class: OpenClass = without_keys(desk, class)?;
    let mut view = talk(desk, &class, language, today, minutes)?;
    for concept in &mut view.concepts {
        concept.worth = None;
        concept.has_it = None;
        concept.low = None;
        concept.high = None;
        concept.expected_wrong = None;
        concept.sure_wrong = None;
        concept.misconceptions.clear();
    }
    Ok(view)
}
