//! Memory of one concept: the fsrs crate behind a small type of ours. The simulator compares
//! our queue with one by this model, and the command prints it; no student's queue uses it.
//!
//! The crate does not check its input, so this module does: grades are one of three, gaps
//! are whole days from 0, states are finite.

use fsrs::{FSRS, FSRS6_DEFAULT_DECAY};
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// The recall aimed at where only the states are asked for, which do not depend on it.
pub(crate) const USUAL_RECALL: f32 = 0.9;

/// What the evidence of a day says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Wrong, or given up.
    Wrong,
    /// Right with a hint, a worked step or at the second try.
    Helped,
    /// Right alone.
    Alone,
}

/// How well a concept is held.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct MemoryState {
    /// Days until recall has fallen to 0.9.
    pub stability_days: f32,
    /// 1 (easy) to 10 (hard).
    pub difficulty: f32,
}

impl MemoryState {
    /// Returns the probability of recall after `days` days.
    #[must_use]
    pub fn recall(self, days: f32) -> f32 {
        fsrs::current_retrievability(self.crate_state(), days.max(0.0), FSRS6_DEFAULT_DECAY)
    }

    fn crate_state(self) -> fsrs::MemoryState {
        fsrs::MemoryState {
            stability: self.stability_days,
            difficulty: self.difficulty,
        }
    }
}

impl From<fsrs::MemoryState> for MemoryState {
    fn from(state: fsrs::MemoryState) -> Self {
        Self {
            stability_days: state.stability,
            difficulty: state.difficulty,
        }
    }
}

/// Why the memory model refused a value.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum MemoryError {
    /// The crate refused the parameters or the state.
    #[error("memory model: {0}")]
    Model(String),
    /// There are not 21 parameters, or one is not finite.
    #[error("the memory model takes 21 finite parameters, found {found}")]
    Parameters {
        /// How many there were.
        found: usize,
    },
    /// A rating outside 1 to 4, which the crate itself does not refuse.
    #[error("a rating is 1 to 4, not {found}")]
    Rating {
        /// The rating.
        found: u32,
    },
    /// A recall aimed at for which the crate's gaps are infinite, negative or not a number.
    #[error("the recall aimed at must be 0.70 to 0.97, not {found}")]
    Retention {
        /// The recall aimed at.
        found: f32,
    },
}

/// A review of a plain history.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Review {
    /// 1 to 4.
    pub rating: u32,
    /// Whole days since the review before; 0 for the first and for the same day.
    pub elapsed_days: u32,
}

/// Memory after a review, with the gap to a recall aimed at.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct AfterReview {
    /// Days until recall has fallen to 0.9.
    pub stability: f32,
    /// 1 (easy) to 10 (hard).
    pub difficulty: f32,
    /// Days until recall has fallen to the recall aimed at, unrounded.
    pub interval: f32,
    /// The same in whole days, half up, at least 1.
    pub whole_days: u32,
}

impl AfterReview {
    /// Returns the state reached.
    #[must_use]
    pub fn state(self) -> MemoryState {
        MemoryState {
            stability_days: self.stability,
            difficulty: self.difficulty,
        }
    }
}

/// What memory would be after each grade.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct After {
    /// After a wrong answer.
    pub wrong: MemoryState,
    /// After a helped one.
    pub helped: MemoryState,
    /// After one alone.
    pub alone: MemoryState,
}

impl After {
    /// Returns the state after this grade.
    #[must_use]
    pub fn with(&self, grade: Grade) -> MemoryState {
        match grade {
            Grade::Wrong => self.wrong,
            Grade::Helped => self.helped,
            Grade::Alone => self.alone,
        }
    }
}

/// The memory model, made once.
pub struct Memory {
    model: FSRS,
    decay: f32,
}

impl Memory {
    /// Makes the model with its default parameters.
    pub fn new() -> Result<Self, MemoryError> {
        FSRS::new(&[])
            .map(|model| Self {
                model,
                decay: FSRS6_DEFAULT_DECAY,
            })
            .map_err(|e| MemoryError::Model(format!("{e:?}")))
    }

    /// Makes the model with 21 parameters of its sixth version.
    ///
    /// # Errors
    /// [`MemoryError::Parameters`] unless there are 21 finite ones, because the crate fills up
    /// shorter, older sets with guesses of its own.
    pub fn with_parameters(parameters: &[f32]) -> Result<Self, MemoryError> {
        let [.., decay] = parameters else {
            return Err(MemoryError::Parameters { found: 0 });
        };
        if parameters.len() != 21 || parameters.iter().any(|p| !p.is_finite()) {
            return Err(MemoryError::Parameters {
                found: parameters.len(),
            });
        }
        FSRS::new(parameters)
            .map(|model| Self {
                model,
                decay: *decay,
            })
            .map_err(|e| MemoryError::Model(format!("{e:?}")))
    }

    /// Returns the memory after each grade, `gap_days` after the last evidence. Without
    /// evidence so far, `state` is `None`.
    pub fn after(&self, state: Option<MemoryState>, gap_days: u32) -> Result<After, MemoryError> {
        let next = self.next(state, USUAL_RECALL, gap_days)?;
        Ok(After {
            wrong: next.again.memory.into(),
            helped: next.hard.memory.into(),
            alone: next.good.memory.into(),
        })
    }

    fn next(
        &self,
        state: Option<MemoryState>,
        retention: f32,
        gap_days: u32,
    ) -> Result<fsrs::NextStates, MemoryError> {
        self.model
            .next_states(state.map(MemoryState::crate_state), retention, gap_days)
            .map_err(|e| MemoryError::Model(format!("{e:?}")))
    }

    /// Returns the probability of recall by this model's parameters, `days` after the state
    /// was reached.
    #[must_use]
    pub fn recall(&self, state: MemoryState, days: f32) -> f32 {
        fsrs::current_retrievability(state.crate_state(), days.max(0.0), self.decay)
    }

    /// Returns the memory after each review of a plain history.
    pub fn replay(
        &self,
        reviews: &[Review],
        retention: f32,
    ) -> Result<Vec<AfterReview>, MemoryError> {
        if !(0.70..=0.97).contains(&retention) {
            return Err(MemoryError::Retention { found: retention });
        }
        let mut state = None;
        let mut after = Vec::with_capacity(reviews.len());
        for review in reviews {
            let gap_days = if state.is_none() {
                0
            } else {
                review.elapsed_days
            };
            let next = self.next(state, retention, gap_days)?;
            let reached = match review.rating {
                1 => next.again,
                2 => next.hard,
                3 => next.good,
                4 => next.easy,
                found => return Err(MemoryError::Rating { found }),
            };
            state = Some(reached.memory.into());
            after.push(AfterReview {
                stability: reached.memory.stability,
                difficulty: reached.memory.difficulty,
                interval: reached.interval,
                whole_days: whole_days(reached.interval),
            });
        }
        Ok(after)
    }
}

/// Returns a gap in whole days, rounded half up, at least one.
fn whole_days(interval_days: f32) -> u32 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "gaps are bounded by the model at 36,500 days of stability"
    )]
    let days = (f64::from(interval_days) + 0.5).floor() as u32;
    days.max(1)
}
