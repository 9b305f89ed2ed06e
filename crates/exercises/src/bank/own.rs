//! An own exercise as it is stored and travels, and the exercise made of it.

use super::key::{OwnKind, key_text, stored_key};
use super::words::{blocks_of, say_of};
use super::{
    MOST_CHOICE_CHARS, MOST_CHOICES, MOST_HINT_CHARS, MOST_HINTS, MOST_QUESTION_CHARS, MOST_STEPS,
    MOST_WRONG,
};
use crate::{
    Answer, Block, Choice, Entry, FormRule, Item, Level, Misconception, Say, mark, response_for,
};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::borrow::Cow;
use std::fmt;
use std::str::FromStr;
use surefoot_catalogue::table::{LineFault, Lines, check_count, check_text, cut};
use surefoot_catalogue::{ConceptId, Language, Text};
use ts_rs::TS;

/// The version that marks an own exercise among those that are generated: theirs start at 1.
pub const OWN_VERSION: u32 = 0;

/// The code of a wrong answer that a teacher wrote words for. It is counted nowhere.
pub const OWN_MISCONCEPTION: &str = "own";

/// Bits of an id.
const ID_BITS: u32 = 60;

/// Which equal forms of an answer are right.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum OwnForm {
    /// Every equal form.
    #[default]
    Any,
    /// Only lowest terms.
    Simplest,
    /// Only a mixed number.
    Mixed,
    /// Only in exactly the form of the answer.
    Exact,
}

impl OwnForm {
    /// The form of this name in a file; empty is any.
    #[must_use]
    pub fn named(text: &str) -> Option<Self> {
        match text.trim().to_lowercase().as_str() {
            "" | "any" => Some(Self::Any),
            "simplest" => Some(Self::Simplest),
            "mixed" => Some(Self::Mixed),
            "exact" => Some(Self::Exact),
            _ => None,
        }
    }

    fn rule(self) -> FormRule {
        match self {
            Self::Any => FormRule::AnyEqual,
            Self::Simplest => FormRule::Simplest,
            Self::Mixed => FormRule::MixedNumber,
            Self::Exact => FormRule::Exact,
        }
    }

    fn goes_with(self, kind: OwnKind) -> bool {
        match self {
            Self::Any => true,
            Self::Simplest => matches!(kind, OwnKind::Fraction | OwnKind::MixedNumber),
            Self::Mixed => kind == OwnKind::MixedNumber,
            Self::Exact => matches!(
                kind,
                OwnKind::Fraction | OwnKind::MixedNumber | OwnKind::Decimal
            ),
        }
    }
}

/// A wrong answer that the teacher has words for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct OwnWrong {
    /// The answer, as [`OwnExercise::answer`].
    pub answer: String,
    /// What is said to it.
    pub say: Text,
}

/// An own exercise. Its place in the class is its [`OwnId`], made of all it says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct OwnExercise {
    /// The concept it practises.
    pub concept: ConceptId,
    /// Its level.
    pub level: Level,
    /// The kind of its answer.
    pub kind: OwnKind,
    /// The question.
    pub question: Text,
    /// What there is to choose from or to put in order, as it is shown; else empty.
    pub choices: Vec<Text>,
    /// The key: a number as it is typed, or places of choices from 0, parted by spaces.
    pub answer: String,
    /// Which equal forms are right.
    pub form: OwnForm,
    /// Words after the box.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<Text>,
    /// Hints in their order.
    pub hints: Vec<Text>,
    /// The worked solution, step by step.
    pub steps: Vec<Text>,
    /// Wrong answers that the teacher has words for.
    pub wrong: Vec<OwnWrong>,
}

/// An own exercise's id: the first 60 bits of SHA-256 over its JSON. Takes the
/// place of a seed, so that what was practised can be shown again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct OwnId(u64);

impl OwnId {
    /// As a seed.
    #[must_use]
    pub fn seed(self) -> u64 {
        self.0
    }
}

impl fmt::Display for OwnId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:015x}", self.0)
    }
}

impl FromStr for OwnId {
    type Err = ();
    fn from_str(text: &str) -> Result<Self, ()> {
        let fits = text.len() == 15
            && text
                .bytes()
                .all(|b| b.is_ascii_digit() || (b'a'..=b'f').contains(&b));
        if !fits {
            return Err(());
        }
        u64::from_str_radix(text, 16).map(Self).map_err(|_| ())
    }
}

