//! The one door every shell uses: clock, chance, files, jobs and the table of calls.

mod app;
mod args;
mod backup_calls;
mod carry_calls;
mod chance;
mod clock;
mod contract;
mod copies;
pub mod demo;
mod door;
mod error;
mod error_from;
mod folder;
mod jobs;
mod pin_calls;
mod places;
mod print_calls;
mod removal_calls;
mod safety_views;
mod start_calls;
mod student_calls;
mod teacher_calls;
mod teaching_calls;
mod views;
#[cfg_attr(any(target_os = "android", target_os = "ios"), path = "watch_none.rs")]
mod watch;
mod zip_files;

pub use app::{App, latest_weekday};
pub use args::*;
pub use clock::{Clock, DeviceClock, StandingClock};
pub use door::{FileDoor, FileKind, FileSource};
pub use error::CallError;
pub use folder::{file_at, files_in, write_atomic};
pub use jobs::Progress;
pub use places::WorldPlaces;
pub use safety_views::*;
pub use teacher_calls::import_files;
pub use views::*;

use surefoot_core::student::practice_views::{Feedback, OpenExercise, PracticeStep, Summary};
use surefoot_core::student::views::{
    HandInMade, HandInPreview, MyPath, Profile, StudentSettings, Today,
};
use surefoot_core::teacher::group_views::{GroupPage, GroupsDesk, GroupsView};
use surefoot_core::teacher::teaching_views::{Comparison, EntryDay, StudentPage, TalkView};
use surefoot_core::teacher::views::{
    AssignmentReport, Board, ClassSetup, ClassSummary, ConceptReports, CopyClass, FileMade,
    ImportAccount, JoinSlip, PlacedConcept, RosterFile, SeatHoldings,
};

contract::calls! { App, CallError;
    start(Nothing) -> Start;
    save_device_settings(DeviceSettings) -> Start;
    make_sample(Nothing) -> JobId;
    enter_sample(Nothing) -> Start;
    leave_sample(Nothing) -> Start;
    job(JobId) -> JobState;
    cancel_job(JobId) -> JobState;
    copies(StoreName) -> Copies;
    restore_copy(RestoreCopy) -> Restored;
    back_up(BackUp) -> FileMade;
    pick_backup(Nothing) -> Option<PickedSealed>;
    restore_backup(OpenSealed) -> Restored;
    remove_everything(Nothing) -> Start;

    pick_class_pack(Nothing) -> Option<PackOffer>;
    opened_files(Nothing) -> OpenedFiles;
    check_seat_code(SeatCodeTyped) -> Nothing;
    join(Join) -> Profile;
    today(StudentDay) -> Today;
    check_in(CheckInTap) -> Today;
    practice(PracticeAsked) -> PracticeStep;
    sure(Sure) -> OpenExercise;
    hint(ExerciseId) -> OpenExercise;
    answer(AnswerGiven) -> Feedback;
    show_steps(ExerciseId) -> Feedback;
    practice_summary(StudentId) -> Summary;
    my_path(StudentId) -> MyPath;
    set_focus(Focus) -> MyPath;
    hand_in_preview(StudentId) -> HandInPreview;
    hand_in(StudentId) -> HandInMade;
    take_class_pack(StudentId) -> Option<PackTaken>;
    student_settings(StudentId) -> StudentSettings;
    save_student_settings(NewStudentSettings) -> StudentSettings;
    unlock(PinTyped) -> Unlocked;
    lock_students(Nothing) -> Nothing;
    set_pin(PinTyped) -> Nothing;
    remove_pin(StudentId) -> Nothing;
    reset_pin(PinReset) -> Nothing;
    make_carry(CarryAsked) -> FileMade;
    pick_carry(Nothing) -> Option<PickedSealed>;
    take_carry(OpenSealed) -> CarryDone;
    remove_student(RemoveStudent) -> Start;

    read_roster(RosterText) -> RosterNames;
    pick_roster(Nothing) -> Option<RosterFile>;
    create_class(CreateClass) -> ClassSummary;
    copy_class(CopyClass) -> ClassSummary;
    class_setup(ClassId) -> ClassSetup;
    name_seat(NameSeat) -> ClassSetup;
    add_seats(AddSeats) -> ClassSetup;
    rename_class(RenameClass) -> ClassSetup;
    move_year(MoveYear) -> ClassSetup;
    seat_holdings(SeatId) -> SeatHoldings;
    remove_seat(SeatId) -> ClassSetup;
    delete_class(ClassId) -> Nothing;
    spare_concepts(ClassId) -> Vec<PlacedConcept>;
    set_taught_from(TaughtFrom) -> ClassSetup;
    set_rotation(NewRotation) -> ClassSetup;
    set_closures(NewClosures) -> ClassSetup;
    set_practice(NewPractice) -> ClassSetup;
    join_slips(ClassId) -> Vec<JoinSlip>;
    save_class_pack(ClassId) -> FileMade;
    import_hand_ins(ImportAsked) -> Option<JobId>;
    imports(Nothing) -> Vec<ImportAccount>;
    undo_import(Nothing) -> Vec<ImportAccount>;
    watch(Nothing) -> Watch;
    watch_folder(Nothing) -> Watch;
    unwatch_folder(Nothing) -> Watch;
    export_class(ClassKeyAsked) -> FileMade;
    pick_class_key(Nothing) -> Option<PickedSealed>;
    import_class(OpenSealed) -> Start;
    decide_device(DeviceDecision) -> ClassSetup;
    board(ClassId) -> Board;
    group_board(GroupBoard) -> Board;
    comparison(ClassId) -> Comparison;
    student_page(SeatId) -> StudentPage;
    talk(TalkAsked) -> TalkView;
    note_talk(TalkNoted) -> Nothing;
    groups_desk(ClassId) -> GroupsDesk;
    suggest_groups(GroupsAsked) -> GroupsView;
    weigh_groups(GroupsEdited) -> GroupsView;
    keep_groups(GroupsKept) -> GroupsDesk;
    group_page(GroupPageAsked) -> GroupPage;
    record_group(GroupResult) -> GroupsDesk;
    entry_day(EntryAsked) -> EntryDay;
    make_entries(Entries) -> Nothing;
    concept_reports(ClassConcept) -> ConceptReports;
    assign(Assign) -> Vec<AssignmentReport>;
    assignments(ClassId) -> Vec<AssignmentReport>;
    withdraw_assignment(AssignmentId) -> Vec<AssignmentReport>;
    print(PrintAsked) -> FileMade;
}
