//! Whether what was taught again helped.
//!
//! Everything reported up to the day of teaching foretells the results that come after it. A check-in
//! of that day comes before: the review opens the lesson. Practice of that day comes after; what is
//! practised afterwards is shown beside the verdict and is no part of it. Neither is what the teacher
//! recorded of the group itself: nobody recorded the same of the others. Of a student who was taught
//! the concept once more, what comes after that belongs to the later entry.

use super::views::{
    HelpNumbers, HelpSays, HelpView, TaughtAgainEntry, TaughtAgainLog, TaughtMember,
};
use crate::class::OpenClass;
use crate::error::DeskError;
use crate::estimate::{CountedReports, GroupMember, Taken};
use chrono::{Days, NaiveDate};
use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;
use surefoot_insight::class_estimate::{ClassEstimate, class_estimate};
use surefoot_insight::taught_again::{
    Effect, HelpVerdict, NoEffect, TaughtAgain, taught_again as compare,
};
use surefoot_store::DeskStore;
use surefoot_store::desk::TaughtAgainRow;

/// A verdict is made after each of so many passes, and then stays.
const MOST_PASSES: usize = 3;

/// For so many passes after its last day a verdict is news.
const NEWS_PASSES: usize = 2;

/// Verdicts that are made at most to find the news, because each takes a class estimate.
const MOST_FOR_NEWS: usize = 6;

