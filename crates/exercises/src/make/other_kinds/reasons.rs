//! A comparison and its reason: the second part asks which fact decides.

use super::parts::two_parts;
use super::sentence::{fraction, number, text_of};
use crate::answer::{Choice, Entry};
use crate::block::Block;
use crate::dice::Dice;
use crate::expr::{Expr, Sign};
use crate::make::{Draft, choice, compare};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// A fact that may decide: its tag in the statement, the ending of its message, and whether it
/// is true of these numbers.
type Fact = (&'static str, bool);

/// The same comparison with its reason, if one fact decides and two others do not hold.
pub(super) fn compare_and_say_why(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let Some((Entry::Comparison, key)) = &draft.answer else {
        return None;
    };
    let mut sides = draft.prompt.iter().filter_map(|block| match block {
        Block::Math {
            expr:
                Expr::Relation {
                    left,
                    sign: Sign::Blank,
                    right,
                },
        } => Some((left.as_ref(), right.as_ref())),
        _ => None,
    });
    let (left, right) = sides.next()?;
    let (kind, facts, left_text, right_text) = facts_of(left, right)?;
    let (mut true_facts, mut false_facts) = (Vec::new(), Vec::new());
    for (tag, holds) in facts {
        if holds {
            true_facts.push(tag);
        } else {
            false_facts.push(tag);
        }
    }
    // Exactly one of those shown is true; which of the true ones it is may differ.
    if true_facts.is_empty() || false_facts.len() < 2 {
        return None;
    }
    let right_fact = dice.pick(&true_facts);
    dice.shuffle(&mut false_facts);
    let mut shown = vec![right_fact];
    shown.extend(false_facts.into_iter().take(2));
    dice.shuffle(&mut shown);
    let at = shown.iter().position(|tag| *tag == right_fact)?;
    let choices = shown
        .iter()
        .map(|tag| Choice {
            shows: Say::new(format!("reason-{tag}")).into(),
        })
        .collect();
    let signs = [Sign::Less, Sign::Equal, Sign::Greater];
    let wrong_sign = signs
        .into_iter()
        .map(compare)
        .filter(|sign| sign != key)
        .map(|sign| (code_of_sign(draft, &sign), sign))
        .collect();
    let wrong_reasons = (0..3)
        .filter(|place| *place != at as u32)
        .map(|place| ("reason-does-not-hold", choice(place)))
        .collect();
    let statement = json!({
        "task": "compare_and_why", "left": left_text, "right": right_text,
        "kind": kind, "reasons": shown,
    });
    Some(two_parts(
        draft.clone(),
        statement,
        (Entry::Comparison, key.clone(), wrong_sign),
        Say::new("reason-ask"),
        (
            Entry::OneChoice { choices },
            choice(at as u32),
            wrong_reasons,
        ),
    ))
}

/// The misconception that the draft gives a sign.
fn code_of_sign(draft: &Draft, sign: &crate::Answer) -> &'static str {
    draft
        .misconceptions
        .iter()
        .find(|(_, answer)| answer == sign)
        .map_or("sign-turned-round", |(code, _)| code)
}

/// Facts about two fractions, two numbers of the same places, or two signed numbers.
fn facts_of(left: &Expr, right: &Expr) -> Option<(&'static str, Vec<Fact>, String, String)> {
    if let (Some((a, b)), Some((c, d))) = (fraction(left), fraction(right)) {
        let (one, two) = (Ratio::new(a, b), Ratio::new(c, d));
        let between = |mark: Ratio<i64>| (one < mark && two > mark) || (one > mark && two < mark);
        let facts = vec![
            ("same-parts", b == d && a != c),
            ("same-count", a == c && b != d),
            ("half-between", between(Ratio::new(1, 2))),
            ("one-between", between(Ratio::from(1))),
            ("one-part-missing", b - a == 1 && d - c == 1 && b != d),
            ("same-point", one == two),
        ];
        return Some(("fractions", facts, format!("{a}/{b}"), format!("{c}/{d}")));
    }
    let (a, b) = (number(left)?, number(right)?);
    let zero = Ratio::from(0);
    if a < zero || b < zero {
        let facts = vec![
            (
                "zero-between",
                (a < zero && b > zero) || (a > zero && b < zero),
            ),
            ("both-below-zero", a < zero && b < zero && a != b),
            ("both-above-zero", a > zero && b > zero && a != b),
            ("same-distance", a == -b),
        ];
        return Some(("signed", facts, text_of(a)?, text_of(b)?));
    }
    // The first place from the left in which they differ.
    let places: [(&str, Ratio<i64>); 8] = [
        ("hundred-thousands", Ratio::from(100_000)),
        ("ten-thousands", Ratio::from(10_000)),
        ("thousands", Ratio::from(1000)),
        ("hundreds", Ratio::from(100)),
        ("tens", Ratio::from(10)),
        ("ones", Ratio::from(1)),
        ("tenths", Ratio::new(1, 10)),
        ("hundredths", Ratio::new(1, 100)),
    ];
    let digit = |value: Ratio<i64>, place: Ratio<i64>| (value / place).floor().to_integer() % 10;
    let first = places
        .iter()
        .find(|(_, place)| digit(a, *place) != digit(b, *place))
        .map(|(name, _)| *name);
    let greatest = if a > b { a } else { b };
    let has_parts = !a.is_integer() || !b.is_integer();
    let facts: Vec<Fact> = places
        .iter()
        .filter(|(_, place)| {
            (greatest >= *place || *place == Ratio::from(1))
                && (has_parts || *place >= Ratio::from(1))
        })
        .map(|(name, _)| (fact_of_place(name), first == Some(*name)))
        .chain([("same-in-each-place", a == b)])
        .collect();
    Some(("places", facts, shown(left)?, shown(right)?))
}

/// A number as it is written, with zeros at its end.
fn shown(expr: &Expr) -> Option<String> {
    match expr {
        Expr::Number { text } => Some(text.clone()),
        _ => None,
    }
}

fn fact_of_place(place: &str) -> &'static str {
    match place {
        "hundred-thousands" => "differ-hundred-thousands",
        "ten-thousands" => "differ-ten-thousands",
        "thousands" => "differ-thousands",
        "hundreds" => "differ-hundreds",
        "tens" => "differ-tens",
        "ones" => "differ-ones",
        "tenths" => "differ-tenths",
        _ => "differ-hundredths",
    }
}
