//! The one door every shell uses.
