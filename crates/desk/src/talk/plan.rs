//! Makes the talk plan of a day.

use super::views::{TalkConcept, TalkView, TalkWay};
use crate::board::{Board, Trend, board_from};
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule, Thing};
use crate::estimate::Reports;
use crate::sample::SampleExercise;
use crate::sample::sample;
use chrono::{Datelike, NaiveDate};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use surefoot_catalogue::Language;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::Confidence;
use surefoot_catalogue::rotation::Phase;
use surefoot_exercises::bank::OwnExercise;
use surefoot_exercises::{Level, TakenNames};
use surefoot_insight::talk::{Settings, TodayConcept, Way, talk_plan, talk_plan_by_order};
use surefoot_store::DeskStore;
use ts_rs::TS;

/// Minutes of a talk at most.
pub const MOST_TALK_MINUTES: u32 = 20;

/// School days within which the first lesson of a dependant counts as soon.
const SOON_SCHOOL_DAYS: usize = 10;

/// Minutes of a talk unless the teacher chooses.
pub const USUAL_TALK_MINUTES: u32 = 4;

/// Which of the next two school days a talk is planned for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum TalkDay {
    /// Today, or the next school day if today is none.
    First,
    /// The school day after that.
    Second,
}

impl TalkDay {
    /// Its date; none after the year.
    pub(crate) fn date(self, year: &SchoolYear, today: NaiveDate) -> Option<NaiveDate> {
        let first = day_to_show(year, today)?;
        match self {
            Self::First => Some(first),
            Self::Second => year.next_school_day(first),
        }
    }
}

/// The talk plan of today, or of the next school day if today is none. Concepts before their
/// first lesson and concepts without a report are listed but never chosen. While the level is not
/// known, the plan goes by the order of the concepts alone.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for more than [`MOST_TALK_MINUTES`] minutes.
pub fn talk(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    minutes: u32,
) -> Result<TalkView, DeskError> {
    talk_of(desk, class, language, today, today, minutes)
}

/// [`talk`] for one of the next two school days.
pub fn talk_on(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    minutes: u32,
    day: TalkDay,
) -> Result<TalkView, DeskError> {
    let date = day.date(&class.facts.year, today);
    read_talk(desk, class, language, today, minutes, date)
}

/// The talk plan of a day that comes, by what has been reported until `today`: of `from`, or of the
/// next school day if that is none.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for more than [`MOST_TALK_MINUTES`] minutes, or a day before today.
pub fn talk_of(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    from: NaiveDate,
    minutes: u32,
) -> Result<TalkView, DeskError> {
    if from < today {
        return Err(DeskError::invalid(Field::Dates, Rule::Range));
    }
    let date = day_to_show(&class.facts.year, from);
    read_talk(desk, class, language, today, minutes, date)
}

fn read_talk(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    minutes: u32,
    date: Option<NaiveDate>,
) -> Result<TalkView, DeskError> {
    if minutes == 0 || minutes > MOST_TALK_MINUTES {
        return Err(DeskError::invalid(Field::Minutes, Rule::Range));
    }
    let reports = Reports::read(desk, class, today)?;
    let board = board_from(desk, class, &reports, language, today)?;
    talk_from(desk, class, &reports, &board, language, minutes, date)
}

