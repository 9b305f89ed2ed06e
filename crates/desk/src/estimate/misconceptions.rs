//! The misconceptions that were recognised in a class's practice.

use crate::class::OpenClass;
use crate::error::DeskError;
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_exercises::has_misconception;
use surefoot_store::DeskStore;
use surefoot_store::desk::MisconceptionReport;

/// Replaces every code that no exercise of the concept has. A hand-in can hold any text as a code, and
/// that text must not reach the teacher's screens.
pub const OTHER_MISCONCEPTION: &str = "other";

/// Returns the misconceptions of a class that count on `today`, summed by seat, concept and code.
pub(crate) fn misconceptions(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<Vec<MisconceptionReport>, DeskError> {
    let mut sums: BTreeMap<(u32, String, String), MisconceptionReport> = BTreeMap::new();
    for mut found in desk.misconceptions_by_seat(&class.row.id, class.counted_dates(today))? {
        if !has_misconception(&found.concept, &found.code) {
            OTHER_MISCONCEPTION.clone_into(&mut found.code);
        }
        let key = (found.seat, found.concept.clone(), found.code.clone());
        match sums.get_mut(&key) {
            Some(sum) => {
                sum.times = sum.times.saturating_add(found.times);
                sum.date = sum.date.max(found.date);
            }
            None => {
                sums.insert(key, found);
            }
        }
    }
    Ok(sums.into_values().collect())
}
