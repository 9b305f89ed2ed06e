//! The reports of a class by students, concepts and passes.
//!
//! Students, concepts and passes are numbered from 0. The caller keeps the lists of students and
//! concepts, and maps dates to passes. Missing reports are normal.

use surefoot_catalogue::rating::Confidence;
use thiserror::Error;

/// Why a report is refused.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum EvidenceError {
    /// A student, concept or pass beyond the size of the class.
    #[error("{what} {found} does not exist: there are {count}, numbered from 0")]
    OutOfRange {
        /// "student", "concept" or "pass".
        what: &'static str,
        /// The number given.
        found: usize,
        /// How many there are.
        count: usize,
    },
    /// More cells than a class can have.
    #[error("{students} students, {concepts} concepts and {passes} passes are too many")]
    TooLarge {
        /// Students.
        students: usize,
        /// Concepts.
        concepts: usize,
        /// Passes.
        passes: usize,
    },
}

/// Cells (students × concepts × passes) at most: a hundred times those of 35 students with 160
/// concepts and 18 passes.
const MOST_CELLS: usize = 10_000_000;

/// Practice answers of one student on one concept within one pass.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PracticeCount {
    /// Student, from 0.
    pub student: usize,
    /// Concept, from 0.
    pub concept: usize,
    /// Pass, from 0.
    pub pass: usize,
    /// Right answers.
    pub right: u32,
    /// Wrong answers.
    pub wrong: u32,
}

/// What a student reported on a concept within one pass.
#[derive(Debug, Clone, Copy, Default)]
struct Report {
    rating: Option<Confidence>,
    result: Option<bool>,
}

/// All reports of a class.
#[derive(Debug, Clone)]
pub struct Evidence {
    students: usize,
    concepts: usize,
    passes: usize,
    /// By student, then concept, then pass.
    reports: Vec<Report>,
    practice: Vec<PracticeCount>,
}

impl Evidence {
    /// A class without a report.
    ///
    /// # Errors
    /// Returns [`EvidenceError::TooLarge`] above ten million cells.
    pub fn new(students: usize, concepts: usize, passes: usize) -> Result<Self, EvidenceError> {
        let cells = students
            .checked_mul(concepts)
            .and_then(|n| n.checked_mul(passes))
            .filter(|n| *n <= MOST_CELLS)
            .ok_or(EvidenceError::TooLarge {
                students,
                concepts,
                passes,
            })?;
        Ok(Self {
            students,
            concepts,
            passes,
            reports: vec![Report::default(); cells],
            practice: Vec::new(),
        })
    }

    /// Number of students.
    #[must_use]
    pub fn students(&self) -> usize {
        self.students
    }

    /// Number of concepts.
    #[must_use]
    pub fn concepts(&self) -> usize {
        self.concepts
    }

    /// Number of passes.
    #[must_use]
    pub fn passes(&self) -> usize {
        self.passes
    }

    /// Stores a rating. A later one of the same student, concept and pass replaces it.
    pub fn rate(
        &mut self,
        student: usize,
        concept: usize,
        pass: usize,
        rating: Confidence,
    ) -> Result<(), EvidenceError> {
        let place = self.place_mut(student, concept, pass)?;
        place.rating = Some(rating);
        Ok(())
    }

    /// Stores a result that the student marked or that a teacher recorded after a group.
    /// A later one of the same student, concept and pass replaces it.
    pub fn mark(
        &mut self,
        student: usize,
        concept: usize,
        pass: usize,
        right: bool,
    ) -> Result<(), EvidenceError> {
        let place = self.place_mut(student, concept, pass)?;
        place.result = Some(right);
        Ok(())
    }

    /// Adds practice answers.
    pub fn practise(&mut self, count: PracticeCount) -> Result<(), EvidenceError> {
        self.place_mut(count.student, count.concept, count.pass)?;
        if count.right > 0 || count.wrong > 0 {
            self.practice.push(count);
        }
        Ok(())
    }

    /// The rating of a student on a concept in a pass, if there is one.
    #[must_use]
    pub fn rating(&self, student: usize, concept: usize, pass: usize) -> Option<Confidence> {
        self.report(student, concept, pass)?.rating
    }

    /// The result of a student on a concept in a pass, if there is one.
    #[must_use]
    pub fn result(&self, student: usize, concept: usize, pass: usize) -> Option<bool> {
        self.report(student, concept, pass)?.result
    }

    /// All practice answers, in the order in which they were added.
    #[must_use]
    pub fn practice(&self) -> &[PracticeCount] {
        &self.practice
    }

    /// The last self-rating of a student on a concept up to `pass`.
    #[must_use]
    pub fn last_rating(&self, student: usize, concept: usize, pass: usize) -> Option<Confidence> {
        (0..self.passes.min(pass.saturating_add(1)))
            .rev()
            .find_map(|t| self.rating(student, concept, t))
    }

    fn place(&self, student: usize, concept: usize, pass: usize) -> usize {
        (student * self.concepts + concept) * self.passes + pass
    }

    fn report(&self, student: usize, concept: usize, pass: usize) -> Option<&Report> {
        if student >= self.students || concept >= self.concepts || pass >= self.passes {
            return None;
        }
        self.reports.get(self.place(student, concept, pass))
    }

    fn place_mut(
        &mut self,
        student: usize,
        concept: usize,
        pass: usize,
    ) -> Result<&mut Report, EvidenceError> {
        let students = self.students;
        for (what, found, count) in [
            ("student", student, students),
            ("concept", concept, self.concepts),
            ("pass", pass, self.passes),
        ] {
            if found >= count {
                return Err(EvidenceError::OutOfRange { what, found, count });
            }
        }
        let place = self.place(student, concept, pass);
        self.reports
            .get_mut(place)
            .ok_or(EvidenceError::OutOfRange {
                what: "student",
                found: student,
                count: students,
            })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_outside_the_class_is_refused_by_name() {
        let mut class = Evidence::new(2, 3, 4).unwrap();
        assert_eq!(
            class.rate(2, 0, 0, Confidence::NotYet),
            Err(EvidenceError::OutOfRange {
                what: "student",
                found: 2,
                count: 2
            })
        );
        assert!(class.mark(0, 3, 0, true).is_err());
        class.rate(1, 2, 1, Confidence::WithHelp).unwrap();
        class.rate(1, 2, 3, Confidence::OnMyOwn).unwrap();
        assert_eq!(class.last_rating(1, 2, 2), Some(Confidence::WithHelp));
        assert_eq!(class.last_rating(1, 2, 99), Some(Confidence::OnMyOwn));
        assert_eq!(class.last_rating(0, 0, 3), None);
        assert!(Evidence::new(usize::MAX, 2, 1).is_err());
    }
}
