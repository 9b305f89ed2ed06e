//! Hand-ins from a zip give the same import report as single files.

use crate::second_device::carry;
use crate::support::{Device, class_and_tablet, hand_in, rate};
use std::fs;
use std::io::Write as _;
use surefoot_app::{CallError, ImportAsked, ImportFrom, JobResult, Nothing, OpenSealed};
use surefoot_catalogue::rating::Confidence;
use surefoot_exchange::Refusal;

fn zip_of(files: &[(&str, Vec<u8>)]) -> Vec<u8> {
    let mut zip = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
    for (name, bytes) in files {
        let usual = zip::write::SimpleFileOptions::default();
        zip.start_file(*name, usual).unwrap();
        zip.write_all(bytes).unwrap();
    }
    zip.finish().unwrap().into_inner()
}

#[test]
fn a_zip_in_a_folder_gives_a_line_for_every_hand_in() {
    let (desk, _, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let good = fs::read(hand_in(&tablet, &sky)).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let zip = zip_of(&[
        ("week 1/sky.sfhandin", good.clone()),
        ("week 1/cut.sfhandin", good[..200].to_vec()),
        ("read me.txt", b"hello".to_vec()),
    ]);
    fs::write(folder.path().join("upload.zip"), &zip).unwrap();
    fs::write(folder.path().join("broken.zip"), &zip[..80]).unwrap();
    fs::write(folder.path().join("z.sfhandin"), &good).unwrap();
    let report = desk.import(folder.path());
    let lines: Vec<(&str, String)> = report
        .files
        .iter()
        .map(|f| (f.file_name.as_str(), format!("{:?}", f.verdict)))
        .collect();
    assert_eq!(lines.len(), 4, "{lines:?}");
    assert_eq!(lines[0].0, "broken.zip");
    assert!(lines[0].1.contains("Refused"));
    assert_eq!(lines[1].0, "upload.zip: week 1/cut.sfhandin");
    assert!(lines[1].1.contains("Damaged"));
    assert_eq!(lines[2], ("upload.zip: week 1/sky.sfhandin", "New".into()));
    assert_eq!(lines[3], ("z.sfhandin", "Known".into()));
}

#[test]
fn a_foreign_file_opened_with_hand_ins_loses_none_of_them() {
    let (desk, _, tablet, sky) = class_and_tablet("2026-09-01");
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name);
    let three = ["1.sfhandin", "2.sfhandin", "3.sfhandin"].map(at);
    for file in &three {
        rate(&tablet, &sky, Confidence::OnMyOwn);
        fs::copy(hand_in(&tablet, &sky), file).unwrap();
    }
    let foreign = at("\u{202e}tac.jpg");
    fs::write(&foreign, b"a cat").unwrap();
    let files = [&three[0], &foreign, &three[1], &three[2]].map(|path| path.as_path());
    desk.hands.open_with(&files);
    let opened = desk.app.device.opened_files(Nothing {}).unwrap();
    assert_eq!(opened.hand_ins, 3);
    let [not_taken] = &opened.not_taken[..] else {
        panic!("{:?}", opened.not_taken);
    };
    assert_eq!(not_taken.file_name, "\\u202etac.jpg");
    assert!(matches!(not_taken.why, CallError::Refused { .. }));
    let from = ImportFrom::Opened;
    let job = desk.app.desk.import_hand_ins(ImportAsked { from }).unwrap();
    match desk.finish(job.unwrap()) {
        JobResult::Import { report } => assert_eq!(report.tally.files(), 3),
        other => panic!("{other:?}"),
    }
}

#[test]
fn opened_files_without_our_extension_are_known_by_their_content() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str, bytes: &[u8]| {
        let path = folder.path().join(name);
        fs::write(&path, bytes).unwrap();
        path
    };
    let good = fs::read(hand_in(&tablet, &sky)).unwrap();
    let pack = at("download", &fs::read(desk.pack_of(&class)).unwrap());
    let one = at("sky.sfhandin.bin", &good);
    let zip = at("document:41", &zip_of(&[("a/sky.sfhandin", good)]));
    let carry = at("carry (1)", &fs::read(carry(&tablet, &sky)).unwrap());
    let foreign = at("cat", b"a cat");
    desk.hands.open_with(&[&pack, &one, &zip, &carry, &foreign]);
    let opened = desk.app.device.opened_files(Nothing {}).unwrap();
    assert_eq!(
        opened.pack.map(|p| p.class_title).as_deref(),
        Some("Room 7 (invented)")
    );
    assert_eq!(opened.hand_ins, 2);
    assert_eq!(
        opened.carry.map(|c| c.file_name).as_deref(),
        Some("carry (1)")
    );
    let names: Vec<_> = opened.not_taken.iter().map(|n| &n.file_name[..]).collect();
    assert_eq!(names, ["cat"]);
    let from = ImportFrom::Opened;
    let job = desk.app.desk.import_hand_ins(ImportAsked { from }).unwrap();
    match desk.finish(job.unwrap()) {
        JobResult::Import { report } => assert_eq!(report.tally.files(), 2),
        other => panic!("{other:?}"),
    }
}

#[test]
fn an_opened_backup_is_read_when_its_passphrase_is_typed_and_not_before() {
    let device = Device::on("2026-09-01");
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("x.sfbackup");
    fs::write(&file, b"sealed").unwrap();
    device.hands.open_with(&[&file]);
    let opened = device.app.device.opened_files(Nothing {}).unwrap();
    fs::remove_file(&file).unwrap();
    let asked = OpenSealed {
        picked: opened.backup.unwrap().picked,
        passphrase: "seven quiet rivers".into(),
    };
    assert_eq!(
        device.app.device.restore_backup(asked).unwrap_err(),
        CallError::Refused {
            refusal: Refusal::Unreadable
        }
    );
}
