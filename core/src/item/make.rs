//! What a generator is made of: dice, a draft with its parts, and answers by kind.
//! See `docs/exercises.md` for how to add one.

use super::answer::{Answer, Choice, Entry};
use super::decimal::Dec;
use super::dice::Dice;
use super::expr::{Expr, Sign};
use super::figure::{Drawing, Figure};
use super::model::{Block, FormRule, Level, Mistake};
use super::number::Rational;
use super::say::Say;
use num_rational::Ratio;
use serde_json::Value;
use std::borrow::Cow;

/// One concept's generator.
#[derive(Clone, Copy)]
pub struct Generator {
    /// The concept's id in the catalogue.
    pub concept: &'static str,
    /// Raised whenever the same seed gives another item than before.
    pub version: u32,
    /// Makes a draft; `None` when the numbers drawn do not suit, to draw again.
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

/// What a generator is given.
pub struct Make {
    /// The concept's id: the start of its message ids.
    pub concept: &'static str,
    /// The level asked for.
    pub level: Level,
    /// Chance.
    pub dice: Dice,
}

impl Make {
    /// The concept's own message `<concept>-<suffix>`.
    #[must_use]
    pub fn say(&self, suffix: &str) -> Say {
        Say::new(format!("{}-{suffix}", self.concept))
    }

    /// One of the concept's stories `<concept>-ask-1` to `-ask-<n>`, and its number.
    #[must_use]
    pub fn story(&mut self, n: i64) -> (Say, i64) {
        let which = self.dice.from(1..=n);
        (self.say(&format!("ask-{which}")), which)
    }
}

/// `None` unless the condition holds: numbers that do not suit are drawn again.
#[must_use]
pub fn keep(condition: bool) -> Option<()> {
    condition.then_some(())
}

/// An item on the way.
#[derive(Clone, Debug)]
pub struct Draft {
    /// The neutral machine statement.
    pub statement: Value,
    /// What is shown.
    pub prompt: Vec<Block>,
    /// What is filled in, and the key.
    pub answer: Option<(Entry, Answer)>,
    /// Which equal forms are right.
    pub form: FormRule,
    /// Hints.
    pub hints: Vec<Vec<Block>>,
    /// Steps.
    pub steps: Vec<Vec<Block>>,
    /// Misconceptions.
    pub mistakes: Vec<Mistake>,
}

impl Draft {
    /// Starts with the statement: `{"task": name, ...the numbers shown}`.
    #[must_use]
    pub fn new(statement: Value) -> Self {
        Self {
            statement,
            prompt: Vec::new(),
            answer: None,
            form: FormRule::AnyEqual,
            hints: Vec::new(),
            steps: Vec::new(),
            mistakes: Vec::new(),
        }
    }

    /// Adds a sentence, a line of mathematics or a figure to the prompt.
    #[must_use]
    pub fn ask(mut self, block: impl Into<Block>) -> Self {
        self.prompt.push(block.into());
        self
    }

    /// Adds a hint of one block.
    #[must_use]
    pub fn hint(mut self, block: impl Into<Block>) -> Self {
        self.hints.push(vec![block.into()]);
        self
    }

    /// Adds a hint of a sentence and a picture or line of mathematics.
    #[must_use]
    pub fn hint_with(mut self, say: Say, block: impl Into<Block>) -> Self {
        self.hints.push(vec![say.into(), block.into()]);
        self
    }

    /// Adds a step of one block.
    #[must_use]
    pub fn step(mut self, block: impl Into<Block>) -> Self {
        self.steps.push(vec![block.into()]);
        self
    }

    /// Adds a step of a sentence and a picture or line of mathematics.
    #[must_use]
    pub fn step_with(mut self, say: Say, block: impl Into<Block>) -> Self {
        self.steps.push(vec![say.into(), block.into()]);
        self
    }

    /// Adds the step from a fraction to its simplest form, if that differs.
    #[must_use]
    pub fn simplified(self, top: i64, bottom: i64) -> Self {
        let simplest = super::expr::rational(Ratio::new(top, bottom), true);
        let written = super::expr::frac(top, bottom);
        if simplest == written {
            self
        } else {
            self.step_with(
                Say::new("fraction-step-simplest"),
                super::expr::equal(written, simplest),
            )
        }
    }

    /// Sets which equal forms are right.
    #[must_use]
    pub fn form(mut self, form: FormRule) -> Self {
        self.form = form;
        self
    }

    /// Adds a misconception, told in its general words `mistake-<code>`.
    #[must_use]
    pub fn mistake(self, code: &'static str, answer: Answer) -> Self {
        self.mistake_say(code, answer, Say::new(format!("mistake-{code}")))
    }

    /// Adds a misconception if the condition holds.
    #[must_use]
    pub fn mistake_if(self, holds: bool, code: &'static str, answer: Answer) -> Self {
        if holds {
            self.mistake(code, answer)
        } else {
            self
        }
    }

