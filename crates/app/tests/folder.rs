//! Folders: which files are listed and read, and how a file is written.
#![allow(clippy::unwrap_used)]

use std::fs;
use surefoot_app::{FileKind, file_at, files_in, write_atomic};
use surefoot_exchange::Refusal;

#[test]
fn a_folder_lists_its_files_by_name_and_no_others() {
    let folder = tempfile::tempdir().unwrap();
    for name in ["b.sfhandin", "a.SFHANDIN", "c.sfclass", "notes.txt"] {
        fs::write(folder.path().join(name), name).unwrap();
    }
    fs::create_dir(folder.path().join("inner")).unwrap();
    fs::write(folder.path().join("inner/d.sfhandin"), "deep").unwrap();

    let found = files_in(folder.path(), FileKind::HandIn).unwrap();
    let names: Vec<_> = found.iter().map(surefoot_app::FileSource::name).collect();
    assert_eq!(names, ["a.SFHANDIN", "b.sfhandin"]);
    let texts: Vec<_> = found.into_iter().map(|f| f.read(100).unwrap()).collect();
    assert_eq!(texts, [b"a.SFHANDIN".to_vec(), b"b.sfhandin".to_vec()]);
}

#[cfg(unix)]
#[test]
fn links_pipes_and_folders_are_listed_but_not_read() {
    let outside = tempfile::tempdir().unwrap();
    let secret = outside.path().join("secret");
    fs::write(&secret, "not yours").unwrap();
    let folder = tempfile::tempdir().unwrap();
    std::os::unix::fs::symlink(&secret, folder.path().join("link.sfhandin")).unwrap();
    std::os::unix::fs::symlink("nowhere", folder.path().join("gone.sfhandin")).unwrap();
    fs::create_dir(folder.path().join("room.sfhandin")).unwrap();
    let pipe = folder.path().join("pipe.sfhandin");
    let made = std::process::Command::new("mkfifo").arg(&pipe).status();
    assert!(made.unwrap().success());

    let found = files_in(folder.path(), FileKind::HandIn).unwrap();
    assert_eq!(found.len(), 4);
    for file in found {
        assert_eq!(file.read(100), Err(Refusal::Unreadable));
    }
    assert_eq!(file_at(&pipe).read(100), Err(Refusal::Unreadable));
}

#[test]
fn reading_stops_one_byte_past_the_cap() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("x.sfhandin");
    fs::write(&path, [7; 65]).unwrap();
    assert_eq!(file_at(&path).read(65).unwrap().len(), 65);
    assert_eq!(
        file_at(&path).read(64),
        Err(Refusal::TooLarge {
            found_bytes: 65,
            most_bytes: 64
        })
    );
}

#[test]
fn a_file_is_replaced_whole_and_nothing_else_stays() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("kept.sfclass");
    write_atomic(&path, b"first").unwrap();
    write_atomic(&path, b"second").unwrap();
    assert_eq!(fs::read(&path).unwrap(), b"second");
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
}

#[test]
fn a_write_that_fails_leaves_what_was_there() {
    let folder = tempfile::tempdir().unwrap();
    // A folder in the way makes the last step, the rename, fail.
    let path = folder.path().join("kept.sfclass");
    fs::create_dir(&path).unwrap();
    fs::write(path.join("inside"), "x").unwrap();
    assert!(write_atomic(&path, b"new").is_err());
    assert!(path.join("inside").exists());
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
}
