//! Bytes as signs of base 32, for what people type and compare.

use bech32::Fe32;
use bech32::primitives::iter::ByteIterExt as _;
use surefoot_record::SEAT_SIGNS;

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
}
