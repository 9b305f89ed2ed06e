//! A full disk and a read-only folder. Both need a small file system, which only root can mount;
//! without root these tests say that they are left out.

#![cfg(target_os = "linux")]

use crate::support::{Device, class_and_tablet, date, rate, rating};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use surefoot_app::{CallError, CheckInTap, Nothing, StoreName, StudentDay};
use surefoot_catalogue::rating::Confidence;
use surefoot_student::Tap;

/// A file system in memory, unmounted when dropped.
struct Mounted(PathBuf);

impl Mounted {
    fn at(folder: &Path, kib: u32) -> Option<Self> {
        let size = format!("size={kib}k");
        let target = folder.to_string_lossy();
        run("mount", &["-t", "tmpfs", "-o", &size, "tmpfs", &target])
            .then(|| Self(folder.to_owned()))
    }

    fn remount(&self, option: &str) {
        let option = format!("remount,{option}");
        assert!(run("mount", &["-o", &option, &self.0.to_string_lossy()]));
    }
}

impl Drop for Mounted {
    fn drop(&mut self) {
        run("umount", &["-l", &self.0.to_string_lossy()]);
    }
}

fn run(program: &str, args: &[&str]) -> bool {
    Command::new(program)
        .args(args)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .is_ok_and(|status| status.success())
}

/// A tablet with its data on a file system of this size.
fn on_small_disk(kib: u32) -> Option<(Mounted, Device, String)> {
    let (_, _, mut tablet, student) = class_and_tablet("2026-09-01");
    rate(&tablet, &student, Confidence::WithHelp);
    tablet.close();
    let data = tablet.folder.path().join("data");
    let kept = tablet.folder.path().join("kept");
    fs::rename(&data, &kept).unwrap();
    fs::create_dir(&data).unwrap();
    let Some(mounted) = Mounted::at(&data, kib) else {
        println!("left out: mounting a file system takes root");
        return None;
    };
    assert!(run(
        "cp",
        &[
            "-r",
            &format!("{}/.", kept.display()),
            &data.to_string_lossy()
        ]
    ));
    tablet.to("2026-09-01");
    Some((mounted, tablet, student))
}

#[test]
fn a_full_disk_is_told_and_every_tap_that_was_acknowledged_is_there() {
    let Some((_mounted, mut tablet, student)) = on_small_disk(1_500) else {
        return;
    };
    tablet.app.device.start(Nothing {}).unwrap();
    let day = StudentDay {
        student: student.clone(),
        date: None,
    };
    let concepts = tablet.app.student.today(day).unwrap().concepts;
    let filler = tablet.folder.path().join("data/filler");
    fs::write(&filler, vec![7_u8; 700_000]).unwrap();
    let mut last = vec![None; concepts.len()];
    let mut refused = None;
    for number in 0..5_000_usize {
        let place = number % concepts.len();
        let value =
            Confidence::try_from(u8::try_from(number / concepts.len() % 4).unwrap()).unwrap();
        let tap = CheckInTap {
            student: student.clone(),
            tap: Tap {
                date: date("2026-09-01"),
                concept: concepts[place].concept.id.clone(),
                confidence: Some(value),
                outcome: None,
            },
        };
        match tablet.app.student.check_in(tap) {
            Ok(_) => last[place] = Some(value),
            Err(error) => {
                refused = Some((number, error));
                break;
            }
        }
    }
    let (taps, error) = refused.expect("the disk never filled");
    assert!(taps > 20, "{taps}");
    assert_eq!(error, CallError::DiskFull, "after {taps} taps");
    fs::remove_file(filler).unwrap();
    tablet.to("2026-09-01");
    let day = StudentDay {
        student: student.clone(),
        date: None,
    };
    let found: Vec<_> = tablet
        .app
        .student
        .today(day)
        .unwrap()
        .concepts
        .iter()
        .map(|c| c.confidence)
        .collect();
    assert_eq!(found, last);
    rate(&tablet, &student, Confidence::CouldTeach);
    assert_eq!(
        rating(&tablet, &student, "2026-09-01"),
        Some(Confidence::CouldTeach)
    );
}

#[test]
fn a_folder_that_cannot_be_written_is_told_and_is_no_damage() {
    let Some((mounted, mut tablet, student)) = on_small_disk(4_000) else {
        return;
    };
    tablet.close();
    mounted.remount("ro");
    tablet.to("2026-09-01");
    let tap = || CheckInTap {
        student: student.clone(),
        tap: Tap {
            date: date("2026-09-01"),
            concept: "x".into(),
            confidence: None,
            outcome: None,
        },
    };
    assert!(
        matches!(
            tablet.app.student.check_in(tap()),
            Err(CallError::NotWritable { .. })
        ),
        "{:?}",
        tablet.app.student.check_in(tap())
    );
    let start = tablet.app.device.start(Nothing {}).unwrap();
    assert_eq!(
        start.damaged[0].store,
        StoreName::Student {
            student: student.clone()
        }
    );
    assert!(matches!(
        start.damaged[0].why,
        CallError::NotWritable { .. }
    ));
    tablet.close();
    mounted.remount("rw");
    tablet.to("2026-09-01");
    assert!(
        tablet
            .app
            .device
            .start(Nothing {})
            .unwrap()
            .damaged
            .is_empty()
    );
    assert_eq!(
        rating(&tablet, &student, "2026-09-01"),
        Some(Confidence::WithHelp)
    );
}
