//! Sealing by age-encryption.org/v1, with the `age` crate.
//!
//! The `age` crate takes file keys, nonces and ephemeral keys from the operating
//! system, so two sealings of the same bytes differ. Everything else in this crate
//! is repeatable. With a passphrase `age` also measures its speed once, but the work
//! factor is fixed.

use super::Refusal;
use super::keys::{Recipient, SealingIdentity};
use super::limits::{MOST_HEADER_BYTES, MOST_WORK_FACTOR};
use super::strict_json::bad;
use age::secrecy::SecretString;
use age::{DecryptError, Decryptor, Encryptor};
use std::io::{Read, Write as _};

const VERSION_PREFIX: &[u8] = b"age-encryption.org/v";
pub(super) const VERSION_LINE: &[u8] = b"age-encryption.org/v1\n";

/// The shortest passphrase, in characters.
const LEAST_PASSPHRASE_CHARS: usize = 8;

/// Reads at most `most_bytes`. Fails if there are more.
pub(super) fn read_capped(bytes: impl Read, most_bytes: u64) -> Result<Vec<u8>, Refusal> {
    let mut read = Vec::new();
    bytes
        .take(most_bytes.saturating_add(1))
        .read_to_end(&mut read)
        .map_err(|_| Refusal::Unreadable)?;
    let found_bytes = read.len() as u64;
    if found_bytes > most_bytes {
        return Err(Refusal::TooLarge {
            found_bytes,
            most_bytes,
        });
    }
    Ok(read)
}

fn finish(encryptor: Encryptor, plain: &[u8]) -> Result<Vec<u8>, Refusal> {
    let mut sealed = Vec::new();
    let mut writer = encryptor
        .wrap_output(&mut sealed)
        .map_err(|_| bad("sealing"))?;
    writer
        .write_all(plain)
        .and_then(|()| writer.finish())
        .map_err(|_| bad("sealing"))?;
    Ok(sealed)
}

/// Seals for one recipient.
pub(super) fn seal_for(recipient: &Recipient, plain: &[u8]) -> Result<Vec<u8>, Refusal> {
    let recipient = recipient.to_age()?;
    let encryptor = Encryptor::with_recipients(std::iter::once(&recipient as &dyn age::Recipient))
        .map_err(|_| bad("recipient"))?;
    finish(encryptor, plain)
}

/// Checks that a new passphrase is long enough.
///
/// # Errors
/// Fails with [`Refusal::BadContent`] at `passphrase` if it is too short.
pub fn check_passphrase(passphrase: &str) -> Result<(), Refusal> {
    if passphrase.chars().count() < LEAST_PASSPHRASE_CHARS {
        return Err(bad("passphrase"));
    }
    Ok(())
}

/// Seals with a passphrase and a work factor of 1 to [`MOST_WORK_FACTOR`]. Fails with
/// [`Refusal::BadContent`] at `passphrase` if it is too short.
pub(super) fn seal_with_passphrase(
    passphrase: &str,
    work_factor: u8,
    plain: &[u8],
) -> Result<Vec<u8>, Refusal> {
    check_passphrase(passphrase)?;
    let mut recipient = age::scrypt::Recipient::new(SecretString::from(passphrase));
    recipient.set_work_factor(work_factor.clamp(1, MOST_WORK_FACTOR));
    let encryptor = Encryptor::with_recipients(std::iter::once(&recipient as &dyn age::Recipient))
        .map_err(|_| bad("passphrase"))?;
    finish(encryptor, plain)
}

/// Checks before the library parses the header that the version line is there and that the
/// header ends within [`MOST_HEADER_BYTES`].
fn check_head(sealed: &[u8]) -> Result<(), Refusal> {
    if !sealed.starts_with(VERSION_LINE) {
        if !sealed.is_empty() && VERSION_LINE.starts_with(sealed) {
            return Err(Refusal::Damaged);
        }
        let found = sealed
            .strip_prefix(VERSION_PREFIX)
            .and_then(|rest| rest.split(|&b| b == b'\n').next())
            .filter(|digits| (1..=6).contains(&digits.len()))
            .and_then(|digits| std::str::from_utf8(digits).ok())
            .and_then(|digits| digits.parse::<u32>().ok());
        return Err(match found {
            Some(found) if found > 1 => Refusal::NewerFormat { found, known: 1 },
            _ => Refusal::NotOurs,
        });
    }
    let head = sealed.get(..MOST_HEADER_BYTES).unwrap_or(sealed);
    if head.windows(5).any(|window| window == b"\n--- ") {
        Ok(())
    } else {
        Err(Refusal::Damaged)
    }
}

fn refusal_of(error: DecryptError) -> Refusal {
    match error {
        DecryptError::NoMatchingKeys => Refusal::WrongClass,
        DecryptError::ExcessiveWork { required, .. } => Refusal::TooMuchWork {
            found: required,
            most: MOST_WORK_FACTOR,
        },
        // The version line was checked before, so an unknown format is damage.
        _ => Refusal::Damaged,
    }
}

/// Unseals with the first of `identities` that fits. Authenticates the whole plain text
/// before returning any of it.
///
/// # Errors
/// Fails with [`Refusal::WrongClass`] if no identity fits; damage inside the sealed key
/// looks the same. Fails with [`Refusal::NotOurs`] if the file is sealed by a passphrase.
pub(super) fn unseal<'i>(
    sealed: &[u8],
    identities: impl IntoIterator<Item = &'i SealingIdentity>,
) -> Result<Vec<u8>, Refusal> {
    check_head(sealed)?;
    let decryptor = Decryptor::new_buffered(sealed).map_err(refusal_of)?;
    if decryptor.is_scrypt() {
        return Err(Refusal::NotOurs);
    }
    let reader = decryptor
        .decrypt(identities.into_iter().map(SealingIdentity::as_age))
        .map_err(refusal_of)?;
    read_plain(reader, sealed.len())
}

/// Unseals with a passphrase. Fails with [`Refusal::TooMuchWork`] above
/// [`MOST_WORK_FACTOR`], and with [`Refusal::NotOurs`] if the file is not sealed by a
/// passphrase.
pub(super) fn unseal_with_passphrase(sealed: &[u8], passphrase: &str) -> Result<Vec<u8>, Refusal> {
    check_head(sealed)?;
    let decryptor = Decryptor::new_buffered(sealed).map_err(refusal_of)?;
    if !decryptor.is_scrypt() {
        return Err(Refusal::NotOurs);
    }
    let mut identity = age::scrypt::Identity::new(SecretString::from(passphrase));
    identity.set_max_work_factor(MOST_WORK_FACTOR);
    let reader = decryptor
        .decrypt(std::iter::once(&identity as &dyn age::Identity))
        .map_err(|error| match error {
            DecryptError::DecryptionFailed | DecryptError::KeyDecryptionFailed => {
                Refusal::WrongPassphrase
            }
            other => refusal_of(other),
        })?;
    read_plain(reader, sealed.len())
}

/// Reads the plain text. It is shorter than the sealed file, whose size was checked.
fn read_plain(mut reader: impl Read, sealed_bytes: usize) -> Result<Vec<u8>, Refusal> {
    let mut plain = Vec::with_capacity(sealed_bytes);
    reader
        .read_to_end(&mut plain)
        .map_err(|_| Refusal::Damaged)?;
    Ok(plain)
}
