//! The table of calls: everything that a shell can ask of Surefoot.
//!
//! A call belongs to one of three doors: `device` (start, settings, jobs, copies, backups,
//! removal, voice), `student` and `desk`. Each door is a folder and a type; `context` holds
//! what they share: clock, randomness, files, settings, jobs. The arguments of a call are
//! declared beside it. `reports` is the table of all reports, `demo` makes the sample class.
//!
//! Only this crate and the shells read a clock, draw random bytes or open files that a person
//! chose. It must never know the window, the terminal or the words of a language.

#![cfg_attr(not(test), deny(clippy::indexing_slicing))]
// A student's program has no sample class, no jobs and no class folder of a desk.
#![cfg_attr(not(feature = "desk"), allow(dead_code))]

mod app;
mod calls;
mod context;
#[cfg(feature = "desk")]
pub mod demo;
#[cfg(feature = "desk")]
mod desk;
#[cfg(not(feature = "desk"))]
#[path = "no_desk.rs"]
mod desk;
mod device;
mod error;
mod error_from;
mod escaped;
mod lock;
#[cfg(feature = "desk")]
mod read_files;
#[cfg(feature = "desk")]
pub mod reports;
mod student;
mod voice;

/// Items of the teacher's side.
macro_rules! of_desk {
    ($($item:item)*) => { $(#[cfg(feature = "desk")] $item)* };
}

pub use app::App;
pub use calls::{Call, Door};
pub use context::class_folder::{
    ClassFolder, FolderEntry, FolderTrouble, Listed, Mark, TreeFault, folder_at,
};
pub use context::clock::{Clock, DeviceClock, FixedClock, Moment, latest_weekday};
pub use context::copies::{CopyKind, StoreName, StoredCopy};
pub use context::data_paths::WorldPaths;
#[cfg(target_family = "wasm")]
pub use context::disk::{make_room, open_storage, put_file};
pub use context::document_folder::{Document, DocumentKind, DocumentTree, Wanted, folder_of};
pub use context::file_dialogs::{FileDialogs, FileKind, FileSource};
pub use context::folder::{file_at, files_in, write_atomic};
pub use context::jobs::{JobId, JobResult, JobState, Progress};
pub use context::picked::{OpenSealed, PickedSealed};
pub use context::settings::{DeviceSettings, Theme, World};
pub use context::values::{FileMade, Nothing};
pub use context::wipe::wipe_folder;
of_desk! {
pub use desk::assignments::{Assign, AssignmentId};
pub use desk::board::{ClassConcept, GroupBoard};
pub use desk::class::{
    AddSeats, CreateClass, DeviceDecision, DeviceOfSeat, FirstLessons, MoveYear, NameSeat,
    NewClosures, NewPractice, NewRotation, PacingText, RenameClass, RotationDays, TaughtFrom,
};
pub use desk::class_day::{DayClosed, WhoHasNotAsked};
pub use desk::class_key::{ClassKeyAsked, SavesPacks};
pub use desk::entry::{Entries, EntryAsked};
pub use desk::folder::ClassFolderState;
pub use desk::groups::{GroupPageAsked, GroupResult, GroupsAsked, GroupsEdited, GroupsKept};
pub use desk::imports::{ImportAsked, ImportFrom, ImportLines, JournalAsked};
pub use desk::moves::{DeviceMove, SeatMove, TransferAsked, TransferOpened};
pub use desk::own::{ConceptsPicked, OwnExerciseId, OwnExerciseTry, OwnImportAsked, OwnImportId};
pub use desk::print::{ReportAsked, WithoutFont};
pub use desk::removal::RemovedId;
pub use desk::removed::{Removed, RemovedWhat};
pub use desk::roster::RosterText;
pub use desk::talk::{TalkAsked, TalkNoted};
pub use desk::taught_again::{TaughtAgainId, TaughtAgainNoted};
pub use desk::warm_up::{WarmUpAsked, WarmUpChange};
pub use desk::{ClassId, SeatId};
}
pub use desk::DeskDoor;
pub use desk::lock_view::DeskLock;
pub use device::DeviceDoor;
pub use device::backups::BackUp;
pub use device::copies::Copies;
#[cfg(feature = "desk")]
pub use device::desk_lock::{DeskIdle, DeskPassphrase, IDLE_MINUTES, NewDeskLock};
pub use device::opened::{NotTaken, OpenedFiles};
pub use device::removal::RemoveStudent;
pub use device::restore::{RestoreCopy, Restored};
pub use device::start::{DamagedStore, MessageFile, Start, WordsOf, YearOver};
pub use device::voice::ReadAloud;
pub use error::{CallError, PlaceTrouble, VoiceMissing};
pub use escaped::escaped;
of_desk! {
pub use read_files::bank_files::bank_files;
pub use read_files::hand_in_files::import_files;
pub use reports::options::{PrintOptions, PrintPaper};
pub use reports::values::{ReportField, ReportValues};
}
pub use student::carry::{CarryAsked, CarryDone};
pub use student::check_in::{CheckInTap, DaySaid, StudentDay};
pub use student::folder::{ShownFolder, VisitAsked, Visited};
pub use student::folder_offers::{FolderCode, FolderShown, PackFound};
pub use student::join::{Join, PackOffer, PackTaken, SeatCodeRead, SeatCodeTyped, SlipChange};
pub use student::path::{Focus, Goals};
pub use student::pin::{NewPin, PinReset, PinTyped, Unlocked};
pub use student::practice::{AnswerGiven, ConfidenceSaid, DraftKept, ExerciseId, PracticeAsked};
#[cfg(feature = "desk")]
pub use student::print::{PathPrint, StudentPrint};
pub use student::settings::NewStudentSettings;
pub use student::{StudentDoor, StudentId};
pub use surefoot_catalogue::Language;
pub use voice::{NoVoice, Voice};

use chrono::NaiveDate;
of_desk! {
use reports::list::ReportInfo;
use surefoot_catalogue::catalogue_file::CatalogueReading;
use surefoot_desk::{
    AssignmentReport, Board, ClassDay, ClassSetup, ClassSummary, ConceptReports, CopyClass,
    FileReport, JoinSlip, Journal, PacingList, PlacedConcept, Roster, RosterFile, SeatHoldings,
    WhoHasNot,
};
use surefoot_desk::{ClassNow, ProjectorConcept};
use surefoot_desk::{ClassTitle, ProjectorDay, TransferHoldings, TransferTaken};
use surefoot_desk::{Comparison, EntryDay, StudentPage, TalkView};
use surefoot_desk::{GroupPage, GroupsDesk, GroupsView, TaughtAgainLog, WarmUp};
use surefoot_desk::{OwnDesk, OwnExercisePage, OwnTried};
use surefoot_report::page::ReportPage;
}
use surefoot_student::practice_views::{Feedback, OpenExercise, PracticeStep, Summary};
use surefoot_student::views::{HandInMade, HandInPreview, MyPath, Profile, StudentSettings, Today};

calls::calls! {
    device (Device) {
        start(Nothing) -> Start;
        save_device_settings(DeviceSettings) -> Start;
        exercise_words(WordsOf) -> Vec<MessageFile>;
        #[cfg(feature = "desk")]
        make_sample(Nothing) -> JobId;
        #[cfg(feature = "desk")]
        enter_sample(Nothing) -> Start;
        #[cfg(feature = "desk")]
        leave_sample(Nothing) -> Start;
        job(JobId) -> JobState;
        cancel_job(JobId) -> JobState;
        opened_files(Nothing) -> OpenedFiles;
        copies(StoreName) -> Copies;
        restore_copy(RestoreCopy) -> Restored;
        back_up(BackUp) -> FileMade;
        pick_backup(Nothing) -> Option<PickedSealed>;
        restore_backup(OpenSealed) -> Restored;
        #[cfg(feature = "desk")]
        desk_lock(Nothing) -> DeskLock;
        #[cfg(feature = "desk")]
        unlock_desk(DeskPassphrase) -> Unlocked;
        #[cfg(feature = "desk")]
        lock_desk(Nothing) -> DeskLock;
        #[cfg(feature = "desk")]
        use_desk(Nothing) -> Nothing;
        #[cfg(feature = "desk")]
        set_desk_lock(NewDeskLock) -> Unlocked;
        #[cfg(feature = "desk")]
        set_desk_idle(DeskIdle) -> DeskLock;
        #[cfg(feature = "desk")]
        begin_new_desk(Nothing) -> Restored;
        #[cfg(feature = "desk")]
        projector_classes(Nothing) -> Vec<ClassTitle>;
        #[cfg(feature = "desk")]
        projector(ClassId) -> ProjectorDay;
        remove_student(RemoveStudent) -> Start;
        remove_everything(Nothing) -> Start;
        speak(ReadAloud) -> Nothing;
        stop_speaking(Nothing) -> Nothing;
    }
    student (Student) {
        pick_class_pack(Nothing) -> Option<PackOffer>;
        check_seat_code(SeatCodeTyped) -> SeatCodeRead;
        join(Join) -> Profile;
        change_slip(SlipChange) -> Profile;
        today(StudentDay) -> Today;
        check_in(CheckInTap) -> Vec<NaiveDate>;
        say_day(DaySaid) -> Today;
        practice(PracticeAsked) -> PracticeStep;
        say_confidence(ConfidenceSaid) -> OpenExercise;
        hint(ExerciseId) -> OpenExercise;
        answer(AnswerGiven) -> Feedback;
        show_steps(ExerciseId) -> Feedback;
        keep_draft(DraftKept) -> Nothing;
        practice_summary(StudentId) -> Summary;
        my_path(StudentId) -> MyPath;
        set_focus(Focus) -> MyPath;
        set_goals(Goals) -> MyPath;
        hand_in_preview(StudentId) -> HandInPreview;
        hand_in(StudentId) -> HandInMade;
        share_hand_in(StudentId) -> HandInMade;
        take_class_pack(StudentId) -> Option<PackTaken>;
        student_settings(StudentId) -> StudentSettings;
        save_student_settings(NewStudentSettings) -> StudentSettings;
        unlock(PinTyped) -> Unlocked;
        lock_students(Nothing) -> Nothing;
        set_pin(NewPin) -> Nothing;
        remove_pin(StudentId) -> Nothing;
        reset_pin(PinReset) -> Nothing;
        make_carry(CarryAsked) -> FileMade;
        pick_carry(Nothing) -> Option<PickedSealed>;
        take_carry(OpenSealed) -> CarryDone;
        #[cfg(feature = "desk")]
        print_practice(StudentPrint) -> FileMade;
        #[cfg(feature = "desk")]
        print_path(PathPrint) -> FileMade;
        pick_shown_folder(Nothing) -> Option<FolderShown>;
        pack_for_code(FolderCode) -> PackFound;
        shown_folder(StudentId) -> ShownFolder;
        show_folder(StudentId) -> ShownFolder;
        stop_shown_folder(StudentId) -> ShownFolder;
        use_shown_folder(StudentId) -> ShownFolder;
        visit_folders(VisitAsked) -> Visited;
    }
    #[cfg(feature = "desk")]
    desk (Desk) {
        read_roster(RosterText) -> Roster;
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
        move_seat(SeatMove) -> SeatId;
        move_device(DeviceMove) -> ClassSetup;
        transfer_holdings(SeatId) -> TransferHoldings;
        make_transfer(TransferAsked) -> FileMade;
        pick_transfer(Nothing) -> Option<PickedSealed>;
        take_transfer(TransferOpened) -> TransferTaken;
        delete_class(ClassId) -> Nothing;
        restore_removed(RemovedId) -> Nothing;
        discard_removed(RemovedId) -> Nothing;
        unscheduled_concepts(ClassId) -> Vec<PlacedConcept>;
        set_taught_from(TaughtFrom) -> ClassSetup;
        read_pacing(PacingText) -> PacingList;
        set_first_lessons(FirstLessons) -> ClassSetup;
        balanced_rotation(RotationDays) -> Vec<Vec<String>>;
        set_rotation(NewRotation) -> ClassSetup;
        set_closures(NewClosures) -> ClassSetup;
        set_practice(NewPractice) -> ClassSetup;
        join_slips(ClassId) -> Vec<JoinSlip>;
        save_class_pack(ClassId) -> FileMade;
        import_hand_ins(ImportAsked) -> Option<JobId>;
        imports(JournalAsked) -> Journal;
        import_lines(ImportLines) -> Vec<FileReport>;
        undo_import(Nothing) -> Journal;
        class_folder(Nothing) -> ClassFolderState;
        name_class_folder(Nothing) -> ClassFolderState;
        stop_class_folder(Nothing) -> ClassFolderState;
        use_class_folder(Nothing) -> ClassFolderState;
        export_class(ClassKeyAsked) -> FileMade;
        set_saves_packs(SavesPacks) -> ClassSetup;
        pick_class_key(Nothing) -> Option<PickedSealed>;
        import_class(OpenSealed) -> Nothing;
        decide_device(DeviceDecision) -> ClassSetup;
        discard_device(DeviceOfSeat) -> ClassSetup;
        board(ClassId) -> Board;
        group_board(GroupBoard) -> Board;
        comparison(ClassId) -> Comparison;
        class_now(ClassId) -> ClassNow;
        student_page(SeatId) -> StudentPage;
        talk(TalkAsked) -> TalkView;
        concept_to_show(ClassConcept) -> ProjectorConcept;
        note_talk(TalkNoted) -> Nothing;
        warm_up(WarmUpAsked) -> WarmUp;
        change_warm_up(WarmUpChange) -> WarmUp;
        groups_desk(ClassId) -> GroupsDesk;
        suggest_groups(GroupsAsked) -> GroupsView;
        score_groups(GroupsEdited) -> GroupsView;
        keep_groups(GroupsKept) -> GroupsDesk;
        group_page(GroupPageAsked) -> GroupPage;
        record_group(GroupResult) -> GroupsDesk;
        taught_again(ClassId) -> TaughtAgainLog;
        note_taught_again(TaughtAgainNoted) -> TaughtAgainLog;
        drop_taught_again(TaughtAgainId) -> TaughtAgainLog;
        entry_day(EntryAsked) -> EntryDay;
        make_entries(Entries) -> Nothing;
        concept_reports(ClassConcept) -> ConceptReports;
        assign(Assign) -> Vec<AssignmentReport>;
        assignments(ClassId) -> Vec<AssignmentReport>;
        withdraw_assignment(AssignmentId) -> Vec<AssignmentReport>;
        restore_assignment(AssignmentId) -> Vec<AssignmentReport>;
        reports(Nothing) -> Vec<ReportInfo>;
        print(ReportAsked) -> FileMade;
        preview(ReportAsked) -> ReportPage;
        without_font(ClassId) -> Vec<WithoutFont>;
        own_desk(ClassId) -> OwnDesk;
        import_own_exercises(OwnImportAsked) -> Option<OwnDesk>;
        undo_own_import(OwnImportId) -> OwnDesk;
        remove_own_exercise(OwnExerciseId) -> OwnDesk;
        own_exercise(OwnExerciseId) -> OwnExercisePage;
        try_own_exercise(OwnExerciseTry) -> OwnTried;
        pick_concepts(ClassId) -> Option<CatalogueReading>;
        import_concepts(ConceptsPicked) -> OwnDesk;
        class_day(ClassId) -> ClassDay;
        close_day(DayClosed) -> ClassDay;
        who_has_not(WhoHasNotAsked) -> WhoHasNot;
    }
}
