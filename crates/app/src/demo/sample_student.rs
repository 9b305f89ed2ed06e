//! A simulated student whose true knowledge is known: for the sample class and
//! for tests that compare what the board says with what is true.
//!
//! The model, all on the logit scale. A concept has a difficulty, a student an
//! ability; knowledge of a concept is ability − difficulty + what lessons and
//! practice added − what was forgotten. Every lesson and every exercise adds a
//! step that gets smaller with what is already there; what was added decays
//! with a half-life that doubles with every five meetings. An answer is right
//! with the logistic chance of the knowledge, a little better with help. A
//! self-rating reads the knowledge with noise and with the student's own bias;
//! children overrate themselves more often than not (Destan & Roebers 2015).
//! The numbers are ours, chosen to look like a class, not fitted to any.

use chrono::NaiveDate;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::collections::BTreeMap;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// What a first lesson or exercise adds.
const STEP: f64 = 0.45;
/// What was added is halved after so many days, at first.
const HALF_LIFE_DAYS: f64 = 30.0;
/// How much harder a planted weak concept is.
const PLANTED: f64 = 2.4;
/// How much slower it is learnt: a misunderstanding that practice alone does not clear up.
const PLANTED_PACE: f64 = 0.3;
/// What an exercise adds, of a full step.
const EXERCISE_SHARE: f64 = 0.4;
/// Share of wrong results that are marked right.
const LENIENT: f64 = 0.08;

/// How hard each concept of a class is.
#[derive(Debug, Clone)]
pub struct Difficulties {
    by_concept: BTreeMap<String, f64>,
    planted: Vec<String>,
}

/// A normal draw by the sum of twelve uniforms: close enough here, and exact
/// on every machine.
fn normal(chance: &mut ChaCha8Rng) -> f64 {
    (0..12).map(|_| chance.random::<f64>()).sum::<f64>() - 6.0
}

fn logistic(x: f64) -> f64 {
    1.0 / (1.0 + (-x).exp())
}

impl Difficulties {
    /// Draws difficulties; those of `planted` are far above the others.
    #[must_use]
    pub fn draw<'a>(
        concepts: impl Iterator<Item = &'a str>,
        planted: &[String],
        seed: u64,
    ) -> Self {
        let mut chance = ChaCha8Rng::seed_from_u64(seed);
        Self {
            by_concept: concepts
                .map(|concept| {
                    let extra = if planted.iter().any(|p| p == concept) {
                        PLANTED
                    } else {
                        0.0
                    };
                    (concept.to_owned(), 0.5 * normal(&mut chance) - 1.3 + extra)
                })
                .collect(),
            planted: planted.to_vec(),
        }
    }
}

#[derive(Debug, Clone, Default)]
struct Added {
    amount: f64,
    meetings: u32,
    on: Option<NaiveDate>,
}

/// A simulated student.
#[derive(Debug, Clone)]
pub struct Learner {
    ability: f64,
    bias: f64,
    chance: ChaCha8Rng,
    added: BTreeMap<String, Added>,
}

impl Learner {
    /// Draws a student.
    #[must_use]
    pub fn draw(seed: u64) -> Self {
        let mut chance = ChaCha8Rng::seed_from_u64(seed);
        Self {
            ability: 0.6 * normal(&mut chance),
            bias: 0.35 + 0.5 * normal(&mut chance),
            chance,
            added: BTreeMap::new(),
        }
    }

    /// The true chance of a right answer on a date.
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

    /// The concept's first lesson.
    pub fn lesson(&mut self, concept: &str, class: &Difficulties, date: NaiveDate) {
        self.meet(concept, class, date, 2.0);
    }

    /// The day's review of a concept: how it went, as the student marks it.
    pub fn review(&mut self, concept: &str, class: &Difficulties, date: NaiveDate) -> Outcome {
        let right = self.chance.random_bool(self.knows(concept, class, date));
        self.meet(concept, class, date, 0.5);
        if self.chance.random_bool(0.04) {
            Outcome::NotDone
        } else if right || self.chance.random_bool(LENIENT) {
            Outcome::Right
        } else {
            Outcome::Wrong
        }
    }

    /// How the student rates a concept.
    pub fn rate(&mut self, concept: &str, class: &Difficulties, date: NaiveDate) -> Confidence {
        let felt = self.logit(concept, class, date) + self.bias + 0.8 * normal(&mut self.chance);
        match felt {
            f if f < -0.7 => Confidence::NotYet,
            f if f < 0.6 => Confidence::WithHelp,
            f if f < 2.0 => Confidence::OnMyOwn,
            _ => Confidence::CouldTeach,
        }
    }

    /// Whether an exercise is answered right; a second try or a hint helps.
    pub fn answer(
        &mut self,
        concept: &str,
        class: &Difficulties,
        date: NaiveDate,
        helped: bool,
    ) -> bool {
        let lift = if helped { 1.0 } else { 0.0 };
        let chance = logistic(self.logit(concept, class, date) + lift);
        let right = self.chance.random_bool(chance);
        self.meet(concept, class, date, EXERCISE_SHARE);
        right
    }

    /// A decision of the day: true with this chance.
    pub fn decides(&mut self, chance: f64) -> bool {
        self.chance.random_bool(chance.clamp(0.0, 1.0))
    }

    /// A whole number below `most`, for whatever the day asks.
    pub fn picks(&mut self, most: u32) -> u32 {
        if most == 0 {
            0
        } else {
            self.chance.random_range(0..most)
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
            let mut learner = Learner::draw(seed);
            for concept in concepts {
                learner.lesson(concept, &class, date);
            }
            weak += learner.knows("c", &class, date);
            other += (learner.knows("a", &class, date) + learner.knows("b", &class, date)) / 2.0;
            for _ in 0..5 {
                learner.answer("c", &class, date, false);
            }
            practised += learner.knows("c", &class, date);
        }
        assert!(weak / 200.0 < other / 200.0 - 0.2, "{weak} {other}");
        assert!(practised > weak + 2.0, "{practised} {weak}");
    }

    #[test]
    fn what_was_learnt_fades_and_the_same_seed_gives_the_same_student() {
        let class = Difficulties::draw(["a"].into_iter(), &[], 1);
        let day = |d: &str| -> NaiveDate { d.parse().unwrap() };
        let mut learner = Learner::draw(9);
        learner.lesson("a", &class, day("2026-10-01"));
        assert!(
            learner.knows("a", &class, day("2027-02-01"))
                < learner.knows("a", &class, day("2026-10-02"))
        );
        let (mut one, mut two) = (Learner::draw(5), Learner::draw(5));
        for _ in 0..20 {
            assert_eq!(
                one.rate("a", &class, day("2026-10-01")),
                two.rate("a", &class, day("2026-10-01"))
            );
        }
    }
}
