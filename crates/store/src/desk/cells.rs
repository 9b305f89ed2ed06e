//! Sealed cells: the columns of the desk that hold names or secret keys.
//!
//! A cell is a random nonce of 24 bytes and what XChaCha20-Poly1305 makes of its content under
//! the data key of the desk. The content is padded to a multiple of 32 bytes (ISO/IEC 7816-4),
//! because the length of a name can tell whose it is. Table, column and row are authenticated
//! with it, so that a cell opens only where it was written.

use super::super::StoreError;
use chacha20poly1305::aead::{Aead as _, OsRng, Payload};
use chacha20poly1305::{AeadCore as _, KeyInit as _, XChaCha20Poly1305, XNonce};
use rusqlite::Row;
use rusqlite::types::Type;
use std::fmt::Display;
use zeroize::Zeroizing;

/// Bytes of a nonce.
const NONCE_BYTES: usize = 24;

/// The content of a cell is padded to a multiple of this.
const BLOCK_BYTES: usize = 32;

/// Ends the content before the zeros that pad it.
const END: u8 = 0x80;

/// Begins what is authenticated with a cell.
const PURPOSE: &str = "surefoot desk cell v1";

/// A column of sealed cells.
pub(super) struct SealedColumn {
    pub(super) table: &'static str,
    pub(super) column: &'static str,
    /// The columns that name a row.
    pub(super) row: &'static [&'static str],
}

pub(super) const CLASS_IDENTITY: SealedColumn = SealedColumn {
    table: "class",
    column: "sealing_identity",
    row: &["id"],
};
pub(super) const CLASS_SEED: SealedColumn = SealedColumn {
    table: "class",
    column: "signing_seed",
    row: &["id"],
};
pub(super) const SEAT_TOKEN: SealedColumn = SealedColumn {
    table: "seat",
    column: "token",
    row: &["class", "number"],
};
pub(super) const SEAT_NAME: SealedColumn = SealedColumn {
    table: "seat",
    column: "name",
    row: &["class", "number"],
};
pub(super) const FILE_NAME: SealedColumn = SealedColumn {
    table: "import_file",
    column: "file_name",
    row: &["import", "place"],
};
pub(super) const OWN_REPORT: SealedColumn = SealedColumn {
    table: "own_import",
    column: "report",
    row: &["class", "number"],
};
pub(super) const TAUGHT_NOTE: SealedColumn = SealedColumn {
    table: "taught_again",
    column: "note",
    row: &["class", "id"],
};
/// What a hand-in says includes the token of its seat.
pub(super) const HAND_IN: SealedColumn = SealedColumn {
    table: "hand_in",
    column: "content",
    row: &["device", "content_hash"],
};

/// Every column of sealed cells.
pub(super) const SEALED: [SealedColumn; 8] = [
    CLASS_IDENTITY,
    CLASS_SEED,
    SEAT_TOKEN,
    SEAT_NAME,
    FILE_NAME,
    OWN_REPORT,
    TAUGHT_NOTE,
    HAND_IN,
];

impl SealedColumn {
    /// What is authenticated with the cell of a row.
    fn place(&self, row: &[&dyn Display]) -> String {
        let mut place = format!("{PURPOSE}\0{}\0{}", self.table, self.column);
        for part in row {
            place.push('\0');
            place += &part.to_string();
        }
        place
    }

    fn unreadable(&self, why: &str) -> StoreError {
        StoreError::unreadable(
            "sealed cell",
            format!("{}.{}: {why}", self.table, self.column),
        )
    }
}

/// The key that seals the cells of a desk. Its memory is cleared when it is dropped.
#[derive(Clone)]
pub struct DataKey {
    /// A random number that tells this key from others.
    pub(super) number: [u8; 16],
    secret: Zeroizing<[u8; 32]>,
}

impl DataKey {
    /// Draws a key from the operating system.
    pub(super) fn draw() -> Self {
        let secret = Zeroizing::new(XChaCha20Poly1305::generate_key(&mut OsRng).into());
        // A nonce is a random number too, and longer than needed.
        let drawn = XChaCha20Poly1305::generate_nonce(&mut OsRng);
        let mut number = [0; 16];
        number
            .iter_mut()
            .zip(drawn)
            .for_each(|(to, from)| *to = from);
        Self { number, secret }
    }

    pub(super) fn of(number: [u8; 16], secret: &[u8]) -> Option<Self> {
        let secret = Zeroizing::new(secret.try_into().ok()?);
        Some(Self { number, secret })
    }

    pub(super) fn secret(&self) -> &[u8; 32] {
        &self.secret
    }

    /// Seals the content of a cell.
    pub(super) fn seal(
        &self,
        column: &SealedColumn,
        row: &[&dyn Display],
        content: &[u8],
    ) -> Result<Vec<u8>, StoreError> {
        let padded_bytes = (content.len() / BLOCK_BYTES + 1) * BLOCK_BYTES;
        let mut padded = Zeroizing::new(Vec::with_capacity(padded_bytes));
        padded.extend_from_slice(content);
        padded.push(END);
        padded.resize(padded_bytes, 0);
        seal(&self.secret, &column.place(row), &padded).ok_or_else(|| column.unreadable("too long"))
    }

