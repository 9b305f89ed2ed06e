//! The share-safe table, and the log of releases.

mod table;
mod views;

pub use table::{
    MadeShareTable, check_share_table, make_share_table, release_share_table, share_table,
};
pub use views::*;
