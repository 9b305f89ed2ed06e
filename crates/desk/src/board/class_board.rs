//! The board: which concepts are weak now, how certain that is, and which students need them.

use super::misconceptions::Misconceptions;
use super::views::{
    Board, BoardRow, ConceptReports, DatedObservation, DatedReport, PassCell, StudentReport, Trend,
    TrendTest,
};
use crate::assign::amounts;
use crate::class::OpenClass;
use crate::error::{DeskError, Thing};
use crate::estimate::{
    MisconceptionCount, OfConcept, PracticeSums, Reports, ResultSums, trends_of,
};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Outcome;
use surefoot_catalogue::rotation::Phase;
use surefoot_insight::class_estimate::ranking;
use surefoot_insight::trend::Verdict;
use surefoot_store::DeskStore;

/// The board of a group of seats, or of the whole class if `group` is empty: weakest concept
/// first, concepts without a report last. The probabilities of each student use the reports of
/// the whole class.
pub fn board(
    desk: &DeskStore,
    class: &OpenClass,
    group: &[u32],
    language: Language,
    today: NaiveDate,
) -> Result<Board, DeskError> {
    let mut reports = Reports::read(desk, class, today)?;
    if !group.is_empty() {
        restrict(&mut reports, group)?;
    }
    Ok(Board {
        group: group.to_vec(),
        ..board_from(desk, class, &reports, language, today)?
    })
}

/// The board from reports that are read already.
pub(crate) fn board_from(
    desk: &DeskStore,
    class: &OpenClass,
    reports: &Reports,
    language: Language,
    today: NaiveDate,
) -> Result<Board, DeskError> {
    let misconceptions = Misconceptions::of(desk, class, &reports.seats, language, today)?;
    let by_concept = &misconceptions.by_concept;
    let mut ages: Vec<i64> = reports
        .newest
        .values()
        .map(|date| (today - *date).num_days())
        .collect();
    ages.sort_unstable();
    let mut rows: Vec<BoardRow> = reports
        .by_concept()
        .iter()
        .enumerate()
        .map(|(concept, of)| row(class, reports, of, by_concept, concept, language, today))
        .collect();
    let rank: BTreeMap<&str, usize> = reports
        .estimate
        .ranking
        .iter()
        .filter_map(|i| reports.concepts.get(*i))
        .enumerate()
        .map(|(rank, concept)| (concept.as_str(), rank))
        .collect();
    // A concept before its first lesson cannot be weak yet, so it comes after those taught.
    let part = |row: &BoardRow| match (row.reporters, row.phase) {
        (0, _) => 2,
        (_, Phase::Preview) => 1,
        (_, _) => 0,
    };
    rows.sort_by_key(|row| (part(row), rank.get(row.concept.id.as_str()).copied()));
    for (index, row) in rows.iter_mut().enumerate() {
        row.rank = (part(row) == 0).then_some(index + 1);
    }
    let at = class.facts.rotation.position(&class.facts.year, today);
    Ok(Board {
        class_title: class.row.title.clone(),
        today,
        group: Vec::new(),
        pass: reports.pass,
        day: at.map(|at| at.day + 1),
        pass_count: class.facts.rotation.pass_count(&class.facts.year),
        seats: reports.seats.len(),
        seats_reporting: reports.newest.len(),
        newest_report_days: ages.first().copied(),
        typical_report_days: ages.get(ages.len() / 2).copied(),
        level_known: reports.estimate.level_known,
        rows,
        misconceptions: misconceptions.over_all,
        misconceptions_left_out: misconceptions.left_out,
    })
}

