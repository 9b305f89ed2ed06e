//! Fractions and mixed numbers.

pub mod grade_3;
pub mod grade_4;
pub mod grade_4_stories;
pub mod grade_5;
pub mod grade_5_multiply;
