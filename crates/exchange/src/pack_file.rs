//! A class pack as a file: signed, not sealed; and taking a newer one.

use super::Refusal;
use super::class_pack::{CLASS_PACK_FORMAT, ClassPack};
use super::frame::{self, Kind};
use super::keys::SigningKey;
use super::limits::{CLASS_PACK_CAPS, Caps};
use super::sealing::read_capped;
use super::strict_json::{self, bad};
use std::io::Read;

/// Signs a class pack. The same pack and key give the same bytes.
///
/// # Errors
/// [`Refusal`] when this pack would not be taken: `teacher_key` is not `key`'s,
/// the content breaks a rule or a cap.
pub fn sign_pack(pack: &ClassPack, key: &SigningKey) -> Result<Vec<u8>, Refusal> {
    if pack.teacher_key != key.public() {
        return Err(bad("teacher_key"));
    }
    let json = serde_json::to_vec(pack).map_err(|_| bad("content"))?;
    let caps = &CLASS_PACK_CAPS;
    if json.len() as u64 > caps.unpacked_bytes {
        return Err(Refusal::UnpacksTooLarge {
            most_bytes: caps.unpacked_bytes,
        });
    }
    strict_json::read::<ClassPack>(&json, caps, CLASS_PACK_FORMAT)?.check_content()?;
    let file = frame::write(Kind::ClassPack, &json, key, None)?;
    if file.len() as u64 > caps.sealed_bytes {
        return Err(Refusal::TooLarge {
            found_bytes: file.len() as u64,
            most_bytes: caps.sealed_bytes,
        });
    }
    Ok(file)
}

/// Opens a class pack: size, signature, then content.
///
/// # Errors
/// [`Refusal`], by name.
pub fn open_pack(bytes: impl Read, caps: &Caps) -> Result<OpenedPack, Refusal> {
    let file = read_capped(bytes, caps.sealed_bytes)?;
    let opened = frame::read(Kind::ClassPack, &file, false, caps.unpacked_bytes)?;
    let pack: ClassPack = strict_json::read(&opened.json, caps, CLASS_PACK_FORMAT)?;
    pack.check_content()?;
    if pack.teacher_key != opened.key {
        return Err(bad("teacher_key"));
    }
    Ok(OpenedPack { pack, file })
}

/// Authentic and well-formed; not yet known to be for this device.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpenedPack {
    pack: ClassPack,
    file: Vec<u8>,
}

/// May be used and stored.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CheckedPack(OpenedPack);

impl OpenedPack {
    /// What it says, to show before joining.
    #[must_use]
    pub fn content(&self) -> &ClassPack {
        &self.pack
    }

    /// Takes it as a class's first pack: its key is trusted from now on. The
    /// seat code typed at joining is what ties it to the teacher.
    #[must_use]
    pub fn accept_first(self) -> CheckedPack {
        CheckedPack(self)
    }

    /// Takes it in place of `held`: same class, same teacher key, higher version.
    ///
    /// # Errors
    /// [`Refusal::WrongClass`], [`Refusal::OtherTeacher`], [`Refusal::NotNewer`].
    pub fn accept_update(self, held: &ClassPack) -> Result<CheckedPack, Refusal> {
        if self.pack.class_id != held.class_id {
            return Err(Refusal::WrongClass);
        }
        if self.pack.teacher_key != held.teacher_key {
            return Err(Refusal::OtherTeacher);
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
    /// What it says.
    #[must_use]
    pub fn content(&self) -> &ClassPack {
        &self.0.pack
    }

    /// The file as it came, for the store.
    #[must_use]
    pub fn file(&self) -> &[u8] {
        &self.0.file
    }

    /// The content alone.
    #[must_use]
    pub fn into_content(self) -> ClassPack {
        self.0.pack
    }
}
