//! Files with one fault each, and their refusals.

use super::sample::*;
use crate::frame::{self, Kind};
use crate::sealing::seal_for;
use crate::*;
use std::io::Write as _;
use surefoot_catalogue::{Language, Text};

fn seal(frame: &[u8]) -> Vec<u8> {
    seal_for(&class_identity().recipient(), frame).unwrap()
}

fn open(sealed: &[u8]) -> Result<OpenedHandIn, Refusal> {
    open_hand_in(sealed, [&class_identity()])
}

fn refusal(sealed: &[u8]) -> Refusal {
    open(sealed).expect_err("taken")
}

/// A frame that the student signed, with these packed bytes.
fn frame_around(packed: &[u8]) -> Vec<u8> {
    let signature = student().sign(&frame::signed_message(Kind::HandIn, packed));
    let mut frame = b"SFHAND1\n".to_vec();
    frame.extend(student().public().to_bytes());
    frame.extend(signature);
    frame.extend(u32::try_from(packed.len()).unwrap().to_be_bytes());
    frame.extend(packed);
    frame.resize(frame.len().next_multiple_of(16 * 1024), 0);
    frame
}

fn deflate(bytes: &[u8]) -> Vec<u8> {
    let mut encoder = flate2::write::ZlibEncoder::new(Vec::new(), flate2::Compression::fast());
    encoder.write_all(bytes).unwrap();
    encoder.finish().unwrap()
}

fn sealed_json(json: &str) -> Vec<u8> {
    seal(&frame_around(&deflate(json.as_bytes())))
}

fn good_json() -> String {
    serde_json::to_string(&hand_in()).unwrap()
}

fn good_frame() -> Vec<u8> {
    frame_around(&deflate(good_json().as_bytes()))
}

fn bad(at: &str) -> Refusal {
    Refusal::BadContent { at: at.into() }
}

#[test]
fn the_helpers_make_a_good_file() {
    assert!(open(&seal(&good_frame())).is_ok());
}

#[test]
fn too_large_is_noticed_while_reading_and_without_reading_on() {
    let most_bytes = HAND_IN_CAPS.sealed_bytes;
    let endless = open_hand_in(std::io::repeat(b'a'), [&class_identity()]);
    assert_eq!(
        endless.unwrap_err(),
        Refusal::TooLarge {
            found_bytes: most_bytes + 1,
            most_bytes
        }
    );
    let endless = open_pack(std::io::repeat(0));
    assert!(matches!(endless, Err(Refusal::TooLarge { .. })));
    let endless = open_carry(std::io::repeat(0), "seven quiet rivers");
    assert!(matches!(endless, Err(Refusal::TooLarge { .. })));
}

#[test]
fn a_reader_that_fails_is_unreadable() {
    struct Broken;
    impl std::io::Read for Broken {
        fn read(&mut self, _: &mut [u8]) -> std::io::Result<usize> {
            Err(std::io::Error::other("gone"))
        }
    }
    let opened = open_hand_in(Broken, [&class_identity()]);
    assert_eq!(opened.unwrap_err(), Refusal::Unreadable);
}

#[test]
fn a_bomb_is_refused_at_the_cap() {
    let bomb = deflate(&vec![b' '; 64 * 1024 * 1024]);
    assert!(bomb.len() < 1_000_000);
    let most_bytes = HAND_IN_CAPS.unpacked_bytes;
    assert_eq!(
        refusal(&seal(&frame_around(&bomb))),
        Refusal::UnpacksTooLarge { most_bytes }
    );
}

