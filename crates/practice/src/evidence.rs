//! What counts as evidence of a concept, and how much.
//!
//! Every rule is its own function. Days are calendar day numbers, so gaps are
//! differences.

use super::memory::{Grade, MemoryState};
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};

/// Returns the grade of a practice answer: 1, 2 or 3 of the memory model's grades. Its top
/// grade is never given, so nothing that a student says of an answer can lengthen a gap.
#[must_use]
pub fn grade_of_answer(result: AnswerResult) -> Grade {
    match result {
        AnswerResult::Wrong => Grade::Wrong,
        AnswerResult::WithHelp => Grade::Helped,
        AnswerResult::Alone => Grade::Alone,
    }
}

/// Returns the grade of a self-marked outcome. Marking is lenient, and children overrate
/// themselves (Destan & Roebers 2015), so a right outcome counts as helped if the student's
/// own rating says that help was needed. A rating without an outcome is no evidence of memory.
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

/// Returns the grade of an observation, which is that of an answer. A teacher's judgement
/// agrees with tests well but not fully (r = 0.63 over 75 studies, Südkamp, Kaiser & Möller
/// 2012, from memory), so it weighs more than a self-marked outcome and less than an answer
/// at home.
#[must_use]
pub fn grade_of_observation(seen: AnswerResult) -> Grade {
    grade_of_answer(seen)
}

/// Returns what an answer adds to the share right: alone 1, with help one half.
#[must_use]
pub fn credit_of_answer(result: AnswerResult) -> f64 {
    match result {
        AnswerResult::Wrong => 0.0,
        AnswerResult::WithHelp => 0.5,
        AnswerResult::Alone => 1.0,
    }
}

/// Returns how much a rating raises a concept in the queue until it is practised again. A
/// rating never lowers a concept.
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
    /// Day of the last evidence that changed it.
    pub last_evidence_day: Option<i32>,
    /// Answers counted, in class and at home.
    pub answers: f64,
    /// Sum of their credits.
    pub credits: f64,
    /// Answers at home.
    pub home_answers: u32,
    /// Day and result of the last answer at home.
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
    /// Answers right alone in a row at home, for the choice of level.
    pub alone_in_a_row: u32,
    /// Level of the last exercise.
    pub last_level: u8,
}

impl Track {
    /// Returns the share right, with one right and one wrong answer assumed before the first.
    #[must_use]
    pub fn share_right(&self) -> f64 {
        (1.0 + self.credits) / (2.0 + self.answers)
    }
}
