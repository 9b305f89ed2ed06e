//! Memory of one concept: the fsrs crate behind a small type of ours.
//!
//! The crate takes what it is given, so the bounds are kept here: grades are
//! one of three, gaps are whole days from 0, states are finite.

use fsrs::{FSRS, FSRS6_DEFAULT_DECAY};
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// The recall at which a concept counts as due. It labels, it never orders.
pub const DUE_RECALL: f32 = 0.9;

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
    /// A concept that was taught and never answered: recall one half a week after.
    pub const UNTESTED: Self = Self {
        stability_days: 1.2931,
        difficulty: 5.0,
    };

    /// Chance of recall after `days` days.
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

/// The model could not be made or asked: never with the default parameters and finite states.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("memory model: {0}")]
pub struct MemoryError(String);

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
    /// The state after this grade.
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
}

impl Memory {
    /// The model with its default parameters.
    ///
    /// # Errors
    /// [`MemoryError`] if the crate refuses its own defaults.
    pub fn new() -> Result<Self, MemoryError> {
        FSRS::new(&[])
            .map(|model| Self { model })
            .map_err(|e| MemoryError(format!("{e:?}")))
    }

    /// Memory after each grade, `gap_days` after the last evidence (nothing before: `None`).
    ///
    /// # Errors
    /// [`MemoryError`] for a state that is not finite.
    pub fn after(&self, state: Option<MemoryState>, gap_days: u32) -> Result<After, MemoryError> {
        let next = self
            .model
            .next_states(state.map(MemoryState::crate_state), DUE_RECALL, gap_days)
            .map_err(|e| MemoryError(format!("{e:?}")))?;
        Ok(After {
            wrong: next.again.memory.into(),
            helped: next.hard.memory.into(),
            alone: next.good.memory.into(),
        })
    }
}
