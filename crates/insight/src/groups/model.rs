//! The problem of planning groups, and the validity and worth of a plan.

use std::collections::{BTreeMap, BTreeSet};
use thiserror::Error;

/// The needs of the students, and the rules of the groups.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GroupProblem {
    /// Worth of placing a student (outer) on a concept; 0 forbids it.
    pub weights: Vec<Vec<u32>>,
    /// Number of concepts.
    pub concepts: usize,
    /// Number of slots.
    pub slots: usize,
    /// Groups in a slot at most.
    pub groups_per_slot: usize,
    /// Students in a group at least.
    pub size_min: usize,
    /// Students in a group at most.
    pub size_max: usize,
    /// Groups on one concept in one slot at most.
    pub copies: usize,
    /// (concept, concept that builds on it).
    pub prerequisites: Vec<(usize, usize)>,
    /// Pairs of students who must not be in one group.
    pub apart: Vec<(usize, usize)>,
    /// Pairs of students who, if both are present, are in one group or in none.
    pub join: Vec<(usize, usize)>,
    /// (student, slot) pairs of absences.
    pub absent: Vec<(usize, usize)>,
    /// Extra worth of each student with a place.
    pub coverage: u32,
}

/// A group of a plan.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct PlannedGroup {
    /// Slot, from 0.
    pub slot: usize,
    /// Concept, from 0.
    pub concept: usize,
    /// Students, ascending.
    pub members: Vec<usize>,
}

/// Why a problem cannot be planned.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum GroupProblemError {
    /// A number is outside the class.
    #[error("{what} {found} does not exist: there are {count}, numbered from 0")]
    OutOfRange {
        /// "student", "concept" or "slot".
        what: &'static str,
        /// The number given.
        found: usize,
        /// How many there are.
        count: usize,
    },
    /// A student has not exactly one weight for each concept.
    #[error("student {student} has {found} weights for {concepts} concepts")]
    WeightCount {
        /// Student, from 0.
        student: usize,
        /// Weights given.
        found: usize,
        /// Concepts.
        concepts: usize,
    },
    /// The smallest size is 0 or above the largest.
    #[error("groups of {size_min} to {size_max} students cannot be")]
    Sizes {
        /// The smallest size.
        size_min: usize,
        /// The largest size.
        size_max: usize,
    },
    /// More students × concepts × slots than can be planned in reasonable time.
    #[error("{cells} possible placements are too many to plan")]
    TooLarge {
        /// Students × concepts × slots.
        cells: usize,
    },
}

/// Students × concepts × slots at most.
const MOST_CELLS: usize = 1_000_000;

/// A rule that an edited plan breaks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Violation {
    /// A slot, concept or student that does not exist.
    Unknown(PlannedGroup),
    /// A group with too few or too many members.
    Size(PlannedGroup),
    /// A student who does not need the concept.
    NotNeeded {
        /// Student.
        student: usize,
        /// Concept.
        concept: usize,
    },
    /// A student who is absent in that slot.
    Absent {
        /// Student.
        student: usize,
        /// Slot.
        slot: usize,
    },
    /// A student in two groups at the same time.
    TwiceInSlot {
        /// Student.
        student: usize,
        /// Slot.
        slot: usize,
    },
    /// A student twice on the same concept.
    TwiceOnConcept {
        /// Student.
        student: usize,
        /// Concept.
        concept: usize,
    },
    /// Two students in one group who must be apart.
    Together(usize, usize),
    /// Two joined students, both present, in different groups.
    Split {
        /// The pair.
        pair: (usize, usize),
        /// Slot.
        slot: usize,
    },
    /// Too many groups in a slot.
    TooManyGroups {
        /// Slot.
        slot: usize,
    },
    /// Too many groups on one concept in a slot.
    TooManyCopies {
        /// Slot.
        slot: usize,
        /// Concept.
        concept: usize,
    },
}

impl GroupProblem {
    /// Number of students.
    #[must_use]
    pub fn students(&self) -> usize {
        self.weights.len()
    }

    /// The worth of placing a student on a concept; `None` outside the class.
    pub(super) fn weight(&self, student: usize, concept: usize) -> Option<u32> {
        self.weights.get(student)?.get(concept).copied()
    }

