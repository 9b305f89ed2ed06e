//! Tonight's queue: what to practise next, and why.

use super::estimate::Aim;
use super::event::{Evening, QueueEntry};
use super::evidence::{Track, pull_of_rating};
use super::student_memory::{ConceptMemory, StudentMemory, day_number, level_for};
use super::workload::{MOST_ASSIGNED_EVENINGS, owed_tonight};
use chrono::NaiveDate;
use surefoot_catalogue::rating::{AnswerResult, Confidence};
use surefoot_record::Reason;

/// How many days ahead practice aims if there is no date to aim at.
const USUAL_GOAL_DAYS: i32 = 60;

/// The most exercises of one concept in an evening, outside assignments.
const MOST_OF_ONE_CONCEPT: u32 = 3;

/// The factor by which a focus concept is preferred: enough that it comes up, but not so much
/// that it fills the evening.
const FOCUS_PULL: f64 = 1.5;

/// The group of the queue in which a concept comes; the lowest group comes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Turn {
    /// Assigned by the teacher; the earliest due date comes first.
    Assigned(NaiveDate),
    /// Open tonight.
    Open,
    /// Met in class today.
    SeenToday,
    /// Already answered tonight, this many times.
    Again(u32),
    /// Answered tonight this many times, which is as often as a concept may come while others
    /// are open.
    Often(u32),
}

/// The progress of an assignment of one concept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Standing {
    due: NaiveDate,
    done: u32,
    of: u32,
    /// Whether more of it must be done tonight, so that all is done in time.
    owed: bool,
}

/// A concept that may be practised tonight.
struct Candidate<'a> {
    turn: Turn,
    value: f64,
    concept: &'a ConceptMemory,
}

impl StudentMemory {
    /// Returns what comes next tonight; `None` if the evening is over or no concept is open.
    #[must_use]
    pub fn next(&self, evening: &Evening) -> Option<QueueEntry> {
        self.ranked(evening).into_iter().next()
    }

    /// Returns the queue now, best first, with at most `most` concepts.
    #[must_use]
    pub fn plan(&self, evening: &Evening, most: usize) -> Vec<QueueEntry> {
        let mut queue = self.ranked(evening);
        queue.truncate(most);
        queue
    }

    fn ranked(&self, evening: &Evening) -> Vec<QueueEntry> {
        let today = evening.today;
        let spent = self.minutes_on(today);
        let done = self.exercises_on(today);
        let over = spent >= evening.minutes || evening.exercises.is_some_and(|of| done >= of);
        let overdone = spent >= evening.most_minutes
            || evening
                .exercises
                .is_some_and(|of| f64::from(done) >= f64::from(of) * MOST_ASSIGNED_EVENINGS);
        let mut queue: Vec<Candidate> = Vec::new();
        for concept in &self.concepts {
            let facts = &concept.facts;
            if !facts.has_exercises {
                continue;
            }
            let turn = match self.assigned(evening, &facts.key) {
                Some(assigned) if !over => Turn::Assigned(assigned.due),
                // After the end, only assigned work that cannot wait still comes.
                Some(assigned) if assigned.owed && !overdone => Turn::Assigned(assigned.due),
                None if !over && facts.open_from.is_some_and(|from| from <= today) => {
                    turn(concept.track.as_ref(), today)
                }
                _ => continue,
            };
            queue.push(Candidate {
                turn,
                value: self.value(concept, evening),
                concept,
            });
        }
        // Concepts met in class today or answered tonight are left out while others are open.
        let best = queue.iter().map(|candidate| candidate.turn).min();
        let least = best.map_or(Turn::Open, |b| b.max(Turn::Open));
        // But two concepts must be left, so that none has to follow itself.
        if queue
            .iter()
            .filter(|candidate| candidate.turn <= least)
            .count()
            > 1
        {
            queue.retain(|candidate| candidate.turn <= least);
        }
        // The sort is stable, so equal candidates stay in the order of the concepts.
        queue.sort_by(|a, b| a.turn.cmp(&b.turn).then(b.value.total_cmp(&a.value)));
        // A concept does not come twice in a row while another one is open.
        if let [first, second, ..] = queue.as_mut_slice()
            && self.tonight.0 == Some(today)
            && Some(&first.concept.facts.key) == self.last_concept.as_ref()
        {
            std::mem::swap(first, second);
        }
        queue
            .into_iter()
            .map(|candidate| {
                let concept = candidate.concept;
                let key = &concept.facts.key;
                let track = concept.track.as_ref();
                QueueEntry {
                    concept: key.clone(),
                    level: level_for(track),
                    reason: match self.assigned(evening, key) {
                        Some(Standing { due, done, of, .. }) => Reason::Assigned { due, done, of },
                        None => self.reason(concept, evening),
                    },
                    minutes: track.and_then(|t| t.minutes).unwrap_or(self.minutes),
                }
            })
            .collect()
    }

    /// Returns the progress of the assignment that asks for this concept now; of several, that
    /// of the earliest due date.
    fn assigned(&self, evening: &Evening, concept: &str) -> Option<Standing> {
        let today = evening.today;
        evening
            .assigned
            .iter()
            .filter(|a| {
                (a.from..=a.due).contains(&today) && a.concepts.iter().any(|c| c == concept)
            })
            .map(|a| {
                let done_from = |from: NaiveDate| {
                    let done = self.answers.iter().filter(|answered| {
                        (from..=a.due).contains(&answered.date) && answered.concept == concept
                    });
                    u32::try_from(done.count()).unwrap_or(u32::MAX)
                };
                let (done, tonight) = (done_from(a.from), done_from(today));
                let left = a.items_each.saturating_sub(done.saturating_sub(tonight));
                let days_left = (a.due - today).num_days() + 1;
                Standing {
                    due: a.due,
                    done,
                    of: a.items_each,
                    owed: tonight < owed_tonight(left, days_left, evening.evenings_a_week),
                }
            })
            .filter(|standing| standing.done < standing.of)
            .min()
    }

