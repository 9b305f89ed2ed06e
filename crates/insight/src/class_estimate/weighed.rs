//! Step 1: the weight of everything reported, by student and concept.

use super::constants::{
    ENOUGH_ANSWERS, ENOUGH_REPORTERS, HALF_LIFE_PASSES, MOST_AGE, PRACTICE_LIKENESS, RATING_WEIGHT,
    REPORTED_WEIGHT,
};
use crate::evidence::Evidence;
use crate::grid::Grid;
use crate::stats::count;
use std::collections::BTreeMap;

/// The evidence of one student on one concept.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct CellEvidence {
    /// Weight of the ratings, by rating.
    pub ratings: [f64; 4],
    /// Weight of the answers: results and practice.
    pub answers: f64,
    /// Weight of those of them that are right.
    pub right: f64,
    /// Sum of the squared weights of the answers.
    pub answers_squared: f64,
    /// Sum of the squared weights of those that are right.
    pub right_squared: f64,
    /// Mean age in passes, by weight; 0 without evidence.
    pub age: f64,
}

impl CellEvidence {
    /// Whether the student rated the concept.
    pub fn has_ratings(&self) -> bool {
        self.ratings.iter().any(|weight| *weight > 0.0)
    }

    /// Weight of ratings and answers together.
    pub fn weight(&self) -> f64 {
        self.ratings.iter().sum::<f64>() + self.answers
    }

    fn answer(&mut self, weight: f64, squared: f64, share_right: f64) {
        self.answers += weight;
        self.right += weight * share_right;
        self.answers_squared += squared;
        self.right_squared += squared * share_right;
    }

    /// The same evidence, `by` times as heavy.
    fn scaled(&self, by: f64) -> Self {
        Self {
            ratings: self.ratings.map(|weight| weight * by),
            answers: self.answers * by,
            right: self.right * by,
            answers_squared: self.answers_squared * by * by,
            right_squared: self.right_squared * by * by,
            age: self.age,
        }
    }
}

/// The practice answers of a student on a concept in one pass.
#[derive(Debug, Clone, Copy)]
pub(super) struct Practised {
    pub student: usize,
    pub concept: usize,
    pub pass: usize,
    /// What the answers are worth when fresh: less than their number, because they are alike.
    pub worth: f64,
    pub share_right: f64,
}

/// The evidence on a concept over all students.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct ConceptEvidence {
    /// The number of equally heavy occasions with the same information. The class shares the
    /// problem of a pass; each student's practice is an occasion of its own.
    pub occasions: f64,
    /// Mean age in passes, by weight; 0 without evidence.
    pub age: f64,
}

/// Everything reported up to a pass, with its weight.
pub(super) struct Weighed {
    /// The last pass that counts.
    pub last_pass: usize,
    /// By student and concept, as the reports weigh.
    pub plain: Grid<CellEvidence>,
    /// The same as the fit uses it: multiplied by φ of `docs/insight.md`, because faded weights
    /// understate how much a mean of so much evidence tells.
    pub cells: Grid<CellEvidence>,
    pub concepts: Vec<ConceptEvidence>,
    pub practice: Vec<Practised>,
}

impl Weighed {
    /// Whether there are enough answers (results and practice) to know the level of the class:
    /// by weight, and from enough students.
    pub fn level_known(&self) -> bool {
        let of_students = self
            .plain
            .rows()
            .map(|row| row.iter().map(|cell| cell.answers).sum::<f64>());
        let (mut all, mut students) = (0.0, 0);
        for answers in of_students {
            all += answers;
            students += usize::from(answers >= REPORTED_WEIGHT);
        }
        all >= ENOUGH_ANSWERS && students >= ENOUGH_REPORTERS
    }

    /// Whether anybody has rated.
    pub fn has_ratings(&self) -> bool {
        self.plain.cells().iter().any(CellEvidence::has_ratings)
    }
}

/// Passes as a number for the formulas.
pub(super) fn passes_before(last_pass: usize, pass: usize) -> f64 {
    count(last_pass.saturating_sub(pass))
}

/// Sums for the mean age and the number of occasions.
#[derive(Clone, Copy, Default)]
struct Sums {
    weight: f64,
    squared: f64,
    weighted_age: f64,
}

impl Sums {
    fn age(&self) -> f64 {
        if self.weight > 0.0 {
            (self.weighted_age / self.weight).min(MOST_AGE)
        } else {
            0.0
        }
    }
}

