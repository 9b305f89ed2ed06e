//! What a student reports of a concept, and what came of practising it.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// How sure a student is of a concept. A number from 0 to 3 in files, stepping stones with
/// words on screens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
#[serde(try_from = "u8", into = "u8")]
#[ts(type = "0 | 1 | 2 | 3")]
pub enum Confidence {
    /// "Not yet".
    NotYet,
    /// "With help".
    WithHelp,
    /// "On my own".
    OnMyOwn,
    /// "Could teach it".
    CouldTeach,
}

impl Confidence {
    /// All four, the lowest first.
    pub const ALL: [Self; 4] = [
        Self::NotYet,
        Self::WithHelp,
        Self::OnMyOwn,
        Self::CouldTeach,
    ];

    /// 0 to 3.
    #[must_use]
    pub fn index(self) -> usize {
        usize::from(u8::from(self))
    }

    /// Returns the value for this confidence out of four, the one for Not yet first.
    pub fn pick<T>(self, values: &[T; 4]) -> &T {
        let [not_yet, with_help, on_my_own, could_teach] = values;
        match self {
            Self::NotYet => not_yet,
            Self::WithHelp => with_help,
            Self::OnMyOwn => on_my_own,
            Self::CouldTeach => could_teach,
        }
    }

    /// As [`Confidence::pick`], for changing the value.
    pub fn pick_mut<T>(self, values: &mut [T; 4]) -> &mut T {
        let [not_yet, with_help, on_my_own, could_teach] = values;
        match self {
            Self::NotYet => not_yet,
            Self::WithHelp => with_help,
            Self::OnMyOwn => on_my_own,
            Self::CouldTeach => could_teach,
        }
    }

    /// Whether the student asks for help: Not yet or With help.
    #[must_use]
    pub fn needs_help(self) -> bool {
        self <= Self::WithHelp
    }
}

impl From<Confidence> for u8 {
    fn from(confidence: Confidence) -> Self {
        match confidence {
            Confidence::NotYet => 0,
            Confidence::WithHelp => 1,
            Confidence::OnMyOwn => 2,
            Confidence::CouldTeach => 3,
        }
    }
}

impl TryFrom<u8> for Confidence {
    type Error = String;

    fn try_from(number: u8) -> Result<Self, String> {
        Self::ALL
            .get(usize::from(number))
            .copied()
            .ok_or_else(|| format!("a confidence is 0 to 3, not {number}"))
    }
}

/// How a concept went in the class's review, as the student marked it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// Got it right.
    Right,
    /// Got it wrong.
    Wrong,
    /// Did not get to it.
    NotDone,
}

impl Outcome {
    /// Whether the concept went right; `None` if the student did not get to it.
    #[must_use]
    pub fn is_right(self) -> Option<bool> {
        match self {
            Self::Right => Some(true),
            Self::Wrong => Some(false),
            Self::NotDone => None,
        }
    }
}

/// What came of a practised exercise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum AnswerResult {
    /// Right at the first try without a hint.
    Alone,
    /// Right with a hint or at the second try.
    WithHelp,
    /// Wrong twice, or the student asked for the worked steps.
    Wrong,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_confidence_is_a_number_from_0_to_3_on_the_wire() {
        for (number, confidence) in Confidence::ALL.into_iter().enumerate() {
            assert_eq!(
                serde_json::to_string(&confidence).unwrap(),
                number.to_string()
            );
            assert_eq!(confidence.index(), number);
        }
        assert!(serde_json::from_str::<Confidence>("4").is_err());
        assert!(Confidence::WithHelp.needs_help() && !Confidence::OnMyOwn.needs_help());
    }
}
