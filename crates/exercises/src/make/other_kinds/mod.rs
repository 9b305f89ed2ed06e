//! Other kinds of question about the same task: whose answer is right, which estimate is
//! closest, boxes to fill, a comparison with its reason, a mistake to find and mend, two ways
//! to judge, the equation of a story, an answer to judge and mend, the mistake in an answer, an
//! answer to compare, the range of an answer, a missing number. A task is recognised by its
//! statement or its sentence, so a generator needs nothing for them.

mod alike;
mod between;
mod boxes;
mod equations;
mod judged;
mod lines;
mod misconceptions;
mod missing;
mod parts;
mod reasons;
mod sentence;
mod shown;
mod ways;

use super::answers::choice;
use super::draft::Draft;
use crate::answer::{Answer, Choice, Entry};
use crate::decimal::Dec;
use crate::dice::Dice;
use crate::expr::{Expr, num};
use crate::model::Level;
use crate::say::Say;
use between::between_then_answer;
use boxes::fill_the_boxes;
use equations::equation_then_answer;
use judged::{compare_answer, right_or_mend, who_then_answer};
use lines::find_the_mistake;
use misconceptions::name_the_misconception;
use missing::missing_number;
use num_rational::Ratio;
pub use parts::two_parts;
use reasons::compare_and_say_why;
use serde_json::json;
use shown::as_shown;
use ways::compare_two_ways;

/// The draft asked in another way, if the dice say so and its task allows it.
#[must_use]
pub fn asked_otherwise(
    draft: &Draft,
    concept: &str,
    level: Level,
    dice: &mut Dice,
) -> Option<Draft> {
    // A concept's id starts with its grade: g4-…
    let grade = concept
        .as_bytes()
        .get(1)
        .map_or(0, |digit| digit.saturating_sub(b'0'));
    match (level, dice.from(0..=19)) {
        (_, 0) => right_or_mend(draft, dice),
        (_, 1 | 2) => name_the_misconception(draft, dice).or_else(|| right_or_mend(draft, dice)),
        (_, 3) => compare_answer(draft, dice).or_else(|| name_the_misconception(draft, dice)),
        (_, 4) => fill_the_boxes(draft, grade, dice).or_else(|| missing_number(draft, grade, dice)),
        (_, 5) => missing_number(draft, grade, dice).or_else(|| fill_the_boxes(draft, grade, dice)),
        (_, 6) => between_then_answer(draft, dice).or_else(|| fill_the_boxes(draft, grade, dice)),
        (Level::Expected, 7 | 8) => {
            compare_and_say_why(draft, dice).or_else(|| equation_then_answer(draft, dice))
        }
        (Level::Expected, 9) => who_then_answer(draft, dice),
        (Level::Stretch, 7) => {
            who_is_right(draft.clone(), dice).or_else(|| who_then_answer(draft, dice))
        }
        (Level::Stretch, 8) => which_estimate(draft.clone(), dice),
        (Level::Stretch, 9) => estimate_then_answer(draft, dice),
        (Level::Stretch, 10 | 11) => {
            find_the_mistake(draft, dice).or_else(|| compare_and_say_why(draft, dice))
        }
        (Level::Stretch, 12 | 13) => {
            compare_two_ways(draft, dice).or_else(|| equation_then_answer(draft, dice))
        }
        _ => None,
    }
}

/// The closest estimate first, then the answer.
fn estimate_then_answer(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.clone()?;
    let estimated = which_estimate(draft.clone(), dice)?;
    let (first_entry, first_key) = estimated.answer.clone()?;
    let mut statement = estimated.statement.clone();
    *statement.get_mut("task")? = json!("estimate_then_answer");
    let first_wrong = estimated.misconceptions.clone();
    let mut new = draft.clone();
    new.prompt
        .retain(|block| !matches!(block, crate::Block::Say { say } if say.id == "common-work-out"));
    new.prompt.insert(0, Say::new("estimate-first").into());
    new.hints.splice(0..0, estimated.hints);
    new.steps.splice(0..0, estimated.steps);
    Some(parts::two_parts(
        new,
        statement,
        (first_entry, first_key, first_wrong),
        Say::new("estimate-then"),
        (entry, key, draft.misconceptions.clone()),
    ))
}

