//! Dividing fractions, factors and multiples, negative numbers, long decimals.

pub mod contexts;
pub mod operations;
pub mod order;
pub mod signed;
