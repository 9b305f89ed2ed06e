//! A class's reports, laid out for the estimates.

use super::{OpenClass, TeacherError};
use crate::insight::evidence::{Evidence, PracticeCount};
use crate::insight::trend::{Trends, trends};
use crate::insight::weak_spot::{ClassPicture, Settings, class_picture};
use crate::rating::{Confidence, Outcome};
use crate::store::DeskStore;
use crate::store::desk::{CheckInReport, PracticeReport};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// False discovery rate of the trend verdicts.
const TREND_RATE: f64 = 0.1;

/// Reports of a class up to a date, with what they say.
pub(super) struct Reports {
    /// Concept ids in their order.
    pub concepts: Vec<String>,
    /// Seat numbers in their order.
    pub seats: Vec<u32>,
    /// The check-in that counts of each (seat, date, concept), oldest first.
    pub check_ins: Vec<CheckInReport>,
    /// Practice counts, oldest first.
    pub practice: Vec<PracticeReport>,
    /// The pass of the date.
    pub pass: usize,
    /// What the reports say.
    pub picture: ClassPicture,
    /// Which way concepts move.
    pub trends: Trends,
}

impl Reports {
    pub(super) fn read(
        desk: &DeskStore,
        class: &OpenClass,
        today: NaiveDate,
    ) -> Result<Self, TeacherError> {
        let facts = &class.facts;
        let concepts: Vec<String> = facts.by_strand().into_iter().map(str::to_owned).collect();
        let concept_at: BTreeMap<&str, usize> = concepts
            .iter()
            .enumerate()
            .map(|(i, c)| (c.as_str(), i))
            .collect();
        let seats: Vec<u32> = class.seats.iter().map(|s| s.number).collect();
        let seat_at: BTreeMap<u32, usize> =
            seats.iter().enumerate().map(|(i, s)| (*s, i)).collect();
        let counted = |date: NaiveDate| date <= today && facts.year.contains(date);

        // Across the devices of a seat the latest event of a (date, concept) counts.
        // Rows come ordered by sequence and device, so the last one wins.
        let mut latest: BTreeMap<(u32, NaiveDate, String), CheckInReport> = BTreeMap::new();
        for report in desk.check_ins(&class.row.id)? {
            if counted(report.date) && concept_at.contains_key(report.concept.as_str()) {
                latest.insert((report.seat, report.date, report.concept.clone()), report);
            }
        }
        let mut check_ins: Vec<CheckInReport> = latest.into_values().collect();
        check_ins.sort_by_key(|r| r.date);
        let practice: Vec<PracticeReport> = desk
            .practice(&class.row.id)?
            .into_iter()
            .filter(|r| counted(r.date) && concept_at.contains_key(r.concept.as_str()))
            .collect();

        let pass = facts.rotation.pass_on(&facts.year, today);
        let mut evidence = Evidence::new(seats.len(), concepts.len(), pass + 1)?;
        let mut rated: BTreeMap<(usize, usize), Vec<(NaiveDate, Confidence)>> = BTreeMap::new();
        for report in &check_ins {
            let (Some(&student), Some(&concept)) = (
                seat_at.get(&report.seat),
                concept_at.get(report.concept.as_str()),
            ) else {
                continue;
            };
            let of_pass = facts.rotation.pass_on(&facts.year, report.date);
            if let Some(confidence) = report.confidence {
                evidence.rate(student, concept, of_pass, confidence)?;
                rated
                    .entry((student, concept))
                    .or_default()
                    .push((report.date, confidence));
            }
            match report.outcome {
                Some(Outcome::Right) => evidence.mark(student, concept, of_pass, true)?,
                Some(Outcome::Wrong) => evidence.mark(student, concept, of_pass, false)?,
                Some(Outcome::NotDone) | None => {}
            }
        }
        // Right and wrong answers by student, concept, pass and the rating before.
        type Place = (usize, usize, usize, Option<Confidence>);
        let mut counts: BTreeMap<Place, (u32, u32)> = BTreeMap::new();
        for report in &practice {
            let (Some(&student), Some(&concept)) = (
                seat_at.get(&report.seat),
                concept_at.get(report.concept.as_str()),
            ) else {
                continue;
            };
            let before = rated
                .get(&(student, concept))
                .and_then(|r| r.iter().rev().find(|(on, _)| *on <= report.date))
                .map(|(_, c)| *c);
            let of_pass = facts.rotation.pass_on(&facts.year, report.date);
            let count = counts
                .entry((student, concept, of_pass, before))
                .or_default();
            count.0 += report.alone;
            // With help is not yet having it.
            count.1 += report.with_help + report.wrong;
        }
        for ((student, concept, of_pass, rating_before), (right, wrong)) in counts {
            evidence.practise(PracticeCount {
                student,
                concept,
                pass: of_pass,
                rating_before,
                right,
                wrong,
            })?;
        }
        let picture = class_picture(&evidence, pass, &Settings::default());
        let trends = trends(&evidence, pass, TREND_RATE);
        Ok(Self {
            concepts,
            seats,
            check_ins,
            practice,
            pass,
            picture,
            trends,
        })
    }
}

/// The newest report of each seat that has one, of dates that have come.
pub(super) fn newest_by_seat(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<BTreeMap<u32, NaiveDate>, TeacherError> {
    let year = &class.facts.year;
    Ok(desk.newest_reports(&class.row.id, year.first_day, year.last_day.min(today))?)
}
