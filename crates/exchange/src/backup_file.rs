//! The backup: a whole store, sealed by a passphrase for its owner.
//!
//! Inside the seal are eight magic bytes, one byte for the kind of store (`S` for a
//! student's, `T` for a desk), one byte for the length of the store's id, the id,
//! and the SQLite file packed by zlib. A backup is not signed, because whoever knows
//! the passphrase could sign it.

use super::Refusal;
use super::content::within;
use super::limits::{BACKUP_CAPS, WORK_FACTOR};
use super::sealing::{read_capped, seal_with_passphrase, unseal_with_passphrase};
use super::strict_json::bad;
use flate2::Compression;
use flate2::read::ZlibDecoder;
use flate2::write::ZlibEncoder;
use std::fmt;
use std::io::{Read, Write as _};

const MAGIC: &[u8; 8] = b"SFBACK1\n";
const MAGIC_STEM: &[u8; 6] = b"SFBACK";

/// The longest id of a store, in bytes.
const LONGEST_ID_BYTES: usize = 40;

/// Whose store a backup holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BackupKind {
    /// A student.
    Student,
    /// The teacher.
    Desk,
}

/// The content of a backup.
#[derive(Clone, PartialEq, Eq)]
pub struct BackupFile {
    /// Whose store it is.
    pub kind: BackupKind,
    /// The id of the store on its device: ASCII letters, digits and hyphens.
    pub id: String,
    /// The SQLite file, whole.
    pub store: Vec<u8>,
}

impl fmt::Debug for BackupFile {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("BackupFile")
            .field("kind", &self.kind)
            .field("store_bytes", &self.store.len())
            .finish_non_exhaustive()
    }
}

fn is_id(id: &[u8]) -> bool {
    !id.is_empty()
        && id.len() <= LONGEST_ID_BYTES
        && id.iter().all(|b| b.is_ascii_alphanumeric() || *b == b'-')
}

/// Seals a backup. Takes about half a second, and 128 MiB in addition to the store.
///
/// # Errors
/// Fails with [`Refusal::BadContent`] at `passphrase` if the passphrase is too short, at `id`
/// if the id is not written as one, and if the store is larger than the caps.
pub fn seal_backup(backup: &BackupFile, passphrase: &str) -> Result<Vec<u8>, Refusal> {
    seal_backup_at(backup, passphrase, WORK_FACTOR)
}

pub(super) fn seal_backup_at(
    backup: &BackupFile,
    passphrase: &str,
    work_factor: u8,
) -> Result<Vec<u8>, Refusal> {
    if !is_id(backup.id.as_bytes()) {
        return Err(bad("id"));
    }
    let most_bytes = BACKUP_CAPS.unpacked_bytes;
    if backup.store.len() as u64 > most_bytes {
        return Err(Refusal::UnpacksTooLarge { most_bytes });
    }
    let mut plain = MAGIC.to_vec();
    plain.push(match backup.kind {
        BackupKind::Student => b'S',
        BackupKind::Desk => b'T',
    });
    plain.push(u8::try_from(backup.id.len()).map_err(|_| bad("id"))?);
    plain.extend_from_slice(backup.id.as_bytes());
    let mut packer = ZlibEncoder::new(plain, Compression::default());
    let plain = packer
        .write_all(&backup.store)
        .and_then(|()| packer.finish())
        .map_err(|_| bad("store"))?;
    let sealed = seal_with_passphrase(passphrase, work_factor, &plain)?;
    within(&BACKUP_CAPS, sealed)
}

/// Opens a backup with its passphrase. Whoever made it knew the passphrase. Whether the
/// SQLite file is sound is left to the store.
pub fn open_backup(bytes: impl Read, passphrase: &str) -> Result<BackupFile, Refusal> {
    let sealed = read_capped(bytes, BACKUP_CAPS.sealed_bytes)?;
    let plain = unseal_with_passphrase(&sealed, passphrase)?;
    drop(sealed);
    read_plain(&plain, BACKUP_CAPS.unpacked_bytes)
}

