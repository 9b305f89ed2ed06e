//! Turns needs into whole-number weights.

/// The rule for weights.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeightRule {
    /// Need from which a student may join a group on a concept.
    pub need_at: f64,
    /// Extra worth for each dependant that the student also needs.
    pub dependant_gain: f64,
    /// Factor for each prerequisite that the student also needs.
    pub prerequisite_loss: f64,
}

impl Default for WeightRule {
    fn default() -> Self {
        Self {
            need_at: 0.5,
            dependant_gain: 0.25,
            prerequisite_loss: 0.5,
        }
    }
}

/// Weights of students (outer) by concepts: round(1000 · need · (1 + .25 · dependants also needed) ·
/// .5^(prerequisites also needed)) for need ≥ .5, otherwise 0. `prerequisites` holds (concept, concept
/// that builds on it).
#[must_use]
pub fn weights(
    need: &[Vec<f64>],
    prerequisites: &[(usize, usize)],
    rule: &WeightRule,
) -> Vec<Vec<u32>> {
    need.iter()
        .map(|own| {
            let needs = |c: usize| own.get(c).is_some_and(|n| *n >= rule.need_at);
            own.iter()
                .enumerate()
                .map(|(concept, need)| {
                    if !needs(concept) {
                        return 0;
                    }
                    let mut weight = 1000.0 * need;
                    let dependants = prerequisites
                        .iter()
                        .filter(|(before, after)| *before == concept && needs(*after))
                        .count();
                    weight *= 1.0 + rule.dependant_gain * crate::stats::count(dependants);
                    for (before, after) in prerequisites {
                        if *after == concept && needs(*before) {
                            weight *= rule.prerequisite_loss;
                        }
                    }
                    whole(weight)
                })
                .collect()
        })
        .collect()
}

/// Rounds halves up.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a weight is a few thousands at most, and the cast saturates"
)]
fn whole(weight: f64) -> u32 {
    (weight + 0.5).floor() as u32
}