#[test]
fn other_files_are_not_ours() {
    for bytes in [
        &b""[..],
        b"PK\x03\x04 a zip",
        b"%PDF-1.7",
        b"-----BEGIN AGE ENCRYPTED FILE-----\n",
        b"age-encryption.org/vX\n",
        b"age-encryption.org",
    ] {
        let found = refusal(bytes);
        let cut_short = bytes == b"age-encryption.org";
        assert_eq!(
            found,
            if cut_short {
                Refusal::Damaged
            } else {
                Refusal::NotOurs
            }
        );
    }
    assert_eq!(
        refusal(b"age-encryption.org/v2\n-> X\n"),
        Refusal::NewerFormat { found: 2, known: 1 }
    );
    // A carry file is not a hand-in, and a hand-in is not a carry file.
    let carried = carry::seal_carry_at(&carry(), "seven quiet rivers", 10).unwrap();
    assert_eq!(refusal(&carried), Refusal::NotOurs);
    let opened = open_carry(seal(&good_frame()).as_slice(), "seven quiet rivers");
    assert_eq!(opened.unwrap_err(), Refusal::NotOurs);
    // Another kind of frame inside the seal.
    let pack = sign_pack(&pack(), &teacher()).unwrap();
    assert_eq!(refusal(&seal(&pack)), Refusal::NotOurs);
    assert_eq!(refusal(&seal(b"hello")), Refusal::NotOurs);
    assert_eq!(refusal(&seal(b"SFHAND")), Refusal::Damaged);
}

#[test]
fn a_header_without_end_is_refused_before_it_is_parsed() {
    let mut endless = b"age-encryption.org/v1\n".to_vec();
    while endless.len() < 3 * 1024 * 1024 {
        endless.extend(b"-> X25519 TEiF0ypqr+bpvcqXNyCVJpL7OuwPdVwPL7KQEbFDOCc\n");
        endless.extend(b"hjabGXwSLQ9c3S6Lw2i+S2Tu2fiwQHHslbBN6B41FLE\n");
    }
    endless.extend(b"--- WyJp9F/9FOZh7gJdheq2WIJcwHgYc8NIVh3ddwhrcNg\n");
    assert_eq!(refusal(&endless), Refusal::Damaged);
}

#[test]
fn another_class_is_told_apart_by_key_and_by_id() {
    let sealed = seal_hand_in(hand_in(), &student(), &other_class_identity().recipient()).unwrap();
    assert_eq!(refusal(&sealed), Refusal::WrongClass);
    let mut other = hand_in();
    other.class_id = other_class_id();
    let sealed = seal_hand_in(other, &student(), &class_identity().recipient()).unwrap();
    let facts = Facts::with_keys([student().public()]);
    let checked = open(&sealed)
        .unwrap()
        .check(&facts.get(), date("2026-09-11"));
    assert_eq!(checked.unwrap_err(), Refusal::WrongClass);
}

#[test]
fn an_unknown_seat_is_named() {
    let mut other = hand_in();
    other.seat = draw_seat_token(class_signs(), &[7; 32], 2);
    let sealed = seal_hand_in(other, &student(), &class_identity().recipient()).unwrap();
    let facts = Facts::with_keys([student().public()]);
    let checked = open(&sealed)
        .unwrap()
        .check(&facts.get(), date("2026-09-11"));
    assert_eq!(checked.unwrap_err(), Refusal::SeatUnknown);
}

#[test]
fn cut_short_at_any_length_it_is_damaged() {
    let sealed = seal(&good_frame());
    for length in (1..700).chain((700..sealed.len()).step_by(211)) {
        assert_eq!(
            refusal(&sealed[..length]),
            Refusal::Damaged,
            "{length} bytes"
        );
    }
    let mut longer = sealed;
    longer.push(0);
    assert_eq!(refusal(&longer), Refusal::Damaged);
}

