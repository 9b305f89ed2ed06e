//! Changed files and changed content against every reader of outside bytes:
//! no panic, and whatever is taken after all can be written and read again.
//!
//! `EXCHANGE_CASES=1000000` makes the run as long as wanted.

use super::sample::*;
use crate::exchange::class_pack::CLASS_PACK_FORMAT;
use crate::exchange::frame::{self, Kind};
use crate::exchange::hand_in::HAND_IN_FORMAT;
use crate::exchange::sealing::{unseal, unseal_with_passphrase};
use crate::exchange::*;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::Index;
use std::sync::LazyLock;

#[expect(
    clippy::disallowed_methods,
    reason = "only how long to look, not what is right"
)]
fn cases() -> u32 {
    std::env::var("EXCHANGE_CASES")
        .ok()
        .and_then(|text| text.parse().ok())
        .unwrap_or(1_000)
}

static HAND_IN_FILE: LazyLock<Vec<u8>> =
    LazyLock::new(|| seal_hand_in(&hand_in(), &student(), &class_identity().recipient()).unwrap());
static PACK_FILE: LazyLock<Vec<u8>> = LazyLock::new(|| sign_pack(&pack(), &teacher()).unwrap());
static HAND_IN_JSON: LazyLock<Vec<u8>> = LazyLock::new(|| serde_json::to_vec(&hand_in()).unwrap());
static PACK_JSON: LazyLock<Vec<u8>> = LazyLock::new(|| serde_json::to_vec(&pack()).unwrap());
static CARRY_JSON: LazyLock<Vec<u8>> = LazyLock::new(|| serde_json::to_vec(&carry()).unwrap());
static FRAME: LazyLock<Vec<u8>> =
    LazyLock::new(|| frame::write(Kind::HandIn, &HAND_IN_JSON, &student(), Some(1024)).unwrap());

/// One change of some bytes.
#[derive(Debug, Clone)]
enum Change {
    Flip(Index, u8),
    Put(Index, Vec<u8>),
    Insert(Index, Vec<u8>),
    Remove(Index, usize),
    Repeat(Index, usize, usize),
    Cut(Index),
}

/// What confuses readers: the words of the formats, edges of numbers, and markup.
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

fn any_changes() -> impl Strategy<Value = Vec<Change>> {
    vec(any_change(), 1..5)
}

fn changed(bytes: &[u8], changes: &[Change]) -> Vec<u8> {
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

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(cases()) })]

    #[test]
    fn changed_hand_in_files(changes in any_changes()) {
        let file = changed(&HAND_IN_FILE, &changes);
        let opened = open_hand_in(file.as_slice(), [&class_identity()], &HAND_IN_CAPS);
        // Authenticated as a whole: only the untouched file opens.
        prop_assert_eq!(opened.is_ok(), file == *HAND_IN_FILE);
    }

    #[test]
    fn changed_class_pack_files(changes in any_changes()) {
        let file = changed(&PACK_FILE, &changes);
        let opened = open_pack(file.as_slice(), &CLASS_PACK_CAPS);
        prop_assert_eq!(opened.is_ok(), file == *PACK_FILE);
    }

    #[test]
    fn changed_frames(changes in any_changes()) {
        let bytes = changed(&FRAME, &changes);
        if let Ok(opened) = frame::read(Kind::HandIn, &bytes, true, 1 << 20) {
            // The padding alone may be longer or shorter.
            prop_assert_eq!(&opened.json, &*HAND_IN_JSON);
        }
    }

    #[test]
    fn changed_hand_in_content(changes in any_changes()) {
        let json = changed(&HAND_IN_JSON, &changes);
        if let Ok(hand_in) = strict_json::read::<HandIn>(&json, &HAND_IN_CAPS, HAND_IN_FORMAT)
            && hand_in.check_content().is_ok()
        {
            let facts = Facts::with_keys([]);
            let record = hand_in.record();
            let _ = record.view(date("2026-08-24"), date("2027-06-04"), date("2026-12-01"));
            let mut ours = hand_in;
            ours.device_key = student().public();
            let sealed = seal_hand_in(&ours, &student(), &class_identity().recipient()).unwrap();
            let opened = open_hand_in(sealed.as_slice(), [&class_identity()], &HAND_IN_CAPS).unwrap();
            if let Ok(Checked::Taken(checked)) = opened.check(&facts.get(), date("2026-09-11")) {
                prop_assert_eq!(checked.record(), record);
            }
        }
    }

    #[test]
    fn changed_class_pack_content(changes in any_changes()) {
        let json = changed(&PACK_JSON, &changes);
        if let Ok(pack) = strict_json::read::<ClassPack>(&json, &CLASS_PACK_CAPS, CLASS_PACK_FORMAT)
            && pack.check_content().is_ok()
        {
            let mut ours = pack;
            ours.teacher_key = teacher().public();
            let file = sign_pack(&ours, &teacher()).unwrap();
            let opened = open_pack(file.as_slice(), &CLASS_PACK_CAPS).unwrap();
            prop_assert_eq!(opened.content(), &ours);
        }
    }

    #[test]
    fn changed_carry_content(changes in any_changes()) {
        let json = changed(&CARRY_JSON, &changes);
        let _ = strict_json::read::<CarryFile>(&json, &CARRY_CAPS, CARRY_FORMAT);
    }

    #[test]
    fn changed_age_headers(changes in any_changes()) {
        let file = changed(&HAND_IN_FILE[..600], &changes);
        let _ = unseal(&file, [&class_identity()]);
        // No valid passphrase stanza can come of it, so no work is done.
        let _ = unseal_with_passphrase(&file, "seven quiet rivers");
    }

    #[test]
    fn any_bytes_at_all(bytes in vec(any::<u8>(), 0..300)) {
        prop_assert!(open_hand_in(bytes.as_slice(), [&class_identity()], &HAND_IN_CAPS).is_err());
        prop_assert!(open_pack(bytes.as_slice(), &CLASS_PACK_CAPS).is_err());
        prop_assert!(open_carry(bytes.as_slice(), "seven quiet rivers", &CARRY_CAPS).is_err());
        prop_assert!(strict_json::read::<HandIn>(&bytes, &HAND_IN_CAPS, 1).is_err());
    }

    #[test]
    fn changed_sealed_texts_in_a_pack(changes in any_changes()) {
        let mut pack = pack();
        let sealed = HAND_IN_FILE.get(..2_000).unwrap();
        use base64::Engine as _;
        let text = base64::prelude::BASE64_STANDARD.encode(sealed);
        let text = String::from_utf8_lossy(&changed(text.as_bytes(), &changes)).into_owned();
        pack.sealed.push(SealedForSeat { seat: seat(), device: device(8), sealed: text });
        prop_assert!(open_personal(&pack, &seat(), &device(8), &student_identity()).is_err());
    }

    #[test]
    fn changed_identity_files(changes in any_changes()) {
        let text = class_identity().to_identity_file();
        let text = String::from_utf8_lossy(&changed(text.as_bytes(), &changes)).into_owned();
        let _ = SealingIdentity::from_identity_file(&text);
        let _ = PublicKey::new(text.clone());
        let _ = Recipient::new(text.clone());
        let _ = ClassId::new(text);
    }
}
