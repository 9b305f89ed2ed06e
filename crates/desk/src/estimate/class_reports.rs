//! The reports of a class, and the estimate from them.

use super::counted::{self, Counted, Passes, SeatCheckIn};
use super::views::GroupMember;
use crate::class::OpenClass;
use crate::error::DeskError;
use chrono::NaiveDate;
use std::collections::{BTreeMap, HashMap, HashSet};
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_insight::class_estimate::{ClassEstimate, class_estimate};
use surefoot_insight::evidence::{Evidence, PracticeCount};
use surefoot_insight::trend::{Trends, trends};
use surefoot_store::DeskStore;
use surefoot_store::desk::{ObservationRow, PracticeReport};

/// False discovery rate of the trends.
const TREND_RATE: f64 = 0.1;

/// Answers that a record after a group counts for beside the result: the teacher saw the student at
/// work on the four exercises of the group's page.
const FURTHER_ANSWERS: u32 = 3;

/// What counts of a class's reports up to a date. Concepts and students have the indices of
/// `concepts` and `seats`.
pub(crate) struct CountedReports {
    /// See [`Reports`], also for the others.
    pub concepts: Vec<String>,
    pub seats: Vec<u32>,
    pub check_ins: Vec<SeatCheckIn>,
    pub practice: Vec<PracticeReport>,
    pub observations: Vec<ObservationRow>,
    pub passes: Passes,
}

/// Which of these reports are taken: those whose dates are between two, both included.
pub(crate) struct Taken<'t> {
    pub check_ins: (NaiveDate, NaiveDate),
    pub practice: (NaiveDate, NaiveDate),
    pub observations: (NaiveDate, NaiveDate),
    /// Whether what was recorded after a group is among the observations.
    pub group_records: bool,
    /// The concept and the seats whose reports on it end earlier: the check-ins after a date, and
    /// everything else from it on.
    pub ends: Option<(&'t str, &'t BTreeMap<u32, NaiveDate>)>,
}

impl Taken<'_> {
    pub fn all() -> Self {
        let ever = (NaiveDate::MIN, NaiveDate::MAX);
        Self {
            check_ins: ever,
            practice: ever,
            observations: ever,
            group_records: true,
            ends: None,
        }
    }

    /// The last date of a seat's check-ins on a concept.
    fn end(&self, seat: u32, concept: &str) -> NaiveDate {
        let of = self.ends.filter(|(ending, _)| *ending == concept);
        of.and_then(|(_, seats)| seats.get(&seat).copied())
            .unwrap_or(NaiveDate::MAX)
    }
}

fn between((from, to): (NaiveDate, NaiveDate), date: NaiveDate) -> bool {
    from <= date && date <= to
}

impl CountedReports {
    /// Reads them, and the newest report of each seat.
    pub fn read(
        desk: &DeskStore,
        class: &OpenClass,
        today: NaiveDate,
    ) -> Result<(Self, BTreeMap<u32, NaiveDate>), DeskError> {
        let facts = &class.facts;
        let concepts: Vec<String> = facts.by_strand().into_iter().map(str::to_owned).collect();
        let known: HashSet<&str> = concepts.iter().map(String::as_str).collect();
        let dates = class.counted_dates(today);
        let Counted {
            check_ins,
            practice,
            newest,
        } = counted::counted(desk, class, today)?;
        let observations = desk
            .observations(&class.row.id)?
            .into_iter()
            .filter(|r| dates.contains(r.date) && known.contains(r.concept.as_str()))
            .collect();
        let read = Self {
            seats: class.seats.iter().map(|s| s.number).collect(),
            check_ins,
            practice,
            observations,
            passes: Passes::of(&facts.rotation, &facts.year),
            concepts,
        };
        Ok((read, newest))
    }

