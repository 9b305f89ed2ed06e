//! A class folder without a path, over providers with all habits.

use crate::provider::{Habits, OF_A_DRIVE, OF_THE_TABLET, Provider, Renames, Second, Writes};
use std::collections::BTreeSet;
use std::fs;
use std::io::ErrorKind;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::time::SystemTime;
use surefoot_app::{ClassFolder, FolderTrouble, folder_of};
use tempfile::{TempDir, tempdir};

const NAME: &str = "hand-in-ab12cd34ef56.sfhandin";

fn over(folder: &Path, habits: Habits) -> Arc<dyn ClassFolder> {
    folder_of(Arc::new(Provider::new(folder, habits)))
}

fn write(folder: &dyn ClassFolder, bytes: &[u8]) -> Result<(), FolderTrouble> {
    Ok(folder.write(NAME, bytes, SystemTime::now())?)
}

/// What is listed, and read under that name.
fn listed(folder: &dyn ClassFolder) -> Vec<(String, Vec<u8>)> {
    let listed = folder.list(&BTreeSet::new()).unwrap();
    (listed.entries.into_iter())
        .map(|entry| {
            let bytes = folder.read(&entry.name, 1 << 20).unwrap();
            assert_eq!(bytes.len() as u64, entry.mark.size_bytes);
            (entry.name, bytes)
        })
        .collect()
}

fn names(folder: &TempDir) -> Vec<String> {
    (fs::read_dir(folder.path()).unwrap())
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect()
}

/// Every provider that keeps what is written and gives it the name that is asked for, sooner or later.
fn usable() -> Vec<Habits> {
    let mut all = Vec::new();
    for renames in [Renames::Yes, Renames::SaysSo, Renames::No] {
        for second in [
            Second::Counts,
            Second::Same,
            Second::Refuses,
            Second::Replaces,
        ] {
            // It can neither rename nor have a second one: nothing keeps the older file until the
            // newer is whole.
            if renames != Renames::Yes && second == Second::Refuses {
                continue;
            }
            for keeps_ids in [false, true] {
                all.push(Habits {
                    renames,
                    second,
                    keeps_ids,
                    ..OF_THE_TABLET
                });
            }
        }
    }
    all
}

#[test]
fn a_file_is_replaced_under_its_name_whatever_the_provider_does_with_names() {
    let late = [OF_THE_TABLET, OF_A_DRIVE].map(|habits| Habits {
        writes: Writes::Late,
        ..habits
    });
    for habits in usable().into_iter().chain(late) {
        let at = tempdir().unwrap();
        let folder = over(at.path(), habits);
        for bytes in [b"first".as_slice(), b"second", b"third"] {
            assert_eq!(write(folder.as_ref(), bytes), Ok(()), "{habits:?}");
            let there = listed(folder.as_ref());
            assert_eq!(there, [(NAME.to_owned(), bytes.to_vec())], "{habits:?}");
            assert_eq!(names(&at).len(), 1, "{habits:?}: {:?}", names(&at));
        }
        folder.remove(NAME).unwrap();
        assert!(names(&at).is_empty(), "{habits:?}");
    }
}

#[test]
fn a_program_that_is_ended_at_any_request_leaves_the_older_or_the_newer_file_whole() {
    let (older, newer) = (
        b"the older file".as_slice(),
        b"the newer, longer file".as_slice(),
    );
    let mut tries = 0;
    for habits in usable() {
        for requests in 0.. {
            let at = tempdir().unwrap();
            write(over(at.path(), habits).as_ref(), older).unwrap();
            let ended = Provider::ended_after(at.path(), habits, requests);
            let left = ended.left();
            let written = write(folder_of(Arc::new(ended)).as_ref(), newer);
            let there = listed(over(at.path(), habits).as_ref());
            let has = |bytes: &[u8]| there.iter().any(|(_, found)| found == bytes);
            assert!(
                has(older) || has(newer),
                "{habits:?} ended after {requests}: {there:?}"
            );
            tries += 1;
            if written.is_ok() && left.load(Ordering::SeqCst) > 0 {
                break;
            }
            // A half-written file is seen only where nothing can be renamed.
            let half = &newer[..newer.len() / 2];
            assert!(!has(half) || habits.renames != Renames::Yes, "{habits:?}");

            // The next round ends it, and leaves at most a copy that the desk removes.
            let again = b"the file of the next round".as_slice();
            let folder = over(at.path(), habits);
            assert_eq!(write(folder.as_ref(), again), Ok(()), "{habits:?}");
            let there = listed(folder.as_ref());
            let named: Vec<_> = there.iter().filter(|(name, _)| name == NAME).collect();
            assert_eq!(named.len(), 1, "{there:?}");
            assert_eq!(named[0].1, again, "{habits:?}");
            assert!(names(&at).iter().all(|name| !name.contains(".part")));
        }
    }
    println!("{tries} ends");
    assert!(tries > 200, "{tries}");
}

