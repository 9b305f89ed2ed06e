//! A class pack as a file: signed and not sealed.

use super::Refusal;
use super::class_pack::ClassPack;
use super::content::{self, within};
use super::keys::SigningKey;
use super::limits::CLASS_PACK_CAPS;
use super::sealing::read_capped;
use super::strict_json::bad;
use std::io::Read;

/// Signs a class pack. The same pack and key give the same bytes.
///
/// # Errors
/// Fails if [`open_pack`] would refuse the file: if `teacher_key` is not that of `key`, or
/// the content breaks a rule or a cap.
pub fn sign_pack(pack: &ClassPack, key: &SigningKey) -> Result<Vec<u8>, Refusal> {
    if pack.teacher_key != key.public() {
        return Err(bad("teacher_key"));
    }
    within(&CLASS_PACK_CAPS, content::write(pack, key)?)
}

/// Opens a class pack. Checks its size, then the signature, then the content.
pub fn open_pack(bytes: impl Read) -> Result<OpenedPack, Refusal> {
    let file = read_capped(bytes, CLASS_PACK_CAPS.sealed_bytes)?;
    let (pack, opened) = content::read::<ClassPack>(&file)?;
    if pack.teacher_key != opened.key {
        return Err(bad("teacher_key"));
    }
    Ok(OpenedPack { pack, file })
}

/// A class pack that is authentic and well formed. Whether it fits the device is unknown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpenedPack {
    pack: ClassPack,
    file: Vec<u8>,
}

/// A class pack that fits the device. It may be used and stored.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CheckedPack(OpenedPack);

impl OpenedPack {
    /// The content, to be shown before joining.
    #[must_use]
    pub fn content(&self) -> &ClassPack {
        &self.pack
    }

    /// Accepts it as the first pack of a class. Its keys are trusted from now on, because the
    /// seat code that the student types has the signs of these keys.
    #[must_use]
    pub fn accept_first(self) -> CheckedPack {
        CheckedPack(self)
    }

    /// Accepts it in place of `held`, if it has a higher version and the same class, which
    /// means the same keys.
    pub fn accept_update(self, held: &ClassPack) -> Result<CheckedPack, Refusal> {
        if self.pack.class_id != held.class_id {
            return Err(Refusal::WrongClass);
        }
        if self.pack.version <= held.version {
            return Err(Refusal::NotNewer {
                found: self.pack.version,
                held: held.version,
            });
        }
        Ok(CheckedPack(self))
    }
}

impl CheckedPack {
    /// The content.
    #[must_use]
    pub fn content(&self) -> &ClassPack {
        &self.0.pack
    }

    /// The bytes of the file, for the store.
    #[must_use]
    pub fn file(&self) -> &[u8] {
        &self.0.file
    }

    /// The content without the file.
    #[must_use]
    pub fn into_content(self) -> ClassPack {
        self.0.pack
    }
}
