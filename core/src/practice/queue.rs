//! Tonight's queue: what to practise next, and why.

use super::Reason;
use super::estimate::{Aim, Belief, Estimator, Tuning};
use super::event::{ConceptFacts, Evening, Event, EventKind, QueueEntry};
use super::evidence::{
    Track, credit_of_answer, grade_of_answer, grade_of_class_result, pull_of_rating,
};
use super::memory::{DUE_RECALL, Grade, Memory, MemoryError};
use crate::item::Level;
use crate::rating::{AnswerResult, Confidence, Outcome};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// Days ahead that are aimed at when no date is named.
const USUAL_GOAL_DAYS: i32 = 60;

/// Exercises of one concept an evening at most, outside assignments.
const MOST_OF_ONE_CONCEPT: u32 = 3;

/// How much a focus concept is preferred: enough to come up, not to fill the evening.
const FOCUS_PULL: f64 = 1.5;

/// Minutes an exercise takes before anything is known of the student.
pub const USUAL_MINUTES: f64 = 1.2;

/// Everything known of a student, brought up to date event by event.
pub struct StudentMemory {
    memory: Memory,
    estimator: Estimator,
    facts: Vec<ConceptFacts>,
    places: BTreeMap<String, usize>,
    prerequisites: Vec<Vec<usize>>,
    dependants: Vec<Vec<usize>>,
    meetings: Vec<Vec<i32>>,
    tracks: Vec<Option<Track>>,
    beliefs: Vec<Belief>,
    mean_ease: f64,
    answers: Vec<(NaiveDate, String)>,
    minutes: f64,
    tonight: (Option<NaiveDate>, f64),
    last_concept: Option<String>,
}

