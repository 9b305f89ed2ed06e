//! Everything known of one student, rebuilt from the events at any time.

use super::estimate::{Belief, Estimator, Tuning};
use super::event::{ConceptFacts, Event, EventKind};
use super::evidence::{Latest, Track, credit_of_answer};
use super::workload::{self, Answered, EveningLength, USUAL_MINUTES};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::rating::{AnswerResult, Outcome};
use surefoot_exercises::Level;

/// Everything known of a student on one concept.
pub(super) struct ConceptMemory {
    pub facts: ConceptFacts,
    /// Places of the concepts that it builds on.
    prerequisites: Vec<usize>,
    /// Places of the concepts that build on it.
    dependants: Vec<usize>,
    /// Day numbers of the class's meetings with it, rising.
    pub meetings: Vec<i32>,
    pub track: Option<Track>,
    pub belief: Belief,
}

/// Everything known of a student, brought up to date event by event.
pub struct StudentMemory {
    pub(super) estimator: Estimator,
    pub(super) concepts: Vec<ConceptMemory>,
    /// The place of each concept in `concepts`, by its key.
    places: BTreeMap<String, usize>,
    pub(super) mean_ease: f64,
    pub(super) answers: Vec<Answered>,
    pub(super) minutes: f64,
    pub(super) tonight: (Option<NaiveDate>, f64),
    pub(super) last_concept: Option<String>,
}

pub(super) fn day_number(date: NaiveDate) -> i32 {
    chrono::Datelike::num_days_from_ce(&date)
}

impl StudentMemory {
    /// Returns the memory of a student of whom nothing is known yet.
    #[must_use]
    pub fn new(facts: impl IntoIterator<Item = ConceptFacts>) -> Self {
        Self::tuned(facts, Tuning::USED)
    }

    /// [`StudentMemory::new`] with another tuning of the estimate.
    #[must_use]
    pub fn tuned(facts: impl IntoIterator<Item = ConceptFacts>, tuning: Tuning) -> Self {
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
        let mut dependants: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
        for (place, before) in prerequisites.iter().enumerate() {
            for p in before {
                dependants.entry(*p).or_default().push(place);
            }
        }
        let concepts = facts
            .into_iter()
            .zip(prerequisites)
            .enumerate()
            .map(|(place, (facts, prerequisites))| {
                let mut belief = Belief::default();
                if let Some(open) = facts.open_from {
                    estimator.taught(&mut belief, day_number(open));
                }
                ConceptMemory {
                    prerequisites,
                    dependants: dependants.remove(&place).unwrap_or_default(),
                    meetings: facts.meetings.iter().copied().map(day_number).collect(),
                    track: None,
                    belief,
                    facts,
                }
            })
            .collect();
        Self {
            estimator,
            concepts,
            places,
            mean_ease: 0.0,
            answers: Vec::new(),
            minutes: USUAL_MINUTES,
            tonight: (None, 0.0),
            last_concept: None,
        }
    }

    /// Returns the concept with this key.
    pub(super) fn concept(&self, key: &str) -> Option<&ConceptMemory> {
        self.concepts.get(*self.places.get(key)?)
    }

    /// Returns the concepts that a concept builds on.
    pub(super) fn prerequisites(
        &self,
        concept: &ConceptMemory,
    ) -> impl Iterator<Item = &ConceptMemory> {
        concept
            .prerequisites
            .iter()
            .filter_map(|place| self.concepts.get(*place))
    }

    /// Returns the concepts that build on a concept.
    pub(super) fn dependants(
        &self,
        concept: &ConceptMemory,
    ) -> impl Iterator<Item = &ConceptMemory> {
        concept
            .dependants
            .iter()
            .filter_map(|place| self.concepts.get(*place))
    }

    /// Returns what is known of one concept.
    #[must_use]
    pub fn track(&self, concept: &str) -> Option<&Track> {
        self.concept(concept)?.track.as_ref()
    }

    /// Returns the level that an exercise of this concept would have now.
    #[must_use]
    pub fn level_for(&self, concept: &str) -> Level {
        level_for(self.track(concept))
    }

    /// Returns the minutes practised on `today`.
    #[must_use]
    pub fn minutes_on(&self, today: NaiveDate) -> f64 {
        if self.tonight.0 == Some(today) {
            self.tonight.1
        } else {
            0.0
        }
    }

    /// Returns the minutes for `today`: `planned` less the overrun of the evening before.
    #[must_use]
    pub fn minutes_tonight(&self, planned: f64, today: NaiveDate) -> f64 {
        workload::minutes_tonight(planned, &self.answers, today)
    }

    /// Returns how many evenings were practised in the week of `today`, before it.
    #[must_use]
    pub fn evenings_before(&self, length: EveningLength, today: NaiveDate) -> u32 {
        workload::evenings_before(length, &self.answers, today)
    }

    /// Returns the number of exercises finished on `today`.
    #[must_use]
    pub fn exercises_on(&self, today: NaiveDate) -> u32 {
        let tonight = self.answers.iter().filter(|a| a.date == today);
        u32::try_from(tonight.count()).unwrap_or(u32::MAX)
    }

    /// Adds an event.
    pub fn apply(&mut self, event: &Event) {
        let day = day_number(event.date);
        let place = self.places.get(&event.concept);
        let Some(concept) = place.and_then(|place| self.concepts.get_mut(*place)) else {
            // The class no longer has this concept, so there is nothing to plan.
            return;
        };
        let track = concept.track.get_or_insert_default();
        let belief = &mut concept.belief;
        match event.kind {
            EventKind::CheckIn {
                confidence,
                outcome,
                preview,
            } => {
                if preview {
                    return;
                }
                if let Some(confidence) = confidence {
                    Latest {
                        sequence: event.sequence,
                        day,
                        value: confidence,
                    }
                    .replace(&mut track.rating);
                }
                let right = outcome.and_then(Outcome::is_right);
                if confidence.is_some() || outcome.is_some() {
                    self.estimator.class_meeting(belief, day, right);
                }
                if let Some(right) = right {
                    track.last_class_day = Some(day);
                    track.last_evidence_day = track.last_evidence_day.max(Some(day));
                    track.answers += 1.0;
                    track.credits += f64::from(u8::from(right));
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
                Latest {
                    sequence: event.sequence,
                    day,
                    value: result,
                }
                .replace(&mut track.last_answer);
                track.last_evidence_day = track.last_evidence_day.max(Some(day));
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
                self.answers.push(Answered {
                    date: event.date,
                    concept: event.concept.clone(),
                    minutes,
                });
            }
        }
        self.mean_ease = self.estimator.student_mean(
            self.concepts.iter().map(|concept| &concept.belief),
            self.mean_ease,
        );
    }
}

/// Returns the level of the next exercise: entry below half right, and stretch after three
/// right alone in a row with three quarters right.
pub(super) fn level_for(track: Option<&Track>) -> Level {
    match track {
        None => Level::Entry,
        Some(track) if track.home_answers == 0 && track.share_right() < 0.6 => Level::Entry,
        Some(track) if track.share_right() < 0.5 => Level::Entry,
        Some(track) if track.alone_in_a_row >= 3 && track.share_right() >= 0.75 => Level::Stretch,
        Some(_) => Level::Expected,
    }
}
