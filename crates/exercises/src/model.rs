//! An exercise as a value.

use super::answer::{Answer, Entry};
use super::block::Block;
use super::say::Say;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use surefoot_catalogue::ConceptId;
use ts_rs::TS;

/// The level of an exercise.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
#[serde(try_from = "u8", into = "u8")]
#[ts(type = "1 | 2 | 3")]
pub enum Level {
    /// 1: first steps.
    Entry,
    /// 2: what the grade expects.
    Expected,
    /// 3: a stretch.
    Stretch,
}

impl Level {
    /// All three.
    pub const ALL: [Level; 3] = [Level::Entry, Level::Expected, Level::Stretch];

    /// One of three values, by level.
    pub fn pick<T>(self, entry: T, expected: T, stretch: T) -> T {
        match self {
            Level::Entry => entry,
            Level::Expected => expected,
            Level::Stretch => stretch,
        }
    }
}

impl TryFrom<u8> for Level {
    type Error = String;
    fn try_from(value: u8) -> Result<Self, String> {
        match value {
            1 => Ok(Level::Entry),
            2 => Ok(Level::Expected),
            3 => Ok(Level::Stretch),
            other => Err(format!("level {other} is not 1, 2 or 3")),
        }
    }
}

impl From<Level> for u8 {
    fn from(level: Level) -> u8 {
        match level {
            Level::Entry => 1,
            Level::Expected => 2,
            Level::Stretch => 3,
        }
    }
}

/// Which equal forms of the answer count as right.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum FormRule {
    /// Any equal form is right; the feedback mentions another form.
    #[default]
    AnyEqual,
    /// Only lowest terms.
    Simplest,
    /// Only a mixed number whose fraction is less than one.
    MixedNumber,
    /// Only a single fraction, not a mixed number.
    SingleFraction,
    /// Only this denominator.
    Bottom {
        /// The denominator.
        #[ts(type = "number")]
        bottom: i64,
    },
    /// Only an expression without brackets.
    Expanded,
    /// Only an expression written as a product with brackets.
    Factored,
    /// Only an expression with the operations asked for. Terms and factors may change
    /// places.
    SameSteps,
    /// Only the answer exactly as the key.
    Exact,
}

/// A common misconception and the answer it leads to on this item.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Misconception {
    /// The misconception's code, the same across concepts; counted for the hand-in.
    #[ts(type = "string")]
    pub code: Cow<'static, str>,
    /// What a student who thinks so would answer.
    pub answer: Answer,
    /// What to tell that student.
    pub say: Say,
}

/// An exercise with its key.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Item {
    /// The concept it practises.
    pub concept: ConceptId,
    /// The version of its generator; a changed generator has a new number.
    pub generator_version: u32,
    /// Its level.
    pub level: Level,
    /// The seed it was made from.
    #[ts(type = "number")]
    pub seed: u64,
    /// What is shown.
    pub prompt: Vec<Block>,
    /// What the student fills in.
    pub entry: Entry,
    /// The exact key.
    pub answer: Answer,
    /// Which equal forms are right.
    pub form: FormRule,
    /// From a nudge to a figure or a partial step. Each hint may have several blocks.
    pub hints: Vec<Vec<Block>>,
    /// The full worked solution, one step after the other.
    pub steps: Vec<Vec<Block>>,
    /// Misconceptions looked for in a wrong answer.
    pub misconceptions: Vec<Misconception>,
    /// The question for a machine: `task` and the numbers shown. An outside oracle computes
    /// the answer from this alone.
    #[ts(type = "Record<string, unknown>")]
    pub statement: serde_json::Value,
}

/// What the screen gets before the answer: no key.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ItemView {
    /// The concept it practises.
    pub concept: ConceptId,
    /// Its level.
    pub level: Level,
    /// What is shown.
    pub prompt: Vec<Block>,
    /// What the student fills in.
    pub entry: Entry,
    /// How many hints can be asked for.
    pub hint_count: u32,
}

/// What the screen gets after the answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Worked {
    /// The full worked solution.
    pub steps: Vec<Vec<Block>>,
    /// The answer, to be shown.
    pub answer: Vec<Block>,
    /// The exact key, to be set into the entry.
    pub key: Answer,
}

/// How a response was marked.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Marked {
    /// Right, by value and by the form rule.
    pub right: bool,
    /// How the form of a right value differs: from the key's form in a right response, from
    /// the form asked for in a wrong one. Or what a partly right response lacks.
    pub form_note: Option<FormNote>,
    /// The misconception recognised in a wrong response.
    pub noticed: Option<Noticed>,
}

/// A recognised misconception.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Noticed {
    /// Its code.
    #[ts(type = "string")]
    pub code: Cow<'static, str>,
    /// What to tell the student.
    pub say: Say,
}

/// How an equal form differs, or what a partly right answer lacks. Its words are the message
/// `form-<note>`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FormNote {
    /// Equal, and can be made simpler.
    NotSimplest,
    /// Equal, written as one fraction where a mixed number is shown.
    NotMixed,
    /// Equal, written as a mixed number where one fraction is shown.
    NotSingleFraction,
    /// Equal, with another denominator.
    OtherBottom,
    /// Equal, written as a fraction where a whole number is shown.
    NotWhole,
    /// Equal, with zeros at the end that are not needed.
    ExtraZeros,
    /// Equal, brackets remain.
    NotExpanded,
    /// Equal, not written as a product.
    NotFactored,
    /// Equal in value, with other operations than asked for.
    OtherSteps,
    /// Equal, written another way.
    OtherForm,
    /// True, with numbers that may not be used.
    OtherNumbers,
    /// The first of two parts is right, the second is not.
    FirstPartOnly,
}

impl FormNote {
    /// The id of its message.
    #[must_use]
    pub fn message_id(self) -> &'static str {
        match self {
            Self::NotSimplest => "form-not-simplest",
            Self::NotMixed => "form-not-mixed",
            Self::NotSingleFraction => "form-not-single-fraction",
            Self::OtherBottom => "form-other-bottom",
            Self::NotWhole => "form-not-whole",
            Self::ExtraZeros => "form-extra-zeros",
            Self::NotExpanded => "form-not-expanded",
            Self::NotFactored => "form-not-factored",
            Self::OtherSteps => "form-other-steps",
            Self::OtherForm => "form-other-form",
            Self::OtherNumbers => "form-other-numbers",
            Self::FirstPartOnly => "form-first-part-only",
        }
    }
}

impl Item {
    /// Whether a tap answers it, or a part of it.
    #[must_use]
    pub fn is_tapped(&self) -> bool {
        self.entry.is_tapped()
    }

    /// What the screen may see before the answer.
    #[must_use]
    pub fn view(&self) -> ItemView {
        ItemView {
            concept: self.concept.clone(),
            level: self.level,
            prompt: self.prompt.clone(),
            entry: self.entry.clone(),
            hint_count: u32::try_from(self.hints.len()).unwrap_or(u32::MAX),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Response, figure::Drawing};

    #[test]
    fn types_for_the_screen_can_be_written_out() {
        let config = ts_rs::Config::default();
        for text in [
            Say::decl(&config),
            Drawing::decl(&config),
            Entry::decl(&config),
            Response::decl(&config),
            Item::decl(&config),
            ItemView::decl(&config),
            Marked::decl(&config),
            Worked::decl(&config),
        ] {
            println!("{text}");
            assert!(!text.contains("bigint"), "{text}");
        }
    }
}
