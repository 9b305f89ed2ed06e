//! Gives changed files and changed content to every reader of bytes from outside. No
//! reader panics, and what a reader accepts can be written and read again.
//!
//! [`surefoot_test_support`] sets the number of cases.

use super::sample::*;
use crate::backup_file;
use crate::class_key::CLASS_KEY_FORMAT;
use crate::class_pack::CLASS_PACK_FORMAT;
use crate::content::{self, Content as _};
use crate::frame::{self, Kind};
use crate::hand_in::HAND_IN_FORMAT;
use crate::sealing::{unseal, unseal_with_passphrase};
use crate::*;
use proptest::collection::vec;
use proptest::prelude::*;
use std::sync::LazyLock;
use surefoot_record::*;
use surefoot_test_support::{any_changes, changed, long};

const WORDS: &str = "seven quiet rivers";

static HAND_IN_FILE: LazyLock<Vec<u8>> =
    LazyLock::new(|| seal_hand_in(hand_in(), &student(), &class_identity().recipient()).unwrap());
static PACK_FILE: LazyLock<Vec<u8>> = LazyLock::new(|| sign_pack(&pack(), &teacher()).unwrap());
static HAND_IN_JSON: LazyLock<Vec<u8>> = LazyLock::new(|| serde_json::to_vec(&hand_in()).unwrap());
static PACK_JSON: LazyLock<Vec<u8>> = LazyLock::new(|| serde_json::to_vec(&pack()).unwrap());
static CARRY_JSON: LazyLock<Vec<u8>> = LazyLock::new(|| serde_json::to_vec(&carry()).unwrap());
static PERSONAL_JSON: LazyLock<Vec<u8>> = LazyLock::new(|| {
    let personal = PersonalAssignments {
        format: PERSONAL_FORMAT,
        class_id: class_id(),
        seat: seat(),
        device: device(8),
        pack_version: 1,
        assignments: vec![assignment("a1"), assignment("a2")],
    };
    serde_json::to_vec(&personal).unwrap()
});
static CLASS_KEY_JSON: LazyLock<Vec<u8>> =
    LazyLock::new(|| serde_json::to_vec(&class_key()).unwrap());
static TRANSFER_JSON: LazyLock<Vec<u8>> =
    LazyLock::new(|| serde_json::to_vec(&transfer()).unwrap());
static BACKUP_PLAIN: LazyLock<Vec<u8>> = LazyLock::new(|| {
    let backup = BackupFile {
        kind: BackupKind::Desk,
        id: "desk".into(),
        store: (0..20_000_u32).map(|n| (n % 251) as u8).collect(),
    };
    let sealed = backup_file::seal_backup_at(&backup, WORDS, 4).unwrap();
    unseal_with_passphrase(&sealed, WORDS).unwrap()
});
static FRAME: LazyLock<Vec<u8>> =
    LazyLock::new(|| frame::write(Kind::HandIn, &HAND_IN_JSON, &student(), Some(1024)).unwrap());

