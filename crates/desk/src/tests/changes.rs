//! Renaming a class, changing its year, removing a seat or a class.

use super::{Desk, date, new_class};
use crate::{
    ClassSecrets, DeskError, Field, Rule, add_seats, assign, board, class_setup, copy_class,
    delete_class, keep_group_wishes, keep_groups, make_class_pack, move_year, open_class,
    record_group, remove_seat, rename_class, restore, seat_holdings, set_closures, set_practice,
    set_rotation, unscheduled_concepts,
};
use crate::{CopyClass, Import, NewAssignment};
use crate::{GroupChosen, GroupWishes};
use crate::{NewTaughtAgain, TaughtFromWhere, drop_taught_again, note_taught_again};
use surefoot_catalogue::Language;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_exchange::Refusal;
use surefoot_record::{PracticeRules, Thing};
use surefoot_store::desk::GroupRoomRow;

#[test]
fn a_new_title_is_trimmed_checked_and_makes_the_pack_due() {
    let desk = Desk::with_seats(2);
    let today = date("2026-11-02");
    make_class_pack(&desk.store, &desk.open(), today).unwrap();
    rename_class(&desk.store, &desk.class, "  Room 2 ").unwrap();
    let setup = class_setup(&desk.store, &desk.class, Language::first(), today).unwrap();
    assert_eq!(setup.summary.title, "Room 2");
    assert!(setup.summary.pack_outdated);
    for bad in [" ", "a\nb", &"x".repeat(61)] {
        assert!(matches!(
            rename_class(&desk.store, &desk.class, bad),
            Err(DeskError::Invalid {
                field: Field::Title,
                ..
            })
        ));
    }
}

#[test]
fn the_year_moves_and_moves_back_without_losing_anything() {
    let desk = Desk::with_seats(3);
    let today = date("2026-11-02");
    let set_up = || class_setup(&desk.store, &desk.class, Language::first(), today).unwrap();
    let closures = [date("2026-09-07"), date("2027-05-05")].into();
    set_closures(&desk.store, &desk.class, closures).unwrap();
    let concept = desk.concept(0);
    desk.rate(1, "2026-08-31", &concept, 0);
    let before = set_up();
    let rated = || {
        board(&desk.store, &desk.open(), &[], Language::first(), today)
            .unwrap()
            .rows
            .iter()
            .map(|r| r.latest.iter().sum::<u32>())
            .sum::<u32>()
    };
    assert_eq!(rated(), 1);

    move_year(
        &desk.store,
        &desk.class,
        date("2026-09-01"),
        date("2027-04-30"),
        [1, 2, 3, 4].into(),
    )
    .unwrap();
    let moved = set_up();
    assert_eq!(moved.year.closures, before.year.closures);
    assert!(moved.school_days < before.school_days);
    assert_eq!(rated(), 0, "what lies outside the year does not count");

    let year = &before.year;
    move_year(
        &desk.store,
        &desk.class,
        year.first_day,
        year.last_day,
        year.weekdays.clone(),
    )
    .unwrap();
    assert_eq!(set_up(), before);
    assert_eq!(rated(), 1);

    let backwards = move_year(
        &desk.store,
        &desk.class,
        year.last_day,
        year.first_day,
        year.weekdays.clone(),
    );
    assert!(matches!(backwards, Err(DeskError::Calendar(_))));
    assert_eq!(set_up(), before);
}

#[test]
fn a_removed_seat_leaves_nothing_and_the_others_everything() {
    let desk = Desk::with_seats(3);
    let today = date("2026-11-02");
    let concept = desk.concept(0);
    for seat in [2, 3] {
        desk.rate(seat, "2026-10-26", &concept, 1);
        desk.keep_hand_in(seat);
    }
    let assigned = |seats: Vec<u32>, id: &str| {
        let new = NewAssignment {
            concepts: vec![concept.clone()],
            items_each: 2,
            from: today,
            due: today,
            seats,
        };
        assign(&desk.store, &desk.open(), &new, id, today).unwrap();
    };
    assigned(vec![3], "00000000000000a1");
    assigned(vec![2, 3], "00000000000000a2");
    let held = seat_holdings(&desk.store, &desk.class, 3).unwrap();
    assert_eq!((held.hand_ins, held.reports, held.answers), (1, 1, 0));

    remove_seat(&desk.store, &desk.class, 3, &[7; 32]).unwrap();
    let seats: Vec<u32> = desk.open().seats.iter().map(|s| s.number).collect();
    assert_eq!(seats, [1, 2]);
    assert_eq!(desk.check_ins(&desk.class), [(2, 1)].into());
    assert!(desk.store.hand_ins(&desk.class, 3).unwrap().is_empty());
    assert_eq!(desk.store.devices(&desk.class).unwrap().len(), 1);
    let left = desk.store.assignments(&desk.class).unwrap();
    assert_eq!(left.len(), 1, "one was for this seat only");
    assert_eq!(left[0].seats, [2]);
    assert!(seat_holdings(&desk.store, &desk.class, 3).is_err());

    // A new seat may get the number, and nothing of the old one.
    add_seats(&desk.store, &desk.class, &["New".into()], &[9; 32]).unwrap();
    let held = seat_holdings(&desk.store, &desk.class, 3).unwrap();
    assert_eq!((held.hand_ins, held.reports), (0, 0));
}