/// Two children give answers: one is right, or neither is. `None` where no number is said.
fn who_is_right(mut draft: Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.as_ref()?;
    let mut wrong: Vec<&Answer> = draft
        .misconceptions
        .iter()
        .map(|(_, answer)| answer)
        .filter(|answer| as_shown(entry, answer).is_some())
        .collect();
    dice.shuffle(&mut wrong);
    // Two wrong answers in any case, so that each of the three is as often right.
    let [first, second, ..] = wrong.as_slice() else {
        return None;
    };
    let (right, said) = match dice.from(0..=2) {
        0 => (0, [key, *first]),
        1 => (1, [*first, key]),
        _ => (2, [*first, *second]),
    };
    let shown: Option<Vec<(Expr, String)>> =
        said.iter().map(|answer| as_shown(entry, answer)).collect();
    let Some([(one, one_text), (two, two_text)]) = shown.as_deref() else {
        return None;
    };
    let (first, second) = parts::two_speakers(&draft, dice);
    draft.prompt.push(
        Say::new("who-says")
            .text("first", first)
            .text("second", second)
            .math("one", one.clone())
            .math("two", two.clone())
            .into(),
    );
    draft.statement = json!({
        "task": "who_is_right", "inner": draft.statement, "names": [first, second],
        "says": [one_text, two_text],
    });
    let name = |name: &'static str| Choice {
        shows: Say::new("who-name").text("name", name).into(),
    };
    let choices = vec![
        name(first),
        name(second),
        Choice {
            shows: Say::new("who-neither").into(),
        },
    ];
    let code = |at: u32| match (right, at) {
        (2, _) => "took-wrong-answer-as-right",
        (_, 2) => "took-right-answer-as-wrong",
        _ => "took-wrong-answer-as-right",
    };
    draft.misconceptions = (0..3)
        .filter(|at| *at != right)
        .map(|at| (code(at), choice(at)))
        .collect();
    draft.form = crate::FormRule::AnyEqual;
    draft.hints.insert(0, vec![Say::new("who-hint").into()]);
    draft.answer = Some((Entry::OneChoice { choices }, choice(right)));
    Some(draft)
}

/// The tasks whose results are estimated: those of written computation.
const COMPUTED: [&str; 6] = [
    "add",
    "subtract",
    "multiply",
    "divide",
    "times_power",
    "divide_by_power",
];

/// Three estimates, each ten times another: the closest is found without computing.
fn which_estimate(mut draft: Draft, dice: &mut Dice) -> Option<Draft> {
    let (_, key) = draft.answer.as_ref()?;
    let value = match key {
        Answer::WholeNumber { value } => Dec::new(*value, 0),
        Answer::Decimal { text } => read_decimal(text)?,
        _ => return None,
    };
    let task = draft.statement.get("task").and_then(|task| task.as_str());
    // Facts are known by heart, and sums of two digits are worked out as fast.
    if !task.is_some_and(|task| COMPUTED.contains(&task))
        || value.ratio().max(greatest_given(&draft.statement)) <= Ratio::from(100)
    {
        return None;
    }
    let about = rounded(value)?;
    // The right one is as often the smallest, the middle and the largest of the three.
    let at = dice.from(0..=2) as u32;
    let estimates: Option<Vec<Dec>> = (0..3)
        .map(|k: i64| {
            let power = k - i64::from(at);
            let factor = Ratio::from(10_i64.pow(power.unsigned_abs() as u32));
            Dec::exact(if power < 0 {
                about.ratio() / factor
            } else {
                about.ratio() * factor
            })
        })
        .collect();
    let estimates = estimates?;
    let choices = estimates
        .iter()
        .map(|estimate| Choice {
            shows: num(estimate).into(),
        })
        .collect();
    draft
        .prompt
        .retain(|block| !matches!(block, crate::Block::Say { say } if say.id == "common-work-out"));
    draft.prompt.insert(0, Say::new("estimate-ask").into());
    draft.statement = json!({
        "task": "closest_estimate", "inner": draft.statement,
        "choices": estimates.iter().map(ToString::to_string).collect::<Vec<_>>(),
    });
    draft.misconceptions = (0..3)
        .filter(|k| *k != at)
        .map(|k| {
            (
                if k < at {
                    "estimate-too-small"
                } else {
                    "estimate-too-large"
                },
                choice(k),
            )
        })
        .collect();
    draft.hints = vec![
        vec![Say::new("estimate-hint-round").into()],
        vec![Say::new("estimate-hint-size").into()],
    ];
    draft.steps = vec![
        vec![Say::new("estimate-hint-round").into()],
        vec![Say::new("estimate-step").math("about", num(about)).into()],
    ];
    draft.form = crate::FormRule::AnyEqual;
    draft.answer = Some((Entry::OneChoice { choices }, choice(at)));
    Some(draft)
}

/// The greatest number of a statement.
fn greatest_given(statement: &serde_json::Value) -> Ratio<i64> {
    use serde_json::Value;
    match statement {
        Value::Number(n) => Ratio::from(n.as_i64().unwrap_or_default()),
        Value::String(text) => crate::typed::decimal(text).map_or(Ratio::from(0), |read| read.0),
        Value::Array(items) => greatest_of(items.iter()),
        Value::Object(fields) => greatest_of(fields.values()),
        _ => Ratio::from(0),
    }
}

fn greatest_of<'a>(values: impl Iterator<Item = &'a serde_json::Value>) -> Ratio<i64> {
    values
        .map(greatest_given)
        .max()
        .unwrap_or_else(|| Ratio::from(0))
}

/// A number with its first digit only; `None` for a number less than 2 or with one digit.
fn rounded(value: Dec) -> Option<Dec> {
    let size = value.ratio();
    let mut unit = Ratio::new(1, 10);
    if size < Ratio::from(2) {
        return None;
    }
    while unit * 10 <= size {
        unit *= 10;
    }
    let digit = (size / unit).round();
    let about = Dec::exact(digit * unit)?;
    (about.ratio() != size).then_some(about)
}

fn read_decimal(text: &str) -> Option<Dec> {
    let places = text.split_once('.').map_or(0, |(_, places)| places.len());
    Some(Dec::new(
        text.replace('.', "").parse().ok()?,
        u32::try_from(places).ok()?,
    ))
}
