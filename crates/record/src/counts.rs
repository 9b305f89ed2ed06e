//! The one rule of what counts of a student's record across devices, paper and dates.
//!
//! 1. Entries dated outside the school year or after today do not count.
//! 2. For each concept and school date, the latest rating and the latest outcome count,
//!    each by itself. The latest has the highest sequence; at equal sequences, the
//!    greater value counts.
//! 3. Paper overrides devices, for the fields that are filled in.
//! 4. What counts on different dates is ordered by sequence and not by date, so that an
//!    entry with a wrong date never outranks a later one. Paper has no sequence: it
//!    follows everything that the devices have up to its date.

use crate::entry::{CheckIn, Said};
use chrono::NaiveDate;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// The dates that count: those of the school year up to today.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CountedDates {
    first: NaiveDate,
    last: NaiveDate,
}

impl CountedDates {
    /// The dates of a school year up to `today`.
    #[must_use]
    pub fn of(year: &SchoolYear, today: NaiveDate) -> Self {
        Self {
            first: year.first_day,
            last: year.last_day.min(today),
        }
    }

    /// The same dates, and those up to `until` after the school year. `today` stays the limit.
    #[must_use]
    pub fn and_until(self, until: NaiveDate, today: NaiveDate) -> Self {
        Self {
            last: self.last.max(until.min(today)),
            ..self
        }
    }

    /// The dates whose practice counts for an evening: all up to `today`. Practice goes on
    /// outside the school year, and what was practised ends an evening there too.
    #[must_use]
    pub fn of_evenings(today: NaiveDate) -> Self {
        Self {
            first: NaiveDate::MIN,
            last: today,
        }
    }

    /// The first date that counts.
    #[must_use]
    pub fn first(&self) -> NaiveDate {
        self.first
    }

    /// The last date that counts.
    #[must_use]
    pub fn last(&self) -> NaiveDate {
        self.last
    }

    /// Whether a date counts.
    #[must_use]
    pub fn contains(&self, date: NaiveDate) -> bool {
        self.first <= date && date <= self.last
    }
}

/// What counts of one student's check-ins of one concept on one school date.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Counted<C, S = ()> {
    /// The seat, at the desk; `()` on a student's device.
    pub seat: S,
    /// The school date.
    pub date: NaiveDate,
    /// The concept.
    pub concept: C,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// The outcome.
    pub outcome: Option<Outcome>,
    /// The sequence of the rating on a device or else of the outcome; 0 from paper alone.
    pub sequence: u32,
}

/// Collects one student's check-ins and returns what counts of them.
#[derive(Debug)]
pub struct Counting<C, S = ()> {
    seat: S,
    dates: CountedDates,
    entries: Vec<Entry<C>>,
}

#[derive(Debug)]
struct Entry<C> {
    concept: C,
    date: NaiveDate,
    said: CheckInSource,
}

/// A rating and an outcome, by where they come from.
#[derive(Debug, Clone, Copy)]
pub enum CheckInSource {
    /// From a student's device.
    Device(Option<Said<Confidence>>, Option<Said<Outcome>>),
    /// Typed from paper by the teacher.
    Paper(Option<Confidence>, Option<Outcome>),
}

impl<C: Ord, S: Copy> Counting<C, S> {
    /// Begins without check-ins.
    #[must_use]
    pub fn new(seat: S, dates: CountedDates) -> Self {
        Self {
            seat,
            dates,
            entries: Vec::new(),
        }
    }

    /// Adds a check-in. One whose date does not count is left out.
    pub fn add(&mut self, concept: C, date: NaiveDate, said: CheckInSource) {
        if self.dates.contains(date) {
            self.entries.push(Entry {
                concept,
                date,
                said,
            });
        }
    }