/// Checks a text and what its braces hold.
fn check_words(text: &Text, column: &str, most_chars: usize) -> Result<(), LineFault> {
    check_text(text, column, most_chars, Lines::Several)?;
    say_of(text).map(|_| ())
}

impl OwnExercise {
    /// Its id.
    #[must_use]
    pub fn id(&self) -> OwnId {
        // Writing these plain values as JSON cannot fail.
        let json = serde_json::to_vec(self).unwrap_or_default();
        let digest = Sha256::digest(&json);
        let head = digest
            .iter()
            .take(8)
            .fold(0_u64, |sum, byte| (sum << 8) | u64::from(*byte));
        OwnId(head >> (64 - ID_BITS))
    }

    /// Every text of it.
    pub fn texts(&self) -> impl Iterator<Item = &Text> {
        let lists = [&self.choices, &self.hints, &self.steps]
            .into_iter()
            .flatten();
        let wrong = self.wrong.iter().map(|wrong| &wrong.say);
        let alone = std::iter::once(&self.question).chain(&self.unit);
        alone.chain(lists).chain(wrong)
    }

    /// Bytes it takes as JSON.
    #[must_use]
    pub fn json_bytes(&self) -> usize {
        serde_json::to_vec(self).map_or(0, |json| json.len())
    }

    /// Checks every rule: lengths, characters, that the key is right and in its
    /// form, that the wrong answers are wrong and differ.
    pub fn check(&self) -> Result<(), LineFault> {
        check_words(&self.question, "question", MOST_QUESTION_CHARS)?;
        if self.kind.has_choices() {
            if self.choices.len() < 2 {
                return Err(LineFault::TooFewChoices);
            }
        } else if !self.choices.is_empty() {
            return Err(LineFault::NoChoicesHere);
        }
        check_count(self.choices.len(), MOST_CHOICES, "choices")?;
        for (place, choice) in self.choices.iter().enumerate() {
            check_words(choice, "choices", MOST_CHOICE_CHARS)?;
            for (language, text) in choice.iter() {
                let mut before = self.choices.iter().take(place);
                if before.any(|other| other.get(language) == text) {
                    return Err(LineFault::ChoicesAlike {
                        text: cut(text, 80),
                    });
                }
            }
        }
        if let Some(unit) = &self.unit {
            check_words(unit, "unit", MOST_CHOICE_CHARS)?;
        }
        check_count(self.hints.len(), MOST_HINTS, "hints")?;
        for hint in &self.hints {
            check_words(hint, "hint", MOST_HINT_CHARS)?;
        }
        check_count(self.steps.len(), MOST_STEPS, "steps")?;
        for step in &self.steps {
            check_words(step, "steps", MOST_HINT_CHARS)?;
        }
        check_count(self.wrong.len(), MOST_WRONG, "wrong")?;
        for wrong in &self.wrong {
            check_words(&wrong.say, "feedback", MOST_HINT_CHARS)?;
        }
        if !self.form.goes_with(self.kind) {
            return Err(LineFault::BadForm {
                text: format!("{:?}", self.form).to_lowercase(),
            });
        }
        let item = self.item()?;
        let stored = |answer: &Answer, text: &str| {
            if key_text(answer) == text {
                Ok(())
            } else {
                Err(LineFault::BadAnswer {
                    text: cut(text, 80),
                    kind: self.kind.as_str().into(),
                })
            }
        };
        stored(&item.answer, &self.answer)?;
        let marked =
            mark(&item, &response_for(&item.answer)).map_err(|_| LineFault::BadAnswer {
                text: cut(&self.answer, 80),
                kind: self.kind.as_str().into(),
            })?;
        if !marked.right {
            return Err(LineFault::KeyBreaksForm);
        }
        for (misconception, wrong) in item.misconceptions.iter().zip(&self.wrong) {
            stored(&misconception.answer, &wrong.answer)?;
            let text = || self.shown_answer(&misconception.answer);
            match mark(&item, &response_for(&misconception.answer)) {
                Ok(marked) if marked.right || marked.noticed.is_none() => {
                    return Err(LineFault::WrongIsRight { text: text() });
                }
                Ok(marked)
                    if marked.noticed.as_ref().map(|n| &n.say) != Some(&misconception.say) =>
                {
                    return Err(LineFault::WrongTwice { text: text() });
                }
                Ok(_) => {}
                Err(_) => {
                    return Err(LineFault::BadAnswer {
                        text: text(),
                        kind: self.kind.as_str().into(),
                    });
                }
            }
        }
        Ok(())
    }

