//! A draft of an exercise, which generators fill in part by part.

use super::answers::{
    choice, compare, decimal, equation, expression, fraction, mixed, several, whole,
};
use crate::answer::{Answer, Choice, Entry};
use crate::block::Block;
use crate::decimal::Dec;
use crate::dice::Dice;
use crate::expr::Sign;
use crate::model::FormRule;
use crate::say::Say;
use num_rational::Ratio;
use serde_json::Value;
use std::borrow::Cow;

/// A draft of an exercise.
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
    /// Misconceptions: code, and the answer it leads to.
    pub misconceptions: Vec<(&'static str, Answer)>,
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
            misconceptions: Vec::new(),
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

    /// Adds a hint of a sentence and a figure or line of mathematics.
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

    /// Adds a step of one block if the condition holds.
    #[must_use]
    pub fn step_if(self, holds: bool, block: impl Into<Block>) -> Self {
        if holds { self.step(block) } else { self }
    }

    /// Adds a step of a sentence and a figure or line of mathematics.
    #[must_use]
    pub fn step_with(mut self, say: Say, block: impl Into<Block>) -> Self {
        self.steps.push(vec![say.into(), block.into()]);
        self
    }

    /// Adds the step from a fraction to its simplest form, if that differs.
    #[must_use]
    pub fn simplified(self, top: i64, bottom: i64) -> Self {
        let simplest = crate::expr::rational(Ratio::new(top, bottom), true);
        let written = crate::expr::frac(top, bottom);
        if simplest == written {
            self
        } else {
            self.step_with(
                Say::new("fraction-step-simplest"),
                crate::expr::equal(written, simplest),
            )
        }
    }

    /// Sets which equal forms are right.
    #[must_use]
    pub fn form(mut self, form: FormRule) -> Self {
        self.form = form;
        self
    }

    /// Adds a misconception. What it tells the student is chosen by what the exercise shows
    /// (`needs`).
    #[must_use]
    pub fn misconception(mut self, code: &'static str, answer: Answer) -> Self {
        self.misconceptions.push((code, answer));
        self
    }

    /// Adds a misconception if the condition holds.
    #[must_use]
    pub fn misconception_if(self, holds: bool, code: &'static str, answer: Answer) -> Self {
        if holds {
            self.misconception(code, answer)
        } else {
            self
        }
    }

    /// Adds a misconception if its answer differs from the key and from the
    /// misconceptions already there. For weaker ones that need no new draw.
    #[must_use]
    pub fn misconception_unless_same(self, code: &'static str, answer: Answer) -> Self {
        let taken = self
            .misconceptions
            .iter()
            .any(|(_, known)| *known == answer)
            || self.answer.as_ref().is_some_and(|(_, key)| *key == answer);
        self.misconception_if(!taken, code, answer)
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

    /// A fraction is asked for; the key has just these numbers.
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

    /// One choice, in random order. Each wrong choice carries its misconception's code, or
    /// `""` for none.
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
                Some(code) => self = self.misconception(code, choice(index)),
            }
        }
        self.answer(Entry::OneChoice { choices }, choice(right_index))
    }

    /// One choice of a list in the order given. Each wrong choice carries its misconception's
    /// code, or `""` for none.
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
                self = self.misconception(code, choice(index as u32));
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
