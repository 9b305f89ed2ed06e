//! Compares ratings with results: contradictions, calibration, and agreement with the teacher's
//! observations.

use super::views::{
    Agreement, CalibrationVerdict, Comparison, Contradiction, ForecastScore, StudentCalibration,
    StudentConcept, StudentPage,
};
use crate::class::OpenClass;
use crate::error::{DeskError, Thing};
use crate::estimate::GroupMember;
use crate::estimate::{PracticeSums, Reports, ResultSums, SeatCheckIn};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_insight::calibration::{ConceptAnswers, Settings, Verdict, calibration};
use surefoot_insight::stats::{KappaWeights, weighted_kappa};
use surefoot_store::DeskStore;

/// Results against a rating that make a contradiction, at least. A single one may be luck.
const AGAINST_AT_LEAST: u32 = 2;

/// Pairs of ratings for a kappa, at least. Common practice; no source.
const KAPPA_PAIRS: usize = 10;

/// Compares the ratings of a class with its results.
pub fn comparison(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<Comparison, DeskError> {
    let reports = Reports::read(desk, class, today)?;
    let (sure_but_wrong, unsure_but_right) = contradictions(class, &reports, language);
    Ok(Comparison {
        sure_but_wrong,
        unsure_but_right,
        students: (0..reports.seats.len())
            .filter_map(|student| student_calibration(class, &reports, student))
            .collect(),
        agreement: agreement(class, &reports),
    })
}

/// The results of a (seat, concept) since its last rating.
#[derive(Clone, Copy, Default)]
struct Since {
    results: ResultSums,
    practice: PracticeSums,
}

/// Counts answers under the rating before them.
fn add(answers: &mut [usize; 4], rating: Confidence, count: usize) {
    if let Some(sum) = answers.get_mut(rating.index()) {
        *sum += count;
    }
}

/// Whose ratings and results disagree, on which concepts: sure but wrong, then unsure but right,
/// those furthest apart first.
pub(crate) fn contradictions(
    class: &OpenClass,
    reports: &Reports,
    language: Language,
) -> (Vec<Contradiction>, Vec<Contradiction>) {
    let last = reports.last_ratings();
    let mut since: BTreeMap<(u32, &str), Since> = BTreeMap::new();
    let counts = |seat: u32, concept: &str, date: NaiveDate| {
        last.get(&(seat, concept))
            .is_some_and(|(on, _)| date >= *on)
    };
    for report in &reports.check_ins {
        let Some(right) = report.outcome.and_then(Outcome::is_right) else {
            continue;
        };
        if counts(report.seat, &report.concept, report.date) {
            since
                .entry((report.seat, &report.concept))
                .or_default()
                .results
                .add(right);
        }
    }
    for seen in &reports.observations {
        if counts(seen.seat, &seen.concept, seen.date) {
            since
                .entry((seen.seat, &seen.concept))
                .or_default()
                .results
                .add(seen.has_it);
        }
    }
    for count in &reports.practice {
        if counts(count.seat, &count.concept, count.date) {
            since
                .entry((count.seat, &count.concept))
                .or_default()
                .practice
                .add(count);
        }
    }
    let (mut sure, mut unsure) = (Vec::new(), Vec::new());
    for ((seat, concept), Since { results, practice }) in since {
        let Some((_, rating)) = last.get(&(seat, concept)).copied() else {
            continue;
        };
        let right = results.right + practice.alone;
        let wrong = results.wrong + practice.with_help + practice.wrong;
        let (list, weight) = if !rating.needs_help() && wrong > right && wrong >= AGAINST_AT_LEAST {
            (&mut sure, wrong - right)
        } else if rating.needs_help() && right > wrong && right >= AGAINST_AT_LEAST {
            (&mut unsure, right - wrong)
        } else {
            continue;
        };
        let student = reports
            .student_at(seat)
            .and_then(|at| reports.member(class, at, reports.concept_at(concept)));
        if let Some(student) = student {
            list.push((
                weight,
                Contradiction {
                    student,
                    concept: class.facts.name(concept, language),
                    rating,
                    results,
                    practice,
                },
            ));
        }
    }
    let ordered = |mut list: Vec<(u32, Contradiction)>| {
        // The sort is stable, so equal weights stay in the order of seat and concept.
        list.sort_by_key(|(weight, _)| std::cmp::Reverse(*weight));
        list.into_iter().map(|(_, one)| one).collect()
    };
    (ordered(sure), ordered(unsure))
}

fn student_calibration(
    class: &OpenClass,
    reports: &Reports,
    student: usize,
) -> Option<StudentCalibration> {
    let seat = class.seats.get(student)?;
    let mut answers: BTreeMap<&str, ConceptAnswers> = BTreeMap::new();
    for report in reports.check_ins.iter().filter(|r| r.seat == seat.number) {
        if let (Some(rating), Some(outcome)) = (report.confidence, report.outcome) {
            let own = answers.entry(&report.concept).or_default();
            match outcome.is_right() {
                Some(true) => add(&mut own.right, rating, 1),
                Some(false) => add(&mut own.wrong, rating, 1),
                None => {}
            }
        }
    }
    for count in reports.practice.iter().filter(|r| r.seat == seat.number) {
        if let Some(confidence) = count.confidence {
            let own = answers.entry(&count.concept).or_default();
            add(&mut own.right, confidence, count.alone as usize);
            // An answer with help does not show that the student has it.
            add(
                &mut own.wrong,
                confidence,
                count.with_help.saturating_add(count.wrong) as usize,
            );
        }
    }
    let answers: Vec<ConceptAnswers> = answers.into_values().collect();
    let found = calibration(&answers, &Settings::default());
    Some(StudentCalibration {
        student: GroupMember {
            seat: seat.number,
            name: seat.name.clone(),
            has_it: None,
        },
        answers: found.answers,
        verdict: match found.verdict {
            Verdict::Over => CalibrationVerdict::Over,
            Verdict::Under => CalibrationVerdict::Under,
            Verdict::Near => CalibrationVerdict::Near,
            Verdict::Unclear => CalibrationVerdict::Unclear,
            Verdict::TooLittle => CalibrationVerdict::TooLittle,
        },
        bias: found.bias.map(|b| b.bias),
        low: found.bias.map(|b| b.low),
        high: found.bias.map(|b| b.high),
        gamma: found.gamma.map(|g| g.gamma),
        brier: found.brier.map(|parts| ForecastScore {
            score: parts.brier,
            reliability: parts.reliability,
            resolution: parts.resolution,
            uncertainty: parts.uncertainty,
        }),
    })
}

/// Pairs each observation that has a rating with the student's last rating in the same pass, up to
/// the day of the observation.
fn agreement(class: &OpenClass, reports: &Reports) -> Agreement {
    let facts = &class.facts;
    let mut own: BTreeMap<(u32, &str), Vec<&SeatCheckIn>> = BTreeMap::new();
    for report in reports.check_ins.iter().filter(|r| r.confidence.is_some()) {
        own.entry((report.seat, &report.concept))
            .or_default()
            .push(report);
    }
    let mut table = [[0_u32; 4]; 4];
    let mut pairs = 0;
    for seen in &reports.observations {
        let pass = facts.rotation.pass_on(&facts.year, seen.date);
        let rated = own
            .get(&(seen.seat, seen.concept.as_str()))
            .and_then(|all| all.iter().rev().find(|r| r.date <= seen.date))
            .filter(|r| facts.rotation.pass_on(&facts.year, r.date) == pass)
            .and_then(|r| r.confidence);
        if let (Some(theirs), Some(ours)) = (rated, seen.confidence) {
            let cell = table
                .get_mut(theirs.index())
                .and_then(|row| row.get_mut(ours.index()));
            if let Some(cell) = cell {
                *cell += 1;
            }
            pairs += 1;
        }
    }
    let counts: Vec<Vec<usize>> = table
        .iter()
        .map(|row| row.iter().map(|n| *n as usize).collect())
        .collect();
    let kappa = (pairs >= KAPPA_PAIRS)
        .then(|| weighted_kappa(&counts, KappaWeights::Quadratic))
        .flatten();
    Agreement {
        table,
        pairs,
        kappa: kappa.map(|k| k.kappa),
        standard_error: kappa.map(|k| k.standard_error),
    }
}

/// The page of a student.
pub fn student_page(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    language: Language,
    today: NaiveDate,
) -> Result<StudentPage, DeskError> {
    let reports = Reports::read(desk, class, today)?;
    student_page_from(class, &reports, seat, language, today)
}

/// The pages of all students, by seat.
pub fn student_pages(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<Vec<StudentPage>, DeskError> {
    let reports = Reports::read(desk, class, today)?;
    class
        .seats
        .iter()
        .map(|seat| student_page_from(class, &reports, seat.number, language, today))
        .collect()
}

/// The page of a student from reports that are read already.
pub(crate) fn student_page_from(
    class: &OpenClass,
    reports: &Reports,
    seat: u32,
    language: Language,
    today: NaiveDate,
) -> Result<StudentPage, DeskError> {
    let student = reports
        .student_at(seat)
        .ok_or(DeskError::NotFound(Thing::Seat))?;
    let calibration =
        student_calibration(class, reports, student).ok_or(DeskError::NotFound(Thing::Seat))?;
    let mut found: BTreeMap<&str, StudentConcept> = BTreeMap::new();
    let at = |concept: &str| reports.concept_at(concept);
    let begin = |concept: &str| StudentConcept {
        concept: class.facts.name(concept, language),
        phase: class.facts.phase(concept, today),
        has_it: at(concept).and_then(|at| reports.has_it(student, at)),
        rating: None,
        outcome: None,
        practice: PracticeSums::default(),
        seen: None,
        newest_days: i64::MAX,
    };
    let age = |date: NaiveDate| (today - date).num_days();
    for report in reports.check_ins.iter().filter(|r| r.seat == seat) {
        let own = found
            .entry(&report.concept)
            .or_insert_with(|| begin(&report.concept));
        own.rating = report.confidence.or(own.rating);
        own.outcome = report
            .outcome
            .filter(|outcome| outcome.is_right().is_some())
            .or(own.outcome);
        own.newest_days = own.newest_days.min(age(report.date));
    }
    for count in reports.practice.iter().filter(|r| r.seat == seat) {
        let own = found
            .entry(&count.concept)
            .or_insert_with(|| begin(&count.concept));
        own.practice.add(count);
        own.newest_days = own.newest_days.min(age(count.date));
    }
    for seen in reports.observations.iter().filter(|r| r.seat == seat) {
        let own = found
            .entry(&seen.concept)
            .or_insert_with(|| begin(&seen.concept));
        own.seen = Some(seen.has_it);
        own.newest_days = own.newest_days.min(age(seen.date));
    }
    let without_report = reports.concepts.len() - found.len();
    // Without a level, the estimate still gives the order.
    let mut concepts: Vec<(f64, StudentConcept)> = found
        .into_iter()
        .map(|(concept, own)| {
            let estimate = at(concept).and_then(|at| reports.estimate.student(student, at));
            (estimate.map_or(0.5, |e| e.mean()), own)
        })
        .collect();
    concepts.sort_by(|(a_mean, a), (b_mean, b)| {
        // A concept before its first lesson comes last, because nobody is expected to know it.
        let preview = |c: &StudentConcept| c.phase == surefoot_catalogue::rotation::Phase::Preview;
        preview(a).cmp(&preview(b)).then(a_mean.total_cmp(b_mean))
    });
    let name = class.seats.get(student).and_then(|s| s.name.clone());
    Ok(StudentPage {
        student: GroupMember {
            seat,
            name,
            has_it: None,
        },
        calibration,
        concepts: concepts.into_iter().map(|(_, own)| own).collect(),
        without_report,
    })
}