    /// Returns what counts, in the order of sequences.
    #[must_use]
    pub fn finish(mut self) -> Vec<Counted<C, S>> {
        self.entries
            .sort_by(|a, b| (a.date, &a.concept).cmp(&(b.date, &b.concept)));
        let mut days: Vec<Day<C>> = Vec::with_capacity(self.entries.len());
        for entry in self.entries {
            match days
                .last_mut()
                .filter(|day| day.date == entry.date && day.concept == entry.concept)
            {
                Some(day) => day.add(entry.said),
                None => {
                    let mut day = Day {
                        date: entry.date,
                        concept: entry.concept,
                        confidence: None,
                        outcome: None,
                        paper_confidence: None,
                        paper_outcome: None,
                    };
                    day.add(entry.said);
                    days.push(day);
                }
            }
        }
        // Goes by date, because paper follows what the devices have up to its date.
        let mut newest = 0;
        let mut counted: Vec<((u32, bool), Counted<C, S>)> = Vec::with_capacity(days.len());
        let mut dates = days.into_iter().peekable();
        let mut same_date: Vec<Day<C>> = Vec::new();
        while let Some(day) = dates.next() {
            let date = day.date;
            newest = day.newest().max(newest);
            same_date.push(day);
            if dates.peek().is_none_or(|next| next.date != date) {
                counted.extend(
                    same_date
                        .drain(..)
                        .filter_map(|day| day.counted(self.seat, newest)),
                );
            }
        }
        counted.sort_by_key(|(place, counted)| (*place, counted.date));
        counted.into_iter().map(|(_, counted)| counted).collect()
    }
}

/// One concept on one date, from all sources.
struct Day<C> {
    date: NaiveDate,
    concept: C,
    confidence: Option<Said<Confidence>>,
    outcome: Option<Said<Outcome>>,
    paper_confidence: Option<Confidence>,
    paper_outcome: Option<Outcome>,
}

impl<C> Day<C> {
    fn add(&mut self, said: CheckInSource) {
        match said {
            CheckInSource::Device(confidence, outcome) => {
                self.confidence = self.confidence.max(confidence);
                self.outcome = self.outcome.max(outcome);
            }
            CheckInSource::Paper(confidence, outcome) => {
                self.paper_confidence = confidence.or(self.paper_confidence);
                self.paper_outcome = outcome.or(self.paper_outcome);
            }
        }
    }

    fn newest(&self) -> u32 {
        let rated = self.confidence.map_or(0, |said| said.at);
        rated.max(self.outcome.map_or(0, |said| said.at))
    }

    /// Returns what counts, with its place in the order: a sequence of the devices, and
    /// whether it is paper that follows that sequence. Returns `None` if the student took
    /// everything back. `newest` is the highest sequence up to this date.
    fn counted<S>(self, seat: S, newest: u32) -> Option<((u32, bool), Counted<C, S>)> {
        let rated = self.confidence.and_then(|said| said.value.map(|_| said.at));
        let marked = self.outcome.and_then(|said| said.value.map(|_| said.at));
        let from_paper = match (self.paper_confidence, rated) {
            (Some(_), _) => true,
            (None, Some(_)) => false,
            (None, None) => self.paper_outcome.is_some(),
        };
        let sequence = rated.or(marked).unwrap_or(0);
        let place = if from_paper {
            (newest, true)
        } else {
            (sequence, false)
        };
        let counted = Counted {
            seat,
            date: self.date,
            concept: self.concept,
            confidence: self
                .paper_confidence
                .or(self.confidence.and_then(|said| said.value)),
            outcome: self
                .paper_outcome
                .or(self.outcome.and_then(|said| said.value)),
            sequence,
        };
        let says_something = counted.confidence.is_some() || counted.outcome.is_some();
        says_something.then_some((place, counted))
    }
}

/// Returns what counts of one student's check-ins on devices, in the order of sequences.
#[must_use]
pub fn what_counts(check_ins: &[CheckIn], dates: CountedDates) -> Vec<Counted<&ConceptId>> {
    let mut counting = Counting::new((), dates);
    for entry in check_ins {
        let said = CheckInSource::Device(entry.confidence, entry.outcome);
        counting.add(&entry.concept, entry.date, said);
    }
    counting.finish()
}
