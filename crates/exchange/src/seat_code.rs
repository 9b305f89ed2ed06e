//! The seat code on a join slip: eight signs of the class, six of the seat's token, and an
//! ISO/IEC 7064 MOD 37,36 check character, as in `9GM-76J-M0F-4YH-X2K`.
//!
//! The class signs bind the slip to the keys of the class: a class pack with other keys has
//! other signs. They are made by a slow hash, so that finding keys with the signs of a slip
//! costs too much. A token has no code if the check character would be a look-alike or would
//! miss a swap of neighbours; then another token is made.

use super::SeatCodeError;
use super::iso7064::check_character;
use super::signs::{in_groups, signs_of};
use argon2::{Algorithm, Argon2, Params, Version};
use serde::{Deserialize, Serialize};
use sha2::{Digest as _, Sha256};
use surefoot_catalogue::{IdError, text_id};
use surefoot_record::{ClassId, SEAT_SIGNS, SeatToken};
use ts_rs::TS;

const CLASS_SIGNS: usize = 8;
/// Signs of a seat code, without dashes.
pub const SEAT_CODE_SIGNS: usize = CLASS_SIGNS + SeatToken::SIGNS + 1;
const CLASS_SALT: &[u8] = b"surefoot class signs v1";
const TOKEN_PREFIX: &[u8] = b"surefoot seat token v1\n";

/// Memory and passes of argon2id for the class signs: about a tenth of a second.
const MEMORY_KIB: u32 = 64 * 1024;
const PASSES: u32 = 3;

text_id!(
    /// The signs of a class in its seat codes: 8 signs, 40 bits.
    ClassSigns,
    "class signs",
    "8 signs of base 32 without I, L, O, U",
    |text| text.len() == CLASS_SIGNS && text.bytes().all(|b| SEAT_SIGNS.contains(&b))
);

impl ClassSigns {
    /// Computes the signs of a class. Takes about a tenth of a second and 64 MiB.
    ///
    /// # Errors
    /// Does not fail for a class id; the library returns a `Result`.
    pub fn of(class: &ClassId) -> Result<Self, IdError> {
        let mut hash = [0; 32];
        Params::new(MEMORY_KIB, PASSES, 1, Some(hash.len()))
            .and_then(|params| {
                Argon2::new(Algorithm::Argon2id, Version::V0x13, params).hash_password_into(
                    class.as_str().as_bytes(),
                    CLASS_SALT,
                    &mut hash,
                )
            })
            .map_err(|_| IdError {
                kind: "class signs",
                rule: "argon2id",
            })?;
        Self::new(
            signs_of(&hash)
                .chars()
                .take(CLASS_SIGNS)
                .collect::<String>(),
        )
    }
}

/// Returns the signs of the code, if the token has one.
fn code_signs(class: &ClassSigns, token: &SeatToken) -> Option<String> {
    let signs = with_check(&format!("{class}{token}"), "")?;
    every_swap_shows(&signs, CLASS_SIGNS).then_some(signs)
}

/// Returns `signs` with the check character over `before` and `signs`; `None` if the character
/// is a look-alike.
pub(super) fn with_check(signs: &str, before: &str) -> Option<String> {
    let check = check_character(format!("{before}{signs}").as_bytes())?;
    SEAT_SIGNS
        .contains(&check)
        .then(|| format!("{signs}{}", char::from(check)))
}

pub(super) fn check_fits(signs: &[u8]) -> bool {
    signs
        .split_last()
        .is_some_and(|(check, rest)| check_character(rest) == Some(*check))
}

/// Whether every swap of neighbours is found that leaves the first `known` signs as they are.
/// MOD 37,36 finds every single wrong sign, but not every swap. A swap that changes signs that
/// the reader knows is found by them.
pub(super) fn every_swap_shows(signs: &str, known: usize) -> bool {
    let signs = signs.as_bytes();
    (1..signs.len()).all(|place| {
        let mut swapped = signs.to_vec();
        swapped.swap(place - 1, place);
        let same_start = swapped.get(..known) == signs.get(..known);
        swapped == signs || !same_start || !check_fits(&swapped)
    })
}

