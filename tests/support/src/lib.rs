//! What the tests of several crates share.

#![expect(
    missing_docs,
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a failed test may say so by panicking"
)]

mod changes;
pub mod record;
pub mod store;

pub use changes::*;