    /// Adds a misconception if its answer differs from the key and from the
    /// misconceptions already there. For weaker ones that need no new draw.
    #[must_use]
    pub fn mistake_unless_same(self, code: &'static str, answer: Answer) -> Self {
        let taken = self.mistakes.iter().any(|m| m.answer == answer)
            || self.answer.as_ref().is_some_and(|(_, key)| *key == answer);
        self.mistake_if(!taken, code, answer)
    }

    /// Adds a misconception with words of its own.
    #[must_use]
    pub fn mistake_say(mut self, code: &'static str, answer: Answer, say: Say) -> Self {
        self.mistakes.push(Mistake {
            code: Cow::Borrowed(code),
            answer,
            say,
        });
        self
    }

    /// Sets entry and key.
    #[must_use]
    pub fn answer(mut self, entry: Entry, answer: Answer) -> Self {
        self.answer = Some((entry, answer));
        self
    }

    /// A whole number is asked for.
    #[must_use]
    pub fn whole(self, value: i64) -> Self {
        self.answer(
            Entry::WholeNumber {
                signed: false,
                unit: None,
            },
            whole(value),
        )
    }

    /// A whole number with a unit (message id) after the box.
    #[must_use]
    pub fn whole_unit(self, value: i64, unit: &'static str) -> Self {
        self.answer(
            Entry::WholeNumber {
                signed: false,
                unit: Some(Say::new(unit)),
            },
            whole(value),
        )
    }

    /// An integer is asked for.
    #[must_use]
    pub fn integer(self, value: i64) -> Self {
        self.answer(
            Entry::WholeNumber {
                signed: true,
                unit: None,
            },
            whole(value),
        )
    }

    /// A decimal is asked for.
    #[must_use]
    pub fn decimal(self, value: Dec) -> Self {
        self.answer(
            Entry::Decimal {
                signed: false,
                unit: None,
            },
            decimal(value),
        )
    }

    /// A decimal with a unit (message id) after the box.
    #[must_use]
    pub fn decimal_unit(self, value: Dec, unit: &'static str) -> Self {
        self.answer(
            Entry::Decimal {
                signed: false,
                unit: Some(Say::new(unit)),
            },
            decimal(value),
        )
    }

    /// A decimal that may be negative.
    #[must_use]
    pub fn signed_decimal(self, value: Dec) -> Self {
        self.answer(
            Entry::Decimal {
                signed: true,
                unit: None,
            },
            decimal(value),
        )
    }

    /// A fraction is asked for; the key as it stands.
    #[must_use]
    pub fn fraction(self, top: i64, bottom: i64) -> Self {
        self.answer(
            Entry::Fraction {
                signed: false,
                unit: None,
            },
            fraction(top, bottom),
        )
    }

    /// A mixed number (or fraction, or whole number) is asked for; the key in lowest terms.
    #[must_use]
    pub fn mixed(self, value: Ratio<i64>) -> Self {
        self.answer(
            Entry::Mixed {
                signed: false,
                unit: None,
            },
            mixed(value),
        )
    }

    /// A mixed number with a unit (message id) after the boxes.
    #[must_use]
    pub fn mixed_unit(self, value: Ratio<i64>, unit: &'static str) -> Self {
        self.answer(
            Entry::Mixed {
                signed: false,
                unit: Some(Say::new(unit)),
            },
            mixed(value),
        )
    }

    /// A sign of comparison is asked for; each wrong sign has its misconception.
    #[must_use]
    pub fn compare(self, sign: Sign) -> Self {
        self.answer(Entry::Comparison, compare(sign))
    }

