//! School days, closures and the school year.