    /// Those taken, as input of the estimate for passes up to `last_pass`.
    pub fn evidence(&self, last_pass: usize, taken: &Taken<'_>) -> Result<Evidence, DeskError> {
        let concept_at: HashMap<&str, usize> = (self.concepts.iter().enumerate())
            .map(|(i, c)| (c.as_str(), i))
            .collect();
        let seat_at: HashMap<u32, usize> = (self.seats.iter().enumerate())
            .map(|(i, s)| (*s, i))
            .collect();
        let mut evidence = Evidence::new(self.seats.len(), self.concepts.len(), last_pass + 1)?;
        // By student and concept, oldest first.
        let mut marks: BTreeMap<(usize, usize), Vec<(NaiveDate, bool)>> = BTreeMap::new();
        for report in &self.check_ins {
            let (Some(&student), Some(&concept)) = (
                seat_at.get(&report.seat),
                concept_at.get(report.concept.as_str()),
            ) else {
                continue;
            };
            if !between(taken.check_ins, report.date)
                || report.date > taken.end(report.seat, &report.concept)
            {
                continue;
            }
            let of_pass = self.passes.on(report.date);
            if let Some(confidence) = report.confidence {
                evidence.rate(student, concept, of_pass, confidence)?;
            }
            let Some(right) = report.outcome.and_then(Outcome::is_right) else {
                continue;
            };
            let of = marks.entry((student, concept)).or_default();
            of.push((report.date, right));
        }
        // An observation has no sequence. As paper does, it follows all results up to its date.
        for seen in &self.observations {
            let after_a_group = seen.confidence.is_none();
            if !between(taken.observations, seen.date)
                || (after_a_group && !taken.group_records)
                || seen.date >= taken.end(seen.seat, &seen.concept)
            {
                continue;
            }
            if let (Some(&student), Some(&concept)) = (
                seat_at.get(&seen.seat),
                concept_at.get(seen.concept.as_str()),
            ) {
                let of = marks.entry((student, concept)).or_default();
                let before = of.iter().rposition(|(date, _)| *date <= seen.date);
                of.insert(before.map_or(0, |at| at + 1), (seen.date, seen.has_it));
                if after_a_group {
                    let right = if seen.has_it { FURTHER_ANSWERS } else { 0 };
                    evidence.practise(PracticeCount {
                        student,
                        concept,
                        pass: self.passes.on(seen.date),
                        right,
                        wrong: FURTHER_ANSWERS - right,
                    })?;
                }
            }
        }
        for ((student, concept), of) in marks {
            for (date, right) in of {
                evidence.mark(student, concept, self.passes.on(date), right)?;
            }
        }
        for report in &self.practice {
            let (Some(&student), Some(&concept)) = (
                seat_at.get(&report.seat),
                concept_at.get(report.concept.as_str()),
            ) else {
                continue;
            };
            if !between(taken.practice, report.date)
                || report.date >= taken.end(report.seat, &report.concept)
            {
                continue;
            }
            evidence.practise(PracticeCount {
                student,
                concept,
                pass: self.passes.on(report.date),
                right: report.alone,
                // An answer with help does not show that the student has it.
                wrong: report.with_help.saturating_add(report.wrong),
            })?;
        }
        Ok(evidence)
    }
}

/// The reports of a class up to a date, and the estimate from them. Concepts and students
/// have the indices of `concepts` and `seats`.
pub(crate) struct Reports {
    /// Concept ids in their order.
    pub concepts: Vec<String>,
    /// Seat numbers in their order.
    pub seats: Vec<u32>,
    /// What counts of each (seat, date, concept): seat by seat, each in its student's
    /// order of events, oldest first.
    pub check_ins: Vec<SeatCheckIn>,
    /// Practice counts, oldest first.
    pub practice: Vec<PracticeReport>,
    /// Observations, oldest first.
    pub observations: Vec<ObservationRow>,
    /// The same reports as input of the estimate.
    pub evidence: Evidence,
    /// The newest report of each seat that has one.
    pub newest: BTreeMap<u32, NaiveDate>,
    /// The pass of the date.
    pub pass: usize,
    /// The pass of every date.
    pub passes: Passes,
    /// What the reports say about the class.
    pub estimate: ClassEstimate,
    /// The trend of each concept.
    pub trends: Trends,
}

impl Reports {
    pub(crate) fn read(
        desk: &DeskStore,
        class: &OpenClass,
        today: NaiveDate,
    ) -> Result<Self, DeskError> {
        let (counted, newest) = CountedReports::read(desk, class, today)?;
        Self::of(class, counted, newest, today)
    }

