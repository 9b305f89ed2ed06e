//! What the first bytes of a file say about its kind, for a file whose name says nothing.

use super::frame::Kind;
use super::sealing::VERSION_LINE;

/// First bytes that [`FileHead::of`] needs.
pub const HEAD_BYTES: usize = 64;

/// The kind of a file as far as its first bytes say it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileHead {
    /// A class pack.
    ClassPack,
    /// Sealed for a class, as hand-ins are.
    SealedForClass,
    /// Sealed with a passphrase: a carry file, a backup, a class key or a transfer.
    SealedByPassphrase,
    /// A zip.
    Zip,
    /// Nothing that this program writes.
    Other,
}

impl FileHead {
    /// Returns what the first [`HEAD_BYTES`] of a file say.
    #[must_use]
    pub fn of(head: &[u8]) -> Self {
        if head.starts_with(Kind::ClassPack.magic()) {
            Self::ClassPack
        } else if head.starts_with(b"PK\x03\x04") || head.starts_with(b"PK\x05\x06") {
            Self::Zip
        } else if let Some(recipient) = head.strip_prefix(VERSION_LINE) {
            if recipient.starts_with(b"-> scrypt ") {
                Self::SealedByPassphrase
            } else {
                Self::SealedForClass
            }
        } else {
            Self::Other
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sealing::{seal_for, seal_with_passphrase};
    use crate::{SealingIdentity, SigningKey};

    #[test]
    fn each_kind_is_known_by_its_first_bytes() {
        let key = SealingIdentity::from_bytes(&[7; 32]).unwrap();
        let signer = SigningKey::from_seed(&[7; 32]);
        let frame = crate::frame::write(Kind::ClassPack, b"{}", &signer, None);
        let files = [
            (frame.unwrap(), FileHead::ClassPack),
            (
                seal_for(&key.recipient(), b"x").unwrap(),
                FileHead::SealedForClass,
            ),
            (
                seal_with_passphrase("seven quiet rivers", 1, b"x").unwrap(),
                FileHead::SealedByPassphrase,
            ),
            (b"PK\x03\x04\x14\0".to_vec(), FileHead::Zip),
            (b"a cat".to_vec(), FileHead::Other),
            (Vec::new(), FileHead::Other),
        ];
        for (file, wanted) in files {
            let head = &file[..file.len().min(HEAD_BYTES)];
            assert_eq!(FileHead::of(head), wanted, "{head:?}");
        }
    }
}
