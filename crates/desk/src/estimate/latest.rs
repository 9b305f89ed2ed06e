//! What counts of all that was reported, read in one go.

use crate::class::OpenClass;
use crate::error::DeskError;
use chrono::NaiveDate;
use std::collections::{BTreeMap, HashMap, HashSet};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::rotation::Rotation;
use surefoot_store::DeskStore;
use surefoot_store::desk::{CheckInReport, PAPER, PracticeReport};

/// The pass of every date of a year, worked out once.
pub(crate) struct Passes {
    first_day: NaiveDate,
    of_day: Vec<usize>,
}

impl Passes {
    pub(crate) fn of(rotation: &Rotation<String>, year: &SchoolYear) -> Self {
        let mut school_days = 0_usize;
        let of_day = year
            .first_day
            .iter_days()
            .take_while(|day| *day <= year.last_day)
            .map(|day| {
                school_days += usize::from(year.is_school_day(day));
                school_days.saturating_sub(1) / rotation.day_count()
            })
            .collect();
        Self {
            first_day: year.first_day,
            of_day,
        }
    }

    /// As [`Rotation::pass_on`]: before the year the first pass, after it the last.
    pub(crate) fn on(&self, date: NaiveDate) -> usize {
        let day = usize::try_from((date - self.first_day).num_days()).unwrap_or(0);
        let found = self.of_day.get(day).or(self.of_day.last());
        found.copied().unwrap_or(0)
    }
}

/// What counts of a class's reports up to a date.
pub(crate) struct Counted {
    /// The check-in that counts of each (seat, date, concept): by date, seat and concept.
    pub check_ins: Vec<CheckInReport>,
    /// Practice counts by seat, date and concept.
    pub practice: Vec<PracticeReport>,
    /// The newest report of each seat, also on what is no longer in the rotation.
    pub newest: BTreeMap<u32, NaiveDate>,
}

struct Found {
    date: NaiveDate,
    seat: u32,
    concept: usize,
    typed: bool,
    sequence: u64,
    device: usize,
    confidence: Option<Confidence>,
    outcome: Option<Outcome>,
}

/// Texts by number; the same text often comes many times in a row.
#[derive(Default)]
struct Names {
    numbers: HashMap<String, usize>,
    names: Vec<String>,
    last: usize,
}

impl Names {
    fn number(&mut self, name: &str) -> usize {
        if self.names.get(self.last).is_none_or(|last| last != name) {
            self.last = match self.numbers.get(name) {
                Some(number) => *number,
                None => {
                    self.names.push(name.to_owned());
                    self.numbers.insert(name.to_owned(), self.names.len() - 1);
                    self.names.len() - 1
                }
            };
        }
        self.last
    }

    /// The place of each number among the texts in order.
    fn ranks(&self) -> Vec<usize> {
        let mut order: Vec<usize> = (0..self.names.len()).collect();
        order.sort_unstable_by(|a, b| self.names.get(*a).cmp(&self.names.get(*b)));
        let mut ranks = vec![0; order.len()];
        for (rank, number) in order.into_iter().enumerate() {
            if let Some(place) = ranks.get_mut(number) {
                *place = rank;
            }
        }
        ranks
    }

    fn name(&self, number: usize) -> String {
        self.names.get(number).cloned().unwrap_or_default()
    }
}

/// Reads what counts. Of a (seat, date, concept) the latest event counts across
/// devices; paper stands above a device for what was written on it, no more.
pub(crate) fn counted(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<Counted, DeskError> {
    let facts = &class.facts;
    let year = &facts.year;
    let in_rotation: HashSet<&str> = facts.by_strand().into_iter().collect();
    let (mut concepts, mut devices) = (Names::default(), Names::default());
    let mut newest: BTreeMap<u32, NaiveDate> = BTreeMap::new();
    let mut note = |seat: u32, date: NaiveDate| {
        let newest = newest.entry(seat).or_insert(date);
        *newest = date.max(*newest);
    };
    let counts = |date: NaiveDate| date <= today && year.contains(date);

    let mut found: Vec<Found> = Vec::new();
    desk.each_check_in(&class.row.id, |line| {
        if !counts(line.date) {
            return;
        }
        note(line.seat, line.date);
        if in_rotation.contains(line.concept) {
            found.push(Found {
                date: line.date,
                seat: line.seat,
                concept: concepts.number(line.concept),
                typed: line.device == PAPER,
                sequence: line.sequence,
                device: devices.number(line.device),
                confidence: line.confidence,
                outcome: line.outcome,
            });
        }
    })?;
    let mut practice: Vec<PracticeReport> = Vec::new();
    desk.each_practice(&class.row.id, |line| {
        if !counts(line.date) {
            return;
        }
        note(line.seat, line.date);
        if in_rotation.contains(line.concept.as_str()) {
            practice.push(line);
        }
    })?;
    practice.sort_by(|a, b| (a.seat, a.date, &a.concept).cmp(&(b.seat, b.date, &b.concept)));

    let (concept_ranks, device_ranks) = (concepts.ranks(), devices.ranks());
    let rank = |ranks: &[usize], number: usize| ranks.get(number).copied().unwrap_or(0);
    found.sort_unstable_by_key(|one| {
        (
            one.date,
            one.seat,
            rank(&concept_ranks, one.concept),
            one.typed,
            one.sequence,
            rank(&device_ranks, one.device),
        )
    });
    let mut latest: Vec<Found> = Vec::with_capacity(found.len());
    for mut one in found {
        let before = latest.last_mut().filter(|last| {
            (last.date, last.seat, last.concept) == (one.date, one.seat, one.concept)
        });
        match before {
            None => latest.push(one),
            Some(before) => {
                if one.typed {
                    one.confidence = one.confidence.or(before.confidence);
                    one.outcome = one.outcome.or(before.outcome);
                }
                *before = one;
            }
        }
    }
    Ok(Counted {
        check_ins: latest
            .into_iter()
            .map(|one| CheckInReport {
                seat: one.seat,
                device: devices.name(one.device),
                date: one.date,
                concept: concepts.name(one.concept),
                sequence: one.sequence,
                confidence: one.confidence,
                outcome: one.outcome,
            })
            .collect(),
        practice,
        newest,
    })
}
