//! A sealed file that a person picked, kept until its passphrase is typed.

use super::Context;
use super::file_dialogs::{FileKind, FileSource, Sealed};
use crate::error::CallError;
use crate::escaped::escaped;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use surefoot_exchange::{Caps, Refusal};
use surefoot_record::Thing;
use ts_rs::TS;

/// A sealed file that a person picked, before its passphrase is typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PickedSealed {
    /// Its number in the call that opens it.
    pub picked: u32,
    /// Its name.
    pub file_name: String,
}

/// The opening of a picked sealed file.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OpenSealed {
    /// The picked file.
    pub picked: u32,
    /// Its passphrase.
    pub passphrase: String,
}

impl Context {
    /// Lets the person pick a sealed file, and keeps it until its passphrase is typed.
    pub(crate) fn pick_sealed(
        &self,
        kind: FileKind,
        caps: &Caps,
    ) -> Result<Option<PickedSealed>, CallError> {
        let Some(source) = self.dialogs.pick_file(kind)? else {
            return Ok(None);
        };
        let file_name = source.name().to_owned();
        let bytes = source.read(caps.sealed_bytes)?;
        Ok(Some(self.keep(&file_name, Sealed::Read(bytes))))
    }

    /// Opens the sealed file picked last.
    pub(crate) fn open_sealed<T>(
        &self,
        asked: &OpenSealed,
        open: impl FnOnce(&[u8], &str) -> Result<T, Refusal>,
    ) -> Result<T, CallError> {
        let taken = lock(&self.sealed).take();
        let bytes = match taken {
            Some((number, sealed)) if number == asked.picked => match sealed {
                Sealed::Waiting(source, most_bytes) => source.read(most_bytes)?,
                Sealed::Read(bytes) => bytes,
            },
            other => {
                *lock(&self.sealed) = other;
                return Err(CallError::NotFound { what: Thing::File });
            }
        };
        let opened = open(&bytes, &asked.passphrase);
        if opened.is_err() {
            // The person can type the passphrase again.
            *lock(&self.sealed) = Some((asked.picked, Sealed::Read(bytes)));
        }
        Ok(opened?)
    }

    /// Keeps a sealed file that another program opened with this one, until its passphrase is
    /// typed. It is read only then, so that no other program decides how much this one reads.
    pub(crate) fn keep_opened(&self, source: FileSource, caps: &Caps) -> PickedSealed {
        let file_name = source.name().to_owned();
        self.keep(&file_name, Sealed::Waiting(source, caps.sealed_bytes))
    }

    fn keep(&self, file_name: &str, file: Sealed) -> PickedSealed {
        let mut sealed = lock(&self.sealed);
        let picked = sealed.as_ref().map_or(1, |(number, _)| number + 1);
        let file_name = escaped(file_name, &[]).into_owned();
        *sealed = Some((picked, file));
        PickedSealed { picked, file_name }
    }
}
