//! What the calls are given.

use serde::{Deserialize, Serialize};
use surefoot_catalogue::catalogue_file::ConceptDraft;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::table::LineRefused;
use surefoot_desk::EntryMade;
use surefoot_desk::{GroupChosen, GroupWishes};
use surefoot_desk::{NewAssignment, NewClass};
use surefoot_exchange::PracticeRules;
use surefoot_exercises::Response;
use surefoot_record::{Goal, StudentLook};
use surefoot_student::draft::Draft;
use surefoot_student::views::Language;
use ts_rs::TS;

/// A student's day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentDay {
    /// The profile's id.
    pub student: String,
    /// The day asked for; nothing for today.
    pub date: Option<chrono::NaiveDate>,
}

/// A tap on Today: both values as they stand after the tap.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CheckInTap {
    /// The profile's id.
    pub student: String,
    /// The school date.
    pub date: chrono::NaiveDate,
    /// The concept.
    pub concept: String,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// How it went.
    pub outcome: Option<Outcome>,
}

/// An exercise that stands open.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ExerciseId {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
}

/// How sure a student says to be before answering.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Sure {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// How sure.
    pub sure: Confidence,
}

/// What stands in the answer of the open exercise, not yet checked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct DraftKept {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// The answer as it stands; nothing when it was emptied.
    pub draft: Option<Draft>,
}

/// The words of a language.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WordsOf {
    /// The language.
    pub language: Language,
}

/// An answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct AnswerGiven {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// What was filled in.
    pub response: Response,
    /// Seconds since the exercise was shown or last answered, by the screen's own count.
    pub seconds: u32,
}

/// The concepts a student chose to work on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Focus {
    /// The profile's id.
    pub student: String,
    /// At most three concepts.
    pub concepts: Vec<String>,
}

/// Goals in a student's own words, as they stand after a change.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Goals {
    /// The profile's id.
    pub student: String,
    /// At most three, in their order.
    pub goals: Vec<Goal>,
}

/// Practice of one concept asked for from My path; nothing for tonight's queue.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PracticeAsked {
    /// The profile's id.
    pub student: String,
    /// The concept asked for.
    pub concept: Option<String>,
    /// Whether to go on though the evening is over.
    pub more: bool,
}

/// A student's own settings.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewStudentSettings {
    /// The profile's id.
    pub student: String,
    /// Language of the screens.
    pub language: Language,
    /// Minutes of an evening, within the teacher's bounds.
    pub minutes: u32,
    /// Exercises of an evening; nothing when it ends by minutes.
    pub exercises: Option<u32>,
    /// Evenings a week, within the teacher's bounds.
    pub evenings: u32,
    /// How the screens look and sound.
    pub look: StudentLook,
}

/// A text to be read aloud.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ReadAloud {
    /// The text, with its mathematics in words.
    pub text: String,
    /// The language it is in.
    pub language: Language,
}

/// Roster text as pasted: a name a line, or a column of a table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterText {
    /// The text.
    pub text: String,
}

/// The names found in a roster text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterNames {
    /// One a seat.
    pub names: Vec<String>,
    /// Lines left out, each with its number from 1: empty, too long, or twice.
    pub left_out: Vec<usize>,
}

/// A new class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CreateClass {
    /// What it is made from.
    pub class: NewClass,
}

/// A seat's new name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NameSeat {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
    /// The name; nothing to take it away.
    pub name: Option<String>,
}

/// More seats.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AddSeats {
    /// The class.
    pub class: String,
    /// Their names; an empty text is a seat without a name.
    pub names: Vec<String>,
}

/// The date of a concept's first lesson.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TaughtFrom {
    /// The class.
    pub class: String,
    /// The concept.
    pub concept: String,
    /// The date; nothing for "not this year".
    pub date: Option<chrono::NaiveDate>,
}

/// The rotation as edited.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewRotation {
    /// The class.
    pub class: String,
    /// Concept ids day by day.
    pub days: Vec<Vec<String>>,
}

/// A class's new title.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RenameClass {
    /// The class.
    pub class: String,
    /// The teacher's name for it, 1 to 60 characters.
    pub title: String,
}

