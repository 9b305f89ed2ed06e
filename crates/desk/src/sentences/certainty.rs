//! How certain a sentence is, as a step that the screen puts into words.

use crate::board::BoardRow;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Share of a class from which a concept needs no more than a short look. The talk plan has the
/// same limit.
pub const ENOUGH_SHARE: f64 = 0.7;

/// Mean need of a group's students from which they clearly need it, and likely do.
const NEED_STEPS: [f64; 2] = [0.9, 0.7];

/// How certain a sentence is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Certainty {
    /// Counted, not estimated.
    Counted,
    /// The whole likely range is on the side that the sentence says.
    Clear,
    /// The range reaches over the limit by at most half of the way from the share to its end.
    Likely,
    /// The range reaches further over.
    NotSure,
    /// Ratings alone: there is an order, and no level.
    RatingsAlone,
    /// So few reported that the teacher should ask first.
    AskFirst,
}

/// How certain it is that fewer than [`ENOUGH_SHARE`] of the class have the concept of a row.
pub(super) fn of_weakness(row: &BoardRow) -> Certainty {
    match (row.ask_first, row.has_it, row.high) {
        (true, _, _) => Certainty::AskFirst,
        (false, Some(share), Some(high)) => step(ENOUGH_SHARE - share, high - share),
        _ => Certainty::RatingsAlone,
    }
}

/// How certain it is that at least [`ENOUGH_SHARE`] of the class have the concept of a row.
pub(super) fn of_strength(row: &BoardRow) -> Certainty {
    match (row.ask_first, row.has_it, row.low) {
        (true, _, _) => Certainty::AskFirst,
        (false, Some(share), Some(low)) => step(share - ENOUGH_SHARE, share - low),
        _ => Certainty::RatingsAlone,
    }
}

/// The step of a share that is `distance` from the limit, where the likely range reaches `half`
/// from the share towards it.
fn step(distance: f64, half: f64) -> Certainty {
    if distance >= half {
        Certainty::Clear
    } else if 2.0 * distance >= half {
        Certainty::Likely
    } else {
        Certainty::NotSure
    }
}

/// How certain it is that students need a concept, by the mean probability that each does.
pub(super) fn of_needs(mean_need: f64) -> Certainty {
    let [clear, likely] = NEED_STEPS;
    if mean_need >= clear {
        Certainty::Clear
    } else if mean_need >= likely {
        Certainty::Likely
    } else {
        Certainty::NotSure
    }
}

/// The least certain of some steps that are about one limit.
pub(super) fn least(steps: impl Iterator<Item = Certainty>) -> Option<Certainty> {
    let doubt = |step: &Certainty| match step {
        Certainty::Counted | Certainty::Clear => 0,
        Certainty::Likely => 1,
        Certainty::NotSure => 2,
        Certainty::RatingsAlone => 3,
        Certainty::AskFirst => 4,
    };
    steps.max_by_key(doubt)
}
