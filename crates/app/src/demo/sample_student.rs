//! A sample student, whose true knowledge is known so that the board can be compared with it.
//!
//! The model is on the logit scale. A concept has a difficulty, a student an ability. Knowledge
//! of a concept = ability - difficulty + gains from lessons and practice - what is forgotten.
//! Every lesson and every exercise adds a gain, which is smaller if more is there already. Gains
//! decay with a half-life that doubles with every five meetings. An answer is right with the
//! logistic probability of the knowledge, and with a higher one after help. A rating shows the
//! knowledge with noise and with the student's own bias; children overrate themselves more often
//! than not (Destan & Roebers 2015). We chose the numbers so that a class looks plausible; they
//! are not fitted to data.

use chrono::NaiveDate;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::collections::BTreeMap;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// The gain from a meeting, if nothing is there yet.
const STEP: f64 = 0.45;
/// The first half-life of gains.
const HALF_LIFE_DAYS: f64 = 30.0;
/// How much harder a concept is that is hard on purpose.
const PLANTED: f64 = 2.4;
/// The share of a gain that students get on such a concept.
const PLANTED_PACE: f64 = 0.3;
/// The share of a gain that an exercise gives.
const EXERCISE_SHARE: f64 = 0.4;
/// What the sample class gains where a concept is taught again.
const TAUGHT_AGAIN: f64 = 2.0;
/// How much weaker the student is who is sure and wrong, and how much surer.
const SURE_AND_WRONG: (f64, f64) = (1.2, 2.4);
/// The share of wrong results that students mark as right.
const LENIENT: f64 = 0.08;

/// How hard each concept of a class is.
#[derive(Debug, Clone)]
pub struct Difficulties {
    by_concept: BTreeMap<String, f64>,
    planted: Vec<String>,
}

/// Draws from a normal distribution, approximately, as the sum of twelve uniform draws: the same
/// on every machine.
fn normal(rng: &mut ChaCha8Rng) -> f64 {
    (0..12).map(|_| rng.random::<f64>()).sum::<f64>() - 6.0
}

fn logistic(x: f64) -> f64 {
    1.0 / (1.0 + (-x).exp())
}

impl Difficulties {
    /// Draws the difficulties; those of `planted` are far higher.
    #[must_use]
    pub fn draw<'a>(
        concepts: impl Iterator<Item = &'a str>,
        planted: &[String],
        seed: u64,
    ) -> Self {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        Self {
            by_concept: concepts
                .map(|concept| {
                    let extra = if planted.iter().any(|p| p == concept) {
                        PLANTED
                    } else {
                        0.0
                    };
                    (concept.to_owned(), 0.5 * normal(&mut rng) - 1.3 + extra)
                })
                .collect(),
            planted: planted.to_vec(),
        }
    }
}

impl Difficulties {
    /// The hardest of some concepts, without those that are hard on purpose.
    #[must_use]
    pub fn hardest<'a>(&self, of: impl Iterator<Item = &'a str>) -> Option<&'a str> {
        of.filter(|concept| !self.planted.iter().any(|planted| planted == concept))
            .max_by(|a, b| {
                let hard = |concept: &str| self.by_concept.get(concept).copied().unwrap_or(0.0);
                hard(a).total_cmp(&hard(b))
            })
    }
}

#[derive(Debug, Clone, Default)]
struct Added {
    amount: f64,
    meetings: u32,
    on: Option<NaiveDate>,
}

/// A sample student.
#[derive(Debug, Clone)]
pub struct SampleStudent {
    ability: f64,
    bias: f64,
    rng: ChaCha8Rng,
    added: BTreeMap<String, Added>,
}

impl SampleStudent {
    /// Draws a student.
    #[must_use]
    pub fn draw(seed: u64) -> Self {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        Self {
            ability: 0.6 * normal(&mut rng),
            bias: 0.35 + 0.5 * normal(&mut rng),
            rng,
            added: BTreeMap::new(),
        }
    }

    /// The true probability of a right answer on a date.
    #[must_use]
    pub fn knows(&self, concept: &str, class: &Difficulties, date: NaiveDate) -> f64 {
        logistic(self.logit(concept, class, date))
    }

    fn logit(&self, concept: &str, class: &Difficulties, date: NaiveDate) -> f64 {
        let difficulty = class.by_concept.get(concept).copied().unwrap_or(0.0);
        self.ability - difficulty - 1.0 + self.left(concept, date)
    }

    fn left(&self, concept: &str, date: NaiveDate) -> f64 {
        self.added.get(concept).map_or(0.0, |added| {
            #[expect(clippy::cast_precision_loss, reason = "a few hundred days")]
            let days = added.on.map_or(0, |on| (date - on).num_days()).max(0) as f64;
            let half_life = HALF_LIFE_DAYS * 2_f64.powf(f64::from(added.meetings) / 5.0);
            added.amount * 0.5_f64.powf(days / half_life)
        })
    }