/// The talk plan from reports that are read already, and the board of the whole class from them.
pub(crate) fn talk_from(
    desk: &DeskStore,
    class: &OpenClass,
    reports: &Reports,
    board: &Board,
    language: Language,
    minutes: u32,
    date: Option<NaiveDate>,
) -> Result<TalkView, DeskError> {
    let facts = &class.facts;
    let year = &facts.year;
    let today = board.today;
    let mut view = TalkView {
        class_title: class.row.title.clone(),
        date: date.unwrap_or(today),
        is_today: date == Some(today),
        school_days: ([TalkDay::First, TalkDay::Second].into_iter())
            .filter_map(|day| day.date(year, today))
            .collect(),
        day: None,
        minutes,
        minutes_used: 0,
        level_known: board.level_known,
        concepts: Vec::new(),
    };
    let Some(date) = date else {
        return Ok(view);
    };
    view.day = facts.rotation.position(year, date).map(|at| at.day + 1);
    let rows = &board.rows;
    let talked = desk.talked_about(&class.row.id)?;
    let pass = facts.rotation.pass_on(year, date);
    let absent: BTreeSet<u32> = desk.absences(&class.row.id, date)?.into_iter().collect();

    let mut offered = Vec::new();
    for id in facts.rotation.concepts_on(year, date) {
        let Some(row) = rows.iter().find(|r| r.concept.id == *id) else {
            continue;
        };
        let at = reports.concepts.iter().position(|c| c == id);
        let (expected_wrong, sure_wrong) = at.map_or((0.0, 0.0), |at| wrong(reports, at, &absent));
        let dependants = dependants_soon(class, id, date);
        let discussed = talked.iter().any(|(on, c)| {
            c == id && *on < date && {
                let of = facts.rotation.pass_on(year, *on);
                of == pass || of + 1 == pass
            }
        });
        let wished: Vec<String> = row.misconceptions.iter().map(|m| m.code.clone()).collect();
        view.concepts.push(TalkConcept {
            concept: row.concept.clone(),
            phase: facts.phase(id, date),
            chosen: false,
            talked: talked.iter().any(|(on, c)| *on == date && c == id),
            way: None,
            minutes: 0,
            worth: None,
            has_it: row.has_it,
            low: row.low,
            high: row.high,
            expected_wrong: view.level_known.then_some(expected_wrong),
            sure_wrong: view.level_known.then_some(sure_wrong),
            trend: row.trend,
            talked_lately: discussed,
            dependants_soon: dependants.iter().map(|c| facts.name(c, language)).collect(),
            misconceptions: row.misconceptions.clone(),
            exercise: exercise(class.taken_names(), facts.own_of(id), id, date, &wished),
        });
        if let Some((at, estimate)) = at
            .and_then(|at| Some((at, reports.estimate.concepts.get(at)?)))
            .filter(|_| row.reporters > 0 && facts.phase(id, date) != Phase::Preview)
        {
            offered.push((
                view.concepts.len() - 1,
                reports.estimate.ranking.iter().position(|c| *c == at),
                TodayConcept {
                    share: estimate.share,
                    expected_wrong,
                    sure_wrong,
                    falling: row.trend == Trend::Falling,
                    discussed_last: discussed,
                    dependants_soon: u32::try_from(dependants.len()).unwrap_or(u32::MAX),
                },
            ));
        }
    }
    let plan = if view.level_known {
        let of_today: Vec<TodayConcept> = offered.iter().map(|(_, _, c)| *c).collect();
        talk_plan(&of_today, minutes, &Settings::default())
    } else {
        offered.sort_by_key(|(_, rank, _)| *rank);
        let discussed: Vec<bool> = offered.iter().map(|(_, _, c)| c.discussed_last).collect();
        talk_plan_by_order(&discussed, minutes, &Settings::default())
    };
    view.minutes_used = plan.minutes;
    for (nth, (place, _, _)) in offered.iter().enumerate() {
        if let (Some(concept), Some(offer)) = (view.concepts.get_mut(*place), plan.offers.get(nth))
        {
            concept.chosen = plan.chosen.contains(&nth);
            concept.way = Some(match offer.way {
                Way::TeachAgain => TalkWay::TeachAgain,
                Way::PairTalk => TalkWay::PairTalk,
                Way::ShortLook => TalkWay::ShortLook,
            });
            concept.minutes = offer.minutes;
            concept.worth = view
                .level_known
                .then(|| thousandths(offer.value_thousandths));
        }
    }
    view.concepts.sort_by_key(|c| !c.chosen);
    Ok(view)
}

/// Today, or the next school day if today is none; none after the year.
pub fn day_to_show(year: &SchoolYear, today: NaiveDate) -> Option<NaiveDate> {
    if year.is_school_day(today) {
        Some(today)
    } else if today < year.first_day {
        year.school_days().next()
    } else {
        year.next_school_day(today)
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "a class's worth is far below 2^52 thousandths"
)]
fn thousandths(value: i64) -> f64 {
    value as f64 / 1000.0
}

/// How many present students are expected to get it wrong, and how many of those whose last
/// rating is On my own or Could teach it.
fn wrong(reports: &Reports, at: usize, absent: &BTreeSet<u32>) -> (f64, f64) {
    let (mut all, mut sure) = (0.0, 0.0);
    for (student, seat) in reports.seats.iter().enumerate() {
        if absent.contains(seat) {
            continue;
        }
        let Some(estimate) = reports.estimate.student(student, at) else {
            continue;
        };
        let fails = 1.0 - estimate.mean();
        all += fails;
        let last = reports.evidence.last_rating(student, at, reports.pass);
        if last.is_some_and(|rating| rating >= Confidence::OnMyOwn) {
            sure += fails;
        }
    }
    (all, sure)
}

/// The dependants of a concept whose first lesson is within ten school days of `date`.
fn dependants_soon<'a>(class: &'a OpenClass, concept: &str, date: NaiveDate) -> Vec<&'a str> {
    let facts = &class.facts;
    let now = facts.year.school_days_before(date);
    facts
        .by_strand()
        .into_iter()
        .filter(|id| {
            facts
                .concepts
                .get(*id)
                .is_some_and(|c| c.prerequisites.iter().any(|p| p.as_str() == concept))
        })
        .filter(|id| {
            facts.taught_from.get(*id).is_some_and(|first| {
                *first >= date && facts.year.school_days_before(*first) <= now + SOON_SCHOOL_DAYS
            })
        })
        .collect()
}

/// An exercise to discuss: the same one all day, another one on the next date.
pub(super) fn exercise(
    taken: TakenNames,
    own: &[OwnExercise],
    concept: &str,
    date: NaiveDate,
    wished: &[String],
) -> Option<SampleExercise> {
    let seed = u64::from(date.num_days_from_ce().unsigned_abs());
    sample(taken, own, concept, Level::Expected, seed * 31, wished)
}

/// Records that a concept was discussed on a date, or removes that record.
pub fn note_talk(
    desk: &DeskStore,
    class: &OpenClass,
    date: NaiveDate,
    concept: &str,
    talked: bool,
) -> Result<(), DeskError> {
    if !class.facts.concepts.contains_key(concept) {
        return Err(DeskError::NotFound(Thing::Concept));
    }
    desk.put_talked_about(&class.row.id, date, concept, talked)?;
    Ok(())
}
