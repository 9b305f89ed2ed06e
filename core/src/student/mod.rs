//! The student's use-cases, one function each.
