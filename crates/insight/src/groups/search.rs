//! Ruin and recreate: breaks a part of the plan, rebuilds it with some noise, polishes it, and keeps
//! it if it is not much worse than before (Schrimpf et al. 2000; Ropke & Pisinger 2006; threshold of
//! Dueck & Scheuer 1990; all from memory). The same seed gives the same plan on every device.

use super::model::{GroupProblem, PlannedGroup, Units};
use super::state::State;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// Limits of the search.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SearchLimits {
    /// Ruin-and-recreate rounds.
    pub rounds: u32,
    /// Seed of the noise.
    pub seed: u64,
}

impl Default for SearchLimits {
    fn default() -> Self {
        Self {
            rounds: 2_000,
            seed: 1,
        }
    }
}

/// At the start, a plan may be worse than the one before it by this share.
const FIRST_TOLERANCE: f64 = 0.01;
/// Noise on the worth of a placement while rebuilding, at most.
const MOST_NOISE: f64 = 0.6;

/// The best plan found.
pub(super) fn search(
    problem: &GroupProblem,
    units: &Units,
    limits: &SearchLimits,
) -> Vec<PlannedGroup> {
    let mut rng = ChaCha8Rng::seed_from_u64(limits.seed);
    let mut current = State::empty(problem, units);
    current.rebuild(0.0, &mut rng);
    current.polish();
    let mut best = current.clone();
    let mut trial = current.clone();
    for round in 0..limits.rounds {
        let left = 1.0 - f64::from(round) / f64::from(limits.rounds);
        trial.clone_from(&current);
        ruin(&mut trial, problem, &mut rng);
        let noise = MOST_NOISE * rng.random::<f64>();
        trial.rebuild(noise, &mut rng);
        trial.polish();
        let allowed = FIRST_TOLERANCE * left * rng.random::<f64>() * real(current.value);
        if real(trial.value) + allowed >= real(current.value) {
            std::mem::swap(&mut current, &mut trial);
            if current.value > best.value {
                best.clone_from(&current);
            }
        }
    }
    best.plan()
}

/// Breaks one to three groups, one slot, or a tenth to two fifths of the seats.
fn ruin(state: &mut State, problem: &GroupProblem, rng: &mut ChaCha8Rng) {
    match rng.random_range(0..10) {
        0..=4 => {
            for _ in 0..rng.random_range(1..=3) {
                let open = state.open_groups();
                if open.is_empty() {
                    return;
                }
                if let Some(group) = open.get(rng.random_range(0..open.len())) {
                    state.close(*group);
                }
            }
        }
        5 if problem.slots > 1 => {
            let slot = rng.random_range(0..problem.slots);
            for group in state.open_groups() {
                if state.slot_of(group) == slot {
                    state.close(group);
                }
            }
        }
        _ => {
            let share = 0.1 + 0.3 * rng.random::<f64>();
            for group in state.open_groups() {
                for place in (0..state.size_in_units(group)).rev() {
                    if rng.random::<f64>() < share {
                        state.take_out(group, place);
                    }
                }
            }
            state.close_undersized();
        }
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "plan values stay far below 2^52"
)]
fn real(value: i64) -> f64 {
    value as f64
}
