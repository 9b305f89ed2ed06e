//! The rules that are compared: ours, simple ones, and one that knows the truth.

use super::luck::{Luck, Purpose};
use super::plan::{SchoolDay, YearPlan};
use super::sim_student::{Noted, SimStudent};
use crate::estimate::Tuning;
use crate::memory::{Grade, Memory, MemoryError, MemoryState};
use crate::rehearsal::Rehearsal;
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};

/// Longest gap of the doubling rule: a year.
const LONGEST_GAP_DAYS: i32 = 365;

/// A rule by name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RuleName {
    /// No practice at home.
    None,
    /// Any open concept.
    Random,
    /// The concept rated lowest, longest ago.
    LowestRating,
    /// Gaps that double after a right answer and start anew after a wrong one.
    Doubling,
    /// The lowest recall by the memory model alone.
    PlainFsrs,
    /// Ours.
    Surefoot,
    /// Greedy with true knowledge.
    Oracle,
}

impl RuleName {
    /// All of them, in the order of the table.
    pub const ALL: [Self; 7] = [
        Self::None,
        Self::Random,
        Self::LowestRating,
        Self::Doubling,
        Self::PlainFsrs,
        Self::Surefoot,
        Self::Oracle,
    ];

    /// Returns its name in the table.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::None => "none",
            Self::Random => "random",
            Self::LowestRating => "lowest rating",
            Self::Doubling => "doubling gaps",
            Self::PlainFsrs => "plain fsrs",
            Self::Surefoot => "surefoot",
            Self::Oracle => "oracle",
        }
    }
}

/// What a simple rule remembers of one concept of one student.
#[derive(Debug, Clone, Copy, Default)]
struct Memo {
    rating: f64,
    last_day: i32,
    gap_days: i32,
    state: Option<MemoryState>,
    evidence_day: i32,
    last_home_turn: u32,
}

/// A rule at work on a class.
pub struct Rule<'a> {
    name: RuleName,
    plan: &'a YearPlan,
    rivals: Vec<Rival>,
    memory: Memory,
    ours: Option<Rehearsal>,
    turn: u32,
}

/// What a simple rule remembers of one student.
struct Rival {
    luck: Luck,
    /// By the number of the concept.
    memos: Vec<Memo>,
}

impl Rival {
    #[expect(
        clippy::indexing_slicing,
        reason = "concepts are numbered as in the plan that the rule was made from"
    )]
    fn memo(&self, concept: usize) -> &Memo {
        &self.memos[concept]
    }

    #[expect(clippy::indexing_slicing, reason = "as in `memo`")]
    fn memo_mut(&mut self, concept: usize) -> &mut Memo {
        &mut self.memos[concept]
    }
}

/// Returns the grade of a practice answer for plain FSRS. Its top grade is never given.
fn grade_of_answer(result: AnswerResult) -> Grade {
    match result {
        AnswerResult::Wrong => Grade::Wrong,
        AnswerResult::WithHelp => Grade::Helped,
        AnswerResult::Alone => Grade::Alone,
    }
}

/// Returns the grade of a self-marked outcome for plain FSRS. A right outcome counts as helped
/// if the student's own rating says that help was needed.
fn grade_of_class_result(outcome: Option<Outcome>, confidence: Confidence) -> Option<Grade> {
    Some(match outcome?.is_right()? {
        false => Grade::Wrong,
        true if confidence.needs_help() => Grade::Helped,
        true => Grade::Alone,
    })
}

impl<'a> Rule<'a> {
    /// Returns a rule at the start of a year.
    pub fn new(
        name: RuleName,
        plan: &'a YearPlan,
        students: usize,
        seed: u64,
        tuning: Tuning,
    ) -> Result<Self, MemoryError> {
        Ok(Self {
            name,
            plan,
            rivals: (0..students)
                .map(|student| Rival {
                    luck: Luck::new(seed, student + 1),
                    memos: vec![Memo::default(); plan.concepts.len()],
                })
                .collect(),
            memory: Memory::new()?,
            ours: if name == RuleName::Surefoot {
                Some(Rehearsal::new(students, plan, tuning))
            } else {
                None
            },
            turn: 0,
        })
    }