#[test]
fn a_flipped_bit_anywhere_is_refused_by_its_region() {
    let sealed = seal(&good_frame());
    let mac_line = sealed.windows(5).position(|w| w == b"\n--- ").unwrap();
    let payload = mac_line + 49;
    let version_line = b"age-encryption.org/v1\n".len();
    let places = (0..payload + 40).chain((payload + 40..sealed.len()).step_by(97));
    for place in places {
        for bit in 0..8 {
            let mut flipped = sealed.clone();
            flipped[place] ^= 1 << bit;
            let found = refusal(&flipped);
            let expected: &[Refusal] = if place < version_line {
                &[
                    Refusal::NotOurs,
                    Refusal::NewerFormat { found: 3, known: 1 },
                    Refusal::NewerFormat { found: 5, known: 1 },
                    Refusal::NewerFormat { found: 9, known: 1 },
                ]
            } else if place < mac_line {
                // Damage in the sealed key looks like a file for another class.
                &[Refusal::Damaged, Refusal::WrongClass]
            } else {
                &[Refusal::Damaged]
            };
            assert!(
                expected.contains(&found),
                "byte {place} bit {bit}: {found:?}"
            );
        }
    }
}

#[test]
fn inside_the_seal_every_region_of_the_frame_is_checked() {
    let frame = good_frame();
    let packed_end = 108 + deflate(good_json().as_bytes()).len();
    for (place, expected) in [
        (0, Refusal::NotOurs),
        (8, Refusal::BadSignature),
        (39, Refusal::BadSignature),
        (40, Refusal::BadSignature),
        (103, Refusal::BadSignature),
        (104, Refusal::Damaged),
        (107, Refusal::BadSignature),
        (108, Refusal::BadSignature),
        (packed_end - 1, Refusal::BadSignature),
        (packed_end, Refusal::Damaged),
        (frame.len() - 1, Refusal::Damaged),
    ] {
        let mut changed = frame.clone();
        changed[place] ^= 1;
        // With a wrong length, a byte of the padding is read as packed, or a packed byte as
        // padding.
        let found = refusal(&seal(&changed));
        let moved = place == 107 && found == Refusal::Damaged;
        assert!(found == expected || moved, "byte {place}: {found:?}");
    }
    let mut newer = frame;
    newer[6] = b'2';
    assert_eq!(
        refusal(&seal(&newer)),
        Refusal::NewerFormat { found: 2, known: 1 }
    );
}

#[test]
fn a_signature_of_another_kind_or_key_does_not_count() {
    let packed = deflate(good_json().as_bytes());
    let mut frame = frame_around(&packed);
    let elsewhere = student().sign(&frame::signed_message(Kind::Carry, &packed));
    frame[40..104].copy_from_slice(&elsewhere);
    assert_eq!(refusal(&seal(&frame)), Refusal::BadSignature);
    let bare = student().sign(&packed);
    frame[40..104].copy_from_slice(&bare);
    assert_eq!(refusal(&seal(&frame)), Refusal::BadSignature);
    // The signature is valid, but by another key than the content names.
    let other = SigningKey::from_seed(&[60; 32]);
    let frame = frame::write(Kind::HandIn, good_json().as_bytes(), &other, Some(16_384)).unwrap();
    assert_eq!(refusal(&seal(&frame)), bad("device_key"));
    let stranger = seal_hand_in(hand_in(), &other, &class_identity().recipient());
    assert_eq!(stranger.unwrap_err(), bad("device_key"));
}

#[test]
fn what_does_not_unpack_cleanly_is_damaged() {
    assert_eq!(
        refusal(&seal(&frame_around(b"not packed"))),
        Refusal::Damaged
    );
    assert_eq!(refusal(&seal(&frame_around(b""))), Refusal::Damaged);
    let mut trailing = deflate(good_json().as_bytes());
    trailing.extend(b"more");
    assert_eq!(refusal(&seal(&frame_around(&trailing))), Refusal::Damaged);
    let packed = deflate(good_json().as_bytes());
    let cut = &packed[..packed.len() - 2];
    assert_eq!(refusal(&seal(&frame_around(cut))), Refusal::Damaged);
}

