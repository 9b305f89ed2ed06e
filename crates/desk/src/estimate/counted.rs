//! Reads what counts of the reports of a class.

use crate::class::OpenClass;
use crate::error::DeskError;
use chrono::NaiveDate;
use std::collections::{BTreeMap, HashMap, HashSet};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rotation::Rotation;
use surefoot_record::Counting;
use surefoot_store::DeskStore;
use surefoot_store::desk::PracticeReport;

/// The pass of every date of a year, computed once.
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

    /// The same as [`Rotation::pass_on`]: before the year the first pass, after it the last.
    pub(crate) fn on(&self, date: NaiveDate) -> usize {
        let day = usize::try_from((date - self.first_day).num_days()).unwrap_or(0);
        let found = self.of_day.get(day).or(self.of_day.last());
        found.copied().unwrap_or(0)
    }
}

/// A check-in that counts, with its seat.
pub(crate) type SeatCheckIn = surefoot_record::Counted<String, u32>;

/// What counts of a class's reports up to a date.
pub(crate) struct Counted {
    /// What counts of each (seat, date, concept): seat by seat, each in its student's
    /// order of events, oldest first.
    pub check_ins: Vec<SeatCheckIn>,
    /// Practice counts by seat, date and concept.
    pub practice: Vec<PracticeReport>,
    /// The newest report of each seat, also on concepts that left the rotation.
    pub newest: BTreeMap<u32, NaiveDate>,
}

/// Numbers for texts. The last one is kept, because the same text often repeats.
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

    fn name(&self, number: usize) -> String {
        self.names.get(number).cloned().unwrap_or_default()
    }
}

/// Reads what counts, by the rule of [`surefoot_record::counts`].
pub(crate) fn counted(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<Counted, DeskError> {
    let facts = &class.facts;
    let dates = class.counted_dates(today);
    let in_rotation: HashSet<&str> = facts.by_strand().into_iter().collect();
    let mut concepts = Names::default();
    let mut newest: BTreeMap<u32, NaiveDate> = BTreeMap::new();
    let mut note = |seat: u32, date: NaiveDate| {
        let newest = newest.entry(seat).or_insert(date);
        *newest = date.max(*newest);
    };
    let mut seats: BTreeMap<u32, Counting<usize, u32>> = BTreeMap::new();
    desk.each_check_in(&class.row.id, None, |row, said| {
        if !dates.contains(row.date) {
            return;
        }
        note(row.seat, row.date);
        if !in_rotation.contains(row.concept) {
            return;
        }
        let concept = concepts.number(row.concept);
        seats
            .entry(row.seat)
            .or_insert_with(|| Counting::new(row.seat, dates))
            .add(concept, row.date, said);
    })?;
    let mut practice: Vec<PracticeReport> = Vec::new();
    desk.each_practice(&class.row.id, |line| {
        if !dates.contains(line.date) {
            return;
        }
        note(line.seat, line.date);
        if in_rotation.contains(line.concept.as_str()) {
            practice.push(line);
        }
    })?;
    practice.sort_by(|a, b| (a.seat, a.date, &a.concept).cmp(&(b.seat, b.date, &b.concept)));
    let check_ins = seats
        .into_values()
        .flat_map(Counting::finish)
        .map(|counted| SeatCheckIn {
            seat: counted.seat,
            date: counted.date,
            concept: concepts.name(counted.concept),
            confidence: counted.confidence,
            outcome: counted.outcome,
            sequence: counted.sequence,
        })
        .collect();
    Ok(Counted {
        check_ins,
        practice,
        newest,
    })
}
