//! One file per command.

pub mod bank;
pub mod board;
pub mod catalogue;
mod class_args;
pub mod demo;
pub mod exercises;
pub mod groups;
pub mod import;
pub mod insight;
pub mod memory;
pub mod rehearse;
pub mod report;
pub mod share_table;
pub mod sheet;
pub mod simulate;
mod table;
pub mod talk;
pub mod warm_up;
pub mod who_has_not;
