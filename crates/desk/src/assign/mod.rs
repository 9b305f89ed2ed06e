//! Assignments, and how much of them is done.

mod assignments;
mod views;

pub(crate) use assignments::amounts;
pub use assignments::{
    MOST_ASSIGNED_CONCEPTS, MOST_ITEMS_EACH, assign, assignments, restore_assignment,
    withdraw_assignment,
};
pub use views::*;
