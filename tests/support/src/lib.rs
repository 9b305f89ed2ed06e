//! What the tests of several crates share.

#![expect(
    missing_docs,
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a failed test may say so by panicking"
)]

use proptest::prelude::ProptestConfig;

mod changes;
pub mod record;
pub mod store;

pub use changes::*;

/// Returns a configuration for a test whose cases take long: a few of them, or `all` where
/// `FULL=1`. It writes no file of failed cases.
pub fn few(few: u32, all: u32) -> ProptestConfig {
    let full = std::env::var("FULL").is_ok_and(|value| value == "1");
    ProptestConfig {
        failure_persistence: None,
        ..ProptestConfig::with_cases(if full { all } else { few })
    }
}
