//! A PIN for a tablet that several students share. It protects the screens, not the files:
//! whoever can read the device's files needs no PIN.

use super::{Joined, StudentError};
use argon2::{Algorithm, Argon2, Params, Version};
use surefoot_catalogue::IdError;
use surefoot_exchange::{ClassSigns, SeatCodeError, parse_pin_signs, parse_seat_code};
use surefoot_record::{Field, Rule, SeatToken};
use surefoot_store::StudentStore;
use surefoot_store::student::{Hashed, PinRow};

/// The fewest digits of a PIN.
pub const LEAST_PIN_DIGITS: usize = 4;

/// The most digits of a PIN.
pub const MOST_PIN_DIGITS: usize = 8;

/// Memory and passes of argon2id: the least that the OWASP cheat sheet on
/// password storage names for argon2id with one lane (19 MiB, 2 passes; from memory).
const MEMORY_KIB: u32 = 19 * 1024;
const PASSES: u32 = 2;

/// Wrong tries without a wait.
const FREE_TRIES: u32 = 3;

/// The first wait; each further wrong try doubles it.
const FIRST_WAIT_SECONDS: u32 = 5;

/// The longest wait.
const LONGEST_WAIT_SECONDS: u32 = 15 * 60;

/// Returns the seconds to wait after so many wrong tries in a row.
#[must_use]
pub fn pin_wait_seconds(wrong_tries: u32) -> u32 {
    match wrong_tries.checked_sub(FREE_TRIES) {
        None => 0,
        Some(doublings) => FIRST_WAIT_SECONDS
            .saturating_mul(1_u32.checked_shl(doublings).unwrap_or(u32::MAX))
            .min(LONGEST_WAIT_SECONDS),
    }
}

fn hash(
    secret: &str,
    salt: &[u8; 16],
    memory_kib: u32,
    passes: u32,
) -> Result<[u8; 32], StudentError> {
    let faulty = |error: argon2::Error| StudentError::Fault(error.to_string());
    let params = Params::new(memory_kib, passes, 1, Some(32)).map_err(faulty)?;
    let mut out = [0; 32];
    Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
        .hash_password_into(secret.as_bytes(), salt, &mut out)
        .map_err(faulty)?;
    Ok(out)
}

fn hashed(secret: &str, salt: [u8; 16]) -> Result<Hashed, StudentError> {
    Ok(Hashed {
        salt,
        hash: hash(secret, &salt, MEMORY_KIB, PASSES)?,
        memory_kib: MEMORY_KIB,
        passes: PASSES,
    })
}

/// Whether this is the secret. Every byte is compared, so that the time does not tell where
/// the first difference is.
fn is_hash_of(kept: &Hashed, secret: &str) -> Result<bool, StudentError> {
    let found = hash(secret, &kept.salt, kept.memory_kib, kept.passes)?;
    let differs = found
        .iter()
        .zip(&kept.hash)
        .fold(0, |d, (a, b)| d | (a ^ b));
    Ok(differs == 0)
}

/// What the student types from the join slip to set a PIN.
#[derive(Debug, Clone, Copy)]
pub struct SlipTyped<'a> {
    /// The PIN signs.
    pub pin_signs: &'a str,
    /// The seat code. Only the first PIN on a device needs it; then the device keeps a hash of
    /// the PIN signs.
    pub seat_code: Option<&'a str>,
}

/// Sets the PIN. Asks for what only the owner of the slip knows, so that nobody else can lock
/// the student out. The shell draws the random bytes of `salts`: of the PIN and of the PIN
/// signs.
///
/// # Errors
/// [`StudentError::Invalid`] unless the PIN has [`LEAST_PIN_DIGITS`] to [`MOST_PIN_DIGITS`]
/// digits and nothing else. [`StudentError::SeatCode`] if a code is mistyped, missing or of
/// another slip.
pub fn set_pin(
    store: &StudentStore,
    joined: &Joined,
    pin: &str,
    slip: SlipTyped<'_>,
    salts: [[u8; 16]; 2],
) -> Result<(), StudentError> {
    let fits = (LEAST_PIN_DIGITS..=MOST_PIN_DIGITS).contains(&pin.len())
        && pin.bytes().all(|b| b.is_ascii_digit());
    if !fits {
        return Err(StudentError::Invalid {
            field: Field::Pin,
            rule: Rule::Digits,
        });
    }
    let [pin_salt, signs_salt] = salts;
    let seat = seat_of(joined)?;
    let kept = store.pin_signs()?.remove(seat.as_str());
    if kept.is_none() {
        // The seat code comes first on the slip, so its faults are named first.
        check_own_seat_code(joined, slip.seat_code.unwrap_or_default())?;
    }
    let signs = parse_pin_signs(&seat, slip.pin_signs)?;
    let signs = match kept {
        Some(kept) if is_hash_of(&kept, signs.as_str())? => kept,
        Some(_) => return Err(SeatCodeError::OtherSeat.into()),
        None => hashed(signs.as_str(), signs_salt)?,
    };
    let row = PinRow {
        hashed: hashed(pin, pin_salt)?,
        wrong_tries: 0,
    };
    store.transaction(|| {
        store.put_pin_signs(seat.as_str(), &signs)?;
        store.put_pin(&row)
    })?;
    Ok(())
}

