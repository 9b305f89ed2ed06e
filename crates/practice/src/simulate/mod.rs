//! A simulated school year under our schedule and simple rivals at equal
//! minutes: a measure for ourselves, not a claim about children.

pub mod knowledge;
pub mod luck;
pub mod plan;
pub mod rules;
pub mod sim_student;
pub mod table;
pub mod year;
