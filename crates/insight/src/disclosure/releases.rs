//! Decides which rows of a table may be released after the rows released before, because tables
//! that are added and subtracted could reveal the ratings of a few students.
//!
//! Rule and proof: `docs/decisions/0042-a-row-is-released-again-when-ten-changed.md`.

use std::collections::{BTreeMap, BTreeSet};
use thiserror::Error;

/// A rating that a released row counts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CountedRating {
    /// Differs whenever the student has rated anew, even if the rating is the same.
    pub mark: String,
    /// Whether it counts as low. If the student is gone, the value itself means nothing; only a
    /// change from release to release does.
    pub low: bool,
    /// Whether the student has left the class since, so that nobody knows the rating any more.
    pub gone: bool,
}

/// Whose rating, and of which concept and school date. For a reader, a rating of another date is
/// another unknown; one of the same date may be the same again.
pub type RatingKey = (String, String);

/// What a row of a released table counts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ReleasedRow {
    /// Its name: the concept or strand.
    pub name: String,
    /// Its ratings.
    pub ratings: BTreeMap<RatingKey, CountedRating>,
}

/// Why a row may not be released.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum RowFault {
    /// Together with earlier rows it could reveal a sum over fewer students than a group has.
    #[error("too few ratings changed since an earlier release")]
    TooFewChanged,
    /// Nearly all ratings that changed since an earlier release changed in the same way.
    #[error("the ratings changed in the same way since an earlier release")]
    SameChange,
}

/// A change must stay more than this many ratings away from the least and the most possible.
const NEAR: usize = 2;

/// Checks a row against the rows released before.
pub fn check_row(
    log: &[ReleasedRow],
    row: &ReleasedRow,
    smallest_group: usize,
) -> Result<(), RowFault> {
    let linked = linked(log, row);
    if !linked.contains(&row) {
        let mut all = linked;
        all.push(row);
        if !every_sum_is_of_many(&all, smallest_group) {
            return Err(RowFault::TooFewChanged);
        }
    }
    let same_change = log
        .iter()
        .filter(|earlier| earlier.name == row.name)
        .any(|earlier| changed_alike(earlier, row));
    if same_change {
        return Err(RowFault::SameChange);
    }
    Ok(())
}

/// The different rows of the log that share students' ratings with `row`, directly or by way of
/// others. Only these can be combined with it.
fn linked<'l>(log: &'l [ReleasedRow], row: &ReleasedRow) -> Vec<&'l ReleasedRow> {
    let mut keys: BTreeSet<&RatingKey> = row.ratings.keys().collect();
    let mut left: Vec<&ReleasedRow> = log.iter().collect();
    let mut found: Vec<&ReleasedRow> = Vec::new();
    loop {
        let (near, far): (Vec<_>, Vec<_>) = left
            .into_iter()
            .partition(|earlier| earlier.ratings.keys().any(|key| keys.contains(key)));
        if near.is_empty() {
            return found;
        }
        for earlier in near {
            keys.extend(earlier.ratings.keys());
            if !found.contains(&earlier) {
                found.push(earlier);
            }
        }
        left = far;
    }
}

/// Whether every combination of the rows, other than none at all, involves `smallest_group` students
/// or more.
///
/// Ratings that are in the same rows and change sides at the same times cannot be told apart: they form a
/// set, and a combination involves all of a set or nothing of it. So it is enough that no combination
/// leaves out every set of `smallest_group` students or more: that the rows, restricted to these
/// sets, are linearly independent.
fn every_sum_is_of_many(rows: &[&ReleasedRow], smallest_group: usize) -> bool {
    let mut patterns: BTreeMap<&RatingKey, Vec<i8>> = BTreeMap::new();
    for (place, row) in rows.iter().enumerate() {
        for (key, rating) in &row.ratings {
            let pattern = patterns.entry(key).or_insert_with(|| vec![0; rows.len()]);
            if let Some(sign) = pattern.get_mut(place) {
                *sign = if rating.low { 1 } else { -1 };
            }
        }
    }
    let mut sets: BTreeMap<Vec<i8>, BTreeSet<&str>> = BTreeMap::new();
    for ((seat, _), mut pattern) in patterns {
        // A rating that changes sides is one minus what it was, so the reader has one unknown: what
        // it was first.
        if pattern.iter().find(|sign| **sign != 0) == Some(&-1) {
            pattern.iter_mut().for_each(|sign| *sign = -*sign);
        }
        sets.entry(pattern).or_default().insert(seat);
    }
    let large: Vec<Vec<i8>> = sets
        .into_iter()
        .filter(|(_, seats)| seats.len() >= smallest_group)
        .map(|(pattern, _)| pattern)
        .collect();
    rank(&large) == rows.len()
}

/// A prime. The rank modulo a prime is never above the true rank, so it can only withhold more.
const PRIME: u64 = (1 << 61) - 1;

fn times(a: u64, b: u64) -> u64 {
    let product = u128::from(a) * u128::from(b) % u128::from(PRIME);
    u64::try_from(product).unwrap_or(0)
}

/// The inverse by Fermat's little theorem.
fn inverse(a: u64) -> u64 {
    let (mut power, mut left, mut result) = (a, PRIME - 2, 1);
    while left > 0 {
        if left & 1 == 1 {
            result = times(result, power);
        }
        power = times(power, power);
        left >>= 1;
    }
    result
}

/// The rank of vectors of equal length, modulo [`PRIME`].
fn rank(vectors: &[Vec<i8>]) -> usize {
    let mut basis: Vec<(usize, Vec<u64>)> = Vec::new();
    for vector in vectors {
        let mut left: Vec<u64> = vector
            .iter()
            .map(|sign| match sign {
                0 => 0,
                1.. => 1,
                _ => PRIME - 1,
            })
            .collect();
        for (pivot, reduced) in &basis {
            let factor = left.get(*pivot).copied().unwrap_or(0);
            if factor > 0 {
                for (value, by) in left.iter_mut().zip(reduced) {
                    *value = (*value + PRIME - times(factor, *by)) % PRIME;
                }
            }
        }
        if let Some((pivot, value)) = left.iter().enumerate().find(|(_, value)| **value > 0) {
            let by = inverse(*value);
            let reduced = left.iter().map(|value| times(*value, by)).collect();
            basis.push((pivot, reduced));
        }
    }
    basis.len()
}

/// Whether the low ratings changed by as much as they could have, or by [`NEAR`] less: then a reader
/// would know each of the ratings that changed.
fn changed_alike(earlier: &ReleasedRow, row: &ReleasedRow) -> bool {
    let changed = |from: &ReleasedRow, to: &ReleasedRow| -> Vec<CountedRating> {
        from.ratings
            .iter()
            .filter(|(key, rating)| {
                to.ratings
                    .get(*key)
                    .is_none_or(|other| other.low != rating.low)
            })
            .map(|(_, rating)| rating.clone())
            .collect()
    };
    let (before, after) = (changed(earlier, row), changed(row, earlier));
    let gone = before.iter().filter(|rating| rating.gone).count();
    let low_before = before.iter().filter(|r| r.low && !r.gone).count();
    let low_after = after.iter().filter(|rating| rating.low).count();
    let most_fallen = before.len() + low_after <= low_before + gone + NEAR;
    let most_risen = low_after + NEAR >= after.len() + low_before;
    !(before.is_empty() && after.is_empty()) && (most_fallen || most_risen)
}
