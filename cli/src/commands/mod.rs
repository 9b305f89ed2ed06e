//! One file per command.

pub mod insight;
pub mod memory;
pub mod rehearse;
pub mod simulate;
