//! What the practice screen is given.

use super::draft::Draft;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::Confidence;
use surefoot_exercises::{Block, ItemView};
use surefoot_practice::Reason;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// Where an evening's practice stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Session {
    /// Exercises finished tonight.
    pub finished: usize,
    /// Minutes practised tonight.
    pub minutes_done: f64,
    /// Minutes meant for tonight: less what the evening before ran over.
    pub minutes_planned: f64,
    /// Exercises meant for tonight; nothing when it ends by minutes.
    pub exercises_planned: Option<u32>,
    /// What would come next, at most six, each with its reason.
    pub ahead: Vec<Ahead>,
}

/// A concept in tonight's queue.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Ahead {
    /// The concept.
    pub concept: ConceptName,
    /// Why it is there.
    pub reason: Reason,
}

/// What the practice screen shows now.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum PracticeStep {
    /// An exercise to answer.
    Exercise(Box<OpenExercise>),
    /// The evening is over, or nothing is left.
    Done(Summary),
    /// Nothing can be practised yet: no concept has been taught.
    NothingYet,
}

/// An exercise that stands open; it survives closing the program.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OpenExercise {
    /// Names this exercise in the calls that follow.
    pub exercise: String,
    /// The concept practised.
    pub concept: ConceptName,
    /// Why it is there.
    pub reason: Reason,
    /// 1 entry, 2 expected, 3 stretch.
    pub level: u8,
    /// Prompt and what to fill in; no answer.
    pub item: ItemView,
    /// The hints taken so far.
    pub hints_taken: Vec<Vec<Block>>,
    /// How sure the student said to be, once said.
    pub sure: Option<Confidence>,
    /// What stood in the answer when it was left, not yet checked.
    pub draft: Option<Draft>,
    /// A like exercise with its steps, to be read first: in turn with the first exercises.
    pub worked_first: Option<WorkedExample>,
    /// Where the evening stands.
    pub session: Session,
}

/// An exercise that is worked for the student.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct WorkedExample {
    /// Its prompt.
    pub prompt: Vec<Block>,
    /// What there is to choose from or to put in order; empty for other entries.
    pub choices: Vec<Block>,
    /// Its steps.
    pub steps: Vec<Vec<Block>>,
    /// Its answer.
    pub answer: Vec<Block>,
}

/// What came of an answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Feedback {
    /// Whether it was right.
    pub right: bool,
    /// Whether the exercise is finished; otherwise one more try is open.
    pub finished: bool,
    /// What is said about it: the recognised thought, or an equivalent form.
    pub says: Vec<Block>,
    /// The right answer, once finished.
    pub answer: Option<Vec<Block>>,
    /// The worked steps, once finished.
    pub steps: Vec<Vec<Block>>,
    /// Where the evening stands.
    pub session: Session,
}

/// After a session: "you thought / you did".
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Summary {
    /// Exercises finished tonight.
    pub finished: usize,
    /// Right without help.
    pub alone: usize,
    /// Right with a hint or at the second try.
    pub with_help: usize,
    /// Minutes practised tonight.
    pub minutes: f64,
    /// Evenings practised this week before tonight.
    pub evenings_done: u32,
    /// Evenings a week that the student means to practise.
    pub evenings_planned: u32,
    /// Concept by concept.
    pub concepts: Vec<SummaryConcept>,
    /// Whether more could be practised tonight.
    pub more: bool,
}

/// One concept of the session.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct SummaryConcept {
    /// The concept.
    pub concept: ConceptName,
    /// The last rating in class, if any.
    pub said: Option<Confidence>,
    /// Exercises answered for each confidence said before the answer, `NotYet` first.
    pub thought: [u32; 4],
    /// Of these, right without help.
    pub thought_right: [u32; 4],
    /// Exercises finished.
    pub finished: u32,
    /// Right without help.
    pub alone: u32,
}
