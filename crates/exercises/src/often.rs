//! Typed answers that come too often of themselves, and how many of a hundred draws with one
//! are kept. So a guesser who always gives the same answer is seldom right (`guessers`).

use crate::Answer;
use crate::dice::Dice;
use std::collections::BTreeMap;
use std::sync::OnceLock;

/// A line for each concept: its id, a colon, answers with their percent, separated by commas.
const LINES: &str = include_str!("often.txt");

/// The answers of each concept, as text, and the percent that is kept.
type Kept = BTreeMap<&'static str, Vec<(&'static str, i64)>>;

fn kept() -> &'static Kept {
    static KEPT: OnceLock<Kept> = OnceLock::new();
    KEPT.get_or_init(|| {
        LINES
            .lines()
            .filter_map(|line| {
                let (concept, answers) = line.split_once(": ")?;
                let answers = answers.split(", ").filter_map(|answer| {
                    let (text, percent) = answer.split_once(' ')?;
                    Some((text, percent.parse().ok()?))
                });
                Some((concept, answers.collect()))
            })
            .collect()
    })
}

/// Whether a draft with this answer is to be drawn again.
pub(crate) fn comes_too_often(concept: &str, answer: &Answer, dice: &mut Dice) -> bool {
    let Some(answers) = kept().get(concept) else {
        return false;
    };
    let Some(text) = text_of(answer) else {
        return false;
    };
    let percent = answers
        .iter()
        .find_map(|(often, percent)| (*often == text).then_some(*percent));
    percent.is_some_and(|percent| dice.from(1..=100) > percent)
}

/// Writes a typed answer as `often.txt` does; none for another kind of answer.
pub(crate) fn text_of(answer: &Answer) -> Option<String> {
    Some(match answer {
        Answer::WholeNumber { value } => value.to_string(),
        Answer::Decimal { text } => text.clone(),
        Answer::Fraction { top, bottom } => format!("{top}/{bottom}"),
        Answer::Mixed {
            negative,
            whole,
            top,
            bottom,
        } => format!("{}{whole}+{top}/{bottom}", if *negative { "-" } else { "" }),
        Answer::NumberLinePoint { at } => at.ratio().to_string(),
        Answer::SeveralNumbers { texts } => texts.join(";"),
        Answer::Expression { text } | Answer::Equation { text } => text.clone(),
        Answer::SeveralChoices { indexes } => {
            indexes.iter().map(|index| format!("#{index}")).collect()
        }
        Answer::ShadedFraction { count } => format!("{count}p"),
        Answer::Angle { degrees, .. } => format!("{degrees}°"),
        _ => return None,
    })
}
