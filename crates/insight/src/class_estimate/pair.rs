//! Two numbers that the model always treats together: the logit of success, and the shift of
//! the ratings beyond it.

use std::ops::{Add, AddAssign, Mul};

/// A value for each of the two.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Pair {
    pub logit: f64,
    pub shift: f64,
}

impl Pair {
    pub fn dot(self, other: Pair) -> f64 {
        self.logit * other.logit + self.shift * other.shift
    }
}

impl Add for Pair {
    type Output = Pair;

    fn add(self, other: Pair) -> Pair {
        Pair {
            logit: self.logit + other.logit,
            shift: self.shift + other.shift,
        }
    }
}

impl AddAssign for Pair {
    fn add_assign(&mut self, other: Pair) {
        *self = *self + other;
    }
}

impl Mul<f64> for Pair {
    type Output = Pair;

    fn mul(self, by: f64) -> Pair {
        Pair {
            logit: self.logit * by,
            shift: self.shift * by,
        }
    }
}

/// A symmetric matrix over the two: a curvature or a covariance.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Block {
    pub logit: f64,
    pub cross: f64,
    pub shift: f64,
}

impl Block {
    /// The matrix without a link between the two.
    pub fn diagonal(of: Pair) -> Self {
        Self {
            logit: of.logit,
            cross: 0.0,
            shift: of.shift,
        }
    }

    pub fn times(self, by: Pair) -> Pair {
        Pair {
            logit: self.logit * by.logit + self.cross * by.shift,
            shift: self.cross * by.logit + self.shift * by.shift,
        }
    }

    /// The variance of the sum weighed by `by`, if this is a covariance.
    pub fn form(self, by: Pair) -> f64 {
        by.dot(self.times(by))
    }

    pub fn inverse(self) -> Self {
        let determinant = self.logit * self.shift - self.cross * self.cross;
        Self {
            logit: self.shift / determinant,
            cross: -self.cross / determinant,
            shift: self.logit / determinant,
        }
    }
}

impl Add for Block {
    type Output = Block;

    fn add(self, other: Block) -> Block {
        Block {
            logit: self.logit + other.logit,
            cross: self.cross + other.cross,
            shift: self.shift + other.shift,
        }
    }
}

impl AddAssign for Block {
    fn add_assign(&mut self, other: Block) {
        *self = *self + other;
    }
}

/// The covariance of one pair with another; the rows are those of the first.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Link {
    /// Of its logit with both of the other.
    pub logit: Pair,
    /// Of its shift with both of the other.
    pub shift: Pair,
}

impl Link {
    /// What the link adds to the covariance of the sum of both pairs.
    pub fn both_ways(self) -> Block {
        Block {
            logit: 2.0 * self.logit.logit,
            cross: self.logit.shift + self.shift.logit,
            shift: 2.0 * self.shift.shift,
        }
    }

    /// The covariance of the first pair with the other's logit.
    pub fn with_logit(self) -> Pair {
        Pair {
            logit: self.logit.logit,
            shift: self.shift.logit,
        }
    }
}

/// A pair for the class, for each student and for each concept.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Effects {
    pub class: Pair,
    pub students: Vec<Pair>,
    pub concepts: Vec<Pair>,
}

impl Effects {
    pub fn zero(students: usize, concepts: usize) -> Self {
        Self {
            class: Pair::default(),
            students: vec![Pair::default(); students],
            concepts: vec![Pair::default(); concepts],
        }
    }

    /// The sum for a student on a concept; a number outside the class adds nothing.
    pub fn cell(&self, student: usize, concept: usize) -> Pair {
        let of = |list: &[Pair], at: usize| list.get(at).copied().unwrap_or_default();
        self.class + of(&self.students, student) + of(&self.concepts, concept)
    }

    /// All pairs: class, students, concepts.
    pub fn pairs(&self) -> impl Iterator<Item = &Pair> {
        std::iter::once(&self.class)
            .chain(&self.students)
            .chain(&self.concepts)
    }

    /// All pairs, to be changed.
    pub fn pairs_mut(&mut self) -> impl Iterator<Item = &mut Pair> {
        std::iter::once(&mut self.class)
            .chain(&mut self.students)
            .chain(&mut self.concepts)
    }
}
