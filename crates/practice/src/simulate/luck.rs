//! Random draws that do not depend on their order, so that every rule meets the same
//! evenings with the same luck.

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{RngCore, SeedableRng};

/// What a draw is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// Which concepts build on which.
    Prerequisite = 1,
    /// A student's skill.
    Skill,
    /// A student's pace.
    Pace,
    /// How sure of themselves a student is.
    Sureness,
    /// A concept's easiness.
    Easiness,
    /// A student's own gap on a concept.
    Gap,
    /// Whether a student is in class.
    Present,
    /// Whether a student practises tonight.
    Evening,
    /// Whether the work in class was right.
    ClassWork,
    /// Whether that work was marked, and whether correctly.
    Marking,
    /// The rating.
    Rating,
    /// A home answer.
    Answer,
    /// Whether a hint helped.
    Hint,
    /// Minutes of an answer.
    Minutes,
    /// A rule's own draw.
    Rule,
}

/// The random draws of one student, or of the class.
#[derive(Debug, Clone, Copy)]
pub struct Luck {
    key: u64,
}

fn mixed(mut x: u64) -> u64 {
    // SplitMix64's finisher (Steele, Lea & Flood 2014, from memory).
    x = x.wrapping_add(0x9e37_79b9_7f4a_7c15);
    x = (x ^ (x >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    x = (x ^ (x >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    x ^ (x >> 31)
}

impl Luck {
    /// Returns the draws of stream `who` under `seed`.
    #[must_use]
    pub fn new(seed: u64, who: usize) -> Self {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        rng.set_stream(who as u64);
        Self {
            key: rng.next_u64(),
        }
    }

    /// Returns a draw between 0 and 1.
    #[must_use]
    pub fn draw(&self, a: usize, b: usize, purpose: Purpose) -> f64 {
        let bits =
            mixed(mixed(mixed(self.key ^ (purpose as u64) << 56) ^ a as u64) ^ ((b as u64) << 20));
        #[expect(clippy::cast_precision_loss, reason = "53 bits fit")]
        let unit = (bits >> 11) as f64 / (1u64 << 53) as f64;
        unit
    }

    /// Returns a draw with mean 0 and standard deviation 1 (a sum of twelve uniform ones).
    #[must_use]
    pub fn normal(&self, a: usize, b: usize, purpose: Purpose) -> f64 {
        (0..12)
            .map(|i| self.draw(a * 16 + i, b, purpose))
            .sum::<f64>()
            - 6.0
    }
}
