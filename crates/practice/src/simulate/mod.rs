//! Simulated school years under our schedule and under simple rules, with equal minutes. They
//! compare the rules and say nothing of real children.

pub mod knowledge;
pub mod luck;
pub mod plan;
pub mod rules;
pub mod sim_student;
pub mod table;
pub mod year;
