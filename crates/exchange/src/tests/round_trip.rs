//! What is sealed and opened again is the same.

use super::sample::*;
use crate::carry::seal_carry_at;
use crate::*;
use base64::Engine as _;
use surefoot_record::*;

#[test]
fn a_hand_in_comes_back_in_order() {
    let sealed = seal_hand_in(hand_in(), &student(), &class_identity().recipient()).unwrap();
    assert!(sealed.starts_with(b"age-encryption.org/v1\n"));
    let class = class_identity();
    let opened = open_hand_in(sealed.as_slice(), [&other_class_identity(), &class]).unwrap();
    assert_eq!((opened.class_id(), opened.seat()), (&class_id(), &seat()));
    let facts = Facts::with_keys([student().public()]);
    let Checked::Accepted(checked) = opened.check(&facts.get(), date("2026-09-11")).unwrap() else {
        panic!("quarantined");
    };
    assert_eq!(checked.flags(), []);
    let mut expected = hand_in();
    expected.check_ins.swap(0, 1);
    assert_eq!(
        checked.content().check_ins[0].concept,
        concept("g4-angle-measure")
    );
    expected.check_ins.sort_by_key(|c| c.concept.clone());
    expected.practice[0].answers.sort_unstable();
    assert_eq!(checked.content(), &expected);
    assert_eq!(checked.record(), hand_in().record());
}

#[test]
fn the_same_record_in_another_order_gives_the_same_content() {
    let json = |hand_in: &HandIn| {
        let sealed =
            seal_hand_in(hand_in.clone(), &student(), &class_identity().recipient()).unwrap();
        let opened = open_hand_in(sealed.as_slice(), [&class_identity()]).unwrap();
        let facts = Facts::with_keys([student().public()]);
        match opened.check(&facts.get(), date("2026-09-11")).unwrap() {
            Checked::Accepted(checked) => checked.json().to_vec(),
            Checked::Quarantined(_) => panic!("quarantined"),
        }
    };
    let mut turned = hand_in();
    turned.check_ins.reverse();
    turned.practice[0].answers.reverse();
    // An older entry of the same key has no effect.
    let newest = turned.check_ins.iter().find(|c| c.sequence() == 2);
    let mut older = newest.unwrap().clone();
    older.confidence = older.confidence.map(|said| Said { at: 1, ..said });
    older.outcome = None;
    turned.check_ins.push(older);
    assert_eq!(json(&hand_in()), json(&turned));
}

#[test]
fn a_class_pack_comes_back_and_has_the_same_bytes_each_time() {
    let file = sign_pack(&pack(), &teacher()).unwrap();
    assert_eq!(file, sign_pack(&pack(), &teacher()).unwrap());
    let opened = open_pack(file.as_slice()).unwrap();
    assert_eq!(opened.content(), &pack());
    let checked = opened.accept_first();
    assert_eq!(
        (checked.content(), checked.file()),
        (&pack(), file.as_slice())
    );
}

#[test]
fn only_a_newer_pack_with_the_same_keys_is_taken() {
    let opened = |pack: &ClassPack, key: &SigningKey| {
        open_pack(sign_pack(pack, key).unwrap().as_slice()).unwrap()
    };
    let held = pack();
    let mut newer = pack();
    newer.version = 2;
    assert_eq!(
        opened(&newer, &teacher())
            .accept_update(&held)
            .unwrap()
            .content(),
        &newer
    );
    assert_eq!(
        opened(&held, &teacher()).accept_update(&held).unwrap_err(),
        Refusal::NotNewer { found: 1, held: 1 }
    );
    // With another key it is a pack of another class.
    let stranger = SigningKey::from_seed(&[99; 32]);
    let mut other = newer;
    other.teacher_key = stranger.public();
    other.class_id = class_id_of(&other.teacher_key, &other.class_recipient).unwrap();
    assert_eq!(
        opened(&other, &stranger).accept_update(&held).unwrap_err(),
        Refusal::WrongClass
    );
}

