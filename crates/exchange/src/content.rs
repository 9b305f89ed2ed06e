//! The way of a file's content into a signed frame and back, the same for all files that
//! are signed.

use super::Refusal;
use super::frame::{self, Kind, Opened};
use super::keys::SigningKey;
use super::limits::Caps;
use super::strict_json::{self, bad};
use serde::Serialize;
use serde::de::DeserializeOwned;

/// The content of one kind of file.
pub(super) trait Content: Serialize + DeserializeOwned {
    /// The kind of its frame.
    const KIND: Kind;
    /// The newest format that this program knows.
    const FORMAT: u32;
    /// What a reader accepts.
    const CAPS: Caps;
    /// The smallest size of its frame in bytes, which larger frames double; `None` if the
    /// frame is not padded.
    const STEP_BYTES: Option<usize>;

    /// Checks the rules that the types do not express. Fails with the place of the fault.
    fn check_content(&self) -> Result<(), Refusal>;
}

/// Writes content into a frame signed by `key`. Fails if a reader would refuse the content: the
/// caps are checked on the JSON, all other rules on the values that it was written from.
pub(super) fn write<T: Content>(content: &T, key: &SigningKey) -> Result<Vec<u8>, Refusal> {
    content.check_content()?;
    let json = serde_json::to_vec(content).map_err(|_| bad("content"))?;
    let most_bytes = T::CAPS.unpacked_bytes;
    if json.len() as u64 > most_bytes {
        return Err(Refusal::UnpacksTooLarge { most_bytes });
    }
    strict_json::check_caps(&json, &T::CAPS)?;
    frame::write(T::KIND, &json, key, T::STEP_BYTES)
}

/// Reads the content of a frame, with the signer's key and the signed bytes.
pub(super) fn read<T: Content>(frame: &[u8]) -> Result<(T, Opened), Refusal> {
    let padded = T::STEP_BYTES.is_some();
    let opened = frame::read(T::KIND, frame, padded, T::CAPS.unpacked_bytes)?;
    let content: T = strict_json::read(&opened.json, &T::CAPS, T::FORMAT)?;
    content.check_content()?;
    Ok((content, opened))
}

/// Returns the bytes of a file that was made, if a reader accepts as many.
pub(super) fn within(caps: &Caps, file: Vec<u8>) -> Result<Vec<u8>, Refusal> {
    let found_bytes = file.len() as u64;
    let most_bytes = caps.sealed_bytes;
    if found_bytes > most_bytes {
        return Err(Refusal::TooLarge {
            found_bytes,
            most_bytes,
        });
    }
    Ok(file)
}