#[test]
fn content_is_refused_by_its_place() {
    let json = good_json();
    let change = |from: &str, to: &str| {
        assert!(json.contains(from), "{from}");
        refusal(&sealed_json(&json.replacen(from, to, 1)))
    };
    assert_eq!(
        change("\"format\":1", "\"format\":2"),
        Refusal::NewerFormat { found: 2, known: 1 }
    );
    assert_eq!(change("\"revision\":1", "\"revision\":0"), bad("revision"));
    assert_eq!(
        change("\"revision\":1", "\"revision\":1,\"nickname\":\"Zaza\""),
        bad("nickname")
    );
    assert_eq!(
        change("\"revision\":1", "\"revision\":1,\"revision\":2"),
        bad("revision given twice")
    );
    assert_eq!(change("\"revision\":1", "\"revision\":-1"), bad("revision"));
    assert_eq!(
        change("\"revision\":1", "\"revision\":1.5"),
        bad("revision")
    );
    assert_eq!(
        change("\"revision\":1", "\"revision\":4294967296"),
        bad("revision")
    );
    assert!(matches!(
        change("\"revision\":1", "\"revision\":NaN"),
        Refusal::BadContent { .. }
    ));
    assert_eq!(change("2026-09-11", "2026-9-11"), bad("made_on"));
    assert_eq!(change("2026-09-11", "2026-02-30"), bad("made_on"));
    assert_eq!(change("2026-09-11", "2026-09-11T08:30:00"), bad("made_on"));
    assert_eq!(
        change("\"value\":1", "\"value\":4"),
        bad("check_ins[0].confidence.value")
    );
    assert_eq!(
        change("\"value\":\"right\"", "\"value\":\"great\""),
        bad("check_ins[0].outcome.value")
    );
    assert_eq!(
        change(
            "\"outcome\":{\"at\":2,\"value\":\"right\"}",
            "\"seconds\":3"
        ),
        bad("check_ins[0].seconds")
    );
    assert_eq!(
        change(",\"outcome\":{\"at\":2,\"value\":\"right\"}", ""),
        bad("check_ins[0]")
    );
    assert_eq!(
        change("\"at\":2", "\"at\":0"),
        bad("check_ins[0].confidence.at")
    );
    assert_eq!(
        change("\"sequence\":6", "\"sequence\":0"),
        bad("practice[0].sequence")
    );
    assert_eq!(
        change("\"confidence\":null", "\"confidence\":2"),
        bad("practice[0].answers")
    );
    assert_eq!(
        change("\"alone\":2", "\"alone\":501"),
        bad("practice[0].answers")
    );
    assert_eq!(
        change("added-denominators\":1", "added-denominators\":501"),
        bad("practice[0].misconceptions")
    );
    assert_eq!(
        change("added-denominators\":1", "added-denominators\":0"),
        bad("practice[0].misconceptions")
    );
    assert!(matches!(
        change("added-denominators", "=1+1 <b>Zaza</b>"),
        Refusal::BadContent { at } if at.starts_with("practice[0].misconceptions")
    ));
    assert_eq!(
        change("g4-angle-measure", "Zaza was here"),
        bad("check_ins[0].concept")
    );
    assert_eq!(change("\"seat\":\"", "\"seat\":\"X"), bad("seat"));
    let twice = json.replacen(
        "{\"added-denominators\":1}",
        "{\"added-denominators\":1,\"added-denominators\":2}",
        1,
    );
    assert_eq!(
        refusal(&sealed_json(&twice)),
        bad("added-denominators given twice")
    );
    assert_eq!(refusal(&sealed_json("")), bad("line 1 column 0"));
    assert_eq!(refusal(&sealed_json("[]")), bad("format"));
    assert_eq!(
        refusal(&seal(&frame_around(&deflate(b"{\"format\":\"\xff\"}")))),
        bad("line 1 column 12")
    );
}

