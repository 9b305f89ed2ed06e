//! The fingerprint of a device, which a teacher compares on tablet and desk.

use super::keys::PublicKey;
use sha2::{Digest as _, Sha256};
use surefoot_record::{DeviceId, SEAT_SIGNS};

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
    let mut bits = (hash.iter().take(8)).fold(0_u64, |bits, byte| bits << 8 | u64::from(*byte));
    let mut text = String::new();
    for place in 0..SIGNS {
        if place > 0 && place % 3 == 0 {
            text.push('-');
        }
        let sign = usize::try_from(bits >> 59).unwrap_or(0);
        text.push(SEAT_SIGNS.get(sign).copied().map_or('0', char::from));
        bits <<= 5;
    }
    text
}