/// Returns the seat code of a token in five groups of three signs; `None` if the token has no
/// code. Every token of [`draw_seat_token`] has one.
#[must_use]
pub fn make_seat_code(class: &ClassSigns, token: &SeatToken) -> Option<String> {
    code_signs(class, token).map(|signs| in_groups(&signs))
}

/// Makes the token of a seat from 32 secret random bytes and the number of the seat. The
/// same arguments give the same token, and it has a seat code. Two seats of a class may get
/// the same token (in about 1 of 1,700,000 classes of 36 seats); the caller then tries another
/// `number`.
#[must_use]
pub fn draw_seat_token(class: &ClassSigns, seed: &[u8; 32], number: u32) -> SeatToken {
    let mut attempt: u32 = 0;
    loop {
        let hash = Sha256::new()
            .chain_update(TOKEN_PREFIX)
            .chain_update(seed)
            .chain_update(class.as_str())
            .chain_update(number.to_be_bytes())
            .chain_update(attempt.to_be_bytes())
            .finalize();
        let signs: String = signs_of(&hash).chars().take(SeatToken::SIGNS).collect();
        if let Ok(token) = SeatToken::new(signs)
            && code_signs(class, &token).is_some()
        {
            return token;
        }
        attempt = attempt.wrapping_add(1);
    }
}

/// Reads typed signs. Case, spaces and dashes do not matter; O is read as 0, I and L as 1.
pub(super) fn read_signs(typed: &str, expected: usize) -> Result<String, SeatCodeError> {
    let mut signs = String::with_capacity(expected);
    let mut found = 0;
    for sign in typed.chars() {
        let sign_read = match sign.to_ascii_uppercase() {
            ' ' | '-' | '\u{2010}'..='\u{2015}' | '\u{a0}' | '\t' | '\n' | '\r' => continue,
            'O' => '0',
            'I' | 'L' => '1',
            other => other,
        };
        if !u8::try_from(sign_read).is_ok_and(|byte| SEAT_SIGNS.contains(&byte)) {
            return Err(SeatCodeError::Sign { sign });
        }
        found += 1;
        if found <= expected {
            signs.push(sign_read);
        }
    }
    if found != expected {
        return Err(SeatCodeError::Length { found, expected });
    }
    Ok(signs)
}

/// Reads a typed seat code. Case, spaces and dashes do not matter; O is read as 0, I and L
/// as 1.
pub fn parse_seat_code(class: &ClassSigns, typed: &str) -> Result<SeatToken, SeatCodeError> {
    let signs = read_signs(typed, SEAT_CODE_SIGNS)?;
    if !check_fits(signs.as_bytes()) {
        return Err(SeatCodeError::Check);
    }
    let Some(rest) = signs.strip_prefix(class.as_str()) else {
        return Err(SeatCodeError::OtherClass);
    };
    SeatToken::new(rest.get(..SeatToken::SIGNS).unwrap_or_default())
        .ok()
        // A token without a code is on no slip.
        .filter(|token| code_signs(class, token).is_some())
        .ok_or(SeatCodeError::Check)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every class has tokens with a code, so that making a token ends.
    #[test]
    fn behind_any_signs_of_a_class_most_tokens_have_a_code() {
        let signs = |n: u32| signs_of(&Sha256::new().chain_update(n.to_be_bytes()).finalize());
        let tokens: Vec<SeatToken> = (0..40)
            .map(|n| SeatToken::new(&signs(n)[..SeatToken::SIGNS]).unwrap())
            .collect();
        // The check character depends on the class signs by one number below 37 alone.
        for n in 40..5_040 {
            let class = ClassSigns::new(&signs(n)[..CLASS_SIGNS]).unwrap();
            let codes = tokens
                .iter()
                .filter(|token| code_signs(&class, token).is_some())
                .count();
            assert!(codes * 2 > tokens.len(), "{class}: {codes}");
        }
    }
}