/// The frame of the year as edited; closures and first lessons keep their dates.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MoveYear {
    /// The class.
    pub class: String,
    /// First day of the year.
    pub first_day: chrono::NaiveDate,
    /// Last day of the year.
    pub last_day: chrono::NaiveDate,
    /// Weekdays on which the class meets, 1 is Monday.
    #[ts(type = "number[]")]
    pub weekdays: std::collections::BTreeSet<u8>,
}

/// A seat of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatId {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
}

/// The closures as edited.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewClosures {
    /// The class.
    pub class: String,
    /// Dates without school.
    pub closures: Vec<chrono::NaiveDate>,
}

/// What a teacher sets for practice at home.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewPractice {
    /// The class.
    pub class: String,
    /// Bounds, and a test to aim at.
    pub practice: PracticeRules,
}

/// What to import.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum ImportFrom {
    /// A folder the person picks.
    Folder,
    /// Files the person picks.
    Files,
    /// Files that were opened with the program or dropped on its window.
    Opened,
    /// The sample class's shared folder; only in the sample class.
    SampleFolder,
}

/// An import asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ImportAsked {
    /// Where from.
    pub from: ImportFrom,
}

/// A concept of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassConcept {
    /// The class.
    pub class: String,
    /// The concept.
    pub concept: String,
}

/// A device that claims a seat.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeviceDecision {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
    /// The device's id.
    pub device: String,
    /// Whether its hand-ins count from now on, or it is put aside; nothing: undecided again.
    pub accept: Option<bool>,
}

/// A pasted pacing list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingText {
    /// The class.
    pub class: String,
    /// As pasted.
    pub text: String,
}

/// First lessons to set together.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FirstLessons {
    /// The class.
    pub class: String,
    /// Each concept with the date of its first lesson; nothing takes it away.
    pub lessons: Vec<(String, Option<chrono::NaiveDate>)>,
}

/// A rotation to spread evenly.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RotationDays {
    /// The class.
    pub class: String,
    /// Days in the rotation.
    pub days: usize,
}

/// A new assignment.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Assign {
    /// The class.
    pub class: String,
    /// What it is made from.
    pub assignment: NewAssignment,
}

/// An assignment to take back.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AssignmentId {
    /// The class.
    pub class: String,
    /// The assignment.
    pub assignment: String,
}

/// The board of some seats alone.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupBoard {
    /// The class.
    pub class: String,
    /// The seats.
    pub group: Vec<u32>,
}

/// Small groups asked for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsAsked {
    /// The class.
    pub class: String,
    /// Room, pairs and absences; kept for the next time.
    pub wishes: GroupWishes,
    /// Whether to prove how good the groups are, which takes a second or so.
    pub prove: bool,
}

/// Small groups edited by hand, to be weighed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsEdited {
    /// The class.
    pub class: String,
    /// Room, pairs and absences.
    pub wishes: GroupWishes,
    /// The groups as they stand.
    pub groups: Vec<GroupChosen>,
    /// The suggestion's bound on every plan.
    #[ts(type = "number")]
    pub best_at_most: u64,
}

/// Small groups of a day to keep, in place of any kept before.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsKept {
    /// The class.
    pub class: String,
    /// The day.
    pub date: chrono::NaiveDate,
    /// The groups; none to take the day away.
    pub groups: Vec<GroupChosen>,
}

/// One page for a group.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupPageAsked {
    /// The class.
    pub class: String,
    /// On what.
    pub concept: String,
    /// Who.
    pub seats: Vec<u32>,
}

/// What came of a group for one student.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupResult {
    /// The class.
    pub class: String,
    /// The day of the group.
    pub date: chrono::NaiveDate,
    /// The seat.
    pub seat: u32,
    /// The concept.
    pub concept: String,
    /// Has it, or needs more; nothing to take the record back.
    pub has_it: Option<bool>,
}

/// Today's talk.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TalkAsked {
    /// The class.
    pub class: String,
    /// Minutes there are, 1 to 20.
    pub minutes: u32,
}

/// A concept talked about, or not.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TalkNoted {
    /// The class.
    pub class: String,
    /// The day.
    pub date: chrono::NaiveDate,
    /// The concept.
    pub concept: String,
    /// Whether it was talked about.
    pub talked: bool,
}

/// A day to fill in; nothing for the latest school day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EntryAsked {
    /// The class.
    pub class: String,
    /// The day.
    pub date: Option<chrono::NaiveDate>,
}

