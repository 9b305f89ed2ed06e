//! Fractions and mixed numbers.

pub mod grade_3;
pub mod grade_3_line;
pub mod grade_4;
pub mod grade_4_mixed;
pub mod grade_4_stories;
pub mod grade_4_why;
pub mod grade_5;
pub mod grade_5_divide;
pub mod grade_5_multiply;
pub mod grade_5_tiles;
mod which_equal;

pub(in crate::strand) use grade_5::{in_cups, in_measures};