/// In what turn a concept comes: the lower first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Turn {
    /// Assigned by the teacher.
    Assigned,
    /// Open tonight.
    Open,
    /// Met in class today.
    SeenToday,
    /// Answered tonight already, so often.
    Again(u32),
    /// Answered as often as a concept may come while others are open.
    Often(u32),
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
        Self::tuned(facts, Tuning::USED)
    }

    /// Nothing known yet, under another tuning of the estimate.
    ///
    /// # Errors
    /// [`MemoryError`] if the memory model cannot be made.
    pub fn tuned(
        facts: impl IntoIterator<Item = ConceptFacts>,
        tuning: Tuning,
    ) -> Result<Self, MemoryError> {
        let facts: Vec<ConceptFacts> = facts.into_iter().collect();
        let estimator = Estimator::new(tuning);
        let places: BTreeMap<String, usize> = facts
            .iter()
            .enumerate()
            .map(|(place, f)| (f.key.clone(), place))
            .collect();
        let prerequisites: Vec<Vec<usize>> = facts
            .iter()
            .map(|f| {
                f.prerequisites
                    .iter()
                    .filter_map(|p| places.get(p).copied())
                    .collect()
            })
            .collect();
        let mut dependants = vec![Vec::new(); facts.len()];
        for (place, before) in prerequisites.iter().enumerate() {
            for p in before {
                dependants[*p].push(place);
            }
        }
        let mut beliefs = vec![Belief::default(); facts.len()];
        for (belief, fact) in beliefs.iter_mut().zip(&facts) {
            if let Some(open) = fact.open_from {
                estimator.taught(belief, day_number(open));
            }
        }
        Ok(Self {
            memory: Memory::new()?,
            estimator,
            meetings: facts
                .iter()
                .map(|f| f.meetings.iter().copied().map(day_number).collect())
                .collect(),
            tracks: vec![None; facts.len()],
            beliefs,
            facts,
            places,
            prerequisites,
            dependants,
            mean_ease: 0.0,
            answers: Vec::new(),
            minutes: USUAL_MINUTES,
            tonight: (None, 0.0),
            last_concept: None,
        })
    }

    /// What is known of one concept.
    #[must_use]
    pub fn track(&self, concept: &str) -> Option<&Track> {
        self.places
            .get(concept)
            .and_then(|place| self.tracks[*place].as_ref())
    }

    /// The level an exercise of this concept would have now.
    #[must_use]
    pub fn level_for(&self, concept: &str) -> Level {
        level_for(self.track(concept))
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
        let Some(&place) = self.places.get(&event.concept) else {
            // A concept the class no longer has: nothing to plan with it.
            return Ok(());
        };
        let track = self.tracks[place].get_or_insert_default();
        let belief = &mut self.beliefs[place];
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
                if confidence.is_some() || outcome.is_some() {
                    let right = match outcome {
                        Some(Outcome::Right) => Some(true),
                        Some(Outcome::Wrong) => Some(false),
                        Some(Outcome::NotDone) | None => None,
                    };
                    self.estimator.class_meeting(belief, day, right);
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
                self.estimator.answer(belief, day, result);
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
        self.mean_ease = self
            .estimator
            .student_mean(self.beliefs.iter(), self.mean_ease);
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
        let over = self.minutes_on(today) >= evening.minutes;
        let mut queue: Vec<(Turn, f64, usize)> = Vec::new();
        for (place, facts) in self.facts.iter().enumerate() {
            if !facts.has_exercises {
                continue;
            }
            let turn = if self.assigned(evening, &facts.key).is_some() {
                Turn::Assigned
            } else if facts.open_from.is_some_and(|from| from <= today) && !over {
                self.turn(place, today)
            } else {
                // Assigned work is finished even when the minutes are used up.
                continue;
            };
            queue.push((turn, self.value(place, evening), place));
        }
        // What comes again only for want of others stands aside while others are open.
        let best = queue.iter().map(|q| q.0).min();
        let least = best.map_or(Turn::Open, |b| b.max(Turn::Open));
        // Two must stay, so that no concept has to follow itself.
        if queue.iter().filter(|q| q.0 <= least).count() > 1 {
            queue.retain(|q| q.0 <= least);
        }
        queue.sort_by(|a, b| a.0.cmp(&b.0).then(b.1.total_cmp(&a.1)).then(a.2.cmp(&b.2)));
        // Never the same concept twice running while another one is open.
        if queue.len() > 1
            && self.tonight.0 == Some(today)
            && queue
                .first()
                .is_some_and(|q| Some(&self.facts[q.2].key) == self.last_concept.as_ref())
        {
            queue.swap(0, 1);
        }
        Ok(queue
            .into_iter()
            .map(|(_, _, place)| {
                let key = &self.facts[place].key;
                let track = self.tracks[place].as_ref();
                QueueEntry {
                    concept: key.clone(),
                    level: level_for(track),
                    reason: match self.assigned(evening, key) {
                        Some((due, done, of)) => Reason::Assigned { due, done, of },
                        None => self.reason(key, track, evening),
                    },
                    minutes: track.and_then(|t| t.minutes).unwrap_or(self.minutes),
                }
            })
            .collect())
    }

    /// Not on the day it was answered in class; a second time tonight only
    /// after a wrong answer, three times at most; all that only while another
    /// concept is open, so that an evening early in the year is not cut short.
    fn turn(&self, place: usize, today: NaiveDate) -> Turn {
        let Some(track) = &self.tracks[place] else {
            return Turn::Open;
        };
        let day = day_number(today);
        let tonight = if track.tonight_day == day {
            track.tonight_answers
        } else {
            0
        };
        let wrong = track
            .last_answer
            .is_some_and(|(_, r)| r == AnswerResult::Wrong);
        match tonight {
            0 if track.last_class_day == Some(day) => Turn::SeenToday,
            0 => Turn::Open,
            1..MOST_OF_ONE_CONCEPT if wrong => Turn::Open,
            1..MOST_OF_ONE_CONCEPT => Turn::Again(tonight),
            _ => Turn::Often(tonight),
        }
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

    /// What is believed of a student's ease with a concept before answers on
    /// it: the student's mean, and part of what the prerequisites differ from it.
    fn prior(&self, place: usize) -> f64 {
        let spread = self.estimator.tuning().spread;
        let before = &self.prerequisites[place];
        let tested: Vec<f64> = before
            .iter()
            .map(|p| &self.beliefs[*p])
            .filter(|b| b.is_tested())
            .map(|b| b.ease(self.mean_ease, spread) - self.mean_ease)
            .collect();
        if tested.is_empty() {
            return self.mean_ease;
        }
        #[expect(clippy::cast_precision_loss, reason = "a handful")]
        let mean = tested.iter().sum::<f64>() / tested.len() as f64;
        self.mean_ease + self.estimator.tuning().carry_over * mean
    }

    /// How far what comes before is known: half, and half by the share known.
    fn ready(&self, place: usize, day: i32) -> f64 {
        let before = &self.prerequisites[place];
        if before.is_empty() {
            return 1.0;
        }
        #[expect(clippy::cast_precision_loss, reason = "a handful")]
        let mean = before
            .iter()
            .map(|p| self.estimator.knows(&self.beliefs[*p], self.mean_ease, day))
            .sum::<f64>()
            / before.len() as f64;
        0.5 + 0.5 * mean
    }

    /// Expected gain at the date aimed at, for the minutes it takes.
    fn value(&self, place: usize, evening: &Evening) -> f64 {
        let empty = Track::default();
        let track = self.tracks[place].as_ref().unwrap_or(&empty);
        let tuning = self.estimator.tuning();
        let today = day_number(evening.today);
        let goal = evening
            .goal
            .map_or(today + USUAL_GOAL_DAYS, day_number)
            .max(today + tuning.least_days);
        let meetings = &self.meetings[place];
        let from = meetings.partition_point(|day| *day <= today);
        let upto = meetings.partition_point(|day| *day <= goal);
        let prospect = self.estimator.prospect(
            &self.beliefs[place],
            self.prior(place),
            self.ready(place, today),
            &Aim {
                today,
                goal,
                meetings: &meetings[from..upto.max(from)],
            },
        );
        #[expect(clippy::cast_precision_loss, reason = "a handful")]
        let unlocks = 1.0 + tuning.unlocking * (self.dependants[place].len() as f64).min(3.0) / 3.0;
        let relative_minutes =
            (track.minutes.unwrap_or(self.minutes) / self.minutes).clamp(0.5, 2.0);
        let focus = if evening.focus.contains(&self.facts[place].key) {
            FOCUS_PULL
        } else {
            1.0
        };
        let pull = pull_of_rating(track.rating.map(|(_, c)| c));
        prospect.gain.max(0.0) * unlocks * pull * focus
            / relative_minutes.powf(tuning.minutes_power)
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
        self.track(concept).is_some_and(|track| {
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
