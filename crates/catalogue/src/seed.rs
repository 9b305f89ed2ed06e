//! Derives seeds for different purposes from one seed.

use sha2::{Digest, Sha256};

/// Returns 32 bytes that depend on `seed` and `purpose` alone.
#[must_use]
pub fn derive(seed: u64, purpose: &str) -> [u8; 32] {
    Sha256::new()
        .chain_update(b"surefoot-seed-1\n")
        .chain_update(seed.to_be_bytes())
        .chain_update(purpose)
        .finalize()
        .into()
}
