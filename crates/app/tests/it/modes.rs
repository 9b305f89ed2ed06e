//! The data folder is open to its user alone.

#![cfg(unix)]

use crate::support::{class_and_tablet, date, hand_in, rate};
use std::fs;
use std::os::unix::fs::PermissionsExt as _;
use std::path::Path;
use surefoot_app::demo::{self, DemoPlan};
use surefoot_app::{DeviceSettings, Nothing, Progress, RestoreCopy, StoreName};
use surefoot_catalogue::rating::Confidence;

/// What is open to others under a folder, and how many files and folders there are.
fn open_to_others(folder: &Path) -> (Vec<String>, usize) {
    let (mut open, mut all) = (Vec::new(), 1);
    let mode = |path: &Path| fs::metadata(path).unwrap().permissions().mode() & 0o777;
    if mode(folder) != 0o700 {
        open.push(format!("{} {:o}", folder.display(), mode(folder)));
    }
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            let (more, number) = open_to_others(&path);
            open.extend(more);
            all += number;
        } else {
            all += 1;
            if mode(&path) != 0o600 {
                open.push(format!("{} {:o}", path.display(), mode(&path)));
            }
        }
    }
    (open, all)
}

#[test]
fn every_file_and_folder_is_for_its_user_alone_and_what_is_saved_is_not() {
    let (mut desk, class, mut tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let inbox = tempfile::tempdir().unwrap();
    let handed_in = hand_in(&tablet, &sky);
    fs::copy(&handed_in, inbox.path().join("1.sfhandin")).unwrap();
    desk.import(inbox.path());
    desk.hands.will_pick(inbox.path());
    desk.app.desk.name_class_folder(Nothing {}).unwrap();
    let settings: DeviceSettings = desk.app.device.start(Nothing {}).unwrap().settings;
    desk.app.device.save_device_settings(settings).unwrap();
    for device in [&mut desk, &mut tablet] {
        device.to("2026-09-02");
        device.app.device.start(Nothing {}).unwrap();
    }
    let store = StoreName::Desk;
    let name = desk.app.device.copies(store.clone()).unwrap().copies[0]
        .name
        .clone();
    let asked = RestoreCopy { store, name };
    assert!(desk.app.device.restore_copy(asked).unwrap().quarantined);
    desk.pack_of(&class);
    let plan = DemoPlan {
        students: 2,
        weeks: 1,
        ..DemoPlan::sample(date("2026-10-16"))
    };
    let sample = desk.folder.path().join("data/sample");
    demo::make(&sample, &plan, &Progress::default()).unwrap();
    for (device, least) in [(&desk, 20), (&tablet, 9)] {
        let (open, all) = open_to_others(&device.folder.path().join("data"));
        assert!(open.is_empty(), "{open:?}");
        assert!(all >= least, "{all} files and folders");
    }
    // A hand-in is given to others, so it has the rights that any file of this person has.
    let usual = tablet.folder.path().join("usual");
    fs::write(&usual, b"").unwrap();
    let mode = |path: &Path| fs::metadata(path).unwrap().permissions().mode();
    assert_eq!(mode(&handed_in), mode(&usual));
}
