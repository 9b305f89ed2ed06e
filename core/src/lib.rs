//! What Surefoot knows and does: concepts, the school calendar, ratings,
//! exercises, the practice schedule, the files that travel, what the class
//! picture says, and the two SQLite stores.
//!
//! Nothing here reads a clock, draws chance of its own, opens a window or
//! reaches a network: `today` and `seed` come in as arguments.
//!
//! Data flows one way, and a lower room never imports a higher one:
//! catalogue → rotation → rating and practice → exchange → store → insight,
//! with [`student`] and [`teacher`] as the only doors for the shells.

pub mod bank;
pub mod calendar;
pub mod catalogue;
pub mod catalogue_file;
#[cfg(test)]
mod changed_bytes;
pub mod class;
pub mod exchange;
pub mod insight;
pub mod item;
pub mod learner;
pub mod messages;
mod plain_date;
pub mod practice;
pub mod rating;
pub mod rotation;
pub mod seed;
pub mod store;
pub mod student;
pub mod teacher;
