//! Tonight's queue: what to practise next, and why.

use super::Reason;
use super::evidence::{
    Track, credit_of_answer, grade_of_answer, grade_of_class_result, pull_of_rating,
};
use super::memory::{DUE_RECALL, Grade, Memory, MemoryError, MemoryState};
use crate::item::Level;
use crate::rating::{AnswerResult, Confidence, Outcome};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// Days ahead at which a lift in recall is worth having.
const HORIZON_DAYS: f32 = 60.0;

/// Exercises of one concept an evening at most, outside assignments.
const MOST_OF_ONE_CONCEPT: u32 = 3;

/// How much a focus concept is preferred: enough to come up, not to fill the evening.
const FOCUS_PULL: f64 = 1.5;

/// Minutes an exercise takes before anything is known of the student.
pub const USUAL_MINUTES: f64 = 1.2;

/// What the class's plan says about a concept.
#[derive(Debug, Clone, PartialEq)]
pub struct ConceptFacts {
    /// Its id.
    pub key: String,
    /// Ids of the concepts that come before it.
    pub prerequisites: Vec<String>,
    /// Day of the first lesson; nothing for not this year.
    pub open_from: Option<NaiveDate>,
    /// Whether it can be practised at home.
    pub has_exercises: bool,
}

/// Something that happened, in order.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// What happened.
    pub kind: EventKind,
}

/// Kinds of events.
#[derive(Debug, Clone, PartialEq)]
pub enum EventKind {
    /// A check-in.
    CheckIn {
        /// The rating.
        confidence: Option<Confidence>,
        /// How it went.
        outcome: Option<Outcome>,
        /// Whether the concept was ahead of its first lesson: no evidence then.
        preview: bool,
    },
    /// A finished exercise.
    Answer {
        /// 1 to 3.
        level: u8,
        /// What came of it.
        result: AnswerResult,
        /// Minutes it took.
        minutes: f64,
    },
}

/// Practice assigned by the teacher.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Assigned {
    /// Concepts.
    pub concepts: Vec<String>,
    /// Exercises of each.
    pub items_each: u32,
    /// First evening.
    pub from: NaiveDate,
    /// Last evening.
    pub due: NaiveDate,
}

/// The evening to plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Evening {
    /// Its date.
    pub today: NaiveDate,
    /// Minutes meant for it.
    pub minutes: f64,
    /// The student's focus.
    pub focus: Vec<String>,
    /// Assignments that may stand.
    pub assigned: Vec<Assigned>,
}

/// A place in the queue.
#[derive(Debug, Clone, PartialEq)]
pub struct QueueEntry {
    /// The concept.
    pub concept: String,
    /// The level.
    pub level: Level,
    /// Why.
    pub reason: Reason,
    /// Minutes it will likely take.
    pub minutes: f64,
}

/// Everything known of a student, brought up to date event by event.
pub struct StudentMemory {
    memory: Memory,
    facts: BTreeMap<String, ConceptFacts>,
    tracks: BTreeMap<String, Track>,
    answers: Vec<(NaiveDate, String)>,
    minutes: f64,
    tonight: (Option<NaiveDate>, f64),
    last_concept: Option<String>,
}

fn day_number(date: NaiveDate) -> i32 {
    chrono::Datelike::num_days_from_ce(&date)
}

impl StudentMemory {
    /// Nothing known yet.
    ///
    /// # Errors
    /// [`MemoryError`] if the memory model cannot be made.
    pub fn new(facts: impl IntoIterator<Item = ConceptFacts>) -> Result<Self, MemoryError> {
        Ok(Self {
            memory: Memory::new()?,
            facts: facts.into_iter().map(|f| (f.key.clone(), f)).collect(),
            tracks: BTreeMap::new(),
            answers: Vec::new(),
            minutes: USUAL_MINUTES,
            tonight: (None, 0.0),
            last_concept: None,
        })
    }

    /// What is known of one concept.
    #[must_use]
    pub fn track(&self, concept: &str) -> Option<&Track> {
        self.tracks.get(concept)
    }

    /// The level an exercise of this concept would have now.
    #[must_use]
    pub fn level_for(&self, concept: &str) -> Level {
        level_for(self.tracks.get(concept))
    }

    /// Minutes practised on `today`.
    #[must_use]
    pub fn minutes_on(&self, today: NaiveDate) -> f64 {
        if self.tonight.0 == Some(today) {
            self.tonight.1
        } else {
            0.0
        }
    }

