//! What a student likely knows of a concept, and what one more exercise would add at the
//! date aimed at.
//!
//! Every meeting leaves a trace that fades by a power of its age, faster the stronger the
//! memory was (the form of Pavlik & Anderson 2005, so a repetition on the same evening is
//! worth little). The student's ease with the concept is unknown. A few values of it have
//! probabilities, which start from the student's other concepts and change with every
//! answer (Bayes).

use surefoot_catalogue::rating::AnswerResult;

/// The possible values of a student's ease with a concept, in logits.
const EASES: [f64; 15] = [
    -3.5, -3.0, -2.5, -2.0, -1.5, -1.0, -0.5, 0.0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5,
];
const EASE_COUNT: usize = EASES.len();

/// Number of ages of a trace, in days. An older trace counts as one of the greatest age.
const MOST_DAYS: usize = 420;
/// Number of decays.
const DECAYS: usize = 24;
const DECAY_STEP: f64 = 0.03;

/// How the estimate is tuned. The values were chosen on simulated classes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tuning {
    /// Decay of a trace left by the first meeting.
    pub decay_base: f64,
    /// Decay added for each unit of strength.
    pub decay_by_strength: f64,
    /// Logits of recall per natural logarithm of strength.
    pub slope: f64,
    /// Strength at which an average concept is recalled one time in two, as a logarithm.
    pub threshold: f64,
    /// Standard deviation of ease between one student's concepts, in logits.
    pub spread: f64,
    /// Standard deviation of ease between students, in logits.
    pub student_spread: f64,
    /// Probability of a right answer if the concept is not known.
    pub guess: f64,
    /// Probability of a wrong answer if the concept is known.
    pub slip: f64,
    /// Weight of a self-marked class result, relative to an answer at home.
    pub class_trust: f64,
    /// Share of the prerequisites' difference from the student's mean ease that a concept takes
    /// over.
    pub carry_over: f64,
    /// Weight of the trace of a class meeting.
    pub class_weight: f64,
    /// Weight of the trace of the first lessons.
    pub taught_weight: f64,
    /// Weight of the trace of an answer with help.
    pub helped_weight: f64,
    /// Weight of the trace of a wrong answer whose steps were shown.
    pub wrong_weight: f64,
    /// How much more a concept is worth if three concepts build on it.
    pub unlocking: f64,
    /// The power of the minutes by which a gain is divided.
    pub minutes_power: f64,
    /// Weight of the class meetings that are still to come.
    pub ahead: f64,
    /// The fewest days to the date aimed at.
    pub least_days: i32,
}

impl Tuning {
    /// The values in use.
    pub const USED: Self = Self {
        decay_base: 0.2,
        decay_by_strength: 0.1,
        slope: 1.2,
        threshold: 0.6,
        spread: 1.3,
        student_spread: 0.8,
        guess: 0.12,
        slip: 0.08,
        class_trust: 0.6,
        carry_over: 0.3,
        class_weight: 0.5,
        taught_weight: 1.2,
        helped_weight: 0.85,
        wrong_weight: 0.5,
        unlocking: 0.3,
        minutes_power: 0.7,
        ahead: 1.0,
        least_days: 10,
    };
}

fn sigmoid(x: f64) -> f64 {
    1.0 / (1.0 + libm::exp(-x))
}

/// Returns the weight of an answer as evidence of knowing, from 0 to 1. The rest is evidence
/// of not knowing.
fn credit(result: AnswerResult) -> f64 {
    match result {
        AnswerResult::Alone => 1.0,
        AnswerResult::WithHelp => 0.35,
        AnswerResult::Wrong => 0.0,
    }
}

/// The estimate's tables, which are made once.
#[derive(Debug, Clone)]
pub struct Estimator {
    tuning: Tuning,
    /// What is left of a trace of weight 1, by decay and age.
    left: Vec<f64>,
}

impl Default for Estimator {
    fn default() -> Self {
        Self::new(Tuning::USED)
    }
}

/// A trace: its day, weight and decay.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Trace {
    day: i32,
    weight: f64,
    decay: usize,
}

