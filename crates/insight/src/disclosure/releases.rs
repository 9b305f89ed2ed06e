//! Refuses a second table of nearly the same class, because the difference of both could reveal
//! single students.

use std::collections::BTreeSet;
use thiserror::Error;

/// Why a table may not be released.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum ReleaseError {
    /// The class differs by a few students from that of an earlier release. The two tables together
    /// could reveal their ratings.
    #[error(
        "the class differs by {differing} students from release {release}; at least {least} are needed"
    )]
    NearlyTheSameClass {
        /// Number of the earlier release in the log, from 0.
        release: usize,
        /// Students in one class but not in the other.
        differing: usize,
        /// The smallest allowed difference, apart from none.
        least: usize,
    },
}

/// Checks a class against the log of releases. It must have the students of each of them, or differ
/// by at least `smallest_group` students.
///
/// # Errors
/// Returns [`ReleaseError::NearlyTheSameClass`] with the first release that forbids it.
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