#[test]
fn the_last_seat_stays() {
    let desk = Desk::with_seats(2);
    remove_seat(&desk.store, &desk.class, 1, &[7; 32]).unwrap();
    assert!(matches!(
        remove_seat(&desk.store, &desk.class, 2, &[7; 32]),
        Err(DeskError::Invalid {
            field: Field::Seats,
            ..
        })
    ));
    assert!(matches!(
        remove_seat(&desk.store, &desk.class, 7, &[7; 32]),
        Err(DeskError::NotFound(Thing::Seat))
    ));
}

#[test]
fn a_deleted_class_leaves_the_other_alone() {
    let desk = Desk::with_seats(2);
    let other = new_class(&desk.store, "Room 9 (invented)", 2, 50);
    desk.rate(1, "2026-10-26", &desk.concept(0), 1);
    desk.keep_hand_in(1);
    delete_class(&desk.store, &desk.class).unwrap();
    let left = desk.store.classes().unwrap();
    assert_eq!(left.len(), 1);
    assert_eq!(left[0].id, other);
    assert!(desk.check_ins(&desk.class).is_empty());
    assert!(desk.store.hand_ins(&desk.class, 1).unwrap().is_empty());
    assert!(matches!(
        delete_class(&desk.store, &desk.class),
        Err(DeskError::NotFound(_))
    ));
}

#[test]
fn a_concept_taken_out_is_spare_and_leaves_assigned_practice_packable() {
    let desk = Desk::with_seats(2);
    let today = date("2026-11-02");
    let days = desk.open().facts.rotation.days().to_vec();
    let out = days[0][0].clone();
    let new = NewAssignment {
        concepts: vec![out.clone(), days[1][0].clone()],
        items_each: 2,
        from: today,
        due: today,
        seats: vec![],
    };
    assign(&desk.store, &desk.open(), &new, "00000000000000a1", today).unwrap();
    let spare = |store| {
        unscheduled_concepts(store, &desk.class, Language::tagged("es").unwrap())
            .unwrap()
            .iter()
            .any(|c| c.concept.id == out && c.concept.title != out)
    };
    assert!(!spare(&desk.store));
    let mut without = days.clone();
    without[0].remove(0);
    set_rotation(&desk.store, &desk.class, without).unwrap();
    assert!(spare(&desk.store));
    make_class_pack(&desk.store, &desk.open(), today).unwrap();
    set_rotation(&desk.store, &desk.class, days).unwrap();
    assert!(!spare(&desk.store));
}