    /// Takes an event in.
    ///
    /// # Errors
    /// [`MemoryError`], never with finite states.
    pub fn apply(&mut self, event: &Event) -> Result<(), MemoryError> {
        let day = day_number(event.date);
        let track = self.tracks.entry(event.concept.clone()).or_default();
        match event.kind {
            EventKind::CheckIn {
                confidence,
                outcome,
                preview,
            } => {
                if preview {
                    return Ok(());
                }
                if let Some(confidence) = confidence {
                    track.rating = Some((day, confidence));
                }
                if let Some(grade) = grade_of_class_result(outcome, confidence) {
                    track.last_class_day = Some(day);
                    track.answers += 1.0;
                    track.credits += if outcome == Some(Outcome::Right) {
                        1.0
                    } else {
                        0.0
                    };
                    update(&self.memory, track, day, grade)?;
                }
            }
            EventKind::Answer {
                level,
                result,
                minutes,
            } => {
                let minutes = minutes.clamp(0.1, 15.0);
                track.answers += 1.0;
                track.credits += credit_of_answer(result);
                track.home_answers += 1;
                track.rating = None;
                track.last_answer = Some((day, result));
                track.minutes = Some(track.minutes.map_or(minutes, |m| 0.7 * m + 0.3 * minutes));
                track.tonight_answers = if track.tonight_day == day {
                    track.tonight_answers + 1
                } else {
                    1
                };
                track.tonight_day = day;
                track.alone_in_a_row = if result == AnswerResult::Alone && level >= track.last_level
                {
                    track.alone_in_a_row + 1
                } else {
                    u32::from(result == AnswerResult::Alone)
                };
                track.last_level = level;
                self.minutes = 0.95 * self.minutes + 0.05 * minutes;
                self.tonight = if self.tonight.0 == Some(event.date) {
                    (Some(event.date), self.tonight.1 + minutes)
                } else {
                    (Some(event.date), minutes)
                };
                self.last_concept = Some(event.concept.clone());
                self.answers.push((event.date, event.concept.clone()));
                update(&self.memory, track, day, grade_of_answer(result))?;
            }
        }
        Ok(())
    }

    /// What comes next tonight; nothing when the minutes are used up or nothing is open.
    ///
    /// # Errors
    /// [`MemoryError`], never with finite states.
    pub fn next(&self, evening: &Evening) -> Result<Option<QueueEntry>, MemoryError> {
        Ok(self.ranked(evening)?.into_iter().next())
    }

    /// The queue as it stands now, best first, at most `most` concepts.
    ///
    /// # Errors
    /// [`MemoryError`], never with finite states.
    pub fn plan(&self, evening: &Evening, most: usize) -> Result<Vec<QueueEntry>, MemoryError> {
        let mut queue = self.ranked(evening)?;
        queue.truncate(most);
        Ok(queue)
    }

    fn ranked(&self, evening: &Evening) -> Result<Vec<QueueEntry>, MemoryError> {
        let today = evening.today;
        let mut queue: Vec<(bool, f64, QueueEntry)> = Vec::new();
        for (key, facts) in &self.facts {
            let open = facts.open_from.is_some_and(|from| from <= today);
            if !facts.has_exercises {
                continue;
            }
            let track = self.tracks.get(key);
            let assigned = self.assigned(evening, key);
            if assigned.is_none() && (!open || !self.may_come(track, today)) {
                continue;
            }
            let value = self.value(facts, track, today, evening)?;
            let reason = match assigned {
                Some((due, done, of)) => Reason::Assigned { due, done, of },
                None => self.reason(key, track, evening),
            };
            queue.push((
                assigned.is_some(),
                value,
                QueueEntry {
                    concept: key.clone(),
                    level: level_for(track),
                    reason,
                    minutes: track.and_then(|t| t.minutes).unwrap_or(self.minutes),
                },
            ));
        }
        if self.minutes_on(today) >= evening.minutes {
            // Assigned work is finished even when the minutes are used up.
            queue.retain(|(assigned, _, _)| *assigned);
        }
        queue.sort_by(|a, b| {
            b.0.cmp(&a.0)
                .then(b.1.total_cmp(&a.1))
                .then_with(|| a.2.concept.cmp(&b.2.concept))
        });
        // Never the same concept twice running while another one is open.
        if queue.len() > 1
            && self.tonight.0 == Some(today)
            && queue.first().map(|q| &q.2.concept) == self.last_concept.as_ref()
        {
            queue.swap(0, 1);
        }
        Ok(queue.into_iter().map(|(_, _, entry)| entry).collect())
    }

    /// Not on the day it was answered in class; a second time tonight only
    /// after a wrong answer, three times at most.
    fn may_come(&self, track: Option<&Track>, today: NaiveDate) -> bool {
        let Some(track) = track else { return true };
        let day = day_number(today);
        if track.last_class_day == Some(day) {
            return false;
        }
        if track.tonight_day != day || track.tonight_answers == 0 {
            return true;
        }
        track.tonight_answers < MOST_OF_ONE_CONCEPT
            && track
                .last_answer
                .is_some_and(|(_, r)| r == AnswerResult::Wrong)
    }