#[test]
fn deep_json_and_huge_counts_are_refused_within_the_caps() {
    let deep = "[".repeat(1_000_000);
    assert_eq!(refusal(&sealed_json(&deep)), bad("nesting"));
    let entry = serde_json::to_string(&hand_in().check_ins[0]).unwrap();
    let many = vec![entry; 20_001].join(",");
    let json = good_json().replacen("\"check_ins\":[", &format!("\"check_ins\":[{many},"), 1);
    assert_eq!(
        refusal(&sealed_json(&json)),
        Refusal::TooManyEntries { most: 20_000 }
    );
    let long = format!("{{\"format\":1,\"class_id\":\"{}\"}}", "A".repeat(100_000));
    assert_eq!(refusal(&sealed_json(&long)), bad("text"));
    // The cap is for both lists of a hand-in together.
    let json = good_json();
    let lists = [("check_ins", 10_000), ("practice", 9_998)];
    let filled = lists.iter().fold(json.clone(), |json, (list, count)| {
        let entries: Vec<_> = serde_json::from_str::<serde_json::Value>(&good_json()).unwrap()
            [list]
            .as_array()
            .unwrap()
            .iter()
            .cycle()
            .take(*count)
            .map(ToString::to_string)
            .collect();
        let key = format!("\"{list}\":[");
        json.replacen(&key, &format!("{key}{},", entries.join(",")), 1)
    });
    assert_eq!(
        refusal(&sealed_json(&filled)),
        Refusal::TooManyEntries { most: 20_000 }
    );
    // What could not be opened is not sealed.
    let mut many = hand_in();
    many.check_ins = (1..=20_001)
        .map(|n| {
            let mut entry = hand_in().check_ins[0].clone();
            entry.concept = concept(&format!("c{n}"));
            entry
        })
        .collect();
    assert_eq!(
        seal_hand_in(many, &student(), &class_identity().recipient()).unwrap_err(),
        Refusal::TooManyEntries { most: 20_000 }
    );
}

#[test]
fn what_could_not_be_opened_is_not_sealed() {
    // A date that is not written as YYYY-MM-DD.
    let mut far = hand_in();
    far.check_ins[0].date = chrono::NaiveDate::from_ymd_opt(10_000, 1, 1).unwrap();
    let sealed = seal_hand_in(far, &student(), &class_identity().recipient());
    assert_eq!(sealed.unwrap_err(), bad("content"));
    // A value nested too deeply, and a text that is too long.
    let seal = |body: serde_json::Value| {
        let mut carry = carry();
        carry.store.body = body;
        carry::seal_carry_at(&carry, "seven quiet rivers", 10).unwrap_err()
    };
    let deep = (0..30).fold(serde_json::json!(1), |inner, _| serde_json::json!([inner]));
    assert_eq!(seal(deep), bad("nesting"));
    let long = "x".repeat(CARRY_CAPS.text_bytes + 1);
    assert_eq!(seal(serde_json::json!(long)), bad("text"));
}

#[test]
fn odd_dates_and_unknown_concepts_are_kept_and_flagged() {
    let mut odd = hand_in();
    odd.check_ins
        .push(check_in(8, "2026-12-24", CONCEPTS[0], 7, 3));
    odd.check_ins
        .push(check_in(8, "2026-12-23", CONCEPTS[0], 8, 3));
    odd.check_ins
        .push(check_in(8, "1970-01-01", CONCEPTS[0], 9, 3));
    odd.check_ins
        .push(check_in(8, "2026-09-09", "g5-volume", 10, 3));
    let sealed = seal_hand_in(odd, &student(), &class_identity().recipient()).unwrap();
    let facts = Facts::with_keys([student().public()]);
    let Checked::Accepted(checked) = open(&sealed)
        .unwrap()
        .check(&facts.get(), date("2026-09-11"))
        .unwrap()
    else {
        panic!("held");
    };
    assert_eq!(
        checked.flags(),
        [
            Flag::FutureDate {
                date: date("2026-12-24"),
                entries: 2
            },
            Flag::OutsideYear {
                date: date("1970-01-01"),
                entries: 1
            },
            Flag::UnknownConcept { concepts: 1 },
        ]
    );
    assert_eq!(checked.record().entries(), 7);
}

