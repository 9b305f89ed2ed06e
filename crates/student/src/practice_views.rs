//! What the practice screen shows.

use super::draft::Draft;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::Confidence;
use surefoot_exercises::{Block, ItemView};
use surefoot_record::{ConceptName, Reason};
use ts_rs::TS;

/// The progress of an evening.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Session {
    /// Exercises finished tonight.
    pub finished: usize,
    /// Minutes practised tonight.
    pub minutes_done: f64,
    /// Minutes planned for tonight. They are fewer if the evening before ran over.
    pub minutes_planned: f64,
    /// Exercises planned for tonight; nothing if the evening ends by minutes.
    pub exercises_planned: Option<u32>,
    /// The next concepts of the queue, at most six.
    pub ahead: Vec<Ahead>,
}

/// A concept in tonight's queue.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Ahead {
    /// The concept.
    pub concept: ConceptName,
    /// Why it is in the queue.
    pub reason: Reason,
}

/// What the practice screen shows now.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum PracticeStep {
    /// An exercise to answer.
    Exercise(Box<OpenExercise>),
    /// The evening is over, or no concept is left.
    Done(Summary),
    /// No concept can be practised yet.
    NothingYet,
}

/// The open exercise. It is still open after the program was closed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OpenExercise {
    /// The name of this exercise in the calls that follow.
    pub exercise: String,
    /// The concept practised.
    pub concept: ConceptName,
    /// Why it is in the queue.
    pub reason: Reason,
    /// 1 entry, 2 expected, 3 stretch.
    pub level: u8,
    /// The prompt and what to fill in, without the answer.
    pub item: ItemView,
    /// The hints shown so far.
    pub hints_taken: Vec<Vec<Block>>,
    /// The confidence that the student gave before answering, if any.
    pub confidence: Option<Confidence>,
    /// The draft, if there is one.
    pub draft: Option<Draft>,
    /// A similar exercise with its steps, to be read first. The first exercises of a concept
    /// have one in turn.
    pub worked_first: Option<WorkedExample>,
    /// The progress of the evening.
    pub session: Session,
}

/// A worked example.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct WorkedExample {
    /// Its prompt.
    pub prompt: Vec<Block>,
    /// The choices, or the things to put in order; empty for other entries.
    pub choices: Vec<Block>,
    /// Its steps.
    pub steps: Vec<Vec<Block>>,
    /// Its answer.
    pub answer: Vec<Block>,
}

/// The response to an answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Feedback {
    /// Whether it was right.
    pub right: bool,
    /// Whether the exercise is finished; if not, the student has one more try.
    pub finished: bool,
    /// What is said about the answer: the misconception recognised, or a note on its form.
    pub says: Vec<Block>,
    /// The right answer, once the exercise is finished.
    pub answer: Option<Vec<Block>>,
    /// The worked steps, once the exercise is finished.
    pub steps: Vec<Vec<Block>>,
    /// The progress of the evening.
    pub session: Session,
}

/// Tonight's practice at its end: "you thought / you did".
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Summary {
    /// Exercises finished tonight.
    pub finished: usize,
    /// Of these, right without help.
    pub alone: usize,
    /// Of these, right with a hint or at the second try.
    pub with_help: usize,
    /// Minutes practised tonight.
    pub minutes: f64,
    /// Evenings practised this week before tonight.
    pub evenings_done: u32,
    /// Evenings of a week that the student wants to practise.
    pub evenings_planned: u32,
    /// The concepts practised tonight, in the order of their first exercises.
    pub concepts: Vec<SummaryConcept>,
    /// Whether more could be practised tonight.
    pub more: bool,
}

/// One concept that was practised tonight.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct SummaryConcept {
    /// The concept.
    pub concept: ConceptName,
    /// The last rating in the class's review, if any.
    pub said: Option<Confidence>,
    /// Exercises by the confidence that the student gave before answering, `NotYet` first.
    pub thought: [u32; 4],
    /// Of these, right without help.
    pub thought_right: [u32; 4],
    /// Exercises finished.
    pub finished: u32,
    /// Of these, right without help.
    pub alone: u32,
    /// Of these, right with a hint or at the second try.
    pub with_help: u32,
}