/// Checks what somebody typed from the slip that the student has now: its PIN signs if the device
/// keeps a hash of them, otherwise its seat code.
///
/// # Errors
/// [`StudentError::SeatCode`] if it is mistyped or of another slip.
pub(super) fn check_own_slip(
    store: &StudentStore,
    joined: &Joined,
    typed: &str,
) -> Result<(), StudentError> {
    let seat = seat_of(joined)?;
    let Some(kept) = store.pin_signs()?.remove(seat.as_str()) else {
        return check_own_seat_code(joined, typed);
    };
    let signs = parse_pin_signs(&seat, typed)?;
    if is_hash_of(&kept, signs.as_str())? {
        return Ok(());
    }
    Err(SeatCodeError::OtherSeat.into())
}

fn check_own_seat_code(joined: &Joined, typed: &str) -> Result<(), StudentError> {
    let class = ClassSigns::of(&joined.pack.class_id).map_err(faulty)?;
    if parse_seat_code(&class, typed)? == seat_of(joined)? {
        return Ok(());
    }
    Err(SeatCodeError::OtherSeat.into())
}

fn faulty(error: IdError) -> StudentError {
    StudentError::Fault(error.to_string())
}

fn seat_of(joined: &Joined) -> Result<SeatToken, StudentError> {
    SeatToken::new(joined.student.seat.clone()).map_err(faulty)
}

/// Returns the wrong tries in a row; `None` if there is no PIN.
pub fn wrong_pin_tries(store: &StudentStore) -> Result<Option<u32>, StudentError> {
    Ok(store.pin()?.map(|pin| pin.wrong_tries))
}

/// Returns whether this is the PIN, or `true` if there is none. The try is on disk before it
/// is checked, so that ending the program does not save a try.
pub fn try_pin(store: &StudentStore, typed: &str) -> Result<bool, StudentError> {
    let Some(mut pin) = store.pin()? else {
        return Ok(true);
    };
    pin.wrong_tries = pin.wrong_tries.saturating_add(1);
    store.put_pin(&pin)?;
    let right = is_hash_of(&pin.hashed, typed)?;
    if right {
        pin.wrong_tries = 0;
        store.put_pin(&pin)?;
    }
    Ok(right)
}

/// Removes a forgotten PIN by the PIN signs of the slip, which the teacher can print again, or of
/// the slip of an earlier class. Nothing else changes. Wrong signs cause no wait, so that nobody
/// can keep the owner of the slip waiting; each try costs a slow hash.
///
/// # Errors
/// [`StudentError::SeatCode`] if the signs are mistyped or of another slip.
pub fn reset_pin(
    store: &StudentStore,
    joined: &Joined,
    pin_signs: &str,
) -> Result<(), StudentError> {
    let mut why = match parse_pin_signs(&seat_of(joined)?, pin_signs) {
        Ok(_) => SeatCodeError::OtherSeat,
        Err(error) => error,
    };
    for (seat, kept) in store.pin_signs()? {
        let seat = SeatToken::new(seat).map_err(faulty)?;
        let Ok(signs) = parse_pin_signs(&seat, pin_signs) else {
            continue;
        };
        if is_hash_of(&kept, signs.as_str())? {
            return Ok(store.remove_pin()?);
        }
        why = SeatCodeError::OtherSeat;
    }
    Err(why.into())
}

#[cfg(test)]
#[expect(clippy::disallowed_methods, reason = "reads the store's file")]
mod tests {
    use super::*;
    use surefoot_store::Durability;

    #[test]
    fn waits_grow_to_a_quarter_of_an_hour() {
        let waits: Vec<u32> = [0, 2, 3, 4, 5, 9, 10, 11, 40, u32::MAX]
            .map(pin_wait_seconds)
            .into();
        assert_eq!(waits, [0, 0, 5, 10, 20, 320, 640, 900, 900, 900]);
    }

    #[test]
    fn the_right_pin_opens_and_wrong_ones_are_counted() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.sqlite");
        let store = StudentStore::open(&path, Durability::Full).unwrap();
        assert!(try_pin(&store, "1").unwrap());
        let row = PinRow {
            hashed: hashed("4071", [1; 16]).unwrap(),
            wrong_tries: 0,
        };
        store.put_pin(&row).unwrap();
        assert!(!try_pin(&store, "4070").unwrap());
        assert!(!try_pin(&store, "").unwrap());
        drop(store);
        let store = StudentStore::open(&path, Durability::Full).unwrap();
        assert_eq!(wrong_pin_tries(&store).unwrap(), Some(2));
        assert!(try_pin(&store, "4071").unwrap());
        assert_eq!(wrong_pin_tries(&store).unwrap(), Some(0));
        let bytes = std::fs::read(&path).unwrap();
        assert!(!bytes.windows(4).any(|four| four == b"4071"));
    }

    #[test]
    fn argon2id_gives_the_published_tag() {
        // RFC 9106 section 5.3, Argon2id (from memory; the reference
        // implementation prints the same).
        let params = argon2::ParamsBuilder::new()
            .m_cost(32)
            .t_cost(3)
            .p_cost(4)
            .output_len(32)
            .data(argon2::AssociatedData::new(&[4; 12]).unwrap())
            .build()
            .unwrap();
        let mut out = [0; 32];
        Argon2::new_with_secret(&[3; 8], Algorithm::Argon2id, Version::V0x13, params)
            .unwrap()
            .hash_password_into(&[1; 32], &[2; 16], &mut out)
            .unwrap();
        assert_eq!(
            out,
            [
                0x0d, 0x64, 0x0d, 0xf5, 0x8d, 0x78, 0x76, 0x6c, 0x08, 0xc0, 0x37, 0xa3, 0x4a, 0x8b,
                0x53, 0xc9, 0xd0, 0x1e, 0xf0, 0x45, 0x2d, 0x75, 0xb6, 0x5e, 0xb5, 0x25, 0x20, 0xe9,
                0x6b, 0x01, 0xe6, 0x59
            ]
        );
    }
}