#[test]
fn a_copy_has_the_rotation_and_the_pace_of_its_model_in_a_year_of_its_own() {
    let desk = Desk::with_seats(3);
    set_closures(&desk.store, &desk.class, [date("2026-09-07")].into()).unwrap();
    desk.rate(1, "2026-09-08", &desk.concept(0), 1);
    let room = GroupRoomRow {
        slots: 2,
        groups_at_once: 3,
        size_least: 2,
        size_most: 5,
        with_partner: true,
    };
    desk.store.put_group_room(&desk.class, &room).unwrap();
    let practice = PracticeRules {
        test_on: Some(date("2027-04-20")),
        minutes_most: PracticeRules::USUAL.minutes_most - 5,
        ..PracticeRules::USUAL
    };
    set_practice(&desk.store, &desk.class, practice).unwrap();
    let model = desk.open();
    let copy = CopyClass {
        from: desk.class.clone(),
        title: "Next year (invented)".into(),
        names: vec!["N1".into(), String::new()],
        year: SchoolYear::new(
            date("2027-08-30"),
            date("2028-05-05"),
            [1, 2, 3, 4].into(),
            [date("2027-09-06")].into(),
        )
        .unwrap(),
    };
    let secrets = ClassSecrets {
        sealing: [78; 32],
        signing: [79; 32],
        seats: [80; 32],
    };
    let made = copy_class(&desk.store, &copy, &secrets, date("2027-06-01")).unwrap();
    let copied = open_class(&desk.store, &made.id).unwrap();
    assert_eq!(copied.facts.rotation, model.facts.rotation);
    assert_eq!(copied.facts.year, copy.year);
    let room = |class: &str| desk.store.group_room(class).unwrap();
    assert!(room(&made.id).is_some() && room(&made.id) == room(&desk.class));
    assert_ne!(copied.row.practice, PracticeRules::USUAL);
    assert_eq!(
        copied.row.practice,
        PracticeRules {
            test_on: None,
            ..model.row.practice
        }
    );
    assert_eq!(copied.seats.len(), 2);
    for (concept, date) in &model.facts.taught_from {
        let number = model.facts.year.school_days_before(*date);
        match copied.facts.taught_from.get(concept) {
            Some(moved) => assert_eq!(copied.facts.year.school_days_before(*moved), number),
            None => assert!(number >= copied.facts.year.school_days().count()),
        }
    }
    assert!(desk.check_ins(&made.id).is_empty());
    assert_ne!(copied.row.sealing_identity, model.row.sealing_identity);
    let unknown = CopyClass {
        from: "00".into(),
        ..copy
    };
    assert!(matches!(
        copy_class(&desk.store, &unknown, &secrets, date("2027-06-01")),
        Err(DeskError::NotFound(_))
    ));
}

/// Every row of every table, as text.
fn everything(desk: &Desk) -> String {
    desk.dump()
}

#[test]
fn what_was_removed_comes_back_as_it_was() {
    let desk = Desk::with_seats(3);
    new_class(&desk.store, "Room 9 (invented)", 2, 50);
    let today = date("2026-11-02");
    let concept = desk.concept(0);
    for seat in [2, 3] {
        desk.rate(seat, "2026-10-26", &concept, 1);
        desk.keep_hand_in(seat);
    }
    let new = |seats: Vec<u32>| NewAssignment {
        concepts: vec![concept.clone()],
        items_each: 2,
        from: today,
        due: today,
        seats,
    };
    assign(
        &desk.store,
        &desk.open(),
        &new(vec![3]),
        "00000000000000a1",
        today,
    )
    .unwrap();
    assign(
        &desk.store,
        &desk.open(),
        &new(vec![2, 3]),
        "00000000000000a2",
        today,
    )
    .unwrap();
    let wishes = GroupWishes {
        keep_apart: vec![(1, 3)],
        absent: vec![3],
        ..GroupWishes::default()
    };
    keep_group_wishes(&desk.store, &desk.open(), today, &wishes).unwrap();
    let group = GroupChosen {
        slot: 0,
        concept: concept.clone(),
        seats: vec![2, 3],
        partners: Vec::new(),
    };
    keep_groups(&desk.store, &desk.open(), today, &[group]).unwrap();
    record_group(&desk.store, &desk.open(), today, 3, &concept, Some(true)).unwrap();
    let taught = |seats: Vec<u32>, note: &str| NewTaughtAgain {
        replaces: None,
        date: today,
        concept: concept.clone(),
        came_from: TaughtFromWhere::Hand,
        seats,
        note: Some(note.into()),
    };
    for entry in [taught(vec![3], "alone"), taught(Vec::new(), "all")] {
        note_taught_again(&desk.store, &desk.open(), &entry, today).unwrap();
    }
    let before = everything(&desk);

    let seat = remove_seat(&desk.store, &desk.class, 3, &[7; 32]).unwrap();
    desk.store.remove_empty_imports().unwrap();
    assert_ne!(everything(&desk), before);
    // What was noted of this student alone is gone with its words.
    let left = desk.store.taught_again(&desk.class).unwrap();
    let notes: Vec<_> = left.iter().map(|entry| entry.note.as_deref()).collect();
    assert_eq!(notes, [None, Some("all")]);
    assert!(left.iter().all(|entry| !entry.seats.contains(&3)));
    restore(&desk.store, &seat).unwrap();
    assert_eq!(everything(&desk), before);

    let class = delete_class(&desk.store, &desk.class).unwrap();
    desk.store.remove_empty_imports().unwrap();
    assert!(!everything(&desk).contains(&desk.class));
    restore(&desk.store, &class).unwrap();
    assert_eq!(everything(&desk), before);
    // A second time fails.
    assert!(matches!(
        restore(&desk.store, &class),
        Err(DeskError::Invalid {
            field: Field::Removed,
            rule: Rule::Taken
        })
    ));
    assert_eq!(everything(&desk), before);
}

