//! Ids. Class packs and hand-ins have them in place of names.
//!
//! The caller supplies the random bytes that ids are made of. No id comes from
//! hardware, and none says anything about a person.

use base64::Engine as _;
use base64::prelude::BASE64_URL_SAFE_NO_PAD;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::{is_hyphenated, text_id};
use ts_rs::TS;

/// Whether the text is 16 bytes in base64url without padding. The decoder accepts only one
/// way of writing them.
fn is_16_bytes(text: &str) -> bool {
    // The decoder needs room for whole groups of three bytes.
    text.len() == 22
        && BASE64_URL_SAFE_NO_PAD
            .decode_slice(text, &mut [0; 18])
            .is_ok_and(|bytes| bytes == 16)
}

text_id!(
    /// The id of a class: 16 bytes in base 32 with the signs of [`SEAT_SIGNS`], 26 signs. It is
    /// computed from the keys of the class.
    ClassId,
    "class id",
    "26 signs of base 32 for 16 bytes",
    |text| text.len() == 26
        && text.bytes().all(|b| SEAT_SIGNS.contains(&b))
        // The last sign has two unused bits, which are zero.
        && text.ends_with(['0', '4', '8', 'C', 'G', 'M', 'R', 'W'])
);

text_id!(
    /// The id of a device: 16 random bytes in base64url, 22 characters. It is made when a
    /// student joins.
    DeviceId,
    "device id",
    "22 characters of base64url for 16 bytes",
    is_16_bytes
);

text_id!(
    /// The token of a seat in files: [`SeatToken::SIGNS`] signs of [`SEAT_SIGNS`]. It is made
    /// of random bytes, never of a name or a roll number.
    SeatToken,
    "seat token",
    "6 signs of base 32 without I, L, O, U",
    |text| text.len() == SeatToken::SIGNS && text.bytes().all(|b| SEAT_SIGNS.contains(&b))
);

text_id!(
    /// The code of a recognised misconception: lower-case letters and digits joined
    /// by single hyphens, at most 64 characters.
    MisconceptionCode,
    "misconception code",
    "lower-case letters and digits joined by single hyphens, at most 64 characters",
    is_hyphenated
);

text_id!(
    /// The id of an assignment: lower-case letters, digits and hyphens, 1 to 64 characters.
    AssignmentId,
    "assignment id",
    "lower-case letters, digits and hyphens, 1 to 64 characters",
    |text| (1..=64).contains(&text.len())
        && text.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-')
);

/// The 32 signs of class ids, seat tokens and what a join slip says: digits and capital
/// letters without I, L, O and U.
pub const SEAT_SIGNS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

impl SeatToken {
    /// The number of signs; together they have 30 bits.
    pub const SIGNS: usize = 6;
}

impl DeviceId {
    /// Makes an id of 16 random bytes.
    #[must_use]
    pub fn from_bytes(bytes: &[u8; 16]) -> Self {
        Self(BASE64_URL_SAFE_NO_PAD.encode(bytes))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_are_written_one_way_only() {
        let id = DeviceId::from_bytes(&[0xff; 16]);
        assert_eq!(id.as_str(), "_____________________w");
        assert_eq!(DeviceId::new(id.as_str()).unwrap(), id);
        // The last character carries two unused bits, which must be zero.
        assert!(DeviceId::new("_____________________x").is_err());
        assert!(DeviceId::new("_____________________").is_err());
        assert!(ClassId::new("0123456789ABCDEFGHJKMNPQRW").is_ok());
        for bad in [
            "0123456789ABCDEFGHJKMNPQRS",
            "0123456789ABCDEFGHJKMNPQR",
            "0123456789ABCDEFGHJKMNPQRWW",
            "0123456789ABCDEFGHIKMNPQRW",
        ] {
            assert!(ClassId::new(bad).is_err(), "{bad}");
        }
        assert!(serde_json::from_str::<DeviceId>("\"short\"").is_err());
        assert!(SeatToken::new("0AZ9K7").is_ok());
        for bad in ["0AZ9K", "0AZ9K77", "0az9k7", "0AZ9KO", "0AZ9\u{130}"] {
            assert!(SeatToken::new(bad).is_err(), "{bad}");
        }
        for bad in ["", "-a", "a--b", "A", "<b>", "a b"] {
            assert!(MisconceptionCode::new(bad).is_err(), "{bad}");
        }
        assert!(MisconceptionCode::new("added-denominators").is_ok());
    }
}