#[test]
fn a_class_pack_with_a_fault_is_refused_by_name() {
    let good = sign_pack(&pack(), &teacher()).unwrap();
    let open = |bytes: &[u8]| open_pack(bytes).expect_err("taken");
    for length in 0..good.len() {
        let expected: &[Refusal] = match length {
            0 => &[Refusal::NotOurs],
            1..104 => &[Refusal::Damaged],
            _ => &[Refusal::BadSignature],
        };
        assert!(expected.contains(&open(&good[..length])), "{length} bytes");
    }
    for place in 0..good.len() {
        for bit in 0..8 {
            let mut flipped = good.clone();
            flipped[place] ^= 1 << bit;
            let found = open(&flipped);
            let expected = if place < 8 {
                found == Refusal::NotOurs || matches!(found, Refusal::NewerFormat { .. })
            } else {
                found == Refusal::BadSignature
            };
            assert!(expected, "byte {place} bit {bit}: {found:?}");
        }
    }
    let refused = |change: &dyn Fn(&mut ClassPack)| {
        let mut changed = pack();
        change(&mut changed);
        sign_pack(&changed, &teacher()).expect_err("signed")
    };
    assert_eq!(refused(&|p| p.title = "x".repeat(61)), bad("title"));
    assert_eq!(refused(&|p| p.title = "a\u{7}b".into()), bad("title"));
    assert_eq!(refused(&|p| p.version = 0), bad("version"));
    assert_eq!(refused(&|p| p.class_id = other_class_id()), bad("class_id"));
    assert_eq!(
        refused(&|p| p.class_recipient = other_class_identity().recipient()),
        bad("class_id")
    );
    assert_eq!(
        refused(&|p| p.sealed = ["a", "b", "b"].map(str::to_owned).to_vec()),
        bad("sealed[2]")
    );
    assert_eq!(
        refused(&|p| p.sealed = ["b", "a"].map(str::to_owned).to_vec()),
        bad("sealed[1]")
    );
    assert_eq!(
        refused(&|p| p.year.last_day = date("2026-01-01")),
        bad("year")
    );
    assert_eq!(refused(&|p| p.rotation.clear()), bad("rotation"));
    assert_eq!(
        refused(&|p| p.concepts[1].id = concept(CONCEPTS[0])),
        bad("concepts[1].id")
    );
    assert_eq!(
        refused(&|p| p.concepts[1].title = Text::one(Language::first(), "")),
        bad("concepts[1].title.en")
    );
    assert_eq!(
        refused(&|p| p.assignments[0].items_each = 21),
        bad("assignments[0].items_each")
    );
    assert_eq!(
        refused(&|p| p.assignments.push(assignment("a1"))),
        bad("assignments[1].id")
    );
    assert_eq!(
        refused(&|p| p.practice.minutes_least = 16),
        bad("practice.minutes")
    );
    assert_eq!(
        refused(&|p| p.practice.evenings_most = 8),
        bad("practice.evenings")
    );
    assert_eq!(
        refused(&|p| p.practice.test_on = Some(date("2027-06-05"))),
        bad("practice.test_on")
    );
    let stranger = SigningKey::from_seed(&[60; 32]);
    assert_eq!(
        sign_pack(&pack(), &stranger).unwrap_err(),
        bad("teacher_key")
    );
    // Whoever signs with another key needs another class id.
    let mut rekeyed = pack();
    rekeyed.teacher_key = stranger.public();
    assert_eq!(sign_pack(&rekeyed, &stranger).unwrap_err(), bad("class_id"));
}

#[test]
fn a_class_key_for_another_class_id_is_refused() {
    let mut other = class_key();
    other.class_id = other_class_id();
    assert_eq!(
        seal_class_key(&other, "seven quiet rivers").unwrap_err(),
        bad("class_id")
    );
}
