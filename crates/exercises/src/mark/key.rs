//! Compares values with the key and with the answers of misconceptions.

use super::sentence::{holds, may_be_used};
use super::value::{Value, value_of};
use crate::answer::{Answer, Entry};
use crate::model::FormRule;
use crate::typed::ResponseError;
use num_rational::Ratio;

/// The key of an exercise, and how it is entered.
pub(crate) struct Key<'a> {
    entry: &'a Entry,
    answer: &'a Answer,
    value: Value,
    form: FormRule,
    /// The letters that the entry offers.
    pub(super) letters: &'a [char],
}

impl<'a> Key<'a> {
    /// Reads a key.
    ///
    /// # Errors
    /// [`ResponseError`] if a generator made a key that cannot be read.
    pub(crate) fn of(
        entry: &'a Entry,
        answer: &'a Answer,
        form: FormRule,
        letters: &'a [char],
    ) -> Result<Self, ResponseError> {
        Ok(Self {
            entry,
            answer,
            value: value_of(answer, form, letters)?,
            form,
            letters,
        })
    }

    /// Whether a value is right.
    pub(super) fn is(&self, given: &Value) -> bool {
        is(self.entry, self.answer, &self.value, given)
    }

    /// Whether the first part of two is right.
    pub(super) fn first_is(&self, given: &Value) -> bool {
        match (self.entry, self.answer, &self.value) {
            (
                Entry::TwoParts { first: entry, .. },
                Answer::TwoParts { first: answer, .. },
                Value::Parts(value, _),
            ) => is(entry, answer, value, given),
            _ => false,
        }
    }

    /// Whether a misconception with this answer leads to the value, which is wrong.
    pub(super) fn leads(&self, wrong: &Answer, given: &Value) -> bool {
        match (wrong, given) {
            (Answer::Boxes { sentence, .. }, Value::Boxes(numbers)) => holds(sentence, numbers),
            (Answer::TwoParts { first, second }, Value::Parts(given_first, given_second)) => {
                let same = |answer: &Answer, given: &Value| {
                    value_of(answer, self.form, self.letters).is_ok_and(|wrong| wrong == *given)
                };
                same(first, given_first)
                    && (!self.first_is(given_first) || same(second, given_second))
            }
            _ => value_of(wrong, self.form, self.letters).is_ok_and(|wrong| wrong == *given),
        }
    }

    /// Whether the key is right by its own rule, and each of these answers is wrong and is
    /// led to by its own misconception first.
    pub(crate) fn is_told_from<'b>(&self, wrong: impl Iterator<Item = &'b Answer>) -> bool {
        let mut before: Vec<(&Answer, Value)> = Vec::new();
        for answer in wrong {
            let Ok(value) = value_of(answer, self.form, self.letters) else {
                return false;
            };
            let taken = match answer {
                Answer::Boxes { .. } | Answer::TwoParts { .. } => {
                    before.iter().any(|(other, _)| self.leads(other, &value))
                        || !self.leads(answer, &value)
                }
                _ => before.iter().any(|(_, other)| *other == value),
            };
            if taken || self.is(&value) {
                return false;
            }
            before.push((answer, value));
        }
        self.is(&self.value)
    }
}

fn is(entry: &Entry, answer: &Answer, key: &Value, given: &Value) -> bool {
    match (answer, given) {
        (
            Answer::Angle {
                degrees, within, ..
            },
            Value::Number(given),
        ) => {
            (*given - Ratio::from(*degrees)) <= Ratio::from(*within)
                && (Ratio::from(*degrees) - *given) <= Ratio::from(*within)
        }
        (Answer::Boxes { sentence, .. }, Value::Boxes(numbers)) => match entry {
            Entry::Boxes {
                numbers: allowed, ..
            } => may_be_used(allowed, numbers) && holds(sentence, numbers),
            _ => false,
        },
        (Answer::TwoParts { first, second }, Value::Parts(given_first, given_second)) => {
            match (entry, key) {
                (
                    Entry::TwoParts {
                        first: first_entry,
                        second: second_entry,
                        ..
                    },
                    Value::Parts(first_key, second_key),
                ) => {
                    is(first_entry, first, first_key, given_first)
                        && is(second_entry, second, second_key, given_second)
                }
                _ => false,
            }
        }
        _ => key == given,
    }
}