/// Weighs everything reported up to `last_pass`.
pub(super) fn weigh(evidence: &Evidence, last_pass: usize) -> Weighed {
    let (students, concepts) = (evidence.students(), evidence.concepts());
    let passes = evidence.passes().min(last_pass.saturating_add(1));
    let fade: Vec<f64> = (0..passes)
        .map(|pass| (-passes_before(last_pass, pass) / HALF_LIFE_PASSES).exp2())
        .collect();
    let practice = practised(evidence, passes);

    let mut plain = Grid::filled(students, concepts, CellEvidence::default());
    let mut ages = Grid::filled(students, concepts, Sums::default());
    let mut of_pass = Grid::filled(concepts, passes, 0.0);
    let mut class = Sums::default();
    for student in 0..students {
        for concept in 0..concepts {
            let cell = &mut plain[(student, concept)];
            let sums = &mut ages[(student, concept)];
            for (pass, fade) in fade.iter().enumerate() {
                let age = passes_before(last_pass, pass);
                let mut note = |weight: f64| {
                    sums.weight += weight;
                    sums.weighted_age += weight * age;
                    class.weight += weight;
                    class.squared += weight * weight;
                    of_pass[(concept, pass)] += weight;
                };
                if let Some(rating) = evidence.rating(student, concept, pass) {
                    let weight = RATING_WEIGHT * fade;
                    *rating.pick_mut(&mut cell.ratings) += weight;
                    note(weight);
                }
                if let Some(right) = evidence.result(student, concept, pass) {
                    cell.answer(*fade, fade * fade, f64::from(u8::from(right)));
                    note(*fade);
                }
            }
        }
    }
    let mut own_occasions = vec![Sums::default(); concepts];
    for &Practised {
        student,
        concept,
        pass,
        worth,
        share_right,
    } in &practice
    {
        let fade = fade.get(pass).copied().unwrap_or_default();
        let (weight, squared) = (fade * worth, fade * fade * worth);
        plain[(student, concept)].answer(weight, squared, share_right);
        let sums = &mut ages[(student, concept)];
        sums.weight += weight;
        sums.weighted_age += weight * passes_before(last_pass, pass);
        class.weight += weight;
        class.squared += squared;
        if let Some(own) = own_occasions.get_mut(concept) {
            own.weight += weight;
            own.squared += weight * weight;
        }
    }

    let concepts = own_occasions
        .iter()
        .enumerate()
        .map(|(concept, own)| {
            let mut sums = *own;
            for pass in 0..passes {
                let shared = of_pass[(concept, pass)];
                sums.weight += shared;
                sums.squared += shared * shared;
            }
            sums.weighted_age = (0..students)
                .map(|student| ages[(student, concept)].weighted_age)
                .sum();
            ConceptEvidence {
                occasions: if sums.squared > 0.0 {
                    sums.weight * sums.weight / sums.squared
                } else {
                    0.0
                },
                age: sums.age(),
            }
        })
        .collect();
    let plain = Grid::build(students, own_occasions.len(), |student, concept| {
        CellEvidence {
            age: ages[(student, concept)].age(),
            ..plain[(student, concept)]
        }
    });
    let heavier = if class.squared > 0.0 {
        class.weight / class.squared
    } else {
        1.0
    };
    let cells = Grid::build(students, own_occasions.len(), |student, concept| {
        plain[(student, concept)].scaled(heavier)
    });
    Weighed {
        last_pass,
        plain,
        cells,
        concepts,
        practice,
    }
}

/// The practice of each student, concept and pass together: the answers of one pass are alike
/// (design effect, Kish 1965, from memory).
fn practised(evidence: &Evidence, passes: usize) -> Vec<Practised> {
    let mut sums: BTreeMap<(usize, usize, usize), (f64, f64)> = BTreeMap::new();
    for count in evidence.practice().iter().filter(|p| p.pass < passes) {
        let sum = sums
            .entry((count.student, count.concept, count.pass))
            .or_default();
        sum.0 += f64::from(count.right);
        sum.1 += f64::from(count.right) + f64::from(count.wrong);
    }
    sums.into_iter()
        .map(|((student, concept, pass), (right, answers))| Practised {
            student,
            concept,
            pass,
            worth: answers / (1.0 + PRACTICE_LIKENESS * (answers - 1.0)),
            share_right: right / answers,
        })
        .collect()
}