/// The evidence on one student's ease with one concept.
#[derive(Debug, Clone, PartialEq)]
pub struct Belief {
    traces: Vec<Trace>,
    log_likelihood: [f64; EASE_COUNT],
    answers: u32,
}

impl Default for Belief {
    fn default() -> Self {
        Self {
            traces: Vec::new(),
            log_likelihood: [0.0; EASE_COUNT],
            answers: 0,
        }
    }
}

impl Belief {
    /// Returns whether there has been any evidence of ease.
    #[must_use]
    pub fn is_tested(&self) -> bool {
        self.answers > 0
    }

    /// Returns the probability of each ease, from the evidence and the ease expected before it.
    fn weights(&self, mean: f64, spread: f64) -> [f64; EASE_COUNT] {
        let mut logs = self.log_likelihood;
        for (log, ease) in logs.iter_mut().zip(EASES) {
            let z = (ease - mean) / spread;
            *log -= 0.5 * z * z;
        }
        let top = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let mut sum = 0.0;
        for log in &mut logs {
            *log = libm::exp(*log - top);
            sum += *log;
        }
        logs.map(|w| w / sum)
    }

    /// Returns the expected ease.
    #[must_use]
    pub fn ease(&self, mean: f64, spread: f64) -> f64 {
        self.weights(mean, spread)
            .iter()
            .zip(EASES)
            .map(|(w, e)| w * e)
            .sum()
    }
}

/// The date aimed at, and the class meetings before it.
#[derive(Debug, Clone, Copy)]
pub struct Aim<'a> {
    /// Today's day number.
    pub today: i32,
    /// The day aimed at.
    pub goal: i32,
    /// Days of the class meetings still to come, up to the goal.
    pub meetings: &'a [i32],
}

/// The expected effect of one more exercise tonight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prospect {
    /// Probability of a right answer alone tonight.
    pub tonight: f64,
    /// Probability of knowing the concept on the date aimed at, without the exercise.
    pub at_goal: f64,
    /// How much the exercise raises that probability.
    pub gain: f64,
}

impl Estimator {
    /// Makes the tables for a tuning.
    #[must_use]
    pub fn new(tuning: Tuning) -> Self {
        let mut left = Vec::with_capacity(DECAYS * MOST_DAYS);
        for decay in 0..DECAYS {
            for days in 0..MOST_DAYS {
                #[expect(clippy::cast_precision_loss, reason = "a few hundred at most")]
                left.push(libm::pow(days as f64 + 0.5, -(decay as f64) * DECAY_STEP));
            }
        }
        Self { tuning, left }
    }

    /// Returns the tuning.
    #[must_use]
    pub fn tuning(&self) -> &Tuning {
        &self.tuning
    }

