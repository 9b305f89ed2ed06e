//! The school year a simulated class lives through.

use super::luck::{Luck, Purpose};

/// A year's plan, in numbers: what the simulator and an outside program have in common.
#[derive(Debug, Clone, PartialEq)]
pub struct YearPlan {
    /// Calendar day number of each school day, rising.
    pub calendar: Vec<i32>,
    /// School day of each concept's first lesson.
    pub taught: Vec<usize>,
    /// First school day on which each concept may be practised.
    pub ready: Vec<usize>,
    /// Rotation day of each concept.
    pub class_slot: Vec<usize>,
    /// Days in the rotation.
    pub rotation: usize,
    /// Prerequisites of each concept.
    pub prerequisites: Vec<Vec<usize>>,
    /// Minutes an evening.
    pub minutes: f64,
}

impl YearPlan {
    /// A made-up year: 180 school days with breaks, `concepts` spread over
    /// the first four fifths of it in five strands, each concept building on
    /// up to two earlier ones of its strand.
    #[must_use]
    pub fn invented(seed: u64, concepts: usize, minutes: f64) -> Self {
        let luck = Luck::new(seed, 0);
        // School days (counted from the first) before which a break lies, and its calendar days.
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
        let taught: Vec<usize> = (0..concepts).map(|c| c * 144 / concepts.max(1)).collect();
        let ready = taught.iter().map(|t| (t + 2).min(179)).collect();
        let class_slot = (0..concepts)
            .map(|c| (c * 7 + c / rotation) % rotation)
            .collect();
        let prerequisites = (0..concepts)
            .map(|c| {
                [5, 10]
                    .into_iter()
                    .filter(|back| c >= *back && luck.chance(c, *back, Purpose::Prerequisite) < 0.6)
                    .map(|back| c - back)
                    .collect()
            })
            .collect();
        Self {
            calendar,
            taught,
            ready,
            class_slot,
            rotation,
            prerequisites,
            minutes,
        }
    }

    /// Concepts reviewed on a school day: the whole year's come round, taught or not.
    pub fn reviewed_on(&self, school_day: usize) -> impl Iterator<Item = usize> + '_ {
        let slot = school_day % self.rotation.max(1);
        self.class_slot
            .iter()
            .enumerate()
            .filter(move |(_, s)| **s == slot)
            .map(|(concept, _)| concept)
    }

    /// Calendar days on which a concept is met in class once it may be practised.
    #[must_use]
    pub fn meetings(&self, concept: usize) -> Vec<i32> {
        (self.ready[concept]..self.calendar.len())
            .filter(|day| day % self.rotation.max(1) == self.class_slot[concept])
            .map(|day| self.calendar[day])
            .collect()
    }
}
