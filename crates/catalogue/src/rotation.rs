//! Which concept is on which day of the rotation, and in which phase.

use crate::calendar::SchoolYear;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use thiserror::Error;
use ts_rs::TS;

/// The longest rotation, in school days.
pub const LONGEST_ROTATION_DAYS: usize = 20;

/// Length of the practice phase in passes: the pass of the first lesson and the two after
/// it. Common practice; no published source.
pub const PRACTICE_PASSES: usize = 3;

/// Why a rotation was refused.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum RotationError {
    /// The number of days is not between 1 and [`LONGEST_ROTATION_DAYS`].
    #[error("a rotation has 1 to {most} days, not {found}")]
    Length {
        /// Days as given.
        found: usize,
        /// [`LONGEST_ROTATION_DAYS`].
        most: usize,
    },
    /// A concept is in the rotation more than once.
    #[error("{concept} is in the rotation more than once")]
    Twice {
        /// The concept's id.
        concept: String,
    },
}

/// The place of a school day in the rotation.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
pub struct Position {
    /// Complete passes before it.
    pub pass: usize,
    /// Day of the rotation, from 0.
    pub day: usize,
}

/// Where a concept is between its first lesson and the end of the year.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Phase {
    /// Before its first lesson, when "Not yet" is expected.
    Preview,
    /// The [`PRACTICE_PASSES`] passes from the first lesson on.
    Practice,
    /// After the practice phase.
    Review,
}

/// The days of the rotation, each with its concepts in the order of the review.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Rotation<C> {
    days: Vec<Vec<C>>,
}

impl<C: Ord + Clone + ToString> Rotation<C> {
    /// Makes a rotation and checks it.
    pub fn new(days: Vec<Vec<C>>) -> Result<Self, RotationError> {
        if days.is_empty() || days.len() > LONGEST_ROTATION_DAYS {
            return Err(RotationError::Length {
                found: days.len(),
                most: LONGEST_ROTATION_DAYS,
            });
        }
        let mut seen = BTreeSet::new();
        for concept in days.iter().flatten() {
            if !seen.insert(concept) {
                return Err(RotationError::Twice {
                    concept: concept.to_string(),
                });
            }
        }
        Ok(Self { days })
    }

    /// Makes a balanced rotation of `concepts`, each with its group (a strand). A day keeps
    /// the order of `concepts`.
    ///
    /// Deals the concepts out to the days in turn, group after group, the largest first.
    /// Thus the sizes of the days differ by at most one, and so do the numbers of concepts
    /// that a group has on each day.
    pub fn suggest<G: Ord>(concepts: &[(C, G)], days: usize) -> Result<Self, RotationError> {
        if days == 0 || days > LONGEST_ROTATION_DAYS {
            return Err(RotationError::Length {
                found: days,
                most: LONGEST_ROTATION_DAYS,
            });
        }
        let mut groups: BTreeMap<&G, Vec<usize>> = BTreeMap::new();
        for (index, (_, group)) in concepts.iter().enumerate() {
            groups.entry(group).or_default().push(index);
        }
        let mut dealt: Vec<Vec<usize>> = groups.into_values().collect();
        dealt.sort_by_key(|group| std::cmp::Reverse(group.len()));
        let dealt: Vec<usize> = dealt.into_iter().flatten().collect();
        let day = |first: usize| {
            let mut places: Vec<usize> = dealt.iter().skip(first).step_by(days).copied().collect();
            places.sort_unstable();
            let concepts = places.into_iter().filter_map(|place| concepts.get(place));
            concepts.map(|(concept, _)| concept.clone()).collect()
        };
        Self::new((0..days).map(day).collect())
    }

    /// The days in order.
    #[must_use]
    pub fn days(&self) -> &[Vec<C>] {
        &self.days
    }

    /// The days, moved out.
    #[must_use]
    pub fn into_days(self) -> Vec<Vec<C>> {
        self.days
    }

    /// The number of days.
    #[must_use]
    pub fn day_count(&self) -> usize {
        self.days.len()
    }

    /// The day of a concept, from 0.
    #[must_use]
    pub fn day_of(&self, concept: &C) -> Option<usize> {
        self.days.iter().position(|day| day.contains(concept))
    }

    /// Pass and day of a school day; `None` on a day without school.
    #[must_use]
    pub fn position(&self, year: &SchoolYear, date: NaiveDate) -> Option<Position> {
        year.school_day_number(date)
            .map(|number| self.position_of_number(number))
    }

    /// Pass and day of the school day with this number, from 0.
    #[must_use]
    pub fn position_of_number(&self, school_day: usize) -> Position {
        Position {
            pass: school_day / self.days.len(),
            day: school_day % self.days.len(),
        }
    }

    /// The pass that `date` falls in, with or without school; 0 before the year.
    #[must_use]
    pub fn pass_on(&self, year: &SchoolYear, date: NaiveDate) -> usize {
        let through = year.school_days_before(date) + usize::from(year.is_school_day(date));
        through.saturating_sub(1) / self.days.len()
    }

    /// The number of passes in the year; the last one may be incomplete.
    #[must_use]
    pub fn pass_count(&self, year: &SchoolYear) -> usize {
        year.school_days().count().div_ceil(self.days.len())
    }

    /// The concepts of a date in the order of the review; none on a day without school.
    #[must_use]
    pub fn concepts_on(&self, year: &SchoolYear, date: NaiveDate) -> &[C] {
        self.position(year, date)
            .and_then(|at| self.days.get(at.day))
            .map_or(&[], Vec::as_slice)
    }

