//! Between which numbers is the answer? Then the answer.

use super::judged::value_of;
use super::parts::two_parts;
use crate::answer::{Answer, Choice, Entry};
use crate::decimal::Dec;
use crate::dice::Dice;
use crate::expr::{Expr, degrees, num, rational};
use crate::make::{Draft, choice, keep};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// Tasks whose answer can be judged before it is worked out.
const TASKS: [&str; 44] = [
    "add",
    "subtract",
    "multiply",
    "divide",
    "evaluate",
    "evaluate_at",
    "add_fractions",
    "subtract_fractions",
    "multiply_fractions",
    "divide_fractions",
    "join_parts",
    "take_part",
    "equal_groups",
    "share_equally",
    "how_many_fit",
    "scale_up",
    "scale_down",
    "times_as_much",
    "how_many_more",
    "groups_and_more",
    "left_after_buying",
    "join_then_share",
    "convert",
    "convert_and_add",
    "convert_then_subtract",
    "convert_then_share",
    "convert_with_rate",
    "rectangle_area",
    "rectangle_perimeter",
    "side_from_area",
    "box_volume",
    "fraction_box",
    "triangle_area",
    "parallelogram_area",
    "trapezoid_area",
    "missing_angle",
    "missing_angle_of",
    "percent_of",
    "whole_from_percent",
    "unit_rate",
    "same_rate_amount",
    "mean",
    "missing_addend",
    "start_earn_spend",
];

/// Three ranges side by side, of which one has the answer; then the answer. Each place is as
/// often right.
pub(super) fn between_then_answer(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.as_ref()?;
    let task = draft.statement.get("task").and_then(|task| task.as_str())?;
    keep(TASKS.contains(&task))?;
    let value = value_of(key)?;
    let width = width_for(value)?;
    let place = (value / width).floor();
    let at = dice.from(0..=2) as u32;
    let first = place - i64::from(at);
    let bound = |k: u32| {
        let value = (first + i64::from(k)) * width;
        Some((shown(entry, key, value)?, text(entry, value)?))
    };
    let bounds: Vec<(Expr, String)> = (0..=3).map(bound).collect::<Option<_>>()?;
    let says = |id: &'static str, low: &Expr, high: &Expr| {
        Say::new(id)
            .math("low", low.clone())
            .math("high", high.clone())
    };
    let (mut choices, mut ranges) = (Vec::new(), Vec::new());
    for ((low, low_text), (high, high_text)) in bounds.iter().zip(bounds.iter().skip(1)) {
        choices.push(Choice {
            shows: says("between-choice", low, high).into(),
        });
        ranges.push([low_text, high_text]);
    }
    let wrong = (0..3)
        .filter(|place| *place != at)
        .map(|place| {
            let code = if place < at {
                "estimate-too-small"
            } else {
                "estimate-too-large"
            };
            (code, choice(place))
        })
        .collect();
    let statement = json!({
        "task": "between_then_answer", "inner": draft.statement, "ranges": ranges,
    });
    let mut new = draft.clone();
    new.prompt
        .retain(|block| !matches!(block, crate::Block::Say { say } if say.id == "common-work-out"));
    new = new.ask(Say::new("between-ask"));
    new.hints.insert(0, vec![Say::new("between-hint").into()]);
    let (low, high) = (bounds.get(at as usize)?, bounds.get(at as usize + 1)?);
    new.steps
        .push(vec![says("between-step", &low.0, &high.0).into()]);
    Some(two_parts(
        new,
        statement,
        (Entry::OneChoice { choices }, choice(at), wrong),
        Say::new("estimate-then"),
        (entry.clone(), key.clone(), draft.misconceptions.clone()),
    ))
}

/// The width of ranges: the value is in the third or a later one from 0, and is not an end.
fn width_for(value: Ratio<i64>) -> Option<Ratio<i64>> {
    keep(value >= Ratio::from(if value.is_integer() { 10 } else { 1 }))?;
    let two = Ratio::from(2);
    let mut width = Ratio::new(1, 2);
    // 1/2, 1, 5, 10, 50, 100 and so on.
    for times in [2, 5, 2, 5, 2, 5, 2, 5, 2, 5, 2] {
        let next = width * times;
        if value / next < two {
            break;
        }
        width = next;
    }
    keep(!(value / width).is_integer())?;
    Some(width)
}

fn shown(entry: &Entry, key: &Answer, value: Ratio<i64>) -> Option<Expr> {
    Some(match (entry, key) {
        (Entry::WholeNumber { signed: false, .. }, _) => num(value.to_integer()),
        (Entry::Decimal { signed: false, .. }, _) => num(Dec::exact(value)?.trimmed()),
        (Entry::Fraction { signed: false, .. } | Entry::Mixed { signed: false, .. }, _) => {
            rational(value, true)
        }
        (Entry::Money, _) => Expr::Money {
            hundredths: (value * 100).to_integer(),
        },
        (Entry::Angle { turned: false }, _) => degrees(num(value.to_integer())),
        _ => return None,
    })
}

/// The bound in the statement.
fn text(entry: &Entry, value: Ratio<i64>) -> Option<String> {
    let (whole, part) = (value.to_integer(), value.fract());
    Some(match entry {
        Entry::Fraction { .. } | Entry::Mixed { .. } if !value.is_integer() => {
            let part = format!("{}/{}", part.numer(), part.denom());
            if whole == 0 {
                part
            } else {
                format!("{whole} {part}")
            }
        }
        _ => Dec::exact(value)?.trimmed().to_string(),
    })
}
