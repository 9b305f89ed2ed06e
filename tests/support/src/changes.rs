//! Changed bytes, for the tests of every reader of bytes from outside.
//!
//! `EXCHANGE_CASES=1000000` sets how many changed files a test tries.

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::Index;

/// Returns how many changed files each test tries.
pub fn cases() -> u32 {
    std::env::var("EXCHANGE_CASES")
        .ok()
        .and_then(|text| text.parse().ok())
        .unwrap_or(1_000)
}

/// Returns a configuration with that many cases, which writes no file of failed cases.
pub fn long() -> ProptestConfig {
    ProptestConfig {
        failure_persistence: None,
        ..ProptestConfig::with_cases(cases())
    }
}

/// [`long`] with a part of the cases, one in `of`.
pub fn fewer(of: u32) -> ProptestConfig {
    ProptestConfig {
        cases: (cases() / of).max(1),
        ..long()
    }
}

/// One change of some bytes.
#[derive(Debug, Clone)]
pub enum Change {
    Flip(Index, u8),
    Put(Index, Vec<u8>),
    Insert(Index, Vec<u8>),
    Remove(Index, usize),
    Repeat(Index, usize, usize),
    Cut(Index),
}

/// Pieces that readers often fail on: words of the formats, extreme numbers, and markup.
const PIECES: &[&str] = &[
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "\"",
    "\\",
    "\\u0000",
    "\\ud800",
    "null",
    "true",
    "-1",
    "0",
    "1e999",
    "-0",
    "4294967296",
    "18446744073709551616",
    "0.1",
    "NaN",
    "Infinity",
    "\"format\":",
    "\"format\":9",
    "\"sequence\":4294967295",
    "\"2026-09-31\"",
    "\"-999999-01-01\"",
    "\u{feff}",
    "\u{202e}",
    "<script>",
    "=cmd()",
    "../../x",
    "age-encryption.org/v1\n",
    "-> X25519 ",
    "-> ",
    "\n--- ",
    "scrypt",
    "SFPACK1\n",
    "SFHAND1\n",
    "SFHAND9\n",
    "x\u{9c}",
    "AGE-SECRET-KEY-1",
];

fn any_piece() -> impl Strategy<Value = Vec<u8>> {
    prop_oneof![
        prop::sample::select(PIECES).prop_map(|piece| piece.as_bytes().to_vec()),
        vec(any::<u8>(), 1..6),
    ]
}

fn any_change() -> impl Strategy<Value = Change> {
    prop_oneof![
        (any::<Index>(), 0..8u8).prop_map(|(at, bit)| Change::Flip(at, bit)),
        (any::<Index>(), any_piece()).prop_map(|(at, piece)| Change::Put(at, piece)),
        (any::<Index>(), any_piece()).prop_map(|(at, piece)| Change::Insert(at, piece)),
        (any::<Index>(), 1..60usize).prop_map(|(at, length)| Change::Remove(at, length)),
        (any::<Index>(), 1..200usize, 1..50usize)
            .prop_map(|(at, length, times)| Change::Repeat(at, length, times)),
        any::<Index>().prop_map(Change::Cut),
    ]
}

/// Returns a few changes in the order in which they are made.
pub fn any_changes() -> impl Strategy<Value = Vec<Change>> {
    vec(any_change(), 1..5)
}

/// Returns the bytes after the changes.
pub fn changed(bytes: &[u8], changes: &[Change]) -> Vec<u8> {
    let mut bytes = bytes.to_vec();
    for change in changes {
        if bytes.is_empty() {
            break;
        }
        let length = bytes.len();
        match change {
            Change::Flip(at, bit) => bytes[at.index(length)] ^= 1 << bit,
            Change::Put(at, piece) => {
                let start = at.index(length);
                let end = (start + piece.len()).min(length);
                bytes.splice(start..end, piece.iter().copied());
            }
            Change::Insert(at, piece) => {
                let start = at.index(length);
                bytes.splice(start..start, piece.iter().copied());
            }
            Change::Remove(at, many) => {
                let start = at.index(length);
                bytes.drain(start..(start + many).min(length));
            }
            Change::Repeat(at, many, times) => {
                let start = at.index(length);
                let end = (start + many).min(length);
                let piece = bytes[start..end].repeat(*times);
                bytes.splice(end..end, piece);
            }
            Change::Cut(at) => bytes.truncate(at.index(length)),
        }
    }
    bytes
}
