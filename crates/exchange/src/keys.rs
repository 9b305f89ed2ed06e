//! Keys: Ed25519 for signing, age X25519 for sealing.
//!
//! Every secret key is made from 32 random bytes that the caller supplies.

use super::Refusal;
use age::secrecy::ExposeSecret as _;
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use bech32::{Bech32, Hrp};
use ed25519_dalek::{Signature, Signer as _};
use serde::{Deserialize, Serialize};
use std::fmt;
use std::str::FromStr;
use surefoot_catalogue::{IdError, text_id};
use ts_rs::TS;

text_id!(
    /// An Ed25519 public key: 32 bytes in base64 (RFC 4648, padded), 44 characters. It is not
    /// of small order.
    PublicKey,
    "signing key",
    "44 characters of base64 for an Ed25519 public key",
    |text| text.len() == 44
        && BASE64_STANDARD
            .decode(text)
            .ok()
            .and_then(|bytes| <[u8; 32]>::try_from(bytes).ok())
            .and_then(|bytes| ed25519_dalek::VerifyingKey::from_bytes(&bytes).ok())
            .is_some_and(|key| !key.is_weak())
);

text_id!(
    /// An age X25519 recipient: `age1` and 58 more characters.
    Recipient,
    "recipient",
    "an age X25519 recipient, age1...",
    |text| text.len() == 62 && text.starts_with("age1") && text.parse::<age::x25519::Recipient>().is_ok()
);

impl PublicKey {
    /// The 32 bytes.
    #[must_use]
    pub fn to_bytes(&self) -> [u8; 32] {
        // The text was checked when the key was made. Zeros would verify no signature.
        BASE64_STANDARD
            .decode(self.as_str())
            .ok()
            .and_then(|bytes| bytes.try_into().ok())
            .unwrap_or([0; 32])
    }

    /// Makes a key of 32 bytes. Fails if they are not a point of the curve, or one of small
    /// order.
    pub fn from_bytes(bytes: &[u8; 32]) -> Result<Self, IdError> {
        Self::new(BASE64_STANDARD.encode(bytes))
    }

    /// Verifies a signature strictly (RFC 8032, no points of small order).
    pub(super) fn verify(&self, message: &[u8], signature: &[u8; 64]) -> Result<(), Refusal> {
        ed25519_dalek::VerifyingKey::from_bytes(&self.to_bytes())
            .and_then(|key| key.verify_strict(message, &Signature::from_bytes(signature)))
            .map_err(|_| Refusal::BadSignature)
    }
}

impl Recipient {
    pub(super) fn to_age(&self) -> Result<age::x25519::Recipient, Refusal> {
        self.as_str().parse().map_err(|_| Refusal::BadContent {
            at: "recipient".into(),
        })
    }
}

/// A secret Ed25519 key: a teacher signs class packs with it, a student hand-ins.
#[derive(Clone)]
pub struct SigningKey(ed25519_dalek::SigningKey);

impl SigningKey {
    /// Makes a key of 32 random bytes (the seed of RFC 8032).
    #[must_use]
    pub fn from_seed(seed: &[u8; 32]) -> Self {
        Self(ed25519_dalek::SigningKey::from_bytes(seed))
    }

    /// The seed, for the store.
    #[must_use]
    pub fn seed(&self) -> [u8; 32] {
        self.0.to_bytes()
    }

    /// The seed in base64, for files that hold it. Secret.
    #[must_use]
    pub fn to_text(&self) -> String {
        BASE64_STANDARD.encode(self.seed())
    }

    /// The public key.
    #[must_use]
    pub fn public(&self) -> PublicKey {
        PublicKey(BASE64_STANDARD.encode(self.0.verifying_key().as_bytes()))
    }

    pub(super) fn sign(&self, message: &[u8]) -> [u8; 64] {
        self.0.sign(message).to_bytes()
    }
}

/// Reads the text of [`SigningKey::to_text`].
impl FromStr for SigningKey {
    type Err = IdError;
    fn from_str(text: &str) -> Result<Self, IdError> {
        BASE64_STANDARD
            .decode(text)
            .ok()
            .and_then(|bytes| bytes.try_into().ok())
            .map(|seed| Self::from_seed(&seed))
            .ok_or(IdError {
                kind: "signing seed",
                rule: "44 characters of base64 for 32 bytes",
            })
    }
}

impl fmt::Debug for SigningKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("SigningKey").field(&self.public()).finish()
    }
}

/// A secret age X25519 key: a class opens hand-ins with it, a device personal
/// assignments.
#[derive(Clone)]
pub struct SealingIdentity(age::x25519::Identity);

/// The human-readable part of an age identity (age-encryption.org/v1).
const IDENTITY_HRP: Hrp = Hrp::parse_unchecked("age-secret-key-");

