//! Small groups: plans, kept groups, and records afterwards.

mod kept;
mod partners;
mod plan;
mod views;

pub use kept::{group_page, groups_desk, keep_group_wishes, keep_groups, record_group};
pub(crate) use plan::needed;
pub use plan::{GroupEffort, plan as plan_groups, score_groups, suggest_groups};
pub use views::*;
