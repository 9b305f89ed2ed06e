//! Tonight's queue, for those who would rather have it on paper.

use super::evening::{evening_of, memory_of};
use super::{Joined, StudentError};
use chrono::NaiveDate;
use surefoot_practice::QueueEntry;
use surefoot_store::StudentStore;

/// What would come tonight, best first, at most `most` concepts. Minutes used
/// up do not end it: who asks for paper means to go on.
pub fn queue(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    most: usize,
) -> Result<Vec<QueueEntry>, StudentError> {
    let memory = memory_of(store, joined, today)?;
    let evening = evening_of(store, joined, &memory, today, true)?;
    Ok(memory.plan(&evening, most)?)
}
