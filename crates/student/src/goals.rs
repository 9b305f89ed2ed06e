//! Goals in the student's own words. No hand-in holds them.

use super::StudentError;
use surefoot_catalogue::without_turns;
use surefoot_record::{Field, Goal, Rule};
use surefoot_store::StudentStore;

/// The most goals at a time.
pub const MOST_GOALS: usize = 3;

/// The most characters of a goal.
pub const LONGEST_GOAL_CHARACTERS: usize = 120;

/// Replaces the goals.
///
/// # Errors
/// [`StudentError::Invalid`] if there are more than [`MOST_GOALS`], or if one is empty or has
/// more than [`LONGEST_GOAL_CHARACTERS`].
pub fn set_goals(store: &StudentStore, goals: &[Goal]) -> Result<(), StudentError> {
    store.put_goals(&checked(goals)?)?;
    Ok(())
}

/// Returns the goals as they are stored, if they may be.
pub(super) fn checked(goals: &[Goal]) -> Result<Vec<Goal>, StudentError> {
    let invalid = |rule| StudentError::Invalid {
        field: Field::Goals,
        rule,
    };
    if goals.len() > MOST_GOALS {
        return Err(invalid(Rule::TooMany));
    }
    goals
        .iter()
        .map(|goal| {
            // A line break or a tab becomes a space.
            let words = without_turns(&goal.words)
                .split_whitespace()
                .collect::<Vec<_>>()
                .join(" ");
            if words.is_empty() || words.chars().any(char::is_control) {
                return Err(invalid(Rule::Empty));
            }
            if words.chars().count() > LONGEST_GOAL_CHARACTERS {
                return Err(invalid(Rule::TooLong));
            }
            Ok(Goal {
                words,
                reached: goal.reached,
            })
        })
        .collect()
}
