//! Tonight's queue: what to practise next, and why.

use super::Reason;
use super::estimate::Aim;
use super::event::{Evening, QueueEntry};
use super::evidence::{Track, pull_of_rating};
use super::memory::MemoryError;
use super::student_memory::{StudentMemory, day_number, level_for};
use super::workload::{MOST_ASSIGNED_EVENINGS, owed_tonight};
use chrono::NaiveDate;
use surefoot_catalogue::rating::{AnswerResult, Confidence};

/// Days ahead that are aimed at when no date is named.
const USUAL_GOAL_DAYS: i32 = 60;

/// Exercises of one concept an evening at most, outside assignments.
const MOST_OF_ONE_CONCEPT: u32 = 3;

/// How much a focus concept is preferred: enough to come up, not to fill the evening.
const FOCUS_PULL: f64 = 1.5;

/// In what turn a concept comes: the lower first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Turn {
    /// Assigned by the teacher, the earlier due first.
    Assigned(NaiveDate),
    /// Open tonight.
    Open,
    /// Met in class today.
    SeenToday,
    /// Answered tonight already, so often.
    Again(u32),
    /// Answered as often as a concept may come while others are open.
    Often(u32),
}

/// Where an assignment of one concept stands tonight.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Standing {
    due: NaiveDate,
    done: u32,
    of: u32,
    /// Whether more of it must be done tonight, so that all is done in time.
    owed: bool,
}

impl StudentMemory {
    /// What comes next tonight; nothing when the evening is over or nothing is open.
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
        let spent = self.minutes_on(today);
        let done = self.exercises_on(today);
        let over = spent >= evening.minutes || evening.exercises.is_some_and(|of| done >= of);
        let overdone = spent >= evening.most_minutes
            || evening
                .exercises
                .is_some_and(|of| f64::from(done) >= f64::from(of) * MOST_ASSIGNED_EVENINGS);
        let mut queue: Vec<(Turn, f64, usize)> = Vec::new();
        for (place, facts) in self.facts.iter().enumerate() {
            if !facts.has_exercises {
                continue;
            }
            let turn = match self.assigned(evening, &facts.key) {
                Some(assigned) if !over => Turn::Assigned(assigned.due),
                // Past the end only what must be done tonight to be done in time.
                Some(assigned) if assigned.owed && !overdone => Turn::Assigned(assigned.due),
                None if !over && facts.open_from.is_some_and(|from| from <= today) => {
                    self.turn(place, today)
                }
                _ => continue,
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
                        Some(Standing { due, done, of, .. }) => Reason::Assigned { due, done, of },
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

    /// The assignment that asks for this concept now; of several, the earliest due.
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
        let troubled = |place: &usize| {
            self.facts[*place]
                .open_from
                .is_some_and(|from| from <= evening.today)
                && self.tracks[*place].as_ref().is_some_and(|t| {
                    t.rating.is_some_and(|(_, rating)| rating.needs_help())
                        || t.last_answer
                            .is_some_and(|(_, result)| result == AnswerResult::Wrong)
                })
        };
        if let Some(after) = self.places.get(key).and_then(|place| {
            self.dependants[*place]
                .iter()
                .copied()
                .find(|p| troubled(p))
        }) {
            return Reason::Before {
                concept: self.facts[after].key.clone(),
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
