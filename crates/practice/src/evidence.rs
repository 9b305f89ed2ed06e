//! What is known of a concept, and how much each piece of it counts.
//!
//! Every rule is its own function. Days are calendar day numbers, so gaps are
//! differences.

use surefoot_catalogue::rating::{AnswerResult, Confidence};

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

/// What a student said or did last. The last has the highest sequence, so that an entry with
/// a wrong date never replaces a later one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Latest<T> {
    /// Its sequence.
    pub sequence: u32,
    /// Its day.
    pub day: i32,
    /// What it says.
    pub value: T,
}

impl<T> Latest<T> {
    /// Replaces what was last, unless that has a higher sequence.
    pub(super) fn replace(self, last: &mut Option<Self>) {
        if (last.as_ref()).is_none_or(|last| last.sequence <= self.sequence) {
            *last = Some(self);
        }
    }
}

/// All that is known of one concept of one student.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Track {
    /// Day of the last answer, in class or at home.
    pub last_evidence_day: Option<i32>,
    /// Answers counted, in class and at home.
    pub answers: f64,
    /// Sum of their credits.
    pub credits: f64,
    /// Answers at home.
    pub home_answers: u32,
    /// The last answer at home.
    pub last_answer: Option<Latest<AnswerResult>>,
    /// Day of the last marked result in class.
    pub last_class_day: Option<i32>,
    /// The last rating.
    pub rating: Option<Latest<Confidence>>,
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
    /// Returns the last rating if no answer at home came after it.
    #[must_use]
    pub fn open_rating(&self) -> Option<Latest<Confidence>> {
        self.rating.filter(|rating| {
            let answered = self.last_answer.map(|answer| answer.sequence);
            answered.is_none_or(|answered| answered < rating.sequence)
        })
    }

    /// Returns the share right, with one right and one wrong answer assumed before the first.
    #[must_use]
    pub fn share_right(&self) -> f64 {
        (1.0 + self.credits) / (2.0 + self.answers)
    }
}
