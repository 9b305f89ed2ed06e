//! The fingerprint of a device, which a teacher compares on tablet and desk.

use super::keys::PublicKey;
use super::signs::{in_groups, signs_of};
use sha2::{Digest as _, Sha256};
use surefoot_record::DeviceId;

const PREFIX: &[u8] = b"surefoot device fingerprint v1\n";

/// Twelve signs have 60 bits.
const SIGNS: usize = 12;

/// Returns the fingerprint of a device and its signing key: four groups of three signs.
#[must_use]
pub fn fingerprint(key: &PublicKey, device: &DeviceId) -> String {
    let hash = Sha256::new()
        .chain_update(PREFIX)
        .chain_update(key.to_bytes())
        .chain_update(device.as_str())
        .finalize();
    in_groups(&signs_of(&hash).chars().take(SIGNS).collect::<String>())
}
