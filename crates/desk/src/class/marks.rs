//! Keyed digests in the log of share-safe tables: without the key, which is made from the class's
//! secrets, nobody can find the seat or the rating behind one.

use super::open::OpenClass;
use crate::error::{DeskError, faulty};
use chrono::NaiveDate;
use hmac::{Hmac, Mac};
use sha2::Sha256;
use std::fmt::Write as _;
use surefoot_catalogue::rating::Confidence;
use surefoot_store::desk::ReleasedRating;

/// Makes the marks of a class, or those that replace them.
pub(crate) struct Marks(Vec<u8>);

impl Marks {
    /// The marks of a class.
    pub(crate) fn of(class: &OpenClass) -> Result<Self, DeskError> {
        let key = digest(&class.row.signing_seed, &["surefoot share marks v1"])?;
        Ok(Self(key.into_bytes()))
    }

    /// The mark of the seat with a token.
    pub(crate) fn seat(&self, token: &str) -> Result<String, DeskError> {
        digest(&self.0, &["seat", token])
    }

    /// The mark of a seat's ratings of a concept on a date.
    pub(crate) fn day(
        &self,
        token: &str,
        concept: &str,
        date: NaiveDate,
    ) -> Result<String, DeskError> {
        digest(&self.0, &["day", token, concept, &date.to_string()])
    }

    /// The mark of a rating. It differs whenever the student rates anew.
    pub(crate) fn rating(
        &self,
        token: &str,
        concept: &str,
        date: NaiveDate,
        sequence: u32,
        rating: Confidence,
    ) -> Result<String, DeskError> {
        let (date, sequence) = (date.to_string(), sequence.to_string());
        let rating = rating.index().to_string();
        digest(
            &self.0,
            &["rating", token, concept, &date, &sequence, &rating],
        )
    }
}

/// Returns the mark that replaces that of a removed seat. `seed` is random and is kept nowhere.
pub(super) fn replaced_mark(seed: &[u8; 32], mark: &str) -> Result<String, DeskError> {
    digest(seed, &["mark", mark])
}

/// Returns what replaces a rating of a removed seat: equal where it was equal, so that the rule of
/// releases still holds, and without anything that leads back to the student.
pub(super) fn replaced_rating(
    seed: &[u8; 32],
    rating: ReleasedRating,
) -> Result<ReleasedRating, DeskError> {
    let turned = digest(seed, &["turn", &rating.day_mark])?.as_bytes() < b"8".as_slice();
    Ok(ReleasedRating {
        seat_mark: replaced_mark(seed, &rating.seat_mark)?,
        day_mark: replaced_mark(seed, &rating.day_mark)?,
        mark: replaced_mark(seed, &rating.mark)?,
        low: rating.low != turned,
        ..rating
    })
}

/// HMAC-SHA256 over texts and their lengths: the first 16 bytes, hexadecimal.
fn digest(key: &[u8], texts: &[&str]) -> Result<String, DeskError> {
    let mut mac = Hmac::<Sha256>::new_from_slice(key).map_err(faulty)?;
    for text in texts {
        mac.update(&text.len().to_be_bytes());
        mac.update(text.as_bytes());
    }
    let mut written = String::new();
    for byte in mac.finalize().into_bytes().iter().take(16) {
        let _ = write!(written, "{byte:02x}");
    }
    Ok(written)
}
