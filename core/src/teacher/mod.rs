//! The teacher's use-cases, one function each.