    /// The assignment that asks for this concept now: due date, done, asked for.
    fn assigned(&self, evening: &Evening, concept: &str) -> Option<(NaiveDate, u32, u32)> {
        evening
            .assigned
            .iter()
            .filter(|a| {
                a.from <= evening.today
                    && evening.today <= a.due
                    && a.concepts.iter().any(|c| c == concept)
            })
            .map(|a| {
                let done = self
                    .answers
                    .iter()
                    .filter(|(on, of)| *on >= a.from && *on <= a.due && of == concept)
                    .count();
                (a.due, u32::try_from(done).unwrap_or(u32::MAX), a.items_each)
            })
            .filter(|(_, done, of)| done < of)
            .min()
    }

    /// Expected lift in recall two months on, for the minutes it takes.
    fn value(
        &self,
        facts: &ConceptFacts,
        track: Option<&Track>,
        today: NaiveDate,
        evening: &Evening,
    ) -> Result<f64, MemoryError> {
        let empty = Track::default();
        let track = track.unwrap_or(&empty);
        let day = day_number(today);
        let gap = track
            .last_evidence_day
            .map_or(0, |last| u32::try_from(day - last).unwrap_or(0));
        #[expect(clippy::cast_precision_loss, reason = "a few hundred days")]
        let gap_days = gap as f32;
        let (state, recall) = match track.state {
            Some(state) => (state, state.recall(gap_days)),
            None => (MemoryState::UNTESTED, 0.5),
        };
        let after = self.memory.after(track.state, gap)?;
        let rise = recall * after.alone.recall(HORIZON_DAYS)
            + (1.0 - recall) * after.wrong.recall(HORIZON_DAYS)
            - state.recall(gap_days + HORIZON_DAYS);
        let share = track.share_right();
        let known: Vec<f64> = facts
            .prerequisites
            .iter()
            .filter_map(|p| self.tracks.get(p))
            .map(Track::share_right)
            .collect();
        let ready = if known.is_empty() {
            1.0
        } else {
            #[expect(clippy::cast_precision_loss, reason = "a handful")]
            let mean = known.iter().sum::<f64>() / known.len() as f64;
            0.5 + 0.5 * mean
        };
        let relative_minutes =
            (track.minutes.unwrap_or(self.minutes) / self.minutes).clamp(0.5, 2.0);
        let focus = if evening.focus.contains(&facts.key) {
            FOCUS_PULL
        } else {
            1.0
        };
        let pull = pull_of_rating(track.rating.map(|(_, c)| c));
        Ok(
            f64::from(rise.max(0.0)) * share * (1.0 - share) * ready * pull * focus
                / relative_minutes.sqrt(),
        )
    }

    fn reason(&self, key: &str, track: Option<&Track>, evening: &Evening) -> Reason {
        let date = |day: i32| NaiveDate::from_num_days_from_ce_opt(day).unwrap_or(evening.today);
        if evening.focus.iter().any(|f| f == key) {
            return Reason::Focus;
        }
        let Some(track) = track else {
            return Reason::FirstPractice;
        };
        match track.rating {
            Some((day, Confidence::NotYet)) => return Reason::MarkedNotYet { on: date(day) },
            Some((day, Confidence::WithHelp)) => return Reason::MarkedWithHelp { on: date(day) },
            _ => {}
        }
        if let Some((day, AnswerResult::Wrong)) = track.last_answer {
            return Reason::WrongLastTime { on: date(day) };
        }
        if track.home_answers == 0 {
            return Reason::FirstPractice;
        }
        let days = track
            .last_evidence_day
            .map_or(0, |last| day_number(evening.today) - last);
        Reason::TimeToSeeAgain {
            days: u32::try_from(days).unwrap_or(0),
        }
    }

    /// Whether a concept's recall has fallen to where it counts as due.
    #[must_use]
    pub fn is_due(&self, concept: &str, today: NaiveDate) -> bool {
        self.tracks.get(concept).is_some_and(|track| {
            track
                .state
                .zip(track.last_evidence_day)
                .is_some_and(|(state, last)| {
                    #[expect(clippy::cast_precision_loss, reason = "a few hundred days")]
                    let gap = (day_number(today) - last).max(0) as f32;
                    state.recall(gap) <= DUE_RECALL
                })
        })
    }
}

/// At most one update a concept and date: the first evidence of the day decides.
fn update(memory: &Memory, track: &mut Track, day: i32, grade: Grade) -> Result<(), MemoryError> {
    if track.last_evidence_day.is_some_and(|last| last >= day) {
        return Ok(());
    }
    let gap = track
        .last_evidence_day
        .map_or(0, |last| u32::try_from(day - last).unwrap_or(0));
    track.state = Some(memory.after(track.state, gap)?.with(grade));
    track.last_evidence_day = Some(day);
    Ok(())
}

/// Entry below half right, stretch after three alone in a row with four in five right.
fn level_for(track: Option<&Track>) -> Level {
    match track {
        None => Level::Entry,
        Some(track) if track.home_answers == 0 && track.share_right() < 0.6 => Level::Entry,
        Some(track) if track.share_right() < 0.5 => Level::Entry,
        Some(track) if track.alone_in_a_row >= 3 && track.share_right() >= 0.75 => Level::Stretch,
        Some(_) => Level::Expected,
    }
}
