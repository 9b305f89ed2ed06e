//! The PIN signs on a join slip: five secret signs and a check character, as in `3QF-9KD`.
//!
//! They allow to set a student's PIN, or to remove a forgotten one. They are in no file
//! that reaches a student. The check character mixes in the seat's token, so that a typing
//! error and most signs of another slip are found at once.

use super::SeatCodeError;
use super::keys::SigningKey;
use super::seat_code::{check_fits, every_swap_shows, read_signs, with_check};
use super::signs::{in_groups, signs_of};
use hkdf::Hkdf;
use sha2::Sha256;
use std::fmt;
use surefoot_record::{ClassId, SeatToken};

const SECRET_SIGNS: usize = 5;
/// PIN signs of a slip, without the dash.
pub const PIN_SIGNS: usize = SECRET_SIGNS + 1;
const PREFIX: &[u8] = b"surefoot pin signs v1\n";

/// The PIN signs of a slip.
#[derive(Clone, PartialEq, Eq)]
pub struct PinSigns(String);

impl PinSigns {
    /// The six signs, to be hashed.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The six signs in two groups, for the slip.
    #[must_use]
    pub fn in_groups(&self) -> String {
        in_groups(&self.0)
    }
}

impl fmt::Debug for PinSigns {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("PinSigns")
    }
}

/// Derives the PIN signs of a seat from the key that signs the packs of the class. They belong
/// to the token, because the number of a removed seat is given out again.
#[must_use]
pub fn pin_signs_of(teacher: &SigningKey, class: &ClassId, token: &SeatToken) -> PinSigns {
    let secrets = Hkdf::<Sha256>::new(None, &teacher.seed());
    let mut attempt: u32 = 0;
    loop {
        let info = [
            PREFIX,
            class.as_str().as_bytes(),
            token.as_str().as_bytes(),
            &attempt.to_be_bytes(),
        ];
        let mut bytes = [0; 4];
        // Four bytes are far below the most that HKDF gives.
        let made = secrets.expand_multi_info(&info, &mut bytes).is_ok();
        let signs: String = signs_of(&bytes).chars().take(SECRET_SIGNS).collect();
        if made
            && let Some(signs) = with_check(&signs, token.as_str())
            && every_swap_shows(&format!("{token}{signs}"), SeatToken::SIGNS)
        {
            return PinSigns(signs);
        }
        attempt = attempt.wrapping_add(1);
    }
}

/// Reads typed PIN signs of a seat. This does not show that they are those of the slip: anybody
/// who knows the token can make signs that pass.
pub fn parse_pin_signs(token: &SeatToken, typed: &str) -> Result<PinSigns, SeatCodeError> {
    let signs = read_signs(typed, PIN_SIGNS)?;
    if check_fits(format!("{token}{signs}").as_bytes()) {
        Ok(PinSigns(signs))
    } else {
        Err(SeatCodeError::Check)
    }
}
