//! A record read across devices: what a student said and did, by concept and date.

use crate::MistakeCode;
use crate::union::{CheckInState, Key, PracticeState, Record};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// A value and when it was given, as a place in the order of events.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Said<T> {
    /// See [`crate::CheckIn::sequence`].
    pub sequence: u32,
    /// The value.
    pub value: T,
}

/// One concept on one school date, over all devices.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct DayOfConcept {
    /// The rating given last.
    pub confidence: Option<Said<Confidence>>,
    /// The outcome marked last.
    pub outcome: Option<Said<Outcome>>,
    /// Answers by how sure the student said to be: alone, with help, wrong.
    pub answers: BTreeMap<Option<Confidence>, [u32; 3]>,
    /// Recognised mistakes.
    pub mistakes: BTreeMap<MistakeCode, u32>,
}

/// A record across devices, as far as it counts today.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct View {
    /// What counts, by concept and date.
    pub days: BTreeMap<(ConceptId, NaiveDate), DayOfConcept>,
    /// Entries dated after today: they count once their date has come.
    pub waiting: Vec<Key>,
    /// Entries dated outside the school year: they do not count.
    pub outside: Vec<Key>,
}

/// Keeps the value said last; of two at once (two devices that had not seen
/// each other) the lower, which asks for more help.
fn keep_last<T: Copy + Ord>(held: &mut Option<Said<T>>, sequence: u32, value: Option<T>) {
    let Some(value) = value else { return };
    let replaces = held.is_none_or(|held| {
        sequence > held.sequence || (sequence == held.sequence && value < held.value)
    });
    if replaces {
        *held = Some(Said { sequence, value });
    }
}

impl DayOfConcept {
    fn add_check_in(&mut self, state: &CheckInState) {
        keep_last(&mut self.confidence, state.sequence, state.confidence);
        keep_last(&mut self.outcome, state.sequence, state.outcome);
    }

    fn add_practice(&mut self, state: &PracticeState) {
        for count in &state.answers {
            let sum = self.answers.entry(count.sure).or_default();
            for (sum, more) in sum
                .iter_mut()
                .zip([count.alone, count.with_help, count.wrong])
            {
                *sum = sum.saturating_add(more);
            }
        }
        for (code, &count) in &state.mistakes {
            let sum = self.mistakes.entry(code.clone()).or_default();
            *sum = sum.saturating_add(count);
        }
    }
}

impl View {
    /// The rating given last on a concept, with the date it stands under.
    ///
    /// "Last" goes by the order of events, not by date: an entry that a wrong
    /// clock dated ahead is outranked by every rating given after it, also when
    /// its date has come.
    #[must_use]
    pub fn last_confidence(&self, concept: &ConceptId) -> Option<(NaiveDate, Confidence)> {
        let first = (concept.clone(), NaiveDate::MIN);
        let last = (concept.clone(), NaiveDate::MAX);
        self.days
            .range(first..=last)
            .filter_map(|((_, date), day)| {
                day.confidence
                    .map(|said| (said.sequence, *date, said.value))
            })
            .max_by_key(|&(sequence, date, _)| (sequence, date))
            .map(|(_, date, value)| (date, value))
    }
}

impl Record {
    /// The record across devices: of a date and concept the rating and the
    /// outcome given last, and the practice of all devices added up.
    #[must_use]
    pub fn view(&self, first_day: NaiveDate, last_day: NaiveDate, today: NaiveDate) -> View {
        let mut view = View::default();
        for (key, state) in &self.check_ins {
            if let Some(day) = view.day_for(key, first_day, last_day, today) {
                day.add_check_in(state);
            }
        }
        for (key, state) in &self.practice {
            if let Some(day) = view.day_for(key, first_day, last_day, today) {
                day.add_practice(state);
            }
        }
        view
    }
}

impl View {
    fn day_for(
        &mut self,
        key: &Key,
        first_day: NaiveDate,
        last_day: NaiveDate,
        today: NaiveDate,
    ) -> Option<&mut DayOfConcept> {
        if key.date < first_day || key.date > last_day {
            self.outside.push(key.clone());
            return None;
        }
        if key.date > today {
            self.waiting.push(key.clone());
            return None;
        }
        Some(
            self.days
                .entry((key.concept.clone(), key.date))
                .or_default(),
        )
    }
}
