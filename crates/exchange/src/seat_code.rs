//! The seat code on a join slip: three signs of the class, five of the seat's token,
//! and an ISO/IEC 7064 MOD 37,36 check character, as in `7QK-3M0-ZD4`.
//!
//! The class signs reveal a slip of another class (one other class in 32,768 has the
//! same signs), the check character a typing error. A token has no code if the check
//! character would be a look-alike or would miss a swap of neighbours; then another
//! token is made.

use super::SeatCodeError;
use super::iso7064::check_character;
use sha2::{Digest as _, Sha256};
use surefoot_record::{ClassId, SEAT_SIGNS, SeatToken};

const CLASS_SIGNS: usize = 3;
/// Signs of a seat code, without dashes.
pub const SEAT_CODE_SIGNS: usize = CLASS_SIGNS + SeatToken::SIGNS + 1;
const CLASS_PREFIX: &[u8] = b"surefoot class signs v1\n";
const TOKEN_PREFIX: &[u8] = b"surefoot seat token v1\n";

/// Makes one sign of each of the first bytes of a hash.
fn signs_of<const N: usize>(hash: &[u8]) -> [u8; N] {
    let mut signs = [b'0'; N];
    for (sign, byte) in signs.iter_mut().zip(hash) {
        // The low five bits are a place among the 32 signs, and every place is as likely.
        if let Some(chosen) = SEAT_SIGNS.get(usize::from(byte & 31)) {
            *sign = *chosen;
        }
    }
    signs
}

fn class_signs(class: &ClassId) -> [u8; CLASS_SIGNS] {
    let hash = Sha256::new()
        .chain_update(CLASS_PREFIX)
        .chain_update(class.as_str())
        .finalize();
    signs_of(&hash)
}

/// Returns the nine signs, if the token has a code.
fn code_signs(class: &ClassId, token: &SeatToken) -> Option<Vec<u8>> {
    code_behind(class_signs(class), token)
}

/// As [`code_signs`], from the class signs.
fn code_behind(class: [u8; CLASS_SIGNS], token: &SeatToken) -> Option<Vec<u8>> {
    let mut signs = class.to_vec();
    signs.extend_from_slice(token.as_str().as_bytes());
    let check = check_character(&signs)?;
    signs.push(check);
    (SEAT_SIGNS.contains(&check) && every_swap_shows(&signs)).then_some(signs)
}

fn check_fits(signs: &[u8]) -> bool {
    signs
        .split_last()
        .is_some_and(|(check, rest)| check_character(rest) == Some(*check))
}

/// Whether every swap of neighbours in the code is found. MOD 37,36 finds every single wrong
/// sign, but not every swap. A swap that changes the class signs is found by them. (If the
/// check character had to find those too, one class in 655 would have no code at all.)
fn every_swap_shows(signs: &[u8]) -> bool {
    (1..signs.len()).all(|place| {
        let mut swapped = signs.to_vec();
        swapped.swap(place - 1, place);
        let same_class = swapped.get(..CLASS_SIGNS) == signs.get(..CLASS_SIGNS);
        swapped == signs || !same_class || !check_fits(&swapped)
    })
}

/// Returns the seat code of a token in three groups of three signs; `None` if the token has
/// no code. Every token of [`draw_seat_token`] has one.
#[must_use]
pub fn make_seat_code(class: &ClassId, token: &SeatToken) -> Option<String> {
    let signs = code_signs(class, token)?;
    let groups: Vec<String> = signs
        .chunks(3)
        .map(|group| String::from_utf8_lossy(group).into_owned())
        .collect();
    Some(groups.join("-"))
}

/// Makes the token of a seat from 32 secret random bytes and the number of the seat. The
/// same arguments give the same token, and it has a seat code. Two seats of a class may get
/// the same token (in about 1 of 50,000 classes of 36 seats); the caller then tries another
/// `number`.
#[must_use]
pub fn draw_seat_token(class: &ClassId, seed: &[u8; 32], number: u32) -> SeatToken {
    let mut attempt: u32 = 0;
    loop {
        let hash = Sha256::new()
            .chain_update(TOKEN_PREFIX)
            .chain_update(seed)
            .chain_update(class.as_str())
            .chain_update(number.to_be_bytes())
            .chain_update(attempt.to_be_bytes())
            .finalize();
        let text = String::from_utf8_lossy(&signs_of::<{ SeatToken::SIGNS }>(&hash)).into_owned();
        if let Ok(token) = SeatToken::new(text)
            && code_signs(class, &token).is_some()
        {
            return token;
        }
        attempt = attempt.wrapping_add(1);
    }
}

/// Reads a typed seat code. Case, spaces and dashes do not matter; O is read as 0, I and L
/// as 1.
pub fn parse_seat_code(class: &ClassId, typed: &str) -> Result<SeatToken, SeatCodeError> {
    let mut signs = Vec::with_capacity(SEAT_CODE_SIGNS);
    let mut found = 0;
    for sign in typed.chars() {
        let upper = sign.to_ascii_uppercase();
        let sign_read = match upper {
            ' ' | '-' | '\u{2010}'..='\u{2015}' | '\u{a0}' | '\t' | '\n' | '\r' => continue,
            'O' => '0',
            'I' | 'L' => '1',
            other => other,
        };
        let byte = u8::try_from(sign_read)
            .ok()
            .filter(|byte| SEAT_SIGNS.contains(byte))
            .ok_or(SeatCodeError::Sign { sign })?;
        found += 1;
        if signs.len() < SEAT_CODE_SIGNS {
            signs.push(byte);
        }
    }
    if found != SEAT_CODE_SIGNS {
        return Err(SeatCodeError::Length {
            found,
            expected: SEAT_CODE_SIGNS,
        });
    }
    if !check_fits(&signs) {
        return Err(SeatCodeError::Check);
    }
    if !signs.starts_with(&class_signs(class)) {
        return Err(SeatCodeError::OtherClass);
    }
    let token = signs
        .get(CLASS_SIGNS..CLASS_SIGNS + SeatToken::SIGNS)
        .unwrap_or_default();
    SeatToken::new(String::from_utf8_lossy(token).into_owned())
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
        let tokens: Vec<SeatToken> = (0..40_u8)
            .map(|n| Sha256::new().chain_update([n]).finalize())
            .map(|hash| signs_of::<{ SeatToken::SIGNS }>(&hash))
            .map(|signs| SeatToken::new(String::from_utf8_lossy(&signs)).unwrap())
            .collect();
        for a in SEAT_SIGNS {
            for b in SEAT_SIGNS {
                for c in SEAT_SIGNS {
                    let class = [*a, *b, *c];
                    let codes = tokens
                        .iter()
                        .filter(|token| code_behind(class, token).is_some())
                        .count();
                    assert!(codes * 2 > tokens.len(), "{class:?}: {codes}");
                }
            }
        }
    }
}