    fn meet(&mut self, concept: &str, class: &Difficulties, date: NaiveDate, share: f64) {
        let left = self.left(concept, date);
        let pace = if class.planted.iter().any(|p| p == concept) {
            PLANTED_PACE
        } else {
            1.0
        };
        let added = self.added.entry(concept.to_owned()).or_default();
        added.amount = left + pace * share * STEP / (1.0 + 0.5 * left);
        added.meetings += 1;
        added.on = Some(date);
    }

    /// Has the first lesson on a concept.
    pub fn lesson(&mut self, concept: &str, class: &Difficulties, date: NaiveDate) {
        self.meet(concept, class, date, 2.0);
    }

    /// Is taught a concept again.
    pub fn is_taught_again(&mut self, concept: &str, date: NaiveDate) {
        let left = self.left(concept, date);
        let added = self.added.entry(concept.to_owned()).or_default();
        added.amount = left + TAUGHT_AGAIN;
        added.meetings += 1;
        added.on = Some(date);
    }

    /// The same student, but sure and wrong.
    #[must_use]
    pub fn sure_and_wrong(self) -> Self {
        Self {
            ability: self.ability - SURE_AND_WRONG.0,
            bias: self.bias + SURE_AND_WRONG.1,
            ..self
        }
    }

    /// Reviews a concept in class, and returns the outcome that the student marks.
    pub fn review(&mut self, concept: &str, class: &Difficulties, date: NaiveDate) -> Outcome {
        let right = self.rng.random_bool(self.knows(concept, class, date));
        self.meet(concept, class, date, 0.5);
        if self.rng.random_bool(0.04) {
            Outcome::NotDone
        } else if right || self.rng.random_bool(LENIENT) {
            Outcome::Right
        } else {
            Outcome::Wrong
        }
    }

    /// Rates a concept.
    pub fn rate(&mut self, concept: &str, class: &Difficulties, date: NaiveDate) -> Confidence {
        let felt = self.logit(concept, class, date) + self.bias + 0.8 * normal(&mut self.rng);
        match felt {
            f if f < -0.7 => Confidence::NotYet,
            f if f < 0.6 => Confidence::WithHelp,
            f if f < 2.0 => Confidence::OnMyOwn,
            _ => Confidence::CouldTeach,
        }
    }

    /// Answers an exercise, and returns whether the answer is right. After a hint or a first try it
    /// is right more often.
    pub fn answer(
        &mut self,
        concept: &str,
        class: &Difficulties,
        date: NaiveDate,
        helped: bool,
    ) -> bool {
        let lift = if helped { 1.0 } else { 0.0 };
        let probability = logistic(self.logit(concept, class, date) + lift);
        let right = self.rng.random_bool(probability);
        self.meet(concept, class, date, EXERCISE_SHARE);
        right
    }

    /// Returns true with this probability.
    pub fn decides(&mut self, probability: f64) -> bool {
        self.rng.random_bool(probability.clamp(0.0, 1.0))
    }

    /// Draws a whole number below `most`; 0 if `most` is 0.
    pub fn picks(&mut self, most: u32) -> u32 {
        if most == 0 {
            0
        } else {
            self.rng.random_range(0..most)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn planted_concepts_are_known_less_and_practice_helps() {
        let concepts = ["a", "b", "c", "d"];
        let class = Difficulties::draw(concepts.into_iter(), &["c".to_owned()], 3);
        let date: NaiveDate = "2026-10-01".parse().unwrap();
        let (mut weak, mut other, mut practised) = (0.0, 0.0, 0.0);
        for seed in 0..200 {
            let mut student = SampleStudent::draw(seed);
            for concept in concepts {
                student.lesson(concept, &class, date);
            }
            weak += student.knows("c", &class, date);
            other += (student.knows("a", &class, date) + student.knows("b", &class, date)) / 2.0;
            for _ in 0..5 {
                student.answer("c", &class, date, false);
            }
            practised += student.knows("c", &class, date);
        }
        assert!(weak / 200.0 < other / 200.0 - 0.2, "{weak} {other}");
        assert!(practised > weak + 2.0, "{practised} {weak}");
    }

    #[test]
    fn what_was_learnt_fades_and_the_same_seed_gives_the_same_student() {
        let class = Difficulties::draw(["a"].into_iter(), &[], 1);
        let day = |d: &str| -> NaiveDate { d.parse().unwrap() };
        let mut student = SampleStudent::draw(9);
        student.lesson("a", &class, day("2026-10-01"));
        assert!(
            student.knows("a", &class, day("2027-02-01"))
                < student.knows("a", &class, day("2026-10-02"))
        );
        let (mut one, mut two) = (SampleStudent::draw(5), SampleStudent::draw(5));
        for _ in 0..20 {
            assert_eq!(
                one.rate("a", &class, day("2026-10-01")),
                two.rate("a", &class, day("2026-10-01"))
            );
        }
    }
}
