//! The share-safe table, and the log of releases.

mod table;
mod views;

pub use table::{check_share_table, release_share_table, share_table};
pub use views::*;
