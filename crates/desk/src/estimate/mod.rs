//! What counts of a class's reports, and what it says about the class.

pub(crate) mod class_reports;
pub(crate) mod counted;