    /// The dates of the year on which a concept is reviewed, in order.
    #[must_use]
    pub fn meetings(&self, year: &SchoolYear, concept: &C) -> Vec<NaiveDate> {
        let day = self.day_of(concept);
        year.school_days()
            .enumerate()
            .filter(|(number, _)| Some(number % self.days.len()) == day)
            .map(|(_, date)| date)
            .collect()
    }

    /// The phase of a concept on `date`, by the date of its first lesson.
    #[must_use]
    pub fn phase(
        &self,
        year: &SchoolYear,
        taught_from: Option<NaiveDate>,
        date: NaiveDate,
    ) -> Phase {
        match taught_from {
            None => Phase::Preview,
            Some(first) if date < first => Phase::Preview,
            Some(first) => {
                let passes = self
                    .pass_on(year, date)
                    .saturating_sub(self.pass_on(year, first));
                if passes < PRACTICE_PASSES {
                    Phase::Practice
                } else {
                    Phase::Review
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calendar::monday_to_friday;
    use proptest::prelude::*;

    fn date(text: &str) -> NaiveDate {
        text.parse().unwrap()
    }

    fn year() -> SchoolYear {
        SchoolYear::new(
            date("2026-08-31"),
            date("2027-05-07"),
            monday_to_friday(),
            BTreeSet::new(),
        )
        .unwrap()
    }

    fn numbered(concepts: usize, days: usize) -> Rotation<String> {
        let named: Vec<_> = (0..concepts).map(|c| (format!("c{c:03}"), c % 5)).collect();
        Rotation::suggest(&named, days).unwrap()
    }

    /// 180 school days are 18 passes of 10 days (common practice).
    #[test]
    fn a_year_of_180_days_is_18_passes_of_10() {
        let rotation = numbered(60, 10);
        assert_eq!(rotation.pass_count(&year()), 18);
        let last = year().school_days().last().unwrap();
        assert_eq!(
            rotation.position(&year(), last),
            Some(Position { pass: 17, day: 9 })
        );
        assert_eq!(
            rotation.position(&year(), date("2026-08-31")),
            Some(Position { pass: 0, day: 0 })
        );
        assert_eq!(
            rotation.position(&year(), date("2026-09-14")),
            Some(Position { pass: 1, day: 0 })
        );
        assert_eq!(rotation.position(&year(), date("2026-09-13")), None);
        assert_eq!(rotation.pass_on(&year(), date("2026-09-13")), 0);
    }

    #[test]
    fn phases_follow_the_first_lesson() {
        let rotation = numbered(60, 10);
        let taught = Some(date("2026-09-14"));
        let phase = |d: &str| rotation.phase(&year(), taught, date(d));
        assert_eq!(phase("2026-09-11"), Phase::Preview);
        assert_eq!(phase("2026-09-14"), Phase::Practice);
        assert_eq!(phase("2026-10-23"), Phase::Practice);
        assert_eq!(phase("2026-10-26"), Phase::Review);
        assert_eq!(
            rotation.phase(&year(), None, date("2027-01-04")),
            Phase::Preview
        );
    }

    #[test]
    fn bad_rotations_are_refused_by_reason() {
        assert!(matches!(
            Rotation::<String>::new(vec![]),
            Err(RotationError::Length { found: 0, .. })
        ));
        assert!(matches!(
            Rotation::<String>::new(vec![vec![]; 21]),
            Err(RotationError::Length { found: 21, .. })
        ));
        assert_eq!(
            Rotation::new(vec![vec!["a".to_owned()], vec!["a".to_owned()]]),
            Err(RotationError::Twice {
                concept: "a".into()
            })
        );
    }

    #[test]
    fn a_concept_is_met_once_in_every_pass() {
        let rotation = numbered(60, 10);
        let concept = rotation.days()[2][0].clone();
        let all = rotation.meetings(&year(), &concept);
        assert_eq!(all.len(), 18);
        assert_eq!(all[..2], [date("2026-09-02"), date("2026-09-16")]);
        assert!(
            rotation
                .meetings(&year(), &"elsewhere".to_owned())
                .is_empty()
        );
    }

    proptest! {
        #[test]
        fn a_suggested_rotation_is_balanced(strands in proptest::collection::vec(0_u8..6, 0..160), days in 1_usize..=20) {
            let concepts: Vec<_> = strands.iter().enumerate().map(|(i, s)| (format!("c{i:03}"), *s)).collect();
            let rotation = Rotation::suggest(&concepts, days).unwrap();
            let sizes: Vec<_> = rotation.days().iter().map(Vec::len).collect();
            prop_assert!(sizes.iter().max().unwrap() - sizes.iter().min().unwrap() <= 1);
            let mut all: Vec<_> = rotation.days().iter().flatten().cloned().collect();
            all.sort();
            let expected: Vec<_> = concepts.iter().map(|(c, _)| c.clone()).collect();
            prop_assert_eq!(all, expected);
            for strand in 0..6 {
                let of: BTreeSet<_> = concepts.iter().filter(|(_, s)| *s == strand).map(|(c, _)| c).collect();
                let shares: Vec<_> = rotation.days().iter().map(|d| d.iter().filter(|c| of.contains(c)).count()).collect();
                prop_assert!(shares.iter().max().unwrap() - shares.iter().min().unwrap() <= 1);
            }
        }
    }
}
