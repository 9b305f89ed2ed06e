//! Refuses a second table of nearly the same class: the difference of both would give
//! away single students.

use std::collections::BTreeSet;
use thiserror::Error;

/// Why a table may not be released.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum ReleaseError {
    /// The class differs from that of an earlier release by a few students,
    /// whose answers the two tables together would give away.
    #[error(
        "the class differs by {differing} students from release {release}; at least {least} are needed"
    )]
    NearlyTheSameClass {
        /// Number of the earlier release in the log, from 0.
        release: usize,
        /// Students in one class but not in the other.
        differing: usize,
        /// Smallest difference allowed, other than none.
        least: usize,
    },
}

/// Checks a roster against the log of released rosters. It must equal each of them, or
/// differ by at least `smallest_group` students (come or gone).
///
/// # Errors
/// [`ReleaseError::NearlyTheSameClass`] with the first release that forbids it.
pub fn check_release<Student: Ord>(
    log: &[BTreeSet<Student>],
    roster: &BTreeSet<Student>,
    smallest_group: usize,
) -> Result<(), ReleaseError> {
    for (release, earlier) in log.iter().enumerate() {
        let differing = earlier.symmetric_difference(roster).count();
        if (1..smallest_group).contains(&differing) {
            return Err(ReleaseError::NearlyTheSameClass {
                release,
                differing,
                least: smallest_group,
            });
        }
    }
    Ok(())
}