/// Leaves only a group of seats in the reports. The estimate of each student stays as it is.
fn restrict(reports: &mut Reports, group: &[u32]) -> Result<(), DeskError> {
    let students: Vec<usize> = group
        .iter()
        .map(|seat| {
            let at = reports.student_at(*seat);
            at.ok_or(DeskError::NotFound(Thing::Seat))
        })
        .collect::<Result<_, _>>()?;
    reports.trends = trends_of(&reports.evidence, &students, reports.pass)?;
    reports.check_ins.retain(|r| group.contains(&r.seat));
    reports.practice.retain(|r| group.contains(&r.seat));
    reports.observations.retain(|r| group.contains(&r.seat));
    reports.newest.retain(|seat, _| group.contains(seat));
    let mut concepts = reports.estimate.of_students(&students);
    for (estimate, concept) in concepts.iter_mut().zip(&reports.concepts) {
        let heard = reports
            .check_ins
            .iter()
            .map(|r| (&r.concept, r.seat))
            .chain(reports.practice.iter().map(|r| (&r.concept, r.seat)))
            .filter(|(c, _)| *c == concept)
            .map(|(_, seat)| seat)
            .collect::<std::collections::BTreeSet<u32>>()
            .len();
        // In a small group, the teacher should ask first while fewer than half have reported.
        estimate.few_reports = heard * 2 < students.len();
    }
    reports.estimate.ranking = ranking(&concepts);
    reports.estimate.concepts = concepts;
    reports.seats = group.to_vec();
    Ok(())
}

/// The page of a concept: its row of the board, and its students, who needs it most first.
pub fn concept_reports(
    desk: &DeskStore,
    class: &OpenClass,
    concept: &str,
    language: Language,
    today: NaiveDate,
) -> Result<ConceptReports, DeskError> {
    let reports = Reports::read(desk, class, today)?;
    let index = reports
        .concept_at(concept)
        .ok_or(DeskError::NotFound(Thing::Concept))?;
    let row = board_from(desk, class, &reports, language, today)?
        .rows
        .into_iter()
        .find(|row| row.concept.id == concept)
        .ok_or(DeskError::NotFound(Thing::Concept))?;
    let assigned = amounts(desk, class, &reports.practice, concept, today)?;
    let mut students: Vec<(Option<f64>, StudentReport)> = class
        .seats
        .iter()
        .enumerate()
        .map(|(student, seat)| {
            let mut history: Vec<DatedReport> = reports
                .check_ins
                .iter()
                .filter(|r| r.seat == seat.number && r.concept == concept)
                .map(|r| DatedReport {
                    date: r.date,
                    pass: class.facts.rotation.pass_on(&class.facts.year, r.date),
                    confidence: r.confidence,
                    outcome: r.outcome,
                })
                .collect();
            let mut practice = PracticeSums::default();
            history.sort_by_key(|r| r.date);
            let mut newest = history.last().map(|r| r.date);
            for count in reports
                .practice
                .iter()
                .filter(|r| r.seat == seat.number && r.concept == concept)
            {
                practice.add(count);
                newest = newest.max(Some(count.date));
            }
            // Without a level, the estimate still gives the order.
            let order = newest.and_then(|_| reports.estimate.student(student, index));
            let report = StudentReport {
                seat: seat.number,
                name: seat.name.clone(),
                has_it: newest.and_then(|_| reports.has_it(student, index)),
                history,
                seen: reports
                    .observations
                    .iter()
                    .filter(|r| r.seat == seat.number && r.concept == concept)
                    .map(|r| DatedObservation {
                        date: r.date,
                        confidence: r.confidence,
                        has_it: r.has_it,
                    })
                    .collect(),
                practice,
                newest_days: newest.map(|date| (today - date).num_days()),
                assigned: assigned.get(&seat.number).copied(),
            };
            (order.map(|estimate| estimate.mean()), report)
        })
        .collect();
    // The sort is stable: of equals by seat.
    students.sort_by(|(a, _), (b, _)| match (a, b) {
        (Some(a), Some(b)) => a.total_cmp(b),
        (a, b) => b.is_some().cmp(&a.is_some()),
    });
    let trend = reports.trends.concepts.get(index);
    Ok(ConceptReports {
        row,
        trend_test: TrendTest {
            passes: trend.map_or(0, |t| t.passes),
            slope: trend.and_then(|t| t.slope).map(|slope| slope.median),
            low: trend.and_then(|t| t.slope).map(|slope| slope.low),
            high: trend.and_then(|t| t.slope).map(|slope| slope.high),
            p: trend.map_or(1.0, |t| t.p),
            concepts: reports.concepts.len(),
        },
        students: students.into_iter().map(|(_, report)| report).collect(),
    })
}

