//! Seeds of the sample class, always the same. Real classes draw random ones.

use surefoot_catalogue::seed::derive;

/// 32 bytes for one purpose.
pub(super) fn seed32(seed: u64, what: &str) -> [u8; 32] {
    derive(seed, what)
}

/// A number for one purpose, below 2^53.
pub(super) fn number(seed: u64, what: &str) -> u64 {
    let bytes = derive(seed, what);
    let mut first = [0; 8];
    first.copy_from_slice(&bytes[..8]);
    u64::from_le_bytes(first) >> 11
}
