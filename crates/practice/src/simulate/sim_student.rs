//! A simulated student with known truth, school day by school day.

use super::knowledge::{Kind, Knowledge, Lesson};
use super::luck::{Luck, Purpose};
use super::plan::{SchoolDay, YearPlan};
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};

/// How the simulated students differ and err.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Constants {
    /// Deviation of skill between students.
    pub skill_sd: f64,
    /// Deviation of easiness between concepts.
    pub easiness_sd: f64,
    /// Deviation of a student's own gaps.
    pub gap_sd: f64,
    /// Added to every student's skill.
    pub shift: f64,
    /// Probability of a wrong answer when known.
    pub slip: f64,
    /// Probability of a right guess when not known.
    pub guess: f64,
    /// Probability that class work is marked the other way.
    pub mismark: f64,
    /// Probability that class work is marked at all.
    pub marked: f64,
    /// Deviation of a rating around what is known.
    pub rating_sd: f64,
    /// How much students overrate themselves on average.
    pub overrating: f64,
    /// Share of school days missed.
    pub absent: f64,
    /// Share of evenings practised.
    pub evenings: f64,
}

impl Default for Constants {
    fn default() -> Self {
        Self {
            skill_sd: 0.9,
            easiness_sd: 0.6,
            gap_sd: 1.2,
            shift: 0.0,
            slip: 0.08,
            guess: 0.12,
            mismark: 0.1,
            marked: 0.8,
            rating_sd: 0.25,
            overrating: 0.12,
            absent: 0.05,
            evenings: 0.68,
        }
    }
}

/// What a student noted after the review of one concept.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Noted {
    /// The concept.
    pub concept: usize,
    /// The self-rating.
    pub confidence: Confidence,
    /// How it went, if it was marked.
    pub outcome: Option<Outcome>,
}

/// A simulated student.
#[derive(Debug, Clone)]
pub struct SimStudent {
    luck: Luck,
    constants: Constants,
    pace: f64,
    sureness: f64,
    concepts: Vec<SimConcept>,
    /// The school day of the last home answer, and the answers on it.
    answered_on: (usize, usize),
}

/// What a simulated student is like on one concept.
#[derive(Debug, Clone)]
struct SimConcept {
    /// Factor of the minutes that an exercise takes.
    slowness: f64,
    knowledge: Knowledge,
}

impl SimStudent {
    /// Returns student `number` of the class of `seed`.
    #[must_use]
    pub fn new(
        kind: Kind,
        plan: &YearPlan,
        constants: Constants,
        seed: u64,
        number: usize,
    ) -> Self {
        let class = Luck::new(seed, 0);
        let luck = Luck::new(seed, number + 1);
        let skill = constants.shift + constants.skill_sd * luck.normal(0, 0, Purpose::Skill);
        let concepts = (0..plan.concepts.len())
            .map(|concept| {
                let easiness = constants.easiness_sd * class.normal(concept, 0, Purpose::Easiness);
                let gap = constants.gap_sd * luck.normal(concept, 0, Purpose::Gap);
                SimConcept {
                    slowness: (-0.35 * (easiness + 0.5 * gap)).exp(),
                    knowledge: Knowledge::new(kind, skill + easiness + gap),
                }
            })
            .collect();
        Self {
            luck,
            constants,
            pace: (0.25 * luck.normal(0, 0, Purpose::Pace) - 0.15 * skill).exp(),
            sureness: constants.overrating + 0.12 * luck.normal(0, 0, Purpose::Sureness),
            concepts,
            answered_on: (0, 0),
        }
    }