    /// One choice, in a chance order. Each wrong choice carries its
    /// misconception's code, or `""` when it stands for none.
    #[must_use]
    pub fn one_of(
        mut self,
        dice: &mut Dice,
        right: impl Into<Block>,
        wrong: Vec<(&'static str, Block)>,
    ) -> Self {
        let mut all: Vec<(Option<&'static str>, Block)> = wrong
            .into_iter()
            .map(|(code, block)| (Some(code), block))
            .collect();
        all.push((None, right.into()));
        dice.shuffle(&mut all);
        let mut choices = Vec::new();
        let mut right_index = 0;
        for (index, (code, shows)) in (0_u32..).zip(all) {
            choices.push(Choice { shows });
            match code {
                None => right_index = index,
                Some("") => {}
                Some(code) => self = self.mistake(code, choice(index)),
            }
        }
        self.answer(Entry::OneChoice { choices }, choice(right_index))
    }

    /// One choice of a list in its own order (yes and no, names of angles).
    /// Each wrong choice carries its misconception's code, or `""`.
    #[must_use]
    pub fn one_of_listed(
        mut self,
        choices: Vec<(&'static str, Block)>,
        right_index: usize,
    ) -> Self {
        let mut shown = Vec::new();
        for (index, (code, shows)) in choices.into_iter().enumerate() {
            shown.push(Choice { shows });
            if index != right_index && !code.is_empty() {
                self = self.mistake(code, choice(index as u32));
            }
        }
        self.answer(
            Entry::OneChoice { choices: shown },
            choice(right_index as u32),
        )
    }

    /// All that fit, in the order given.
    #[must_use]
    pub fn all_of(self, choices: Vec<(bool, Block)>) -> Self {
        let indexes = (0_u32..)
            .zip(&choices)
            .filter(|(_, (fits, _))| *fits)
            .map(|(index, _)| index)
            .collect();
        let choices = choices
            .into_iter()
            .map(|(_, shows)| Choice { shows })
            .collect();
        self.answer(
            Entry::SeveralChoices { choices },
            Answer::SeveralChoices { indexes },
        )
    }

    /// An expression in these letters is asked for.
    #[must_use]
    pub fn expression(self, text: impl Into<String>, letters: &[&'static str]) -> Self {
        self.answer(
            Entry::Expression {
                letters: letters.iter().map(|l| Cow::Borrowed(*l)).collect(),
            },
            expression(text),
        )
    }

    /// An equation or inequality in these letters is asked for.
    #[must_use]
    pub fn equation(
        self,
        text: impl Into<String>,
        letters: &[&'static str],
        signs: &[Sign],
    ) -> Self {
        self.answer(
            Entry::Equation {
                letters: letters.iter().map(|l| Cow::Borrowed(*l)).collect(),
                signs: signs.to_vec(),
            },
            equation(text),
        )
    }

    /// Several numbers are asked for, each with words before its box.
    #[must_use]
    pub fn several<T: ToString>(
        self,
        fields: Vec<Say>,
        values: impl IntoIterator<Item = T>,
    ) -> Self {
        let answer = several(values);
        let decimals = matches!(&answer, Answer::SeveralNumbers { texts } if texts.iter().any(|t| t.contains('.')));
        let signed = matches!(&answer, Answer::SeveralNumbers { texts } if texts.iter().any(|t| t.starts_with('-')));
        self.answer(
            Entry::SeveralNumbers {
                fields,
                decimals,
                signed,
            },
            answer,
        )
    }
}

/// A whole number.
#[must_use]
pub fn whole(value: i64) -> Answer {
    Answer::WholeNumber { value }
}

/// A decimal, without zeros at the end.
#[must_use]
pub fn decimal(value: Dec) -> Answer {
    Answer::Decimal {
        text: value.trimmed().to_string(),
    }
}

/// A fraction as it stands.
#[must_use]
pub fn fraction(top: i64, bottom: i64) -> Answer {
    Answer::Fraction { top, bottom }
}

/// A mixed number in lowest terms.
#[must_use]
pub fn mixed(value: Ratio<i64>) -> Answer {
    let (top, bottom) = (value.numer().abs(), *value.denom());
    Answer::Mixed {
        negative: *value.numer() < 0,
        whole: top / bottom,
        top: top % bottom,
        bottom,
    }
}

/// A sign.
#[must_use]
pub fn compare(sign: Sign) -> Answer {
    Answer::Comparison { sign }
}

/// A choice by its place.
#[must_use]
pub fn choice(index: u32) -> Answer {
    Answer::OneChoice { index }
}

/// An amount of money.
#[must_use]
pub fn money(hundredths: i64) -> Answer {
    Answer::Money { hundredths }
}

/// A time of day without half of the day.
#[must_use]
pub fn time(hour: i64, minute: i64) -> Answer {
    Answer::Time {
        hour: hour as u8,
        minute: minute as u8,
        half_day: None,
    }
}

/// A length of time.
#[must_use]
pub fn duration(minutes: i64) -> Answer {
    Answer::Duration { minutes }
}

/// An expression in the notation of typed responses.
#[must_use]
pub fn expression(text: impl Into<String>) -> Answer {
    Answer::Expression { text: text.into() }
}

/// An equation in the notation of typed responses.
#[must_use]
pub fn equation(text: impl Into<String>) -> Answer {
    Answer::Equation { text: text.into() }
}

/// A point of the grid.
#[must_use]
pub fn point(x: i64, y: i64) -> Answer {
    Answer::Coordinates {
        x: Rational::from(x),
        y: Rational::from(y),
    }
}

/// A quotient and remainder.
#[must_use]
pub fn division(quotient: i64, remainder: i64) -> Answer {
    Answer::QuotientRemainder {
        quotient,
        remainder,
    }
}

/// Several numbers.
#[must_use]
pub fn several<T: ToString>(values: impl IntoIterator<Item = T>) -> Answer {
    Answer::SeveralNumbers {
        texts: values.into_iter().map(|v| v.to_string()).collect(),
    }
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

/// The whole number of these digits, the ones first.
#[must_use]
pub fn from_digits(digits: &[i64]) -> i64 {
    digits.iter().rev().fold(0, |n, digit| n * 10 + digit)
}
