//! Assignments: what the teacher assigned, and who has done how much of it.

mod assignments;
mod views;

pub(crate) use assignments::amounts;
pub use assignments::{
    MOST_ASSIGNED_CONCEPTS, MOST_ITEMS_EACH, assign, assignments, restore_assignment,
    withdraw_assignment,
};
pub use views::*;
