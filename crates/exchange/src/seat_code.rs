//! The seat code on a join slip: three signs of the class, five of the seat,
//! and an ISO/IEC 7064 MOD 37,36 check character, as in `7QK-3M0-ZD4`.
//!
//! A slip from another class shows by its first three signs (one other class
//! in 32,768 has the same); a typing slip shows by the check character. Codes
//! in which the check character would be a look-alike, or would miss some swap
//! of neighbours, are never given out: another token is drawn.

use super::SeatCodeError;
use super::iso7064::check_character;
use sha2::{Digest as _, Sha256};
use surefoot_record::{ClassId, SEAT_SIGNS, SeatToken};

const CLASS_SIGNS: usize = 3;
/// Signs of a seat code, without dashes.
pub const SEAT_CODE_SIGNS: usize = CLASS_SIGNS + SeatToken::SIGNS + 1;
const CLASS_PREFIX: &[u8] = b"surefoot class signs v1\n";
const TOKEN_PREFIX: &[u8] = b"surefoot seat token v1\n";

/// Writes the first bits of a hash as base-32 signs.
fn signs_of<const N: usize>(hash: &[u8]) -> [u8; N] {
    let mut signs = [b'0'; N];
    for (sign, byte) in signs.iter_mut().zip(hash) {
        // Five even bits of each byte; 32 divides 256, so no sign is favoured.
        *sign = SEAT_SIGNS[usize::from(byte & 31)];
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

/// The nine signs, when the code is one that may be given out.
fn code_signs(class: &ClassId, token: &SeatToken) -> Option<Vec<u8>> {
    code_behind(class_signs(class), token)
}

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

/// MOD 37,36 finds every single wrong sign, but not quite every swap of
/// neighbours; this says whether all of this code's show. A swap that changes the
/// class's signs shows by them. (Asked of the check character too, one class in 655
/// would have no code at all.)
fn every_swap_shows(signs: &[u8]) -> bool {
    (1..signs.len()).all(|place| {
        let mut swapped = signs.to_vec();
        swapped.swap(place - 1, place);
        swapped == signs || swapped[..CLASS_SIGNS] != signs[..CLASS_SIGNS] || !check_fits(&swapped)
    })
}

/// The seat code of a token, in three groups of three; `None` when this token
/// has none and another is to be drawn. [`draw_seat_token`] never gives such a one.
#[must_use]
pub fn make_seat_code(class: &ClassId, token: &SeatToken) -> Option<String> {
    let signs = code_signs(class, token)?;
    let groups: Vec<String> = signs
        .chunks(3)
        .map(|group| String::from_utf8_lossy(group).into_owned())
        .collect();
    Some(groups.join("-"))
}

/// Draws a seat's token from 32 secret random bytes and the seat's number:
/// repeatable, and always with a seat code. Two seats of a class may get the
/// same by chance (about 1 in 50,000 classes of 36 seats): take a next `number` then.
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

/// Reads a typed seat code: lower case, spaces and dashes do not matter; O is
/// read as 0, I and L as 1.
///
/// # Errors
/// [`SeatCodeError`]: a sign that no code has, a wrong length, a check character
/// that does not fit, or the signs of another class.
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
        // A code that is never given out cannot stand on a slip.
        .filter(|token| code_signs(class, token).is_some())
        .ok_or(SeatCodeError::Check)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Whatever signs a class has, drawing a seat's token comes to an end.
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
