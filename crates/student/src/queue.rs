//! Tonight's queue on paper.

use super::evening::{evening_of, memory_of};
use super::{Joined, StudentError};
use chrono::NaiveDate;
use surefoot_practice::QueueEntry;
use surefoot_store::StudentStore;

/// Returns tonight's queue, best first, with at most `most` concepts. It does not end with the
/// evening's minutes, because whoever asks for paper wants to practise more.
pub fn queue(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    most: usize,
) -> Result<Vec<QueueEntry>, StudentError> {
    let memory = memory_of(store, joined, today)?;
    let evening = evening_of(store, joined, &memory, today, true)?;
    Ok(memory.plan(&evening, most))
}