    #[expect(
        clippy::indexing_slicing,
        reason = "students are numbered from 0 up to the number that the rule was made for"
    )]
    fn rival(&self, student: usize) -> &Rival {
        &self.rivals[student]
    }

    #[expect(clippy::indexing_slicing, reason = "as in `rival`")]
    fn rival_mut(&mut self, student: usize) -> &mut Rival {
        &mut self.rivals[student]
    }

    fn remember(&mut self, student: usize, concept: usize, day: i32, right: bool) {
        let memo = self.rival_mut(student).memo_mut(concept);
        memo.gap_days = if right {
            (memo.gap_days * 2).clamp(2, LONGEST_GAP_DAYS)
        } else {
            1
        };
        memo.last_day = day;
    }

    fn state(
        &mut self,
        student: usize,
        concept: usize,
        day: i32,
        grade: Grade,
    ) -> Result<(), MemoryError> {
        let memo = self.rival(student).memo(concept);
        if memo.state.is_some() && memo.evidence_day == day {
            return Ok(());
        }
        let gap = if memo.state.is_some() {
            u32::try_from(day - memo.evidence_day).unwrap_or(0)
        } else {
            0
        };
        let state = self.memory.after(memo.state, gap)?.with(grade);
        let memo = self.rival_mut(student).memo_mut(concept);
        memo.state = Some(state);
        memo.evidence_day = day;
        Ok(())
    }

    /// Passes what was noted in class to the rule.
    pub fn noted(
        &mut self,
        student: usize,
        on: SchoolDay,
        notes: &[Noted],
    ) -> Result<(), MemoryError> {
        let SchoolDay {
            number: school_day,
            day,
        } = on;
        for note in notes {
            if let Some(ours) = &mut self.ours {
                ours.check_in(
                    student,
                    note.concept,
                    school_day,
                    day,
                    Some(note.confidence),
                    note.outcome,
                );
                continue;
            }
            if school_day < self.plan.concept(note.concept).ready {
                continue;
            }
            #[expect(clippy::cast_precision_loss, reason = "0 to 3")]
            let rating = note.confidence.index() as f64;
            self.rival_mut(student).memo_mut(note.concept).rating = rating;
            if let Some(grade) = grade_of_class_result(note.outcome, note.confidence) {
                let right = note.outcome.and_then(Outcome::is_right) == Some(true);
                self.remember(student, note.concept, day, right);
                self.state(student, note.concept, day, grade)?;
            }
        }
        Ok(())
    }

    /// Passes the result of a home answer to the rule.
    pub fn answered(
        &mut self,
        student: usize,
        on: SchoolDay,
        concept: usize,
        result: AnswerResult,
        minutes: f64,
    ) -> Result<(), MemoryError> {
        let day = on.day;
        if let Some(ours) = &mut self.ours {
            ours.answer(student, concept, day, result, minutes);
            return Ok(());
        }
        self.turn += 1;
        let turn = self.turn;
        self.rival_mut(student).memo_mut(concept).last_home_turn = turn;
        self.remember(student, concept, day, result == AnswerResult::Alone);
        self.state(student, concept, day, grade_of_answer(result))
    }

    /// Returns what the student practises next.
    pub fn choose(
        &self,
        student: usize,
        on: SchoolDay,
        tonight: &[usize],
        truth: &SimStudent,
    ) -> Option<usize> {
        let SchoolDay {
            number: school_day,
            day,
        } = on;
        if let Some(ours) = &self.ours {
            return ours.choose(student, day);
        }
        let end = self.plan.calendar.last().copied().unwrap_or(day);
        let open: Vec<usize> = self
            .plan
            .concepts
            .iter()
            .enumerate()
            .filter(|(_, concept)| concept.ready <= school_day)
            .map(|(number, _)| number)
            .collect();
        let fresh: Vec<usize> = open
            .iter()
            .copied()
            .filter(|c| !tonight.contains(c))
            .collect();
        let from = match self.name {
            RuleName::None => return None,
            RuleName::Oracle => &open,
            _ if fresh.is_empty() => &open,
            _ => &fresh,
        };
        let rival = self.rival(student);
        let draw = |c: usize| {
            rival
                .luck
                .draw(c, school_day * 64 + tonight.len(), Purpose::Rule)
        };
        let score = |c: usize| -> f64 {
            let memo = rival.memo(c);
            match self.name {
                RuleName::None | RuleName::Surefoot => 0.0,
                RuleName::Random => draw(c),
                RuleName::LowestRating => {
                    -memo.rating - 0.001 * f64::from(memo.last_home_turn) / f64::from(self.turn + 1)
                }
                RuleName::Doubling => f64::from(day - memo.last_day - memo.gap_days) + draw(c),
                RuleName::PlainFsrs => memo.state.map_or(-0.5, |state| {
                    #[expect(clippy::cast_precision_loss, reason = "a few hundred days")]
                    let gap = (day - memo.evidence_day) as f32;
                    -f64::from(state.recall(gap))
                }),
                RuleName::Oracle => {
                    truth.true_gain(self.plan, c, day, end) / truth.usual_minutes(c)
                }
            }
        };
        from.iter()
            .map(|c| (score(*c), *c))
            .max_by(|a, b| a.0.total_cmp(&b.0).then(b.1.cmp(&a.1)))
            .map(|(_, c)| c)
    }
}