    #[expect(
        clippy::indexing_slicing,
        reason = "concepts are numbered as in the plan that the student was made from"
    )]
    fn concept(&self, number: usize) -> &SimConcept {
        &self.concepts[number]
    }

    /// Learns from a meeting with a concept.
    #[expect(clippy::indexing_slicing, reason = "as in `concept`")]
    fn learn(&mut self, concept: usize, day: i32, lesson: Lesson, ready: f64) {
        self.concepts[concept].knowledge.learn(day, lesson, ready);
    }

    /// Returns the true probability of answering right alone on a calendar day.
    #[must_use]
    pub fn knows(&self, concept: usize, day: i32) -> f64 {
        self.concept(concept).knowledge.knows(day)
    }

    /// Returns the minutes that an exercise on a concept takes this student on average.
    #[must_use]
    pub fn usual_minutes(&self, concept: usize) -> f64 {
        0.72 * self.pace * self.concept(concept).slowness
    }

    /// Returns whether the student practises on the evening of a school day.
    #[must_use]
    pub fn practises(&self, on: SchoolDay) -> bool {
        self.luck.draw(on.number, 0, Purpose::Evening) < self.constants.evenings
    }

    /// Returns how ready the student is for a concept: from one half if none of its
    /// prerequisites is known to 1 if all are.
    #[must_use]
    pub fn ready(&self, plan: &YearPlan, concept: usize, day: i32) -> f64 {
        let before = &plan.concept(concept).prerequisites;
        if before.is_empty() {
            return 1.0;
        }
        #[expect(clippy::cast_precision_loss, reason = "a handful")]
        let mean = before.iter().map(|p| self.knows(*p, day)).sum::<f64>() / before.len() as f64;
        0.5 + 0.5 * mean
    }

    /// Goes through the review of a school day: learns from it, then rates and marks.
    pub fn review(&mut self, plan: &YearPlan, on: SchoolDay) -> Vec<Noted> {
        let SchoolDay {
            number: school_day,
            day,
        } = on;
        if self.luck.draw(school_day, 0, Purpose::Present) < self.constants.absent {
            return Vec::new();
        }
        let mut notes = Vec::new();
        for concept in plan.reviewed_on(school_day).collect::<Vec<_>>() {
            let knows = self.knows(concept, day);
            let right = self.right(
                knows,
                self.luck.draw(concept, school_day, Purpose::ClassWork),
            );
            let marking = self.luck.draw(concept, school_day, Purpose::Marking);
            let outcome = (marking < self.constants.marked).then(|| {
                let flipped = marking < self.constants.marked * self.constants.mismark;
                if right == flipped {
                    Outcome::Wrong
                } else {
                    Outcome::Right
                }
            });
            let felt = knows
                + self.sureness
                + self.constants.rating_sd * self.luck.normal(concept, school_day, Purpose::Rating);
            let confidence = match felt {
                f if f < 0.3 => Confidence::NotYet,
                f if f < 0.55 => Confidence::WithHelp,
                f if f < 0.85 => Confidence::OnMyOwn,
                _ => Confidence::CouldTeach,
            };
            let ready = self.ready(plan, concept, day);
            let lesson = if school_day < plan.concept(concept).taught {
                Lesson::Preview
            } else if right {
                Lesson::ClassRight
            } else {
                Lesson::ClassWrong
            };
            self.learn(concept, day, lesson, ready);
            notes.push(Noted {
                concept,
                confidence,
                outcome,
            });
        }
        notes
    }

    /// Learns from the first lessons on a school day.
    pub fn lessons(&mut self, plan: &YearPlan, on: SchoolDay) {
        let day = on.day;
        if self.luck.draw(on.number, 0, Purpose::Present) < self.constants.absent {
            return;
        }
        for (concept, planned) in plan.concepts.iter().enumerate() {
            // A concept is taught on two days in a row.
            if planned.taught == on.number || planned.taught + 1 == on.number {
                let ready = self.ready(plan, concept, day);
                self.learn(concept, day, Lesson::Taught, ready);
            }
        }
    }

    fn right(&self, knows: f64, draw: f64) -> bool {
        draw < knows * (1.0 - self.constants.slip) + (1.0 - knows) * self.constants.guess
    }

    /// Answers at home and learns from it. Returns the result and the minutes it took.
    pub fn answer(
        &mut self,
        plan: &YearPlan,
        concept: usize,
        on: SchoolDay,
    ) -> (AnswerResult, f64) {
        let SchoolDay {
            number: school_day,
            day,
        } = on;
        if self.answered_on.0 != school_day {
            self.answered_on = (school_day, 0);
        }
        self.answered_on.1 += 1;
        let when = school_day * 64 + self.answered_on.1;
        let knows = self.knows(concept, day);
        let result = if self.right(knows, self.luck.draw(concept, when, Purpose::Answer)) {
            AnswerResult::Alone
        } else if self.luck.draw(concept, when, Purpose::Hint) < 0.25 + 0.5 * knows {
            AnswerResult::WithHelp
        } else {
            AnswerResult::Wrong
        };
        let ready = self.ready(plan, concept, day);
        let lesson = match result {
            AnswerResult::Alone => Lesson::HomeAlone,
            AnswerResult::WithHelp => Lesson::HomeHelped,
            AnswerResult::Wrong => Lesson::HomeWrong,
        };
        self.learn(concept, day, lesson, ready);
        let longer = match result {
            AnswerResult::Alone => 0.85,
            AnswerResult::WithHelp => 1.15,
            AnswerResult::Wrong => 1.25,
        };
        let minutes = self.usual_minutes(concept)
            * longer
            * (0.25 * self.luck.normal(concept, when, Purpose::Minutes)).exp();
        (result, minutes.clamp(0.15, 6.0))
    }

    /// Returns how much one more exercise tonight would truly raise the probability of knowing
    /// the concept at the year's end.
    #[must_use]
    pub fn true_gain(&self, plan: &YearPlan, concept: usize, day: i32, end: i32) -> f64 {
        let known = &self.concept(concept).knowledge;
        let knows = self.knows(concept, day);
        let alone = knows * (1.0 - self.constants.slip) + (1.0 - knows) * self.constants.guess;
        let ready = self.ready(plan, concept, day);
        let before = known.knows(end);
        let after = |lesson| {
            let mut copy = known.clone();
            copy.learn(day, lesson, ready);
            copy.knows(end)
        };
        alone * after(Lesson::HomeAlone) + (1.0 - alone) * after(Lesson::HomeHelped) - before
    }
}