    /// An answer as the teacher wrote it: choices by their words.
    fn shown_answer(&self, answer: &Answer) -> String {
        let words = |places: &[u32]| {
            places
                .iter()
                .filter_map(|place| self.choices.get(*place as usize))
                .map(|choice| choice.get(Language::first()))
                .collect::<Vec<_>>()
                .join(" | ")
        };
        match answer {
            Answer::OneChoice { index } => words(&[*index]),
            Answer::SeveralChoices { indexes: places } | Answer::Ordering { order: places } => {
                words(places)
            }
            other => key_text(other),
        }
    }

    /// The key in words, for a list.
    #[must_use]
    pub fn key_in_words(&self) -> String {
        stored_key(self.kind, &self.answer, self.choices.len())
            .map_or_else(|_| self.answer.clone(), |key| self.shown_answer(&key))
    }

    /// The exercise as every part of the program takes it.
    ///
    /// # Errors
    /// [`LineFault::BadAnswer`] or [`LineFault::BadBraces`]; none for one that was checked.
    pub fn item(&self) -> Result<Item, LineFault> {
        let key = |text: &str| stored_key(self.kind, text, self.choices.len());
        let answer = key(&self.answer)?;
        let misconceptions = self
            .wrong
            .iter()
            .map(|wrong| {
                Ok(Misconception {
                    code: Cow::Borrowed(OWN_MISCONCEPTION),
                    answer: key(&wrong.answer)?,
                    say: say_of(&wrong.say)?,
                })
            })
            .collect::<Result<Vec<_>, LineFault>>()?;
        let parts = |texts: &[Text]| -> Result<Vec<Vec<Block>>, LineFault> {
            texts.iter().map(blocks_of).collect()
        };
        let id = self.id();
        Ok(Item {
            concept: self.concept.clone(),
            generator_version: OWN_VERSION,
            level: self.level,
            seed: id.seed(),
            prompt: blocks_of(&self.question)?,
            entry: self.entry(&answer, &misconceptions)?,
            answer,
            form: self.form.rule(),
            hints: parts(&self.hints)?,
            steps: parts(&self.steps)?,
            misconceptions,
            statement: serde_json::json!({"task": "own", "id": id.to_string()}),
        })
    }

    fn entry(&self, answer: &Answer, misconceptions: &[Misconception]) -> Result<Entry, LineFault> {
        // The minus key is there where it is needed, so that its absence tells nothing
        // of the key: a wrong answer below zero brings it too.
        let below_zero = |answer: &Answer| key_text(answer).starts_with('-');
        let signed = below_zero(answer) || misconceptions.iter().any(|m| below_zero(&m.answer));
        let unit = self.unit.as_ref().map(say_of).transpose()?;
        let choices = || {
            self.choices
                .iter()
                .map(|text| {
                    Ok(Choice {
                        shows: Block::from(say_of(text)?),
                    })
                })
                .collect::<Result<Vec<_>, LineFault>>()
        };
        Ok(match self.kind {
            OwnKind::WholeNumber => Entry::WholeNumber { signed, unit },
            OwnKind::Decimal => Entry::Decimal { signed, unit },
            OwnKind::Fraction => Entry::Fraction { signed, unit },
            OwnKind::MixedNumber => Entry::Mixed { signed, unit },
            OwnKind::Money => Entry::Money,
            OwnKind::Time => Entry::Time { half_day: false },
            OwnKind::Comparison => Entry::Comparison,
            OwnKind::Remainder => Entry::QuotientRemainder,
            OwnKind::OneChoice => Entry::OneChoice {
                choices: choices()?,
            },
            OwnKind::SeveralChoices => Entry::SeveralChoices {
                choices: choices()?,
            },
            OwnKind::Order => Entry::Ordering {
                things: choices()?,
                first: Say::new("own-first"),
                last: Say::new("own-last"),
            },
        })
    }
}
