//! Damaged and odd hand-ins are refused or flagged by name, the others imported, and every file
//! left unchanged.

use crate::support::Device;
use std::collections::BTreeMap;
use std::path::Path;
use surefoot_app::{CheckInTap, ClassId, StudentDay, StudentId};
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::Verdict;
use surefoot_exchange::{Flag, HAND_IN_CAPS, Refusal};
use surefoot_student::Tap;

fn hand_in_from(tablet: &Device, student: &str) -> Vec<u8> {
    let today = tablet
        .app
        .student
        .today(StudentDay {
            student: student.into(),
            date: None,
        })
        .unwrap();
    tablet
        .app
        .student
        .check_in(CheckInTap {
            student: student.into(),
            tap: Tap {
                date: today.date,
                concept: today.concepts[0].concept.id.clone(),
                confidence: Some(Confidence::NotYet),
                outcome: None,
            },
        })
        .unwrap();
    let made = tablet
        .app
        .student
        .hand_in(StudentId {
            student: student.into(),
        })
        .unwrap();
    std::fs::read(tablet.hands.saved.join(made.file_name)).unwrap()
}

fn contents(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| {
            let path = entry.unwrap().path();
            (
                path.file_name().unwrap().to_string_lossy().into_owned(),
                std::fs::read(path).unwrap(),
            )
        })
        .collect()
}

#[test]
fn each_bad_file_is_named_and_the_good_ones_are_taken() {
    let desk = Device::on("2026-09-01");
    let class = desk
        .new_class("Room 7 (invented)", &["Amara", "Bao", "Carlos"])
        .id;
    let elsewhere = Device::on("2026-09-01");
    let other = elsewhere.new_class("Room 9 (invented)", &["Dara"]).id;
    let pack = desk.pack_of(&class);
    let slips = desk
        .app
        .desk
        .join_slips(ClassId {
            class: class.clone(),
        })
        .unwrap();
    let tablet = Device::on("2026-09-01");
    let amara = tablet.join(&pack, &slips[0].code, "Sky").unwrap().id;
    let good = hand_in_from(&tablet, &amara);

    // Bao's tablet is a week ahead.
    let ahead = Device::on("2026-09-09");
    let bao = ahead.join(&pack, &slips[1].code, "Rain").unwrap().id;
    let future = hand_in_from(&ahead, &bao);

    let other_pack = elsewhere.pack_of(&other);
    let other_code = elsewhere
        .app
        .desk
        .join_slips(ClassId { class: other })
        .unwrap()[0]
        .code
        .clone();
    let dara = tablet.join(&other_pack, &other_code, "Fog").unwrap().id;
    let wrong_class = hand_in_from(&tablet, &dara);

    let folder = tempfile::tempdir().unwrap();
    let mut flipped = good.clone();
    let middle = flipped.len() - 40;
    flipped[middle] ^= 1;
    let mut oversized = good.clone();
    oversized.resize(usize::try_from(HAND_IN_CAPS.sealed_bytes).unwrap() + 1, 0);
    for (name, bytes) in [
        ("1-good", &good),
        ("2-cut-short", &good[..good.len() - 30].to_vec()),
        ("3-one-bit", &flipped),
        ("4-too-large", &oversized),
        ("5-other-class", &wrong_class),
        ("6-not-ours", &b"<html>hello</html>".to_vec()),
        ("7-empty", &Vec::new()),
        ("8-future", &future),
    ] {
        std::fs::write(folder.path().join(format!("{name}.sfhandin")), bytes).unwrap();
    }
    let before = contents(folder.path());
    let report = desk.import(folder.path());
    let found: BTreeMap<String, String> = report
        .files
        .iter()
        .map(|file| {
            let verdict = match &file.verdict {
                Verdict::Refused { refusal } => match refusal {
                    Refusal::TooLarge { .. } => "too large".to_owned(),
                    other => format!("{other:?}"),
                },
                taken => format!("{taken:?}"),
            };
            (file.file_name.clone(), verdict)
        })
        .collect();
    let verdict = |name: &str| found[&format!("{name}.sfhandin")].as_str();
    assert_eq!(verdict("1-good"), "New");
    assert_eq!(verdict("2-cut-short"), "Damaged");
    assert_eq!(verdict("3-one-bit"), "Damaged");
    assert_eq!(verdict("4-too-large"), "too large");
    assert_eq!(verdict("5-other-class"), "WrongClass");
    assert_eq!(verdict("6-not-ours"), "NotOurs");
    assert_eq!(verdict("7-empty"), "NotOurs");
    assert_eq!(verdict("8-future"), "New");
    let future = (report.files.iter()).find(|file| file.file_name == "8-future.sfhandin");
    let flags = &future.unwrap().flags;
    assert!(
        matches!(flags[..], [Flag::FutureDate { entries: 1, .. }]),
        "{flags:?}"
    );
    assert_eq!(contents(folder.path()), before);

    // A rating of a future day is kept, and counts from that day on.
    let board = |desk: &Device| {
        desk.app
            .desk
            .board(ClassId {
                class: class.clone(),
            })
            .unwrap()
            .seats_reporting
    };
    assert_eq!(board(&desk), 1);
    let mut desk = desk;
    desk.to("2026-09-09");
    assert_eq!(board(&desk), 2);
}
