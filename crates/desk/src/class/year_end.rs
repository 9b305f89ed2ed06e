//! The end of a class's year, and an older desk brought back.

use crate::TeacherError;
use chrono::NaiveDate;
use surefoot_store::DeskStore;

/// Classes whose school year is over: id, title and last day.
///
/// # Errors
/// The store's.
pub fn classes_over(
    desk: &DeskStore,
    today: NaiveDate,
) -> Result<Vec<(String, String, NaiveDate)>, TeacherError> {
    Ok(desk
        .classes()?
        .into_iter()
        .filter(|class| class.year.last_day < today)
        .map(|class| (class.id, class.title, class.year.last_day))
        .collect())
}

/// Leaves a gap in the versions of every class's packs, for after an older
/// desk was brought back: packs made since then are on students' devices, and
/// only a higher version is taken there.
///
/// # Errors
/// The store's.
pub fn skip_pack_versions(desk: &DeskStore) -> Result<(), TeacherError> {
    Ok(desk.skip_pack_versions(SKIPPED_VERSIONS)?)
}

/// More packs than are made between a copy and its return.
const SKIPPED_VERSIONS: u32 = 100;
