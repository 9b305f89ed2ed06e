//! A sentence for people: a message id and its arguments.

use super::expr::Expr;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use std::collections::BTreeMap;
use ts_rs::TS;

/// A message of `shared/messages` with its arguments.
///
/// For mathematics inside a sentence, the argument's text is [`MATH_START`] + argument name
/// + [`MATH_END`]. The formatted sentence is then split at these characters.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Say {
    /// The Fluent message id.
    #[ts(type = "string")]
    pub id: Cow<'static, str>,
    /// Its arguments by name.
    #[serde(default)]
    #[ts(as = "BTreeMap<String, Arg>")]
    pub args: BTreeMap<Cow<'static, str>, Arg>,
}

/// The character before an argument name in a formatted sentence.
pub const MATH_START: char = '\u{E000}';
/// The character after an argument name in a formatted sentence.
pub const MATH_END: char = '\u{E001}';

/// One argument of a message.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Arg {
    /// A whole number: chooses the plural form, and is shown with grouped digits.
    Count {
        /// The number.
        #[ts(type = "number")]
        value: i64,
    },
    /// An exact decimal with a point, such as `-1234.50`; grouped and given
    /// the locale's decimal sign at display.
    Number {
        /// The number as text.
        text: String,
    },
    /// Exact decimals in a row, joined at display.
    Numbers {
        /// Each number as text.
        texts: Vec<String>,
    },
    /// Mathematics inside the sentence.
    Math {
        /// What to set.
        expr: Expr,
    },
    /// Words that are the same in every language, such as an invented given name.
    Text {
        /// The words.
        text: Cow<'static, str>,
    },
    /// Words by language, such as a number written out or a teacher's text.
    Words {
        /// The words.
        words: surefoot_catalogue::Text,
    },
    /// Another message without arguments, such as a unit or the name of a thing.
    Word {
        /// Its Fluent message id.
        #[ts(type = "string")]
        id: Cow<'static, str>,
    },
}

impl Say {
    /// A message without arguments.
    #[must_use]
    pub fn new(id: impl Into<Cow<'static, str>>) -> Self {
        Self {
            id: id.into(),
            args: BTreeMap::new(),
        }
    }

    fn with(mut self, name: impl Into<Cow<'static, str>>, arg: Arg) -> Self {
        self.args.insert(name.into(), arg);
        self
    }

    /// Adds a whole number that also chooses the plural form.
    #[must_use]
    pub fn count(self, name: &'static str, value: i64) -> Self {
        self.with(name, Arg::Count { value })
    }

    /// Adds an exact decimal.
    #[must_use]
    pub fn number(self, name: &'static str, text: impl ToString) -> Self {
        self.with(
            name,
            Arg::Number {
                text: text.to_string(),
            },
        )
    }

    /// Adds exact decimals in a row.
    #[must_use]
    pub fn numbers<T: ToString>(
        self,
        name: &'static str,
        numbers: impl IntoIterator<Item = T>,
    ) -> Self {
        let texts = numbers.into_iter().map(|n| n.to_string()).collect();
        self.with(name, Arg::Numbers { texts })
    }

    /// Adds mathematics.
    #[must_use]
    pub fn math(self, name: &'static str, expr: impl Into<Expr>) -> Self {
        self.with(name, Arg::Math { expr: expr.into() })
    }

    /// Adds words that are the same in every language.
    #[must_use]
    pub fn text(self, name: &'static str, text: impl Into<Cow<'static, str>>) -> Self {
        self.with(name, Arg::Text { text: text.into() })
    }

    /// Adds words by language.
    #[must_use]
    pub fn words(self, name: &'static str, words: surefoot_catalogue::Text) -> Self {
        self.with(name, Arg::Words { words })
    }

    /// Whether an argument is this number or has it in its mathematics.
    #[must_use]
    pub fn says_number(&self, number: &str) -> bool {
        let same = |text: &String| text.trim_start_matches('-') == number;
        self.args.values().any(|arg| match arg {
            Arg::Count { value } => value.unsigned_abs().to_string() == number,
            Arg::Number { text } => same(text),
            Arg::Numbers { texts } => texts.iter().any(same),
            Arg::Math { expr } => expr.says_number(number),
            _ => false,
        })
    }

    /// Adds another message by its id.
    #[must_use]
    pub fn word(self, name: &'static str, id: impl Into<Cow<'static, str>>) -> Self {
        self.with(name, Arg::Word { id: id.into() })
    }
}
