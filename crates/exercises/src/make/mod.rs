//! The parts of a generator: dice, a draft, and answers by kind.
//! See `docs/exercises.md` for how to add one.

mod answers;
mod draft;
mod other_kinds;

pub use answers::{
    choice, compare, decimal, division, duration, equation, expression, fraction, mixed, money,
    point, several, time, whole,
};
pub use draft::Draft;
pub use other_kinds::{asked_otherwise, two_parts};

use super::block::Block;
use super::dice::Dice;
use super::expr::Expr;
use super::figure::{Drawing, Figure};
use super::model::Level;
use super::say::Say;

/// One concept's generator.
#[derive(Clone, Copy)]
pub struct Generator {
    /// The concept's id in the catalogue.
    pub concept: &'static str,
    /// Must be raised whenever the same seed gives another exercise than before.
    pub version: u32,
    /// Makes a draft; `None` if the numbers drawn do not suit, so that it is called again.
    pub make: fn(&mut Make) -> Option<Draft>,
}

impl Generator {
    /// A generator.
    pub const fn new(
        concept: &'static str,
        version: u32,
        make: fn(&mut Make) -> Option<Draft>,
    ) -> Self {
        Self {
            concept,
            version,
            make,
        }
    }
}

/// The input of a generator.
pub struct Make {
    /// The concept's id: the start of its message ids.
    pub concept: &'static str,
    /// The level asked for.
    pub level: Level,
    /// Random draws.
    pub dice: Dice,
    /// Whether "=" is to be right where a sign is asked for: in a fifth of the exercises. It
    /// is drawn once, so that numbers which do not suit do not change the share.
    pub equal: bool,
    /// Which of three answers is to be right, where a generator can choose; drawn once.
    pub third: usize,
}

impl Make {
    /// The concept's own message `<concept>-<suffix>`.
    #[must_use]
    pub fn say(&self, suffix: &str) -> Say {
        Say::new(format!("{}-{suffix}", self.concept))
    }

    /// Asks for a sign: of two numbers, or of two lengths, masses and so on.
    #[must_use]
    pub fn sign_ask(&mut self) -> Say {
        match self.dice.from(0..=11) {
            which @ 1..=6 => Say::new(format!("common-sign-{which}")),
            _ => Say::new("common-sign"),
        }
    }

    /// Adds the plain question, or one of `n` stories `<concept>-story-<k>` with a given name.
    /// Each story is as likely as the plain question.
    #[must_use]
    pub fn asked(
        &mut self,
        draft: Draft,
        plain: impl IntoIterator<Item = Block>,
        n: i64,
        fill: impl FnOnce(Say) -> Say,
    ) -> Draft {
        match self.dice.from(0..=n) {
            0 => plain.into_iter().fold(draft, Draft::ask),
            which => {
                let story = self.say(&format!("story-{which}"));
                draft.ask(fill(story.text("name", self.dice.name())))
            }
        }
    }

    /// The concept's own message `<concept>-<suffix>`, or one of `n` others of the same meaning,
    /// `<concept>-<suffix>-<k>`, with a given name.
    #[must_use]
    pub fn wording(&mut self, suffix: &str, n: i64) -> Say {
        match self.dice.from(0..=n) {
            0 => self.say(suffix),
            which => self
                .say(&format!("{suffix}-{which}"))
                .text("name", self.dice.name()),
        }
    }

    /// One of the concept's stories `<concept>-ask-1` to `-ask-<n>`, and its number.
    #[must_use]
    pub fn story(&mut self, n: i64) -> (Say, i64) {
        let which = self.dice.from(1..=n);
        (self.say(&format!("ask-{which}")), which)
    }
}

/// `None` unless the condition holds; the numbers are then drawn again.
#[must_use]
pub fn keep(condition: bool) -> Option<()> {
    condition.then_some(())
}

/// A choice that is mathematics.
#[must_use]
pub fn shows(expr: impl Into<Expr>) -> Block {
    Block::Math { expr: expr.into() }
}

/// A choice that is words.
#[must_use]
pub fn says(id: &'static str) -> Block {
    Block::Say { say: Say::new(id) }
}

/// A figure with its text alternative.
#[must_use]
pub fn figure(drawing: Drawing, alt: Say) -> Figure {
    Figure { alt, drawing }
}

/// The digits of a whole number, the ones first.
#[must_use]
pub fn digits(mut n: i64) -> Vec<i64> {
    let mut digits = Vec::new();
    while n > 0 {
        digits.push(n % 10);
        n /= 10;
    }
    if digits.is_empty() {
        digits.push(0);
    }
    digits
}

/// The values of the digits that are not 0, the greatest first.
#[must_use]
pub fn digit_values(n: i64) -> Vec<i64> {
    let mut values: Vec<i64> = (0..)
        .zip(digits(n))
        .map(|(place, digit)| digit * 10_i64.pow(place))
        .filter(|value| *value > 0)
        .collect();
    values.reverse();
    values
}

/// The whole number of these digits, the ones first.
#[must_use]
pub fn from_digits(digits: &[i64]) -> i64 {
    digits.iter().rev().fold(0, |n, digit| n * 10 + digit)
}
