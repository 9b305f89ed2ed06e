//! The words of prints: messages with arguments in one locale.

use crate::error::ReportError;
use fluent_bundle::{FluentArgs, FluentValue};
use surefoot_catalogue::messages::{MessageError, message};
use surefoot_catalogue::{Locale, format_number};

/// A result of putting words on a page.
pub(crate) type Drafted<T = ()> = Result<T, ReportError>;

/// An argument of a message.
#[derive(Clone, Debug)]
pub enum Value {
    /// A whole number, which chooses the plural form.
    Count(usize),
    /// Words.
    Text(String),
}

impl From<usize> for Value {
    fn from(count: usize) -> Self {
        Value::Count(count)
    }
}

impl From<u32> for Value {
    fn from(count: u32) -> Self {
        Value::Count(count as usize)
    }
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Value::Text(text)
    }
}

impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Value::Text(text.to_string())
    }
}

/// The words of one locale.
#[derive(Clone, Copy)]
pub struct Words {
    /// Language and way of writing numbers.
    pub locale: Locale,
}

impl Words {
    /// The words of a locale.
    #[must_use]
    pub fn new(locale: Locale) -> Self {
        Self { locale }
    }

    /// A message with its arguments. Fails if the message is missing or lacks an argument, which tests
    /// rule out.
    pub fn say(&self, id: &str, args: &[(&'static str, Value)]) -> Result<String, MessageError> {
        let mut given = FluentArgs::new();
        for (name, value) in args {
            match value {
                Value::Count(count) => given.set(*name, *count),
                Value::Text(text) => given.set(*name, FluentValue::from(text.clone())),
            }
        }
        message(self.locale, id, Some(&given))
    }

    /// A message without arguments.
    pub fn get(&self, id: &str) -> Result<String, MessageError> {
        self.say(id, &[])
    }

    /// A number as the locale writes it.
    #[must_use]
    pub fn number(&self, number: impl ToString) -> String {
        format_number(self.locale, &number.to_string())
    }
}