#[test]
fn what_is_not_whole_never_takes_the_place_of_the_older_file() {
    for renames in [Renames::Yes, Renames::No] {
        for (writes, told) in [
            (Writes::Fails(ErrorKind::StorageFull), FolderTrouble::Full),
            (
                Writes::Fails(ErrorKind::PermissionDenied),
                FolderTrouble::ReadOnly,
            ),
            (Writes::HalfUntold, FolderTrouble::Other),
        ] {
            let at = tempdir().unwrap();
            let sound = Habits {
                renames,
                ..OF_THE_TABLET
            };
            write(over(at.path(), sound).as_ref(), b"older").unwrap();
            let folder = over(at.path(), Habits { writes, ..sound });
            assert_eq!(write(folder.as_ref(), b"newer"), Err(told));
            let there = listed(folder.as_ref());
            assert_eq!(there, [(NAME.to_owned(), b"older".to_vec())]);
            assert_eq!(names(&at), [NAME], "{renames:?} {writes:?}");
        }
    }
}

#[test]
fn a_provider_that_changes_names_or_can_do_too_little_is_told_and_the_older_file_stays() {
    let adds = Habits {
        adds_ending: true,
        ..OF_THE_TABLET
    };
    let little = Habits {
        renames: Renames::No,
        second: Second::Refuses,
        ..OF_THE_TABLET
    };
    for (habits, told) in [
        (adds, FolderTrouble::ChangesNames),
        (little, FolderTrouble::Other),
    ] {
        let at = tempdir().unwrap();
        fs::write(at.path().join(NAME), "older").unwrap();
        let folder = over(at.path(), habits);
        assert_eq!(write(folder.as_ref(), b"newer"), Err(told));
        assert_eq!(names(&at), [NAME], "{habits:?}");
        assert_eq!(fs::read(at.path().join(NAME)).unwrap(), b"older");
    }
}

#[test]
fn of_two_files_with_one_name_none_hides_the_other() {
    let at = tempdir().unwrap();
    let habits = Habits {
        second: Second::Same,
        ..OF_A_DRIVE
    };
    fs::write(at.path().join(NAME), "one").unwrap();
    fs::write(at.path().join(format!("{NAME}\u{1}1")), "two").unwrap();
    let folder = over(at.path(), habits);
    let there = listed(folder.as_ref());
    let mut contents: Vec<_> = there.iter().map(|(_, bytes)| bytes.clone()).collect();
    contents.sort();
    assert_eq!(contents, [b"one".to_vec(), b"two".to_vec()]);
    let (plain, copy) = (&there[1].0, &there[0].0);
    assert_eq!(plain, NAME);
    assert!(copy.starts_with("hand-in-ab12cd34ef56 ("), "{copy}");
    // The names stay from round to round, and the copy can be removed by its own.
    assert_eq!(listed(over(at.path(), habits).as_ref()), there);
    folder.remove(copy).unwrap();
    assert_eq!(listed(folder.as_ref()), there[1..]);
    // A newer file takes the place of both.
    fs::write(at.path().join(format!("{NAME}\u{1}1")), "two").unwrap();
    write(folder.as_ref(), b"newer").unwrap();
    assert_eq!(
        listed(folder.as_ref()),
        [(NAME.to_owned(), b"newer".to_vec())]
    );
}

#[test]
fn folders_and_names_that_lead_elsewhere_are_no_files() {
    let at = tempdir().unwrap();
    let folder = over(at.path(), OF_THE_TABLET);
    fs::create_dir(at.path().join(NAME)).unwrap();
    fs::create_dir(at.path().join(format!(".{NAME}.part"))).unwrap();
    std::os::unix::fs::symlink("/etc/hostname", at.path().join("a.zip")).unwrap();
    fs::write(at.path().join("notes.txt"), "").unwrap();
    assert!(listed(folder.as_ref()).is_empty());
    assert!(folder.read("a.zip", 9).is_err() && folder.read("notes.txt", 9).is_err());
    assert_eq!(write(folder.as_ref(), b"x"), Err(FolderTrouble::InTheWay));
    for name in ["../a.zip", "", "..", "b/a.zip"] {
        let refused = folder.write(name, b"", SystemTime::now()).unwrap_err();
        assert_eq!(refused.kind(), ErrorKind::InvalidInput, "{name}");
    }
    fs::remove_dir(at.path().join(NAME)).unwrap();
    // What stands where the part goes is stepped around.
    write(folder.as_ref(), b"x").unwrap();
    assert_eq!(listed(folder.as_ref()).len(), 1);
    fs::remove_dir(at.path().join(format!(".{NAME}.part"))).unwrap();
}

#[test]
fn a_file_is_new_when_its_content_is_also_where_nobody_knows_times() {
    let at = tempdir().unwrap();
    let folder = over(at.path(), OF_A_DRIVE);
    let mut marks = BTreeSet::new();
    for bytes in [b"one", b"two", b"six"] {
        write(folder.as_ref(), bytes).unwrap();
        let entries = folder.list(&BTreeSet::new()).unwrap().entries;
        assert_eq!(entries, folder.list(&BTreeSet::new()).unwrap().entries);
        marks.insert(entries[0].mark.changed_millis);
    }
    assert_eq!(marks.len(), 3);
}