/// What was taught again in a class, latest first, each entry with its verdict. A day on which
/// something was taught again takes one class estimate.
pub fn taught_again(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<TaughtAgainLog, DeskError> {
    let facts = &class.facts;
    let rows = shown_rows(desk, class, today)?;
    let (reports, _) = CountedReports::read(desk, class, today)?;
    let mut compared = Compared::new(class, &reports, &rows, today);
    let mut entries = Vec::new();
    for row in &rows {
        let help = compared.help(row)?;
        entries.push(compared.entry(row, help, language));
    }
    entries.reverse();
    Ok(TaughtAgainLog {
        today,
        first_day: facts.year.first_day,
        school_day: facts.year.latest_school_day(today),
        concepts: (facts.by_strand().into_iter())
            .filter(|concept| facts.phase(concept, today) != Phase::Preview)
            .map(|concept| facts.name(concept, language))
            .collect(),
        seats: (class.seats.iter())
            .map(|seat| GroupMember {
                seat: seat.number,
                name: seat.name.clone(),
                has_it: None,
            })
            .collect(),
        entries,
    })
}

/// The entry whose verdict is news: the newest of the last two passes that says whether it helped
/// or, if there is none, the newest that cannot tell yet. It is the entry of [`taught_again`].
pub(crate) fn newest_verdict(
    desk: &DeskStore,
    class: &OpenClass,
    reports: &CountedReports,
    language: Language,
    today: NaiveDate,
) -> Result<Option<TaughtAgainEntry>, DeskError> {
    let rows = shown_rows(desk, class, today)?;
    let mut compared = Compared::new(class, reports, &rows, today);
    let news: Vec<&TaughtAgainRow> = (rows.iter().rev())
        .filter(|row| compared.is_news(row))
        .take(MOST_FOR_NEWS)
        .collect();
    let mut cannot_tell = None;
    for row in news {
        let help = compared.help(row)?;
        match help.says {
            HelpSays::RoseMore | HelpSays::LikelyRoseMore | HelpSays::NoSign => {
                return Ok(Some(compared.entry(row, help, language)));
            }
            HelpSays::CannotTell if cannot_tell.is_none() => {
                cannot_tell = Some(compared.entry(row, help, language));
            }
            HelpSays::CannotTell
            | HelpSays::TooSoon
            | HelpSays::NoAnswers
            | HelpSays::FewOthers
            | HelpSays::TaughtOnceMore => {}
        }
    }
    Ok(cannot_tell)
}

/// What was taught again up to a date, earliest first.
fn shown_rows(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<Vec<TaughtAgainRow>, DeskError> {
    let known = &class.facts.concepts;
    let mut rows = desk.taught_again(&class.row.id)?;
    rows.retain(|row| {
        row.date <= today && known.contains_key(&row.concept) && !row.seats.is_empty()
    });
    Ok(rows)
}

struct Compared<'c> {
    class: &'c OpenClass,
    reports: &'c CountedReports,
    rows: &'c [TaughtAgainRow],
    today: NaiveDate,
    /// The estimate of each day of teaching.
    before: BTreeMap<NaiveDate, ClassEstimate>,
}

impl<'c> Compared<'c> {
    fn new(
        class: &'c OpenClass,
        reports: &'c CountedReports,
        rows: &'c [TaughtAgainRow],
        today: NaiveDate,
    ) -> Self {
        Self {
            class,
            reports,
            rows,
            today,
            before: BTreeMap::new(),
        }
    }

    fn entry(&self, row: &TaughtAgainRow, help: HelpView, language: Language) -> TaughtAgainEntry {
        let recorded = |seat: u32| {
            let of = self.reports.observations.iter();
            of.filter(|seen| seen.confidence.is_none() && seen.date == row.date)
                .find(|seen| seen.seat == seat && seen.concept == row.concept)
                .map(|seen| seen.has_it)
        };
        TaughtAgainEntry {
            id: row.id,
            date: row.date,
            concept: self.class.facts.name(&row.concept, language),
            came_from: row.came_from.into(),
            whole_class: row.whole_class,
            members: (self.class.seats.iter())
                .filter(|seat| row.seats.contains(&seat.number))
                .map(|seat| TaughtMember {
                    seat: seat.number,
                    name: seat.name.clone(),
                    recorded: recorded(seat.number),
                })
                .collect(),
            note: row.note.clone(),
            help,
        }
    }

    /// The last day of a number of passes after a date; none after the end of the year.
    fn end_of_pass(&self, from: NaiveDate, passes: usize) -> Option<NaiveDate> {
        let days = passes * self.class.facts.rotation.day_count();
        let mut after = self
            .class
            .facts
            .year
            .school_days()
            .filter(|day| *day > from);
        days.checked_sub(1).and_then(|nth| after.nth(nth))
    }

    /// The seats that were taught the concept once more, each with the first date of that.
    fn once_more(&self, row: &TaughtAgainRow) -> BTreeMap<u32, NaiveDate> {
        let mut found = BTreeMap::new();
        let later = self.rows.iter();
        for other in later.filter(|other| other.concept == row.concept && other.date > row.date) {
            for seat in other.seats.iter().filter(|seat| row.seats.contains(seat)) {
                let first = found.entry(*seat).or_insert(other.date);
                *first = other.date.min(*first);
            }
        }
        found
    }

    /// The date from which nobody is left who was not taught once more.
    fn last_day(&self, row: &TaughtAgainRow) -> Option<NaiveDate> {
        let once_more = self.once_more(row);
        let everybody = row.seats.iter().all(|seat| once_more.contains_key(seat));
        once_more.into_values().max().filter(|_| everybody)
    }

    /// The passes after which the last verdict was made, and its last day; none before the first.
    fn passes_over(&self, row: &TaughtAgainRow) -> Option<(usize, NaiveDate)> {
        let last = (self.last_day(row)).map_or(self.today, |date| date.min(self.today));
        // A pass is over when its last day is, whose check-ins may still come in.
        (1..=MOST_PASSES).rev().find_map(|passes| {
            let end = self.end_of_pass(row.date, passes)?;
            (end < last).then_some((passes, end))
        })
    }

    fn is_news(&self, row: &TaughtAgainRow) -> bool {
        let facts = &self.class.facts;
        let days = NEWS_PASSES * facts.rotation.day_count();
        self.passes_over(row).is_some_and(|(_, until)| {
            facts.year.school_days_before(self.today) <= facts.year.school_days_before(until) + days
        })
    }

    fn help(&mut self, row: &TaughtAgainRow) -> Result<HelpView, DeskError> {
        let is_last = self.last_day(row).is_some();
        let over = self.passes_over(row);
        let passes = over.map_or(0, |(passes, _)| passes);
        let mut view = HelpView {
            says: if is_last {
                HelpSays::TaughtOnceMore
            } else {
                HelpSays::TooSoon
            },
            next_on: (!is_last && passes < MOST_PASSES)
                .then(|| self.verdict_day(row.date, passes + 1))
                .flatten(),
            until: over.map(|(_, until)| until),
            passes,
            once_more: self.once_more(row).len(),
            numbers: None,
        };
        let Some((_, until)) = over else {
            return Ok(view);
        };
        view.says = match self.effect(row, until)? {
            Ok(effect) => {
                view.numbers = Some(self.numbers(row, until, &effect));
                match effect.verdict {
                    HelpVerdict::RoseMore => HelpSays::RoseMore,
                    HelpVerdict::LikelyRoseMore => HelpSays::LikelyRoseMore,
                    HelpVerdict::CannotTell => HelpSays::CannotTell,
                    HelpVerdict::NoSign => HelpSays::NoSign,
                }
            }
            Err(NoEffect::NoAnswers) => HelpSays::NoAnswers,
            Err(NoEffect::FewOthers) => HelpSays::FewOthers,
        };
        Ok(view)
    }

    /// The numbers in whole results. The range is rounded outwards, so that it holds what is shown
    /// as more than expected, and ends where no more can be right or wrong.
    fn numbers(&self, row: &TaughtAgainRow, until: NaiveDate, effect: &Effect) -> HelpNumbers {
        let most = i64::from(effect.answers);
        let whole = |value: f64| within(value.round(), 0, most);
        let expected = whole(effect.expected);
        let practised = (self.reports.practice.iter())
            .filter(|line| line.concept == row.concept && row.seats.contains(&line.seat))
            .filter(|line| row.date <= line.date && line.date <= until)
            .map(|line| {
                let answers = line.alone.saturating_add(line.with_help);
                answers.saturating_add(line.wrong)
            });
        HelpNumbers {
            answers: effect.answers,
            right: effect.right,
            foretold: whole(effect.foretold),
            expected,
            more_low: within(effect.more_low.floor(), -expected, most - expected),
            more_high: within(effect.more_high.ceil(), -expected, most - expected),
            practised: practised.fold(0, u32::saturating_add),
            concepts: effect.concepts,
        }
    }

    /// The school day after a number of passes.
    fn verdict_day(&self, from: NaiveDate, passes: usize) -> Option<NaiveDate> {
        let end = self.end_of_pass(from, passes)?;
        Some(
            self.class
                .facts
                .year
                .next_school_day(end)
                .unwrap_or(end + Days::new(1)),
        )
    }

    fn effect(
        &mut self,
        row: &TaughtAgainRow,
        until: NaiveDate,
    ) -> Result<Result<Effect, NoEffect>, DeskError> {
        let facts = &self.class.facts;
        let reports = self.reports;
        let index = |seat: &u32| reports.seats.iter().position(|of| of == seat);
        let at = |concept: &str| reports.concepts.iter().position(|of| of == concept);
        let Some(concept) = at(&row.concept) else {
            return Ok(Err(NoEffect::NoAnswers));
        };
        if let Entry::Vacant(place) = self.before.entry(row.date) {
            let pass = reports.passes.on(row.date);
            let day_before = row.date.pred_opt().unwrap_or(row.date);
            let to = |date: NaiveDate| (NaiveDate::MIN, date);
            let evidence = reports.evidence(
                pass,
                &Taken {
                    check_ins: to(row.date),
                    practice: to(day_before),
                    observations: to(day_before),
                    group_records: true,
                    ends: None,
                },
            )?;
            place.insert(class_estimate(&evidence, pass));
        }
        let Some(before) = self.before.get(&row.date) else {
            return Ok(Err(NoEffect::NoAnswers));
        };
        let day_after = row.date.succ_opt().unwrap_or(row.date);
        let once_more = self.once_more(row);
        let since = reports.evidence(
            reports.passes.on(until),
            &Taken {
                check_ins: (day_after, until),
                practice: (row.date, until),
                observations: (day_after, until),
                group_records: false,
                ends: Some((row.concept.as_str(), &once_more)),
            },
        )?;
        let students: Vec<usize> = row.seats.iter().filter_map(index).collect();
        let pass_days = facts.rotation.day_count();
        let day_number = facts.year.school_days_before(row.date);
        let others: BTreeSet<usize> = (reports.concepts.iter().enumerate())
            .filter(|(_, id)| {
                facts.taught_from.get(*id).is_some_and(|first| {
                    facts.year.school_days_before(*first) + pass_days <= day_number
                })
            })
            .map(|(at, _)| at)
            .collect();
        let near = |date: NaiveDate| {
            date <= until && facts.year.school_days_before(date) + pass_days >= day_number
        };
        let left_out: BTreeSet<(usize, usize)> = (self.rows.iter())
            .filter(|other| other.id != row.id && near(other.date))
            .filter_map(|other| Some((other, at(&other.concept)?)))
            .flat_map(|(other, of)| {
                let seats = other.seats.iter().filter_map(index);
                seats.map(move |student| (student, of))
            })
            .filter(|(student, of)| *of != concept || !students.contains(student))
            .collect();
        Ok(compare(
            before,
            &since,
            &TaughtAgain {
                concept,
                students: &students,
                others: &others,
                left_out: &left_out,
            },
        ))
    }
}

/// A whole number between two.
#[expect(
    clippy::cast_possible_truncation,
    reason = "a number of results; a cast saturates"
)]
fn within(value: f64, least: i64, most: i64) -> i64 {
    (value as i64).clamp(least, most)
}
