//! Exercises of the strand.

use crate::item::make::Generator;

/// The generators of the strand.
pub const GENERATORS: &[Generator] = &[];
