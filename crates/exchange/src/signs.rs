//! Bytes as signs of base 32, for what people type and compare.

use bech32::Fe32;
use bech32::primitives::iter::ByteIterExt as _;
use sha2::{Digest as _, Sha256};
use surefoot_record::{ClassId, DeviceId, SEAT_SIGNS};

/// Returns one sign for five bits, the highest bits first, with zeros behind the last bit.
pub(super) fn signs_of(bytes: &[u8]) -> String {
    bytes
        .iter()
        .copied()
        .bytes_to_fes()
        .map(Fe32::to_u8)
        // Every value of five bits is a place among the 32 signs.
        .filter_map(|value| SEAT_SIGNS.get(usize::from(value)))
        .map(|sign| char::from(*sign))
        .collect()
}

/// Returns signs in groups of three, joined by dashes.
pub(super) fn in_groups(signs: &str) -> String {
    let groups: Vec<String> = signs
        .as_bytes()
        .chunks(3)
        .map(|group| String::from_utf8_lossy(group).into_owned())
        .collect();
    groups.join("-")
}

/// Makes the six signs that set the name of a file apart from others of the same date. The
/// caller draws new random bytes for each file, so the name says nothing about the sender.
#[must_use]
pub fn file_signs(random: &[u8; 4]) -> String {
    signs_of(random)
        .chars()
        .take(6)
        .collect::<String>()
        .to_lowercase()
}

/// The name of a student's hand-in in a class folder: twelve signs that stay, so that a newer one
/// takes its place. They are the first 60 bits of SHA-256 over `surefoot class folder v1\n`, the
/// seed of the signing key, the class id and the device id. Without the seed they say nothing of seat
/// or device, and nothing links the files of a student who changed the class.
#[must_use]
pub fn folder_hand_in_name(signing_seed: &[u8; 32], class: &ClassId, device: &DeviceId) -> String {
    let digest = Sha256::new()
        .chain_update(b"surefoot class folder v1\n")
        .chain_update(signing_seed)
        .chain_update(class.as_str())
        .chain_update(device.as_str())
        .finalize();
    let signs: String = signs_of(&digest).chars().take(12).collect();
    format!("hand-in-{}.sfhandin", signs.to_lowercase())
}

/// The name of a class's newest pack in a class folder: the first ten signs of the class id.
#[must_use]
pub fn folder_pack_name(class: &ClassId) -> String {
    let signs: String = class.as_str().chars().take(10).collect();
    format!("class-pack-{}.sfclass", signs.to_lowercase())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bytes_become_signs_with_the_highest_bits_first() {
        assert_eq!(signs_of(&[]), "");
        assert_eq!(signs_of(&[0b0000_1000]), "10");
        assert_eq!(signs_of(&[0xff; 5]), "ZZZZZZZZ");
        assert_eq!(signs_of(&[0x00, 0x44, 0x32, 0x14, 0xc7]), "01234567");
        assert_eq!(in_groups("01234567"), "012-345-67");
        assert_eq!(file_signs(&[0xff, 0xff, 0xff, 0xfc]), "zzzzzz");
    }

    #[test]
    fn a_hand_in_keeps_its_name_on_its_device_and_with_its_key() {
        let device = |byte| DeviceId::from_bytes(&[byte; 16]);
        let of = |byte| ClassId::new(signs_of(&[byte; 16])).unwrap();
        let (class, other) = (of(1), of(2));
        let name = folder_hand_in_name(&[1; 32], &class, &device(1));
        assert_eq!(name, folder_hand_in_name(&[1; 32], &class, &device(1)));
        assert_ne!(name, folder_hand_in_name(&[1; 32], &class, &device(2)));
        assert_ne!(name, folder_hand_in_name(&[2; 32], &class, &device(1)));
        assert_ne!(name, folder_hand_in_name(&[1; 32], &other, &device(1)));
        assert_eq!(name.len(), "hand-in-.sfhandin".len() + 12);
    }
}
