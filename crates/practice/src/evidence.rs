//! What counts as evidence of a concept, and how much.
//!
//! Every rule is its own function. Days are calendar day numbers, so gaps are
//! differences.

use super::memory::{Grade, MemoryState};
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};

/// A practice answer: wrong 1, with help 2, alone 3 of the memory model's
/// grades. Its top grade is never given, so nothing a student says about an
/// answer can lengthen a gap.
#[must_use]
pub fn grade_of_answer(result: AnswerResult) -> Grade {
    match result {
        AnswerResult::Wrong => Grade::Wrong,
        AnswerResult::WithHelp => Grade::Helped,
        AnswerResult::Alone => Grade::Alone,
    }
}

/// A self-marked result of the day's review. Marking is lenient, and children
/// overrate themselves (Destan & Roebers 2015), so a right answer that the
/// student needed help with, by their own rating, counts as helped. A rating
/// without a result is no evidence of memory at all.
#[must_use]
pub fn grade_of_class_result(
    outcome: Option<Outcome>,
    confidence: Option<Confidence>,
) -> Option<Grade> {
    match outcome? {
        Outcome::NotDone => None,
        Outcome::Wrong => Some(Grade::Wrong),
        Outcome::Right if confidence.is_some_and(Confidence::needs_help) => Some(Grade::Helped),
        Outcome::Right => Some(Grade::Alone),
    }
}

/// What the teacher saw at a desk or on the board: graded as an answer is. A
/// teacher's judgement goes well with tests but not fully (r = 0.63 over 75
/// studies, Südkamp, Kaiser & Möller 2012, from memory), so it tells more than a
/// self-marked result and less than an answer at home.
#[must_use]
pub fn grade_of_observation(seen: AnswerResult) -> Grade {
    grade_of_answer(seen)
}

/// What an answer adds to the share right: alone 1, with help one half.
#[must_use]
pub fn credit_of_answer(result: AnswerResult) -> f64 {
    match result {
        AnswerResult::Wrong => 0.0,
        AnswerResult::WithHelp => 0.5,
        AnswerResult::Alone => 1.0,
    }
}

/// How much a rating raises a concept in the queue until it is practised again. A rating
/// never lowers a concept.
#[must_use]
pub fn pull_of_rating(confidence: Option<Confidence>) -> f64 {
    match confidence {
        Some(Confidence::NotYet) => 1.25,
        Some(Confidence::WithHelp) => 1.1,
        _ => 1.0,
    }
}

/// All that is known of one concept of one student.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Track {
    /// Memory, once there is evidence.
    pub state: Option<MemoryState>,
    /// Day of the last evidence that moved it.
    pub last_evidence_day: Option<i32>,
    /// Answers counted, in class and at home.
    pub answers: f64,
    /// Credits of these.
    pub credits: f64,
    /// Answers at home.
    pub home_answers: u32,
    /// Day of the last answer at home, and what came of it.
    pub last_answer: Option<(i32, AnswerResult)>,
    /// Day of the last marked result in class.
    pub last_class_day: Option<i32>,
    /// The last rating since the last answer at home, with its day.
    pub rating: Option<(i32, Confidence)>,
    /// This student's smoothed minutes on this concept.
    pub minutes: Option<f64>,
    /// Day of `tonight_answers`.
    pub tonight_day: i32,
    /// Answers at home on that day.
    pub tonight_answers: u32,
    /// Right alone in a row at home, for the choice of level.
    pub alone_in_a_row: u32,
    /// Level of the last exercise.
    pub last_level: u8,
}

impl Track {
    /// Share right with one right and one wrong assumed before any answer.
    #[must_use]
    pub fn share_right(&self) -> f64 {
        (1.0 + self.credits) / (2.0 + self.answers)
    }
}
