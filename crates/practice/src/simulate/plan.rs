//! The school year of a simulated class.

use super::luck::{Luck, Purpose};

/// A year's plan, in numbers: what the simulator and an outside program have in common.
#[derive(Debug, Clone, PartialEq)]
pub struct YearPlan {
    /// Calendar day number of each school day, rising.
    pub calendar: Vec<i32>,
    /// The concepts, numbered from 0.
    pub concepts: Vec<PlannedConcept>,
    /// Days in the rotation.
    pub rotation: usize,
    /// Minutes an evening.
    pub minutes: f64,
}

/// A concept of the year.
#[derive(Debug, Clone, PartialEq)]
pub struct PlannedConcept {
    /// School day of its first lesson.
    pub taught: usize,
    /// First school day on which it may be practised.
    pub ready: usize,
    /// Its day in the rotation.
    pub rotation_day: usize,
    /// Numbers of the concepts that it builds on.
    pub prerequisites: Vec<usize>,
}

/// A school day of the year.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SchoolDay {
    /// Its number, from 0.
    pub number: usize,
    /// Its calendar day number.
    pub day: i32,
}

impl YearPlan {
    /// Returns a made-up year: 180 school days with breaks, and `concepts` in five strands spread
    /// over its first four fifths. Each builds on up to two earlier ones of its strand.
    #[must_use]
    pub fn invented(seed: u64, concepts: usize, minutes: f64) -> Self {
        let luck = Luck::new(seed, 0);
        // The school day (from the first) before which each break comes, and its calendar days.
        let breaks = [(38, 9), (62, 5), (80, 16), (118, 9), (146, 9)];
        let mut calendar = Vec::with_capacity(180);
        let mut day = 0;
        for school_day in 0..180 {
            if school_day > 0 {
                day += if school_day % 5 == 0 { 3 } else { 1 };
            }
            day += breaks
                .iter()
                .find(|(at, _)| *at == school_day)
                .map_or(0, |(_, days)| *days);
            calendar.push(day);
        }
        let rotation = 10;
        let concepts = (0..concepts)
            .map(|c| {
                let taught = c * 144 / concepts.max(1);
                let builds_on =
                    |back: &usize| c >= *back && luck.draw(c, *back, Purpose::Prerequisite) < 0.6;
                PlannedConcept {
                    taught,
                    ready: (taught + 2).min(179),
                    rotation_day: (c * 7 + c / rotation) % rotation,
                    prerequisites: [5, 10]
                        .into_iter()
                        .filter(builds_on)
                        .map(|back| c - back)
                        .collect(),
                }
            })
            .collect();
        Self {
            calendar,
            concepts,
            rotation,
            minutes,
        }
    }

    /// Returns the school days in order.
    pub fn school_days(&self) -> impl Iterator<Item = SchoolDay> + '_ {
        let days = self.calendar.iter().enumerate();
        days.map(|(number, day)| SchoolDay { number, day: *day })
    }

    /// Returns a concept by its number.
    #[expect(
        clippy::indexing_slicing,
        reason = "concepts are numbered by their places in this plan"
    )]
    #[must_use]
    pub fn concept(&self, number: usize) -> &PlannedConcept {
        &self.concepts[number]
    }

    /// Returns the concepts reviewed on a school day, whether taught or not.
    pub fn reviewed_on(&self, school_day: usize) -> impl Iterator<Item = usize> + '_ {
        let today = school_day % self.rotation.max(1);
        self.concepts
            .iter()
            .enumerate()
            .filter(move |(_, concept)| concept.rotation_day == today)
            .map(|(number, _)| number)
    }

    /// Returns the calendar days of the class meetings with a concept from when it may be
    /// practised.
    #[must_use]
    pub fn meetings(&self, concept: &PlannedConcept) -> Vec<i32> {
        self.school_days()
            .skip(concept.ready)
            .filter(|on| on.number % self.rotation.max(1) == concept.rotation_day)
            .map(|on| on.day)
            .collect()
    }
}