fn personal(device_number: u8, assignments: usize) -> PersonalAssignments {
    PersonalAssignments {
        format: PERSONAL_FORMAT,
        class_id: class_id(),
        seat: seat(),
        device: device(device_number),
        pack_version: 1,
        assignments: (0..assignments)
            .map(|n| assignment(&format!("p{n}")))
            .collect(),
    }
}

/// A pack with sealed parts for these devices, all with the student's recipient.
fn pack_for(devices: &[PersonalAssignments], teacher: &SigningKey) -> ClassPack {
    let recipient = student_identity().recipient();
    let devices: Vec<_> = (devices.iter().cloned())
        .map(|personal| (personal, recipient.clone()))
        .collect();
    ClassPack {
        sealed: seal_personal(&devices, teacher).unwrap(),
        ..pack()
    }
}

#[test]
fn a_personal_assignment_opens_for_its_device_alone() {
    let open = |pack: &ClassPack, number: u8, identity: &SealingIdentity| {
        open_personal(pack, &seat(), &device(number), identity)
    };
    let one = personal(8, 1);
    let pack = pack_for(&[personal(7, 2), one.clone(), personal(9, 3)], &teacher());
    sign_pack(&pack, &teacher()).unwrap();
    let own = student_identity();
    // Three devices have the same identity, and each finds its own part.
    for (number, count) in [(7, 2), (8, 1), (9, 3), (10, 0)] {
        assert_eq!(open(&pack, number, &own).len(), count, "{number}");
    }
    assert_eq!(open(&pack, 8, &own), one.assignments);
    let other_seat = draw_seat_token(class_signs(), &[7; 32], 2);
    assert_eq!(open_personal(&pack, &other_seat, &device(8), &own), []);
    assert_eq!(open(&pack, 8, &other_class_identity()), []);
    // It counts in no later pack, and not from another teacher.
    let later = ClassPack {
        version: 2,
        ..pack.clone()
    };
    assert_eq!(open(&later, 8, &own), []);
    assert_eq!(open(&pack_for(&[one], &student()), 8, &own), []);
    // A damaged part of another device changes nothing.
    let mut damaged = pack;
    damaged.sealed.insert(0, "no age file".to_owned());
    assert_eq!(open(&damaged, 8, &own).len(), 1);
}

#[test]
fn the_sealed_parts_of_a_pack_have_one_size_and_no_label() {
    let pack = pack_for(
        &[personal(7, 0), personal(8, 60), personal(9, 1)],
        &teacher(),
    );
    // The header has a filler of random length, so what counts is behind it.
    let sizes: std::collections::BTreeSet<usize> = (pack.sealed.iter())
        .map(|part| {
            let file = base64::prelude::BASE64_STANDARD.decode(part).unwrap();
            let header = file.windows(5).position(|w| w == b"\n--- ").unwrap();
            file.len() - header
        })
        .collect();
    assert_eq!(sizes.len(), 1, "{sizes:?}");
    assert!(pack.sealed.is_sorted());
    let text = serde_json::to_string(&pack).unwrap();
    for word in [
        seat().as_str(),
        device(8).as_str(),
        student_identity().recipient().as_str(),
    ] {
        assert!(!text.contains(word), "{word}");
    }
}

#[test]
fn a_fingerprint_shows_another_key_and_another_device() {
    let shown = fingerprint(&student().public(), &device(8));
    assert_eq!(shown.len(), 15, "{shown}");
    assert_eq!(shown, fingerprint(&student().public(), &device(8)));
    assert_ne!(shown, fingerprint(&student().public(), &device(9)));
    assert_ne!(shown, fingerprint(&teacher().public(), &device(8)));
}