proptest! {
    #![proptest_config(long())]

    #[test]
    fn changed_hand_in_files(changes in any_changes()) {
        let file = changed(&HAND_IN_FILE, &changes);
        let opened = open_hand_in(file.as_slice(), [&class_identity()]);
        // Only the unchanged file opens, because the whole file is authenticated.
        prop_assert_eq!(opened.is_ok(), file == *HAND_IN_FILE);
    }

    #[test]
    fn changed_class_pack_files(changes in any_changes()) {
        let file = changed(&PACK_FILE, &changes);
        let opened = open_pack(file.as_slice());
        prop_assert_eq!(opened.is_ok(), file == *PACK_FILE);
    }

    #[test]
    fn changed_frames(changes in any_changes()) {
        let bytes = changed(&FRAME, &changes);
        if let Ok(opened) = frame::read(Kind::HandIn, &bytes, true, 1 << 20) {
            // Only the length of the padding may change.
            prop_assert_eq!(&opened.json, &*HAND_IN_JSON);
        }
    }

    #[test]
    fn changed_hand_in_content(changes in any_changes()) {
        let json = changed(&HAND_IN_JSON, &changes);
        if let Ok(hand_in) = strict_json::read::<HandIn>(&json, &HAND_IN_CAPS, HAND_IN_FORMAT)
            && hand_in.check_content().is_ok()
        {
            let facts = Facts::with_keys([student().public()]);
            let record = hand_in.record();
            let _ = record.keys().count();
            let mut ours = hand_in;
            ours.device_key = student().public();
            let sealed = seal_hand_in(ours, &student(), &class_identity().recipient()).unwrap();
            let opened = open_hand_in(sealed.as_slice(), [&class_identity()]).unwrap();
            if let Ok(Checked::Accepted(checked)) = opened.check(&facts.get(), date("2026-09-11")) {
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
            let opened = open_pack(file.as_slice()).unwrap();
            prop_assert_eq!(opened.content(), &ours);
        }
    }

    #[test]
    fn changed_carry_content(changes in any_changes()) {
        let json = changed(&CARRY_JSON, &changes);
        if let Ok(carry) = strict_json::read::<CarryFile>(&json, &CARRY_CAPS, CARRY_FORMAT)
            && carry.check_content().is_ok()
        {
            let key = carry.signing_key().unwrap();
            let frame = content::write(&carry, &key).unwrap();
            let (read, _) = content::read::<CarryFile>(&frame).unwrap();
            prop_assert!(read == carry);
        }
    }

    #[test]
    fn changed_class_key_content(changes in any_changes()) {
        let json = changed(&CLASS_KEY_JSON, &changes);
        if let Ok(key) = strict_json::read::<ClassKeyFile>(&json, &CLASS_KEY_CAPS, CLASS_KEY_FORMAT)
            && key.check_content().is_ok()
        {
            let frame = content::write(&key, &teacher()).unwrap();
            let (read, _) = content::read::<ClassKeyFile>(&frame).unwrap();
            prop_assert!(read == key);
        }
    }

    #[test]
    fn changed_transfer_content(changes in any_changes()) {
        let json = changed(&TRANSFER_JSON, &changes);
        if let Ok(found) = strict_json::read::<Transfer>(&json, &TRANSFER_CAPS, TRANSFER_FORMAT)
            && found.check_content().is_ok()
        {
            let frame = content::write(&found, &teacher()).unwrap();
            let (read, _) = content::read::<Transfer>(&frame).unwrap();
            prop_assert!(read == found);
        }
    }

    #[test]
    fn changed_personal_content(changes in any_changes()) {
        let json = changed(&PERSONAL_JSON, &changes);
        if let Ok(personal) =
            strict_json::read::<PersonalAssignments>(&json, &PERSONAL_CAPS, PERSONAL_FORMAT)
            && personal.check_content().is_ok()
        {
            let frame = content::write(&personal, &teacher()).unwrap();
            let (read, _) = content::read::<PersonalAssignments>(&frame).unwrap();
            prop_assert_eq!(read, personal);
        }
    }

    /// What passes is the slip's own token, or one of the same class with a check character that
    /// fits.
    #[test]
    fn changed_seat_codes(changes in any_changes()) {
        let code = make_seat_code(class_signs(), &seat()).unwrap();
        let typed = changed(code.as_bytes(), &changes);
        let typed = String::from_utf8_lossy(&typed);
        if let Ok(token) = parse_seat_code(class_signs(), &typed) {
            let again = make_seat_code(class_signs(), &token);
            prop_assert!(again.is_none_or(|code| parse_seat_code(class_signs(), &code) == Ok(token)));
        }
    }

    #[test]
    fn changed_pin_signs(changes in any_changes()) {
        static SIGNS: LazyLock<PinSigns> =
            LazyLock::new(|| pin_signs_of(&teacher(), &class_id(), &seat()));
        let typed = changed(SIGNS.in_groups().as_bytes(), &changes);
        if let Ok(signs) = parse_pin_signs(&seat(), &String::from_utf8_lossy(&typed)) {
            prop_assert_eq!(signs.as_str().len(), SIGNS.as_str().len());
            prop_assert_eq!(parse_pin_signs(&seat(), &signs.in_groups()), Ok(signs));
        }
    }

    #[test]
    fn changed_backup_content(changes in any_changes()) {
        let plain = changed(&BACKUP_PLAIN, &changes);
        if let Ok(backup) = backup_file::read_plain(&plain, 1 << 20) {
            prop_assert!(backup.store.len() <= 1 << 20);
        }
    }

    #[test]
    fn changed_age_headers(changes in any_changes()) {
        let file = changed(&HAND_IN_FILE[..600], &changes);
        prop_assert!(unseal(&file, [&class_identity()]).is_err(), "its end is missing");
        // No change makes a valid passphrase stanza, so this takes no time.
        prop_assert!(unseal_with_passphrase(&file, WORDS).is_err());
    }

    #[test]
    fn any_bytes_at_all(bytes in vec(any::<u8>(), 0..300)) {
        prop_assert!(open_hand_in(bytes.as_slice(), [&class_identity()]).is_err());
        prop_assert!(open_pack(bytes.as_slice()).is_err());
        prop_assert!(open_carry(bytes.as_slice(), WORDS).is_err());
        prop_assert!(strict_json::read::<HandIn>(&bytes, &HAND_IN_CAPS, 1).is_err());
    }

    #[test]
    fn changed_sealed_texts_in_a_pack(changes in any_changes()) {
        let mut pack = pack();
        let sealed = HAND_IN_FILE.get(..2_000).unwrap();
        use base64::Engine as _;
        let text = base64::prelude::BASE64_STANDARD.encode(sealed);
        let text = String::from_utf8_lossy(&changed(text.as_bytes(), &changes)).into_owned();
        pack.sealed.push(text);
        prop_assert!(open_personal(&pack, &seat(), &device(8), &student_identity()).is_empty());
    }

    #[test]
    fn changed_identity_files(changes in any_changes()) {
        let text = class_identity().to_identity_file();
        let text = String::from_utf8_lossy(&changed(text.as_bytes(), &changes)).into_owned();
        if let Ok(identity) = SealingIdentity::from_identity_file(&text) {
            let written = identity.to_identity_file();
            let again = SealingIdentity::from_identity_file(&written).unwrap();
            prop_assert_eq!(again.to_identity_file(), written);
        }
        if let Ok(key) = PublicKey::new(text.clone()) {
            prop_assert_eq!(key.as_str(), &text);
        }
        if let Ok(recipient) = Recipient::new(text.clone()) {
            prop_assert_eq!(recipient.as_str(), &text);
        }
        if let Ok(class) = ClassId::new(text.clone()) {
            prop_assert_eq!(class.as_str(), &text);
        }
    }
}