    /// Returns the ease that is expected before any answer on a concept: the student's mean,
    /// moved by a part of how the prerequisites differ from it.
    fn prior(&self, concept: &ConceptMemory) -> f64 {
        let spread = self.estimator.tuning().spread;
        let tested: Vec<f64> = self
            .prerequisites(concept)
            .map(|before| &before.belief)
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

    /// Returns how far the prerequisites are known: 0.5 if not at all, 1 if fully.
    fn ready(&self, concept: &ConceptMemory, day: i32) -> f64 {
        let known: Vec<f64> = self
            .prerequisites(concept)
            .map(|before| self.estimator.knows(&before.belief, self.mean_ease, day))
            .collect();
        if known.is_empty() {
            return 1.0;
        }
        #[expect(clippy::cast_precision_loss, reason = "a handful")]
        let mean = known.iter().sum::<f64>() / known.len() as f64;
        0.5 + 0.5 * mean
    }

    /// Returns the expected gain on the date aimed at, in proportion to the minutes it takes.
    fn value(&self, concept: &ConceptMemory, evening: &Evening) -> f64 {
        let empty = Track::default();
        let track = concept.track.as_ref().unwrap_or(&empty);
        let tuning = self.estimator.tuning();
        let today = day_number(evening.today);
        let goal = evening
            .goal
            .map_or(today + USUAL_GOAL_DAYS, day_number)
            .max(today + tuning.least_days);
        let (to_goal, _) = split_at_day(&concept.meetings, goal);
        let (_, meetings) = split_at_day(to_goal, today);
        let prospect = self.estimator.prospect(
            &concept.belief,
            self.prior(concept),
            self.ready(concept, today),
            &Aim {
                today,
                goal,
                meetings,
            },
        );
        #[expect(clippy::cast_precision_loss, reason = "a handful")]
        let dependants = self.dependants(concept).count() as f64;
        let unlocks = 1.0 + tuning.unlocking * dependants.min(3.0) / 3.0;
        let relative_minutes =
            (track.minutes.unwrap_or(self.minutes) / self.minutes).clamp(0.5, 2.0);
        let focus = if evening.focus.contains(&concept.facts.key) {
            FOCUS_PULL
        } else {
            1.0
        };
        let pull = pull_of_rating(track.open_rating().map(|rating| rating.value));
        prospect.gain.max(0.0) * unlocks * pull * focus
            / libm::pow(relative_minutes, tuning.minutes_power)
    }

    fn reason(&self, concept: &ConceptMemory, evening: &Evening) -> Reason {
        let date = |day: i32| NaiveDate::from_num_days_from_ce_opt(day).unwrap_or(evening.today);
        if evening.focus.contains(&concept.facts.key) {
            return Reason::Focus;
        }
        let Some(track) = &concept.track else {
            return Reason::FirstPractice;
        };
        if let Some(rating) = track.open_rating() {
            let on = date(rating.day);
            match rating.value {
                Confidence::NotYet => return Reason::MarkedNotYet { on },
                Confidence::WithHelp => return Reason::MarkedWithHelp { on },
                Confidence::OnMyOwn | Confidence::CouldTeach => {}
            }
        }
        if let Some(answer) = track.last_answer
            && answer.value == AnswerResult::Wrong
        {
            return Reason::WrongLastTime {
                on: date(answer.day),
            };
        }
        if track.home_answers == 0 {
            return Reason::FirstPractice;
        }
        let troubled = |after: &&ConceptMemory| {
            after
                .facts
                .open_from
                .is_some_and(|from| from <= evening.today)
                && after.track.as_ref().is_some_and(|t| {
                    (t.open_rating()).is_some_and(|rating| rating.value.needs_help())
                        || (t.last_answer).is_some_and(|answer| answer.value == AnswerResult::Wrong)
                })
        };
        if let Some(after) = self.dependants(concept).find(troubled) {
            return Reason::Before {
                concept: after.facts.key.clone(),
            };
        }
        let days = track
            .last_evidence_day
            .map_or(0, |last| day_number(evening.today) - last);
        Reason::TimeToSeeAgain {
            days: u32::try_from(days).unwrap_or(0),
        }
    }
}

/// Returns when a concept may come: not on the day on which it was answered in class, and
/// again tonight only after a wrong answer, three times at most. These limits hold only while
/// another concept is open, so that an evening early in the year does not end too soon.
fn turn(track: Option<&Track>, today: NaiveDate) -> Turn {
    let Some(track) = track else {
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
        .is_some_and(|answer| answer.value == AnswerResult::Wrong);
    match tonight {
        0 if track.last_class_day == Some(day) => Turn::SeenToday,
        0 => Turn::Open,
        1..MOST_OF_ONE_CONCEPT if wrong => Turn::Open,
        1..MOST_OF_ONE_CONCEPT => Turn::Again(tonight),
        _ => Turn::Often(tonight),
    }
}

/// Splits rising `days` into those up to `day` and those after it.
fn split_at_day(days: &[i32], day: i32) -> (&[i32], &[i32]) {
    days.split_at(days.partition_point(|d| *d <= day))
}