    /// Whether the student is present in the slot.
    #[must_use]
    pub fn present(&self, student: usize, slot: usize) -> bool {
        !self.absent.contains(&(student, slot))
    }

    /// Checks numbers and sizes.
    pub fn check(&self) -> Result<(), GroupProblemError> {
        let inside = |what, found, count| {
            if found < count {
                Ok(())
            } else {
                Err(GroupProblemError::OutOfRange { what, found, count })
            }
        };
        if self.size_min == 0 || self.size_min > self.size_max {
            return Err(GroupProblemError::Sizes {
                size_min: self.size_min,
                size_max: self.size_max,
            });
        }
        let cells = self
            .students()
            .saturating_mul(self.concepts)
            .saturating_mul(self.slots);
        if cells > MOST_CELLS {
            return Err(GroupProblemError::TooLarge { cells });
        }
        for (student, own) in self.weights.iter().enumerate() {
            if own.len() != self.concepts {
                return Err(GroupProblemError::WeightCount {
                    student,
                    found: own.len(),
                    concepts: self.concepts,
                });
            }
        }
        for &(a, b) in self.apart.iter().chain(&self.join) {
            inside("student", a, self.students())?;
            inside("student", b, self.students())?;
        }
        for &(before, after) in &self.prerequisites {
            inside("concept", before, self.concepts)?;
            inside("concept", after, self.concepts)?;
        }
        for &(student, slot) in &self.absent {
            inside("student", student, self.students())?;
            inside("slot", slot, self.slots)?;
        }
        Ok(())
    }

    /// The worth of a plan. Placements outside the class count nothing.
    #[must_use]
    pub fn value(&self, groups: &[PlannedGroup]) -> u64 {
        let mut placed = BTreeSet::new();
        let mut value = 0;
        for group in groups {
            for student in &group.members {
                if let Some(weight) = self.weight(*student, group.concept) {
                    value += u64::from(weight);
                    placed.insert(*student);
                }
            }
        }
        value + u64::from(self.coverage) * placed.len() as u64
    }

    /// The rules that a plan breaks; none for a valid plan.
    #[must_use]
    pub fn violations(&self, groups: &[PlannedGroup]) -> Vec<Violation> {
        let mut wrong = Vec::new();
        let mut seats: BTreeMap<(usize, usize), Vec<usize>> = BTreeMap::new();
        let mut lessons: BTreeMap<(usize, usize), usize> = BTreeMap::new();
        let mut running: BTreeMap<usize, usize> = BTreeMap::new();
        let mut copies: BTreeMap<(usize, usize), usize> = BTreeMap::new();
        for (number, group) in groups.iter().enumerate() {
            if group.slot >= self.slots
                || group.concept >= self.concepts
                || group.members.iter().any(|m| *m >= self.students())
            {
                wrong.push(Violation::Unknown(group.clone()));
                continue;
            }
            if !(self.size_min..=self.size_max).contains(&group.members.len()) {
                wrong.push(Violation::Size(group.clone()));
            }
            *running.entry(group.slot).or_default() += 1;
            *copies.entry((group.slot, group.concept)).or_default() += 1;
            for &student in &group.members {
                if self.weight(student, group.concept) == Some(0) {
                    wrong.push(Violation::NotNeeded {
                        student,
                        concept: group.concept,
                    });
                }
                if !self.present(student, group.slot) {
                    wrong.push(Violation::Absent {
                        student,
                        slot: group.slot,
                    });
                }
                seats.entry((student, group.slot)).or_default().push(number);
                *lessons.entry((student, group.concept)).or_default() += 1;
            }
            for &(a, b) in &self.apart {
                if group.members.contains(&a) && group.members.contains(&b) {
                    wrong.push(Violation::Together(a, b));
                }
            }
        }
        for (&(student, slot), numbers) in &seats {
            if numbers.len() > 1 {
                wrong.push(Violation::TwiceInSlot { student, slot });
            }
        }
        for ((student, concept), times) in lessons {
            if times > 1 {
                wrong.push(Violation::TwiceOnConcept { student, concept });
            }
        }
        for &pair in &self.join {
            for slot in 0..self.slots {
                if self.present(pair.0, slot)
                    && self.present(pair.1, slot)
                    && seats.get(&(pair.0, slot)) != seats.get(&(pair.1, slot))
                {
                    wrong.push(Violation::Split { pair, slot });
                }
            }
        }
        for (slot, number) in running {
            if number > self.groups_per_slot {
                wrong.push(Violation::TooManyGroups { slot });
            }
        }
        for ((slot, concept), number) in copies {
            if number > self.copies {
                wrong.push(Violation::TooManyCopies { slot, concept });
            }
        }
        wrong
    }
}