    /// Returns what is left of a trace of weight 1 after some days.
    #[expect(
        clippy::indexing_slicing,
        reason = "`decay` returns numbers below DECAYS, and days are cut to MOST_DAYS"
    )]
    fn left(&self, decay: usize, days: i32) -> f64 {
        let days = usize::try_from(days.max(0)).unwrap_or(0).min(MOST_DAYS - 1);
        self.left[decay * MOST_DAYS + days]
    }

    /// Returns the strength of memory on a day: the sum of what is left of its traces.
    #[must_use]
    pub fn strength(&self, belief: &Belief, day: i32) -> f64 {
        belief
            .traces
            .iter()
            .map(|t| t.weight * self.left(t.decay, day - t.day))
            .sum()
    }

    fn decay(&self, strength: f64) -> usize {
        let decay = self.tuning.decay_base + self.tuning.decay_by_strength * strength;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "clamped"
        )]
        let bin = (decay / DECAY_STEP).round().clamp(1.0, (DECAYS - 1) as f64) as usize;
        bin
    }

    fn logit(&self, strength: f64) -> f64 {
        self.tuning.slope * (libm::log(strength + 0.02) - self.tuning.threshold)
    }

    /// Leaves a trace.
    fn meet(&self, belief: &mut Belief, day: i32, weight: f64) {
        let decay = self.decay(self.strength(belief, day));
        belief.traces.push(Trace { day, weight, decay });
    }

    /// Adds the first lessons on a concept.
    pub fn taught(&self, belief: &mut Belief, day: i32) {
        self.meet(belief, day, self.tuning.taught_weight);
    }

    /// Adds a meeting in class, which was marked right or wrong or not at all.
    pub fn class_meeting(&self, belief: &mut Belief, day: i32, right: Option<bool>) {
        if let Some(right) = right {
            let credit = f64::from(u8::from(right));
            self.weigh(belief, day, credit, self.tuning.class_trust);
        }
        self.meet(belief, day, self.tuning.class_weight);
    }

    /// Adds an answer at home.
    pub fn answer(&self, belief: &mut Belief, day: i32, result: AnswerResult) {
        let weight = match result {
            AnswerResult::Alone => 1.0,
            AnswerResult::WithHelp => self.tuning.helped_weight,
            AnswerResult::Wrong => self.tuning.wrong_weight,
        };
        self.weigh(belief, day, credit(result), 1.0);
        self.meet(belief, day, weight);
    }

    fn weigh(&self, belief: &mut Belief, day: i32, credit: f64, trust: f64) {
        let logit = self.logit(self.strength(belief, day));
        let t = &self.tuning;
        for (log, ease) in belief.log_likelihood.iter_mut().zip(EASES) {
            let right = t.guess + (1.0 - t.guess - t.slip) * sigmoid(logit + ease);
            *log += trust * (credit * libm::log(right) + (1.0 - credit) * libm::log(1.0 - right));
        }
        belief.answers += 1;
    }

    /// Returns the probability of knowing the concept on a day.
    #[must_use]
    pub fn knows(&self, belief: &Belief, mean: f64, day: i32) -> f64 {
        let logit = self.logit(self.strength(belief, day));
        belief
            .weights(mean, self.tuning.spread)
            .iter()
            .zip(EASES)
            .map(|(w, e)| w * sigmoid(logit + e))
            .sum()
    }

    /// Returns the expected effect of one more exercise tonight.
    #[must_use]
    pub fn prospect(&self, belief: &Belief, mean: f64, ready: f64, aim: &Aim<'_>) -> Prospect {
        let t = &self.tuning;
        let now = self.strength(belief, aim.today);
        let now_logit = self.logit(now);
        let usual = self.decay(now.min(3.0));
        let then = self.strength(belief, aim.goal)
            + t.ahead
                * t.class_weight
                * aim
                    .meetings
                    .iter()
                    .map(|day| self.left(usual, aim.goal - day))
                    .sum::<f64>();
        let trace = self.left(self.decay(now), aim.goal - aim.today) * ready;
        let then_logit = self.logit(then);
        let with_right = self.logit(then + trace);
        let with_wrong = self.logit(then + trace * t.wrong_weight);
        let mut prospect = Prospect {
            tonight: 0.0,
            at_goal: 0.0,
            gain: 0.0,
        };
        for (weight, ease) in belief.weights(mean, t.spread).iter().zip(EASES) {
            if *weight < 1e-4 {
                continue;
            }
            let right = t.guess + (1.0 - t.guess - t.slip) * sigmoid(now_logit + ease);
            let at_goal = sigmoid(then_logit + ease);
            prospect.tonight += weight * right;
            prospect.at_goal += weight * at_goal;
            prospect.gain += weight
                * (right * sigmoid(with_right + ease) + (1.0 - right) * sigmoid(with_wrong + ease)
                    - at_goal);
        }
        prospect
    }

    /// Returns the ease that is expected of a student before any answer on a concept: the mean
    /// over the answered concepts, drawn towards 0.
    #[must_use]
    pub fn student_mean<'a>(&self, beliefs: impl Iterator<Item = &'a Belief>, last: f64) -> f64 {
        let mut sum = 0.0;
        let mut count = 0.0;
        for belief in beliefs.filter(|b| b.is_tested()) {
            sum += belief.ease(last, self.tuning.spread);
            count += 1.0;
        }
        let towards_zero = (self.tuning.spread / self.tuning.student_spread).powi(2);
        sum / (count + towards_zero)
    }
}