    /// Opens a cell.
    ///
    /// # Errors
    /// [`StoreError::Unreadable`] if the cell was changed or is of another row or key.
    pub(super) fn open(
        &self,
        column: &SealedColumn,
        row: &[&dyn Display],
        cell: &[u8],
    ) -> Result<Zeroizing<Vec<u8>>, StoreError> {
        let mut content = open(&self.secret, &column.place(row), cell)
            .ok_or_else(|| column.unreadable("changed, or of another row or key"))?;
        let end = content.iter().rposition(|byte| *byte != 0);
        match end {
            Some(end) if content.get(end) == Some(&END) => content.truncate(end),
            _ => return Err(column.unreadable("padding")),
        }
        Ok(content)
    }

    /// Opens the cell of a text in a row that SQLite returned.
    pub(super) fn text_at(
        &self,
        row: &Row<'_>,
        index: usize,
        column: &SealedColumn,
        place: &[&dyn Display],
    ) -> rusqlite::Result<String> {
        String::from_utf8(self.bytes_at(row, index, column, place)?)
            .map_err(|_| at_column(index, column.unreadable("not UTF-8")))
    }

    /// Opens the cell of bytes in a row that SQLite returned.
    pub(super) fn bytes_at(
        &self,
        row: &Row<'_>,
        index: usize,
        column: &SealedColumn,
        place: &[&dyn Display],
    ) -> rusqlite::Result<Vec<u8>> {
        let cell = row.get_ref(index)?.as_blob()?;
        self.open(column, place, cell)
            .map(|content| content.to_vec())
            .map_err(|error| at_column(index, error))
    }
}

/// The error of a cell as one of SQLite's.
pub(super) fn at_column(index: usize, error: StoreError) -> rusqlite::Error {
    rusqlite::Error::FromSqlConversionFailure(index, Type::Blob, Box::new(error))
}

/// Seals bytes with a random nonce, which is put before them.
pub(super) fn seal(secret: &[u8; 32], place: &str, content: &[u8]) -> Option<Vec<u8>> {
    let nonce = XChaCha20Poly1305::generate_nonce(&mut OsRng);
    let payload = Payload {
        msg: content,
        aad: place.as_bytes(),
    };
    let sealed = XChaCha20Poly1305::new(secret.into())
        .encrypt(&nonce, payload)
        .ok()?;
    Some([nonce.as_slice(), &sealed].concat())
}

/// Opens what [`seal`] made.
pub(super) fn open(secret: &[u8; 32], place: &str, sealed: &[u8]) -> Option<Zeroizing<Vec<u8>>> {
    let (nonce, sealed) = sealed.split_at_checked(NONCE_BYTES)?;
    let payload = Payload {
        msg: sealed,
        aad: place.as_bytes(),
    };
    XChaCha20Poly1305::new(secret.into())
        .decrypt(XNonce::from_slice(nonce), payload)
        .ok()
        .map(Zeroizing::new)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cell_opens_only_with_its_key_in_its_row_and_unchanged() {
        let key = DataKey::draw();
        for content in [&b""[..], b"Amara", &[0x80; 31], &[0; 32], &[7; 100]] {
            let cell = key.seal(&SEAT_NAME, &[&"class", &3], content).unwrap();
            assert_eq!(
                cell.len() % BLOCK_BYTES,
                (NONCE_BYTES + 16) % BLOCK_BYTES,
                "padded"
            );
            let opened = key.open(&SEAT_NAME, &[&"class", &3], &cell).unwrap();
            assert_eq!(opened.as_slice(), content);
            assert!(key.open(&SEAT_NAME, &[&"class", &4], &cell).is_err());
            assert!(key.open(&SEAT_NAME, &[&"class3", &""], &cell).is_err());
            assert!(key.open(&SEAT_TOKEN, &[&"class", &3], &cell).is_err());
            let other = DataKey::draw();
            assert!(other.open(&SEAT_NAME, &[&"class", &3], &cell).is_err());
            for at in 0..cell.len() {
                let mut changed = cell.clone();
                changed[at] ^= 1;
                assert!(key.open(&SEAT_NAME, &[&"class", &3], &changed).is_err());
            }
            for cut in 0..cell.len() {
                assert!(
                    key.open(&SEAT_NAME, &[&"class", &3], &cell[..cut]).is_err(),
                    "{cut}"
                );
            }
        }
        let cell = || key.seal(&SEAT_NAME, &[&"class", &3], b"Amara").unwrap();
        assert_ne!(cell(), cell(), "the same name gives another cell");
    }

    #[test]
    fn names_of_usual_length_give_cells_of_one_length() {
        let key = DataKey::draw();
        let bytes = |name: &str| {
            let cell = key.seal(&SEAT_NAME, &[&"class", &1], name.as_bytes());
            cell.unwrap().len()
        };
        assert_eq!(bytes("Bo"), bytes("Maximiliana Vandenbroucke"));
    }
}
