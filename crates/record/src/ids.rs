//! The names that travel instead of people's names.
//!
//! All of them are random or drawn from a seed the caller gives; none comes
//! from hardware, and none says anything about a person.

use base64::Engine as _;
use base64::prelude::BASE64_URL_SAFE_NO_PAD;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// Why a text is not an id of the kind asked for.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("not a {kind}: {rule}")]
pub struct IdError {
    /// The kind asked for.
    pub kind: &'static str,
    /// How one is written.
    pub rule: &'static str,
}

/// Defines a text that is checked when it is made: its constructors, conversions and display.
#[macro_export]
macro_rules! text_id {
    ($(#[$doc:meta])* $name:ident, $kind:literal, $rule:literal, $check:expr) => {
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
        #[serde(try_from = "String", into = "String")]
        #[ts(type = "string")]
        pub struct $name(String);

        impl $name {
            /// Checks the text and takes it.
            ///
            /// # Errors
            /// `IdError` when the text is not written as the type says.
            pub fn new(text: impl Into<String>) -> Result<Self, $crate::IdError> {
                let text = text.into();
                let fits: fn(&str) -> bool = $check;
                if fits(&text) {
                    Ok(Self(text))
                } else {
                    Err($crate::IdError { kind: $kind, rule: $rule })
                }
            }

            /// As text.
            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl TryFrom<String> for $name {
            type Error = $crate::IdError;
            fn try_from(text: String) -> Result<Self, $crate::IdError> {
                Self::new(text)
            }
        }

        impl std::str::FromStr for $name {
            type Err = $crate::IdError;
            fn from_str(text: &str) -> Result<Self, $crate::IdError> {
                Self::new(text)
            }
        }

        impl From<$name> for String {
            fn from(id: $name) -> Self {
                id.0
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(&self.0)
            }
        }
    };
}

/// Whether the text is 16 bytes in base64url without padding, written the one way.
fn is_16_bytes(text: &str) -> bool {
    // The decoder asks for room for whole groups of three bytes.
    text.len() == 22
        && BASE64_URL_SAFE_NO_PAD
            .decode_slice(text, &mut [0; 18])
            .is_ok_and(|bytes| bytes == 16)
}

text_id!(
    /// A class: 16 random bytes, 22 characters of base64url.
    ClassId,
    "class id",
    "22 characters of base64url for 16 bytes",
    is_16_bytes
);

text_id!(
    /// One installation of one student: 16 random bytes made at joining, 22
    /// characters of base64url. Not taken from hardware.
    DeviceId,
    "device id",
    "22 characters of base64url for 16 bytes",
    is_16_bytes
);

text_id!(
    /// A seat of a class, as it stands in a hand-in: [`SeatToken::SIGNS`] signs
    /// of [`SEAT_SIGNS`]. Drawn, never made from a name or a roll number.
    SeatToken,
    "seat token",
    "5 signs of base 32 without I, L, O, U",
    |text| text.len() == SeatToken::SIGNS && text.bytes().all(|b| SEAT_SIGNS.contains(&b))
);

text_id!(
    /// The code of a recognised misconception: lower-case letters and digits joined
    /// by single hyphens, at most 64 characters.
    MisconceptionCode,
    "misconception code",
    "lower-case letters and digits joined by single hyphens, at most 64 characters",
    |text| text.len() <= 64
        && text.split('-').all(|word| {
            !word.is_empty() && word.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit())
        })
);

text_id!(
    /// An assignment: lower-case letters, digits and hyphens, 1 to 64 characters.
    AssignmentId,
    "assignment id",
    "lower-case letters, digits and hyphens, 1 to 64 characters",
    |text| (1..=64).contains(&text.len())
        && text.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-')
);

/// The 32 signs of seat tokens and seat codes: digits and capital letters
/// without I, L, O and U.
pub const SEAT_SIGNS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

impl SeatToken {
    /// Signs in a token, 25 bits.
    pub const SIGNS: usize = 5;
}

impl ClassId {
    /// From 16 random bytes.
    #[must_use]
    pub fn from_bytes(bytes: &[u8; 16]) -> Self {
        Self(BASE64_URL_SAFE_NO_PAD.encode(bytes))
    }
}

impl DeviceId {
    /// From 16 random bytes.
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
        let id = ClassId::from_bytes(&[0xff; 16]);
        assert_eq!(id.as_str(), "_____________________w");
        assert_eq!(ClassId::new(id.as_str()).unwrap(), id);
        // The last character carries two unused bits, which must be zero.
        assert!(ClassId::new("_____________________x").is_err());
        assert!(ClassId::new("_____________________").is_err());
        assert!(serde_json::from_str::<DeviceId>("\"short\"").is_err());
        assert!(SeatToken::new("0AZ9K").is_ok());
        for bad in ["0AZ9", "0AZ9KK", "0az9k", "0AZ9O", "0AZ9\u{130}"] {
            assert!(SeatToken::new(bad).is_err(), "{bad}");
        }
        for bad in ["", "-a", "a--b", "A", "<b>", "a b"] {
            assert!(MisconceptionCode::new(bad).is_err(), "{bad}");
        }
        assert!(MisconceptionCode::new("added-denominators").is_ok());
    }
}