impl SealingIdentity {
    /// Makes a key of 32 random bytes (the X25519 scalar of RFC 7748).
    ///
    /// # Errors
    /// Does not fail for 32 bytes; the library's reader returns a `Result`.
    pub fn from_bytes(bytes: &[u8; 32]) -> Result<Self, IdError> {
        bech32::encode::<Bech32>(IDENTITY_HRP, bytes)
            .map_err(|_| NOT_AN_IDENTITY)
            .and_then(|text| text.to_uppercase().parse())
    }

    /// The text `AGE-SECRET-KEY-1...`, for the store. Secret.
    #[must_use]
    pub fn to_text(&self) -> String {
        self.0.to_string().expose_secret().to_owned()
    }

    /// The public half.
    #[must_use]
    pub fn recipient(&self) -> Recipient {
        Recipient(self.0.to_public().to_string())
    }

    /// Writes an identity file, which any age implementation reads: comments, then the secret
    /// key. Secret.
    #[must_use]
    pub fn to_identity_file(&self) -> String {
        format!(
            "# Surefoot class identity: opens every hand-in of the class. Keep it secret.\n# public key: {}\n{}\n",
            self.recipient(),
            self.to_text()
        )
    }

    /// Reads an identity file of at most 4 KiB: one X25519 identity, lines that start with
    /// `#`, and blank lines. Fails for everything else.
    pub fn from_identity_file(text: &str) -> Result<Self, Refusal> {
        const MOST_BYTES: usize = 4096;
        if text.len() > MOST_BYTES {
            return Err(Refusal::TooLarge {
                found_bytes: text.len() as u64,
                most_bytes: MOST_BYTES as u64,
            });
        }
        let mut keys = text
            .lines()
            .map(str::trim)
            .filter(|line| !line.is_empty() && !line.starts_with('#'));
        match (keys.next(), keys.next()) {
            (Some(key), None) => key.parse().map_err(|_| Refusal::NotOurs),
            _ => Err(Refusal::NotOurs),
        }
    }

    pub(super) fn as_age(&self) -> &dyn age::Identity {
        &self.0
    }
}

const NOT_AN_IDENTITY: IdError = IdError {
    kind: "sealing identity",
    rule: "an age X25519 identity, AGE-SECRET-KEY-1...",
};

impl FromStr for SealingIdentity {
    type Err = IdError;
    fn from_str(text: &str) -> Result<Self, IdError> {
        text.parse().map(Self).map_err(|_| NOT_AN_IDENTITY)
    }
}

impl fmt::Debug for SealingIdentity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("SealingIdentity")
            .field(&self.recipient())
            .finish()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_rfc_8032_key_of_test_1_has_its_published_public_key() {
        // RFC 8032 section 7.1, TEST 1 (from memory; the values are widely printed).
        let seed: [u8; 32] = [
            0x9d, 0x61, 0xb1, 0x9d, 0xef, 0xfd, 0x5a, 0x60, 0xba, 0x84, 0x4a, 0xf4, 0x92, 0xec,
            0x2c, 0xc4, 0x44, 0x49, 0xc5, 0x69, 0x7b, 0x32, 0x69, 0x19, 0x70, 0x3b, 0xac, 0x03,
            0x1c, 0xae, 0x7f, 0x60,
        ];
        let public = [
            0xd7, 0x5a, 0x98, 0x01, 0x82, 0xb1, 0x0a, 0xb7, 0xd5, 0x4b, 0xfe, 0xd3, 0xc9, 0x64,
            0x07, 0x3a, 0x0e, 0xe1, 0x72, 0xf3, 0xda, 0xa6, 0x23, 0x25, 0xaf, 0x02, 0x1a, 0x68,
            0xf7, 0x07, 0x51, 0x1a,
        ];
        assert_eq!(SigningKey::from_seed(&seed).public().to_bytes(), public);
    }

    #[test]
    fn keys_come_back_from_their_text() {
        let signing = SigningKey::from_seed(&[7; 32]);
        assert_eq!(
            SigningKey::from_seed(&signing.seed()).public(),
            signing.public()
        );
        assert_eq!(
            PublicKey::from_bytes(&signing.public().to_bytes()).unwrap(),
            signing.public()
        );
        let sealing = SealingIdentity::from_bytes(&[9; 32]).unwrap();
        assert!(sealing.to_text().starts_with("AGE-SECRET-KEY-1"));
        let again: SealingIdentity = sealing.to_text().parse().unwrap();
        assert_eq!(again.recipient(), sealing.recipient());
        let file = sealing.to_identity_file();
        assert_eq!(
            SealingIdentity::from_identity_file(&file)
                .unwrap()
                .recipient(),
            sealing.recipient()
        );
        let two = format!("{file}{}\n", sealing.to_text());
        assert_eq!(
            SealingIdentity::from_identity_file(&two).unwrap_err(),
            Refusal::NotOurs
        );
        assert!(!format!("{sealing:?} {signing:?}").contains("SECRET"));
    }

    #[test]
    fn a_small_order_key_is_no_key() {
        // The neutral element, encoded as y = 1.
        let mut neutral = [0; 32];
        neutral[0] = 1;
        assert!(PublicKey::from_bytes(&neutral).is_err());
    }
}
