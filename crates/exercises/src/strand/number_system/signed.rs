//! Negative numbers, opposites and sizes.

use super::order::{dec, rational_number, zero_line};
use crate::answer::Answer;
use crate::decimal::Dec;
use crate::draw::Line;
use crate::expr::{Expr, absolute, equal, num};
use crate::make::{Draft, Generator, Make, decimal, keep, says};
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-signed-meaning", 1, signed_meaning),
    Generator::new("g6-opposites", 1, opposites),
    Generator::new("g6-absolute-value", 1, absolute_value),
    Generator::new("g6-absolute-vs-order", 1, absolute_vs_order),
];

fn signed_meaning(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(2..=30, 5..=300, 12..=1_500));
    // Odd stories are below zero, even ones above.
    let story = m.dice.from(1..=8);
    let below = story % 2 == 1;
    let value = if below { -n } else { n };
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .count("n", n);
    let draft = if m.level == crate::Level::Stretch && m.dice.one_in(3) {
        // What zero means.
        let kind = (story + 1) / 2;
        let setting = ["temperature", "sea", "money", "floor"].get((kind - 1) as usize)?;
        let right = m.say(&format!("zero-{kind}-right"));
        let wrong = vec![
            ("zero-as-nothing-at-all", m.say("zero-nothing").into()),
            ("zero-as-least", m.say("zero-least").into()),
        ];
        return Some(
            Draft::new(json!({"task": "meaning_of_zero", "setting": setting, "value": value}))
                .ask(m.say(&format!("zero-{kind}")).number("value", value))
                .one_of(&mut m.dice, right, wrong)
                .hint(m.say("hint-zero"))
                .hint_with(m.say("hint-line"), sign_line(value))
                .step(m.say("hint-zero"))
                .step(m.say(&format!("zero-{kind}-right"))),
        );
    } else {
        Draft::new(json!({"task": "signed_number", "size": n, "side": if below { "below" } else { "above" }}))
            .ask(ask)
            .integer(value)
            .misconception("sign-left-out-or-added", Answer::WholeNumber { value: -value })
            .misconception("zero-for-signed-number", Answer::WholeNumber { value: 0 })
    };
    Some(
        draft
            .hint(m.say("hint-zero"))
            .hint_with(m.say("hint-line"), sign_line(value))
            .step(m.say(if below { "step-below" } else { "step-above" }))
            .step(m.say("step-number").number("value", value)),
    )
}

fn sign_line(value: i64) -> crate::Figure {
    let size = value.abs();
    Line::new(-size, size, size)
        .label(-size, num(-size))
        .label(0, num(0))
        .label(size, num(size))
        .figure()
}

fn opposites(m: &mut Make) -> Option<Draft> {
    let value = rational_number(m);
    let d = dec(value)?;
    let twice = m.level.pick(false, m.dice.one_in(3), m.dice.one_in(2));
    let right = if twice { value } else { -value };
    let zero_to = Dec::exact(if twice { -value } else { value })?;
    let draft = if twice {
        Draft::new(json!({"task": "opposite_twice", "number": d.to_string()}))
            .ask(m.say("ask-twice").number("value", d))
    } else {
        Draft::new(json!({"task": "opposite", "number": d.to_string()}))
            .ask(m.say("ask").number("value", d))
    };
    let size = if value < Ratio::from(0) {
        -value
    } else {
        value
    };
    let over_one = Dec::exact(Ratio::from(1) / value).filter(|r| r.places() <= 4);
    let draft = draft
        .signed_decimal(dec(right)?)
        .hint(m.say("hint-side"))
        .hint_with(
            m.say("hint-line"),
            Line::new(-size, size, size)
                .label(-size, num(dec(-size)?))
                .label(0, num(0))
                .label(size, num(dec(size)?))
                .figure_as(m.say("line").number("size", dec(size)?)),
        )
        .step(m.say(if twice { "step-twice" } else { "step-once" }))
        .step(m.say("step-answer").number("right", dec(right)?))
        .misconception("opposite-sign-kept", decimal(zero_to));
    Some(match over_one {
        Some(r) if r.ratio() != value && r.ratio() != -value => {
            draft.misconception("reciprocal-for-opposite", decimal(r))
        }
        _ => draft.misconception("zero-for-opposite", decimal(Dec::new(0, 0))),
    })
}

fn absolute_value(m: &mut Make) -> Option<Draft> {
    let value = rational_number(m);
    keep(value < Ratio::from(0) || m.dice.one_in(4))?;
    let d = dec(value)?;
    let size = if value < Ratio::from(0) {
        -value
    } else {
        value
    };
    let story = m.level.pick(false, m.dice.one_in(3), m.dice.one_in(2));
    let draft = Draft::new(json!({"task": "absolute_value", "number": d.to_string()}));
    let draft = if story {
        draft.ask(m.say("ask-distance").number("value", d))
    } else {
        draft
            .ask(m.say("ask"))
            .ask(equal(absolute(num(d)), Expr::Blank))
    };
    Some(
        draft
            .signed_decimal(dec(size)?)
            .hint(m.say("hint-distance"))
            .hint_with(m.say("hint-line"), zero_line(value, Ratio::from(0))?)
            .step(m.say("hint-distance"))
            .step(equal(absolute(num(d)), num(dec(size)?)))
            .misconception("absolute-value-kept-sign", decimal(dec(-size)?))
            .misconception("absolute-value-doubled", decimal(dec(size * 2)?)),
    )
}

fn absolute_vs_order(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(10..=50, 15..=95, 40..=300));
    let gap = m.dice.from(3..=n / 2);
    let story = m.dice.from(1..=4);
    // The second amount lies below or above the first (both below zero).
    let lower = m.dice.one_in(2);
    let other = if lower { n + gap } else { n - gap };
    let asks_size = m.dice.one_in(2);
    // "greater": the second has the greater size, or the greater number.
    let greater = if asks_size { lower } else { !lower };
    let kind = (story - 1) / 2 + 1;
    let ask = m
        .say(&format!(
            "ask-{kind}-{}",
            if asks_size { "size" } else { "number" }
        ))
        .number("one", -n)
        .number("two", -other);
    Some(
        Draft::new(json!({"task": if asks_size { "greater_size" } else { "greater_number" }, "one": -n, "two": -other}))
            .ask(ask)
            .one_of_listed(
                vec![("size-and-order-mixed-up", says("absolute-more")), ("size-and-order-mixed-up", says("absolute-less")), ("took-as-equal", says("absolute-same"))],
                usize::from(!greater),
            )
            .hint(m.say("hint-zero"))
            .hint(m.say("hint-left"))
            .step(m.say("step-size").number("one", n).number("two", other))
            .step(m.say(if lower { "step-lower" } else { "step-higher" }).number("one", -n).number("two", -other)),
    )
}