fn row(
    class: &OpenClass,
    reports: &Reports,
    of: &OfConcept<'_>,
    misconceptions: &BTreeMap<String, Vec<MisconceptionCount>>,
    index: usize,
    language: Language,
    today: NaiveDate,
) -> BoardRow {
    let facts = &class.facts;
    let concept = reports.concepts.get(index).map_or("", String::as_str);
    let mut passes = vec![PassCell::default(); reports.pass + 1];
    let mut latest = BTreeMap::new();
    let mut result = BTreeMap::new();
    let mut by_pass = BTreeMap::new();
    let mut newest: Option<NaiveDate> = None;
    for report in &of.check_ins {
        if let Some(confidence) = report.confidence {
            latest.insert(report.seat, confidence);
            let pass = reports.passes.on(report.date);
            by_pass.insert((pass, report.seat), confidence);
            if let Some(cell) = passes.get_mut(pass) {
                cell.last_on = cell.last_on.max(Some(report.date));
            }
        }
        if let Some(right) = report.outcome.and_then(Outcome::is_right) {
            result.insert(report.seat, right);
        }
        newest = newest.max(Some(report.date));
    }
    for ((pass, _), confidence) in &by_pass {
        if let Some(cell) = passes.get_mut(*pass) {
            cell.rated += 1;
            cell.needs += u32::from(confidence.needs_help());
        }
    }
    let mut counts = [0; 4];
    for confidence in latest.values() {
        if let Some(count) = counts.get_mut(confidence.index()) {
            *count += 1;
        }
    }
    let mut results = ResultSums::default();
    for right in result.values() {
        results.add(*right);
    }
    let mut practice = PracticeSums::default();
    let mut reporters: std::collections::BTreeSet<u32> =
        latest.keys().chain(result.keys()).copied().collect();
    for report in &of.practice {
        practice.add(report);
        reporters.insert(report.seat);
        newest = newest.max(Some(report.date));
    }
    for seen in reports.observations.iter().filter(|r| r.concept == concept) {
        reporters.insert(seen.seat);
        newest = newest.max(Some(seen.date));
    }
    let estimate = reports
        .estimate
        .concepts
        .get(index)
        .filter(|_| !reporters.is_empty());
    let shown = estimate.filter(|_| reports.estimate.level_known);
    BoardRow {
        concept: facts.name(concept, language),
        grade: facts.concepts.get(concept).map_or(0, |c| c.grade),
        phase: facts.phase(concept, today),
        day: facts
            .rotation
            .day_of(&concept.to_owned())
            .map_or(0, |d| d + 1),
        rank: None,
        has_it: shown.map(|e| e.share),
        low: shown.map(|e| e.low),
        high: shown.map(|e| e.high),
        sure_and_wrong: estimate.is_some_and(|e| e.sure_and_wrong),
        reporters: reporters.len(),
        ask_first: estimate.is_some_and(|e| e.few_reports),
        latest: counts,
        results,
        practice,
        newest_days: newest.map(|date| (today - date).num_days()),
        trend: reports
            .trends
            .concepts
            .get(index)
            .map_or(Trend::TooSoon, |t| trend(t.verdict)),
        passes,
        misconceptions: misconceptions.get(concept).cloned().unwrap_or_default(),
    }
}

fn trend(verdict: Verdict) -> Trend {
    match verdict {
        Verdict::Rising => Trend::Rising,
        Verdict::Falling => Trend::Falling,
        Verdict::MaybeRising => Trend::MaybeRising,
        Verdict::MaybeFalling => Trend::MaybeFalling,
        Verdict::NoClearChange => Trend::NoClearChange,
        Verdict::TooSoon => Trend::TooSoon,
    }
}
