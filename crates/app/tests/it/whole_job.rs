//! The whole job with the sample class, whose true knowledge is known.

use crate::support::date;
use surefoot_app::demo::{DemoPlan, make};
use surefoot_app::{FileKind, Progress, files_in, import_files};
use surefoot_catalogue::Language;
use surefoot_desk::Verdict;
use surefoot_desk::{GroupWishes, board, open_class, suggest_groups};
use surefoot_store::{DeskStore, Durability};

#[test]
fn the_planted_weak_concepts_are_among_the_top_of_the_board() {
    let folder = tempfile::tempdir().unwrap();
    let plan = DemoPlan {
        students: 14,
        weeks: 8,
        seed: 5,
        today: date("2026-11-25"),
        leave_last_hand_ins: false,
    };
    let made = make(&folder.path().join("class"), &plan, &Progress::default()).unwrap();
    assert_eq!(made.planted_weak.len(), 4);
    assert_eq!(made.refused, 0);
    assert_eq!(made.imported, made.hand_ins);
    let desk = DeskStore::open(&made.desk, Durability::Full).unwrap();
    let class = open_class(&desk, &made.class).unwrap();
    let first = board(&desk, &class, &[], Language::first(), made.today).unwrap();
    let top: Vec<&str> = first
        .rows
        .iter()
        .take(8)
        .map(|r| r.concept.id.as_str())
        .collect();
    let found = made
        .planted_weak
        .iter()
        .filter(|p| top.contains(&p.as_str()))
        .count();
    assert!(found >= 3, "{found} of {:?} in {top:?}", made.planted_weak);

    // Importing every file again in the reverse order changes nothing.
    let mut sources = files_in(&made.shared_folder, FileKind::HandIn).unwrap();
    sources.reverse();
    let report = import_files(&desk, sources, made.today, &Progress::default()).unwrap();
    assert!(report.files.iter().all(|f| f.verdict == Verdict::Known));
    assert_eq!(
        board(&desk, &class, &[], Language::first(), made.today).unwrap(),
        first
    );

    let groups = suggest_groups(
        &desk,
        &class,
        Language::first(),
        made.today,
        &GroupWishes::default(),
    )
    .unwrap();
    assert!(!groups.groups.is_empty());
    for group in &groups.groups {
        assert!((2..=5).contains(&group.members.len()));
    }
}

#[test]
fn the_same_plan_makes_the_same_class_and_a_full_folder_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    let plan = DemoPlan {
        students: 3,
        weeks: 2,
        seed: 9,
        today: date("2026-11-25"),
        leave_last_hand_ins: true,
    };
    let boards: Vec<_> = ["a", "b"]
        .iter()
        .map(|name| {
            let made = make(&folder.path().join(name), &plan, &Progress::default()).unwrap();
            let desk = DeskStore::open(&made.desk, Durability::Full).unwrap();
            let class = open_class(&desk, &made.class).unwrap();
            board(
                &desk,
                &class,
                &[],
                Language::tagged("es").unwrap(),
                made.today,
            )
            .unwrap()
        })
        .collect();
    assert_eq!(boards[0], boards[1]);
    assert!(make(&folder.path().join("a"), &plan, &Progress::default()).is_err());
    let stopped = Progress::default();
    stopped.stop();
    assert!(make(&folder.path().join("c"), &plan, &stopped).is_err());
}