/// Students who are placed together in a slot.
#[derive(Debug, Clone)]
pub(super) struct Unit {
    /// Students, ascending.
    pub members: Vec<usize>,
    /// Worth on each concept without coverage; 0 forbids it.
    weight: Vec<i64>,
    /// Units of the same slot that must not share a group with this one.
    pub apart: Vec<usize>,
}

/// The units of each slot that can be placed.
#[derive(Debug, Clone)]
pub(super) struct Units {
    slots: Vec<Vec<Unit>>,
}

impl Unit {
    /// The worth on a concept without coverage; 0 forbids it.
    pub fn worth(&self, concept: usize) -> i64 {
        self.weight.get(concept).copied().unwrap_or(0)
    }
}

impl Units {
    /// The units of a slot; none in a slot that does not exist.
    pub fn in_slot(&self, slot: usize) -> &[Unit] {
        self.slots.get(slot).map_or(&[], Vec::as_slice)
    }

    /// The units of every slot, slot by slot.
    pub fn slots(&self) -> impl Iterator<Item = &[Unit]> {
        self.slots.iter().map(Vec::as_slice)
    }

    /// A unit by its number in a slot.
    #[expect(
        clippy::indexing_slicing,
        reason = "numbers of units are counted from `in_slot` of the same slot"
    )]
    pub fn unit(&self, slot: usize, number: usize) -> &Unit {
        &self.slots[slot][number]
    }

    /// Joins present students into units, and drops units that no group can take.
    pub fn of(problem: &GroupProblem) -> Self {
        let slots = (0..problem.slots)
            .map(|slot| Self::join(problem, slot))
            .collect();
        Self { slots }
    }

    fn join(problem: &GroupProblem, slot: usize) -> Vec<Unit> {
        // Joined students share a name: the lowest number among them.
        let mut name: BTreeMap<usize, usize> = (0..problem.students())
            .filter(|student| problem.present(*student, slot))
            .map(|student| (student, student))
            .collect();
        for (a, b) in &problem.join {
            if let (Some(&a), Some(&b)) = (name.get(a), name.get(b)) {
                for label in name.values_mut() {
                    if *label == a || *label == b {
                        *label = a.min(b);
                    }
                }
            }
        }
        let mut members: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
        for (student, name) in name {
            members.entry(name).or_default().push(student);
        }
        let mut units: Vec<Unit> = members
            .into_values()
            .filter(|m| m.len() <= problem.size_max)
            .filter(|m| {
                !problem
                    .apart
                    .iter()
                    .any(|(a, b)| m.contains(a) && m.contains(b))
            })
            .map(|members| {
                let weight = (0..problem.concepts)
                    .map(|c| {
                        // If one student must not be placed, none of the unit may.
                        let weights = members.iter().map(|student| {
                            let weight = problem.weight(*student, c).filter(|weight| *weight > 0);
                            weight.map(i64::from)
                        });
                        weights.sum::<Option<i64>>().unwrap_or(0)
                    })
                    .collect();
                Unit {
                    members,
                    weight,
                    apart: Vec::new(),
                }
            })
            .filter(|unit| unit.weight.iter().any(|w| *w > 0))
            .collect();
        let of_student =
            |units: &[Unit], i: &usize| units.iter().position(|u| u.members.contains(i));
        for (a, b) in &problem.apart {
            if let (Some(a), Some(b)) = (of_student(&units, a), of_student(&units, b)) {
                for (unit, other) in [(a, b), (b, a)] {
                    if let Some(unit) = units.get_mut(unit) {
                        unit.apart.push(other);
                    }
                }
            }
        }
        units
    }
}
