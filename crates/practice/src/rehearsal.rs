//! The schedule of a whole class in plain numbers, for an outside program and for our own
//! simulator. It calls the same functions as the app.

use super::estimate::Tuning;
use super::simulate::plan::YearPlan;
use super::{ConceptFacts, Evening, Event, EventKind, StudentMemory};
use chrono::NaiveDate;
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};

/// A class under the schedule.
pub struct Rehearsal {
    students: Vec<StudentMemory>,
    /// The sequence of the last event of the class.
    sequence: u32,
    ready: Vec<usize>,
    minutes: f64,
    goal: Option<NaiveDate>,
}

/// Days are counted from here; only differences matter.
const DAY_ZERO: i32 = 738_000;

fn date(calendar_day: i32) -> NaiveDate {
    NaiveDate::from_num_days_from_ce_opt(DAY_ZERO.saturating_add(calendar_day))
        .unwrap_or(NaiveDate::MAX)
}

/// The id of a concept: its number, so that ids sort as numbers do.
fn key(concept: usize) -> String {
    format!("{concept:05}")
}

impl Rehearsal {
    /// A class of `students` at the start of a year.
    #[must_use]
    pub fn new(students: usize, plan: &YearPlan, tuning: Tuning) -> Self {
        let facts: Vec<ConceptFacts> = plan
            .concepts
            .iter()
            .enumerate()
            .map(|(number, concept)| ConceptFacts {
                key: key(number),
                prerequisites: concept.prerequisites.iter().copied().map(key).collect(),
                open_from: plan.calendar.get(concept.ready).copied().map(date),
                has_exercises: true,
                meetings: plan.meetings(concept).into_iter().map(date).collect(),
            })
            .collect();
        Self {
            students: (0..students)
                .map(|_| StudentMemory::tuned(facts.iter().cloned(), tuning))
                .collect(),
            sequence: 0,
            ready: plan.concepts.iter().map(|concept| concept.ready).collect(),
            minutes: plan.minutes,
            goal: plan.calendar.last().copied().map(date),
        }
    }

    #[expect(
        clippy::indexing_slicing,
        reason = "whoever drives the schedule numbers the students that it was made for"
    )]
    fn student(&self, number: usize) -> &StudentMemory {
        &self.students[number]
    }

    #[expect(clippy::indexing_slicing, reason = "as in `student`")]
    fn student_mut(&mut self, number: usize) -> &mut StudentMemory {
        &mut self.students[number]
    }

    /// Takes a student's confidence and outcome after the review.
    pub fn check_in(
        &mut self,
        student: usize,
        concept: usize,
        school_day: usize,
        calendar_day: i32,
        confidence: Option<Confidence>,
        outcome: Option<Outcome>,
    ) {
        let preview = self.ready.get(concept).is_none_or(|r| school_day < *r);
        let kind = EventKind::CheckIn {
            confidence,
            outcome,
            preview,
        };
        self.apply(student, concept, calendar_day, kind);
    }

    /// What the student practises next; `None` if the evening is over.
    #[must_use]
    pub fn choose(&self, student: usize, calendar_day: i32) -> Option<usize> {
        let entry = self.student(student).next(&Evening {
            today: date(calendar_day),
            minutes: self.minutes,
            most_minutes: self.minutes,
            exercises: None,
            evenings_a_week: 7,
            focus: Vec::new(),
            assigned: Vec::new(),
            goal: self.goal,
        });
        entry.and_then(|e| e.concept.parse().ok())
    }

    /// A home answer.
    pub fn answer(
        &mut self,
        student: usize,
        concept: usize,
        calendar_day: i32,
        result: AnswerResult,
        minutes: f64,
    ) {
        let kind = EventKind::Answer {
            level: 2,
            result,
            minutes,
        };
        self.apply(student, concept, calendar_day, kind);
    }

    fn apply(&mut self, student: usize, concept: usize, calendar_day: i32, kind: EventKind) {
        self.sequence += 1;
        let event = Event {
            date: date(calendar_day),
            sequence: self.sequence,
            concept: key(concept),
            kind,
        };
        self.student_mut(student).apply(&event);
    }
}
