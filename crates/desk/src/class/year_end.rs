//! What is due after the end of a school year, and after a desk was restored.

use crate::error::DeskError;
use chrono::NaiveDate;
use surefoot_store::DeskStore;

/// The classes whose school year is over: id, title and last day.
pub fn classes_over(
    desk: &DeskStore,
    today: NaiveDate,
) -> Result<Vec<(String, String, NaiveDate)>, DeskError> {
    Ok(desk
        .classes()?
        .into_iter()
        .filter(|class| class.year.last_day < today)
        .map(|class| (class.id, class.title, class.year.last_day))
        .collect())
}

/// Skips versions of the class packs of every class. An older desk was restored, devices may have
/// newer packs, and they accept only a higher version.
pub fn skip_pack_versions(desk: &DeskStore) -> Result<(), DeskError> {
    Ok(desk.skip_pack_versions(SKIPPED_VERSIONS)?)
}

/// More packs than a teacher makes between a backup and its restoration.
const SKIPPED_VERSIONS: u32 = 100;

/// Notes whether this computer saves the packs of a class. Whoever begins again skips as many
/// versions as a restored desk, because another computer may have given out the next ones.
pub fn set_saves_packs(desk: &DeskStore, class: &str, saves: bool) -> Result<(), DeskError> {
    let skip = if saves { SKIPPED_VERSIONS } else { 0 };
    Ok(desk.put_saves_packs(class, saves, skip)?)
}
