//! Goals in the student's own words. They stay on the device.

use super::StudentError;
use surefoot_record::Goal;
use surefoot_store::StudentStore;

/// Goals at a time.
pub const MOST_GOALS: usize = 3;

/// Characters of a goal at most: a note, not a letter.
pub const LONGEST_GOAL_CHARACTERS: usize = 120;

/// Writes the goals as they stand after a change, in their order.
///
/// # Errors
/// [`StudentError::Invalid`] for more than [`MOST_GOALS`], an empty or a too long one,
/// or the store's.
pub fn set_goals(store: &StudentStore, goals: &[Goal]) -> Result<(), StudentError> {
    store.put_goals(&checked(goals)?)?;
    Ok(())
}

/// The goals as they may be stored.
pub(super) fn checked(goals: &[Goal]) -> Result<Vec<Goal>, StudentError> {
    let invalid = |rule| StudentError::Invalid {
        field: "goals",
        rule,
    };
    if goals.len() > MOST_GOALS {
        return Err(invalid("too_many"));
    }
    goals
        .iter()
        .map(|goal| {
            // A line break or a tab typed by the way is a space.
            let words = goal.words.split_whitespace().collect::<Vec<_>>().join(" ");
            if words.is_empty() || words.chars().any(char::is_control) {
                return Err(invalid("empty"));
            }
            if words.chars().count() > LONGEST_GOAL_CHARACTERS {
                return Err(invalid("too_long"));
            }
            Ok(Goal {
                words,
                reached: goal.reached,
            })
        })
        .collect()
}