/// Else an entry or groups that the teacher changes within the ten minutes would cost the record.
#[test]
fn a_seat_comes_back_without_what_was_removed_meanwhile() {
    let desk = Desk::with_seats(3);
    let today = date("2026-11-02");
    let concept = desk.concept(0);
    desk.rate(3, "2026-10-26", &concept, 1);
    let group = GroupChosen {
        slot: 0,
        concept: concept.clone(),
        seats: vec![2, 3],
        partners: Vec::new(),
    };
    keep_groups(&desk.store, &desk.open(), today, &[group]).unwrap();
    let taught = NewTaughtAgain {
        replaces: None,
        date: today,
        concept: concept.clone(),
        came_from: TaughtFromWhere::Hand,
        seats: vec![2, 3],
        note: None,
    };
    note_taught_again(&desk.store, &desk.open(), &taught, today).unwrap();
    let check_ins = desk.check_ins(&desk.class);
    let seat = remove_seat(&desk.store, &desk.class, 3, &[7; 32]).unwrap();
    let entry = desk.store.taught_again(&desk.class).unwrap()[0].id;
    drop_taught_again(&desk.store, &desk.open(), entry).unwrap();
    keep_groups(&desk.store, &desk.open(), today, &[]).unwrap();
    restore(&desk.store, &seat).unwrap();
    assert_eq!(desk.check_ins(&desk.class), check_ins);
    assert!(desk.store.taught_again(&desk.class).unwrap().is_empty());
}

#[test]
fn a_seat_does_not_come_back_into_a_group_on_another_concept() {
    let desk = Desk::with_seats(4);
    let today = date("2026-11-02");
    let on = |concept: usize, seats: &[u32]| GroupChosen {
        slot: 0,
        concept: desk.concept(concept),
        seats: seats.to_vec(),
        partners: Vec::new(),
    };
    let keep = |groups: &[GroupChosen]| {
        keep_groups(&desk.store, &desk.open(), today, groups).unwrap();
    };
    let members = || -> Vec<(String, Vec<u32>)> {
        let groups = desk.store.small_groups(&desk.class, today).unwrap();
        groups.into_iter().map(|g| (g.concept, g.seats)).collect()
    };
    for (anew, back) in [(0, vec![2, 3]), (1, vec![2])] {
        keep(&[on(0, &[2, 3])]);
        let seat = remove_seat(&desk.store, &desk.class, 3, &[7; 32]).unwrap();
        keep(&[on(anew, &[2])]);
        restore(&desk.store, &seat).unwrap();
        assert_eq!(members(), [(desk.concept(anew), back)]);
    }
}

#[test]
fn a_seat_whose_number_was_given_away_does_not_come_back() {
    let desk = Desk::with_seats(3);
    desk.rate(3, "2026-10-26", &desk.concept(0), 1);
    let seat = remove_seat(&desk.store, &desk.class, 3, &[7; 32]).unwrap();
    add_seats(&desk.store, &desk.class, &["New".into()], &[9; 32]).unwrap();
    let before = everything(&desk);
    assert!(matches!(
        restore(&desk.store, &seat),
        Err(DeskError::Invalid {
            field: Field::Removed,
            ..
        })
    ));
    assert_eq!(everything(&desk), before);
}

#[test]
fn refused_files_that_show_the_seat_go_with_it_and_come_back() {
    let desk = Desk::with_seats(3);
    let today = date("2026-11-02");
    crate::name_seat(&desk.store, &desk.class, 3, Some("Ana Li")).unwrap();
    let token = desk.open().seats[2].token.clone();
    let of_seat = [
        format!("{}-2026.sfhandin", token.to_lowercase()),
        "week 2.zip: ana_li.sfhandin".to_owned(),
    ];
    let of_others = ["analisa.sfhandin", "Ana.sfhandin", "x.sfhandin"].map(str::to_owned);
    let import = Import::begin(&desk.store, today).unwrap();
    for file in of_seat.iter().chain(&of_others) {
        import.take(file, Err(Refusal::Damaged)).unwrap();
    }
    import.end(false).unwrap();
    let names = || -> Vec<String> {
        let journal = crate::imports(&desk.store, None).unwrap();
        let lines = journal.imports.into_iter().flat_map(|one| one.files);
        lines.map(|line| line.file_name).collect()
    };
    let seat = remove_seat(&desk.store, &desk.class, 3, &[7; 32]).unwrap();
    assert_eq!(names(), of_others);
    restore(&desk.store, &seat).unwrap();
    assert_eq!(names(), [&of_seat[..], &of_others].concat());
}