#[test]
fn a_carry_file_comes_back_with_its_passphrase_alone() {
    let passphrase = "seven quiet rivers";
    let sealed = seal_carry_at(&carry(), passphrase, 10).unwrap();
    let opened = open_carry(sealed.as_slice(), passphrase).unwrap();
    assert_eq!(opened, carry());
    assert_eq!(opened.signing_key().unwrap().public(), student().public());
    assert_eq!(
        opened.identity().unwrap().recipient(),
        student_identity().recipient()
    );
    let pack_file = opened.class_pack_file().unwrap();
    assert_eq!(open_pack(pack_file.as_slice()).unwrap().content(), &pack());
    assert_eq!(
        open_carry(sealed.as_slice(), "seven quiet river").unwrap_err(),
        Refusal::WrongPassphrase
    );
    assert!(!format!("{opened:?}").contains("SECRET"));
    assert!(matches!(
        seal_carry(&carry(), "short").unwrap_err(),
        Refusal::BadContent { at } if at == "passphrase"
    ));
}

#[test]
fn a_hand_in_by_another_key_than_the_seats_is_quarantined() {
    let sealed = seal_hand_in(hand_in(), &student(), &class_identity().recipient()).unwrap();
    let opened = open_hand_in(sealed.as_slice(), [&class_identity()]).unwrap();
    let facts = Facts::with_keys([SigningKey::from_seed(&[50; 32]).public()]);
    let Checked::Quarantined(other) = opened.check(&facts.get(), date("2026-09-11")).unwrap()
    else {
        panic!("taken");
    };
    assert_eq!(other.content().device_key, student().public());
}

proptest::proptest! {
    #![proptest_config(proptest::prelude::ProptestConfig::with_cases(300))]

    #[test]
    fn sealed_then_opened_any_record_is_the_same(record in surefoot_test_support::record::any_record()) {
        let mut original = hand_in();
        original.check_ins = record.check_ins().to_vec();
        original.practice = record.practice().to_vec();
        let sealed = seal_hand_in(original.clone(), &student(), &class_identity().recipient()).unwrap();
        let opened = open_hand_in(sealed.as_slice(), [&class_identity()]).unwrap();
        let facts = Facts::with_keys([student().public()]);
        let Ok(Checked::Accepted(checked)) = opened.check(&facts.get(), date("2026-09-11")) else {
            panic!("not taken");
        };
        proptest::prop_assert_eq!(checked.content(), &original);
        proptest::prop_assert_eq!(checked.record(), record);
    }
}

#[test]
fn a_transfer_comes_back_and_is_opened_by_its_passphrase_alone() {
    let words = "seven quiet rivers";
    let file = seal_transfer(&transfer(), &teacher(), words).unwrap();
    assert!(open_transfer(file.as_slice(), words).unwrap() == transfer());
    let refused = |file: &[u8], words| open_transfer(file, words).unwrap_err();
    assert_eq!(
        refused(&file, "seven quiet ponds"),
        Refusal::WrongPassphrase
    );
    let mut cut = file;
    cut.truncate(cut.len() - 1);
    assert_eq!(refused(&cut, words), Refusal::Damaged);
}

#[test]
fn a_transfer_with_a_fault_is_not_sealed() {
    let refused = |change: fn(&mut Transfer)| {
        let mut changed = transfer();
        change(&mut changed);
        match seal_transfer(&changed, &teacher(), "seven quiet rivers").unwrap_err() {
            Refusal::BadContent { at } => at,
            other => panic!("{other}"),
        }
    };
    assert_eq!(
        refused(|t| t.teacher_key = student().public()),
        "teacher_key"
    );
    assert_eq!(refused(|t| t.format = 2), "format");
    assert_eq!(
        refused(|t| t.hand_ins[0].revision = 0),
        "hand_ins[0].revision"
    );
    assert_eq!(refused(|t| t.paper[0].confidence = None), "paper[0]");
    assert_eq!(refused(|t| t.paper.push(t.paper[0].clone())), "paper[1]");
}
