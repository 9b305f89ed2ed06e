//! The same tests over a folder without a path, as tablets have it.

use super::*;
use crate::provider::{HABITS, Habits, OF_A_DRIVE, OF_THE_TABLET, provided_at};
use crate::support::FOLDERS;
use surefoot_app::{TreeFault, folder_at};

/// Runs a test with class folders of such a provider, and lets the next test have paths again.
fn over(habits: Habits, test: fn()) {
    struct Back;
    impl Drop for Back {
        fn drop(&mut self) {
            FOLDERS.set(folder_at);
            HABITS.set(OF_THE_TABLET);
        }
    }
    let _back = Back;
    FOLDERS.set(provided_at);
    HABITS.set(habits);
    test();
}

macro_rules! over_trees {
    ($habits:expr, $($test:ident)+) => {
        $(#[test] fn $test() { over($habits, super::super::$test); })+
    };
}

// Left out is the one test that sets times, which a provider does itself.
mod of_the_tablet {
    use super::*;
    over_trees! { OF_THE_TABLET,
        an_import_that_failed_or_was_stopped_is_tried_again
        a_desk_that_an_earlier_one_replaces_imports_again_what_it_lacks
        packs_and_hand_ins_travel_by_themselves_and_replace_one_another
        a_folder_that_is_away_full_read_only_or_silent_is_told_and_nothing_waits_or_is_lost
        a_real_folder_that_went_or_refuses_is_told_in_the_same_words
        a_student_is_told_after_three_school_days_and_the_hand_in_by_hand_ends_it
        unfinished_files_are_left_alone_and_half_a_file_loses_nothing
        copies_with_changed_names_are_read_and_only_what_is_contained_goes
        an_older_an_equal_and_a_foreign_pack_change_nothing_and_are_told_on_request_only
        every_child_of_a_device_hands_in_for_itself_also_behind_a_pin
        nothing_is_taken_while_the_desk_is_locked_and_everything_afterwards
        a_hand_in_that_somebody_removed_or_overwrote_is_left_again
        the_desk_knows_with_which_pack_a_device_handed_in_last
        the_folder_is_off_until_it_is_named_and_off_again_in_the_next_pack
        too_many_files_are_told_and_hide_no_pack_and_no_hand_in_of_a_device
        a_pack_that_somebody_removes_is_put_again_as_it_was
        folders_with_the_names_of_files_stop_nothing_that_can_go_elsewhere_and_are_told
        after_another_slip_the_hand_in_is_left_for_the_new_seat_and_the_new_class
    }
}

mod of_a_drive {
    use super::*;
    over_trees! { OF_A_DRIVE,
        packs_and_hand_ins_travel_by_themselves_and_replace_one_another
        every_child_of_a_device_hands_in_for_itself_also_behind_a_pin
        a_student_is_told_after_three_school_days_and_the_hand_in_by_hand_ends_it
    }
}

#[test]
fn a_right_that_is_gone_is_told_and_showing_the_folder_again_goes_on_where_it_was() {
    let mut s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    s.tablet.to("2026-09-02");
    let gone = FolderFault::Refuses(TreeFault::NotAllowed);
    for hands in [&s.tablet.hands, &s.desk.hands] {
        hands.weather.turns(Some(gone));
    }
    rate(&s.tablet, &s.sky, Confidence::NotYet);
    visit(&s.tablet);
    let shown = s.shown();
    assert_eq!(shown.trouble, Some(FolderTrouble::NotAllowed));
    assert_eq!(shown.left_on, Some(date("2026-09-01")));
    assert!(shown.waiting);
    assert_eq!(settle(&s.desk).trouble, Some(FolderTrouble::NotAllowed));

    // The person is asked again and chooses the same folder: the right is there again.
    for hands in [&s.tablet.hands, &s.desk.hands] {
        hands.weather.turns(None);
        hands.will_pick(s.folder.path());
    }
    let student = s.sky.clone();
    let shown = s.tablet.app.student.show_folder(StudentId { student });
    let shown = shown.unwrap();
    assert_eq!(
        (shown.trouble, shown.left_on),
        (None, Some(date("2026-09-01")))
    );
    visit(&s.tablet);
    s.desk.app.desk.name_class_folder(Nothing {}).unwrap();
    settle(&s.desk);
    assert!(!s.shown().waiting);
    assert_eq!(
        rating(&s.tablet, &s.sky, "2026-09-02"),
        Some(Confidence::NotYet)
    );
    assert!(s.imports() > 1);
}

#[test]
fn the_rights_of_folders_that_nobody_uses_are_given_back() {
    let s = shared("2026-09-01");
    let used = |device: &Device| device.hands.used_folders.lock().unwrap().clone().unwrap();
    let here = s.folder.path().to_owned();
    assert_eq!(used(&s.tablet), [here.clone()].into());
    assert_eq!(used(&s.desk), [here.clone()].into());
    let other = tempfile::tempdir().unwrap();
    s.tablet.hands.will_pick(other.path());
    let student = || StudentId {
        student: s.sky.clone(),
    };
    s.tablet.app.student.show_folder(student()).unwrap();
    assert_eq!(used(&s.tablet), [other.path().to_owned()].into());
    // The same device has a desk with the first folder.
    s.tablet.hands.will_pick(&here);
    s.tablet.app.desk.name_class_folder(Nothing {}).unwrap();
    assert_eq!(
        used(&s.tablet),
        [other.path().to_owned(), here.clone()].into()
    );
    // A stopped one keeps its right until another is chosen, because it can be used again.
    s.tablet.app.student.stop_shown_folder(student()).unwrap();
    s.tablet.app.desk.stop_class_folder(Nothing {}).unwrap();
    assert_eq!(
        used(&s.tablet),
        [other.path().to_owned(), here.clone()].into()
    );
    s.tablet.hands.will_pick(&here);
    s.tablet.app.student.show_folder(student()).unwrap();
    assert_eq!(used(&s.tablet), [here].into());
    s.desk.app.device.remove_everything(Nothing {}).unwrap();
    assert!(used(&s.desk).is_empty());
}

#[test]
fn a_folder_that_does_not_answer_lets_go_of_a_person_who_joins() {
    let s = shared("2026-09-01");
    let tablet = Device::on("2026-09-01");
    let pick = || {
        tablet.hands.will_pick(s.folder.path());
        let shown = tablet.app.student.pick_shown_folder(Nothing {});
        shown.unwrap().unwrap()
    };
    assert_eq!((pick().packs.len(), pick().trouble), (1, None));
    for (fault, told) in [
        (
            FolderFault::Refuses(TreeFault::NotAllowed),
            FolderTrouble::NotAllowed,
        ),
        (FolderFault::Fails(ErrorKind::NotFound), FolderTrouble::Away),
        (FolderFault::Hangs, FolderTrouble::Silent),
    ] {
        tablet.hands.weather.turns(Some(fault));
        let shown = std::thread::scope(|both| {
            let picks = both.spawn(pick);
            if fault == FolderFault::Hangs {
                std::thread::sleep(Duration::from_millis(100));
                assert!(!picks.is_finished());
                tablet.pass(1);
            }
            picks.join().unwrap()
        });
        assert_eq!((shown.packs.len(), shown.trouble), (0, Some(told)));
    }
    tablet.hands.weather.turns(None);
    assert_eq!(pick().packs.len(), 1);
}