/// Cells filled in, in their order.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Entries {
    /// The class.
    pub class: String,
    /// The day.
    pub date: chrono::NaiveDate,
    /// The cells.
    pub made: Vec<EntryMade>,
}

/// What to print, and how.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PrintAsked {
    /// The class's id.
    pub class: String,
    /// What.
    pub what: Printed,
    /// How.
    pub look: PrintLook,
}

/// Something that can be printed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Printed {
    /// A practice sheet with fresh numbers.
    Sheet {
        /// Concepts, in order.
        concepts: Vec<String>,
        /// How far the exercises reach.
        level: surefoot_exercises::Level,
        /// Exercises of each concept.
        count: u32,
        /// With the answer key on a page apart.
        with_key: bool,
        /// The numbers to have, as in a preview; fresh ones when not given.
        seed: Option<u32>,
    },
    /// A practice sheet for one seat: what is assigned, then what is needed most.
    SeatSheet {
        /// The seat.
        seat: u32,
        /// Exercises of each concept.
        count: u32,
        /// With the answer key on a page apart.
        with_key: bool,
        /// As of a sheet.
        seed: Option<u32>,
    },
    /// A chart for self-ratings on paper.
    Chart,
    /// The join slips of every seat.
    Slips {
        /// Whether the names of the roster stand on them.
        with_names: bool,
    },
    /// A page for the family of every student who has reported, in one file.
    FamilyPages,
    /// A report.
    Report {
        /// Which.
        report: ReportWanted,
    },
}

/// A report on one student, a group or the class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "of", rename_all = "snake_case")]
pub enum ReportWanted {
    /// For the family of one student: one page in plain words.
    Family {
        /// The seat.
        seat: u32,
    },
    /// For a talk with one student.
    Conference {
        /// The seat.
        seat: u32,
    },
    /// The class, for its teachers.
    ClassSummary,
    /// The class, for the school: no name and no small count.
    ShareSafe,
    /// A small group.
    Group {
        /// The concept.
        concept: String,
        /// Its seats.
        seats: Vec<u32>,
    },
    /// Today's talk.
    Talk {
        /// Minutes there are.
        minutes: u32,
    },
}

/// A table to save for other programs.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TableAsked {
    /// The class's id.
    pub class: String,
    /// What stands in it.
    pub table: TableWanted,
    /// Language of its words.
    pub language: Language,
}

/// Tables for other programs; none holds a name.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum TableWanted {
    /// Concept by pass, as CSV.
    BoardCsv,
    /// Concept by concept, as CSV.
    SummaryCsv,
    /// Both, as a workbook.
    Workbook,
}

/// A print of a student's own, in the student's language.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentPrint {
    /// The student's id.
    pub student: String,
    /// The paper.
    pub paper: PrintPaper,
}

/// A print of a student's path.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PathPrint {
    /// The student's id.
    pub student: String,
    /// The paper.
    pub paper: PrintPaper,
    /// Whether the student's own goals go on it.
    pub with_goals: bool,
}

/// Language, paper and room.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PrintLook {
    /// The language of the print.
    pub language: Language,
    /// The paper.
    pub paper: PrintPaper,
    /// With space to work or write in; else as little paper as will do.
    pub roomy: bool,
}

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum PrintPaper {
    /// 210 mm × 297 mm.
    A4,
    /// 8.5 in × 11 in.
    Letter,
}

/// Exercises of the teacher's own to take in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OwnImportAsked {
    /// The class.
    pub class: String,
    /// The concept that lines and items without one are for.
    pub concept: Option<String>,
}

/// An import of the teacher's own.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OwnImportId {
    /// The class.
    pub class: String,
    /// Its number.
    pub number: u32,
}

/// An own exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OwnExerciseId {
    /// The class.
    pub class: String,
    /// Its id.
    pub id: String,
}

/// An answer to try on an own exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OwnExerciseTry {
    /// The class.
    pub class: String,
    /// Its id.
    pub id: String,
    /// The answer.
    pub response: Response,
}

/// Concepts picked out of a file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ConceptsPicked {
    /// The class.
    pub class: String,
    /// The file's name, for the account.
    pub file: String,
    /// What was picked, as the person left it.
    pub drafts: Vec<ConceptDraft>,
    /// What the reading refused, for the account.
    pub refused: Vec<LineRefused>,
}