pub(super) fn read_plain(plain: &[u8], most_bytes: u64) -> Result<BackupFile, Refusal> {
    let Some(rest) = plain.strip_prefix(MAGIC.as_slice()) else {
        let newer = plain
            .strip_prefix(MAGIC_STEM.as_slice())
            .and_then(|rest| rest.first())
            .filter(|digit| (b'2'..=b'9').contains(digit));
        return Err(match newer {
            Some(digit) => Refusal::NewerFormat {
                found: u32::from(digit - b'0'),
                known: 1,
            },
            None => Refusal::NotOurs,
        });
    };
    let (kind, rest) = match rest.split_first() {
        Some((b'S', rest)) => (BackupKind::Student, rest),
        Some((b'T', rest)) => (BackupKind::Desk, rest),
        _ => return Err(bad("kind")),
    };
    let (length, rest) = rest.split_first().ok_or_else(|| bad("id"))?;
    let (id, packed) = rest
        .split_at_checked(usize::from(*length))
        .ok_or_else(|| bad("id"))?;
    if !is_id(id) {
        return Err(bad("id"));
    }
    let mut store = Vec::new();
    ZlibDecoder::new(packed)
        .take(most_bytes + 1)
        .read_to_end(&mut store)
        .map_err(|_| Refusal::Damaged)?;
    if store.len() as u64 > most_bytes {
        return Err(Refusal::UnpacksTooLarge { most_bytes });
    }
    Ok(BackupFile {
        kind,
        id: String::from_utf8_lossy(id).into_owned(),
        store,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const WORDS: &str = "seven quiet rivers";

    fn backup() -> BackupFile {
        BackupFile {
            kind: BackupKind::Desk,
            id: "desk".into(),
            store: (0..90_000u32).map(|n| (n % 251) as u8).collect(),
        }
    }

    fn sealed_plain(plain: &[u8]) -> Vec<u8> {
        seal_with_passphrase(WORDS, 4, plain).unwrap()
    }

    #[test]
    fn a_backup_comes_back_with_its_passphrase_and_not_without() {
        let sealed = seal_backup_at(&backup(), WORDS, 4).unwrap();
        assert_eq!(open_backup(sealed.as_slice(), WORDS).unwrap(), backup());
        assert_eq!(
            open_backup(sealed.as_slice(), "seven quiet river").unwrap_err(),
            Refusal::WrongPassphrase
        );
        for cut in [0, 10, 200, sealed.len() - 1] {
            assert!(open_backup(&sealed[..cut], WORDS).is_err(), "{cut}");
        }
        let mut flipped = sealed;
        let last = flipped.len() - 1;
        flipped[last] ^= 1;
        assert_eq!(
            open_backup(flipped.as_slice(), WORDS).unwrap_err(),
            Refusal::Damaged
        );
    }

    #[test]
    fn a_short_passphrase_and_a_name_that_leads_out_are_refused() {
        assert_eq!(
            seal_backup_at(&backup(), "seven q", 4).unwrap_err(),
            bad("passphrase")
        );
        for id in ["", "../x", "a b", "ü", &"a".repeat(41)] {
            let led = BackupFile {
                id: id.into(),
                ..backup()
            };
            assert_eq!(
                seal_backup_at(&led, WORDS, 4).unwrap_err(),
                bad("id"),
                "{id}"
            );
        }
        let mut plain = b"SFBACK1\nS\x04../x".to_vec();
        plain.extend_from_slice(&[0x78, 0x9c]);
        assert_eq!(
            open_backup(sealed_plain(&plain).as_slice(), WORDS).unwrap_err(),
            bad("id")
        );
    }

    #[test]
    fn other_contents_of_a_seal_are_told_apart() {
        let refused =
            |plain: &[u8]| open_backup(sealed_plain(plain).as_slice(), WORDS).unwrap_err();
        assert_eq!(refused(b"SFCARR1\n rest"), Refusal::NotOurs);
        assert_eq!(
            refused(b"SFBACK2\nS\x01a"),
            Refusal::NewerFormat { found: 2, known: 1 }
        );
        assert_eq!(refused(b"SFBACK1\nQ\x01a"), bad("kind"));
        assert_eq!(refused(b"SFBACK1\nS\x09a"), bad("id"));
        assert_eq!(refused(b"SFBACK1\nS\x01anot zlib"), Refusal::Damaged);
        assert_eq!(
            open_backup(&b"SQLite format 3"[..], WORDS),
            Err(Refusal::NotOurs)
        );
    }

    #[test]
    fn a_store_that_unpacks_without_end_is_stopped_at_the_cap() {
        let mut packer = ZlibEncoder::new(b"SFBACK1\nS\x01a".to_vec(), Compression::best());
        let zeros = vec![0; 1 << 20];
        for _ in 0..9 {
            packer.write_all(&zeros).unwrap();
        }
        let plain = packer.finish().unwrap();
        assert!(plain.len() < 20_000);
        let most_bytes = 8 << 20;
        assert_eq!(
            read_plain(&plain, most_bytes).unwrap_err(),
            Refusal::UnpacksTooLarge { most_bytes }
        );
    }
}
