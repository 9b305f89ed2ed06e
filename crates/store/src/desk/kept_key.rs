//! The data key, and how the store keeps it: as it is, or sealed by a key that argon2id makes of
//! a passphrase.

use super::super::StoreError;
use super::cells::{DataKey, seal};
use argon2::{Algorithm, Argon2, Params, Version};
use chacha20poly1305::aead::OsRng;
use chacha20poly1305::aead::rand_core::RngCore as _;
use rusqlite::{Connection, Row, params};
use std::fmt::Write as _;
use zeroize::Zeroizing;

/// Memory and passes of argon2id: twice those of the class signs, about half a second.
const MEMORY_KIB: u32 = 128 * 1024;
const PASSES: u32 = 3;

/// More memory or passes than this program makes; a changed store must not ask for more.
const MOST_MEMORY_KIB: u32 = 1024 * 1024;
const MOST_PASSES: u32 = 16;

/// The lock of a desk.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LockRow {
    /// Wrong passphrases in a row.
    pub wrong_tries: u32,
    /// The minutes without use after which the desk locks itself; `None`: never.
    pub idle_minutes: Option<u32>,
}

/// How argon2id makes the key that seals a data key.
#[derive(Clone, Copy)]
pub(super) struct Stretch {
    salt: [u8; 16],
    memory_kib: u32,
    passes: u32,
}

/// The row of the data key.
#[derive(Clone)]
pub(super) struct KeyRow {
    pub(super) number: [u8; 16],
    pub(super) secret: Zeroizing<Vec<u8>>,
    pub(super) stretch: Option<Stretch>,
    wrong_tries: u32,
    idle_minutes: Option<u32>,
}

/// A data key, and how a store keeps it.
#[derive(Clone)]
pub struct KeptKey {
    pub(super) key: DataKey,
    pub(super) row: KeyRow,
}

impl Stretch {
    pub(super) fn key(&self, passphrase: &str) -> Result<Zeroizing<[u8; 32]>, StoreError> {
        let faulty =
            |error: argon2::Error| StoreError::unreadable("lock of the desk", error.to_string());
        if self.memory_kib > MOST_MEMORY_KIB || self.passes > MOST_PASSES {
            return Err(StoreError::unreadable("lock of the desk", "too much work"));
        }
        let params = Params::new(self.memory_kib, self.passes, 1, Some(32)).map_err(faulty)?;
        let mut key = Zeroizing::new([0; 32]);
        Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
            .hash_password_into(passphrase.as_bytes(), &self.salt, key.as_mut())
            .map_err(faulty)?;
        Ok(key)
    }

    /// What is authenticated with the data key `number`.
    pub(super) fn place(&self, number: &[u8; 16]) -> String {
        let mut place = "surefoot desk key v1\0".to_owned();
        for byte in number {
            let _ = write!(place, "{byte:02x}");
        }
        let _ = write!(place, "\0{}\0{}", self.memory_kib, self.passes);
        place
    }
}

impl KeptKey {
    /// Draws a data key that is kept without a lock.
    #[must_use]
    pub fn open() -> Self {
        let key = DataKey::draw();
        let row = KeyRow {
            number: key.number,
            secret: Zeroizing::new(key.secret().to_vec()),
            stretch: None,
            wrong_tries: 0,
            idle_minutes: None,
        };
        Self { key, row }
    }

    /// Draws a data key that is kept under a passphrase. Takes about half a second and
    /// 128 MiB.
    pub fn locked(passphrase: &str, idle_minutes: Option<u32>) -> Result<Self, StoreError> {
        let key = DataKey::draw();
        let mut salt = [0; 16];
        OsRng.fill_bytes(&mut salt);
        let stretch = Stretch {
            salt,
            memory_kib: MEMORY_KIB,
            passes: PASSES,
        };
        let guard = stretch.key(passphrase)?;
        let secret = seal(&guard, &stretch.place(&key.number), key.secret())
            .ok_or_else(|| StoreError::unreadable("data key", "too long"))?;
        let row = KeyRow {
            number: key.number,
            secret: Zeroizing::new(secret),
            stretch: Some(stretch),
            wrong_tries: 0,
            idle_minutes,
        };
        Ok(Self { key, row })
    }

    /// The data key.
    #[must_use]
    pub fn key(&self) -> &DataKey {
        &self.key
    }
}

impl DataKey {
    /// The number that tells this key from others.
    #[must_use]
    pub fn number(&self) -> [u8; 16] {
        self.number
    }
}

const KEY: &str =
    "SELECT number, secret, salt, memory_kib, passes, wrong_tries, idle_minutes FROM data_key";

fn key_at(row: &Row<'_>) -> rusqlite::Result<KeyRow> {
    let stretch = match row.get::<_, Option<[u8; 16]>>(2)? {
        None => None,
        Some(salt) => Some(Stretch {
            salt,
            memory_kib: row.get(3)?,
            passes: row.get(4)?,
        }),
    };
    Ok(KeyRow {
        number: row.get(0)?,
        secret: Zeroizing::new(row.get(1)?),
        stretch,
        wrong_tries: row.get(5)?,
        idle_minutes: row.get(6)?,
    })
}

pub(super) fn key_row(connection: &Connection) -> Result<KeyRow, StoreError> {
    Ok(connection.prepare_cached(KEY)?.query_row([], key_at)?)
}

pub(super) fn put_key_row(
    connection: &Connection,
    row: &KeyRow,
    replaces: Option<[u8; 16]>,
) -> Result<(), StoreError> {
    connection.execute(
        "INSERT OR REPLACE INTO data_key (id, number, secret, salt, memory_kib, passes, wrong_tries,
           idle_minutes, replaces) VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
        params![
            row.number,
            row.secret.as_slice(),
            row.stretch.map(|stretch| stretch.salt),
            row.stretch.map(|stretch| stretch.memory_kib),
            row.stretch.map(|stretch| stretch.passes),
            row.wrong_tries,
            row.idle_minutes,
            replaces
        ],
    )?;
    Ok(())
}

/// Gives a new desk its first data key.
pub(super) fn first_key(connection: &Connection) -> Result<(), StoreError> {
    put_key_row(connection, &KeptKey::open().row, None)
}

impl KeyRow {
    pub(super) fn lock(&self) -> Option<LockRow> {
        self.stretch.map(|_| LockRow {
            wrong_tries: self.wrong_tries,
            idle_minutes: self.idle_minutes,
        })
    }

    /// The data key of a row without a lock.
    pub(super) fn key(&self) -> Result<DataKey, StoreError> {
        match self.stretch {
            Some(_) => Err(StoreError::Locked),
            None => DataKey::of(self.number, &self.secret)
                .ok_or_else(|| StoreError::unreadable("data key", "its length")),
        }
    }
}