    /// Estimates the class from reports that were read.
    pub(crate) fn of(
        class: &OpenClass,
        counted: CountedReports,
        newest: BTreeMap<u32, NaiveDate>,
        today: NaiveDate,
    ) -> Result<Self, DeskError> {
        let facts = &class.facts;
        let pass = facts.rotation.pass_on(&facts.year, today);
        let evidence = counted.evidence(pass, &Taken::all())?;
        let CountedReports {
            concepts,
            seats,
            check_ins,
            practice,
            observations,
            passes,
        } = counted;
        #[cfg(test)]
        super::fits::count_one();
        let estimate = class_estimate(&evidence, pass);
        let trends = trends(&evidence, pass, TREND_RATE);
        Ok(Self {
            concepts,
            seats,
            check_ins,
            practice,
            observations,
            evidence,
            newest,
            pass,
            passes,
            estimate,
            trends,
        })
    }
}

/// The reports on one concept.
#[derive(Default)]
pub(crate) struct OfConcept<'r> {
    /// Its check-ins, oldest first.
    pub check_ins: Vec<&'r SeatCheckIn>,
    /// Its practice counts.
    pub practice: Vec<&'r PracticeReport>,
}

impl Reports {
    /// The last rating of each (seat, concept) with its date. The rule of what counts orders a
    /// student's check-ins, so the last of them has the last rating.
    pub(crate) fn last_ratings(&self) -> BTreeMap<(u32, &str), (NaiveDate, Confidence)> {
        let rated = self.check_ins.iter().filter_map(|report| {
            let key = (report.seat, report.concept.as_str());
            Some((key, (report.date, report.confidence?)))
        });
        rated.collect()
    }

    /// The index of a concept.
    pub(crate) fn concept_at(&self, concept: &str) -> Option<usize> {
        self.concepts.iter().position(|id| id == concept)
    }

    /// The index of the student on a seat.
    pub(crate) fn student_at(&self, seat: u32) -> Option<usize> {
        self.seats.iter().position(|number| *number == seat)
    }

    /// The probability that a student has a concept, both by index; `None` while the
    /// level is not known: ratings give the order alone.
    pub(crate) fn has_it(&self, student: usize, concept: usize) -> Option<f64> {
        let estimate = self.estimate.student(student, concept)?;
        self.estimate.level_known.then(|| estimate.mean())
    }

    /// A student as a member of a group on a concept, both by index.
    pub(crate) fn member(
        &self,
        class: &OpenClass,
        student: usize,
        concept: Option<usize>,
    ) -> Option<GroupMember> {
        let seat = class.seats.get(student)?;
        Some(GroupMember {
            seat: seat.number,
            name: seat.name.clone(),
            has_it: concept.and_then(|at| self.has_it(student, at)),
        })
    }

    /// The reports concept by concept, in the order of the concepts.
    pub(crate) fn by_concept(&self) -> Vec<OfConcept<'_>> {
        let indices: HashMap<&str, usize> = self
            .concepts
            .iter()
            .enumerate()
            .map(|(index, concept)| (concept.as_str(), index))
            .collect();
        let mut found: Vec<OfConcept<'_>> = Vec::new();
        found.resize_with(self.concepts.len(), OfConcept::default);
        for report in &self.check_ins {
            let index = indices.get(report.concept.as_str());
            if let Some(of) = index.and_then(|at| found.get_mut(*at)) {
                of.check_ins.push(report);
            }
        }
        for report in &self.practice {
            let index = indices.get(report.concept.as_str());
            if let Some(of) = index.and_then(|at| found.get_mut(*at)) {
                of.practice.push(report);
            }
        }
        found
    }
}

/// The trends of some students alone, by their indices.
pub(crate) fn trends_of(
    evidence: &Evidence,
    students: &[usize],
    pass: usize,
) -> Result<Trends, DeskError> {
    let mut own = Evidence::new(students.len(), evidence.concepts(), evidence.passes())?;
    for (own_index, student) in students.iter().enumerate() {
        for concept in 0..evidence.concepts() {
            for of_pass in 0..evidence.passes() {
                if let Some(rating) = evidence.rating(*student, concept, of_pass) {
                    own.rate(own_index, concept, of_pass, rating)?;
                }
            }
        }
    }
    Ok(trends(&own, pass, TREND_RATE))
}
